package dev.ringout.imports.find;

import dev.ringout.imports.list.ListColumn;
import dev.ringout.imports.list.Role;
import dev.ringout.imports.list.Words;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/**
 * Headings that tell an end only together: the two sides of a strip; and a letter that is a word
 * for "to" in some languages is one only beside its "from": {@code Da} and {@code A}, {@code De
 * Borne} and {@code À Borne}.
 */
final class PairedHeadings {
  private static final String TO_BESIDE_FROM = "to beside from";
  private static final String ONE_SIDE = "one side";
  private static final String OTHER_SIDE = "other side";

  private PairedHeadings() {}

  /** The columns of one row of headings, the second end of each pair among them. */
  static List<ListColumn> in(List<ListColumn> columns, Words words, HeadingReader headings) {
    List<ListColumn> sided = sides(toBesideFrom(columns, words, headings), words, headings);
    return ofTwoItems(withoutKinds(sided), words);
  }

  /** {@code Module pin} beside {@code Module}: the column says which module it is. */
  private static List<ListColumn> withoutKinds(List<ListColumn> columns) {
    return columns.stream()
        .map(
            column ->
                !column.isSaid()
                        && columns.stream()
                            .anyMatch(
                                other ->
                                    other.index() != column.index()
                                        && other.key().equalsIgnoreCase(column.item()))
                    ? column.of("")
                    : column)
        .toList();
  }

  /**
   * {@code Board pin | To lamp pin}, {@code Board pin | Lamp connection}: pins of the two items
   * that the headings name, where no other column names an end.
   */
  private static List<ListColumn> ofTwoItems(List<ListColumn> columns, Words words) {
    List<ListColumn> ends =
        columns.stream()
            .filter(
                column ->
                    column.role().isEnd()
                        || column.role() == Role.PIN
                        || column.role() == Role.ITEM
                        || isLeadOf(column, words))
            .toList();
    Optional<ListColumn> own = ends.stream().filter(one -> one.role() == Role.PIN).findFirst();
    Optional<ListColumn> far = ends.stream().filter(one -> isOfFarItem(one, words)).findFirst();
    boolean two =
        ends.size() == 2
            && own.isPresent()
            && far.isPresent()
            && ends.stream().noneMatch(ListColumn::isSaid)
            && !own.get().item().isEmpty()
            && !own.get().item().equalsIgnoreCase(far.get().item());
    if (!two) {
      return columns;
    }
    boolean first = far.get().index() < own.get().index();
    boolean lead = far.get().role() == Role.WIRE && first;
    boolean from = far.get().role() == Role.FROM_PIN || lead;
    return columns.stream()
        .map(
            column ->
                column.equals(own.get())
                    ? column.as(from ? Role.TO_PIN : Role.FROM_PIN, column.certainty())
                    : column.equals(far.get())
                        ? column.as(from ? Role.FROM_PIN : Role.TO_PIN, column.certainty())
                        : column)
        .toList();
  }

  /** Whether a heading begins with the item whose pins it says that others go to. */
  private static boolean isOfFarItem(ListColumn column, Words words) {
    String item = column.item().toLowerCase(Locale.ROOT);
    boolean led = column.key().startsWith(item + " ");
    boolean side = isOn(ONE_SIDE, column, words) || isOn(OTHER_SIDE, column, words);
    return !item.isEmpty()
        && !side
        && (column.role().isPinOfEnd()
            || (column.role() == Role.FAR && led)
            || isLeadOf(column, words));
  }

  /** {@code Servo wire}: the leads that come out of it, by their names or colours. */
  private static boolean isLeadOf(ListColumn column, Words words) {
    return column.role() == Role.WIRE
        && !column.item().isEmpty()
        && words.mentions("peripheral", column.heading());
  }

  /**
   * {@code Internal | Terminal | External}: what stands on either side of a strip, where no heading
   * says from and to.
   */
  private static List<ListColumn> sides(
      List<ListColumn> columns, Words words, HeadingReader headings) {
    boolean one = columns.stream().anyMatch(column -> isOn(ONE_SIDE, column, words));
    boolean other = columns.stream().anyMatch(column -> isOn(OTHER_SIDE, column, words));
    boolean said =
        columns.stream()
            .filter(column -> !isOn(ONE_SIDE, column, words) && !isOn(OTHER_SIDE, column, words))
            .anyMatch(column -> column.role() == Role.FROM || column.role() == Role.TO);
    if (!one || !other || said) {
      return columns;
    }
    List<ListColumn> sided = new ArrayList<>();
    for (ListColumn column : columns) {
      boolean first = isOn(ONE_SIDE, column, words);
      boolean end = first || isOn(OTHER_SIDE, column, words);
      sided.add(end && !column.isSaid() ? onSide(column, first, words, headings) : column);
    }
    return sided;
  }

  private static boolean isOn(String side, ListColumn column, Words words) {
    return words.mentions(side, column.heading());
  }

  /** What a heading says besides its side, as of the end on that side. */
  private static ListColumn onSide(
      ListColumn column, boolean first, Words words, HeadingReader headings) {
    List<String> rest = new ArrayList<>();
    for (String token : Words.tokens(column.heading())) {
      boolean side =
          words.isAny(ONE_SIDE, token)
              || words.isAny(OTHER_SIDE, token)
              || words.isAny("from", token)
              || words.isAny("to", token)
              || words.isAny("far", token);
      if (!side) {
        rest.add(token);
      }
    }
    String own = String.join(" ", rest);
    Role plain = headings.role(own);
    boolean end = rest.isEmpty() || plain == Role.ITEM || plain == Role.PIN || plain == Role.KEEP;
    ListColumn read =
        headings.understand(column.index(), end ? ((first ? "from " : "to ") + own).strip() : own);
    return new ListColumn(
        column.index(),
        column.heading(),
        read.role(),
        read.role() == Role.FROM || read.role() == Role.TO ? ListColumn.SIDE : read.unit(),
        read.item(),
        true,
        read.certainty());
  }

  private static List<ListColumn> toBesideFrom(
      List<ListColumn> columns, Words words, HeadingReader headings) {
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
