package dev.ringout.imports.find;

import dev.ringout.cells.CellText;
import dev.ringout.imports.list.ColumnCertainty;
import dev.ringout.imports.list.Ends;
import dev.ringout.imports.list.ListColumn;
import dev.ringout.imports.list.Role;
import dev.ringout.imports.list.Words;
import dev.ringout.sheet.Row;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/** Columns of a list that has no headings. */
final class HeadingLess {
  private HeadingLess() {}

  /**
   * The columns by their cells and their order, or none where the cells are no wire list.
   *
   * <p>Two columns of full points are from and to. A column of numbers with designators beside it,
   * and numbers beside these, is a connector's own pins with the far ends; what follows is a length
   * without a unit.
   */
  static List<ListColumn> columns(List<Row> rows, int width, Words words, HeadingReader said) {
    return guess(rows, width, words).stream()
        .map(
            column ->
                said.byLetter(column.index()).isPresent()
                    ? said.understand(column.index(), "")
                    : column)
        .toList();
  }

  /** One column of paths, {@code J1-1 to J2-3}, in most rows, and whatever stands beside it. */
  static List<ListColumn> paths(List<Row> rows, int width, Words words, HeadingReader said) {
    Map<Integer, ColumnProfile> profiles = ColumnProfile.of(rows, 1, width, words);
    Optional<Integer> path =
        profiles.keySet().stream()
            .sorted()
            .filter(column -> isOfPaths(Objects.requireNonNull(profiles.get(column))))
            .findFirst();
    if (path.isEmpty()) {
      return List.of();
    }
    List<ListColumn> columns = new ArrayList<>();
    for (int column = 1; column <= width; column++) {
      Role role = column == path.get() ? Role.PATH : Role.KEEP;
      columns.add(
          said.byLetter(column).isPresent()
              ? said.understand(column, "")
              : new ListColumn(column, "", role, "", "", false, ColumnCertainty.LIKELY));
    }
    return List.copyOf(columns);
  }

  private static boolean isOfPaths(ColumnProfile cells) {
    return cells.paths() >= 3 && cells.paths() * 10 >= cells.filled() * 6;
  }

  /** Columns of which nothing is known yet but that two of them can name ends; else none. */
  static List<ListColumn> open(List<Row> rows, int width, Words words, HeadingReader said) {
    List<Row> dense = rows.stream().filter(row -> filled(row) >= 2).toList();
    boolean saidAny = false;
    for (int column = 1; column <= width; column++) {
      saidAny |= said.byLetter(column).isPresent();
    }
    if (dense.size() < (saidAny ? 1 : 3)) {
      return List.of();
    }
    Map<Integer, ColumnProfile> profiles = ColumnProfile.of(dense, 1, width, words);
    List<ListColumn> columns = new ArrayList<>();
    int items = 0;
    for (int column = 1; column <= width; column++) {
      ColumnProfile cells = Objects.requireNonNull(profiles.get(column));
      boolean named = cells.mostly(cells.designators()) || cells.mostly(cells.points());
      items += named && cells.filled() * 2 >= dense.size() ? 1 : 0;
      boolean open = said.byLetter(column).isEmpty();
      Role role = open && cells.mostly(cells.colors()) ? Role.COLOR : Role.KEEP;
      boolean numbers = column == 1 && cells.isDistinct() && cells.filled() == dense.size();
      columns.add(
          open
              ? new ListColumn(
                  column,
                  "",
                  numbers && cells.points() == 0 ? Role.WIRE : role,
                  "",
                  "",
                  false,
                  ColumnCertainty.LIKELY)
              : said.understand(column, ""));
    }
    boolean saidSo = columns.stream().anyMatch(ListColumn::isSaid);
    return items >= 2 || saidSo ? List.copyOf(columns) : List.of();
  }

