/**
 * Damage that knows what it damages: parts of packed files, elements of XML, records of older
 * workbooks, cells of text, lines of seals.
 */
@NullMarked
package dev.ringout.benchmarks.damage;

import org.jspecify.annotations.NullMarked;
