/** The main job in one call: a harness and readings in, everything found out. */
@NullMarked
package dev.ringout.check;

import org.jspecify.annotations.NullMarked;
