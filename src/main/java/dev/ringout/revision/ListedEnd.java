package dev.ringout.revision;

import dev.ringout.harness.Point;
import dev.ringout.harness.Wire;

/** The end of a wire of the earlier list, by the point it is on there. */
record ListedEnd(Wire wire, Point at) {}
