package dev.ringout.imports.list;

import java.util.ArrayList;
import java.util.List;

/**
 * A table with every way to read it, the best first.
 *
 * @param firstCell where the table begins, which tells it from the sheet's others
 */
public record Weighed(
    String sheet, String firstCell, List<Hypothesis> hypotheses, Standing standing) {

  /** How certain the first way is. */
  public enum Standing {
    /** It is taken. */
    CERTAIN,
    /** It tells no wires and is taken, though another way would tell some. */
    ASKED,
    /** It is not certain enough to be taken: while a table is so, nothing is read. */
    OPEN
  }

  /** Keeps a copy of what is listed. */
  public Weighed {
    hypotheses = List.copyOf(hypotheses);
  }

  /** Whether the first way is taken. */
  public boolean decided() {
    return standing != Standing.OPEN;
  }

  /** Whether a way that tells wires is among them, taken or not. */
  public boolean mayTellWires() {
    return hypotheses.stream()
        .anyMatch(way -> way.wires() > 0 || way.table().layout() == Layout.MARKS);
  }

  /** The same table while no other of the list tells wires either: it must be asked. */
  public Weighed asked() {
    return new Weighed(
        sheet, firstCell, hypotheses, standing == Standing.CERTAIN ? Standing.ASKED : standing);
  }

  /**
   * The same table, open where nobody has said that it tells no wires, its headings name both ends
   * of some, and nothing more speaks against these: beside tables that tell wires, its own would be
   * lost.
   */
  public Weighed openWhereBothEndsAreNamed() {
    boolean isLost =
        best().table().layout() == Layout.NONE
            && !best().isSaid()
            && hypotheses.stream()
                .filter(way -> way.score() >= best().score())
                .anyMatch(Weighed::namesBothEnds);
    return isLost ? open() : this;
  }

  /** The same table, not certain. */
  public Weighed open() {
    return new Weighed(sheet, firstCell, hypotheses, Standing.OPEN);
  }

  private static boolean namesBothEnds(Hypothesis way) {
    return way.table().layout() == Layout.FROM_TO
        && way.wires() > 0
        && way.evidence().stream()
            .anyMatch(one -> one.kind() == Evidence.Kind.BOTH_ENDS_NAMED && one.points() >= 60);
  }

  /** The way that is taken, or would be first. */
  public Hypothesis best() {
    return hypotheses.get(0);
  }

  /**
   * What somebody may choose from: the best ways that tell wires, those with other wires first,
   * and, where none is taken yet, that there are none.
   */
  public List<Hypothesis> offered(int mostWays) {
    List<Hypothesis> offered = new ArrayList<>();
    List<Hypothesis> again = new ArrayList<>();
    for (Hypothesis way : hypotheses) {
      boolean tells = way.wires() > 0 || way.table().layout() == Layout.MARKS;
      if (tells) {
        (offered.stream().noneMatch(way::beginsLike) ? offered : again).add(way);
      }
    }
    offered.addAll(again);
    offered.subList(Math.min(mostWays, offered.size()), offered.size()).clear();
    if (!decided()) {
      hypotheses.stream()
          .filter(way -> way.table().layout() == Layout.NONE)
          .findFirst()
          .ifPresent(offered::add);
    }
    return List.copyOf(offered);
  }
}
