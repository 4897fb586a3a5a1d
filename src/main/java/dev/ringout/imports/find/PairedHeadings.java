package dev.ringout.imports.find;

import dev.ringout.imports.list.ListColumn;
import dev.ringout.imports.list.Words;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * A letter that is a word for "to" in some languages is one only beside its "from": {@code Da} and
 * {@code A}, {@code De Borne} and {@code À Borne}.
 */
final class PairedHeadings {
  private static final String TO_BESIDE_FROM = "to beside from";

  private PairedHeadings() {}

  /** The columns of one row of headings, the second end of each pair among them. */
  static List<ListColumn> in(List<ListColumn> columns, Words words, HeadingReader headings) {
    Set<String> from = new HashSet<>();
    for (ListColumn column : columns) {
      List<String> tokens = Words.tokens(column.heading());
      if (!tokens.isEmpty() && words.isAny("from", tokens.get(0))) {
        from.add(rest(tokens));
      }
    }
    if (from.isEmpty()) {
      return columns;
    }
    List<ListColumn> paired = new ArrayList<>();
    for (ListColumn column : columns) {
      List<String> tokens = Words.tokens(column.heading());
      boolean to =
          !tokens.isEmpty()
              && words.isAny(TO_BESIDE_FROM, tokens.get(0))
              && from.contains(rest(tokens));
      paired.add(to ? asTo(column, rest(tokens), headings) : column);
    }
    return paired;
  }

  private static String rest(List<String> tokens) {
    return String.join(" ", tokens.subList(1, tokens.size()));
  }

  private static ListColumn asTo(ListColumn column, String rest, HeadingReader headings) {
    ListColumn read = headings.understand(column.index(), ("to " + rest).strip());
    return new ListColumn(
        column.index(),
        column.heading(),
        read.role(),
        read.unit(),
        read.item(),
        true,
        read.certainty());
  }
}
