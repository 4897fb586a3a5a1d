/**
 * What cells mean, whoever wrote the sheet: gauges, lengths, ohms, volts, times, plain numbers,
 * several pins in one cell, blanks that can't be seen, and characters that look alike. What is not
 * understood comes back as {@link dev.ringout.cells.Understood} with what was probably meant.
 */
@NullMarked
package dev.ringout.cells;

import org.jspecify.annotations.NullMarked;
