package dev.ringout.imports.rows;

import dev.ringout.imports.list.SkipReason;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Accounts for every row of a table: each is one of these, and the counts balance. */
public final class Tally {
  private final Map<RowKind, Integer> counts = new EnumMap<>(RowKind.class);
  private final Map<Integer, RowKind> kinds = new HashMap<>();
  private int current;
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

  /** The rows that follow are counted as this one's, until the next begins. */
  public void begin(int row) {
    current = row;
  }

  /** What a row was counted as. */
  public RowKind kindOf(int row) {
    return kinds.getOrDefault(row, RowKind.NOTE);
  }

  /** Counts a row. */
  public void count(RowKind kind) {
    kinds.put(current, kind);
    counts.merge(kind, 1, Integer::sum);
  }

  /** Counts rows. */
  public void count(RowKind kind, int rows) {
    counts.merge(kind, rows, Integer::sum);
  }

  /** Counts a row that was skipped. */
  public void skip(int row, SkipReason why) {
    count(RowKind.SKIPPED);
    skipped.add(new Skipped(row, why));
  }

  /** How many rows are of a kind. */
  public int of(RowKind kind) {
    return counts.getOrDefault(kind, 0);
  }

  /** How many rows there are. */
  public int total() {
    return counts.values().stream().mapToInt(Integer::intValue).sum();
  }

  /** The rows that were skipped, in their order. */
  public List<Skipped> skipped() {
    return List.copyOf(skipped);
  }
}
