/**
 * An exam of the diagnosis by someone who does not know how it works: units, wires, meter, habits
 * and slips of the hand of its own, held against what the command line says in JSON. Nothing of the
 * program is used but its command ({@code Examinee}).
 */
@org.jspecify.annotations.NullMarked
package dev.ringout.benchmarks.exam;
