package dev.ringout.compare;

import java.util.List;

/**
 * What the readings prove.
 *
 * @param joins every net in one piece: Σ(points of a net − 1)
 * @param isolation every pair of nets apart
 * @param wires every wire missed by some reading, were it alone missing
 * @param switches every contact closed in its position and open in the others
 */
public record Coverage(
    Tally joins, Tally isolation, Tally wires, Tally switches, List<Unproven> unproven) {

  /** So many needed, so many proven. */
  public record Tally(long needed, long proven) {
    /** Whether nothing is missing. */
    public boolean isComplete() {
      return proven == needed;
    }
  }

  /** Whether everything is proven. */
  public boolean isComplete() {
    return joins.isComplete()
        && isolation.isComplete()
        && wires.isComplete()
        && switches.isComplete();
  }

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

    /** A wire that no reading would miss; its number among the circuit's conductors. */
    record OfWire(int conductor, String why) implements Unproven {}

    /** A switch contact not seen closed in its position, or not seen open in another. */
    record Contact(int conductor, String position, boolean closed, String why)
        implements Unproven {}
  }
}
