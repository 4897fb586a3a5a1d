package dev.ringout.imports.list;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/**
 * One way to read a table, with what speaks for and against it.
 *
 * @param table the table, its columns settled that way
 * @param score the sum of the evidence
 * @param wires how many wires, or pins on nets, it has among the rows that were tried
 * @param first the first of them
 * @param options what on the command line confirms it, option and value in turn
 */
public record Hypothesis(
    ListTable table,
    int score,
    List<Evidence> evidence,
    int wires,
    List<Sample> first,
    List<String> options) {

  /** Keeps copies of what is listed. */
  public Hypothesis {
    evidence = List.copyOf(evidence);
    first = List.copyOf(first);
    options = List.copyOf(options);
  }

  /** Whether the user said that it is so. */
  public boolean isSaid() {
    return evidence.stream().anyMatch(one -> one.kind() == Evidence.Kind.SAID);
  }

  /** Whether another way has as many wires and the first of them join the same points. */
  boolean beginsLike(Hypothesis other) {
    return wires == other.wires && joins().equals(other.joins()) && !first.isEmpty();
  }

  private List<Set<String>> joins() {
    return first.stream().map(Sample::joins).toList();
  }

  /**
   * A wire as it would be read; a pin on a net where the far end is a net's name.
   *
   * @param wire its number, or empty
   */
  public record Sample(String wire, End from, End to, boolean net) {
    private Set<String> joins() {
      return new TreeSet<>(List.of(from.toString(), to.toString()));
    }
  }
}
