package dev.ringout.sample;

import com.github.miachm.sods.Range;
import com.github.miachm.sods.SpreadSheet;
import dev.ringout.harness.NaturalOrder;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.Charset;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.ss.usermodel.Font;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** The bridge's wire list as three shops might have sent it, each in its own ugly layout. */
final class AsReceived {
  private static final Charset WINDOWS_1252 = Charset.forName("windows-1252");

  private final List<Map<String, String>> wires = new ArrayList<>();
  private final List<String[]> jumpers = new ArrayList<>();

  AsReceived(Workbook harness) {
    rows(harness, "Wires").forEach(wires::add);
    for (Map<String, String> link : rows(harness, "Links")) {
      jumpers.add(new String[] {link.get("Ref"), link.get("Pin"), link.get("To Pin")});
    }
  }

  private static List<Map<String, String>> rows(Workbook harness, String sheet) {
    List<List<String>> rows = harness.sheets().getOrDefault(sheet, List.of());
    List<Map<String, String>> named = new ArrayList<>();
    for (List<String> row : rows.subList(1, rows.size())) {
      Map<String, String> one = new LinkedHashMap<>();
      for (int column = 0; column < row.size(); column++) {
        one.put(rows.get(0).get(column), row.get(column));
      }
      named.add(one);
    }
    return named;
  }

  void write(Path folder) throws IOException {
    Files.createDirectories(folder);
    connectorSheets(folder.resolve("connector-sheets.xlsx"));
    cableSchedule(folder.resolve("cable-schedule.ods"));
    netTable(folder.resolve("net-table.csv"));
  }

  /** A line of a connector's own list. */
  private record PinRow(String pin, String far, Map<String, String> wire) {}

  /** One sheet a connector or strip; every wire stands on two of them. */
  private void connectorSheets(Path file) throws IOException {
    Map<String, List<PinRow>> byItem = new TreeMap<>(NaturalOrder.INSTANCE);
    for (Map<String, String> wire : wires) {
      String from = wire.get("From");
      String to = wire.get("To");
      byItem
          .computeIfAbsent(from, item -> new ArrayList<>())
          .add(new PinRow(text(wire, "From Pin"), to + " – " + wire.get("To Pin"), wire));
      byItem
          .computeIfAbsent(to, item -> new ArrayList<>())
          .add(new PinRow(text(wire, "To Pin"), from + " – " + wire.get("From Pin"), wire));
    }
    for (String[] jumper : jumpers) {
      Map<String, String> link = Map.of("Wire", "", "Color", "", "Gauge", "", "Signal", "jumper");
      byItem
          .computeIfAbsent(jumper[0], item -> new ArrayList<>())
          .add(new PinRow(jumper[1], jumper[0] + " – " + jumper[2], link));
      byItem
          .computeIfAbsent(jumper[0], item -> new ArrayList<>())
          .add(new PinRow(jumper[2], jumper[0] + " – " + jumper[1], link));
    }
    try (XSSFWorkbook workbook = new XSSFWorkbook();
        OutputStream out = Files.newOutputStream(file)) {
      CellStyle struck = workbook.createCellStyle();
      Font line = workbook.createFont();
      line.setStrikeout(true);
      struck.setFont(line);
      int number = 0;
      for (Map.Entry<String, List<PinRow>> item : byItem.entrySet()) {
        number++;
        connectorSheet(workbook, item.getKey(), item.getValue(), number, byItem.size(), struck);
      }
      workbook.write(out);
    }
  }

  private static String text(Map<String, String> wire, String column) {
    return wire.getOrDefault(column, "");
  }

  private static void connectorSheet(
      XSSFWorkbook workbook,
      String item,
      List<PinRow> rows,
      int number,
      int sheets,
      CellStyle struck) {
    Sheet sheet = workbook.createSheet(item + " wiring");
    sheet.createRow(0).createCell(0).setCellValue("Harrow Sluice bridge JB4 - point list");
    sheet.createRow(1).createCell(0).setCellValue("Sheet " + number + " of " + sheets);
    fill(sheet, 3, "Cav.", "Goes to", "Wire No.", "Col.", "AWG", "Circuit", "Ck'd by");
    int at = 4;
    String colourAbove = "";
    for (PinRow row : rows) {
      if (at == 24) {
        fill(sheet, at++, "CONT'D");
        fill(sheet, at++, "Cav.", "Goes to", "Wire No.", "Col.", "AWG", "Circuit", "Ck'd by");
        colourAbove = "";
      }
      String colour = text(row.wire(), "Color");
      boolean same = !colour.isEmpty() && colour.equals(colourAbove);
      fill(
          sheet,
          at++,
          row.pin() + (at % 5 == 0 ? "\u00A0" : ""),
          row.far(),
          text(row.wire(), "Wire"),
          same ? "\"" : colour,
          text(row.wire(), "Gauge"),
          text(row.wire(), "Signal"));
      colourAbove = colour;
    }
    if (item.equals("J2")) {
      // A red-line: this wire was taken out at change 3.
      fill(sheet, at, "19", "TB2 – 8", "W099", "PNK", "20", "OLD HORN");
      sheet.getRow(at).forEach(cell -> cell.setCellStyle(struck));
      at++;
    }
    if (item.equals("J1")) {
      fill(sheet, at, "", "", "", "", "", "total " + rows.size() + " cavities used");
    }
    sheet.setColumnHidden(6, true);
  }

  private static void fill(Sheet sheet, int row, String... cells) {
    var to = sheet.createRow(row);
    for (int column = 0; column < cells.length; column++) {
      if (!cells[column].isEmpty()) {
        to.createCell(column).setCellValue(cells[column]);
      }
    }
  }

