package dev.ringout.intake;

import dev.ringout.cells.LikelyMeant;
import dev.ringout.harness.Harness;
import dev.ringout.harness.Load;
import dev.ringout.harness.Point;
import dev.ringout.source.UnusableInput;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/** The sheet {@code Loads}: what draws how many amps between two points that the list has. */
final class LoadRows {
  private static final Column NAME = Column.of("Name", "Load");
  private static final Column FROM = Column.of("From");
  private static final Column FROM_PIN = Column.of("From Pin");
  private static final Column TO = Column.of("To");
  private static final Column AMPS = Column.of("Amps");
  private static final Column VOLTS = Column.of("Volts");
  private static final Column ALLOWED_DROP = Column.of("Allowed Drop V", "Allowed Drop");
  private static final Column WIRE_CELSIUS = Column.of("Wire °C", "Wire C");
  private static final Column DUTY = Column.of("Duty");

  private final SheetsOfHarness sheets;
  private final Set<Point> known;
  private final List<Load> loads = new ArrayList<>();

  private LoadRows(SheetsOfHarness sheets, Harness unit) {
    this.sheets = sheets;
    known = sheets.find("Loads").isPresent() ? Set.copyOf(unit.points()) : Set.of();
  }

  static List<Load> read(SheetsOfHarness sheets, Harness unit) throws UnusableInput {
    LoadRows rows = new LoadRows(sheets, unit);
    sheets.each(
        "Loads",
        List.of(
            NAME,
            FROM_PIN,
            FROM,
            SheetsOfHarness.TO_PIN,
            TO,
            AMPS,
            VOLTS,
            ALLOWED_DROP,
            WIRE_CELSIUS,
            DUTY,
            SheetsOfHarness.NOTE),
        List.of(FROM, TO, AMPS),
        rows::row);
    return List.copyOf(rows.loads);
  }

  private void row(Entry entry) {
    Optional<Point> from = sheets.point(entry, FROM, FROM_PIN);
    Optional<Point> to = sheets.point(entry, TO, SheetsOfHarness.TO_PIN);
    OptionalDouble amps = SheetsOfHarness.number(entry, AMPS);
    if (amps.isEmpty()) {
      entry.error(AMPS.name(), "a load needs its amps", "");
    } else if (isKnown(entry, FROM, from) && isKnown(entry, TO, to)) {
      loads.add(
          new Load(
              entry.text(NAME.name()),
              from.orElseThrow(),
              to.orElseThrow(),
              amps.getAsDouble(),
              SheetsOfHarness.number(entry, VOLTS),
              SheetsOfHarness.number(entry, ALLOWED_DROP),
              SheetsOfHarness.number(entry, WIRE_CELSIUS),
              entry.text(DUTY.name()).toLowerCase(Locale.ROOT).startsWith("int"),
              entry.place()));
    }
  }

  /** A load at a point that nothing else names is a misspelt pin. */
  private boolean isKnown(Entry entry, Column column, Optional<Point> point) {
    if (point.isPresent() && !known.contains(point.get())) {
      entry.error(
          column.name(),
          "the harness has no point " + point.get(),
          LikelyMeant.nearest(
              point.get().toString(), known.stream().map(Point::toString).sorted().toList()));
      return false;
    }
    return point.isPresent();
  }
}
