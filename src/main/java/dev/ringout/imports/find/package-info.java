/**
 * Finds the tables of a sheet and settles what each of their columns is, by headings and by cells.
 */
@NullMarked
package dev.ringout.imports.find;

import org.jspecify.annotations.NullMarked;