  /** From and to under two rows of headings, connectors in merged cells, lengths in millimetres. */
  private void cableSchedule(Path file) throws IOException {
    SpreadSheet book = new SpreadSheet();
    var sheet = new com.github.miachm.sods.Sheet("Schedule", wires.size() + jumpers.size() + 6, 9);
    set(sheet, 0, "", "FROM", "", "TO", "", "", "", "", "");
    sheet.getRange(0, 1, 1, 2).merge();
    sheet.getRange(0, 3, 1, 2).merge();
    set(
        sheet,
        1,
        "Core",
        "Unit",
        "Term.",
        "Unit",
        "Term.",
        "Ø AWG",
        "Colour",
        "Length [mm]",
        "Use");
    int at = 2;
    int start = at;
    for (Map<String, String> wire : wires) {
      boolean same = at > 2 && text(wire, "From").equals(text(wires.get(at - 3), "From"));
      if (!same) {
        merge(sheet, start, at);
        start = at;
      }
      double millimetres = Double.parseDouble(text(wire, "Length (m)")) * 1000;
      set(
          sheet,
          at,
          text(wire, "Wire"),
          same ? "" : text(wire, "From"),
          text(wire, "From Pin"),
          text(wire, "To"),
          text(wire, "To Pin"),
          text(wire, "Gauge"),
          text(wire, "Color"),
          "",
          text(wire, "Signal"));
      sheet.getRange(at, 7).setValue(Math.rint(millimetres));
      at++;
    }
    merge(sheet, start, at);
    for (String[] jumper : jumpers) {
      set(sheet, at++, "", jumper[0], jumper[1], jumper[0], jumper[2], "", "", "", "jumper");
    }
    set(sheet, at++, "", "", "", "", "", "", "", "", "");
    set(sheet, at, "End of list", "", "", "", "", "", "", "", "");
    book.appendSheet(sheet);
    try (OutputStream out = Files.newOutputStream(file)) {
      book.save(out);
    }
  }

  private static void set(com.github.miachm.sods.Sheet sheet, int row, String... cells) {
    for (int column = 0; column < cells.length; column++) {
      if (!cells[column].isEmpty()) {
        sheet.getRange(row, column).setValue(cells[column]);
      }
    }
  }

  private static void merge(com.github.miachm.sods.Sheet sheet, int start, int end) {
    if (end - start > 1) {
      Range range = sheet.getRange(start, 1, end - start, 1);
      range.merge();
    }
  }

  /** Nets down, items across, several pins in a cell; semicolons, in the encoding of 1995. */
  private void netTable(Path file) throws IOException {
    List<String> lines = new ArrayList<>();
    lines.add("Netzliste / net table JB4 \u2014 Ω not used;;");
    lines.add("");
    String[][] tables = {
      {"J1", "J2", "J3", "J4", "TB1", "TB2", "SP1", "E1", "E2"},
      {"P1", "P11"},
      {"P2", "S1", "S2", "DS1", "L1", "CR1"},
      {"TB1", "CR2"},
      {"P3", "M1"},
      {"P4", "RS1"}
    };
    for (String[] items : tables) {
      lines.add("Signal;" + String.join(";", items));
      for (Map<String, String> net : nets(List.of(items))) {
        List<String> cells = new ArrayList<>();
        cells.add(net.getOrDefault("", ""));
        for (String item : items) {
          cells.add(net.getOrDefault(item, ""));
        }
        lines.add(String.join(";", cells));
      }
      lines.add("");
    }
    String text = String.join("\r\n", lines).replace("Ω", "ohms");
    Files.write(file, text.getBytes(WINDOWS_1252));
  }

  /** The nets through these items, as cells by item; the signal stands under "". */
  private List<Map<String, String>> nets(List<String> items) {
    Map<String, List<String>> netOf = new LinkedHashMap<>();
    Map<String, String> signals = new LinkedHashMap<>();
    for (Map<String, String> wire : wires) {
      join(
          netOf,
          text(wire, "From") + " " + text(wire, "From Pin"),
          text(wire, "To") + " " + text(wire, "To Pin"));
      signals.putIfAbsent(text(wire, "From") + " " + text(wire, "From Pin"), text(wire, "Signal"));
    }
    for (String[] jumper : jumpers) {
      join(netOf, jumper[0] + " " + jumper[1], jumper[0] + " " + jumper[2]);
    }
    List<Map<String, String>> nets = new ArrayList<>();
    for (List<String> net : new java.util.LinkedHashSet<>(netOf.values())) {
      Map<String, String> cells = new LinkedHashMap<>();
      List<String> sorted = new ArrayList<>(net);
      sorted.sort(NaturalOrder.INSTANCE);
      for (String point : sorted) {
        String[] parts = point.split(" ", 2);
        if (items.contains(parts[0])) {
          cells.merge(parts[0], parts[1], (one, other) -> one + ", " + other);
          String signal = signals.getOrDefault(point, "");
          if (!signal.isEmpty()) {
            cells.putIfAbsent("", signal.toLowerCase(Locale.ROOT));
          }
        }
      }
      if (!cells.isEmpty()) {
        nets.add(cells);
      }
    }
    return nets;
  }

  private static void join(Map<String, List<String>> netOf, String one, String other) {
    List<String> left = netOf.computeIfAbsent(one, point -> new ArrayList<>(List.of(point)));
    List<String> right = netOf.computeIfAbsent(other, point -> new ArrayList<>(List.of(point)));
    if (left != right) {
      left.addAll(right);
      right.forEach(point -> netOf.put(point, left));
    }
  }
}
