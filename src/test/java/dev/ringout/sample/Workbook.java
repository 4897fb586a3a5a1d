package dev.ringout.sample;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Sheets of plain text cells, to be written as a workbook or as a folder of CSV files. */
final class Workbook {
  private final Map<String, List<List<String>>> sheets = new LinkedHashMap<>();

  /** Starts a sheet with its headings. */
  Workbook sheet(String name, String... headings) {
    List<List<String>> rows = new ArrayList<>();
    rows.add(List.of(headings));
    sheets.put(name, rows);
    return this;
  }

  /** Adds a row to a sheet. */
  Workbook row(String sheet, String... cells) {
    List<List<String>> rows = sheets.get(sheet);
    if (rows == null) {
      throw new IllegalArgumentException("no sheet " + sheet);
    }
    rows.add(List.of(cells));
    return this;
  }

  Map<String, List<List<String>>> sheets() {
    return sheets;
  }
}
