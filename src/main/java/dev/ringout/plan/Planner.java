package dev.ringout.plan;

import dev.ringout.circuit.Circuit;
import dev.ringout.circuit.Conductor;
import dev.ringout.circuit.DisjointPoints;
import dev.ringout.circuit.Expected;
import dev.ringout.circuit.Expected.Apart;
import dev.ringout.circuit.Expected.Joined;
import dev.ringout.circuit.Expected.ThroughParts;
import dev.ringout.circuit.InsulationLimits;
import dev.ringout.circuit.InsulationLimits.InsulationLimit;
import dev.ringout.circuit.JoinLimits;
import dev.ringout.circuit.JoinLimits.JoinLimit;
import dev.ringout.circuit.Nets;
import dev.ringout.circuit.Predictor;
import dev.ringout.circuit.Probing;
import dev.ringout.circuit.Resistances;
import dev.ringout.compare.Comparison;
import dev.ringout.compare.Coverage;
import dev.ringout.compare.Coverage.Unprovable;
import dev.ringout.compare.Coverage.Unproven;
import dev.ringout.compare.Judged;
import dev.ringout.compare.Requirements;
import dev.ringout.compare.ValueVerdict;
import dev.ringout.harness.Part;
import dev.ringout.harness.Point;
import dev.ringout.harness.Switch;
import dev.ringout.harness.SwitchState;
import dev.ringout.harness.Wire;
import dev.ringout.plan.PlanOptions.Isolation;
import dev.ringout.plan.Step.Purpose;
import dev.ringout.readings.Meter;
import dev.ringout.readings.Reading;
import dev.ringout.standards.HandMovements;
import dev.ringout.units.Text;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * Plans the readings that prove a unit.
 *
 * <p>Joins take a spanning tree of each net: Σ(points of a net − 1) readings. Nets are held apart
 * each against the rest: one reading less than there are nets, nets that parts join counting as one
 * and told apart after. What the prover then still finds unproven on a good unit gets a step of its
 * own: wires that others go around, switch contacts, nets behind parts.
 */
public final class Planner {
  private static final int MOST_ROUNDS = 4;

  private final Circuit circuit;
  private final JoinLimits limits;
  private final InsulationLimits insulation;
  private final Predictor predictor;
  private final PlanOptions options;
  private final Requirements requirements;
  private final Nets normal;
  private final Hubs hubs;
  private final BitSet scope;

  /** The good ones of the readings that need not be taken again. */
  private final List<Judged> taken;

  /** The names that several wires share. */
  private final Set<String> sharedNames = new HashSet<>();

  private final List<Step> steps = new ArrayList<>();
  private final Set<String> planned = new HashSet<>();
  private final Set<String> leftOut = new LinkedHashSet<>();

  private Planner(Circuit circuit, JoinLimits limits, PlanOptions options) {
    this.circuit = circuit;
    this.limits = limits;
    this.options = options;
    this.insulation = new InsulationLimits(circuit);
    this.predictor = new Predictor(circuit, limits.resistances());
    this.normal = circuit.normal();
    Set<String> items = Scope.items(circuit, options);
    this.hubs = new Hubs(circuit, items);
    this.scope = Scope.nets(circuit, options);
    this.requirements = Requirements.of(circuit, limits);
    this.taken =
        options
            .after()
            .map(after -> after.inForce().stream().filter(one -> !stands(one)).toList())
            .orElse(List.of());
    Set<String> names = new HashSet<>();
    for (Wire wire : circuit.harness().wires()) {
      String name = wire.name().toUpperCase(Locale.ROOT);
      if (!names.add(name)) {
        sharedNames.add(name);
      }
    }
  }

  /** The plan for a circuit. */
  public static TestPlan plan(
      Circuit circuit, JoinLimits limits, HandMovements movements, PlanOptions options) {
    return new Planner(circuit, limits, options).plan(movements);
  }

