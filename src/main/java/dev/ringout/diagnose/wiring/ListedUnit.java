package dev.ringout.diagnose.wiring;

import dev.ringout.circuit.Circuit;
import dev.ringout.circuit.JoinLimits;
import dev.ringout.circuit.Predictor;
import dev.ringout.standards.Tables;

/**
 * The unit as listed, and what is known of it before anything is read.
 *
 * @param costs how often each slip happens
 */
public record ListedUnit(
    Circuit circuit,
    JoinLimits limits,
    Predictor predictor,
    Neighbours neighbours,
    SlipCosts costs) {

  /** The unit of a circuit; the tables say how often slips happen. */
  public static ListedUnit of(Circuit circuit, JoinLimits limits, Tables tables) {
    Neighbours neighbours = new Neighbours(circuit);
    return new ListedUnit(
        circuit,
        limits,
        new Predictor(circuit, limits.resistances()),
        neighbours,
        new SlipCosts(circuit, neighbours, tables));
  }
}
