/** From sheets to a harness or readings, with every problem reported at its cell. */
@NullMarked
package dev.ringout.intake;

import org.jspecify.annotations.NullMarked;
