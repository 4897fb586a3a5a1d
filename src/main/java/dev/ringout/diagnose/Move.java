package dev.ringout.diagnose;

import dev.ringout.harness.Point;
import dev.ringout.harness.Wire;

/** A wire's end that is listed at one point and sits at another. */
public record Move(Wire wire, Point from, Point to) {}
