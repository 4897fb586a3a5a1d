package dev.ringout.trace;

import dev.ringout.circuit.Circuit;
import dev.ringout.circuit.Conductor;
import dev.ringout.circuit.Expected;
import dev.ringout.circuit.InsulationLimits.InsulationLimit;
import dev.ringout.circuit.JoinLimits;
import dev.ringout.circuit.JoinLimits.JoinLimit;
import dev.ringout.harness.Part;
import dev.ringout.harness.Point;
import dev.ringout.harness.SwitchState;
import dev.ringout.units.OhmsRange;
import java.util.List;
import java.util.Optional;

/**
 * The net of a point in one state of the switches.
 *
 * @param steps every other point of the net, each after the one by which it is reached
 * @param loops conductors that close a loop: the net holds without them
 * @param parts what hangs on the net and leads to others
 * @param openContacts contacts that join the net to others in another state
 * @param insulation how the net is tested against the rest
 * @param between what lies between the point and a second one, where one was asked for
 */
public record Trace(
    Point start,
    SwitchState state,
    int points,
    List<Step> steps,
    List<Conductor> loops,
    List<Part> parts,
    List<OpenContact> openContacts,
    InsulationLimit insulation,
    Optional<Between> between) {

  /**
   * One step further.
   *
   * @param depth how many steps from the start
   * @param fromStart what a meter may read between the start and this point
   */
  public record Step(int depth, Conductor by, Point from, Point to, OhmsRange fromStart) {}

  /** A contact that is open in this state, and the position that closes it. */
  public record OpenContact(String ref, String position, Point here, Point there) {}

  /**
   * What lies between two points.
   *
   * @param way the conductors on one way; empty where nothing joins them
   * @param expected what a reading should find
   * @param limit what it is held against
   * @param parts what lies between them where nothing joins them
   * @param joinedIn states, one switch moved, in which the two are joined
   */
  public record Between(
      Point to,
      List<Conductor> way,
      Expected expected,
      JoinLimit limit,
      List<Part> parts,
      List<SwitchState> joinedIn) {}

  /** Follows the net of a point, and looks for a second one if there is one. */
  public static Trace of(
      Circuit circuit, JoinLimits limits, Point start, Optional<Point> other, SwitchState state) {
    return new Tracer(circuit, limits, circuit.index(start), state).trace(other);
  }
}
