package dev.ringout.meter.practice;

import dev.ringout.circuit.Circuit;
import dev.ringout.circuit.Expected;
import dev.ringout.circuit.JoinLimits;
import dev.ringout.circuit.Predictor;
import dev.ringout.circuit.Probing;
import dev.ringout.circuit.Resistances;
import dev.ringout.harness.Harness;
import dev.ringout.harness.Point;
import dev.ringout.harness.SwitchState;
import dev.ringout.harness.Wire;
import dev.ringout.readings.Side;
import dev.ringout.standards.Tables;
import dev.ringout.units.Length;
import dev.ringout.units.OhmsRange;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;

/**
 * A unit that was wired with slips of the hand, chosen by a seed. What a meter would read on it is
 * worked out by the same network solver by which readings are judged.
 */
public final class PracticeUnit {
  /** A joint that is poor reads as if its wire were so much longer. */
  private static final double POOR_METRES = 60;

  /** A wire of which the list gives no gauge or no length (common practice, no source). */
  private static final double UNKNOWN_OHMS = 0.05;

  /** A junction at the small current of a meter (common practice, no source). */
  private static final double JUNCTION_OHMS = 600;

  private final Circuit listed;
  private final Circuit built;
  private final Predictor predictor;
  private final Resistances resistances;
  private final List<String> slips;

  private PracticeUnit(Harness list, Harness made, Tables tables, List<String> slips) {
    this.listed = Circuit.of(list);
    this.built = Circuit.of(made);
    this.resistances = JoinLimits.of(built, tables).resistances();
    this.predictor = new Predictor(built, resistances);
    this.slips = List.copyOf(slips);
  }

  /**
   * A unit made to a list, with so many slips in it.
   *
   * @param seed the same seed makes the same slips
   */
  public static PracticeUnit of(Harness list, Tables tables, long seed, int howMany) {
    Planting planting = new Planting(list, new Random(seed));
    for (int i = 0; i < howMany; i++) {
      planting.plant();
    }
    return new PracticeUnit(list, list.withWires(planting.wires), tables, planting.told);
  }

  /** What was done to it, for who asks afterwards. */
  public List<String> slips() {
    return slips;
  }

  /** The points of its list, in natural order. */
  public List<Point> points() {
    return listed.harness().points();
  }

  /** The wires of its list. */
  public List<Wire> wires() {
    return listed.harness().wires();
  }

  /** Plants slips into the wires of a list. */
  private static final class Planting {
    private final List<Wire> wires;
    private final Random random;
    private final Set<Integer> touched = new TreeSet<>();
    private final List<String> told = new ArrayList<>();

    Planting(Harness list, Random random) {
      this.wires = new ArrayList<>(list.wires());
      this.random = random;
    }

    void plant() {
      if (touched.size() + 2 > wires.size()) {
        return;
      }
      int wire = free();
      switch (random.nextInt(3)) {
        case 0 -> open(wire);
        case 1 -> cross(wire);
        default -> poor(wire);
      }
    }

    private int free() {
      int wire = random.nextInt(wires.size());
      while (!touched.add(wire)) {
        wire = (wire + 1) % wires.size();
      }
      return wire;
    }

    /** Its contact is not home: the end hangs in the air, on a point that no probe finds. */
    private void open(int number) {
      Wire wire = wires.get(number);
      wires.set(number, wire.between(wire.from(), new Point("NOT HOME", wire.name())));
      told.add(wire.name() + " is not home at " + wire.to());
    }

    private void cross(int number) {
      Wire wire = wires.get(number);
      for (int other = 0; other < wires.size(); other++) {
        Wire neighbour = wires.get(other);
        boolean suits =
            neighbour.to().ref().equals(wire.to().ref()) && !neighbour.to().equals(wire.to());
        if (suits && touched.add(other)) {
          wires.set(number, wire.between(wire.from(), neighbour.to()));
          wires.set(other, neighbour.between(neighbour.from(), wire.to()));
          told.add(wire.name() + " and " + neighbour.name() + " are crossed at " + wire.to().ref());
          return;
        }
      }
      open(number);
    }

    private void poor(int number) {
      Wire wire = wires.get(number);
      Optional<Length> length = wire.length();
      if (length.isEmpty() || wire.gauge().isEmpty()) {
        open(number);
        return;
      }
      Length longer = new Length(length.get().metres() + POOR_METRES);
      wires.set(number, wire.madeOf(wire.make().ofLength(Optional.of(longer))));
      told.add(wire.name() + " has a poor joint");
    }
  }

  /** Moves probes to where a step of a plan asks for them. */
  public void probe(PracticeProbes probes, Side from, Side to, SwitchState state) {
    probes.moveTo(ohms(from, to, state));
  }

  /** What is between two sides, leads apart; infinite where nothing is. */
  public double ohms(Side from, Side to, SwitchState state) {
    int[] one = numbers(from.points());
    int[] other = to.isRest() ? rest(from, state) : numbers(to.points());
    if (one.length == 0 || other.length == 0) {
      return Double.POSITIVE_INFINITY;
    }
    Expected expected = predictor.asListed(Probing.groups(one, other, state));
    return expected.match(new Reading(one, other, state));
  }

  /** Every point outside of the nets of a side, as the list has them. */
  private int[] rest(Side from, SwitchState state) {
    Set<Integer> own = new HashSet<>();
    from.points().forEach(point -> own.add(listed.in(state).of(listed.index(point))));
    return numbers(
        points().stream()
            .filter(point -> !own.contains(listed.in(state).of(listed.index(point))))
            .toList());
  }

  /** The points that something sits on; a point without is in the air. */
  private int[] numbers(List<Point> points) {
    Set<Point> there = built.harness().pointsAsListed();
    return points.stream().filter(there::contains).mapToInt(built::index).toArray();
  }

  /** The ohms in the middle of what may be read. */
  private final class Reading implements Expected.Cases<Double> {
    private final int[] one;
    private final int[] other;
    private final SwitchState state;

    Reading(int[] one, int[] other, SwitchState state) {
      this.one = one;
      this.other = other;
      this.state = state;
    }

    @Override
    public Double joined(Expected.Joined expected) {
      return Arrays.stream(one)
          .boxed()
          .flatMap(from -> Arrays.stream(other).mapToObj(to -> between(from, to)))
          .min(Double::compare)
          .orElse(Double.POSITIVE_INFINITY);
    }

    private double between(int from, int to) {
      boolean joined = built.in(state).of(from) == built.in(state).of(to);
      if (!joined) {
        return Double.POSITIVE_INFINITY;
      }
      OhmsRange range = resistances.between(from, to, state);
      return range.isKnown() ? range.middleOhms() : UNKNOWN_OHMS;
    }

    @Override
    public Double apart(Expected.Apart expected) {
      return Double.POSITIVE_INFINITY;
    }

    @Override
    public Double throughParts(Expected.ThroughParts expected) {
      if (!Double.isInfinite(expected.highOhms())) {
        return (expected.lowOhms() + expected.highOhms()) / 2;
      }
      boolean conducts = expected.lowOhms() > 0 && !Double.isInfinite(expected.lowOhms());
      return conducts ? expected.lowOhms() + JUNCTION_OHMS : Double.POSITIVE_INFINITY;
    }
  }
}
