package dev.ringout.check;

import dev.ringout.circuit.Circuit;
import dev.ringout.circuit.Conductor;
import dev.ringout.harness.Part;
import dev.ringout.readings.Reading;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What somebody wrote beside a reading: a value may be good and the note say that the contact is
 * loose. What a planned sheet prints there, and what a bench adds, is not a note.
 *
 * @param words as written
 */
public record Noted(Reading reading, String words) {
  /** {@code J1-A stays; W012}: the probe that is not moved, and what the step is about. */
  private static final Pattern STAYS = Pattern.compile("^(?:\\S+ stays|same pin)(?:; |$)");

  /** How a value came in at the bench, and what the meter said. */
  private static final Pattern CAME_IN =
      Pattern.compile("(?:^|; )(?:typed|settled|key|meter-key)(?:; the meter said \".*\")?$");

  static List<Noted> of(Circuit circuit, List<Reading> readings) {
    Set<String> printed =
        Stream.of(
                Stream.of("", "open"),
                circuit.conductors().stream().map(Conductor::label),
                circuit.harness().parts().stream().map(Part::label))
            .flatMap(words -> words)
            .collect(Collectors.toSet());
    return readings.stream()
        .filter(reading -> !reading.note().isEmpty())
        .map(reading -> new Noted(reading, CAME_IN.matcher(reading.note()).replaceFirst("")))
        .filter(noted -> !printed.contains(STAYS.matcher(noted.words()).replaceFirst("")))
        .toList();
  }
}
