package dev.ringout.circuit;

import dev.ringout.harness.SwitchState;
import dev.ringout.units.OhmsRange;
import java.util.HashMap;
import java.util.Map;
import java.util.OptionalDouble;

/**
 * How much parts that lead from a net back to it may lower what is read within it.
 *
 * <p>Of all voltages that its points might have a network has those that take the least power
 * (Dirichlet's principle). So what copper takes alone, and each part at as much voltage as it can
 * have, is no less than what both take together: a part with both ends in the net has at most all
 * that lies between the probes, one that leads back over other nets half of it.
 */
final class PartsBeside {
  /** The share of the power at half the voltage. */
  private static final double OVER_OTHER_NETS = 0.25;

  private final Circuit circuit;
  private final Map<SwitchState, Map<Integer, Double>> siemensOf = new HashMap<>();

  PartsBeside(Circuit circuit) {
    this.circuit = circuit;
  }

  /** The least that may be read within a net between points that copper alone joins so. */
  double leastOhms(OhmsRange copper, SwitchState state, int net) {
    double siemens =
        siemensOf
            .computeIfAbsent(state, key -> new HashMap<>())
            .computeIfAbsent(net, key -> siemens(circuit.in(state), net));
    return copper.lowOhms() == 0 ? 0 : 1 / (1 / copper.lowOhms() + siemens);
  }

  private double siemens(Nets nets, int net) {
    double sum = 0;
    for (int part : nets.partsAt(net)) {
      if (nets.of(circuit.fromOfPart(part)) == nets.of(circuit.toOfPart(part))) {
        sum += siemens(part);
      } else if (isLedAround(part, nets)) {
        sum += OVER_OTHER_NETS * siemens(part);
      }
    }
    return sum;
  }

  /** The meter's few millivolts across a join open no diode; a coil without ohms may have any. */
  private double siemens(int part) {
    OptionalDouble ohms = circuit.part(part).ohms();
    if (ohms.isPresent()) {
      return 1 / (ohms.getAsDouble() * (1 - circuit.toleranceOf(part)));
    }
    return conducts(part) ? Double.POSITIVE_INFINITY : 0;
  }

  private boolean conducts(int part) {
    return circuit.part(part).ohms().isPresent() || circuit.part(part).kind().alwaysConducts();
  }

  /** Whether other parts join the two nets of a part. */
  private boolean isLedAround(int part, Nets nets) {
    DisjointPoints joined = new DisjointPoints(nets.count());
    for (int other = 0; other < circuit.harness().parts().size(); other++) {
      if (other != part && conducts(other)) {
        joined.union(nets.of(circuit.fromOfPart(other)), nets.of(circuit.toOfPart(other)));
      }
    }
    return joined.firstOf(nets.of(circuit.fromOfPart(part)))
        == joined.firstOf(nets.of(circuit.toOfPart(part)));
  }
}
