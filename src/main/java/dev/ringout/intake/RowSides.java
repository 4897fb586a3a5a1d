package dev.ringout.intake;

import dev.ringout.harness.Point;
import dev.ringout.readings.Side;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The two sides between which a row's value lies: of a reading, or of one that is accepted. */
final class RowSides {
  static final Column STEP = Column.of("Step");
  static final Column FROM = Column.of("From");
  static final Column FROM_PIN = Column.of("From Pin");
  static final Column TO = Column.of("To");
  static final Column TO_PIN = Column.of("To Pin");

  private final HarnessPoints points;

  RowSides(HarnessPoints points) {
    this.points = points;
  }

  /** {@code step 36, J1-F to J2-4}, as far as the row says so. */
  static String subject(Entry entry) {
    String step = entry.asTyped(STEP.name());
    String from = asTyped(entry, FROM, FROM_PIN);
    String to = asTyped(entry, TO, TO_PIN);
    String sides = to.isEmpty() ? from : from.isEmpty() ? "to " + to : from + " to " + to;
    return Stream.of(step.isEmpty() ? "" : "step " + step, sides)
        .filter(part -> !part.isEmpty())
        .collect(Collectors.joining(", "));
  }

  private static String asTyped(Entry entry, Column ref, Column pin) {
    return Stream.of(entry.asTyped(ref.name()), entry.asTyped(pin.name()))
        .filter(part -> !part.isEmpty())
        .collect(Collectors.joining("-"));
  }

  /** What the first probe touched; what can't be understood is reported. */
  Optional<Side> from(Entry entry) {
    return side(entry, FROM, FROM_PIN);
  }

  /** What the second probe touched; what can't be understood is reported. */
  Optional<Side> to(Entry entry) {
    return side(entry, TO, TO_PIN);
  }

  private Optional<Side> side(Entry entry, Column ref, Column pin) {
    String refText = entry.text(ref.name());
    String pinText = entry.text(pin.name());
    if (refText.equalsIgnoreCase("REST") && pinText.isEmpty()) {
      return Optional.of(new Side.Rest());
    }
    return entry.take(ref.name(), points.side(refText, pinText)).map(Function.identity());
  }

  /** Whether a value can lie between the two; where not, it is reported. */
  static boolean areApart(Entry entry, Side from, Side to) {
    if (from.isRest() && to.isRest()) {
      entry.error(TO.name(), "both sides are REST", "");
      return false;
    }
    for (Point point : from.points()) {
      if (to.points().contains(point)) {
        entry.error(TO.name(), point + " is on both sides of the reading", "");
        return false;
      }
    }
    return true;
  }
}
