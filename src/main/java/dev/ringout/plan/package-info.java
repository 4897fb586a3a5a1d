/** The steps that prove a unit, and the order in which hands make them. */
@NullMarked
package dev.ringout.plan;

import org.jspecify.annotations.NullMarked;
