package dev.ringout.sample;

import de.siegmar.fastcsv.writer.CsvWriter;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.ss.usermodel.Font;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** Writes sample sheets to disk. */
final class SampleFiles {
  private SampleFiles() {}

  /** A workbook whose cells are text, so that no spreadsheet makes a date of a pin. */
  static void writeWorkbook(Path file, Workbook content) throws IOException {
    try (XSSFWorkbook workbook = new XSSFWorkbook();
        OutputStream out = Files.newOutputStream(file)) {
      CellStyle text = workbook.createCellStyle();
      text.setDataFormat(workbook.createDataFormat().getFormat("@"));
      CellStyle heading = workbook.createCellStyle();
      Font bold = workbook.createFont();
      bold.setBold(true);
      heading.setFont(bold);
      for (Map.Entry<String, List<List<String>>> entry : content.sheets().entrySet()) {
        Sheet sheet = workbook.createSheet(entry.getKey());
        sheet.createFreezePane(0, 1);
        int number = 0;
        for (List<String> cells : entry.getValue()) {
          var row = sheet.createRow(number);
          for (int column = 0; column < cells.size(); column++) {
            if (!cells.get(column).isEmpty()) {
              var cell = row.createCell(column);
              cell.setCellValue(cells.get(column));
              cell.setCellStyle(number == 0 ? heading : text);
            }
          }
          number++;
        }
        for (int column = 0; column < entry.getValue().get(0).size(); column++) {
          sheet.setColumnWidth(column, 256 * widest(entry.getValue(), column));
        }
      }
      workbook.write(out);
    }
  }

  private static int widest(List<List<String>> rows, int column) {
    return rows.stream()
            .filter(row -> row.size() > column)
            .mapToInt(row -> row.get(column).length())
            .max()
            .orElse(8)
        + 2;
  }

  /** One CSV file a sheet. */
  static void writeFolder(Path folder, Workbook content) throws IOException {
    Files.createDirectories(folder);
    for (Map.Entry<String, List<List<String>>> entry : content.sheets().entrySet()) {
      Path file = folder.resolve(entry.getKey().toLowerCase(Locale.ROOT) + ".csv");
      try (CsvWriter csv =
          CsvWriter.builder()
              .lineDelimiter(de.siegmar.fastcsv.writer.LineDelimiter.LF)
              .build(
                  file,
                  StandardCharsets.UTF_8,
                  StandardOpenOption.CREATE,
                  StandardOpenOption.TRUNCATE_EXISTING,
                  StandardOpenOption.WRITE)) {
        for (List<String> row : entry.getValue()) {
          csv.writeRecord(row);
        }
      }
    }
  }
}
