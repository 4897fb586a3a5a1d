/**
 * From failing readings to the fewest slips that explain them: what is joined to what. The readings
 * are sorted into regions that hang together; for each, the search takes the cheapest sets of slips
 * with which the unit would give every reading made, and tells them as faults.
 *
 * <p>{@link dev.ringout.diagnose.wiring.WiringFaults} is the door; slips, by the numbers of points
 * and conductors, do not leave the room.
 */
@NullMarked
package dev.ringout.diagnose.wiring;

import org.jspecify.annotations.NullMarked;
