package dev.ringout.sheet;

import com.github.miachm.sods.OfficeAnnotation;
import com.github.miachm.sods.Range;
import com.github.miachm.sods.SpreadSheet;
import dev.ringout.sheet.Surroundings.Merge;
import dev.ringout.sheet.Surroundings.Spot;
import dev.ringout.source.FileBytes;
import dev.ringout.source.Place;
import dev.ringout.source.UnusableInput;
import dev.ringout.source.UnusableInput.Reason;
import dev.ringout.units.Text;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.function.Consumer;
import java.util.zip.Deflater;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.jspecify.annotations.Nullable;

/**
 * OpenDocument spreadsheets. The library reads values, merges and comments; what is struck through
 * red or filled it does not know, so that {@link OdsMarks} reads it beside.
 */
final class OdsFile implements TabularFile {
  private static final String TYPE = "application/vnd.oasis.opendocument.spreadsheet";
  private static final int LONGEST_TYPE = 128;
  private static final String MIMETYPE = "mimetype";
  private static final String CONTENT = "content.xml";
  private static final int REPACKED_BESIDE = 1024;

  private final List<Sheet> sheets;

  private OdsFile(List<Sheet> sheets) {
    this.sheets = sheets;
  }

  /** Whether a zip file says that it is one: in its entry {@code mimetype}. */
  static boolean isOne(FileBytes file) {
    try {
      ZipParts zip = new ZipParts(file);
      if (!zip.has(MIMETYPE)) {
        return false;
      }
      try (InputStream in = zip.open(MIMETYPE)) {
        String text = new String(in.readNBytes(LONGEST_TYPE), StandardCharsets.ISO_8859_1);
        return text.startsWith(TYPE);
      }
    } catch (IOException e) {
      // A damaged zip is for the other readers to report.
      return false;
    }
  }

  static OdsFile open(FileBytes file, String shownName) throws UnusableInput {
    try {
      byte[] content;
      try (InputStream in = new ZipParts(file).open(CONTENT)) {
        content = in.readAllBytes();
      }
      SpreadSheet book = new SpreadSheet(repacked(content));
      Map<String, OdsMarks.OfSheet> marks = OdsMarks.read(content);
      List<Sheet> sheets = new ArrayList<>();
      for (var sheet : book.getSheets()) {
        sheets.add(
            new OdsSheet(
                sheet, marks.getOrDefault(sheet.getName(), new OdsMarks.OfSheet()), shownName));
      }
      return new OdsFile(List.copyOf(sheets));
    } catch (ZipParts.Bomb e) {
      throw new UnusableInput(
          shownName,
          Reason.NOT_UNDERSTOOD,
          "unpacks to far more than a wire list would (a zip bomb?); not read");
    } catch (IOException | RuntimeException e) {
      throw damaged(shownName, e);
    }
  }

  /** The library answers damage with many kinds of exception; all mean the same to the user. */
  private static UnusableInput damaged(String shownName, Exception e) {
    return new UnusableInput(
        shownName, Reason.NOT_UNDERSTOOD, "is a damaged workbook: " + e.getMessage());
  }

  /**
   * The library takes a whole file, and every part that stands in it, named in its directory or
   * not. It gets the one part of which the marks are read, so that both read the same.
   */
  private static InputStream repacked(byte[] content) throws IOException {
    ByteArrayOutputStream file = new ByteArrayOutputStream(content.length + REPACKED_BESIDE);
    try (ZipOutputStream zip = new ZipOutputStream(file)) {
      zip.setLevel(Deflater.NO_COMPRESSION);
      zip.putNextEntry(new ZipEntry(MIMETYPE));
      zip.write(TYPE.getBytes(StandardCharsets.ISO_8859_1));
      zip.putNextEntry(new ZipEntry(CONTENT));
      zip.write(content);
    }
    return new ByteArrayInputStream(file.toByteArray());
  }

  @Override
  public List<Sheet> sheets() {
    return sheets;
  }

  @Override
  public void close() {}

