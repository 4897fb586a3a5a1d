/** Everything on the net of one point, with the way there, and what lies between two. */
@NullMarked
package dev.ringout.trace;

import org.jspecify.annotations.NullMarked;
