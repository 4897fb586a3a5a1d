/** The papers from which a unit is wired: sheets for each item, what to cut, what to mark. */
@NullMarked
package dev.ringout.work;

import org.jspecify.annotations.NullMarked;
