package dev.ringout.benchmarks.weaken;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** One sheet of cells; weakened in place. */
final class Table {
  final List<String> headings = new ArrayList<>();
  final List<List<String>> rows = new ArrayList<>();

  static Table of(String... headings) {
    Table table = new Table();
    table.headings.addAll(List.of(headings));
    return table;
  }

  Table row(String... cells) {
    rows.add(new ArrayList<>(Arrays.asList(cells)));
    return this;
  }

  Table copy() {
    Table copy = new Table();
    copy.headings.addAll(headings);
    rows.forEach(row -> copy.rows.add(new ArrayList<>(row)));
    return copy;
  }

  /** A column by its name, the unit in its heading apart; -1 where there is none. */
  int column(String name) {
    for (int column = 0; column < headings.size(); column++) {
      String heading = headings.get(column).replaceFirst("\\s*\\(.*\\)", "");
      if (heading.toLowerCase(Locale.ROOT).equals(name.toLowerCase(Locale.ROOT))) {
        return column;
      }
    }
    return -1;
  }

  /** A cell's text without blanks around it; empty where there is no such column. */
  String cell(int row, String name) {
    int column = column(name);
    return column < 0 ? "" : rows.get(row).get(column).strip();
  }

  void set(int row, String name, String text) {
    int column = column(name);
    if (column >= 0) {
      rows.get(row).set(column, text);
    }
  }

  /** The unit in a column's heading; empty where there is none. */
  String headingUnit(String name) {
    int column = column(name);
    String heading = column < 0 ? "" : headings.get(column);
    int open = heading.indexOf('(');
    return open < 0 ? "" : heading.substring(open + 1, heading.length() - 1);
  }

  void dropColumn(int column) {
    headings.remove(column);
    rows.forEach(row -> row.remove(column));
  }

  /** Of a sheet of names and values: the value, or empty. */
  String value(String name) {
    for (int row = 0; row < rows.size(); row++) {
      if (cell(row, "Name").equals(name)) {
        return cell(row, "Value");
      }
    }
    return "";
  }

  /** Of a sheet of names and values: gives a name another value; no value drops the row. */
  Table put(String name, String value) {
    rows.removeIf(row -> row.get(column("Name")).equals(name));
    return value.isEmpty() ? this : row(name, value);
  }

  String csv() {
    return line(headings) + rows.stream().map(Table::line).collect(Collectors.joining());
  }

  private static String line(List<String> cells) {
    return cells.stream()
            .map(cell -> cell.matches("[^,\"]*") ? cell : '"' + cell.replace("\"", "\"\"") + '"')
            .collect(Collectors.joining(","))
        + "\n";
  }
}
