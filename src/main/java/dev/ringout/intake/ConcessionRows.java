package dev.ringout.intake;

import dev.ringout.cells.LikelyMeant;
import dev.ringout.cells.OhmsCell;
import dev.ringout.cells.PlainNumber;
import dev.ringout.cells.TimeCell;
import dev.ringout.harness.SerialNumbers;
import dev.ringout.harness.SwitchState;
import dev.ringout.readings.Concession;
import dev.ringout.readings.Reading;
import dev.ringout.readings.Side;
import dev.ringout.sheet.Sheet;
import dev.ringout.source.Problem;
import dev.ringout.source.Problems;
import dev.ringout.source.Severity;
import dev.ringout.source.UnusableInput;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** The sheet {@code Waivers} of a readings file: what an inspector accepts out of limits. */
final class ConcessionRows {
  private static final Column KIND = Column.of("Kind");
  private static final Column STATE = Column.of("State");
  private static final Column ACCEPTED = Column.withUnit("Accepted");
  private static final Column UNIT = Column.of("Unit");
  private static final Column WHO = Column.of("Who");
  private static final Column WHY = Column.of("Why");
  private static final Column UNTIL = Column.of("Until");
  private static final Column SERIALS = Column.of("Serial Numbers", "Serial Number", "Serials");

  private static final List<Column> COLUMNS =
      List.of(
          KIND,
          RowSides.FROM_PIN,
          RowSides.FROM,
          RowSides.TO_PIN,
          RowSides.TO,
          STATE,
          ACCEPTED,
          UNIT,
          WHO,
          WHY,
          UNTIL,
          SERIALS);
  private static final List<Column> REQUIRED =
      List.of(KIND, RowSides.FROM, RowSides.TO, ACCEPTED, WHO, WHY);
  private static final List<String> KINDS = List.of("continuity", "insulation");

  private final HarnessPoints points;
  private final RowSides sides;
  private final List<Concession> concessions = new ArrayList<>();
  private int errors;

  private ConcessionRows(HarnessPoints points) {
    this.points = points;
    this.sides = new RowSides(points);
  }

  static List<Concession> read(Sheet sheet, HarnessPoints points, Problems problems)
      throws UnusableInput {
    ConcessionRows rows = new ConcessionRows(points);
    new Table(sheet, COLUMNS, REQUIRED, problems)
        .naming(RowSides::subject, rows::count)
        .forEach(rows::row);
    return List.copyOf(rows.concessions);
  }

  private void count(Problem problem) {
    errors += problem.severity() == Severity.ERROR ? 1 : 0;
  }

  private void row(Entry entry) {
    int errorsBefore = errors;
    Optional<Reading.Kind> kind = kind(entry);
    Optional<Side> from = sides.from(entry);
    Optional<Side> to = sides.to(entry);
    Optional<SwitchState> state = entry.take(STATE.name(), points.state(entry.text(STATE.name())));
    OptionalDouble accepted = accepted(entry);
    String who = needed(entry, WHO, "a waiver must say who accepts the reading");
    String why = needed(entry, WHY, "a waiver must say why the reading is accepted");
    Optional<LocalDate> until = until(entry);
    Optional<SerialNumbers> serials = serials(entry);
    if (kind.isEmpty()
        || from.isEmpty()
        || to.isEmpty()
        || state.isEmpty()
        || accepted.isEmpty()
        || !RowSides.areApart(entry, from.get(), to.get())
        || errors > errorsBefore) {
      return;
    }
    concessions.add(
        new Concession(
            kind.get(),
            from.get(),
            to.get(),
            state.get(),
            accepted.getAsDouble(),
            who,
            why,
            until,
            serials,
            entry.place()));
  }

  private static Optional<Reading.Kind> kind(Entry entry) {
    String text = entry.text(KIND.name());
    for (Reading.Kind kind : Reading.Kind.values()) {
      if (kind.name().equalsIgnoreCase(text)) {
        return Optional.of(kind);
      }
    }
    entry.error(
        KIND.name(),
        text.isEmpty()
            ? "a waiver is for a continuity or an insulation reading"
            : "\"" + text + "\" is not a kind of reading; write continuity or insulation",
        LikelyMeant.nearest(text, KINDS));
    return Optional.empty();
  }

  private static String needed(Entry entry, Column column, String why) {
    String text = entry.text(column.name());
    if (text.isEmpty()) {
      entry.error(column.name(), why, "");
    }
    return text;
  }

  /** A bare number is refused: 300 mΩ taken for 300 Ω would let an open pass. */
  private static OptionalDouble accepted(Entry entry) {
    String text =
        needed(entry, ACCEPTED, "a waiver must say up to which value the reading is accepted");
    if (text.isEmpty()) {
      return OptionalDouble.empty();
    }
    String ownUnit = entry.text(UNIT.name());
    String unit = ownUnit.isEmpty() ? entry.headingUnit(ACCEPTED.name()) : ownUnit;
    if (unit.isEmpty() && PlainNumber.of(text).isPresent()) {
      entry.error(ACCEPTED.name(), "the value accepted needs its unit, such as mΩ, Ω, kΩ, MΩ", "");
      return OptionalDouble.empty();
    }
    if (OhmsCell.unit(unit).isEmpty()) {
      entry.error(
          (ownUnit.isEmpty() ? ACCEPTED : UNIT).name(),
          "\"" + unit + "\" is not a unit of resistance; write one such as mΩ, Ω, kΩ, MΩ",
          "");
      return OptionalDouble.empty();
    }
    Optional<Double> ohms = entry.take(ACCEPTED.name(), OhmsCell.ohms(text, unit));
    if (ohms.isPresent() && ohms.get() < 0) {
      entry.error(ACCEPTED.name(), "the value accepted can't be negative", "");
    }
    return ohms.map(OptionalDouble::of).orElse(OptionalDouble.empty());
  }

  private static Optional<LocalDate> until(Entry entry) {
    String text = entry.timeText(UNTIL);
    return text.isEmpty() ? Optional.empty() : entry.take(UNTIL.name(), TimeCell.day(text));
  }

  private static Optional<SerialNumbers> serials(Entry entry) {
    String text = entry.text(SERIALS.name());
    if (text.isEmpty()) {
      return Optional.empty();
    }
    Optional<SerialNumbers> serials = SerialNumbers.of(text);
    if (serials.isEmpty()) {
      entry.error(
          SERIALS.name(),
          "\""
              + text
              + "\" does not say which serial numbers; write, for example, 0418, 0100 to 0200, or 0300"
              + " and on",
          "");
    }
    return serials;
  }
}
