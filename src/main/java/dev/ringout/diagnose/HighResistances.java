package dev.ringout.diagnose;

import dev.ringout.circuit.Circuit;
import dev.ringout.circuit.Conductor;
import dev.ringout.circuit.Expected.Joined;
import dev.ringout.circuit.Nets;
import dev.ringout.compare.Comparison;
import dev.ringout.compare.Judged;
import dev.ringout.compare.LeadResistance;
import dev.ringout.compare.Outcome;
import dev.ringout.diagnose.Fault.Finding;
import dev.ringout.readings.Measured;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * Joints that conduct, but poorly. The suspects are the joints on the reading's way that no good
 * numeric reading has crossed; high readings with suspects in common are one fault.
 */
final class HighResistances {
  private final Circuit circuit;
  private final Comparison comparison;
  private final boolean leadsInDoubt;

  HighResistances(Circuit circuit, Comparison comparison) {
    this.circuit = circuit;
    this.comparison = comparison;
    this.leadsInDoubt = LeadResistance.doubt(comparison).isPresent();
  }

  private record Suspicion(Set<Integer> suspects, List<Judged> readings) {}

  List<Fault> faults(Set<Judged> explainedOtherwise) {
    List<Judged> high =
        comparison.with(Outcome.RESISTIVE).stream()
            .filter(judged -> judged.expected() instanceof Joined)
            .filter(judged -> !explainedOtherwise.contains(judged))
            .toList();
    if (high.isEmpty()) {
      return List.of();
    }
    Set<Integer> good = crossedByGoodReadings();
    List<Suspicion> suspicions = new ArrayList<>();
    for (Judged judged : high) {
      add(judged, suspects(judged, good), suspicions);
    }
    return suspicions.stream().map(this::fault).toList();
  }

  private static void add(Judged judged, Set<Integer> suspects, List<Suspicion> suspicions) {
    for (int i = 0; i < suspicions.size(); i++) {
      Suspicion known = suspicions.get(i);
      Set<Integer> shared = new LinkedHashSet<>(known.suspects());
      shared.retainAll(suspects);
      if (!shared.isEmpty()) {
        List<Judged> readings = new ArrayList<>(known.readings());
        readings.add(judged);
        suspicions.set(i, new Suspicion(shared, readings));
        return;
      }
    }
    suspicions.add(new Suspicion(suspects, List.of(judged)));
  }

  private Set<Integer> crossedByGoodReadings() {
    Set<Integer> good = new HashSet<>();
    for (Judged judged : comparison.with(Outcome.CONFORMS)) {
      if (judged.expected() instanceof Joined
          && judged.reading().measured() instanceof Measured.Value
          && judged.probing().isPair()) {
        Nets nets = circuit.in(judged.reading().state());
        nets.path(judged.probing().from()[0], judged.probing().to()[0]).stream()
            .filter(nets::isBridge)
            .forEach(good::add);
      }
    }
    return good;
  }

  private Set<Integer> suspects(Judged judged, Set<Integer> good) {
    if (!judged.probing().isPair()) {
      return new LinkedHashSet<>();
    }
    Nets nets = circuit.in(judged.reading().state());
    Set<Integer> way =
        new LinkedHashSet<>(nets.path(judged.probing().from()[0], judged.probing().to()[0]));
    Set<Integer> suspects = new LinkedHashSet<>(way);
    suspects.removeAll(good);
    return suspects.isEmpty() ? way : suspects;
  }

  private Fault fault(Suspicion suspicion) {
    Judged worst =
        suspicion.readings().stream()
            .max((one, other) -> Double.compare(ohms(one), ohms(other)))
            .orElseThrow();
    List<Conductor> suspects =
        suspicion.suspects().stream().map(circuit.conductors()::get).toList();
    return new Fault.HighResistance(
        new Finding(certainty(suspects), suspicion.readings(), List.of()),
        suspects,
        List.of(
            circuit.point(worst.probing().from()[0]),
            circuit.point(
                worst.probing().to().length > 0
                    ? worst.probing().to()[0]
                    : worst.probing().from()[0])),
        worst.limit().ohms(),
        ohms(worst));
  }

  private Certainty certainty(List<Conductor> suspects) {
    if (leadsInDoubt) {
      return Certainty.POSSIBLE;
    }
    return suspects.size() == 1 ? Certainty.CERTAIN : Certainty.LIKELY;
  }

  private static double ohms(Judged judged) {
    Measured measured = judged.reading().measured();
    if (measured instanceof Measured.Value value) {
      return value.ohms();
    }
    return measured instanceof Measured.MoreThan more ? more.ohms() : 0;
  }
}
