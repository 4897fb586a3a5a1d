package dev.ringout.intake;

import dev.ringout.cells.Blanks;
import dev.ringout.cells.LikelyMeant;
import dev.ringout.cells.Names;
import dev.ringout.cells.TimeCell;
import dev.ringout.readings.Rework;
import dev.ringout.sheet.Sheet;
import dev.ringout.source.Problems;
import dev.ringout.source.UnusableInput;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** The sheet {@code Rework}: what was opened and touched between readings, and when. */
final class ReworkRows {
  private static final Column NUMBER = Column.of("No");
  private static final Column TIME = Column.of("Time");
  private static final Column ITEMS = Column.of("Items", "Item");
  private static final Column WIRES = Column.of("Wires", "Wire");
  private static final Column READINGS = Column.of("Readings");
  private static final Column NOTE = Column.of("Note");
  private static final String SEVERAL = "[,;+]";

  /** Whether the readings beside it that have no time were taken after the rework or before. */
  private static final String AFTER = "after";

  private static final String BEFORE = "before";

  private final HarnessPoints points;
  private final List<Rework> reworks = new ArrayList<>();

  private ReworkRows(HarnessPoints points) {
    this.points = points;
  }

  static List<Rework> read(Sheet sheet, HarnessPoints points, Problems problems)
      throws UnusableInput {
    ReworkRows rows = new ReworkRows(points);
    Table table =
        new Table(sheet, List.of(NUMBER, TIME, ITEMS, WIRES, READINGS, NOTE), List.of(), problems);
    table.forEach(rows::row);
    if (table.isHeaded() && table.columnOf(ITEMS.name()) + table.columnOf(WIRES.name()) == 0) {
      // Ignored in silence, readings taken before a rework would go on counting.
      problems.error(
          sheet.place(), "the headings must be in the first row; missing: Items or Wires");
    }
    return List.copyOf(rows.reworks);
  }

  private void row(Entry entry) {
    // A cell is read once: what is wrong with it is told each time.
    String time = entry.timeText(TIME);
    boolean understood = isTimeRead(entry, time);
    Set<String> items = new LinkedHashSet<>();
    understood &= takesItems(entry, items);
    Set<String> wires = new LinkedHashSet<>();
    understood &= takesWires(entry, wires, items);
    String readings = entry.text(READINGS.name());
    boolean readAfter = Names.key(readings).equals(AFTER);
    understood &= readAfter || isReadBefore(entry, readings);
    String number = entry.text(NUMBER.name());
    if (readAfter && number.isEmpty() && time.isEmpty()) {
      // Else it can't be told from the next rework of the same items.
      entry.error(TIME.name(), "readings taken after a rework name its Time, or its No", "");
      understood = false;
    }
    if (!understood) {
      return;
    }
    if (items.isEmpty() && wires.isEmpty()) {
      entry.error(ITEMS.name(), "a rework names the items opened, or the wires touched", "");
      return;
    }
    reworks.add(
        new Rework(
            number,
            time,
            TimeCell.time(time),
            Collections.unmodifiableSet(items),
            Collections.unmodifiableSet(wires),
            entry.text(NOTE.name()),
            readAfter,
            entry.place()));
  }

  /** Which readings were taken before a time that can't be read would be a guess. */
  private static boolean isTimeRead(Entry entry, String text) {
    boolean read = text.isEmpty() || TimeCell.time(text).isPresent();
    if (!read) {
      entry.error(
          TIME.name(),
          "\"" + text + "\" is not a time that can be read (" + TimeCell.SUCH_AS + ")",
          "");
    }
    return read;
  }

  private boolean takesItems(Entry entry, Set<String> items) {
    boolean understood = true;
    for (String name : names(entry, ITEMS)) {
      Optional<String> item = entry.take(ITEMS.name(), points.item(name));
      item.ifPresent(items::add);
      understood &= item.isPresent();
    }
    return understood;
  }

  private boolean takesWires(Entry entry, Set<String> wires, Set<String> items) {
    boolean understood = true;
    for (String name : names(entry, WIRES)) {
      Optional<HarnessPoints.TouchedWire> wire = entry.take(WIRES.name(), points.wire(name));
      wire.ifPresent(
          one -> {
            wires.add(one.name());
            // A wire is not touched but at its ends.
            items.addAll(one.ends());
          });
      understood &= wire.isPresent();
    }
    return understood;
  }

  private static boolean isReadBefore(Entry entry, String text) {
    boolean before = text.isEmpty() || Names.key(text).equals(BEFORE);
    if (!before) {
      entry.error(
          READINGS.name(),
          "\"" + text + "\" is not what Readings may be: after, or blank for before",
          LikelyMeant.nearest(text, List.of(AFTER, BEFORE)));
    }
    return before;
  }

  /** A name that holds a comma or plus itself is known as a whole. */
  private List<String> names(Entry entry, Column column) {
    String text = entry.text(column.name());
    if (column.equals(WIRES) && points.wire(text).value().isPresent()) {
      return text.isEmpty() ? List.of() : List.of(text);
    }
    List<String> names = new ArrayList<>();
    for (String piece : text.split(SEVERAL, -1)) {
      String name = Blanks.strip(piece);
      if (!name.isEmpty()) {
        names.add(name);
      }
    }
    return names;
  }
}
