package dev.ringout.imports.rows;

import dev.ringout.cells.CellText;
import dev.ringout.imports.list.DamagedCell;
import dev.ringout.imports.list.Ends;
import dev.ringout.imports.list.ListColumn;
import dev.ringout.imports.list.ListFindings;
import dev.ringout.imports.list.ListTable;
import dev.ringout.imports.list.Role;
import dev.ringout.imports.list.Words;
import dev.ringout.sheet.Cell;
import dev.ringout.sheet.Row;
import dev.ringout.source.Place;
import dev.ringout.source.Severity;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;

/** Reads the cells of a table: as above, carried down, damaged by the spreadsheet, struck out. */
final class TableCells {
  /** What is cleaned without a word at each cell, and said once a column. */
  private enum Cleaned {
    BLANKS,
    DASHES,
    DITTO,
    CARRIED;

    DamagedCell in(List<Integer> rows) {
      return switch (this) {
        case BLANKS -> new DamagedCell.BlanksIgnored(rows);
        case DASHES -> new DamagedCell.DashesMadePlain(rows);
        case DITTO -> new DamagedCell.MarksReadAsAbove(rows);
        case CARRIED -> new DamagedCell.BlanksReadAsAbove(rows);
      };
    }
  }

  private static final Pattern SHOWN = Pattern.compile("[A-Za-z]{1,4}\\d{0,3}[:.-]?\\d{1,4}");

  private final ListTable table;
  private final Words words;
  private final ListFindings findings;
  private final Damage damage;
  private final Map<Role, ListColumn> columns = new EnumMap<>(Role.class);
  private final String[] above;
  private final Map<Cleaned, Map<Integer, List<Integer>>> quiet = new LinkedHashMap<>();
  private boolean rowIsLost;

  TableCells(ListTable table, Words words, ListFindings findings) {
    this.table = table;
    this.words = words;
    this.findings = findings;
    this.damage = new Damage(table);
    this.above = new String[table.lastColumn() + 1];
    Arrays.fill(above, "");
    table.columns().forEach(column -> columns.putIfAbsent(column.role(), column));
  }

  /** Starts a row. */
  void start() {
    rowIsLost = false;
  }

  /** Whether a cell of the row that a wire needs could not be read. */
  boolean rowIsLost() {
    return rowIsLost;
  }

  /** The row can't be read; why is among the findings. */
  void lose() {
    rowIsLost = true;
  }

  /** Forgets what stood above: a new section begins. */
  void forget() {
    Arrays.fill(above, "");
  }

  Optional<ListColumn> column(Role role) {
    return Optional.ofNullable(columns.get(role));
  }

  /** The text under a role, or empty. */
  String text(Row row, Role role) {
    ListColumn column = columns.get(role);
    return column == null ? "" : text(row, column);
  }

  /** A cell's text, cleaned; what was cleaned is counted. */
  String text(Row row, ListColumn column) {
    Cell cell = row.cell(column.index());
    if (cell.kind() == Cell.Stored.TEXT && cell.text().isEmpty()) {
      return "";
    }
    boolean kept = column.role() == Role.KEEP || column.role() == Role.NOTE;
    String raw = withoutStruck(row, column, asShown(cell));
    if (!kept && isDamaged(row, column, cell)) {
      return "";
    }
    String clean =
        namesItem(column.role()) ? withoutContinued(CellText.clean(raw)) : CellText.clean(raw);
    if (!kept && !CellText.isPlain(raw)) {
      countIf(CellText.hasOddBlanks(raw), Cleaned.BLANKS, row, column);
      countIf(CellText.hasOddDash(raw), Cleaned.DASHES, row, column);
    }
    if (words.isDitto(clean)) {
      return ditto(row, column, clean);
    }
    if (!clean.isEmpty()) {
      above[column.index()] = clean;
    }
    return clean;
  }

  private static boolean namesItem(Role role) {
    return role == Role.ITEM || role == Role.FROM || role == Role.TO || role == Role.FAR;
  }

