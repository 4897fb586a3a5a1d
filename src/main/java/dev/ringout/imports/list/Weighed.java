package dev.ringout.imports.list;

import java.util.List;

/**
 * A table with every way to read it, the best first.
 *
 * @param firstCell where the table begins, which tells it from the sheet's others
 * @param decided whether the first is certain
 */
public record Weighed(
    String sheet, String firstCell, List<Hypothesis> hypotheses, boolean decided) {

  /** Keeps a copy of what is listed. */
  public Weighed {
    hypotheses = List.copyOf(hypotheses);
  }

  /** Whether a way that tells wires is among them, taken or not. */
  public boolean mayTellWires() {
    return hypotheses.stream().anyMatch(way -> way.wires() > 0);
  }

  /** The same table while no other of the list tells wires either: it must be asked. */
  public Weighed asked() {
    return new Weighed(sheet, firstCell, hypotheses, false);
  }

  /** The way that is taken, or would be first. */
  public Hypothesis best() {
    return hypotheses.get(0);
  }
}
