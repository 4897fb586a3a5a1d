package dev.ringout.imports.find;

import dev.ringout.cells.CellText;
import dev.ringout.imports.list.Grid;
import dev.ringout.imports.list.Role;
import dev.ringout.imports.list.Words;
import dev.ringout.sheet.Row;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;

/** A list whose headings stand below each other in its first column: a column is a wire. */
public final class OnItsSide {
  private static final int MOST_HEADINGS = 20;

  private OnItsSide() {}

  /** The headings of both ends that stand in a table's first column, or none. */
  public static List<String> headings(Region region, Words words) {
    return headings(
        region.grid().rows().stream().filter(row -> row.number() >= region.headingRow()).toList(),
        region.firstColumn(),
        words);
  }

  /** The headings of both ends that stand in the first column of a sheet, or none. */
  public static List<String> headings(Grid grid, Words words) {
    return headings(grid.rows(), firstColumn(grid), words);
  }

  /** The headings down the first column of a sheet, as many at most as a list has columns. */
  public static List<String> plainly(Grid grid, Words words) {
    return grid.rows().size() > MOST_HEADINGS ? List.of() : headings(grid, words);
  }

  private static int firstColumn(Grid grid) {
    return grid.rows().stream()
        .flatMapToInt(
            row ->
                IntStream.rangeClosed(1, row.cells().size())
                    .filter(column -> !row.cell(column).isBlank())
                    .limit(1))
        .min()
        .orElse(1);
  }

  /** The headings of both ends that stand in a column, each with two cells beside it, or none. */
  private static List<String> headings(List<Row> rows, int column, Words words) {
    HeadingReader reader = HeadingReader.unsaid(words);
    List<String> headings = new ArrayList<>();
    Set<Role> roles = EnumSet.noneOf(Role.class);
    int filled = 0;
    for (Row row : rows) {
      String text = CellText.clean(row.cell(column).text());
      long beside = row.cells().stream().skip(column).filter(cell -> !cell.isBlank()).count();
      filled += text.isEmpty() ? 0 : 1;
      if (beside > 1 && !text.isEmpty() && reader.isPlain(text)) {
        headings.add(text);
        roles.add(reader.role(text));
      }
    }
    boolean mostly = headings.size() >= 2 && headings.size() * 10 >= filled * 7;
    return mostly && areOfBothEnds(roles) && !areAcross(rows, column, reader)
        ? headings
        : List.of();
  }

  /** Whether a heading of an end stands beside the column, as in a list that stands upright. */
  private static boolean areAcross(List<Row> rows, int column, HeadingReader reader) {
    return rows.stream()
        .flatMap(row -> row.cells().stream().skip(column))
        .map(cell -> CellText.clean(cell.text()))
        .anyMatch(text -> !text.isEmpty() && reader.isPlain(text) && reader.role(text).isEnd());
  }

  private static boolean areOfBothEnds(Set<Role> roles) {
    boolean from = roles.contains(Role.FROM) || roles.contains(Role.FROM_PIN);
    boolean to = roles.contains(Role.TO) || roles.contains(Role.TO_PIN);
    boolean far = roles.contains(Role.FAR) || roles.contains(Role.FAR_PIN) || to || from;
    return (from && to) || (roles.contains(Role.PIN) && far);
  }
}
