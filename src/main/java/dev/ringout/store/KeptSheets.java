package dev.ringout.store;

import dev.ringout.sheet.Cell;
import dev.ringout.sheet.Row;
import dev.ringout.sheet.Sheet;
import dev.ringout.sheet.Surroundings;
import dev.ringout.sheet.TabularFile;
import dev.ringout.source.Place;
import dev.ringout.source.Problem;
import dev.ringout.source.Problems;
import dev.ringout.source.Severity;
import dev.ringout.source.UnusableInput;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.function.Consumer;
import java.util.stream.Collectors;

/**
 * The sheets of a file as entries and back: every row with every cell, so that what is made of them
 * years later is what was made of the file.
 */
public final class KeptSheets implements TabularFile {
  private static final int SHOWN = 2;
  private static final int FILL = 3;
  private static final int STRUCK = 4;
  private static final int LEFT = 5;
  private static final int RED = 6;
  private static final String YES = "1";

  private final List<KeptSheet> sheets = new ArrayList<>();
  private boolean single;

  private KeptSheets() {}

  /** Tells of a row whether it is a reading, when it was taken and by whom. */
  public interface Taken {
    /** The entry of a row. */
    Entry.Draft draft(Place row, String body);
  }

  /**
   * A file's sheets as what happened.
   *
   * @param shownName the file's name in its places
   * @param remarks what was odd about the file as a whole
   * @throws UnusableInput where the file is damaged
   */
  public static List<Entry.Draft> drafts(
      TabularFile file, String shownName, List<Problem> remarks, Taken taken) throws UnusableInput {
    List<Entry.Draft> drafts = new ArrayList<>();
    for (Problem remark : remarks) {
      drafts.add(new Entry.Draft(EntryKind.REMARK, "", "", remark(remark, shownName)));
    }
    for (Sheet sheet : file.sheets()) {
      List<Entry.Draft> rows = new ArrayList<>();
      Surroundings around =
          sheet.forEachRow(
              row ->
                  rows.add(
                      taken.draft(
                          new Place(sheet.place().file(), sheet.place().sheet(), row.number(), 0),
                          body(row))));
      drafts.add(
          new Entry.Draft(
              EntryKind.SHEET, "", "", body(sheet, shownName, file.isSingleTable(), around)));
      drafts.addAll(rows);
    }
    return drafts;
  }

  /**
   * A sheet that begins, or goes on, at a bench.
   *
   * @param within what stands behind the session's name in the names of its cells
   */
  public static Entry.Draft begin(String name, String within) {
    String body =
        String.join("\n", Fields.line(name, within, name, ""), Fields.line("", ""), "", "");
    return new Entry.Draft(EntryKind.SHEET, "", "", body);
  }

  /** The body of a row of texts that is written at a bench. */
  public static String row(int number, List<String> cells) {
    return body(
        new Row(number, cells.stream().map(text -> new Cell(Cell.Stored.TEXT, text)).toList()));
  }

  private static String remark(Problem remark, String shownName) {
    return Fields.line(
        remark.severity().word(),
        within(remark.place().file(), shownName),
        remark.place().sheet(),
        remark.text(),
        remark.maybe());
  }

  private static String within(String file, String shownName) {
    return file.startsWith(shownName) ? file.substring(shownName.length()) : file;
  }

  private static String body(Sheet sheet, String shownName, boolean single, Surroundings around) {
    List<String> lines = new ArrayList<>();
    lines.add(
        Fields.line(
            sheet.name(),
            within(sheet.place().file(), shownName),
            sheet.place().sheet(),
            single ? YES : ""));
    lines.add(Fields.line(around.hidden() ? YES : "", around.filtered() ? YES : ""));
    lines.add(numbers(around.hiddenRows()));
    lines.add(numbers(around.hiddenColumns()));
    around
        .comments()
        .forEach((spot, text) -> lines.add(Fields.line("" + spot.row(), "" + spot.column(), text)));
    return String.join("\n", lines);
  }

