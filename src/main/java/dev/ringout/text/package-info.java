/** Pages for a terminal. */
@NullMarked
package dev.ringout.text;

import org.jspecify.annotations.NullMarked;
