package dev.ringout.print;

import dev.ringout.circuit.Circuit;
import dev.ringout.pictures.TiedRest;
import dev.ringout.plan.Planner;
import dev.ringout.plan.Step;
import dev.ringout.plan.TestPlan;
import java.util.List;
import java.util.Optional;

/** How the rest is tied together, drawn with the first points of the plan that need it. */
final class RestPicture {
  private static final int NETS_DRAWN = 5;

  private RestPicture() {}

  /** The drawing; absent where no step needs it. */
  static Optional<String> of(TestPlan plan) {
    Circuit circuit = plan.circuit();
    List<Step> steps = plan.steps().stream().filter(step -> step.probing().toRest()).toList();
    List<String> nets =
        steps.stream()
            .map(step -> Planner.side(circuit, step.probing().from()))
            .distinct()
            .limit(NETS_DRAWN)
            .toList();
    return nets.isEmpty() ? Optional.empty() : Optional.of(TiedRest.of(nets));
  }
}
