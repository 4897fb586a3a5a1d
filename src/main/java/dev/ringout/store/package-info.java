/**
 * Where units and what was read on them live: a file at one bench, a server in a shop. Rows are
 * only ever added. Knows tables of cells and nothing of what they mean.
 */
@NullMarked
package dev.ringout.store;

import org.jspecify.annotations.NullMarked;
