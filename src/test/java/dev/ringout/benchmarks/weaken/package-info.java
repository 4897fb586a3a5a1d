/**
 * The weakening bench: whatever is taken from a good set of readings, a unit conforms only if what
 * is left still shows everything. It has a model and a truth of its own and uses the command line
 * alone.
 */
@NullMarked
package dev.ringout.benchmarks.weaken;

import org.jspecify.annotations.NullMarked;
