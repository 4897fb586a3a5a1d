/** The documents: every kind has its code, its schema and its line in the reference. */
@NullMarked
package dev.ringout.json;

import org.jspecify.annotations.NullMarked;
