/** What the meter said, under which conditions, and who wrote it where. */
@NullMarked
package dev.ringout.readings;

import org.jspecify.annotations.NullMarked;
