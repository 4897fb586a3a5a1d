/**
 * Reads the rows of a table, by a reader a layout; every row is counted, every damaged cell is
 * said.
 */
@NullMarked
package dev.ringout.imports.rows;

import org.jspecify.annotations.NullMarked;
