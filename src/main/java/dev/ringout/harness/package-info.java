/** The unit on paper: items, points, wires, links, switches, parts and limits. */
@NullMarked
package dev.ringout.harness;

import org.jspecify.annotations.NullMarked;
