package dev.ringout.imports.rows;

import dev.ringout.cells.CellText;
import dev.ringout.imports.list.Ends;
import dev.ringout.imports.list.ListColumn;
import dev.ringout.imports.list.ListTable;
import dev.ringout.imports.list.Role;
import dev.ringout.imports.list.Words;
import dev.ringout.sheet.Row;
import java.util.HashMap;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Ends that name no item, as people write jumpers within one connector: {@code pin 3}, {@code
 * jumper to 5}, or a number alone among full points. They are of the item at the other end, or
 * nobody knows of which.
 */
final class EndsWithoutItem {
  private static final Pattern WORDED = Pattern.compile("(\\p{L}{2,12})\\.? ([A-Za-z]?\\d{1,3})");
  private static final Pattern BARE = Pattern.compile("\\d{1,3}");
  private static final Pattern JUMPED = Pattern.compile("(\\p{L}[\\p{L} ]{1,24}?)[ :.]+\\d{1,3}");

  private final ListTable table;
  private final Words words;
  private final Ends ends;
  private final Map<Integer, Boolean> pointed = new HashMap<>();

  EndsWithoutItem(ListTable table, Words words, Ends ends) {
    this.table = table;
    this.words = words;
    this.ends = ends;
  }

  boolean isOne(String text, ListColumn column) {
    Role role = column.role();
    if (role.isPinOfEnd()) {
      return false;
    }
    if (words.is("jumped", text) || words.is("itself", text)) {
      return true;
    }
    if (table.column(role.pinOfEnd()).isPresent()) {
      return false;
    }
    Matcher worded = WORDED.matcher(text);
    Matcher jumped = JUMPED.matcher(text);
    return (worded.matches() && words.is("before pin", worded.group(1)))
        || (jumped.matches() && words.is("jumped", jumped.group(1)))
        || (BARE.matcher(text).matches() && holdsPoints(column));
  }

  /** Whether most cells of a column are points with an item. */
  private boolean holdsPoints(ListColumn column) {
    return pointed.computeIfAbsent(
        column.index(),
        index -> {
          int filled = 0;
          int points = 0;
          for (Row row : table.body()) {
            String text = CellText.clean(row.cell(index).text());
            filled += text.isEmpty() ? 0 : 1;
            points += text.isEmpty() || ends.parse(text, column.grammar()).pin().isEmpty() ? 0 : 1;
          }
          return points * 2 >= filled && points > 1;
        });
  }
}
