/** Asks a meter by its profile, and never takes one answer for another. */
@NullMarked
package dev.ringout.meter.drive;

import org.jspecify.annotations.NullMarked;