  private static String numbers(SortedSet<Integer> numbers) {
    return numbers.stream().map(String::valueOf).collect(Collectors.joining(" "));
  }

  /** A row's number, and a line for each cell that holds or shows something. */
  private static String body(Row row) {
    StringBuilder body = new StringBuilder(Integer.toString(row.number()));
    for (int column = 1; column <= row.cells().size(); column++) {
      Cell cell = row.cell(column);
      if (!cell.equals(Cell.EMPTY)) {
        body.append('\n').append(Place.columnLetters(column)).append('\t').append(cell(cell));
      }
    }
    return body.toString();
  }

  private static String cell(Cell cell) {
    String kind =
        cell.kind() == Cell.Stored.TEXT ? "" : cell.kind().name().toLowerCase(Locale.ROOT);
    boolean plain =
        cell.shown().isEmpty() && cell.fill().isEmpty() && cell.ink().equals(Cell.Ink.PLAIN);
    return plain
        ? Fields.line(kind, cell.text())
        : Fields.line(
            kind,
            cell.text(),
            cell.shown(),
            cell.fill(),
            cell.ink().struck() ? YES : "",
            cell.ink().left(),
            cell.ink().red() ? YES : "");
  }

  /**
   * The sheets that entries tell of.
   *
   * @param shownName the file's name in their places
   * @param taken what was taken back of them, by the row's entry
   * @param problems takes what was odd about the file as a whole
   */
  public static KeptSheets of(
      List<Entry> entries, String shownName, Map<Integer, TakenBack> taken, Problems problems) {
    KeptSheets kept = new KeptSheets();
    List<Row> rows = new ArrayList<>();
    for (Entry entry : entries) {
      EntryKind kind = EntryKind.of(entry.kind()).orElse(EntryKind.VERDICT);
      if (kind == EntryKind.REMARK) {
        problems.add(remark(Fields.of(entry.body()).get(0), shownName));
      } else if (kind == EntryKind.SHEET) {
        List<List<String>> lines = Fields.of(entry.body());
        kept.single |= lines.get(0).get(3).equals(YES);
        rows = kept.begun(sheet(lines, shownName, new ArrayList<>()));
      } else if (kind.isRow()) {
        Row row = row(Fields.of(entry.body()));
        TakenBack back = taken.get(entry.seq());
        rows.add(back == null ? row : back.in(row));
      }
    }
    return kept;
  }

  /** The rows of a sheet that begins, or of one that goes on after another. */
  private List<Row> begun(KeptSheet sheet) {
    for (KeptSheet before : sheets) {
      if (before.place().equals(sheet.place()) && before.name().equals(sheet.name())) {
        return before.rows();
      }
    }
    sheets.add(sheet);
    return sheet.rows();
  }

  /**
   * The same, each part by itself: at a bench another person, meter or condition begins sheets of
   * their own.
   *
   * @return each part by its name
   */
  public Map<String, KeptSheets> parts() {
    Map<String, KeptSheets> parts = new LinkedHashMap<>();
    for (KeptSheet sheet : sheets) {
      parts.computeIfAbsent(sheet.place().file(), name -> new KeptSheets()).sheets.add(sheet);
    }
    return parts;
  }

  /** The cell of a column of the row that an entry is. */
  static Place rowOf(List<Entry> entries, String shownName, int seq, int column) {
    Place sheet = Place.of(shownName);
    for (Entry entry : entries) {
      if (entry.is(EntryKind.SHEET)) {
        sheet = sheet(Fields.of(entry.body()), shownName, List.of()).place();
      } else if (entry.seq() == seq) {
        return new Place(sheet.file(), sheet.sheet(), row(entry), column);
      }
    }
    return sheet;
  }

  private static int row(Entry entry) {
    return Integer.parseInt(entry.body().split("\n", 2)[0]);
  }

