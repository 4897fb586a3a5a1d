/** From failing readings to the fewest slips that explain them. */
@NullMarked
package dev.ringout.diagnose;

import org.jspecify.annotations.NullMarked;
