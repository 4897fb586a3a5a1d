/** Sheets, HTML and PDF. */
@NullMarked
package dev.ringout.print;

import org.jspecify.annotations.NullMarked;
