package dev.ringout.imports.rows;

import dev.ringout.cells.CellText;
import dev.ringout.imports.list.Draft;
import dev.ringout.imports.list.Draft.Value;
import dev.ringout.imports.list.End;
import dev.ringout.imports.list.Ends;
import dev.ringout.imports.list.Findings;
import dev.ringout.imports.list.ImportOptions;
import dev.ringout.imports.list.Layout;
import dev.ringout.imports.list.ListColumn;
import dev.ringout.imports.list.ListTable;
import dev.ringout.imports.list.Role;
import dev.ringout.imports.list.RowOddity;
import dev.ringout.imports.list.SkipReason;
import dev.ringout.imports.list.Understanding;
import dev.ringout.imports.list.Words;
import dev.ringout.imports.rows.Tally.RowKind;
import dev.ringout.sheet.Cell;
import dev.ringout.sheet.Row;
import dev.ringout.source.Place;
import dev.ringout.source.Severity;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** Reads the rows of one table as wires, spare pins, notes and what could not be read. */
public abstract class TableReader {
  private static final Pattern COLOR_LETTERS =
      Pattern.compile("[RBGWYOVNP](\\s*\\+\\s*[RBGWYOVNP])+");
  private static final Pattern PAGE =
      Pattern.compile("(?i)(sheet|page)\\s*\\d+(\\s*(of|/)\\s*\\d+)?|.*cont(inue|'?)d.*");

  /** Reference designators of switches and relays (ASME Y14.44, from memory). */
  private static final Pattern SWITCH =
      Pattern.compile("\\d*[A-Z]?\\d*(S|SW|LS|PB|PS|TS|K|RY|CR)\\d+");

  final ListTable table;
  final Words words;
  final Ends ends;
  final Findings findings;
  final TableCells cells;
  final Tally tally = new Tally();
  final Understanding into;
  private final boolean hasNotes;
  private String section = "";

  TableReader(ListTable table, Words words, Ends ends, Findings findings, Understanding into) {
    this.table = table;
    this.words = words;
    this.ends = ends;
    this.findings = findings;
    this.into = into;
    this.cells = new TableCells(table, words, findings);
    this.hasNotes = table.columns().stream().anyMatch(column -> column.role() == Role.KEEP);
  }

  /** The reader of a table's layout. */
  public static TableReader of(
      ListTable table,
      Words words,
      Ends ends,
      ImportOptions options,
      Findings findings,
      Understanding into) {
    return switch (table.layout()) {
      case FROM_TO -> new FromToReader(table, words, ends, findings, into);
      case BLOCK, ITEM_TO_POINTS, WIRE_ENDS, OPEN_ENDED, PIN_NAMES ->
          new BlockReader(table, words, ends, options, findings, into);
      case ROW_NETS -> new RowNetReader(table, words, ends, options, findings, into);
      case MARKS -> new MarksReader(table, words, ends, options, findings, into);
      case NONE -> new NothingReader(table, words, ends, findings, into);
    };
  }

  /** Reads every row, and says once what holds for the table as a whole. */
  public final Tally read() {
    for (Row row : table.body()) {
      cells.start();
      RowKind kind = frame(row);
      if (kind == RowKind.WIRE) {
        readRow(row);
      } else if (kind != RowKind.SKIPPED) {
        tally.count(kind);
      }
    }
    finish();
    cells.report();
    return tally;
  }

  /** Reads a row that may hold a wire, and counts it. */
  abstract void readRow(Row row);

  /** Called after the last row. */
  void finish() {}

  /** The connector that the last section title named, or empty. */
  String section() {
    return section;
  }

  private RowKind frame(Row row) {
    int filled = 0;
    int struck = 0;
    int same = 0;
    int headings = 0;
    String only = "";
    boolean deleted = false;
    for (ListColumn column : table.columns()) {
      Cell cell = row.cell(column.index());
      boolean headed = !column.heading().isEmpty();
      headings += headed ? 1 : 0;
      if (cell.isBlank()) {
        continue;
      }
      filled++;
      only = cell.text();
      struck += cell.isStruck() ? 1 : 0;
      same += headed && isSame(cell.text(), column.heading()) ? 1 : 0;
      boolean remark = column.role() == Role.NOTE || column.role() == Role.KEEP;
      deleted |= remark && cell.text().length() < 14 && words.is("deleted", cell.text());
    }
    if (filled == 0) {
      return RowKind.BLANK;
    }
    if (same >= 2 && same == filled && same * 4 >= headings * 2) {
      return RowKind.HEADING;
    }
    if (struck * 2 > filled || endsAreStruck(row)) {
      return skip(row, new RowOddity.RowStruck(), SkipReason.STRUCK_THROUGH);
    }
    if (deleted) {
      return skip(row, new RowOddity.RowSaysDeleted(), SkipReason.SAYS_DELETED);
    }
    return filled <= 2 ? shortRow(row, filled, CellText.clean(only)) : RowKind.WIRE;
  }

