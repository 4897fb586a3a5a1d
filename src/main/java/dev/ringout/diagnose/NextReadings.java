package dev.ringout.diagnose;

import dev.ringout.circuit.Circuit;
import dev.ringout.circuit.Conductor;
import dev.ringout.circuit.DisjointPoints;
import dev.ringout.circuit.Expected.Joined;
import dev.ringout.circuit.Probing;
import dev.ringout.compare.Comparison;
import dev.ringout.compare.Coverage;
import dev.ringout.compare.Coverage.Unproven;
import dev.ringout.compare.Judged;
import dev.ringout.compare.Outcome;
import dev.ringout.diagnose.NextReading.Purpose;
import dev.ringout.harness.Switch;
import dev.ringout.harness.SwitchState;
import dev.ringout.units.Text;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/** Which readings to take next: first those that tell explanations apart, then those still owed. */
final class NextReadings {
  private static final int MOST_POINTS = 30;

  private final Circuit circuit;
  private final WiringFaults wiring;
  private final List<NextReading> list = new ArrayList<>();
  private final Set<String> named = new HashSet<>();
  private final DisjointPoints asked;

  NextReadings(
      Circuit circuit,
      Comparison comparison,
      Coverage coverage,
      WiringFaults wiring,
      List<Fault> faults) {
    this.circuit = circuit;
    this.wiring = wiring;
    for (Judged judged : comparison.inForce()) {
      if (judged.reading().measured().made() && judged.outcome() != Outcome.NOT_JUDGED) {
        named.add(key(judged));
      }
    }
    asked = askedFor(circuit, comparison);
    wiring.regions().forEach(this::tellApart);
    faults.forEach(this::confirm);
    comparison.with(Outcome.NOT_TESTED).forEach(this::notTested);
    coverage.unproven().forEach(this::prove);
  }

  /** Points that would be proven to be joined, were every step of the sheet made and good. */
  private static DisjointPoints askedFor(Circuit circuit, Comparison comparison) {
    DisjointPoints asked = new DisjointPoints(circuit.size());
    for (Judged judged : comparison.inForce()) {
      if (judged.expected() instanceof Joined && judged.probing().isPair()) {
        asked.union(judged.probing().from()[0], judged.probing().to()[0]);
      }
    }
    return asked;
  }

  private boolean isAsked(int from, int to) {
    return asked.firstOf(from) == asked.firstOf(to);
  }

  List<NextReading> list() {
    return List.copyOf(list);
  }

  private static String key(Judged judged) {
    return key(
        judged.reading().from().toString(),
        judged.reading().to().toString(),
        judged.reading().state());
  }

  private static String key(String from, String to, SwitchState state) {
    return (from.compareTo(to) < 0 ? from + "|" + to : to + "|" + from) + "|" + state;
  }

  private void add(String from, String to, SwitchState state, Purpose purpose, String why) {
    if (named.add(key(from, to, state))) {
      list.add(new NextReading(from, to, state, purpose, why));
    }
  }

  private record Option(String from, String to, Probing probing) {}

  /** The reading that lowers the entropy of a region's odds most. */
  private void tellApart(Region region) {
    if (region.classes().size() < 2) {
      return;
    }
    Optional<Option> best = Optional.empty();
    double bestEntropy = entropy(region);
    for (Option option : options(region)) {
      double entropy = expectedEntropy(region, option);
      if (entropy < bestEntropy - 1e-9 && !named.contains(key(option))) {
        bestEntropy = entropy;
        best = Optional.of(option);
      }
    }
    best.ifPresent(
        option ->
            add(
                option.from(),
                option.to(),
                SwitchState.normal(),
                Purpose.TELL_APART,
                whatItTells(region, option)));
  }

  private static String key(Option option) {
    return key(option.from(), option.to(), SwitchState.normal());
  }

  private static double entropy(Region region) {
    return region.classes().stream().mapToDouble(one -> bits(one.odds(), 1)).sum();
  }

  private static double bits(double odds, double of) {
    return odds <= 0 ? 0 : -odds * Math.log(odds / of);
  }

  /** Entropy left after a reading, averaged over what it may find. */
  private double expectedEntropy(Region region, Option option) {
    Map<String, Double> total = new HashMap<>();
    Map<String, List<Double>> oddsOf = new HashMap<>();
    for (Region.EquivalenceClass one : region.classes()) {
      String finding = finding(one, option);
      total.merge(finding, one.odds(), Double::sum);
      oddsOf.computeIfAbsent(finding, key -> new ArrayList<>()).add(one.odds());
    }
    double left = 0;
    for (Map.Entry<String, List<Double>> entry : oddsOf.entrySet()) {
      double of = total.getOrDefault(entry.getKey(), 1.0);
      left += entry.getValue().stream().mapToDouble(odds -> bits(odds, of)).sum();
    }
    return left;
  }

  private String finding(Region.EquivalenceClass one, Option option) {
    return wiring
        .evidence()
        .predict(option.probing(), one.primary().slips())
        .getClass()
        .getSimpleName();
  }

  private String whatItTells(Region region, Option option) {
    String likeliest = finding(region.best(), option);
    boolean joined = likeliest.equals("Joined");
    return Text.of(
        "%s would speak for the likeliest explanation, %s against it",
        joined ? "a low reading" : "no join", joined ? "no join" : "a low reading");
  }

