package dev.ringout.intake;

import dev.ringout.harness.PinDetail;
import dev.ringout.harness.Point;
import dev.ringout.source.UnusableInput;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

/** The sheet {@code Pins}: sizes, contacts and places on the face. */
final class PinRows {
  private static final Column SIZE = Column.of("Size");
  private static final Column CONTACT = Column.of("Contact");
  private static final Column X = Column.withUnit("X");
  private static final Column Y = Column.withUnit("Y");

  private PinRows() {}

  static List<PinDetail> read(SheetsOfHarness sheets) throws UnusableInput {
    Map<Point, PinDetail> pins = new LinkedHashMap<>();
    sheets.each(
        "Pins",
        List.of(
            SheetsOfHarness.REF, SheetsOfHarness.PIN, SIZE, CONTACT, X, Y, SheetsOfHarness.NOTE),
        List.of(SheetsOfHarness.REF, SheetsOfHarness.PIN),
        entry ->
            sheets
                .point(entry, SheetsOfHarness.REF, SheetsOfHarness.PIN)
                .ifPresent(
                    point -> {
                      if (pins.putIfAbsent(point, pin(entry, point, sheets)) != null) {
                        entry.error(
                            SheetsOfHarness.PIN.name(),
                            "the pin " + point + " is listed twice",
                            "");
                      }
                    }));
    return List.copyOf(pins.values());
  }

  private static PinDetail pin(Entry entry, Point point, SheetsOfHarness sheets) {
    return new PinDetail(
        point,
        sheets.shared(entry, SIZE),
        sheets.shared(entry, CONTACT),
        millimetres(entry, X),
        millimetres(entry, Y),
        sheets.shared(entry, SheetsOfHarness.NOTE),
        entry.place());
  }

  private static OptionalDouble millimetres(Entry entry, Column column) {
    String unit = entry.headingUnit(column.name());
    if (!unit.isEmpty() && !unit.equalsIgnoreCase("mm")) {
      entry.error(column.name(), "face positions are in mm, not in " + unit, "");
      return OptionalDouble.empty();
    }
    return SheetsOfHarness.number(entry, column);
  }
}