  private record OdsSheet(
      com.github.miachm.sods.Sheet sheet, OdsMarks.OfSheet marks, String shownName)
      implements Sheet {

    @Override
    public String name() {
      return Text.visible(sheet.getName());
    }

    @Override
    public Place place() {
      return Place.of(shownName, name());
    }

    @Override
    public Surroundings forEachRow(Consumer<Row> each) throws UnusableInput {
      List<Row> rows = new ArrayList<>();
      Surroundings around;
      try {
        around = read(rows::add);
      } catch (RuntimeException e) {
        throw damaged(shownName, e);
      }
      rows.forEach(each);
      return around;
    }

    private Surroundings read(Consumer<Row> each) {
      int rows = Math.min(sheet.getMaxRows(), marks.rows());
      int columns = Math.min(sheet.getMaxColumns(), marks.columns());
      boolean empty = rows <= 0 || columns <= 0;
      List<Merge> merges = merges(rows, columns);
      if (!empty) {
        rows(sheet.getRange(0, 0, rows, columns), merges, each);
      }
      return new Surroundings(
          sheet.isHidden(),
          marks.filtered(),
          marks.hiddenRows(),
          empty ? new TreeSet<>() : hiddenColumns(columns),
          merges,
          empty ? Map.of() : comments(sheet.getRange(0, 0, rows, columns)));
    }

    private void rows(Range all, List<Merge> merges, Consumer<Row> each) {
      Object[][] values = all.getValues();
      String[][] formulas = all.getFormulas();
      for (int row = 0; row < values.length; row++) {
        List<Cell> cells = new ArrayList<>();
        for (int column = 0; column < values[row].length; column++) {
          Spot spot = new Spot(row + 1, column + 1);
          cells.add(
              isCovered(spot, merges)
                  ? Cell.EMPTY
                  : cell(spot, values[row][column], formulas[row][column]));
        }
        Row read = new Row(row + 1, List.copyOf(cells));
        if (!read.isBlank()) {
          each.accept(read);
        }
      }
    }

    private Cell cell(Spot spot, @Nullable Object value, @Nullable String formula) {
      return marks
          .value(spot)
          .orElseGet(() -> text(value, formula))
          .in(marks.ink(spot))
          .filled(marks.fill(spot));
    }

    private static Map<Spot, String> comments(Range all) {
      Map<Spot, String> comments = new LinkedHashMap<>();
      OfficeAnnotation[][] annotations = all.getAnnotations();
      for (int row = 0; row < annotations.length; row++) {
        for (int column = 0; column < annotations[row].length; column++) {
          OfficeAnnotation annotation = annotations[row][column];
          if (annotation != null && annotation.getMsg() != null) {
            comments.put(new Spot(row + 1, column + 1), annotation.getMsg().strip());
          }
        }
      }
      return comments;
    }

    private SortedSet<Integer> hiddenColumns(int columns) {
      SortedSet<Integer> hidden = new TreeSet<>();
      for (int column = 0; column < columns; column++) {
        if (sheet.columnIsHidden(column)) {
          hidden.add(column + 1);
        }
      }
      return hidden;
    }

    /** The library repeats a merge's value in all its cells; other formats give it once. */
    private static boolean isCovered(Spot spot, List<Merge> merges) {
      for (Merge merge : merges) {
        boolean inside =
            merge.firstRow() <= spot.row()
                && spot.row() <= merge.lastRow()
                && merge.firstColumn() <= spot.column()
                && spot.column() <= merge.lastColumn();
        if (inside && (merge.firstRow() < spot.row() || merge.firstColumn() < spot.column())) {
          return true;
        }
      }
      return false;
    }

    private List<Merge> merges(int rows, int columns) {
      Set<Merge> merges = new LinkedHashSet<>();
      if (rows > 0 && columns > 0) {
        for (Range range : sheet.getRange(0, 0, rows, columns).getMergedCells()) {
          merges.add(
              new Merge(
                  range.getRow() + 1,
                  range.getColumn() + 1,
                  range.getLastRow() + 1,
                  range.getLastColumn() + 1));
        }
      }
      return List.copyOf(merges);
    }

    /** What stores more than its text is not taken from the library, which reads it loosely. */
    private static Cell text(@Nullable Object value, @Nullable String formula) {
      if (value == null) {
        return formula == null ? Cell.EMPTY : new Cell(Cell.Stored.UNCALCULATED, "");
      }
      String text = value.toString();
      return text.startsWith("#") && text.matches("#(REF!|N/A|NAME\\?|VALUE!|DIV/0!|NUM!|NULL!)")
          ? new Cell(Cell.Stored.ERROR, text)
          : Cell.text(text);
    }
  }
}
