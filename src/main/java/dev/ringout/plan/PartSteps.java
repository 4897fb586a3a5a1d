package dev.ringout.plan;

import dev.ringout.circuit.Circuit;
import dev.ringout.circuit.Nets;
import dev.ringout.circuit.Probing;
import dev.ringout.compare.PartProof;
import dev.ringout.harness.Part;
import dev.ringout.harness.SwitchState;
import dev.ringout.plan.Step.Purpose;

/** Steps across parts, each between its own ends; through a diode both ways. */
final class PartSteps {
  private final Circuit circuit;
  private final Scope scope;
  private final DraftSteps draft;
  private final PartProof taken;

  /**
   * Ready to plan.
   *
   * @param taken what good readings show already
   */
  PartSteps(Circuit circuit, Scope scope, DraftSteps draft, PartProof taken) {
    this.circuit = circuit;
    this.scope = scope;
    this.draft = draft;
    this.taken = taken;
  }

  void add() {
    for (int number = 0; number < circuit.harness().parts().size(); number++) {
      add(number);
    }
  }

  void add(int number) {
    Nets normal = circuit.normal();
    int from = circuit.fromOfPart(number);
    int to = circuit.toOfPart(number);
    boolean wanted = scope.has(from) || scope.has(to);
    if (!wanted || normal.of(from) == normal.of(to) || taken.isShown(number)) {
      return;
    }
    Part part = circuit.part(number);
    boolean eitherWay = part.kind().readsTheSameReversed();
    boolean forwards = part.anode().equals(part.from()) || eitherWay;
    across(forwards ? from : to, forwards ? to : from, part);
    if (!eitherWay) {
      across(forwards ? to : from, forwards ? from : to, part);
    }
  }

  private void across(int from, int to, Part part) {
    draft.add(Probing.pair(from, to, SwitchState.normal()), Purpose.PART, part.label());
  }
}
