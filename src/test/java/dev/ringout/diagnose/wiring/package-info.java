/** The search over slips, against sums by hand, brute force and physics. */
@NullMarked
package dev.ringout.diagnose.wiring;

import org.jspecify.annotations.NullMarked;
