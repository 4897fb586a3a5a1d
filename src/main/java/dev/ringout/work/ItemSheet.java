package dev.ringout.work;

import dev.ringout.harness.Item;
import java.util.List;
import java.util.Optional;

/**
 * The wiring of one item, in the order of its cavities.
 *
 * @param kind what kind of item it is, in lower case; empty where nothing says
 * @param item what the list says of it
 * @param face where its cavities stand
 * @param noFace why there is no face, where one is to be expected
 */
public record ItemSheet(
    String ref,
    String kind,
    Optional<Item> item,
    List<Cavity> cavities,
    Optional<Face> face,
    Optional<NoFace> noFace) {

  /**
   * A cavity, terminal or stud.
   *
   * @param ends what goes in; none where it stays empty
   * @param plug the sealing plug of an empty cavity, or empty where the tables have none
   * @param jumpers the points that a link joins it to
   */
  public record Cavity(String pin, List<WireEnd> ends, String plug, List<String> jumpers) {
    /** What is given can't be changed afterwards. */
    public Cavity {
      ends = List.copyOf(ends);
      jumpers = List.copyOf(jumpers);
    }
  }
}
