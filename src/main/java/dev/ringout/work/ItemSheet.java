package dev.ringout.work;

import dev.ringout.harness.Item;
import java.util.List;
import java.util.Optional;

/**
 * The wiring of one item, in the order of its cavities.
 *
 * @param item what the list says of it
 */
public record ItemSheet(String ref, Optional<Item> item, List<Cavity> cavities) {

  /**
   * A cavity, terminal or stud.
   *
   * @param ends what goes in; none where it stays empty
   * @param plug the sealing plug of an empty cavity, or empty where the tables have none
   * @param jumpers the points that a link joins it to
   */
  public record Cavity(String pin, List<WireEnd> ends, String plug, List<String> jumpers) {}
}