  private TestPlan plan(HandMovements movements) {
    for (Judged judged : taken) {
      if (judged.reading().kind() == Reading.Kind.CONTINUITY && judged.touchedSince().isEmpty()) {
        planned.add(key(judged.probing(), false));
      }
    }
    joins(unprovenAfter());
    besideContacts();
    parts();
    if (options.isolation() != Isolation.INSULATION) {
      apart(unprovenAfter());
    }
    if (plansInsulation()) {
      insulation(unprovenAfter());
    }
    options.after().ifPresent(this::again);
    Coverage coverage = prove();
    for (int round = 0; round < MOST_ROUNDS && fill(coverage); round++) {
      coverage = prove();
    }
    coverage.unprovable().forEach(this::leaveOut);
    coverage.unproven().stream().filter(this::isInScope).forEach(this::leaveOut);
    Walk walk = new Walk(circuit, movements);
    List<Step> ordered = walk.order(steps, options.byConnector());
    return new TestPlan(
        circuit,
        options,
        ordered,
        sensitive(),
        List.copyOf(leftOut),
        coverage,
        walk.movements(ordered),
        walk.movements(steps));
  }

  /** Whether a reading stands against the unit until it is read good, whatever else is proven. */
  private static boolean stands(Judged judged) {
    return !judged.outcome().passes() || judged.value() == ValueVerdict.LOW;
  }

  private void again(Comparison after) {
    for (Judged judged : after.inForce()) {
      if (stands(judged)
          && judged.probing().points().allMatch(point -> scope.get(normal.of(point)))) {
        again(judged);
      }
    }
  }

  private void again(Judged judged) {
    if (judged.reading().kind() == Reading.Kind.CONTINUITY) {
      Purpose purpose =
          judged.expected() instanceof Joined
              ? Purpose.JOIN
              : judged.expected() instanceof ThroughParts ? Purpose.PART : Purpose.APART;
      add(judged.probing(), purpose, "");
    } else if (judged.expected() instanceof Apart || judged.expected() instanceof ThroughParts) {
      insulation(judged.probing());
    }
  }

  /**
   * What is not proven by earlier readings and the steps so far; nothing is told of a fresh unit.
   */
  private List<Unproven> unprovenAfter() {
    return options.after().isPresent() ? prove().unproven() : List.of();
  }

  /**
   * What a good unit would prove by the steps so far and the readings that need not be repeated.
   */
  private Coverage prove() {
    Comparison planned = Comparison.of(circuit, limits, GoodUnit.readings(circuit, steps));
    return requirements.shownBy(
        taken.isEmpty() ? planned : Comparison.inForce(taken).and(circuit, planned));
  }

  private void joins(List<Unproven> before) {
    Set<Integer> unprovenWires = new HashSet<>();
    DisjointPoints proven = new DisjointPoints(circuit.size());
    for (Judged judged : taken) {
      if (judged.probing().isPair()
          && judged.reading().state().isNormal()
          && judged.expected() instanceof Joined
          && judged.reading().kind() == Reading.Kind.CONTINUITY) {
        proven.union(judged.probing().from()[0], judged.probing().to()[0]);
      }
    }
    for (Unproven one : before) {
      if (one instanceof Unproven.OfWire wire) {
        unprovenWires.add(wire.conductor());
      }
    }
    DisjointPoints tree = new DisjointPoints(circuit.size());
    // Wires first, as they are listed: each that nothing goes around is read straight across.
    for (int conductor = 0; conductor < circuit.conductors().size(); conductor++) {
      int from = circuit.from(conductor);
      int to = circuit.to(conductor);
      if (!normal.isClosed(conductor)
          || !scope.get(normal.of(from))
          || tree.firstOf(from) == tree.firstOf(to)) {
        continue;
      }
      tree.union(from, to);
      boolean isProven =
          proven.firstOf(from) == proven.firstOf(to) && !unprovenWires.contains(conductor);
      if (!isProven) {
        add(
            Probing.pair(from, to, SwitchState.normal()),
            circuit.conductors().get(conductor).asContact().isPresent()
                ? Purpose.CONTACT
                : Purpose.JOIN,
            circuit.conductors().get(conductor).label());
      }
    }
  }

