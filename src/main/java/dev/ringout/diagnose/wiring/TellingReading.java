package dev.ringout.diagnose.wiring;

import dev.ringout.circuit.Circuit;
import dev.ringout.circuit.Expected;
import dev.ringout.circuit.Expected.Joined;
import dev.ringout.circuit.Expected.ThroughParts;
import dev.ringout.circuit.Probing;
import dev.ringout.compare.Judged;
import dev.ringout.diagnose.NextReading;
import dev.ringout.diagnose.NextReading.Answer;
import dev.ringout.diagnose.NextReading.Purpose;
import dev.ringout.diagnose.NextReason;
import dev.ringout.diagnose.SlipFact;
import dev.ringout.diagnose.wiring.Region.EquivalenceClass;
import dev.ringout.harness.Switch;
import dev.ringout.harness.SwitchState;
import dev.ringout.readings.Reading;
import dev.ringout.standards.HandMovements;
import dev.ringout.units.Text;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Predicate;

/**
 * The reading that tells the explanations of a region apart: the one that lowers the expected
 * entropy of their odds most for each movement of the hand (J. de Kleer and B. C. Williams,
 * "Diagnosing Multiple Faults", Artificial Intelligence 32, 1987, with a cost for each reading).
 */
final class TellingReading {
  private static final int MOST_POINTS = 40;
  private static final int MOST_CLASSES = 60;
  private static final int MOST_LIFTED = 8;
  private static final double LEAST_DROP = 1e-6;

  /** What was read between the same nets, which every explanation accounts for. */
  private static final String AS_READ = "as read";

  private final Circuit circuit;
  private final Evidence evidence;
  private final HandMovements movements;
  private final List<EquivalenceClass> classes;
  private final Set<String> openItems = new HashSet<>();
  private final Map<SwitchState, List<SlippedNets>> netsIn = new LinkedHashMap<>();

  /** What a reading would show; explanations that show the same are not told apart by it. */
  private record Shown(String key, Expected expected, boolean poorly) {}

  private record Option(Probing probing, double perMovement, List<Shown> shown) {}

  private TellingReading(
      Circuit circuit, Evidence evidence, HandMovements movements, List<EquivalenceClass> classes) {
    this.circuit = circuit;
    this.evidence = evidence;
    this.movements = movements;
    this.classes = classes;
  }

  /** The choice for a region with more than one explanation. */
  static TellingReading of(
      Circuit circuit, Evidence evidence, HandMovements movements, Region region) {
    TellingReading choice =
        new TellingReading(
            circuit, evidence, movements, region.classes().stream().limit(MOST_CLASSES).toList());
    for (Judged judged : region.failing()) {
      judged.probing().points().forEach(point -> choice.openItems.add(circuit.point(point).ref()));
      choice.addState(judged.reading().state());
    }
    choice.addState(SwitchState.normal());
    choice.addPositions();
    choice.addLiftedParts();
    return choice;
  }

  /** Every position of the switches at the nets that the explanations are about. */
  private void addPositions() {
    Set<Integer> nets = new HashSet<>();
    points().forEach(point -> nets.add(circuit.normal().of(point)));
    for (Switch one : circuit.harness().switches()) {
      boolean isThere =
          Arrays.stream(circuit.contactsOf(one))
              .anyMatch(contact -> nets.contains(circuit.normal().of(circuit.from(contact))));
      if (isThere) {
        one.states().forEach(position -> addState(SwitchState.normal().with(one, position)));
      }
    }
  }

  /** What lies side by side reads by itself with a lead of the other lifted. */
  private void addLiftedParts() {
    classes.stream()
        .flatMap(one -> one.primary().slips().stream())
        .flatMap(slip -> slip.asFaultyPart().stream())
        .map(slip -> circuit.part(slip.part()))
        .distinct()
        .filter(circuit::isTheOnlyOneOfItsName)
        .limit(MOST_LIFTED)
        .forEach(part -> addState(SwitchState.normal().withLifted(part)));
  }

  private void addState(SwitchState state) {
    netsIn.computeIfAbsent(
        state,
        key -> classes.stream().map(one -> evidence.nets(one.primary().slips(), key)).toList());
  }

  /**
   * The best reading.
   *
   * @param isMade whether a reading has been made already
   * @param facts an explanation in the trade's own things
   */
  Optional<NextReading> best(
      Predicate<Probing> isMade, Function<EquivalenceClass, List<SlipFact>> facts) {
    double entropy = classes.stream().mapToDouble(one -> bits(one.odds(), 1)).sum();
    Option best = null;
    for (SwitchState state : netsIn.keySet()) {
      for (Probing probing : probings(state)) {
        List<Shown> shown = shown(probing);
        double drop = entropy - entropyAfter(shown);
        double perMovement = drop / cost(probing);
        boolean better = best == null || perMovement > best.perMovement() + 1e-12;
        if (drop > LEAST_DROP && better && !isMade.test(probing)) {
          best = new Option(probing, perMovement, shown);
        }
      }
    }
    return Optional.ofNullable(best).map(option -> reading(option, facts));
  }

