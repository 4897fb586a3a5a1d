package dev.ringout.intake;

import dev.ringout.cells.GaugeCell;
import dev.ringout.cells.LengthCell;
import dev.ringout.cells.Understood;
import dev.ringout.harness.Point;
import dev.ringout.harness.Wire;
import dev.ringout.sheet.Sheet;
import dev.ringout.source.UnusableInput;
import dev.ringout.units.Gauge;
import dev.ringout.units.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The sheet {@code Wires}: what a harness file must have. */
final class WireRows {
  private static final Column WIRE = Column.of("Wire");
  private static final Column FROM = Column.of("From");
  private static final Column FROM_PIN = Column.of("From Pin");
  private static final Column TO = Column.of("To");
  private static final Column GAUGE = Column.withUnit("Gauge");
  private static final Column WIRE_TYPE = Column.of("Wire Type");
  private static final Column COLOUR = Column.of("Color", "Colour");
  private static final Column LENGTH = Column.withUnit("Length");
  private static final Column SIGNAL = Column.of("Signal");
  private static final Column CABLE = Column.of("Cable");
  private static final Column GROUP = Column.of("Group");
  private static final Column FROM_CONTACT = Column.of("From Contact");
  private static final Column TO_CONTACT = Column.of("To Contact");

  private static final List<Column> COLUMNS =
      List.of(
          WIRE,
          FROM_PIN,
          FROM_CONTACT,
          FROM,
          SheetsOfHarness.TO_PIN,
          TO_CONTACT,
          TO,
          GAUGE,
          WIRE_TYPE,
          COLOUR,
          LENGTH,
          SIGNAL,
          CABLE,
          GROUP,
          SheetsOfHarness.NOTE);

  private final SheetsOfHarness sheets;

  private WireRows(SheetsOfHarness sheets) {
    this.sheets = sheets;
  }

  static List<Wire> read(SheetsOfHarness sheets) throws UnusableInput {
    WireRows rows = new WireRows(sheets);
    List<Wire> wires = new ArrayList<>();
    Optional<Sheet> sheet = sheets.find(HarnessReader.WIRES);
    if (sheet.isPresent()) {
      Table table =
          new Table(sheet.get(), COLUMNS, List.of(FROM, TO), sheets.problems())
              .unless(WhichFile::insteadOfWires);
      // A unit may be of links alone: then the sheet of wires may be empty too.
      (sheets.find(HarnessReader.LINKS).isPresent() ? table.orEmpty() : table)
          .forEach(entry -> rows.wire(entry).ifPresent(wires::add));
    }
    return wires;
  }

  /** Whether a sheet, whatever its name, holds wires with both their ends. */
  static boolean areOn(Sheet sheet) throws UnusableInput {
    return SheetsByName.isHeaded(sheet, List.of(WIRE, FROM, TO));
  }

  /** Whether a heading means one of the sheet's columns. */
  static boolean isColumn(String heading) {
    return COLUMNS.stream()
        .anyMatch(column -> column.matches(heading) || !column.unitIn(heading).isEmpty());
  }

  private Optional<Wire> wire(Entry entry) {
    Optional<Point> from = sheets.point(entry, FROM, FROM_PIN);
    Optional<Point> to = sheets.point(entry, TO, SheetsOfHarness.TO_PIN);
    Optional<Gauge> gauge = optional(entry, GAUGE, GaugeCell::gauge);
    Optional<Length> length = optional(entry, LENGTH, LengthCell::length);
    if (from.isEmpty() || to.isEmpty()) {
      return Optional.empty();
    }
    if (from.equals(to)) {
      entry.error(TO.name(), "the wire goes from " + from.get() + " to itself", "");
      return Optional.empty();
    }
    String name = entry.text(WIRE.name());
    return Optional.of(
        Wire.of(
                name.isEmpty() ? from.get() + ">" + to.get() : name,
                from.get(),
                to.get(),
                entry.place())
            .madeOf(
                Wire.Make.UNSAID
                    .ofGauge(gauge)
                    .ofType(sheets.shared(entry, WIRE_TYPE))
                    .inColour(sheets.shared(entry, COLOUR))
                    .ofLength(length))
            .usedFor(
                Wire.Use.UNSAID
                    .carrying(sheets.shared(entry, SIGNAL))
                    .inCable(sheets.shared(entry, CABLE))
                    .inGroup(sheets.shared(entry, GROUP)))
            .withContact(Wire.End.FROM, sheets.shared(entry, FROM_CONTACT))
            .withContact(Wire.End.TO, sheets.shared(entry, TO_CONTACT))
            .noted(sheets.shared(entry, SheetsOfHarness.NOTE))
            .withNotes(entry.notes()));
  }

  private interface WithUnit<T> {
    Understood<T> understand(String text, String headingUnit);
  }

  private static <T> Optional<T> optional(Entry entry, Column column, WithUnit<T> reader) {
    String text = entry.text(column.name());
    if (text.isEmpty()) {
      return Optional.empty();
    }
    return entry.take(column.name(), reader.understand(text, entry.headingUnit(column.name())));
  }
}
