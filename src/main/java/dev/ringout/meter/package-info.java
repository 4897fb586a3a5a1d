/**
 * Meters that say their readings themselves: where one is, how it is spoken to, what it said, and
 * when a value counts as settled. What moves bytes is in {@code link}, what asks in {@code drive}.
 */
@NullMarked
package dev.ringout.meter;

import org.jspecify.annotations.NullMarked;
