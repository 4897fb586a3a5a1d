package dev.ringout.sheet;

import dev.ringout.source.FileBytes;
import dev.ringout.source.Place;
import dev.ringout.source.UnusableInput;
import dev.ringout.source.UnusableInput.Reason;
import dev.ringout.units.Text;
import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Consumer;
import org.apache.poi.EncryptedDocumentException;
import org.apache.poi.hssf.usermodel.HSSFCell;
import org.apache.poi.hssf.usermodel.HSSFCellStyle;
import org.apache.poi.hssf.usermodel.HSSFFont;
import org.apache.poi.hssf.usermodel.HSSFRichTextString;
import org.apache.poi.hssf.usermodel.HSSFSheet;
import org.apache.poi.hssf.usermodel.HSSFWorkbook;
import org.apache.poi.hssf.util.HSSFColor;
import org.apache.poi.poifs.crypt.Decryptor;
import org.apache.poi.poifs.filesystem.POIFSFileSystem;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.DateUtil;
import org.apache.poi.ss.usermodel.FillPatternType;
import org.apache.poi.ss.usermodel.FormulaError;
import org.apache.poi.ss.usermodel.SheetVisibility;

/** Workbooks of the older kind, which are small enough to stand in memory (65,536 rows a sheet). */
final class XlsFile implements TabularFile {
  /** [MS-XLS] 2.5.51, ColU. */
  private static final int MOST_COLUMNS = 256;

  private static final short AUTOMATIC = HSSFColor.HSSFColorPredefined.AUTOMATIC.getIndex();

  private final HSSFWorkbook workbook;
  private final List<Sheet> sheets;

  private XlsFile(HSSFWorkbook workbook, List<Sheet> sheets) {
    this.workbook = workbook;
    this.sheets = sheets;
  }

  static XlsFile open(FileBytes file, String shownName) throws UnusableInput {
    try {
      POIFSFileSystem container = new POIFSFileSystem(file.open());
      if (container.getRoot().hasEntryCaseInsensitive(Decryptor.DEFAULT_POIFS_ENTRY)) {
        container.close();
        throw new EncryptedDocumentException("encrypted package");
      }
      HSSFWorkbook workbook = new HSSFWorkbook(container);
      List<Sheet> sheets = new ArrayList<>();
      XlsColours colours = new XlsColours(workbook);
      for (var sheet : workbook) {
        String name = Text.visible(sheet.getSheetName());
        XlsFormulas formulas = new XlsFormulas((HSSFSheet) sheet);
        sheets.add(new XlsSheet(sheet, name, shownName, colours, formulas, new HashMap<>()));
      }
      return new XlsFile(workbook, List.copyOf(sheets));
    } catch (EncryptedDocumentException e) {
      throw new UnusableInput(
          shownName, Reason.NOT_UNDERSTOOD, "is protected by a password; save a copy without one");
    } catch (IOException | RuntimeException e) {
      throw BrokenWorkbook.refused(shownName, e);
    }
  }

  @Override
  public List<Sheet> sheets() {
    return sheets;
  }

  @Override
  public void close() throws IOException {
    workbook.close();
  }

