/** Places in the user's files and the problems found there. */
@NullMarked
package dev.ringout.source;

import org.jspecify.annotations.NullMarked;
