/**
 * What is wrong with a unit, in facts: {@link dev.ringout.diagnose.Fault}s with the readings that
 * show them, what to read next, and what no reading sees. No sentences: those stand in {@code
 * words}, where each kind has its own.
 *
 * <p>How it is found stands in three rooms, which all know these facts and not the other way round:
 * {@code diagnose.wiring} searches what is joined to what; {@code diagnose.values} weighs ohms on
 * the unit as the wiring was found, so it knows {@code wiring}; {@code diagnose.run} puts both
 * together with the faults of the test and the next readings. The runner has a room of its own
 * since it needs both others: within one of them it would close a circle, and in {@code check} the
 * whole search would have to be open to the check.
 *
 * <p>Two words that are not one: a <em>fault</em> is what is said of the unit, the test or the
 * paper; a <em>slip</em> is what a hand or a tool did. The trade's <em>miswire</em> (a wire's end
 * in the wrong cavity) is one kind of either; opens, unlisted joins, poor joints, parts, switches
 * and probes at the wrong pin are slips too.
 */
@NullMarked
package dev.ringout.diagnose;

import org.jspecify.annotations.NullMarked;