  private RowKind skip(Row row, RowOddity oddity, SkipReason why) {
    findings.warning(table.place(row), oddity);
    tally.skip(row.number(), why);
    return RowKind.SKIPPED;
  }

  private static boolean isSame(String text, String heading) {
    int length = text.length();
    int least = heading.length();
    if (length < least || length > least + 4) {
      return false;
    }
    if (length == least) {
      return text.equalsIgnoreCase(heading);
    }
    boolean begins = text.isBlank() || text.regionMatches(true, 0, heading, 0, Math.min(2, least));
    return (begins || text.charAt(0) <= ' ')
        && CellText.headingKey(text).equals(CellText.headingKey(heading));
  }

  private boolean endsAreStruck(Row row) {
    boolean any = false;
    for (ListColumn column : table.columns()) {
      boolean end =
          switch (column.role()) {
            case FROM, FROM_PIN, TO, TO_PIN, FAR, FAR_PIN, PIN -> true;
            default -> false;
          };
      Cell cell = row.cell(column.index());
      if (end && !cell.isBlank()) {
        if (!cell.isStruck()) {
          return false;
        }
        any = true;
      }
    }
    return any;
  }

  /** A row of one or two cells: a title, the page's furniture, a note, or after all a wire. */
  private RowKind shortRow(Row row, int filled, String only) {
    for (ListColumn column : table.columns()) {
      String text = CellText.clean(row.cell(column.index()).text());
      if (!text.isEmpty() && (words.is("furniture", text) || PAGE.matcher(text).matches())) {
        return RowKind.NOTE;
      }
      if (text.equals("#") || text.startsWith("# ")) {
        return RowKind.NOTE;
      }
    }
    if (isTitle(row, filled)) {
      section = title(row);
      cells.forget();
      return RowKind.NOTE;
    }
    boolean remark = filled == 1 && only.length() > 24 && only.indexOf(' ') > 0;
    return remark ? RowKind.NOTE : RowKind.WIRE;
  }

  /** A designator that stands where no pin or wire can: {@code J1 - POWER}. */
  private boolean isTitle(Row row, int filled) {
    if (table.layout() == Layout.FROM_TO && table.headingRow() > 0) {
      return false;
    }
    String text = firstText(row);
    boolean block =
        table.layout() == Layout.BLOCK
            || table.layout() == Layout.PIN_NAMES
            || table.layout() == Layout.WIRE_ENDS
            || table.layout() == Layout.OPEN_ENDED;
    if (!block || title(row).isEmpty()) {
      return false;
    }
    boolean besidePins = row.cell(ownPinColumn()).isBlank();
    boolean headless = table.headingRow() == 0 && !CellText.isDigits(text);
    return headless
        || (filled == 1 && (besidePins || !pinsLookLikeItems()) && farIsBlank(row, text));
  }

  /** Whether the table's pins are named as other lists name their items: {@code D18}. */
  private boolean pinsLookLikeItems() {
    int alike = 0;
    int pins = 0;
    for (Row row : table.body()) {
      String text = CellText.clean(row.cell(ownPinColumn()).text());
      if (!text.isEmpty()) {
        pins++;
        alike += Ends.isDesignator(text.split("[ (,:]", 2)[0]) ? 1 : 0;
      }
    }
    return alike * 2 > pins;
  }

  private boolean farIsBlank(Row row, String text) {
    return cells
        .column(Role.FAR)
        .map(column -> CellText.clean(row.cell(column.index()).text()))
        .filter(far -> !far.isEmpty() && !far.equals(text))
        .isEmpty();
  }

  private int ownPinColumn() {
    return cells.column(Role.PIN).map(ListColumn::index).orElse(table.firstColumn());
  }

  private String firstText(Row row) {
    for (ListColumn column : table.columns()) {
      String text = CellText.clean(row.cell(column.index()).text());
      if (!text.isEmpty()) {
        return text;
      }
    }
    return "";
  }

  /** The designator of a title, the last of several cells first. */
  private String title(Row row) {
    String found = "";
    for (ListColumn column : table.columns()) {
      String text = CellText.clean(row.cell(column.index()).text());
      for (String part : text.split("[\\s,:;()]+|(?<=\\d)-|-(?=\\D)", -1)) {
        if (Ends.isDesignator(part)) {
          found = part;
          break;
        }
      }
    }
    return found;
  }

  /** The row's columns that every layout has: wire number, gauge, colour, notes. */
  final Map<Role, Value> attributes(Row row) {
    Map<Role, Value> values = new EnumMap<>(Role.class);
    for (ListColumn column : table.columns()) {
      switch (column.role()) {
        case GAUGE, TYPE, COLOR, LENGTH, SIGNAL, CABLE, GROUP, FROM_CONTACT, TO_CONTACT, NOTE -> {
          String text = cells.text(row, column);
          if (!text.isEmpty() && !values.containsKey(column.role())) {
            values.put(column.role(), new Value(text, table, row.number(), column));
          }
        }
        default -> {}
      }
    }
    return values;
  }

