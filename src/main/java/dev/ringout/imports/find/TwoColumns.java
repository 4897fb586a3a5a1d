package dev.ringout.imports.find;

import dev.ringout.imports.list.ColumnCertainty;
import dev.ringout.imports.list.ListColumn;
import dev.ringout.imports.list.Role;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.regex.Pattern;

/**
 * Every two columns of a table that may be the two ends of a wire by what stands in their cells,
 * whatever their headings say: {@code ESP32 | Module}. Which two are meant nobody can tell from
 * that, so that these ways are shown, and never taken.
 */
final class TwoColumns {
  private static final int MOST = 3;

  /** {@code #}, {@code No.}: over running numbers it says that they count the rows. */
  private static final int SHORT_HEADING = 6;

  /** A board, a part or a connector by its number: {@code YD-RP2040}, {@code J3}. */
  private static final Pattern NUMBERED =
      Pattern.compile("(?=.*\\p{L})(?=.*\\d)[\\p{L}\\d][\\p{L}\\d_./-]{1,19}( .*)?");

  private final Map<Integer, ColumnProfile> profiles;
  private final List<ListColumn> columns;

  TwoColumns(List<ListColumn> columns, Map<Integer, ColumnProfile> profiles) {
    this.columns = columns;
    this.profiles = profiles;
  }

  /** What a column may hold of an end. */
  private enum Holds {
    /** Pins of the item that its heading names. */
    PINS,
    /** Items with their pins, or points by their names. */
    POINTS
  }

  private record Candidate(ListColumn column, Holds holds, boolean numeric, int weight) {}

  private record Pair(Candidate from, Candidate to) {
    int weight() {
      boolean pins = from.holds() == Holds.PINS || to.holds() == Holds.PINS;
      return from.weight()
          + to.weight()
          + (pins ? 1 : 0)
          + (from.numeric() == to.numeric() ? 1 : 0);
    }
  }

  /** The columns with two of them as ends, the likeliest two first. */
  List<List<ListColumn>> asEnds() {
    List<Candidate> candidates = new ArrayList<>();
    for (ListColumn column : columns) {
      if (mayBeEnd(column)) {
        candidate(column, candidates);
      }
    }
    List<Pair> pairs = new ArrayList<>();
    for (int i = 0; i < candidates.size(); i++) {
      for (int j = i + 1; j < candidates.size(); j++) {
        Pair pair = new Pair(candidates.get(i), candidates.get(j));
        if (areOfTwo(pair)) {
          pairs.add(pair);
        }
      }
    }
    pairs.sort(Comparator.comparingInt(pair -> -pair.weight()));
    return pairs.stream().limit(MOST).map(this::settled).toList();
  }

  private boolean mayBeEnd(ListColumn column) {
    ColumnProfile cells = profile(column);
    boolean open =
        switch (column.role()) {
          case KEEP ->
              !column.known() || (cells.isNumeric() && cells.distinct() * 2 > cells.filled());
          case PIN, POINTS, ITEM, FROM, TO, FAR, FROM_PIN, TO_PIN, FAR_PIN -> true;
          default -> false;
        };
    return open
        && !column.isSaid()
        && !column.isBridge()
        && !column.heading().isEmpty()
        && cells.filled() >= 2
        && cells.filled() * 2 >= cells.rows()
        && !cells.mostly(cells.colors())
        && !cells.mostly(cells.lengths())
        && !cells.mostly(cells.gauges())
        && !cells.isMarks()
        && !cells.areArrows()
        && cells.prose() * 3 < cells.filled();
  }

  private void candidate(ListColumn column, List<Candidate> into) {
    ColumnProfile cells = profile(column);
    boolean counts =
        cells.running() && column.role() != Role.PIN && column.heading().length() < SHORT_HEADING;
    boolean numeric = cells.isNumeric();
    int distinct = cells.isDistinct() ? 1 : 0;
    if (cells.mostly(cells.points() + cells.inWords())) {
      into.add(new Candidate(column, Holds.POINTS, numeric, 2 + distinct));
    } else if (cells.pinNames() * 10 >= cells.filled() * 7 && !counts) {
      int headed = column.role() == Role.PIN && !column.item().isEmpty() ? 2 : 0;
      int numbered = NUMBERED.matcher(itemOf(column)).matches() ? 1 : 0;
      into.add(new Candidate(column, Holds.PINS, numeric, headed + numbered + distinct));
    } else if (cells.isDistinct() && cells.mostly(cells.names() + cells.prose())) {
      into.add(new Candidate(column, Holds.POINTS, numeric, distinct));
    }
  }

  /** Pins of one item in both columns are two names of each. */
  private static boolean areOfTwo(Pair pair) {
    ListColumn one = pair.from().column();
    ListColumn other = pair.to().column();
    boolean pins = pair.from().holds() == Holds.PINS && pair.to().holds() == Holds.PINS;
    return !one.key().equals(other.key()) && !(pins && itemOf(one).equalsIgnoreCase(itemOf(other)));
  }

  private static String itemOf(ListColumn column) {
    return column.item().isEmpty() ? column.heading() : column.item();
  }

  private List<ListColumn> settled(Pair pair) {
    List<ListColumn> settled = new ArrayList<>();
    for (ListColumn column : columns) {
      if (column.index() == pair.from().column().index()) {
        settled.add(as(pair.from(), Role.FROM));
      } else if (column.index() == pair.to().column().index()) {
        settled.add(as(pair.to(), Role.TO));
      } else if (isOfEnds(column.role()) && !column.isSaid()) {
        settled.add(column.as(Role.KEEP, ColumnCertainty.POSSIBLE));
      } else {
        settled.add(column);
      }
    }
    return settled;
  }

  private static ListColumn as(Candidate one, Role end) {
    ListColumn column = one.column();
    return one.holds() == Holds.PINS
        ? column.as(end.pinOfEnd(), ColumnCertainty.POSSIBLE).of(itemOf(column))
        : column.as(end, ColumnCertainty.POSSIBLE);
  }

  private static boolean isOfEnds(Role role) {
    return role.isEnd()
        || switch (role) {
          case PIN, ITEM, POINTS, NET, PATH, BRIDGE, BOTH_PINS, FROM_STRIP, TO_STRIP -> true;
          default -> false;
        };
  }

  private ColumnProfile profile(ListColumn column) {
    return Objects.requireNonNull(profiles.get(column.index()));
  }
}
