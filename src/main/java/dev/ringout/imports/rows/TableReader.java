package dev.ringout.imports.rows;

import dev.ringout.cells.CellText;
import dev.ringout.imports.list.Draft;
import dev.ringout.imports.list.Draft.Value;
import dev.ringout.imports.list.End;
import dev.ringout.imports.list.Ends;
import dev.ringout.imports.list.Grammar;
import dev.ringout.imports.list.ImportOptions;
import dev.ringout.imports.list.Layout;
import dev.ringout.imports.list.ListColumn;
import dev.ringout.imports.list.ListFindings;
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
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** Reads the rows of one table as wires, spare pins, notes and what could not be read. */
public abstract class TableReader {
  private static final Pattern COLOR_LETTERS =
      Pattern.compile("[RBGWYOVNP](\\s*\\+\\s*[RBGWYOVNP])+");

  /** Reference designators of switches and relays (ASME Y14.44, from memory). */
  private static final Pattern SWITCH =
      Pattern.compile("\\d*[A-Z]?\\d*(S|SW|LS|PB|PS|TS|K|RY|CR)\\d+");

  private static final Pattern SUPPLY = Pattern.compile("[-+=]?(G|GB|PS|PSU|BT|BAT|BATT)-?\\d*");

  final ListTable table;
  final Words words;
  final Ends ends;
  final ListFindings findings;
  final TableCells cells;
  final PinHeads heads;
  final ListedPoints listed;
  final Tally tally = new Tally();
  final Understanding into;
  private final boolean hasNotes;
  private final RowFrames frames;
  private final Doubts doubts;

  /** Whether a pin is called plus, so that minus is a pin's name too and not a dash for none. */
  private final boolean poles;

  /** Whether a pin is called NO, so that NC is a contact too and does not say: not connected. */
  private final boolean contacts;

  TableReader(ListTable table, Words words, Ends ends, ListFindings findings, Understanding into) {
    this.table = table;
    this.words = words;
    this.ends = ends;
    this.findings = findings;
    this.into = into;
    this.heads = new PinHeads(table);
    this.listed = new ListedPoints(table);
    this.cells = new TableCells(table, words, findings);
    this.frames = new RowFrames(table, words, cells);
    this.doubts = new Doubts(table, words, ends, findings, tally);
    this.poles = hasPins(table, "+");
    this.contacts = hasPins(table, "NO");
    this.hasNotes =
        table.columns().stream().anyMatch(column -> column.role() == Role.KEEP)
            || table.columns().stream()
                    .map(ListColumn::role)
                    .filter(TableReader::isAttribute)
                    .distinct()
                    .count()
                < table.columns().stream().filter(one -> isAttribute(one.role())).count();
  }

  private static boolean hasPins(ListTable table, String called) {
    for (ListColumn column : table.columns()) {
      Role role = column.role();
      boolean pins =
          role.isPinOfEnd() || role == Role.PIN || role == Role.BOTH_PINS || role == Role.POINTS;
      for (Row row : pins ? table.body() : List.<Row>of()) {
        if (row.cell(column.index()).text().strip().equals(called)) {
          return true;
        }
      }
    }
    return false;
  }

  /** The reader of a table's layout. */
  public static TableReader of(
      ListTable table,
      Words words,
      Ends ends,
      ImportOptions options,
      ListFindings findings,
      Understanding into) {
    return switch (table.layout()) {
      case FROM_TO -> new FromToReader(table, words, ends, findings, into);
      case PATHS -> new PathReader(table, words, ends, findings, into);
      case TERMINALS -> new TerminalReader(table, words, ends, findings, into);
      case BLOCK, ITEM_TO_POINTS, WIRE_ENDS, OPEN_ENDED, PIN_NAMES, NET_LIST ->
          new BlockReader(table, words, ends, options, findings, into);
      case ROW_NETS -> new RowNetReader(table, words, ends, options, findings, into);
      case MARKS -> new MarksReader(table, words, ends, options, findings, into);
      case CONNECTIONS, NONE -> new NothingReader(table, words, ends, findings, into);
    };
  }

  /** Reads every row, and says once what holds for the table as a whole. */
  public final Tally read() {
    for (Row row : table.body()) {
      cells.start();
      tally.begin(row.number());
      RowKind kind = kind(row);
      if (kind == RowKind.WIRE && doubts.of(row)) {
        continue;
      }
      if (kind == RowKind.WIRE) {
        readRow(row);
      } else if (kind != RowKind.SKIPPED) {
        tally.count(kind);
      }
    }
    finish();
    frames.report(findings);
    doubts.report();
    cells.report();
    return tally;
  }

  private RowKind kind(Row row) {
    return switch (frames.of(row)) {
      case BLANK -> RowKind.BLANK;
      case HEADING -> RowKind.HEADING;
      case NOTE -> RowKind.NOTE;
      case STRUCK -> skip(row, new RowOddity.RowStruck(), SkipReason.STRUCK_THROUGH);
      case DELETED -> skip(row, new RowOddity.RowSaysDeleted(), SkipReason.SAYS_DELETED);
      case FILLED -> skip(row, frames.filledAsDeleted(row), SkipReason.FILL_MEANS_DELETED);
      case CONTENT -> RowKind.WIRE;
    };
  }

