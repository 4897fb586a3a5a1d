package dev.ringout.imports.join;

import dev.ringout.cells.CellText;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import java.util.function.UnaryOperator;

/** Under what headings the columns of a list that are not understood stand as notes of a wire. */
final class NoteHeadings {
  private final UnaryOperator<String> allowed;
  private final Map<String, String> byListed = new HashMap<>();
  private final Set<String> taken = new HashSet<>();

  /**
   * Headings of one list.
   *
   * @param allowed a heading that no harness file takes for a column of its own
   */
  NoteHeadings(UnaryOperator<String> allowed) {
    this.allowed = allowed;
  }

  /** Two columns that differ at all have headings that differ. */
  private String of(String listed) {
    return byListed.computeIfAbsent(listed, this::unused);
  }

  private String unused(String listed) {
    String clean = CellText.clean(listed);
    String first = allowed.apply(clean.isEmpty() ? "Column" : clean);
    String heading = first;
    for (int number = 2; !taken.add(CellText.headingKey(heading)); number++) {
      heading = first + " (" + number + ")";
    }
    return heading;
  }

  /** Adds a note to those of a wire; of two under one heading none gives way. */
  void put(Map<String, String> notes, String listed, String text) {
    notes.merge(of(listed), text, (one, other) -> one.equals(other) ? one : one + "; " + other);
  }
}
