package dev.ringout.compare;

import java.util.List;

/**
 * What the readings prove of what the list requires.
 *
 * @param joins every net in one piece: Σ(points of a net − 1)
 * @param isolation every pair of nets apart, but those between which a part may read anything
 * @param insulation every pair of nets insulated, but those that parts join; none needed where the
 *     list asks for no insulation test
 * @param wires every wire, and every link that others go around, missed by some reading, were it
 *     alone missing
 * @param switches every contact closed in its position and open in the others
 * @param parts every part read
 * @param unprovable what no reading can show with the parts in place
 */
public record Coverage(
    Tally joins,
    Tally isolation,
    Tally insulation,
    Tally wires,
    Tally switches,
    Tally parts,
    List<Unproven> unproven,
    List<Unprovable> unprovable) {

  /** So many needed, so many proven. */
  public record Tally(long needed, long proven) {
    /** Nothing needed. */
    public static final Tally NONE = new Tally(0, 0);

    /** Both together. */
    public Tally and(Tally other) {
      return new Tally(needed + other.needed, proven + other.proven);
    }

    /** Whether nothing is missing. */
    public boolean isComplete() {
      return proven == needed;
    }
  }

  /** Whether everything is proven: nothing is listed as not proven, and nothing is uncounted. */
  public boolean isComplete() {
    return unproven.isEmpty()
        && joins.isComplete()
        && isolation.isComplete()
        && insulation.isComplete()
        && wires.isComplete()
        && switches.isComplete()
        && parts.isComplete();
  }

  /**
   * Nets between which parts lie that a meter reads instead.
   *
   * @param insulation whether it is their insulation that can't be shown; else that they are apart
   *     at all, since a part of unknown ohms may read as a poor join would
   * @param points a point of each net
   * @param parts the parts, by number
   */
  public record Unprovable(boolean insulation, List<Integer> points, List<Integer> parts) {}
}