  private static List<ListColumn> guess(List<Row> rows, int width, Words words) {
    List<Row> dense = rows.stream().filter(row -> filled(row) >= 2).toList();
    if (dense.size() < 3) {
      return List.of();
    }
    Map<Integer, ColumnProfile> profiles = ColumnProfile.of(dense, 1, width, words);
    List<ListColumn> columns = new ArrayList<>();
    int ends = 0;
    for (int column = 1; column <= width; column++) {
      ColumnProfile cells = Objects.requireNonNull(profiles.get(column));
      Role role = Role.KEEP;
      if (cells.filled() * 2 >= dense.size() && cells.mostly(cells.points()) && ends < 2) {
        role = ends == 0 ? Role.FROM : Role.TO;
        ends++;
      }
      columns.add(new ListColumn(column, "", role, "", "", false, ColumnCertainty.LIKELY));
    }
    if (ends == 2) {
      return named(columns, profiles);
    }
    List<ListColumn> pairs = pairs(profiles, width);
    return pairs.isEmpty() ? block(dense, width) : named(pairs, profiles);
  }

  /** A designator with a pin behind it, twice: both ends. */
  private static List<ListColumn> pairs(Map<Integer, ColumnProfile> profiles, int width) {
    List<ListColumn> columns = new ArrayList<>();
    Role[] order = {Role.FROM, Role.FROM_PIN, Role.TO, Role.TO_PIN};
    int next = 0;
    for (int column = 1; column <= width; column++) {
      ColumnProfile cells = Objects.requireNonNull(profiles.get(column));
      boolean fits =
          next < order.length
              && (next % 2 == 0
                  ? isOfItems(cells) && hasPinsBehind(profiles, column, width)
                  : cells.looksLikePins());
      Role role = fits ? order[next++] : Role.KEEP;
      columns.add(new ListColumn(column, "", role, "", "", false, ColumnCertainty.LIKELY));
    }
    return next == order.length ? columns : List.of();
  }

  /** Items come again and again, one on each of its pins; numbers of wires do not. */
  private static boolean isOfItems(ColumnProfile cells) {
    return cells.mostly(cells.designators()) && cells.comesAgain();
  }

  private static boolean hasPinsBehind(
      Map<Integer, ColumnProfile> profiles, int column, int width) {
    return column < width
        && Objects.requireNonNull(profiles.get(column + 1)).looksLikePins()
        && !Objects.requireNonNull(profiles.get(column + 1)).isEmpty();
  }

  private static List<ListColumn> named(
      List<ListColumn> columns, Map<Integer, ColumnProfile> profiles) {
    List<ListColumn> named = new ArrayList<>();
    for (ListColumn column : columns) {
      ColumnProfile cells = Objects.requireNonNull(profiles.get(column.index()));
      Role role = column.role();
      boolean open = role == Role.KEEP && !cells.isEmpty();
      if (open && cells.mostly(cells.colors())) {
        role = Role.COLOR;
      } else if (open && cells.mostly(cells.gauges())) {
        role = Role.GAUGE;
      } else if (open && cells.mostly(cells.lengths())) {
        role = Role.LENGTH;
      } else if (open && column.index() == 1 && cells.isDistinct()) {
        role = Role.WIRE;
      }
      named.add(
          column.as(role, role == Role.WIRE ? ColumnCertainty.POSSIBLE : ColumnCertainty.LIKELY));
    }
    return named;
  }

  private static List<ListColumn> block(List<Row> dense, int width) {
    long fit =
        dense.stream()
            .filter(row -> CellText.isDigits(text(row, 1)) && Ends.isDesignator(text(row, 2)))
            .filter(row -> text(row, 3).length() <= 4 && !text(row, 3).isEmpty())
            .count();
    if (fit * 10 < dense.size() * 6L) {
      return List.of();
    }
    List<ListColumn> columns = new ArrayList<>();
    Role[] order = {Role.PIN, Role.FAR, Role.FAR_PIN, Role.LENGTH};
    for (int column = 1; column <= width; column++) {
      Role role = column <= order.length ? order[column - 1] : Role.KEEP;
      columns.add(
          new ListColumn(
              column,
              "",
              role,
              "",
              "",
              false,
              column == order.length ? ColumnCertainty.POSSIBLE : ColumnCertainty.LIKELY));
    }
    return columns;
  }

  private static String text(Row row, int column) {
    return CellText.clean(row.cell(column).text());
  }

  private static int filled(Row row) {
    return (int) row.cells().stream().filter(cell -> !cell.isBlank()).count();
  }
}
