/** Quantities of the trade, each with its unit in its name. */
@NullMarked
package dev.ringout.units;

import org.jspecify.annotations.NullMarked;
