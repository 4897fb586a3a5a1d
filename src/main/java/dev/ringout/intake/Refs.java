package dev.ringout.intake;

import dev.ringout.cells.Blanks;
import dev.ringout.cells.Understood;
import dev.ringout.harness.Point;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** Spelling of designators and pins: case of a designator does not matter, case of a pin does. */
final class Refs {
  private static final String SEPARATORS = "-:./";

  private final Map<String, String> firstWritten = new HashMap<>();

  /** A designator as it was first written. */
  String spelling(String ref) {
    return firstWritten.computeIfAbsent(ref.toUpperCase(Locale.ROOT), key -> ref);
  }

  private boolean isKnown(String ref) {
    return firstWritten.containsKey(ref.toUpperCase(Locale.ROOT));
  }

  /** A point from a designator's cell and a pin's cell, the latter possibly empty. */
  Understood<Point> point(String refText, String pinText) {
    if (refText.isEmpty()) {
      return Understood.not(
          pinText.isEmpty()
              ? "a wire needs a point at each end; give a stowed or spare end a point of its own"
              : "the pin " + pinText + " has no item");
    }
    if (!pinText.isEmpty()) {
      return Understood.as(new Point(spelling(refText), Point.pinName(pinText)));
    }
    return split(refText)
        .map(Understood::as)
        .orElseGet(
            () ->
                Understood.not(
                    "\""
                        + refText
                        + "\" names no pin; write a point such as J1-A or a pin beside it"));
  }

  /** Splits {@code J1-A}: where several splits are possible, at a known item, else at the last. */
  private Optional<Point> split(String text) {
    Optional<Point> last = Optional.empty();
    for (int i = text.length() - 2; i > 0; i--) {
      if (SEPARATORS.indexOf(text.charAt(i)) < 0) {
        continue;
      }
      String ref = Blanks.strip(text.substring(0, i));
      String pin = Point.pinName(Blanks.strip(text.substring(i + 1)));
      if (ref.isEmpty() || pin.isEmpty()) {
        continue;
      }
      if (isKnown(ref)) {
        return Optional.of(new Point(spelling(ref), pin));
      }
      if (last.isEmpty()) {
        last = Optional.of(new Point(ref, pin));
      }
    }
    return last.map(point -> new Point(spelling(point.ref()), point.pin()));
  }
}
