/** A meter on a simulated unit, wrong on purpose, to learn and to test with. */
@NullMarked
package dev.ringout.meter.practice;

import org.jspecify.annotations.NullMarked;
