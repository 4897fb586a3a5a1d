package dev.ringout.benchmarks;

import dev.ringout.sheet.OutFile;
import dev.ringout.sheet.OutSheet;
import java.io.BufferedWriter;
import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.apache.poi.hssf.usermodel.HSSFWorkbook;

/** Writes one wire list in every format that is read, to measure the readers. */
public final class OneList {
  private static final String ODF = "urn:oasis:names:tc:opendocument:xmlns:";
  private static final List<String> HEADINGS =
      List.of("Wire", "From", "To", "Gauge", "Color", "Length", "Signal");

  private OneList() {}

  /** Arguments: a file, whose ending says the format, and how many wires. */
  public static void main(String[] args) throws IOException {
    Path file = Path.of(args[0]);
    List<List<String>> rows = rows(Integer.parseInt(args[1]));
    String name = file.toString();
    if (name.endsWith(".xlsx")) {
      OutFile.workbook(file, List.of(new OutSheet("Wires", HEADINGS, rows)));
    } else if (name.endsWith(".xls")) {
      xls(file, rows);
    } else if (name.endsWith(".ods")) {
      ods(file, rows);
    } else {
      text(file, rows, name.endsWith(".tsv") ? "\t" : ",");
    }
  }

  private static List<List<String>> rows(int wires) {
    List<List<String>> rows = new ArrayList<>();
    for (int i = 0; i < wires; i++) {
      String pin = String.valueOf(i % 100 + 1);
      String item = String.valueOf(i / 100 + 1);
      rows.add(
          List.of(
              "W" + i,
              "J" + item + "-" + pin,
              "P" + item + "-" + pin,
              "20",
              "WHT",
              "2.5 m",
              "S" + i));
    }
    return rows;
  }

  private static void text(Path file, List<List<String>> rows, String separator)
      throws IOException {
    try (BufferedWriter to = Files.newBufferedWriter(file)) {
      to.write(String.join(separator, HEADINGS) + "\n");
      for (List<String> row : rows) {
        to.write(String.join(separator, row) + "\n");
      }
    }
  }

  private static void xls(Path file, List<List<String>> rows) throws IOException {
    try (HSSFWorkbook book = new HSSFWorkbook();
        OutputStream out = Files.newOutputStream(file)) {
      var sheet = book.createSheet("Wires");
      List<List<String>> all = new ArrayList<>(List.of(HEADINGS));
      all.addAll(rows);
      for (int r = 0; r < all.size(); r++) {
        var row = sheet.createRow(r);
        for (int c = 0; c < HEADINGS.size(); c++) {
          row.createCell(c).setCellValue(all.get(r).get(c));
        }
      }
      book.write(out);
    }
  }

  private static void ods(Path file, List<List<String>> rows) throws IOException {
    try (ZipOutputStream zip = new ZipOutputStream(Files.newOutputStream(file))) {
      zip.putNextEntry(new ZipEntry("mimetype"));
      zip.write("application/vnd.oasis.opendocument.spreadsheet".getBytes(StandardCharsets.UTF_8));
      zip.putNextEntry(new ZipEntry("content.xml"));
      Writer to = new OutputStreamWriter(zip, StandardCharsets.UTF_8);
      to.write("<office:document-content");
      for (String one : List.of("office", "table", "text")) {
        to.write(" xmlns:" + one + "='" + ODF + one + ":1.0'");
      }
      to.write("><office:body><office:spreadsheet><table:table table:name='Wires'>");
      odsRow(to, HEADINGS);
      for (List<String> row : rows) {
        odsRow(to, row);
      }
      to.write("</table:table></office:spreadsheet></office:body></office:document-content>");
      to.flush();
    }
  }

  private static void odsRow(Writer to, List<String> cells) throws IOException {
    to.write("<table:table-row>");
    for (String cell : cells) {
      to.write(
          "<table:table-cell office:value-type='string'><text:p>"
              + cell
              + "</text:p></table:table-cell>");
    }
    to.write("</table:table-row>");
  }
}
