package dev.ringout.plan;

import dev.ringout.circuit.Circuit;
import dev.ringout.circuit.Nets;
import dev.ringout.circuit.Probing;
import dev.ringout.compare.Judged;
import dev.ringout.compare.PartProof;
import dev.ringout.compare.Requirements;
import dev.ringout.harness.Part;
import dev.ringout.harness.SwitchState;
import dev.ringout.plan.Step.Purpose;
import java.util.List;

/** Steps across parts, each between its own ends; through a diode both ways. */
final class PartSteps {
  private final Circuit circuit;
  private final Scope scope;
  private final DraftSteps draft;
  private final Requirements requirements;
  private final PartProof taken;

  /**
   * Ready to plan.
   *
   * @param taken the good readings
   */
  PartSteps(
      Circuit circuit,
      Scope scope,
      DraftSteps draft,
      Requirements requirements,
      List<Judged> taken) {
    this.circuit = circuit;
    this.scope = scope;
    this.draft = draft;
    this.requirements = requirements;
    this.taken = PartProof.of(circuit, requirements, taken);
  }

  void add() {
    for (int number = 0; number < circuit.harness().parts().size(); number++) {
      add(number);
    }
  }

  void add(int number) {
    SwitchState state = requirements.positionsFor(number);
    Nets nets = circuit.in(state);
    int from = circuit.fromOfPart(number);
    int to = circuit.toOfPart(number);
    boolean wanted = scope.has(from) || scope.has(to);
    if (!wanted || nets.of(from) == nets.of(to) || taken.isShown(number)) {
      return;
    }
    Part part = circuit.part(number);
    boolean eitherWay = part.kind().readsTheSameReversed();
    boolean forwards = part.anode().equals(part.from()) || eitherWay;
    across(Probing.pair(forwards ? from : to, forwards ? to : from, state), part);
    if (!eitherWay) {
      across(Probing.pair(forwards ? to : from, forwards ? from : to, state), part);
    }
  }

  private void across(Probing probing, Part part) {
    draft.add(probing, Purpose.PART, part.label());
  }
}
