package dev.ringout.harness;

import dev.ringout.source.Place;
import java.util.OptionalDouble;

/**
 * A row of an item's own pin table.
 *
 * @param size the contact size of the cavity, such as {@code 22D}
 * @param xMillimetres face position seen from the wiring side
 * @param yMillimetres face position seen from the wiring side
 */
public record PinDetail(
    Point point,
    String size,
    String contact,
    OptionalDouble xMillimetres,
    OptionalDouble yMillimetres,
    String note,
    Place place) {}
