/** Many units of one list side by side: what they share, and which joins stand out from theirs. */
@NullMarked
package dev.ringout.lot;

import org.jspecify.annotations.NullMarked;