  private List<Probing> probings(SwitchState state) {
    List<Integer> points = List.copyOf(points());
    List<Probing> probings = new ArrayList<>();
    for (int i = 0; i < points.size(); i++) {
      for (int j = i + 1; j < points.size(); j++) {
        probings.add(Probing.pair(points.get(i), points.get(j), state));
      }
    }
    points.forEach(point -> probings.add(Probing.toRest(point, state)));
    return probings;
  }

  /** The points that the explanations are about, the likeliest first. */
  private Set<Integer> points() {
    Set<Integer> points = new LinkedHashSet<>();
    for (EquivalenceClass equivalenceClass : classes) {
      for (Slip slip : equivalenceClass.primary().slips()) {
        if (points.size() < MOST_POINTS) {
          points.addAll(slip.points(circuit));
        }
      }
    }
    return points;
  }

  private double cost(Probing probing) {
    double cost = movements.switches(probing.state().positions().size());
    for (int point : probing.points().toArray()) {
      cost += movements.probe(openItems.contains(circuit.point(point).ref()));
    }
    return probing.toRest() ? cost + movements.allOthers() : cost;
  }

  private List<Shown> shown(Probing probing) {
    List<SlippedNets> nets = netsIn.getOrDefault(probing.state(), List.of());
    List<Shown> shown = new ArrayList<>();
    for (int i = 0; i < nets.size(); i++) {
      SlippedNets there = nets.get(i);
      Shown one = shown(probing, there);
      boolean isKnown =
          !classes.get(i).primary().isOfTheTest()
              && one.expected()
                  .throughParts()
                  .filter(parts -> evidence.isMade(probing, parts, there))
                  .isPresent();
      String key = isKnown ? AS_READ : alike(one, shown).map(Shown::key).orElse(one.key());
      shown.add(new Shown(key, one.expected(), one.poorly()));
    }
    return shown;
  }

  /** What a meter would hardly tell from it: another value of parts within nearly the same ohms. */
  private static Optional<Shown> alike(Shown one, List<Shown> others) {
    return one.expected()
        .throughParts()
        .flatMap(
            parts ->
                others.stream()
                    .filter(other -> !other.key().equals(AS_READ))
                    .filter(other -> other.expected().throughParts().isPresent())
                    .filter(
                        other ->
                            other.expected().throughParts().stream().noneMatch(parts::isToldFrom))
                    .findFirst());
  }

  private Shown shown(Probing probing, SlippedNets nets) {
    Expected expected = evidence.predict(probing, nets);
    if (probing.isPair() && nets.joinsPoorly(probing.from()[0], probing.to()[0])) {
      return new Shown("poorly", new Joined(), true);
    }
    return new Shown(expected.match(new KeyOf()), expected, false);
  }

  /** One key for all that a reading can't tell from each other. */
  private static final class KeyOf implements Expected.Cases<String> {
    @Override
    public String joined(Joined expected) {
      return "joined";
    }

    @Override
    public String apart(Expected.Apart expected) {
      return "apart";
    }

    @Override
    public String throughParts(ThroughParts expected) {
      return Text.of("%.3g to %.3g", expected.lowOhms(), expected.highOhms());
    }
  }

  /** The entropy left after a reading, averaged over what it may show. */
  private double entropyAfter(List<Shown> shown) {
    Map<String, Double> total = new HashMap<>();
    for (int i = 0; i < shown.size(); i++) {
      total.merge(shown.get(i).key(), classes.get(i).odds(), Double::sum);
    }
    double left = 0;
    for (int i = 0; i < shown.size(); i++) {
      left += bits(classes.get(i).odds(), total.getOrDefault(shown.get(i).key(), 1.0));
    }
    return left;
  }

  private static double bits(double odds, double of) {
    return odds <= 0 ? 0 : -odds * Math.log(odds / of);
  }

  private NextReading reading(Option option, Function<EquivalenceClass, List<SlipFact>> facts) {
    Map<String, Answer> answers = new LinkedHashMap<>();
    for (int i = 0; i < classes.size(); i++) {
      Shown shown = option.shown().get(i);
      Answer before =
          answers.getOrDefault(
              shown.key(), new Answer(shown.expected(), shown.poorly(), 0, List.of()));
      List<List<SlipFact>> meanings = new ArrayList<>(before.meanings());
      meanings.add(facts.apply(classes.get(i)));
      answers.put(
          shown.key(),
          new Answer(
              before.shows(),
              before.poorly(),
              before.odds() + classes.get(i).odds(),
              List.copyOf(meanings)));
    }
    Probing probing = option.probing();
    return new NextReading(
        Reading.Kind.CONTINUITY,
        circuit.point(probing.from()[0]).toString(),
        probing.toRest() ? "REST" : circuit.point(probing.to()[0]).toString(),
        probing.state(),
        Purpose.TELL_APART,
        new NextReason.TellsApart(),
        answers.values().stream()
            .sorted((one, other) -> Double.compare(other.odds(), one.odds()))
            .toList());
  }
}
