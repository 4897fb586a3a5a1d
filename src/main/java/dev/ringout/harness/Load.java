package dev.ringout.harness;

import dev.ringout.source.Place;
import java.util.OptionalDouble;

/**
 * A current that flows between two points of one net.
 *
 * @param amps continuous current, or intermittent where so marked
 * @param volts the circuit's nominal volts; absent where not given
 * @param allowedDropVolts the drop that is allowed between the two points; absent: the table's
 * @param wireCelsius what the wire's insulation is rated for; absent: by its type, else 105
 */
public record Load(
    String name,
    Point from,
    Point to,
    double amps,
    OptionalDouble volts,
    OptionalDouble allowedDropVolts,
    OptionalDouble wireCelsius,
    boolean intermittent,
    Place place) {}
