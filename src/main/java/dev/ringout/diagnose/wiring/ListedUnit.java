package dev.ringout.diagnose.wiring;

import dev.ringout.circuit.Circuit;
import dev.ringout.circuit.JoinLimits;
import dev.ringout.circuit.Predictor;
import dev.ringout.standards.CrimpBarrels;
import dev.ringout.standards.Tables;

/**
 * The unit as listed, and what is known of it before anything is read.
 *
 * @param costs how often each slip happens
 * @param barrels which wires may be taken for each other unnoticed
 */
public record ListedUnit(
    Circuit circuit,
    JoinLimits limits,
    Predictor predictor,
    Neighbours neighbours,
    SlipCosts costs,
    CrimpBarrels barrels) {

  /** The unit of a circuit; the tables say how often slips happen. */
  public static ListedUnit of(Circuit circuit, JoinLimits limits, Tables tables) {
    Neighbours neighbours = new Neighbours(circuit);
    return new ListedUnit(
        circuit,
        limits,
        new Predictor(circuit, limits.resistances()),
        neighbours,
        new SlipCosts(circuit, neighbours, tables),
        CrimpBarrels.of(tables, limits.wires().copper()));
  }
}