  /**
   * A wire's end on the wrong side of a closed contact is read good: the wires there are read once
   * more with the contacts open. Of a large piece only what has come over from it is looked for.
   */
  private void besideContacts() {
    for (Pieces pieces : Pieces.of(circuit)) {
      if (!scope.get(pieces.net())) {
        continue;
      }
      for (Pieces.Piece piece : pieces.toRead()) {
        for (int wire : piece.wires()) {
          add(
              Probing.pair(circuit.from(wire), circuit.to(wire), piece.apart()),
              Purpose.CONTACT,
              circuit.conductors().get(wire).label());
        }
        if (pieces.holdsMany()) {
          int[] point = {circuit.from(piece.wires().get(0))};
          add(Probing.groupToRest(point, piece.apart()), Purpose.CONTACT, "");
        }
      }
    }
  }

  private void parts() {
    for (int number = 0; number < circuit.harness().parts().size(); number++) {
      part(number);
    }
  }

  private void part(int number) {
    Part part = circuit.part(number);
    int from = circuit.fromOfPart(number);
    int to = circuit.toOfPart(number);
    boolean eitherWay = part.kind().readsTheSameReversed();
    boolean wanted = scope.get(normal.of(from)) || scope.get(normal.of(to));
    boolean isRead =
        eitherWay ? isRead(from, to) || isRead(to, from) : isRead(from, to) && isRead(to, from);
    if (!wanted || normal.of(from) == normal.of(to) || isRead) {
      return;
    }
    boolean forwards = part.anode().equals(part.from()) || eitherWay;
    add(pair(forwards ? from : to, forwards ? to : from), Purpose.PART, part.label());
    if (!eitherWay) {
      add(pair(forwards ? to : from, forwards ? from : to), Purpose.PART, part.label());
    }
  }

  /**
   * Whether a good reading was made from the one net to the other, at whichever of their points.
   */
  private boolean isRead(int from, int to) {
    return taken.stream()
        .filter(judged -> judged.probing().isPair() && judged.reading().state().isNormal())
        .anyMatch(
            judged ->
                normal.of(judged.probing().from()[0]) == normal.of(from)
                    && normal.of(judged.probing().to()[0]) == normal.of(to));
  }

  private static Probing pair(int from, int to) {
    return Probing.pair(from, to, SwitchState.normal());
  }

  /** Nets apart, those that parts join taken together at first. */
  private void apart(List<Unproven> before) {
    List<int[]> groups = wanted(before);
    switch (options.isolation()) {
      case REST -> {
        for (int[] group : groups) {
          add(Probing.groupToRest(group, SwitchState.normal()), Purpose.APART, "");
        }
      }
      case FIXTURE -> byBits();
      case NEIGHBOURS -> neighbours();
      case INSULATION -> {}
    }
  }

  /** The groups of nets to hold against the rest: one may be left out where all others are read. */
  private List<int[]> wanted(List<Unproven> before) {
    Set<Integer> owed = owed(before, Unproven.Isolation.class);
    List<int[]> groups = new ArrayList<>();
    for (int[] group : hubs.groups()) {
      if (isInScope(group) && (options.after().isEmpty() || isAmong(group, owed))) {
        groups.add(group);
      }
    }
    if (groups.size() == hubs.groups().size() && !groups.isEmpty()) {
      groups.remove(hubs.largest());
    }
    return groups;
  }

  private boolean isAmong(int[] group, Set<Integer> nets) {
    return Arrays.stream(group).map(normal::of).anyMatch(nets::contains);
  }

  /**
   * The nets that lack the most: read against the rest, they leave little or nothing to those that
   * only lack a few.
   */
  private Set<Integer> owed(List<Unproven> before, Class<? extends Unproven> kind) {
    Map<Integer, Long> others = new LinkedHashMap<>();
    for (Unproven one : before) {
      if (kind.isInstance(one) && one instanceof Unproven.Isolation isolation) {
        others.merge(normal.of(isolation.point()), isolation.others(), Long::sum);
      } else if (kind.isInstance(one) && one instanceof Unproven.Insulation insulation) {
        others.merge(normal.of(insulation.point()), insulation.others(), Long::sum);
      }
    }
    long most = others.values().stream().mapToLong(Long::longValue).max().orElse(0);
    Set<Integer> owed = new HashSet<>();
    others.forEach(
        (net, count) -> {
          if (2 * count > most) {
            owed.add(net);
          }
        });
    return owed;
  }

