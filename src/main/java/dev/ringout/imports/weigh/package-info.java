/** Weighs the ways to read a table by evidence, each tried on its rows. */
@NullMarked
package dev.ringout.imports.weigh;

import org.jspecify.annotations.NullMarked;
