/**
 * The fault bench: random units with planted slips, read by simulated physics and diagnosed by the
 * program. Nothing here shares code with the diagnosis.
 */
@org.jspecify.annotations.NullMarked
package dev.ringout.benchmarks.faults;
