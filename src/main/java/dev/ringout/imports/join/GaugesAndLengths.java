package dev.ringout.imports.join;

import dev.ringout.cells.GaugeCell;
import dev.ringout.cells.LengthCell;
import dev.ringout.cells.Understood;
import dev.ringout.imports.list.Draft;
import dev.ringout.imports.list.Draft.Value;
import dev.ringout.imports.list.ListFindings;
import dev.ringout.imports.list.Role;
import dev.ringout.imports.list.Units;
import dev.ringout.imports.list.WiringOddity;
import dev.ringout.imports.list.Words;
import dev.ringout.source.Severity;
import dev.ringout.units.Gauge;
import dev.ringout.units.Length;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Values with a unit. What is none goes along as a note; numbers without a unit do too, unless the
 * user gives it, and are asked about once for the list as a whole.
 */
final class GaugesAndLengths {
  private static final int WRITTEN_OUT = 3;

  private final Words words;
  private final Units units;
  private final NoteHeadings headings;
  private final ListFindings findings;
  private final Map<String, Boolean> noAwg = new HashMap<>();
  private final Map<String, Understood<Gauge>> gauges = new HashMap<>();
  private final Map<String, Understood<Length>> lengths = new HashMap<>();
  private final Set<Column> notAwg = new HashSet<>();
  private final List<Value> gaugesWithoutUnit = new ArrayList<>();
  private final List<Value> lengthsWithoutUnit = new ArrayList<>();

  GaugesAndLengths(Words words, Units units, NoteHeadings headings, ListFindings findings) {
    this.words = words;
    this.units = units;
    this.headings = headings;
    this.findings = findings;
  }

  private record Column(String sheet, int index) {
    static Column of(Value value) {
      return new Column(value.table().grid().name(), value.column().index());
    }
  }

  /**
   * Looks at a wire before any is taken: of a column that holds 0.75 no bare number is an AWG size,
   * not even a 4 that could be one.
   */
  void look(Draft draft) {
    Value value = draft.texts().get(Role.GAUGE);
    if (value != null
        && value.unit().isEmpty()
        && noAwg.computeIfAbsent(value.text(), GaugesAndLengths::isNoAwg)) {
      notAwg.add(Column.of(value));
    }
  }

  /** {@code 20.0} is a slip of the spreadsheet; {@code 0.75} and {@code 95} are no AWG sizes. */
  private static boolean isNoAwg(String text) {
    return GaugeCell.isNumber(text)
        && !text.matches("\\d+[.,]0+")
        && GaugeCell.gauge(text, "").value().isEmpty();
  }

  /**
   * The gauge of a wire.
   *
   * @param notes takes the text of what is none
   */
  Optional<Gauge> gauge(Draft draft, Map<String, String> notes) {
    Value value = draft.texts().get(Role.GAUGE);
    if (value == null || words.isNothing(value.text())) {
      return Optional.empty();
    }
    String unit = value.unit();
    if (unit.isEmpty() && GaugeCell.isNumber(value.text())) {
      unit = units.gauge().map(Units.OfGauge::word).orElse("");
      if (unit.isEmpty() && notAwg.contains(Column.of(value))) {
        gaugesWithoutUnit.add(value);
        headings.put(notes, Role.GAUGE.title(), value.text());
        return Optional.empty();
      }
    }
    String said = unit;
    Understood<Gauge> gauge =
        gauges.computeIfAbsent(
            value.text() + "\t" + said, key -> GaugeCell.gauge(value.text(), said));
    if (gauge.value().isEmpty()) {
      keep(
          value,
          Role.GAUGE,
          notes,
          new WiringOddity.GaugeNotTaken(gauge.complaint(), gauge.maybe()));
    }
    return gauge.value();
  }

  /**
   * The length of a wire.
   *
   * @param notes takes the text of what is none
   */
  Optional<Length> length(Draft draft, Map<String, String> notes) {
    Value value = draft.texts().get(Role.LENGTH);
    if (value == null || words.isNothing(value.text())) {
      return Optional.empty();
    }
    String unit = value.unit();
    if (unit.isEmpty() && LengthCell.isNumber(value.text())) {
      unit = units.length().map(Units.OfLength::word).orElse("");
      if (unit.isEmpty()) {
        lengthsWithoutUnit.add(value);
        headings.put(notes, Role.LENGTH.title(), value.text());
        return Optional.empty();
      }
    }
    String said = unit;
    Understood<Length> length =
        lengths.computeIfAbsent(
            value.text() + "\t" + said, key -> LengthCell.length(value.text(), said));
    if (length.value().isEmpty()) {
      keep(
          value,
          Role.LENGTH,
          notes,
          new WiringOddity.LengthNotTaken(length.complaint(), length.maybe()));
    }
    return length.value();
  }

  private void keep(Value value, Role role, Map<String, String> notes, WiringOddity why) {
    findings.add(Severity.WARNING, value.place(), value.heading(), why);
    headings.put(notes, role.title(), value.text());
  }

  /** Asks once for the unit of all gauges without one, and once for that of the lengths. */
  void report() {
    ask(
        gaugesWithoutUnit,
        new WiringOddity.GaugesWithoutUnit(
            gaugesWithoutUnit.size(), written(gaugesWithoutUnit), places(gaugesWithoutUnit)));
    ask(
        lengthsWithoutUnit,
        new WiringOddity.LengthsWithoutUnit(
            lengthsWithoutUnit.size(), written(lengthsWithoutUnit), places(lengthsWithoutUnit)));
  }

  private void ask(List<Value> values, WiringOddity question) {
    if (!values.isEmpty()) {
      Value first = values.get(0);
      findings.add(Severity.WARNING, first.place(), first.heading(), question);
    }
  }

  private static List<String> written(List<Value> values) {
    return values.stream().map(Value::text).limit(WRITTEN_OUT).toList();
  }

  private static List<String> places(List<Value> values) {
    long sheets = values.stream().map(value -> value.place().sheet()).distinct().count();
    return values.stream()
        .map(Value::place)
        .map(place -> sheets > 1 ? place.sheet() + "!" + place.cell() : place.cell())
        .toList();
  }
}
