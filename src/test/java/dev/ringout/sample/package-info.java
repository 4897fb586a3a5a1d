/** How the sample in harness-samples is made: an invented swing bridge and a simulated bench. */
@NullMarked
package dev.ringout.sample;

import org.jspecify.annotations.NullMarked;
