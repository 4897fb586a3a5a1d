package dev.ringout.compare;

import dev.ringout.compare.InsulationDemand.Level;
import java.util.List;

/**
 * What the readings prove of what the list requires.
 *
 * @param joins every net in one piece: Σ(points of a net − 1)
 * @param isolation every pair of nets apart, but those between which a part may read anything
 * @param insulation every pair of nets insulated, but those that parts join; none needed where the
 *     list asks for no insulation test
 * @param wires every wire missed by some reading, were it alone missing
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

    /** Whether nothing is missing. */
    public boolean isComplete() {
      return proven == needed;
    }
  }

  /** Whether everything is proven. */
  public boolean isComplete() {
    return joins.isComplete()
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

  /** What is not proven, with the points that a reading would need. */
  public sealed interface Unproven {
    /** Why it is not. */
    String why();

    /** Two pieces of one net that no reading joins; a point of each. */
    record Join(int from, int to, String why) implements Unproven {}

    /**
     * A net that no reading holds apart from some others; a point of it and one of them.
     *
     * @param waitsForJoins whether only joins are missing: once each net is proven to be in one
     *     piece, the readings made hold them apart
     */
    record Isolation(int point, int other, long others, boolean waitsForJoins, String why)
        implements Unproven {}

    /**
     * A net whose insulation from some others no reading shows; a point of it and one of them.
     *
     * @param waitsForJoins whether only joins are missing
     * @param level the volts and ohms that a reading needs
     */
    record Insulation(
        int point, int other, long others, boolean waitsForJoins, Level level, String why)
        implements Unproven {}

    /** A wire that no reading would miss; its number among the circuit's conductors. */
    record OfWire(int conductor, String why) implements Unproven {}

    /** A switch contact not seen closed in its position, or not seen open in another. */
    record Contact(int conductor, String position, boolean closed, String why)
        implements Unproven {}

    /**
     * A part that no good reading was made across; its number.
     *
     * @param read whether one was made that is not good
     */
    record OfPart(int part, boolean read, String why) implements Unproven {}
  }
}
