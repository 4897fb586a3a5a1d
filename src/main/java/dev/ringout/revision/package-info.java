/** Two revisions of a unit: what changed, what is to be done, in which order. */
@NullMarked
package dev.ringout.revision;

import org.jspecify.annotations.NullMarked;