  private void byBits() {
    for (MultiProbe.Halves half : MultiProbe.halves(hubs.groups())) {
      add(
          Probing.groups(array(half.from()), array(half.to()), SwitchState.normal()),
          Purpose.APART,
          "");
    }
  }

  private static int[] array(List<Integer> numbers) {
    return numbers.stream().mapToInt(Integer::intValue).toArray();
  }

  /** Pins next to each other, in the order of their names. */
  private void neighbours() {
    for (int point = 1; point < circuit.size(); point++) {
      int one = point - 1;
      if (circuit.point(one).ref().equals(circuit.point(point).ref())
          && normal.of(one) != normal.of(point)
          && (scope.get(normal.of(one)) || scope.get(normal.of(point)))) {
        add(pair(one, point), Purpose.APART, "");
      }
    }
  }

  private boolean plansInsulation() {
    return options.isolation() == Isolation.INSULATION
        || (options.insulation() && requirements.asksForInsulation());
  }

  private void insulation(List<Unproven> before) {
    Set<Integer> owed = owed(before, Unproven.Insulation.class);
    boolean fresh = options.after().isEmpty();
    // One may be left out where all others are read.
    boolean all =
        scope.cardinality() == normal.count()
            && (fresh || hubs.groups().stream().allMatch(group -> isAmong(group, owed)));
    for (int number = 0; number < hubs.groups().size(); number++) {
      int[] group = hubs.groups().get(number);
      boolean wanted = !(all && number == hubs.largest()) && (fresh || isAmong(group, owed));
      if (wanted && isInScope(group)) {
        insulation(group);
      }
    }
  }

  private void insulation(int[] group) {
    insulation(Probing.groupToRest(group, SwitchState.normal()));
  }

  private void insulation(Probing probing) {
    if (!planned.add("insulation " + key(probing, false))) {
      return;
    }
    InsulationLimit limit = insulation.of(probing);
    steps.add(
        new Step(
            steps.size() + 1,
            Reading.Kind.INSULATION,
            probing,
            new Apart(),
            OptionalDouble.of(limit.minOhms()),
            OptionalDouble.empty(),
            OptionalDouble.of(limit.volts()),
            Purpose.APART,
            "",
            false));
  }

  private String names(int[] points) {
    return Text.first(
        Arrays.stream(points).mapToObj(point -> circuit.point(point).toString()).toList(), 4);
  }

  private List<Part> sensitive() {
    if (steps.stream().noneMatch(step -> step.kind() == Reading.Kind.INSULATION)) {
      return List.of();
    }
    double volts = circuit.harness().limits().insulationVolts();
    return circuit.harness().parts().stream()
        .filter(part -> part.maxTestVolts().orElse(Double.POSITIVE_INFINITY) < volts)
        .toList();
  }

  /** Adds steps for what is not proven yet; whether there were any. */
  private boolean fill(Coverage coverage) {
    int before = steps.size();
    Set<Integer> told = new HashSet<>();
    for (Unproven one : coverage.unproven()) {
      if (!isInScope(one)) {
        continue;
      }
      if (one instanceof Unproven.Contact contact) {
        contact(contact);
      } else if (one instanceof Unproven.OfWire wire) {
        aroundWhichOthersGo(wire.conductor());
      } else if (one instanceof Unproven.Join join) {
        add(pair(join.from(), join.to()), Purpose.JOIN, "");
      } else if (one instanceof Unproven.Isolation isolation
          && options.isolation() != Isolation.NEIGHBOURS
          && !isolation.waitsForJoins()
          && told.add(normal.of(isolation.point()))) {
        behindParts(isolation);
      } else if (one instanceof Unproven.Insulation insulation
          && plansInsulation()
          && !insulation.waitsForJoins()) {
        insulation(hubs.groupOf(insulation.point()));
      } else if (one instanceof Unproven.OfPart part) {
        part(part.part());
      }
    }
    return steps.size() > before;
  }

