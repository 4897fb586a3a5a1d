/** Published tables, each value together with its citation. */
@NullMarked
package dev.ringout.standards;

import org.jspecify.annotations.NullMarked;
