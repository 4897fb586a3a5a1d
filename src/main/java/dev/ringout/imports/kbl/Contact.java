package dev.ringout.imports.kbl;

import dev.ringout.harness.Point;
import java.util.List;

/**
 * Where a wire is contacted.
 *
 * @param point the contact point of the file
 * @param holder the connector or box that it is of
 * @param points its cavities: the first is the wire's, the others are linked to it
 * @param position along the wire, 0 to 1; not a number where it is not given
 * @param contact the part number of its contact, or empty
 */
record Contact(Element point, Holder holder, List<Point> points, double position, String contact) {}
