package dev.ringout.imports.rows;

import dev.ringout.imports.list.SkipReason;
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
    WIRE,
    SPARE,
    HEADING,
    NOTE,
    BLANK,
    SKIPPED
  }

  /** A row that holds no wire that could be read. */
  public record Skipped(int row, SkipReason why) {}

  public void count(RowKind kind) {
    counts.merge(kind, 1, Integer::sum);
  }

  public void count(RowKind kind, int rows) {
    counts.merge(kind, rows, Integer::sum);
  }

  public void skip(int row, SkipReason why) {
    count(RowKind.SKIPPED);
    skipped.add(new Skipped(row, why));
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