  private boolean isInScope(int[] group) {
    return Arrays.stream(group).map(normal::of).anyMatch(scope::get);
  }

  private boolean isInScope(Unproven one) {
    if (one instanceof Unproven.Join join) {
      return scope.get(normal.of(join.from()));
    }
    if (one instanceof Unproven.Isolation isolation) {
      return scope.get(normal.of(isolation.point())) || scope.get(normal.of(isolation.other()));
    }
    if (one instanceof Unproven.Insulation insulation) {
      return scope.get(normal.of(insulation.point())) || scope.get(normal.of(insulation.other()));
    }
    if (one instanceof Unproven.OfPart part) {
      return scope.get(normal.of(circuit.fromOfPart(part.part())))
          || scope.get(normal.of(circuit.toOfPart(part.part())));
    }
    int conductor =
        one instanceof Unproven.OfWire wire
            ? wire.conductor()
            : ((Unproven.Contact) one).conductor();
    return scope.get(normal.of(circuit.from(conductor)))
        || scope.get(normal.of(circuit.to(conductor)));
  }

  private void leaveOut(Unprovable one) {
    if (one.points().stream().noneMatch(point -> scope.get(normal.of(point)))) {
      return;
    }
    String nets = names(one.points().stream().mapToInt(Integer::intValue).toArray());
    String parts =
        Text.first(
            one.parts().stream().map(part -> circuit.part(part).label()).distinct().toList(), 3);
    leftOut.add(
        one.insulation()
            ? Text.of("insulation between %s: %s between them", nets, parts)
            : Text.of("%s apart: no ohms are listed for the %s between them", nets, parts));
  }

  private void leaveOut(Unproven one) {
    if (one instanceof Unproven.Insulation && !plansInsulation()) {
      leftOut.add("insulation, which the list asks for: no test of it is planned here");
      return;
    }
    if (!(one instanceof Unproven.Isolation) || options.isolation() != Isolation.NEIGHBOURS) {
      leftOut.add(one.why());
    }
  }

  /** A net against the others that parts join to it, tied together: the parts are read. */
  private void behindParts(Unproven.Isolation isolation) {
    int[] group = hubs.groupOf(isolation.point());
    int net = normal.of(isolation.point());
    int other = normal.of(isolation.other());
    int[] own = Arrays.stream(group).filter(point -> normal.of(point) == net).toArray();
    int[] others = Arrays.stream(group).filter(point -> normal.of(point) != net).toArray();
    if (own.length == 0 || Arrays.stream(others).map(normal::of).noneMatch(one -> one == other)) {
      if (isolation.others() > 1) {
        add(Probing.groupToRest(group, SwitchState.normal()), Purpose.APART, "");
      } else {
        add(pair(isolation.point(), isolation.other()), Purpose.APART, "");
      }
    } else {
      add(Probing.groups(own, others, SwitchState.normal()), Purpose.APART, "");
    }
  }

  private void contact(Unproven.Contact contact) {
    Conductor.OfContact conductor =
        (Conductor.OfContact) circuit.conductors().get(contact.conductor());
    Switch one = circuit.switchOf(conductor.contact());
    SwitchState state = SwitchState.normal().with(one, contact.position());
    add(
        Probing.pair(
            circuit.from(contact.conductor()),
            circuit.to(contact.conductor()),
            // What goes around a contact shows it closed whether it is or not.
            lifted(contact.conductor(), state).orElse(state)),
        Purpose.CONTACT,
        conductor.label());
  }

  /** By a switch position in which nothing goes around it, by ohms, or with a wire's end lifted. */
  private void aroundWhichOthersGo(int wire) {
    int from = circuit.from(wire);
    int to = circuit.to(wire);
    String label = circuit.conductors().get(wire).label();
    for (Switch one : circuit.harness().switches()) {
      for (String position : one.states()) {
        SwitchState state = SwitchState.normal().with(one, position);
        if (circuit.in(state).isCutEdge(wire)) {
          add(Probing.pair(from, to, state), Purpose.LOOP, label);
          return;
        }
      }
    }
    if (showsByOhms(wire)) {
      add(pair(from, to), Purpose.LOOP, label);
      return;
    }
    lifted(wire, SwitchState.normal())
        .ifPresent(state -> add(Probing.pair(from, to, state), Purpose.LOOP, label));
  }

