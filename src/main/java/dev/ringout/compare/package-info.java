/** Readings against the circuit: verdicts, and coverage as a proof. */
@NullMarked
package dev.ringout.compare;

import org.jspecify.annotations.NullMarked;
