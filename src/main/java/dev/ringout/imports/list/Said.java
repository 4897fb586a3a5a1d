package dev.ringout.imports.list;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Something that the user says of a part of a list.
 *
 * @param where empty for the whole list, a sheet's name, or a sheet's name, an exclamation mark and
 *     the first cell of a table
 * @param value what is said
 */
public record Said<T>(String where, T value) {

  /** Whether it is said of a table. */
  public boolean isOf(String sheet, String firstCell) {
    return isOfSheet(sheet) || where.equals(sheet + "!" + firstCell);
  }

  /** Whether it is said of every table of a sheet. */
  public boolean isOfSheet(String sheet) {
    return where.isEmpty() || where.equals(sheet);
  }

  /** How narrowly it is said: a table's own word counts for more than a sheet's. */
  private int narrowness() {
    return where.isEmpty() ? 0 : where.indexOf('!') > 0 ? 2 : 1;
  }

  /** What is said of a table, the narrowest and then the last word first. */
  public static <T> Optional<T> of(List<Said<T>> all, String sheet, String firstCell) {
    return narrowest(all.stream().filter(one -> one.isOf(sheet, firstCell)));
  }

  /** What is said of a sheet as a whole. */
  public static <T> Optional<T> of(List<Said<T>> all, String sheet) {
    return narrowest(all.stream().filter(one -> one.isOfSheet(sheet)));
  }

  private static <T> Optional<T> narrowest(Stream<Said<T>> said) {
    return said.reduce((best, one) -> one.narrowness() >= best.narrowness() ? one : best)
        .map(Said::value);
  }

  /** As the user would write it before the value: {@code Sheet1!A5!}, or empty. */
  public String prefix() {
    return where.isEmpty() ? "" : where + "!";
  }
}
