package dev.ringout.plan;

import dev.ringout.circuit.Circuit;
import dev.ringout.compare.Coverage;
import dev.ringout.harness.Part;
import java.util.List;

/**
 * The steps that prove a unit, in the order in which they are made.
 *
 * @param steps continuity first, insulation after
 * @param sensitive parts that do not bear the insulation volts: off before, on again after
 * @param leftOut what no step proves, and why
 * @param coverage what a good unit's readings would prove, by the prover that checks readings
 * @param moves movements of the hands in this order
 * @param movesAsListed the same in the order of the list
 */
public record TestPlan(
    Circuit circuit,
    PlanOptions options,
    List<Step> steps,
    List<Part> sensitive,
    List<LeftOut> leftOut,
    Coverage coverage,
    double moves,
    double movesAsListed) {
  /** What is given can't be changed afterwards. */
  public TestPlan {
    steps = List.copyOf(steps);
  }
}
