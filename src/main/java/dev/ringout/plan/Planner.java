package dev.ringout.plan;

import dev.ringout.circuit.Circuit;
import dev.ringout.circuit.Expected;
import dev.ringout.circuit.JoinLimits;
import dev.ringout.circuit.Nets;
import dev.ringout.circuit.Probing;
import dev.ringout.compare.Comparison;
import dev.ringout.compare.Coverage;
import dev.ringout.compare.Coverage.Unprovable;
import dev.ringout.compare.Judged;
import dev.ringout.compare.Requirements;
import dev.ringout.compare.Unproven;
import dev.ringout.compare.ValueVerdict;
import dev.ringout.harness.Part;
import dev.ringout.harness.Point;
import dev.ringout.harness.SwitchState;
import dev.ringout.plan.PlanOptions.Isolation;
import dev.ringout.plan.Step.Purpose;
import dev.ringout.readings.Reading;
import dev.ringout.standards.HandMovements;
import java.util.Arrays;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
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
  private static final int MOST_ROUNDS = 12;

  private final Circuit circuit;
  private final JoinLimits limits;
  private final PlanOptions options;
  private final Requirements requirements;
  private final Nets normal;
  private final Scope scope;
  private final DraftSteps draft;
  private final JoinSteps joins;
  private final PartSteps parts;
  private final ApartSteps apart;
  private final LoopSteps loops;

  /** The good ones of the readings that need not be taken again. */
  private final List<Judged> taken;

  private Planner(Circuit circuit, JoinLimits limits, PlanOptions options, List<Judged> taken) {
    this.circuit = circuit;
    this.limits = limits;
    this.options = options;
    this.taken = taken;
    this.normal = circuit.normal();
    this.requirements = Requirements.of(circuit, limits);
    this.scope = Scope.of(circuit, options);
    this.draft = new DraftSteps(circuit, limits);
    Hubs hubs = Hubs.of(circuit, Scope.items(circuit, options));
    this.joins = new JoinSteps(circuit, scope, draft);
    this.parts = new PartSteps(circuit, scope, draft, requirements, taken);
    this.apart = new ApartSteps(circuit, scope, hubs, options, draft);
    this.loops = new LoopSteps(circuit, limits, hubs, draft);
  }

  /** The plan for a circuit. */
  public static TestPlan plan(
      Circuit circuit, JoinLimits limits, HandMovements movements, PlanOptions options) {
    List<Judged> taken =
        options
            .after()
            .map(after -> after.inForce().stream().filter(one -> !stands(one)).toList())
            .orElse(List.of());
    return new Planner(circuit, limits, options, taken).plan(movements);
  }

  private TestPlan plan(HandMovements movements) {
    for (Judged judged : taken) {
      if (judged.reading().kind() == Reading.Kind.CONTINUITY && judged.touchedSince().isEmpty()) {
        draft.taken(judged.probing());
      }
    }
    joins.add(taken, unprovenAfter());
    joins.addBesideContacts();
    parts.add();
    if (options.isolation() != Isolation.INSULATION) {
      apart.add(unprovenAfter());
    }
    if (plansInsulation()) {
      apart.addInsulation(unprovenAfter());
    }
    options.after().ifPresent(this::again);
    Coverage coverage = prove();
    for (int round = 0; round < MOST_ROUNDS && fill(coverage); round++) {
      coverage = prove();
    }
    Walk walk = new Walk(circuit, movements);
    List<Step> ordered = walk.order(draft.steps(), options.byConnector());
    return new TestPlan(
        circuit,
        options,
        ordered,
        sensitive(),
        leftOut(coverage),
        coverage,
        walk.movements(ordered),
        walk.movements(draft.steps()));
  }

  /** Whether a reading stands against the unit until it is read good, whatever else is proven. */
  private static boolean stands(Judged judged) {
    return !judged.outcome().passes() || judged.value() == ValueVerdict.LOW;
  }

  private void again(Comparison after) {
    for (Judged judged : after.inForce()) {
      if (stands(judged) && judged.probing().points().allMatch(scope::has)) {
        again(judged);
      }
    }
  }

  private void again(Judged judged) {
    if (judged.reading().kind() == Reading.Kind.CONTINUITY) {
      draft.add(judged.probing(), judged.expected().match(PURPOSE), "");
    } else if (!judged.expected().isJoined()) {
      draft.addInsulation(judged.probing());
    }
  }

  /** What a reading that is taken again is for. */
  private static final Expected.Cases<Purpose> PURPOSE =
      new Expected.Cases<>() {
        @Override
        public Purpose joined(Expected.Joined expected) {
          return Purpose.JOIN;
        }

        @Override
        public Purpose apart(Expected.Apart expected) {
          return Purpose.APART;
        }

        @Override
        public Purpose throughParts(Expected.ThroughParts expected) {
          return Purpose.PART;
        }
      };

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
    Comparison planned = Comparison.of(circuit, limits, GoodUnit.readings(circuit, draft.steps()));
    return requirements.shownBy(
        taken.isEmpty() ? planned : Comparison.inForce(taken).and(circuit, planned));
  }

  private boolean plansInsulation() {
    return options.isolation() == Isolation.INSULATION
        || (options.insulation() && requirements.asksForInsulation());
  }

  private List<Part> sensitive() {
    if (!draft.hasInsulation()) {
      return List.of();
    }
    double volts = circuit.harness().limits().insulationVolts();
    return circuit.harness().parts().stream()
        .filter(part -> part.maxTestVolts().orElse(Double.POSITIVE_INFINITY) < volts)
        .toList();
  }

  /** Adds steps for what is not proven yet; whether there were any. */
  private boolean fill(Coverage coverage) {
    int before = draft.steps().size();
    Filling filling = new Filling();
    coverage.unproven().stream().filter(scope::has).forEach(one -> one.match(filling));
    return draft.steps().size() > before;
  }

  /** Adds the step that shows what is not proven; whether there is one. */
  private final class Filling implements Unproven.Cases<Boolean> {
    private final Set<Integer> told = new HashSet<>();

    @Override
    public Boolean join(Unproven.Join gap) {
      draft.add(Probing.pair(gap.from(), gap.to(), SwitchState.normal()), Purpose.JOIN, "");
      return true;
    }

    @Override
    public Boolean isolation(Unproven.Isolation gap) {
      boolean wanted =
          options.isolation() != Isolation.NEIGHBOURS
              && !gap.waitsForJoins()
              && told.add(normal.of(gap.point()));
      if (wanted) {
        apart.addBehindParts(gap);
      }
      return wanted;
    }

    @Override
    public Boolean insulation(Unproven.Insulation gap) {
      boolean wanted = plansInsulation() && !gap.waitsForJoins();
      if (wanted) {
        apart.addInsulation(gap);
      }
      return wanted;
    }

    @Override
    public Boolean ofWire(Unproven.OfWire gap) {
      loops.add(gap);
      return true;
    }

    @Override
    public Boolean contact(Unproven.Contact gap) {
      loops.add(gap);
      return true;
    }

    @Override
    public Boolean pastContacts(Unproven.PastContacts gap) {
      draft.add(Probing.pair(gap.one(), gap.other(), gap.state()), Purpose.CONTACT, "");
      return true;
    }

    @Override
    public Boolean ofPart(Unproven.OfPart gap) {
      parts.add(gap.part());
      return true;
    }
  }

  /** What the plan leaves unproven, each but once. */
  private List<LeftOut> leftOut(Coverage coverage) {
    Set<LeftOut> leftOut = new LinkedHashSet<>();
    for (Unprovable unprovable : coverage.unprovable()) {
      if (unprovable.points().stream().anyMatch(scope::has)) {
        leftOut.add(new LeftOut.WithPartsInPlace(unprovable));
      }
    }
    for (Unproven unproven : coverage.unproven()) {
      if (!scope.has(unproven)) {
        continue;
      }
      if (unproven.asInsulation().isPresent() && !plansInsulation()) {
        leftOut.add(new LeftOut.InsulationNotPlanned());
      } else if (unproven.asIsolation().isEmpty() || options.isolation() != Isolation.NEIGHBOURS) {
        leftOut.add(new LeftOut.NotShown(unproven));
      }
    }
    return List.copyOf(leftOut);
  }

  /** A point's side as a test sheet writes it. */
  public static String side(Circuit circuit, int[] points) {
    List<String> names =
        Arrays.stream(points).mapToObj(circuit::point).map(Point::toString).toList();
    return String.join("+", names);
  }
}
