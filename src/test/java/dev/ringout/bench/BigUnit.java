package dev.ringout.bench;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.streaming.SXSSFWorkbook;

/**
 * Writes a large unit, its next revision and its readings as workbooks: {@code harness.xlsx},
 * {@code harness-next.xlsx} and {@code readings.xlsx}. Of every ten wires eight go from connector
 * to connector and two to strips whose terminals are linked by fives. A few faults are planted.
 */
public final class BigUnit {
  private static final int PINS = 100;

  private BigUnit() {}

  /** Arguments: a folder, how many wires, and at least how many continuity readings. */
  public static void main(String[] args) throws IOException {
    Path folder = Files.createDirectories(Path.of(args[0]));
    int wires = Integer.parseInt(args[1]);
    harness(folder.resolve("harness.xlsx"), wires, false);
    harness(folder.resolve("harness-next.xlsx"), wires, true);
    int least = args.length > 2 ? Integer.parseInt(args[2]) : 0;
    readings(folder.resolve("readings.xlsx"), wires, least);
  }

  private static boolean toStrip(int wire) {
    return wire % 10 >= 8;
  }

  private static String near(int wire) {
    return "J" + (wire / PINS + 1) + "-" + (wire % PINS + 1);
  }

  private static String far(int wire) {
    if (toStrip(wire)) {
      int terminal = wire / 10 * 2 + wire % 10 - 8;
      return "TB" + (terminal / 50 + 1) + "-" + (terminal % 50 + 1);
    }
    return "P" + (wire / PINS + 1) + "-" + (wire % PINS + 1);
  }

  /** Of every hundred wires one is another in the next revision, in turn in one of five ways. */
  private static boolean changes(int wire, boolean next, int how) {
    return next && wire % 100 == 7 && wire / 100 % 5 == how;
  }

  private static void harness(Path file, int wires, boolean next) throws IOException {
    try (SXSSFWorkbook workbook = new SXSSFWorkbook(null, 100, false, true);
        OutputStream out = Files.newOutputStream(file)) {
      Sheet sheet = workbook.createSheet("Wires");
      row(sheet, 0, "Wire", "From", "To", "Gauge", "Color", "Length (ft)", "Signal", "Cable");
      int rows = 1;
      for (int wire = 0; wire < wires; wire++) {
        if (changes(wire, next, 0)) {
          continue;
        }
        boolean crossed = changes(wire, next, 1) || changes(wire - 1, next, 1);
        row(
            sheet,
            rows++,
            (changes(wire, next, 2) ? "N" : "W") + wire,
            near(wire),
            far(crossed ? wire % 100 == 7 ? wire + 1 : wire - 1 : wire),
            changes(wire, next, 3) ? "18" : "20",
            wire % 2 == 0 ? "WHT" : "BLU",
            "6",
            "SIG " + wire,
            "C" + wire / PINS);
      }
      Sheet links = workbook.createSheet("Links");
      row(links, 0, "Ref", "Pin", "To Pin");
      int number = 1;
      for (int terminal = 0; terminal < wires / 10 * 2; terminal++) {
        if (terminal % 5 != 4) {
          String ref = "TB" + (terminal / 50 + 1);
          row(links, number++, ref, "" + (terminal % 50 + 1), "" + (terminal % 50 + 2));
        }
      }
      workbook.write(out);
    }
  }

  private static void readings(Path file, int wires, int least) throws IOException {
    try (SXSSFWorkbook workbook = new SXSSFWorkbook(null, 100, false, true);
        OutputStream out = Files.newOutputStream(file)) {
      Sheet sheet = workbook.createSheet("Continuity");
      row(sheet, 0, "Step", "From", "To", "Reading", "Unit");
      int number = 1;
      for (int wire = 0; wire < wires; wire++) {
        row(sheet, number, "" + number++, near(wire), far(wire), continuity(wire, wires), "Ω");
      }
      row(sheet, number, "" + number++, near(200), far(201), "0.07", "Ω");
      row(sheet, number, "" + number++, near(201), far(200), "0.07", "Ω");
      for (int terminal = 0; terminal < wires / 10 * 2; terminal++) {
        if (terminal % 5 != 4) {
          String ref = "TB" + (terminal / 50 + 1) + "-";
          row(
              sheet,
              number,
              "" + number++,
              ref + (terminal % 50 + 1),
              ref + (terminal % 50 + 2),
              "0.01",
              "Ω");
        }
      }
      // More of the same: along a strip, and between neighbours that are apart.
      for (int more = 0; number <= least; more++) {
        int group = more % (wires / 50);
        String ref = "TB" + (group / 10 + 1) + "-";
        int first = group % 10 * 5 + 1;
        int wire = 300 + more % (wires - 500);
        if (more % 2 == 0) {
          row(sheet, number, "" + number++, ref + first, ref + (first + 4), "0.04", "Ω");
        } else {
          int other = wire + 10 * (1 + more / wires % 9);
          if (toStrip(wire)) {
            continue;
          }
          row(sheet, number, "" + number++, near(wire), near(other), "OL", "Ω");
        }
      }
      Sheet insulation = workbook.createSheet("Insulation");
      row(insulation, 0, "Step", "From", "To", "Volts", "Reading", "Unit");
      for (int wire = 0; wire < wires; wire++) {
        boolean crossed = wire == 200 || wire == 201;
        row(
            insulation,
            wire + 1,
            "" + (number + wire),
            near(wire),
            "REST",
            "500",
            crossed ? "0" : "1500",
            "MΩ");
      }
      workbook.write(out);
    }
  }

  private static String continuity(int wire, int wires) {
    if (wire == 200 || wire == 201 || wire == wires / 2) {
      return "OL";
    }
    return wire == wires / 3 ? "0.84" : "0.07";
  }

  private static void row(Sheet sheet, int number, String... cells) {
    Row row = sheet.createRow(number);
    for (int column = 0; column < cells.length; column++) {
      row.createCell(column).setCellValue(cells[column]);
    }
  }
}
