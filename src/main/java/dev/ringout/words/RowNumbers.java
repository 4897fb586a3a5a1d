package dev.ringout.words;

import java.util.List;

/** Rows by their numbers: {@code rows 3, 4, 5}. */
final class RowNumbers {
  private static final int NAMED = 12;

  private RowNumbers() {}

  static String named(List<Integer> rows) {
    StringBuilder text = new StringBuilder(rows.size() == 1 ? "row " : "rows ");
    for (int i = 0; i < Math.min(rows.size(), NAMED); i++) {
      text.append(i > 0 ? ", " : "").append(rows.get(i));
    }
    if (rows.size() > NAMED) {
      text.append(" and ").append(rows.size() - NAMED).append(" more");
    }
    return text.toString();
  }
}
