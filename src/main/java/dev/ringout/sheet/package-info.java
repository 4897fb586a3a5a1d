/**
 * Tabular files as sheets of cells that know their place. The only place of the workbook and CSV
 * libraries.
 */
@NullMarked
package dev.ringout.sheet;

import org.jspecify.annotations.NullMarked;
