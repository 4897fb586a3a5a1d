package dev.ringout.readings;

import dev.ringout.source.Place;
import java.util.List;

/**
 * What is known of a unit beside its readings, where somebody kept it.
 *
 * @param noted what was said of it, in order
 * @param ledSheets the names of its tests that were led at a bench, by which their cells are named
 * @param underWay the numbers of those that are not ended
 */
public record UnitHistory(List<Noted> noted, List<String> ledSheets, List<Integer> underWay) {
  /** Of a unit whose sheets are files. */
  public static final UnitHistory NONE = new UnitHistory(List.of(), List.of(), List.of());

  /** What is given can't be changed afterwards. */
  public UnitHistory {
    noted = List.copyOf(noted);
    ledSheets = List.copyOf(ledSheets);
    underWay = List.copyOf(underWay);
  }

  /** The signatures that do not count in their shop. */
  public List<Noted.Signed> doubtfulSignatures() {
    return noted.stream()
        .filter(Noted.Signed.class::isInstance)
        .map(Noted.Signed.class::cast)
        .filter(one -> !one.doubt().isEmpty())
        .toList();
  }

  /** What people said of it in words. */
  public List<Noted.Words> notes() {
    return noted.stream()
        .filter(Noted.Words.class::isInstance)
        .map(Noted.Words.class::cast)
        .toList();
  }

  /** Whether a cell is of a test that was led at a bench. */
  public boolean isLed(Place cell) {
    return ledSheets.stream()
        .anyMatch(name -> cell.file().equals(name) || cell.file().startsWith(name + "/"));
  }
}