  private record XlsSheet(
      org.apache.poi.ss.usermodel.Sheet sheet,
      String name,
      String shownName,
      XlsColours colours,
      XlsFormulas formulas,
      Map<String, Optional<ShownNumbers>> shownByFormat)
      implements Sheet {

    @Override
    public Place place() {
      return Place.of(shownName, name);
    }

    @Override
    public Surroundings forEachRow(Consumer<Row> each) throws UnusableInput {
      List<Row> rows = new ArrayList<>();
      Surroundings around;
      try {
        around = read(rows::add);
      } catch (RuntimeException e) {
        throw BrokenWorkbook.refused(shownName, e);
      }
      rows.forEach(each);
      return around;
    }

    private Surroundings read(Consumer<Row> each) {
      SortedSet<Integer> hiddenRows = new TreeSet<>();
      SortedSet<Integer> hiddenColumns = new TreeSet<>();
      Map<Surroundings.Spot, String> comments = new LinkedHashMap<>();
      int widest = 0;
      for (var stored : sheet) {
        if (stored.getZeroHeight()) {
          hiddenRows.add(stored.getRowNum() + 1);
        }
        List<Cell> cells = new ArrayList<>();
        for (var cell : stored) {
          if (cell.getColumnIndex() >= MOST_COLUMNS) {
            throw new IllegalStateException("a cell stands beyond its last column");
          }
          while (cells.size() < cell.getColumnIndex()) {
            cells.add(Cell.EMPTY);
          }
          cells.add(cell(cell));
        }
        widest = Math.max(widest, cells.size());
        Row row = new Row(stored.getRowNum() + 1, List.copyOf(cells));
        if (!row.isBlank()) {
          each.accept(row);
        }
      }
      for (int column = 0; column < widest; column++) {
        if (sheet.isColumnHidden(column)) {
          hiddenColumns.add(column + 1);
        }
      }
      new TreeMap<>(sheet.getCellComments())
          .forEach(
              (address, comment) ->
                  comments.put(
                      new Surroundings.Spot(address.getRow() + 1, address.getColumn() + 1),
                      comment.getString().getString().strip()));
      boolean hidden =
          sheet.getWorkbook().getSheetVisibility(sheet.getWorkbook().getSheetIndex(sheet))
              != SheetVisibility.VISIBLE;
      return new Surroundings(hidden, isFiltered(), hiddenRows, hiddenColumns, merges(), comments);
    }

    /** The older format keeps a filter's range under a name of its own. */
    private boolean isFiltered() {
      int index = sheet.getWorkbook().getSheetIndex(sheet);
      return sheet.getWorkbook().getAllNames().stream()
          .anyMatch(
              name ->
                  name.getSheetIndex() == index
                      && name.getNameName().toLowerCase(Locale.ROOT).contains("filterdatabase"));
    }

    private List<Surroundings.Merge> merges() {
      return sheet.getMergedRegions().stream()
          .map(
              region ->
                  new Surroundings.Merge(
                      region.getFirstRow() + 1,
                      region.getFirstColumn() + 1,
                      region.getLastRow() + 1,
                      region.getLastColumn() + 1))
          .toList();
    }

    private Cell cell(org.apache.poi.ss.usermodel.Cell stored) {
      Cell cell = plain(stored);
      Cell inked = cell.isBlank() ? cell : cell.in(ink((HSSFCell) stored, cell));
      return inked.filled(fill((HSSFCell) stored));
    }

    private String fill(HSSFCell stored) {
      HSSFCellStyle style = stored.getCellStyle();
      if (style.getFillPattern() != FillPatternType.SOLID_FOREGROUND) {
        return FillColours.NONE;
      }
      short number = style.getFillForegroundColor();
      return number == AUTOMATIC
          ? FillColours.NONE
          : colours.mixture(number).map(FillColours::of).orElse(FillColours.NONE);
    }

    private Cell.Ink ink(HSSFCell stored, Cell cell) {
      HSSFWorkbook workbook = stored.getSheet().getWorkbook();
      HSSFFont font = stored.getCellStyle().getFont(workbook);
      boolean struck = font.getStrikeout();
      boolean red = isRed(font);
      boolean text = stored.getCellType() == CellType.STRING;
      HSSFRichTextString rich = text ? stored.getRichStringCellValue() : new HSSFRichTextString("");
      if (rich.numFormattingRuns() == 0) {
        return struck ? new Cell.Ink(true, "", red) : red ? Cell.Ink.RED : Cell.Ink.PLAIN;
      }
      StringBuilder left = new StringBuilder();
      struck = false;
      for (int i = 0; i < cell.text().length(); i++) {
        // Before the first run the cell's own font holds; from there on font 0 is a font as well.
        HSSFFont own =
            i < rich.getIndexOfFormattingRun(0) ? font : workbook.getFontAt(rich.getFontAtIndex(i));
        struck |= own.getStrikeout();
        red |= isRed(own);
        if (!own.getStrikeout()) {
          left.append(cell.text().charAt(i));
        }
      }
      return struck
          ? new Cell.Ink(true, left.toString(), red)
          : red ? Cell.Ink.RED : Cell.Ink.PLAIN;
    }

    private boolean isRed(HSSFFont font) {
      return colours
          .mixture(font.getColor())
          .filter(mixture -> XlsxStyles.isRed(mixture[0], mixture[1], mixture[2]))
          .isPresent();
    }

    private Cell plain(org.apache.poi.ss.usermodel.Cell stored) {
      if (formulas.isUncalculated(stored.getAddress())) {
        return new Cell(Cell.Stored.UNCALCULATED, "");
      }
      CellType type =
          stored.getCellType() == CellType.FORMULA
              ? stored.getCachedFormulaResultType()
              : stored.getCellType();
      return switch (type) {
        case STRING -> Cell.text(stored.getStringCellValue());
        case NUMERIC -> number(stored);
        case BOOLEAN ->
            new Cell(Cell.Stored.BOOLEAN, stored.getBooleanCellValue() ? "TRUE" : "FALSE");
        case ERROR ->
            new Cell(
                Cell.Stored.ERROR, FormulaError.forInt(stored.getErrorCellValue()).getString());
        default -> Cell.EMPTY;
      };
    }

    private Cell number(org.apache.poi.ss.usermodel.Cell stored) {
      double number = stored.getNumericCellValue();
      boolean dates1904 =
          ((HSSFCell) stored)
              .getSheet()
              .getWorkbook()
              .getInternalWorkbook()
              .isUsing1904DateWindowing();
      Cell cell = Numerals.cell(number, DateUtil.isCellDateFormatted(stored), dates1904);
      String format = stored.getCellStyle().getDataFormatString();
      if (cell.kind() != Cell.Stored.NUMBER || format == null || format.isEmpty()) {
        return cell;
      }
      return shownByFormat
          .computeIfAbsent(format, ShownNumbers::of)
          .map(shown -> cell.shownAs(shown.of(number)))
          .orElse(cell);
    }
  }
}
