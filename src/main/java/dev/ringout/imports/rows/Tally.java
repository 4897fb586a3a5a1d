package dev.ringout.imports.rows;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/** Accounts for every row of a table: each is one of these, and the counts balance. */
public final class Tally {
  private final Map<RowKind, Integer> counts = new EnumMap<>(RowKind.class);
  private final List<Skipped> skipped = new ArrayList<>();

  /** What a row can be. */
  public enum RowKind {
    WIRE("wire"),
    SPARE("spare"),
    HEADING("heading"),
    NOTE("note"),
    BLANK("blank"),
    SKIPPED("skipped");

    private final String word;

    RowKind(String word) {
      this.word = word;
    }

    String word() {
      return word;
    }
  }

  /**
   * A row that holds no wire that could be read.
   *
   * @param lost whether there probably was one
   */
  public record Skipped(int row, String why, boolean lost) {}

  public void count(RowKind kind) {
    counts.merge(kind, 1, Integer::sum);
  }

  public void count(RowKind kind, int rows) {
    counts.merge(kind, rows, Integer::sum);
  }

  public void skip(int row, String why, boolean lost) {
    count(RowKind.SKIPPED);
    skipped.add(new Skipped(row, why, lost));
  }

  public int of(RowKind kind) {
    return counts.getOrDefault(kind, 0);
  }

  public int total() {
    return counts.values().stream().mapToInt(Integer::intValue).sum();
  }

  public List<Skipped> skipped() {
    return List.copyOf(skipped);
  }
}