  /**
   * The entry of a row; absent where there is none.
   *
   * @param shownName the file's name in its places
   */
  public static Optional<Entry> entryOf(List<Entry> entries, String shownName, Place cell) {
    boolean here = false;
    for (Entry entry : entries) {
      Optional<EntryKind> kind = EntryKind.of(entry.kind());
      if (kind.filter(one -> one == EntryKind.SHEET).isPresent()) {
        Place sheet = sheet(Fields.of(entry.body()), shownName, List.of()).place();
        here = sheet.file().equals(cell.file()) && sheet.sheet().equals(cell.sheet());
      } else if (here && kind.filter(EntryKind::isRow).isPresent()) {
        if (row(entry) == cell.row()) {
          return Optional.of(entry);
        }
      }
    }
    return Optional.empty();
  }

  private static Problem remark(List<String> fields, String shownName) {
    Severity severity =
        Arrays.stream(Severity.values())
            .filter(one -> one.word().equals(fields.get(0)))
            .findFirst()
            .orElse(Severity.WARNING);
    Place place = Place.of(shownName + fields.get(1), fields.get(2));
    return new Problem(place, "", severity, fields.get(3), fields.get(4));
  }

  private static KeptSheet sheet(List<List<String>> lines, String shownName, List<Row> rows) {
    List<String> first = lines.get(0);
    Map<Surroundings.Spot, String> comments = new LinkedHashMap<>();
    for (List<String> comment : lines.subList(4, lines.size())) {
      comments.put(
          new Surroundings.Spot(Integer.parseInt(comment.get(0)), Integer.parseInt(comment.get(1))),
          comment.get(2));
    }
    return new KeptSheet(
        first.get(0),
        Place.of(shownName + first.get(1), first.get(2)),
        new Surroundings(
            lines.get(1).get(0).equals(YES),
            lines.get(1).get(1).equals(YES),
            numbers(lines.get(2).get(0)),
            numbers(lines.get(3).get(0)),
            List.of(),
            comments),
        rows);
  }

  private static SortedSet<Integer> numbers(String text) {
    SortedSet<Integer> numbers = new TreeSet<>();
    for (String number : text.split(" ", -1)) {
      if (!number.isEmpty()) {
        numbers.add(Integer.valueOf(number));
      }
    }
    return numbers;
  }

  private static Row row(List<List<String>> lines) {
    List<Cell> cells = new ArrayList<>();
    for (List<String> fields : lines.subList(1, lines.size())) {
      int column = Place.column(fields.get(0));
      while (cells.size() < column - 1) {
        cells.add(Cell.EMPTY);
      }
      cells.add(cell(fields.subList(1, fields.size())));
    }
    return new Row(Integer.parseInt(lines.get(0).get(0)), List.copyOf(cells));
  }

  private static Cell cell(List<String> fields) {
    Cell.Stored kind =
        fields.get(0).isEmpty()
            ? Cell.Stored.TEXT
            : Cell.Stored.valueOf(fields.get(0).toUpperCase(Locale.ROOT));
    if (fields.size() <= SHOWN) {
      return new Cell(kind, fields.get(1));
    }
    return new Cell(
        kind,
        fields.get(1),
        new Cell.Ink(fields.get(STRUCK).equals(YES), fields.get(LEFT), fields.get(RED).equals(YES)),
        fields.get(SHOWN),
        fields.get(FILL));
  }

  /** One sheet. */
  private record KeptSheet(String name, Place place, Surroundings around, List<Row> rows)
      implements Sheet {
    @Override
    public Surroundings forEachRow(Consumer<Row> each) {
      rows.forEach(each);
      return around;
    }
  }

  @Override
  public List<Sheet> sheets() {
    return List.copyOf(sheets);
  }

  @Override
  public boolean isSingleTable() {
    return single;
  }

  @Override
  public void close() {}
}
