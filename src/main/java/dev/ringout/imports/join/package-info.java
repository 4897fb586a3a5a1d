/**
 * Makes the wiring of what the rows gave: both ends of each wire, one name for each item and pin.
 */
@NullMarked
package dev.ringout.imports.join;

import org.jspecify.annotations.NullMarked;
