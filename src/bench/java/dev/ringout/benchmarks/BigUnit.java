package dev.ringout.benchmarks;

import java.io.Closeable;
import java.io.IOException;
import java.io.OutputStream;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Objects;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.streaming.SXSSFWorkbook;
import org.jspecify.annotations.Nullable;

/**
 * Writes a large unit, its next revision and its readings as workbooks ({@code harness.xlsx},
 * {@code harness-next.xlsx}, {@code readings.xlsx}) or as folders of .csv of the same names without
 * the ending: a workbook's sheet ends at 1,048,576 rows. Of every ten wires eight go from connector
 * to connector and two to strips whose terminals are linked by fives. A few faults are planted.
 */
public final class BigUnit {
  private static final int PINS = 100;

  private BigUnit() {}

  /**
   * Arguments: a folder, how many wires, at least how many continuity readings, and {@code xlsx} or
   * {@code csv}.
   */
  public static void main(String[] args) throws IOException {
    Path folder = Files.createDirectories(Path.of(args[0]));
    int wires = Integer.parseInt(args[1]);
    int least = Integer.parseInt(args[2]);
    boolean csv = args[3].equals("csv");
    try (Tables tables = tables(folder.resolve("harness"), csv)) {
      harness(tables, wires, false);
    }
    try (Tables tables = tables(folder.resolve("harness-next"), csv)) {
      harness(tables, wires, true);
    }
    try (Tables tables = tables(folder.resolve("readings"), csv)) {
      readings(tables, wires, least);
    }
  }

  /** Tables that are written one after another. */
  private interface Tables extends Closeable {
    void begin(String name) throws IOException;

    void row(String... cells) throws IOException;
  }

  private static Tables tables(Path path, boolean csv) throws IOException {
    return csv ? new Folder(Files.createDirectories(path)) : new Book(Path.of(path + ".xlsx"));
  }

  private static final class Folder implements Tables {
    private final Path folder;
    private Writer table = Writer.nullWriter();

    Folder(Path folder) {
      this.folder = folder;
    }

    @Override
    public void begin(String name) throws IOException {
      table.close();
      table = Files.newBufferedWriter(folder.resolve(name + ".csv"));
    }

    @Override
    public void row(String... cells) throws IOException {
      table.write(String.join(",", cells) + "\n");
    }

    @Override
    public void close() throws IOException {
      table.close();
    }
  }

  private static final class Book implements Tables {
    private final Path file;
    private final SXSSFWorkbook workbook = new SXSSFWorkbook(null, 100, false, true);
    private @Nullable Sheet sheet;
    private int rows;

    Book(Path file) {
      this.file = file;
    }

    @Override
    public void begin(String name) {
      sheet = workbook.createSheet(name);
      rows = 0;
    }

    @Override
    public void row(String... cells) {
      Row row = Objects.requireNonNull(sheet).createRow(rows++);
      for (int column = 0; column < cells.length; column++) {
        row.createCell(column).setCellValue(cells[column]);
      }
    }

    @Override
    public void close() throws IOException {
      try (workbook;
          OutputStream out = Files.newOutputStream(file)) {
        workbook.write(out);
      }
    }
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

  private static void harness(Tables tables, int wires, boolean next) throws IOException {
    tables.begin("Wires");
    tables.row("Wire", "From", "To", "Gauge", "Color", "Length (ft)", "Signal", "Cable");
    for (int wire = 0; wire < wires; wire++) {
      if (changes(wire, next, 0)) {
        continue;
      }
      boolean crossed = changes(wire, next, 1) || changes(wire - 1, next, 1);
      tables.row(
          (changes(wire, next, 2) ? "N" : "W") + wire,
          near(wire),
          far(crossed ? wire % 100 == 7 ? wire + 1 : wire - 1 : wire),
          changes(wire, next, 3) ? "18" : "20",
          wire % 2 == 0 ? "WHT" : "BLU",
          "6",
          "SIG " + wire,
          "C" + wire / PINS);
    }
    tables.begin("Links");
    tables.row("Ref", "Pin", "To Pin");
    for (int terminal = 0; terminal < wires / 10 * 2; terminal++) {
      if (terminal % 5 != 4) {
        String ref = "TB" + (terminal / 50 + 1);
        tables.row(ref, "" + (terminal % 50 + 1), "" + (terminal % 50 + 2));
      }
    }
  }

  private static void readings(Tables tables, int wires, int least) throws IOException {
    tables.begin("Continuity");
    tables.row("Step", "From", "To", "Reading", "Unit");
    int number = 1;
    for (int wire = 0; wire < wires; wire++) {
      tables.row("" + number++, near(wire), far(wire), continuity(wire, wires), "Ω");
    }
    if (wires > 201) {
      tables.row("" + number++, near(200), far(201), "0.07", "Ω");
      tables.row("" + number++, near(201), far(200), "0.07", "Ω");
    }
    for (int terminal = 0; terminal < wires / 10 * 2; terminal++) {
      if (terminal % 5 != 4) {
        String ref = "TB" + (terminal / 50 + 1) + "-";
        tables.row(
            "" + number++, ref + (terminal % 50 + 1), ref + (terminal % 50 + 2), "0.01", "Ω");
      }
    }
    // More of the same: along a strip, and between neighbours that are apart.
    for (int more = 0; number <= least; more++) {
      int group = more % (wires / 50);
      String ref = "TB" + (group / 10 + 1) + "-";
      int first = group % 10 * 5 + 1;
      int wire = 300 + more % (wires - 500);
      if (more % 2 == 0) {
        tables.row("" + number++, ref + first, ref + (first + 4), "0.04", "Ω");
      } else {
        int other = wire + 10 * (1 + more / wires % 9);
        if (toStrip(wire)) {
          continue;
        }
        tables.row("" + number++, near(wire), near(other), "OL", "Ω");
      }
    }
    tables.begin("Insulation");
    tables.row("Step", "From", "To", "Volts", "Reading", "Unit");
    for (int wire = 0; wire < wires; wire++) {
      boolean crossed = wires > 201 && (wire == 200 || wire == 201);
      tables.row("" + (number + wire), near(wire), "REST", "500", crossed ? "0" : "1500", "MΩ");
    }
  }

  private static String continuity(int wire, int wires) {
    if (wire == 200 || wire == 201 || wire == wires / 2) {
      return "OL";
    }
    return wire == wires / 3 ? "0.84" : "0.07";
  }
}
