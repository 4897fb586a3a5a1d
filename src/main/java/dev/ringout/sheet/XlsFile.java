package dev.ringout.sheet;

import dev.ringout.source.Place;
import dev.ringout.source.UnusableInput;
import dev.ringout.source.UnusableInput.Reason;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import org.apache.poi.EncryptedDocumentException;
import org.apache.poi.hssf.usermodel.HSSFWorkbook;
import org.apache.poi.poifs.crypt.Decryptor;
import org.apache.poi.poifs.filesystem.POIFSFileSystem;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.DateUtil;
import org.apache.poi.ss.usermodel.FormulaError;

/** Workbooks of the older kind, which are small enough to stand in memory (65,536 rows a sheet). */
final class XlsFile implements TabularFile {
  private final HSSFWorkbook workbook;
  private final List<Sheet> sheets;

  private XlsFile(HSSFWorkbook workbook, List<Sheet> sheets) {
    this.workbook = workbook;
    this.sheets = sheets;
  }

  static XlsFile open(Path path, String shownName) throws UnusableInput {
    try {
      POIFSFileSystem container = new POIFSFileSystem(path.toFile(), true);
      if (container.getRoot().hasEntryCaseInsensitive(Decryptor.DEFAULT_POIFS_ENTRY)) {
        container.close();
        throw new EncryptedDocumentException("encrypted package");
      }
      HSSFWorkbook workbook = new HSSFWorkbook(container);
      List<Sheet> sheets = new ArrayList<>();
      for (var sheet : workbook) {
        sheets.add(new XlsSheet(sheet, shownName));
      }
      return new XlsFile(workbook, List.copyOf(sheets));
    } catch (EncryptedDocumentException e) {
      throw new UnusableInput(
          shownName, Reason.NOT_UNDERSTOOD, "is protected by a password; save a copy without one");
    } catch (IOException | RuntimeException e) {
      // The library answers damage with many kinds of exception; all mean the same to the user.
      throw new UnusableInput(
          shownName, Reason.NOT_UNDERSTOOD, "is a damaged workbook: " + e.getMessage());
    }
  }

  @Override
  public List<Sheet> sheets() {
    return sheets;
  }

  @Override
  public boolean isSingleTable() {
    return false;
  }

  @Override
  public void close() throws IOException {
    workbook.close();
  }

  private record XlsSheet(org.apache.poi.ss.usermodel.Sheet sheet, String shownName)
      implements Sheet {

    @Override
    public String name() {
      return sheet.getSheetName();
    }

    @Override
    public Place place() {
      return Place.of(shownName, name());
    }

    @Override
    public void forEachRow(Consumer<Row> each) {
      for (var stored : sheet) {
        List<Cell> cells = new ArrayList<>();
        for (var cell : stored) {
          while (cells.size() < cell.getColumnIndex()) {
            cells.add(Cell.EMPTY);
          }
          cells.add(cell(cell));
        }
        Row row = new Row(stored.getRowNum() + 1, List.copyOf(cells));
        if (!row.isBlank()) {
          each.accept(row);
        }
      }
    }

    private static Cell cell(org.apache.poi.ss.usermodel.Cell stored) {
      CellType type =
          stored.getCellType() == CellType.FORMULA
              ? stored.getCachedFormulaResultType()
              : stored.getCellType();
      return switch (type) {
        case STRING -> Cell.text(stored.getStringCellValue());
        case NUMERIC ->
            Numerals.cell(
                stored.getNumericCellValue(), DateUtil.isCellDateFormatted(stored), false);
        case BOOLEAN ->
            new Cell(Cell.Kind.BOOLEAN, stored.getBooleanCellValue() ? "TRUE" : "FALSE");
        case ERROR ->
            new Cell(Cell.Kind.ERROR, FormulaError.forInt(stored.getErrorCellValue()).getString());
        default -> Cell.EMPTY;
      };
    }
  }
}
