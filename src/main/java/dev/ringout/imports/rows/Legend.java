package dev.ringout.imports.rows;

import dev.ringout.cells.CellText;
import dev.ringout.imports.list.ListColumn;
import dev.ringout.imports.list.ListTable;
import dev.ringout.imports.list.Role;
import dev.ringout.sheet.Row;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** What numbers in code columns stand for, where the list says it below or above its rows. */
final class Legend {
  private final Map<String, String> meanings = new HashMap<>();
  private final Set<Integer> rows = new HashSet<>();

  /** Finds rows that hold a text and one small number, and nothing else. */
  static Legend of(ListTable table) {
    Legend legend = new Legend();
    boolean coded = table.columns().stream().anyMatch(column -> column.role() == Role.TO_CODE);
    if (!coded) {
      return legend;
    }
    List<Row> body = table.body();
    for (int i = body.size() - 1; i >= 0; i--) {
      if (!legend.take(table, body.get(i))) {
        break;
      }
    }
    return legend;
  }

  private boolean take(ListTable table, Row row) {
    String text = "";
    String code = "";
    int filled = 0;
    for (ListColumn column : table.columns()) {
      String cell = column.textIn(row);
      if (!cell.isEmpty()) {
        filled++;
        if (column.role() == Role.FROM_CODE || column.role() == Role.TO_CODE) {
          code = cell;
        } else {
          text = cell;
        }
      }
    }
    if (filled != 2 || text.isEmpty() || !CellText.isDigits(code) || meanings.containsKey(code)) {
      return false;
    }
    meanings.put(code, text);
    rows.add(row.number());
    return true;
  }

  boolean isRow(Row row) {
    return rows.contains(row.number());
  }

  /** What a code stands for, or empty. */
  String meaning(String code) {
    return meanings.getOrDefault(code, "");
  }
}
