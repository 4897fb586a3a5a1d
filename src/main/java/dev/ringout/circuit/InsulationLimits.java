package dev.ringout.circuit;

import dev.ringout.harness.Limits;
import dev.ringout.harness.NetLimit;
import dev.ringout.harness.Part;
import dev.ringout.harness.SwitchState;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;

/**
 * How insulation is tested: volts and least ohms of the nets on one side, and the parts that lie
 * between them and the rest. A part that does not bear the volts is disconnected, or the test is
 * made with what it bears.
 */
public final class InsulationLimits {
  private final Circuit circuit;
  private final Map<SwitchState, Map<Integer, NetLimit>> limitsIn = new HashMap<>();

  /**
   * Volts and ohms.
   *
   * @param minOhms the least that passes
   * @param volts direct current, with every sensitive part disconnected
   * @param leastVolts what is enough: the volts, or what the most sensitive part bears
   * @param sensitive parts between the two sides that do not bear the volts
   * @param across every part between the two sides: it would be read instead of the insulation
   * @param own whether the limit is the net's own
   */
  public record InsulationLimit(
      double minOhms,
      double volts,
      double leastVolts,
      List<Part> sensitive,
      List<Part> across,
      boolean own) {}

  /** The insulation limits of one circuit. */
  public InsulationLimits(Circuit circuit) {
    this.circuit = circuit;
  }

  /** The limit for a probing; of several nets tied together the most lenient volts and ohms. */
  public InsulationLimit of(Probing probing) {
    Limits limits = circuit.harness().limits();
    Nets nets = circuit.in(probing.state());
    Set<Integer> own = new TreeSet<>();
    for (int point : probing.from()) {
      own.add(nets.of(point));
    }
    OptionalDouble ohms = OptionalDouble.empty();
    OptionalDouble volts = OptionalDouble.empty();
    Map<Integer, NetLimit> limitOf = limitsIn(probing.state());
    for (int net : own) {
      NetLimit netLimit = limitOf.get(net);
      if (netLimit != null) {
        ohms = NetLimits.least(ohms, netLimit.insulationMinOhms());
        volts = NetLimits.least(volts, netLimit.insulationVolts());
      }
    }
    double asked = volts.orElse(limits.insulationVolts());
    List<Part> across = across(nets, own);
    List<Part> sensitive = across.stream().filter(part -> bearsVolts(part) < asked).toList();
    return new InsulationLimit(
        ohms.orElse(limits.insulationMinOhms()),
        asked,
        sensitive.stream().mapToDouble(InsulationLimits::bearsVolts).min().orElse(asked),
        sensitive,
        across,
        ohms.isPresent() || volts.isPresent());
  }

  private static double bearsVolts(Part part) {
    return part.maxTestVolts().orElse(Double.POSITIVE_INFINITY);
  }

  /** The parts with one end in some nets and the other in none of them. */
  private List<Part> across(Nets nets, Set<Integer> own) {
    List<Part> across = new ArrayList<>();
    for (int net : own) {
      for (int number : nets.partsAt(net)) {
        Part part = circuit.part(number);
        boolean inside =
            own.contains(nets.of(circuit.fromOfPart(number)))
                && own.contains(nets.of(circuit.toOfPart(number)));
        if (!inside && !across.contains(part)) {
          across.add(part);
        }
      }
    }
    return List.copyOf(across);
  }

  private Map<Integer, NetLimit> limitsIn(SwitchState state) {
    return limitsIn.computeIfAbsent(
        state,
        one ->
            NetLimits.strictest(
                circuit.harness().netLimits(), point -> circuit.in(one).of(circuit.index(point))));
  }
}
