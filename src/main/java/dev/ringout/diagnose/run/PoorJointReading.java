package dev.ringout.diagnose.run;

import dev.ringout.circuit.Circuit;
import dev.ringout.circuit.Conductor;
import dev.ringout.circuit.Expected.Joined;
import dev.ringout.circuit.Nets;
import dev.ringout.circuit.Probing;
import dev.ringout.diagnose.Fault;
import dev.ringout.diagnose.NextReading;
import dev.ringout.diagnose.NextReading.Answer;
import dev.ringout.diagnose.NextReading.Purpose;
import dev.ringout.diagnose.NextReason;
import dev.ringout.diagnose.SlipFact;
import dev.ringout.harness.SwitchState;
import dev.ringout.readings.Reading;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** The reading that tells best where on a way a poor joint is. */
final class PoorJointReading {
  private static final int MOST_POINTS = 40;

  private final Circuit circuit;
  private final AskedReadings asked;

  PoorJointReading(Circuit circuit, AskedReadings asked) {
    this.circuit = circuit;
    this.asked = asked;
  }

  /** A reading across about half of the odds. */
  Optional<NextReading> of(Fault.HighResistance high) {
    if (high.suspects().size() < 2) {
      return Optional.empty();
    }
    SwitchState state = high.finding().readings().get(0).reading().state();
    Set<Integer> points = new TreeSet<>();
    for (Fault.Suspicion suspicion : high.suspects()) {
      points.add(circuit.index(suspicion.conductor().from()));
      points.add(circuit.index(suspicion.conductor().to()));
    }
    Halving best = null;
    List<Integer> all = points.stream().limit(MOST_POINTS).toList();
    for (int i = 0; i < all.size(); i++) {
      for (int j = i + 1; j < all.size(); j++) {
        Probing probing = Probing.pair(all.get(i), all.get(j), state);
        Halving halving = halving(probing, high);
        if (halving.isBetterThan(best) && !asked.isMade(probing)) {
          best = halving;
        }
      }
    }
    return Optional.ofNullable(best).map(one -> reading(one, state));
  }

  /** The suspects that a reading leads over, and the others. */
  private record Halving(
      Probing probing, List<Fault.Suspicion> within, List<Fault.Suspicion> without) {
    double odds() {
      return within.stream().mapToDouble(Fault.Suspicion::odds).sum();
    }

    boolean isBetterThan(@Nullable Halving other) {
      return !within.isEmpty()
          && !without.isEmpty()
          && (other == null || Math.abs(odds() - 0.5) < Math.abs(other.odds() - 0.5) - 1e-9);
    }
  }

  private Halving halving(Probing probing, Fault.HighResistance high) {
    Nets nets = circuit.in(probing.state());
    Set<Conductor> way = new HashSet<>();
    if (nets.of(probing.from()[0]) == nets.of(probing.to()[0])) {
      nets.eachOnWay(
          probing.from()[0], probing.to()[0], one -> way.add(circuit.conductors().get(one)));
    }
    Map<Boolean, List<Fault.Suspicion>> parts =
        high.suspects().stream()
            .collect(Collectors.partitioningBy(suspect -> way.contains(suspect.conductor())));
    return new Halving(
        probing, parts.getOrDefault(true, List.of()), parts.getOrDefault(false, List.of()));
  }

  private NextReading reading(Halving halving, SwitchState state) {
    return new NextReading(
        Reading.Kind.CONTINUITY,
        circuit.point(halving.probing().from()[0]).toString(),
        circuit.point(halving.probing().to()[0]).toString(),
        state,
        Purpose.TELL_APART,
        new NextReason.TellsApart(),
        List.of(
            new Answer(new Joined(), true, halving.odds(), meanings(halving.within())),
            new Answer(new Joined(), false, 1 - halving.odds(), meanings(halving.without()))));
  }

  private static List<List<SlipFact>> meanings(List<Fault.Suspicion> suspects) {
    return suspects.stream()
        .map(one -> List.<SlipFact>of(new SlipFact.PoorJoint(one.conductor())))
        .toList();
  }
}
