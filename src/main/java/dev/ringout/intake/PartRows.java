package dev.ringout.intake;

import dev.ringout.cells.LikelyMeant;
import dev.ringout.cells.OhmsCell;
import dev.ringout.cells.VoltsCell;
import dev.ringout.harness.Part;
import dev.ringout.source.UnusableInput;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;

/** The sheet {@code Parts}: resistors, windings, lamps and the like, between two points. */
final class PartRows {
  private static final Column KIND = Column.of("Kind");
  private static final Column OHMS = Column.withUnit("Ohms");
  private static final Column TOLERANCE = Column.of("Tolerance %", "Tolerance");
  private static final Column MAX_TEST_VOLTS = Column.of("Max Test Volts");

  private PartRows() {}

  static List<Part> read(SheetsOfHarness sheets) throws UnusableInput {
    List<Part> parts = new ArrayList<>();
    sheets.each(
        "Parts",
        List.of(
            SheetsOfHarness.REF,
            SheetsOfHarness.PIN,
            SheetsOfHarness.TO_PIN,
            KIND,
            OHMS,
            TOLERANCE,
            MAX_TEST_VOLTS,
            SheetsOfHarness.NOTE),
        List.of(SheetsOfHarness.REF, SheetsOfHarness.PIN, SheetsOfHarness.TO_PIN),
        entry -> sheets.pair(entry).map(pair -> part(entry, pair, sheets)).ifPresent(parts::add));
    return parts;
  }

  private static Part part(Entry entry, SheetsOfHarness.Pair pair, SheetsOfHarness sheets) {
    return new Part(
        pair.from().ref(),
        pair.from(),
        pair.to(),
        kind(entry),
        ohms(entry),
        tolerance(entry),
        maxTestVolts(entry),
        sheets.shared(entry, SheetsOfHarness.NOTE),
        entry.place());
  }

  private static OptionalDouble ohms(Entry entry) {
    String text = entry.text(OHMS.name());
    if (text.isEmpty()) {
      return OptionalDouble.empty();
    }
    String unit = entry.headingUnit(OHMS.name());
    return entry
        .take(OHMS.name(), OhmsCell.ohms(text, OhmsCell.unit(unit).isPresent() ? unit : ""))
        .filter(ohms -> isAboveZero(entry, ohms))
        .map(OptionalDouble::of)
        .orElse(OptionalDouble.empty());
  }

  private static boolean isAboveZero(Entry entry, double ohms) {
    if (ohms <= 0) {
      entry.error(OHMS.name(), "a part's ohms must be above 0", "");
    }
    return ohms > 0;
  }

  private static OptionalDouble tolerance(Entry entry) {
    return TolerancePercent.within(
        SheetsOfHarness.number(entry, TOLERANCE),
        "a tolerance",
        text -> entry.error(TOLERANCE.name(), text, ""));
  }

  private static OptionalDouble maxTestVolts(Entry entry) {
    String text = entry.text(MAX_TEST_VOLTS.name());
    return text.isEmpty()
        ? OptionalDouble.empty()
        : entry
            .take(MAX_TEST_VOLTS.name(), VoltsCell.volts(text, ""))
            .map(OptionalDouble::of)
            .orElse(OptionalDouble.empty());
  }

  private static Part.Kind kind(Entry entry) {
    String text = entry.text(KIND.name());
    String word = text.toUpperCase(Locale.ROOT);
    for (Part.Kind kind : Part.Kind.values()) {
      if (kind.name().equals(word)) {
        return kind;
      }
    }
    List<String> words = List.of("resistor", "winding", "lamp", "diode", "capacitor", "suppressor");
    entry.warning(
        KIND.name(),
        "\""
            + text
            + "\" is not a kind of part known here ("
            + String.join(", ", words)
            + "); any reading through it is accepted",
        LikelyMeant.nearest(text, words));
    return Part.Kind.OTHER;
  }
}
