package dev.ringout.diagnose.run;

import dev.ringout.circuit.Circuit;
import dev.ringout.circuit.Probing;
import dev.ringout.compare.Comparison;
import dev.ringout.compare.Judged;
import dev.ringout.compare.Outcome;
import dev.ringout.diagnose.NextReading;
import dev.ringout.harness.SwitchState;
import dev.ringout.readings.Reading;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** The readings that need not be asked for: those that were made, and those asked for already. */
final class AskedReadings {
  static final String REST = "REST";

  private final Circuit circuit;
  private final Made made;
  private final Set<String> named = new HashSet<>();

  AskedReadings(Circuit circuit, Comparison comparison) {
    this.circuit = circuit;
    made = new Made(comparison);
  }

  /** Whether it was neither made nor asked for; it counts as asked for from then on. */
  boolean isNew(NextReading reading) {
    String key = key(reading.kind(), reading.from(), reading.to(), reading.state());
    return !made.has(key, reading.from(), reading.to()) && named.add(key);
  }

  /** Whether it was made or is asked for already. */
  boolean isMade(Probing probing) {
    String from = circuit.point(probing.from()[0]).toString();
    String to = probing.toRest() ? REST : circuit.point(probing.to()[0]).toString();
    String key = key(Reading.Kind.CONTINUITY, from, to, probing.state());
    return named.contains(key) || made.has(key, from, to);
  }

  private static String key(Reading.Kind kind, String from, String to, SwitchState state) {
    String sides = from.compareTo(to) < 0 ? from + "|" + to : to + "|" + from;
    return kind + "|" + sides + "|" + state;
  }

  /**
   * The readings that were made and judged, by one of their sides: few are asked about of the many.
   */
  private static final class Made {
    private final Map<String, List<Judged>> bySide = new HashMap<>();

    Made(Comparison comparison) {
      for (Judged judged : comparison.inForce()) {
        if (judged.reading().measured().made() && judged.outcome() != Outcome.NOT_JUDGED) {
          String from = judged.reading().from().toString();
          String to = judged.reading().to().toString();
          bySide.computeIfAbsent(one(from, to), side -> new ArrayList<>(2)).add(judged);
        }
      }
    }

    /** The same for either way round. */
    private static String one(String from, String to) {
      return from.compareTo(to) < 0 ? from : to;
    }

    boolean has(String key, String from, String to) {
      return bySide.getOrDefault(one(from, to), List.of()).stream()
          .map(Judged::reading)
          .anyMatch(
              reading ->
                  key(
                          reading.kind(),
                          reading.from().toString(),
                          reading.to().toString(),
                          reading.state())
                      .equals(key));
    }
  }
}
