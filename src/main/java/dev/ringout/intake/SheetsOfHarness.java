package dev.ringout.intake;

import dev.ringout.harness.Point;
import dev.ringout.sheet.Sheet;
import dev.ringout.source.Problems;
import dev.ringout.source.UnusableInput;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Consumer;

/** The sheets of one harness file, and what their readers share. */
final class SheetsOfHarness {
  static final Column REF = Column.of("Ref");
  static final Column PIN = Column.of("Pin");
  static final Column TO_PIN = Column.of("To Pin");

  /** The item at the other end of a link, where it is another one. */
  static final Column TO = Column.of("To", "To Ref");

  static final Column NOTE = Column.of("Note");

  private final SheetsByName sheets;
  private final Problems problems;
  private final Refs refs = new Refs();
  private final Map<String, String> texts = new HashMap<>();

  SheetsOfHarness(SheetsByName sheets, Problems problems) {
    this.sheets = sheets;
    this.problems = problems;
  }

  Optional<Sheet> find(String name) {
    return sheets.find(name);
  }

  Problems problems() {
    return problems;
  }

  /** Each row of a sheet; none where the file has no such sheet. */
  void each(String name, List<Column> known, List<Column> required, Consumer<Entry> each)
      throws UnusableInput {
    Optional<Sheet> sheet = sheets.find(name);
    if (sheet.isPresent()) {
      new Table(sheet.get(), known, required, problems).forEach(each);
    }
  }

  /** A cell's text, one object for equal ones: a long list repeats its colours on every row. */
  String shared(Entry entry, Column column) {
    String text = entry.text(column.name());
    return text.isEmpty() ? "" : texts.computeIfAbsent(text, same -> same);
  }

  /** A reference designator as the file spells it first. */
  String spelling(String ref) {
    return refs.spelling(ref);
  }

  /** A point in two cells, or in the first alone; what is none is reported there. */
  Optional<Point> point(Entry entry, Column ref, Column pin) {
    return entry.take(ref.name(), refs.point(entry.text(ref.name()), entry.text(pin.name())));
  }

  /** Two points that a row joins. */
  record Pair(Point from, Point to) {}

  /**
   * Two points of one item, or of two where the sheet names the other one too; two full points
   * where the item's cell is blank.
   */
  Optional<Pair> pair(Entry entry) {
    String ref = entry.text(REF.name());
    String other = entry.text(TO.name());
    Optional<Point> from = pairEnd(entry, ref, PIN);
    Optional<Point> to = pairEnd(entry, other.isEmpty() ? ref : other, TO_PIN);
    if (from.isEmpty() || to.isEmpty()) {
      return Optional.empty();
    }
    if (from.equals(to)) {
      entry.error(TO_PIN.name(), from.get() + " is joined to itself", "");
      return Optional.empty();
    }
    return Optional.of(new Pair(from.get(), to.get()));
  }

  private Optional<Point> pairEnd(Entry entry, String ref, Column pin) {
    String text = entry.text(pin.name());
    if (text.isEmpty()) {
      entry.error(pin.name(), "expected a pin", "");
      return Optional.empty();
    }
    return entry.take(pin.name(), ref.isEmpty() ? refs.point(text, "") : refs.point(ref, text));
  }

  /** A cell that is a plain number, where it is filled. */
  static OptionalDouble number(Entry entry, Column column) {
    return entry.number(entry.text(column.name()), column);
  }
}
