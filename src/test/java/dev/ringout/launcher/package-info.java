/** The launcher as a user meets it. Needs the package. */
@NullMarked
package dev.ringout.launcher;

import org.jspecify.annotations.NullMarked;
