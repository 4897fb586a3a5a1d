package dev.ringout.diagnose;

import dev.ringout.circuit.Conductor;
import dev.ringout.harness.Part;
import dev.ringout.harness.Point;
import java.util.List;

/** A slip in the trade's own things, for outputs. */
public sealed interface SlipFact {
  /** A wire, link or contact does not conduct. */
  record Opened(Conductor conductor) implements SlipFact {}

  /** Wire ends sit elsewhere: one end, or two exchanged. */
  record Misplaced(List<Move> moves) implements SlipFact {}

  /** Two points are joined by something unlisted. */
  record Bridge(Point one, Point other) implements SlipFact {}

  /** A part does not read as listed. */
  record BadPart(Part part) implements SlipFact {}
}