  /** Whether the highest good reading across a wire is below the least one without it. */
  private boolean showsByOhms(int wire) {
    Resistances resistances = limits.resistances();
    int from = circuit.from(wire);
    int to = circuit.to(wire);
    SwitchState state = SwitchState.normal();
    OptionalDouble without = resistances.leastWithout(wire, from, to, state);
    JoinLimit limit = limits.of(Probing.pair(from, to, state), Meter.UNKNOWN);
    return limit.expected().isKnown()
        && without.isPresent()
        && without.getAsDouble() > limit.ohms();
  }

  /** A state with enough other wires lifted that nothing goes around a conductor. */
  private Optional<SwitchState> lifted(int wire, SwitchState position) {
    SwitchState state = position;
    Set<Integer> off = new HashSet<>();
    List<Integer> around = Detour.around(circuit.in(position), circuit, wire, off);
    while (!around.isEmpty()) {
      Optional<Integer> other =
          around.stream()
              .filter(this::canBeNamed)
              .min((left, right) -> Integer.compare(effort(left), effort(right)));
      if (other.isEmpty()) {
        return Optional.empty();
      }
      off.add(other.get());
      state = state.withLifted(circuit.conductors().get(other.get()).asWire().orElseThrow());
      around = Detour.around(circuit.in(position), circuit, wire, off);
    }
    return Optional.of(state);
  }

  /** Whether the column State can say that a wire, and it alone, is lifted. */
  private boolean canBeNamed(int conductor) {
    return circuit
        .conductors()
        .get(conductor)
        .asWire()
        .map(Wire::name)
        .filter(name -> !name.matches(".*[;,=].*"))
        .filter(name -> !sharedNames.contains(name.toUpperCase(Locale.ROOT)))
        .isPresent();
  }

  /** A wire is lifted at a screw sooner than a contact is taken out of a connector. */
  private int effort(int wire) {
    return hubs.isScrew(circuit.from(wire)) || hubs.isScrew(circuit.to(wire)) ? 0 : 1;
  }

  /** What is read again only if asked for: the same two sides, either way round but at a diode. */
  private static String key(Probing probing, boolean oneWay) {
    String from = Arrays.toString(probing.from());
    String to = probing.toRest() ? "REST" : Arrays.toString(probing.to());
    boolean swapped = !oneWay && from.compareTo(to) > 0;
    return (swapped ? to + from : from + to) + oneWay + probing.state();
  }

  private void add(Probing probing, Purpose purpose, String ofWhat) {
    if (!planned.add(key(probing, purpose == Purpose.PART))) {
      return;
    }
    Expected expected = predictor.asListed(probing);
    OptionalDouble min = OptionalDouble.empty();
    OptionalDouble max = OptionalDouble.empty();
    if (expected instanceof Joined) {
      JoinLimit limit = limits.of(probing, Meter.UNKNOWN);
      max = OptionalDouble.of(limit.ohms());
      if (limit.expected().isKnown()) {
        min = OptionalDouble.of(limit.expected().lowOhms());
      }
    } else if (expected instanceof ThroughParts parts && !Double.isInfinite(parts.lowOhms())) {
      min = OptionalDouble.of(parts.lowOhms());
      if (!Double.isInfinite(parts.highOhms())) {
        max = OptionalDouble.of(parts.highOhms());
      }
    } else {
      min = OptionalDouble.of(circuit.harness().limits().openMinOhms());
    }
    steps.add(
        new Step(
            steps.size() + 1,
            Reading.Kind.CONTINUITY,
            probing,
            expected,
            min,
            max,
            OptionalDouble.empty(),
            purpose,
            ofWhat,
            false));
  }

  /** A point's side as a test sheet writes it. */
  public static String side(Circuit circuit, int[] points) {
    List<String> names =
        Arrays.stream(points).mapToObj(circuit::point).map(Point::toString).toList();
    return String.join("+", names);
  }
}