  /** {@code J1} of {@code J1 (cont.)}: its pins go on, and it is no other item. */
  private String withoutContinued(String text) {
    int last = text.lastIndexOf(' ');
    return last > 0 && words.is("continued", text.substring(last))
        ? text.substring(0, last).replaceFirst("[\\s,:-]+$", "")
        : text;
  }

  /** A number whose format puts letters before it is what the sheet shows: {@code A1} for 1. */
  private static Cell asShown(Cell cell) {
    boolean lettered =
        cell.kind() == Cell.Stored.NUMBER
            && !cell.ink().struck()
            && SHOWN.matcher(cell.shown()).matches();
    return lettered ? Cell.text(cell.shown()) : cell;
  }

  /** A cell's text; of what is struck through in part, the rest. */
  private String withoutStruck(Row row, ListColumn column, Cell cell) {
    if (!cell.ink().struck()) {
      return cell.text();
    }
    if (!cell.isStruck()) {
      findings.add(
          Severity.WARNING,
          table.place(row, column),
          column.heading(),
          new DamagedCell.StruckInPart(cell.text(), cell.ink().left().strip()));
    }
    return cell.ink().left();
  }

  /** Says what a spreadsheet has done to a cell; whether its text is lost by it. */
  private boolean isDamaged(Row row, ListColumn column, Cell cell) {
    Optional<Damage.Found> found = damage.find(row, column, cell);
    if (found.isPresent()) {
      findings.add(
          found.get().severity(), table.place(row, column), column.heading(), found.get().what());
      if (found.get().severity() == Severity.ERROR) {
        rowIsLost |= carriesPoint(column.role());
        return true;
      }
    }
    return false;
  }

  private String above(ListColumn column) {
    return above[column.index()];
  }

  private static boolean carriesPoint(Role role) {
    return switch (role) {
      case FROM, FROM_PIN, TO, TO_PIN, FAR, FAR_PIN, ITEM, PIN, POINTS -> true;
      default -> false;
    };
  }

  private String ditto(Row row, ListColumn column, String mark) {
    String value = above(column);
    boolean repeats = column.role().repeats() || column.role() == Role.FAR;
    boolean point = carriesPoint(column.role()) && Ends.looksLikePoint(value);
    if (repeats && !value.isEmpty() && !point) {
      countIf(true, Cleaned.DITTO, row, column);
      return value;
    }
    if (column.role() == Role.KEEP || column.role() == Role.NOTE) {
      return value.isEmpty() ? mark : value;
    }
    findings.error(
        table.place(row, column),
        repeats
            ? new DamagedCell.NothingAbove(mark)
            : new DamagedCell.SharedByMark(mark, column.heading()));
    rowIsLost |= carriesPoint(column.role()) || column.role() == Role.WIRE;
    return "";
  }

  /** The text above where a blank stands for it, counted; empty where nothing stands above. */
  String carried(Row row, Role role) {
    ListColumn column = columns.get(role);
    if (column == null) {
      return "";
    }
    String value = above(column);
    countIf(!value.isEmpty(), Cleaned.CARRIED, row, column);
    return value;
  }

  private void countIf(boolean holds, Cleaned kind, Row row, ListColumn column) {
    if (holds) {
      quiet
          .computeIfAbsent(kind, key -> new LinkedHashMap<>())
          .computeIfAbsent(column.index(), key -> new ArrayList<>())
          .add(row.number());
    }
  }

  Place place(Row row, Role role) {
    ListColumn column = columns.get(role);
    return column == null ? table.place(row) : table.place(row, column);
  }

  /** Says what was cleaned, once a column. */
  void report() {
    quiet.forEach(
        (kind, byColumn) ->
            byColumn.forEach(
                (index, rows) -> {
                  ListColumn column =
                      table.columns().stream()
                          .filter(one -> one.index() == index)
                          .findFirst()
                          .orElseThrow();
                  findings.add(
                      Severity.NOTE,
                      table.grid().place(rows.get(0), index),
                      column.heading(),
                      kind.in(rows));
                }));
  }
}
