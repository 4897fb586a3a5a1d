/** Verdicts and coverage, by example and against brute force. */
@NullMarked
package dev.ringout.compare;

import org.jspecify.annotations.NullMarked;
