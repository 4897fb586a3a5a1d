package dev.ringout.imports.find;

import dev.ringout.imports.list.ColumnCertainty;
import dev.ringout.imports.list.ListColumn;
import dev.ringout.imports.list.Role;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/**
 * Pins with a name beside each: the name may be a signal's, or what the pin goes to. Nobody can
 * tell from such a table, so that the second is shown, and never taken.
 */
final class NamedPins {
  private final Region region;
  private final Map<Integer, ColumnProfile> profiles;

  NamedPins(Region region, Map<Integer, ColumnProfile> profiles) {
    this.region = region;
    this.profiles = profiles;
  }

  /**
   * The columns as those of a connector's pins and what they go to.
   *
   * @param listed the columns as those of pins and their names
   */
  Optional<List<ListColumn>> asEnds(List<ListColumn> listed) {
    Optional<ListColumn> pin = first(listed, Role.PIN);
    boolean told =
        listed.stream()
            .anyMatch(column -> column.isSaid() || column.role().isEnd() || column.isOfNets());
    if (pin.isEmpty() || told) {
      return Optional.empty();
    }
    return nameOf(pin.get(), listed)
        .map(name -> settled(listed, pin.get(), name, first(listed, Role.ITEM)));
  }

  private List<ListColumn> settled(
      List<ListColumn> listed, ListColumn pin, ListColumn name, Optional<ListColumn> item) {
    // Each pin once while the items change: pins of one board, and of the items the names.
    boolean board = item.isPresent() && profile(pin).isDistinct();
    // RFID reader | Function | GPIO: a title's own pins stand first.
    boolean named = item.isEmpty() && !region.item().isEmpty() && name.index() < pin.index();
    List<ListColumn> columns = new ArrayList<>();
    for (ListColumn column : listed) {
      if (column.index() == pin.index()) {
        columns.add(as(column, named ? Role.FAR : Role.PIN));
      } else if (column.index() == name.index()) {
        columns.add(as(column, board ? Role.FAR_PIN : named ? Role.PIN : Role.FAR));
      } else if (board && column.index() == item.get().index()) {
        columns.add(as(column, Role.FAR));
      } else {
        columns.add(column);
      }
    }
    return columns;
  }

  private static ListColumn as(ListColumn column, Role role) {
    return column.as(role, ColumnCertainty.POSSIBLE);
  }

  /** The names nearest to the pins, those that a heading calls so before others. */
  private Optional<ListColumn> nameOf(ListColumn pin, List<ListColumn> listed) {
    return listed.stream()
        .filter(this::mayBeNames)
        .min(
            Comparator.comparingInt((ListColumn column) -> rank(column.role()))
                .thenComparingInt(column -> Math.abs(column.index() - pin.index()))
                .thenComparingInt(ListColumn::index));
  }

  private boolean mayBeNames(ListColumn column) {
    ColumnProfile cells = profile(column);
    return rank(column.role()) < 3
        && cells.filled() > 1
        && !cells.isNumeric()
        && !cells.isMarks()
        && cells.distinct() * 2 > cells.filled();
  }

  private static int rank(Role role) {
    return switch (role) {
      case SIGNAL -> 0;
      case KEEP -> 1;
      case NOTE -> 2;
      default -> 3;
    };
  }

  private static Optional<ListColumn> first(List<ListColumn> columns, Role role) {
    return columns.stream().filter(column -> column.role() == role).findFirst();
  }

  private ColumnProfile profile(ListColumn column) {
    return Objects.requireNonNull(profiles.get(column.index()));
  }
}
