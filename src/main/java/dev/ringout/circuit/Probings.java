package dev.ringout.circuit;

import dev.ringout.readings.Reading;
import dev.ringout.readings.Side;
import java.util.IdentityHashMap;

/**
 * Where the probes of readings were. One side serves all readings that were taken there, so its
 * points need to be looked up but once.
 *
 * <p>Not for use by several threads at once.
 */
public final class Probings {
  private final Circuit circuit;
  private final IdentityHashMap<Side, int[]> known = new IdentityHashMap<>();

  /** Where probes were among the points of a circuit. */
  public Probings(Circuit circuit) {
    this.circuit = circuit;
  }

  /**
   * The probing of a reading.
   *
   * @throws IllegalArgumentException where the harness does not name a point of it
   */
  public Probing of(Reading reading) {
    int[] from = points(reading.from());
    int[] to = points(reading.to());
    return reading.from().isRest()
        ? new Probing(to, Probing.NO_POINTS, true, reading.state())
        : new Probing(from, to, reading.to().isRest(), reading.state());
  }

  private int[] points(Side side) {
    return side.isRest() ? Probing.NO_POINTS : known.computeIfAbsent(side, this::numbers);
  }

  private int[] numbers(Side some) {
    return some.points().stream().mapToInt(circuit::index).toArray();
  }
}
