package dev.ringout.imports.rows;

import dev.ringout.imports.list.ListColumn;
import dev.ringout.imports.list.ListTable;
import dev.ringout.imports.list.Words;
import java.util.HashMap;
import java.util.Map;

/**
 * Words that say elsewhere that nothing is connected, and are names here: {@code OPEN} in a column
 * that has {@code CLOSE} as well is what a gate does.
 */
final class NamesLikeSpare {
  private final ListTable table;
  private final Words words;
  private final Map<Integer, Boolean> hasOpposite = new HashMap<>();

  NamesLikeSpare(ListTable table, Words words) {
    this.table = table;
    this.words = words;
  }

  /** Whether a text may be a name at all: "n.c." never is. */
  boolean mayBe(String text) {
    return words.is("name or spare", text);
  }

  /** Whether a text is a name, for the table has its opposite in a column of the same kind. */
  boolean isOne(String text, ListColumn column) {
    return mayBe(text)
        && hasOpposite.computeIfAbsent(
            column.index(),
            index ->
                table.body().stream()
                    .anyMatch(row -> words.mentions("opposite of open", column.textIn(row))));
  }
}
