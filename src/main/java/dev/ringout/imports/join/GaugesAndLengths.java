package dev.ringout.imports.join;

import dev.ringout.cells.GaugeCell;
import dev.ringout.cells.LengthCell;
import dev.ringout.cells.Understood;
import dev.ringout.imports.list.Draft;
import dev.ringout.imports.list.Draft.Value;
import dev.ringout.imports.list.ListFindings;
import dev.ringout.imports.list.Role;
import dev.ringout.imports.list.WiringOddity;
import dev.ringout.imports.list.Words;
import dev.ringout.source.Place;
import dev.ringout.source.Severity;
import dev.ringout.units.Gauge;
import dev.ringout.units.Length;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Values with a unit. What is none goes along as a note, and is said once a column. */
final class GaugesAndLengths {
  private static final int SAID_ONE_BY_ONE = 20;

  private final Words words;
  private final NoteHeadings headings;
  private final ListFindings findings;
  private final Map<String, Understood<Gauge>> gauges = new HashMap<>();
  private final Map<String, Understood<Length>> lengths = new HashMap<>();
  private final Map<Column, List<NotTaken>> notTaken = new LinkedHashMap<>();

  GaugesAndLengths(Words words, NoteHeadings headings, ListFindings findings) {
    this.words = words;
    this.headings = headings;
    this.findings = findings;
  }

  private record Column(Role role, String sheet, int index) {}

  private record NotTaken(Value value, String complaint, String maybe) {}

  private interface Reader<T> {
    Understood<T> read(String text, String unit);
  }

  /**
   * The gauge of a wire.
   *
   * @param notes takes the text of what is none
   */
  Optional<Gauge> gauge(Draft draft, Map<String, String> notes) {
    return taken(draft, Role.GAUGE, gauges, GaugeCell::gauge, notes);
  }

  /**
   * The length of a wire.
   *
   * @param notes takes the text of what is none
   */
  Optional<Length> length(Draft draft, Map<String, String> notes) {
    return taken(draft, Role.LENGTH, lengths, LengthCell::length, notes);
  }

  private <T> Optional<T> taken(
      Draft draft,
      Role role,
      Map<String, Understood<T>> known,
      Reader<T> reader,
      Map<String, String> notes) {
    Value value = draft.texts().get(role);
    if (value == null || words.isNothing(value.text())) {
      return Optional.empty();
    }
    String key = value.unit().isEmpty() ? value.text() : value.text() + "\t" + value.unit();
    Understood<T> understood = known.get(key);
    if (understood == null) {
      understood = reader.read(value.text(), value.unit());
      known.put(key, understood);
    }
    if (understood.value().isEmpty()) {
      notTaken
          .computeIfAbsent(
              new Column(role, value.place().sheet(), value.place().column()),
              column -> new ArrayList<>())
          .add(new NotTaken(value, understood.complaint(), understood.maybe()));
      headings.put(notes, role.title(), value.text());
    }
    return understood.value();
  }

  /** Says which values are none: one by one, or once a column where it is the same with all. */
  void report() {
    notTaken.forEach(
        (column, all) -> {
          if (all.size() <= SAID_ONE_BY_ONE) {
            all.forEach(one -> say(one.value(), alone(column, one)));
          } else {
            say(all.get(0).value(), together(column, all));
          }
        });
  }

  private void say(Value value, WiringOddity oddity) {
    findings.add(Severity.WARNING, value.place(), value.heading(), oddity);
  }

  private static WiringOddity alone(Column column, NotTaken one) {
    return column.role() == Role.LENGTH
        ? new WiringOddity.LengthNotTaken(one.complaint(), one.maybe())
        : new WiringOddity.GaugeNotTaken(one.complaint(), one.maybe());
  }

  private static WiringOddity together(Column column, List<NotTaken> all) {
    NotTaken first = all.get(0);
    String heading =
        first.value().heading().isEmpty()
            ? Place.columnLetters(column.index())
            : first.value().heading();
    return column.role() == Role.LENGTH
        ? new WiringOddity.LengthsNotTaken(all.size(), first.complaint(), heading, first.maybe())
        : new WiringOddity.GaugesNotTaken(all.size(), first.complaint(), heading, first.maybe());
  }
}
