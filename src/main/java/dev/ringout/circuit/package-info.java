/**
 * Nets, cut edges, parts and expected values in every state of the switches. The only place of
 * JGraphT.
 */
@NullMarked
package dev.ringout.circuit;

import org.jspecify.annotations.NullMarked;
