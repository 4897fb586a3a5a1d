/**
 * What a wire list is made of: its words, tables, columns and roles, the ends and wires of its
 * rows, what the user has said about it, and what is suspect in it. Finds, reads and joins nothing.
 */
@NullMarked
package dev.ringout.imports.list;

import org.jspecify.annotations.NullMarked;
