package dev.ringout.diagnose;

import dev.ringout.circuit.Conductor;
import dev.ringout.compare.Judged;
import dev.ringout.harness.Part;
import dev.ringout.harness.Point;
import dev.ringout.harness.Switch;
import dev.ringout.harness.Wire;
import java.util.List;

/** A slip in the trade's own things, for outputs. */
public sealed interface SlipFact {
  /** A wire, link or contact does not conduct. */
  record Opened(Conductor conductor) implements SlipFact {}

  /** Wire ends sit elsewhere: one end, or two exchanged. */
  record Misplaced(List<Move> moves) implements SlipFact {}

  /** Two points are joined by something unlisted. */
  record Bridge(Point one, Point other) implements SlipFact {}

  /** A reading was taken at another pin than the sheet says. */
  record Misread(Judged judged, Point listed, Point at) implements SlipFact {}

  /** A wire's joints are poor. */
  record PoorJoint(Conductor conductor) implements SlipFact {}

  /** A wire has another length than listed. */
  record OtherLength(Wire wire, double metres) implements SlipFact {}

  /** A part is not as listed; where its ends really are. */
  record BadPart(Part part, PartFault how, Point from, Point to) implements SlipFact {}

  /** A switch does not work as listed; the position where it is stuck, or the contact welded. */
  record BadSwitch(Switch which, SwitchFault how, String position, List<Point> contact)
      implements SlipFact {}
}
