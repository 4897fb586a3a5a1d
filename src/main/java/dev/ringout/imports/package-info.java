/**
 * Wire lists as other people made them: finds the tables, understands the columns and cells, and
 * makes a harness of what holds; everything else is said, with its cell.
 */
@NullMarked
package dev.ringout.imports;

import org.jspecify.annotations.NullMarked;
