/**
 * Faults by value, on the unit as its wiring was found: wrong gauges, poor joints, unequal wires,
 * low insulation. Values are held against the ways that are really there, so this room knows {@code
 * diagnose.wiring} and not the other way round.
 */
@NullMarked
package dev.ringout.diagnose.values;

import org.jspecify.annotations.NullMarked;