  private RowKind skip(Row row, RowOddity oddity, SkipReason why) {
    findings.warning(table.place(row), oddity);
    tally.skip(row.number(), why);
    return RowKind.SKIPPED;
  }

  /** The item that a title or the table gives where no column does, or empty. */
  final String titledItem() {
    return section().isEmpty() ? table.sheetItem() : section();
  }

  /** Whether a far end leads to another row, and that row tells the wire. */
  final boolean isToldElsewhere(Row row, String farText) {
    Optional<ListColumn> far = cells.column(Role.FAR);
    return far.isPresent() && doubts.isToldElsewhere(row, far.get(), farText);
  }

  /** The item at one end that a title names for the rows below it, or empty. */
  final String titledEnd(Role end) {
    return frames.sectionEnds().map(both -> end == Role.FROM ? both.from() : both.to()).orElse("");
  }

  /** Reads a row that may hold a wire, and counts it. */
  abstract void readRow(Row row);

  /** Called after the last row. */
  void finish() {}

  /** The connector that the last section title named, or empty. */
  String section() {
    return frames.section();
  }

  /** The row's columns that every layout has: wire number, gauge, colour, notes. */
  final Map<Role, Value> attributes(Row row) {
    Map<Role, Value> values = new EnumMap<>(Role.class);
    for (ListColumn column : table.columns()) {
      if (isAttribute(column.role())) {
        String text = cells.text(row, column);
        if (!text.isEmpty() && !values.containsKey(column.role())) {
          values.put(column.role(), new Value(text, table, row.number(), column));
        }
      }
    }
    return values;
  }

  private static boolean isAttribute(Role role) {
    return switch (role) {
      case GAUGE, TYPE, COLOR, LENGTH, SIGNAL, CABLE, GROUP, FROM_CONTACT, TO_CONTACT, NOTE -> true;
      default -> false;
    };
  }

  /** What is not understood, and of two columns with one meaning what the second says. */
  final Map<String, String> notes(Row row) {
    if (!hasNotes) {
      return Map.of();
    }
    Map<String, String> notes = new LinkedHashMap<>();
    Set<Role> said = EnumSet.noneOf(Role.class);
    for (ListColumn column : table.columns()) {
      boolean attribute = isAttribute(column.role());
      if (column.role() == Role.KEEP || attribute) {
        // An attribute was read before, with all that is odd about its cell said then.
        String text = attribute ? plain(row.cell(column.index())) : cells.text(row, column);
        if (!text.isEmpty() && !(attribute && said.add(column.role()))) {
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

  private static String plain(Cell cell) {
    return CellText.clean(cell.ink().struck() ? cell.ink().left() : cell.text());
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
      boolean end = role.isEnd() || role == Role.FROM_PIN || role == Role.TO_PIN;
      if (end && text.endsWith(")") && text.indexOf('(') > 0) {
        all = new LinkedHashMap<>(all);
        all.put(role.title() + " as listed", text.strip());
      } else if (role == Role.PATH
          && !ends.path(CellText.clean(text)).map(Ends.Path::rest).orElse("").isEmpty()) {
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

  /** How the column of a role writes points. */
  final Grammar grammar(Role role) {
    return cells.column(role).map(ListColumn::grammar).orElse(Grammar.AS_IT_LOOKS);
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

  /** The word by which a row says of itself that it is spare, or empty. */
  final String spareWord(Row row) {
    for (ListColumn column : table.columns()) {
      String text =
          switch (column.role()) {
            case NOTE, KEEP, SIGNAL, TYPE, CABLE, GROUP -> cells.text(row, column);
            default -> "";
          };
      if (!text.isEmpty() && (words.is("spare", text) || isStowed(text))) {
        return text;
      }
    }
    return "";
  }

  /** What is noted of a spare pin: what the list says of it, and the number of its wire. */
  static String spareNote(String said, String wire) {
    return wire.isEmpty() ? said : said.isEmpty() ? "wire " + wire : said + ", wire " + wire;
  }

  final boolean isNothing(String text) {
    return words.isNothing(text);
  }

  /** Whether a pin's cell says that there is none; NC is a contact where the item is a switch. */
  final boolean isNoPin(String item, String pin) {
    boolean normallyClosed =
        pin.equalsIgnoreCase("NC")
            && (contacts || SWITCH.matcher(item).matches() || words.mentions("switch", item));
    boolean pole = pin.equals("-") && !isNothing(item) && (poles || isSupply(item));
    return !normallyClosed && !pole && isNothing(pin);
  }

  /**
   * A battery or a power supply has a minus (reference designators of ASME Y14.44, from memory).
   */
  private boolean isSupply(String item) {
    return SUPPLY.matcher(item).matches() || words.mentions("supply", item);
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
    List<End> points = new ArrayList<>();
    for (Ends.Text one : texts) {
      Ends.Text text = one.pin().isEmpty() ? listed.of(one.item()).orElse(one) : one;
      points.add(new End(text.item(), text.pin(), cells.place(row, role), false));
    }
    return points;
  }
}
