/**
 * Every sentence, made from typed facts: one place to read them, to filter them, later to translate
 * them.
 */
@NullMarked
package dev.ringout.words;

import org.jspecify.annotations.NullMarked;
