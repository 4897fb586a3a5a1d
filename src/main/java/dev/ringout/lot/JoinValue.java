package dev.ringout.lot;

import dev.ringout.circuit.Circuit;
import dev.ringout.compare.Judged;
import dev.ringout.readings.Measured;
import dev.ringout.readings.Reading;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/**
 * What one unit read at a join, the leads taken off and what its wires account for.
 *
 * @param excessOhms what is left; may be below zero
 * @param accounted whether anything is known of the wires, so that it was taken off
 * @param doubtOhms the standard deviation that the meter and its display alone may give it
 */
public record JoinValue(Judged judged, double excessOhms, boolean accounted, double doubtOhms) {
  /** Of what lies anywhere between two bounds alike (JCGM 100:2008, 4.3.7). */
  private static final double SPREAD_BETWEEN_BOUNDS = Math.sqrt(3);

  /** The values of the joins of a unit that were read as numbers between two single points. */
  static Map<Join, JoinValue> of(Circuit circuit, Iterable<Judged> readings) {
    Map<Join, JoinValue> values = new LinkedHashMap<>();
    for (Judged judged : readings) {
      if (judged.reading().kind() == Reading.Kind.CONTINUITY
          && judged.expected().isJoined()
          && judged.probing().isPair()) {
        of(judged).ifPresent(value -> values.put(join(circuit, judged), value));
      }
    }
    return values;
  }

  private static Join join(Circuit circuit, Judged judged) {
    return Join.of(
        circuit.point(judged.probing().from()[0]),
        circuit.point(judged.probing().to()[0]),
        judged.probing().state());
  }

  private static Optional<JoinValue> of(Judged judged) {
    Optional<Measured.Value> value = judged.reading().measured().value();
    if (value.isEmpty() || !judged.seen().isKnown()) {
      return Optional.empty();
    }
    boolean accounted = judged.limit().expected().isKnown();
    double expected = accounted ? judged.limit().expected().middleOhms() : 0;
    double bound =
        judged.reading().meter().uncertaintyOhms(value.get())
            + judged.reading().meter().benefitOfTheDoubtOhms(value.get());
    return Optional.of(
        new JoinValue(
            judged,
            judged.seen().middleOhms() - expected,
            accounted,
            bound / SPREAD_BETWEEN_BOUNDS));
  }
}