  private List<Option> options(Region region) {
    List<Integer> points = new ArrayList<>(points(region));
    List<Option> options = new ArrayList<>();
    for (int i = 0; i < points.size(); i++) {
      for (int j = i + 1; j < points.size(); j++) {
        options.add(
            new Option(
                circuit.point(points.get(i)).toString(),
                circuit.point(points.get(j)).toString(),
                Probing.pair(points.get(i), points.get(j), SwitchState.normal())));
      }
    }
    for (int point : points) {
      options.add(
          new Option(
              circuit.point(point).toString(),
              "REST",
              Probing.toRest(point, SwitchState.normal())));
    }
    return options;
  }

  /** The points that the likeliest explanations are about. */
  private Set<Integer> points(Region region) {
    Set<Integer> points = new TreeSet<>();
    for (Region.EquivalenceClass one : region.classes()) {
      for (Slip slip : one.primary().slips()) {
        if (points.size() < MOST_POINTS) {
          addPoints(slip, points);
        }
      }
    }
    return points;
  }

  private void addPoints(Slip slip, Set<Integer> points) {
    if (slip instanceof Slip.Missing missing) {
      addEnds(missing.conductor(), points);
    } else if (slip instanceof Slip.Moved moved) {
      addEnds(moved.wire(), points);
      points.add(moved.to());
    } else if (slip instanceof Slip.Crossed crossed) {
      addEnds(crossed.wire(), points);
      addEnds(crossed.otherWire(), points);
    } else if (slip instanceof Slip.Rearranged many) {
      for (Slip.Put put : many.puts()) {
        addEnds(put.wire(), points);
      }
    } else if (slip instanceof Slip.Poor poor) {
      addEnds(poor.conductor(), points);
    } else if (slip instanceof Slip.Misread misread) {
      misread.judged().probing().points().forEach(points::add);
    } else if (slip instanceof Slip.Bridged bridged) {
      points.add(bridged.one());
      points.add(bridged.other());
    } else if (slip instanceof Slip.FaultyPart faulty) {
      points.add(faulty.from());
      points.add(faulty.to());
    } else if (slip instanceof Slip.FaultySwitch faulty) {
      for (int contact : circuit.contactsOf(circuit.harness().switches().get(faulty.which()))) {
        addEnds(contact, points);
      }
    }
  }

  private void addEnds(int conductor, Set<Integer> points) {
    points.add(circuit.from(conductor));
    points.add(circuit.to(conductor));
  }

  /** A certain open is read across once more before anything is taken apart. */
  private void confirm(Fault fault) {
    if (fault instanceof Fault.Open open && open.suspects().size() == 1) {
      Conductor suspect = open.suspects().get(0);
      add(
          suspect.from().toString(),
          suspect.to().toString(),
          SwitchState.normal(),
          Purpose.CONFIRM,
          "straight across " + suspect.label() + ", to confirm that it is open");
    }
  }

  private void notTested(Judged judged) {
    add(
        judged.reading().from().toString(),
        judged.reading().to().toString(),
        judged.reading().state(),
        Purpose.NOT_TESTED,
        "on the sheet, not measured");
  }

  private void prove(Unproven unproven) {
    if (unproven instanceof Unproven.Join join) {
      if (!isAsked(join.from(), join.to())) {
        add(
            circuit.point(join.from()).toString(),
            circuit.point(join.to()).toString(),
            SwitchState.normal(),
            Purpose.PROVE,
            "no reading joins the two");
      }
    } else if (unproven instanceof Unproven.Isolation isolation) {
      if (!isolation.waitsForJoins()) {
        apart(isolation);
      }
    } else if (unproven instanceof Unproven.OfWire wire
        && circuit.normal().isBridge(wire.conductor())
        && !isAsked(circuit.from(wire.conductor()), circuit.to(wire.conductor()))) {
      add(
          circuit.point(circuit.from(wire.conductor())).toString(),
          circuit.point(circuit.to(wire.conductor())).toString(),
          SwitchState.normal(),
          Purpose.PROVE,
          "no good reading goes through " + circuit.conductors().get(wire.conductor()).label());
    } else if (unproven instanceof Unproven.Contact contact) {
      add(
          circuit.point(circuit.from(contact.conductor())).toString(),
          circuit.point(circuit.to(contact.conductor())).toString(),
          stateFor(contact),
          Purpose.PROVE,
          unproven.why());
    }
  }

  /** Against the rest at once, unless a part would be read instead: then against the one net. */
  private void apart(Unproven.Isolation isolation) {
    boolean hasParts = circuit.normal().partsAt(circuit.normal().of(isolation.point())).length > 0;
    add(
        circuit.point(isolation.point()).toString(),
        hasParts ? circuit.point(isolation.other()).toString() : "REST",
        SwitchState.normal(),
        Purpose.PROVE,
        isolation.why());
  }

  private SwitchState stateFor(Unproven.Contact contact) {
    Conductor.OfContact conductor =
        (Conductor.OfContact) circuit.conductors().get(contact.conductor());
    Switch one = circuit.switchOf(conductor.contact());
    return SwitchState.normal().with(one, contact.position());
  }
}