  final Map<String, String> notes(Row row) {
    if (!hasNotes) {
      return Map.of();
    }
    Map<String, String> notes = new LinkedHashMap<>();
    for (ListColumn column : table.columns()) {
      if (column.role() == Role.KEEP) {
        String text = cells.text(row, column);
        if (!text.isEmpty()) {
          notes.merge(
              column.heading().isEmpty()
                  ? "Column " + Place.columnLetters(column.index())
                  : column.heading(),
              text,
              (one, other) -> one + "; " + other);
        }
      }
    }
    return notes;
  }

  /** Adds a wire for each conductor that the row stands for: {@code R+B} is two. */
  final void add(Row row, String name, End from, End to, List<End> also) {
    Map<Role, Value> values = attributes(row);
    Map<String, String> notes = withRemarks(row, notes(row));
    Value type = values.get(Role.TYPE);
    Value color = values.get(Role.COLOR);
    Value several = isSeveral(type) ? type : isSeveral(color) ? color : null;
    if (several == null || table.layout() == Layout.BLOCK) {
      into.add(new Draft(name, from, to, also, values, notes, table.place(row), table.layout()));
      return;
    }
    for (String letter : several.text().split("\\s*\\+\\s*", -1)) {
      Map<Role, Value> own = new EnumMap<>(values);
      own.put(Role.COLOR, several.with(letter));
      if (!name.isEmpty() && !own.containsKey(Role.CABLE)) {
        own.put(Role.CABLE, several.with(name));
      }
      String conductor = name.isEmpty() ? "" : name + "-" + letter;
      into.add(new Draft(conductor, from, to, also, own, notes, table.place(row), table.layout()));
    }
    findings.note(several.place(), new RowOddity.ConductorsOfCable(several.text()));
  }

  /** What stands in brackets beside a point goes along as the cell was listed. */
  private Map<String, String> withRemarks(Row row, Map<String, String> notes) {
    Map<String, String> all = notes;
    for (ListColumn column : table.columns()) {
      Role role = column.role();
      String text = row.cell(column.index()).text();
      boolean end = role == Role.FROM || role == Role.TO || role == Role.FAR;
      if (end && text.endsWith(")") && text.indexOf('(') > 0) {
        all = new LinkedHashMap<>(all);
        all.put(role.title() + " as listed", text.strip());
      }
    }
    return all;
  }

  private static boolean isSeveral(@Nullable Value value) {
    if (value == null || value.text().length() > 12 || value.text().indexOf('+') < 0) {
      return false;
    }
    Matcher letters = COLOR_LETTERS.matcher(value.text());
    return letters.matches();
  }

  final void lose(Row row) {
    lose(row, SkipReason.CELL_NOT_READ);
  }

  final void lose(Row row, SkipReason why) {
    tally.skip(row.number(), why);
  }

  final void error(Row row, Role role, RowOddity oddity) {
    findings.add(
        Severity.ERROR,
        cells.place(row, role),
        cells.column(role).map(ListColumn::heading).orElse(""),
        oddity);
  }

  /** An error because of which the row can't be read. */
  final void lose(Row row, Role role, RowOddity oddity, SkipReason why) {
    error(row, role, oddity);
    lose(row, why);
  }

  final boolean isNothing(String text) {
    return words.isNothing(text);
  }

  /** Whether a pin's cell says that there is none; NC is a contact where the item is a switch. */
  final boolean isNoPin(String item, String pin) {
    boolean normallyClosed =
        pin.equalsIgnoreCase("NC")
            && (SWITCH.matcher(item).matches() || words.mentions("switch", item));
    return !normallyClosed && isNothing(pin);
  }

  final boolean isStowed(String text) {
    return !text.isEmpty() && text.length() < 30 && words.is("stow", text);
  }

  /**
   * The wire is there but its end is on no contact: a point of its own.
   *
   * @param name what tells the end from all others: the wire's number, else its other end
   */
  final End stowed(Row row, Role role, String text, String name) {
    findings.warning(cells.place(row, role), new RowOddity.StowedEnd(text, name));
    return new End("STOWED", name, cells.place(row, role), false);
  }

  /** A name for the stowed end of a wire; a wire with both ends stowed may have its row alone. */
  static String endName(Row row, String wire, List<End> others) {
    if (!wire.isEmpty()) {
      return wire;
    }
    return others.isEmpty() ? "row " + row.number() : others.get(0).toString();
  }

  final List<End> ends(List<Ends.Text> texts, Row row, Role role) {
    if (texts.size() == 1) {
      return List.of(
          new End(texts.get(0).item(), texts.get(0).pin(), cells.place(row, role), false));
    }
    List<End> points = new ArrayList<>();
    for (Ends.Text text : texts) {
      points.add(new End(text.item(), text.pin(), cells.place(row, role), false));
    }
    return points;
  }
}
