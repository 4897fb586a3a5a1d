package dev.ringout.work;

import dev.ringout.standards.FacePositions.Spot;
import java.util.List;

/**
 * The face of an insert, a strip or a part.
 *
 * @param wiringSide where each cavity stands, seen from the side on which the wires go in
 * @param hasMatingSide whether there is another side to look at: a connector's
 * @param source where the positions come from
 * @param unplaced cavities of which no position is known
 */
public record Face(
    List<Spot> wiringSide, boolean hasMatingSide, String source, List<String> unplaced) {
  /** Where each cavity stands, seen from the other half: the mirror image. */
  public List<Spot> matingSide() {
    return wiringSide.stream().map(Spot::mirrored).toList();
  }
}
