package dev.ringout.circuit;

import dev.ringout.circuit.AlteredPart.How;
import dev.ringout.circuit.Expected.Apart;
import dev.ringout.circuit.Expected.Joined;
import dev.ringout.circuit.Expected.ThroughParts;
import dev.ringout.harness.Limits;
import dev.ringout.harness.Part;
import dev.ringout.units.OhmsRange;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;

/**
 * Says what a reading should find, by recomputing which points are joined. The same computation
 * serves the unit as listed and the unit with slips in it.
 */
public final class Predictor {
  /**
   * A sound diode never reads less: some 0.6 V across it at the 0.2 A of the strongest continuity
   * testers (common practice, no source). Less is a join.
   */
  private static final double LEAST_OF_A_DIODE_OHMS = 3;

  /**
   * More part-joined nets than any bench unit has between two probes; beyond it any value will do.
   */
  private static final int MOST_NODES = 400;

  private static final int FROM_SIDE = 0;
  private static final int TO_SIDE = 1;
  private static final Expected JOINED = new Joined();
  private static final Expected APART = new Apart();

  /** A net that is not as listed leads over so many of the longest wires (common practice). */
  private static final int WIRES_ON_THE_WAY = 4;

  private final Circuit circuit;
  private final Resistances resistances;
  private OptionalDouble longestOhms = OptionalDouble.empty();

  /** A predictor for one circuit. */
  public Predictor(Circuit circuit, Resistances resistances) {
    this.circuit = circuit;
    this.resistances = resistances;
  }

  /** What a reading should find on the unit as listed. */
  public Expected asListed(Probing probing) {
    Nets listed = circuit.in(probing.state());
    return expect(probing, listed, listed, Map.of());
  }

  /**
   * What a reading should find. The first side is taken to have the meter's positive lead.
   *
   * @param listed the nets on paper, by which the operator chose the points of {@code REST}
   * @param actual what is really joined
   * @param altered parts that are not as listed, by number
   */
  public Expected expect(
      Probing probing, Nets listed, Partition actual, Map<Integer, AlteredPart> altered) {
    if (probing.isPair() && altered.isEmpty()) {
      // Most readings of a full matrix; sets and walks are not needed for them.
      int one = actual.groupOf(probing.from()[0]);
      if (one == actual.groupOf(probing.to()[0])) {
        return JOINED;
      }
      if (actual.partsAt(one).length == 0) {
        return APART;
      }
    }
    Set<Integer> from = groups(probing.from(), actual);
    IntPredicate isTo = toSide(probing, listed, actual);
    boolean hasParts = !altered.isEmpty();
    for (int group : from) {
      if (isTo.test(group)) {
        return JOINED;
      }
      hasParts |= actual.partsAt(group).length > 0;
    }
    if (!hasParts) {
      return APART;
    }
    return new Trace(probing, from, isTo, actual, altered).expected();
  }

  private static Set<Integer> groups(int[] points, Partition actual) {
    if (points.length == 1) {
      return Set.of(actual.groupOf(points[0]));
    }
    Set<Integer> groups = new HashSet<>();
    for (int point : points) {
      groups.add(actual.groupOf(point));
    }
    return groups;
  }

  private static IntPredicate toSide(Probing probing, Nets listed, Partition actual) {
    if (!probing.toRest()) {
      return groups(probing.to(), actual)::contains;
    }
    Set<Integer> ownNets = groups(probing.from(), listed);
    return group -> {
      for (int point : actual.pointsOf(group)) {
        if (!ownNets.contains(listed.of(point))) {
          return true;
        }
      }
      return false;
    };
  }

  /** The parts that lie between the two sides of one reading, followed from the first. */
  private final class Trace {
    private final Probing probing;
    private final Partition actual;
    private final Map<Integer, AlteredPart> altered;
    private final IntPredicate isTo;
    private final PartNetwork network = new PartNetwork();
    private final Map<Integer, Integer> nodeOf = new LinkedHashMap<>();
    private final Map<Integer, Set<Integer>> endsIn = new HashMap<>();
    private final Set<Integer> parts = new TreeSet<>();
    private final Deque<Integer> open;
    private boolean reached;

    Trace(
        Probing probing,
        Set<Integer> from,
        IntPredicate isTo,
        Partition actual,
        Map<Integer, AlteredPart> altered) {
      this.probing = probing;
      this.actual = actual;
      this.altered = altered;
      this.isTo = isTo;
      this.open = new ArrayDeque<>(from);
      from.forEach(group -> nodeOf.put(group, FROM_SIDE));
    }

    Expected expected() {
      while (!open.isEmpty()) {
        int group = open.remove();
        for (int part : partsAt(group)) {
          if (parts.add(part)) {
            follow(part);
          }
          if (nodeOf.size() > MOST_NODES) {
            return new ThroughParts(
                0, Double.POSITIVE_INFINITY, allowanceOhms(), true, List.copyOf(parts));
          }
        }
      }
      if (!reached) {
        return new Apart();
      }
      OhmsRange wiring = wiring();
      double least = network.lowOhms();
      return new ThroughParts(
          least + wiring.lowOhms(),
          network.highOhms() + wiring.highOhms(),
          wiring.highOhms(),
          least <= 0,
          List.copyOf(parts));
    }

    private List<Integer> partsAt(int group) {
      List<Integer> found = new ArrayList<>();
      for (int part : actual.partsAt(group)) {
        if (!altered.containsKey(part)) {
          found.add(part);
        }
      }
      altered.forEach(
          (part, how) -> {
            boolean here = actual.groupOf(how.from()) == group || actual.groupOf(how.to()) == group;
            if (how.how() != How.MISSING && here && !actual.isLifted(part)) {
              found.add(part);
            }
          });
      return found;
    }

    private int from(int part) {
      AlteredPart how = altered.get(part);
      return how == null ? circuit.fromOfPart(part) : how.from();
    }

    private int to(int part) {
      AlteredPart how = altered.get(part);
      return how == null ? circuit.toOfPart(part) : how.to();
    }

    private void follow(int part) {
      int from = node(from(part));
      int to = node(to(part));
      reached |= from == TO_SIDE || to == TO_SIDE;
      if (from != to) {
        addBranch(part, from, to);
      }
    }

    private int node(int point) {
      int group = actual.groupOf(point);
      endsIn.computeIfAbsent(group, key -> new TreeSet<>()).add(point);
      Integer node = nodeOf.get(group);
      if (node == null) {
        boolean to = isTo.test(group);
        node = to ? TO_SIDE : nodeOf.size() + 2;
        nodeOf.put(group, node);
        if (!to) {
          open.add(group);
        }
      }
      return node;
    }

    private void addBranch(int number, int from, int to) {
      Part part = circuit.part(number);
      AlteredPart how = altered.get(number);
      boolean anything = how != null && how.how() == How.ANY_VALUE;
      if (part.kind() == Part.Kind.DIODE && !anything && !mayConduct(part, from, to)) {
        return;
      }
      if (part.kind() == Part.Kind.DIODE && !anything) {
        network.add(from, to, LEAST_OF_A_DIODE_OHMS, Double.POSITIVE_INFINITY);
        return;
      }
      if (part.kind().isOpenToDirectCurrent() && !anything) {
        // What is beside it still has to be read; with ohms of its own it may lead that much.
        part.ohms()
            .ifPresent(
                ohms ->
                    network.add(
                        from,
                        to,
                        ohms * (1 - circuit.toleranceOf(number)),
                        Double.POSITIVE_INFINITY));
        return;
      }
      if (part.ohms().isEmpty() || anything) {
        boolean conducts = part.kind().alwaysConducts() && !anything;
        double most =
            conducts ? circuit.harness().limits().openMinOhms() : Double.POSITIVE_INFINITY;
        network.add(from, to, 0, most);
        return;
      }
      double ohms = part.ohms().getAsDouble();
      network.add(
          from,
          to,
          ohms * (1 - circuit.toleranceOf(number)),
          ohms * (1 + circuit.toleranceOf(number)));
    }

    /**
     * No point between is more positive than the first side or less than the second: a diode with
     * its cathode at the first or its anode at the second blocks.
     */
    private boolean mayConduct(Part part, int from, int to) {
      boolean anodeFirst = part.anode().equals(part.from());
      int anode = anodeFirst ? from : to;
      int cathode = anodeFirst ? to : from;
      return anode != TO_SIDE && cathode != FROM_SIDE;
    }

    /**
     * What the wires may add. At least: where all parts of a probed net end at one point, the way
     * to that point. At most: for each net the most between any two of the points where current
     * enters or leaves it; the unit current that flows without the wires, led through them, has at
     * most that much more energy (Thomson), and the true one has no more.
     */
    private OhmsRange wiring() {
      double low = 0;
      double high = 0;
      for (Map.Entry<Integer, Integer> entry : nodeOf.entrySet()) {
        int group = entry.getKey();
        Set<Integer> ends = endsIn.getOrDefault(group, Set.of());
        int[] probes = probesIn(group);
        Set<Integer> terminals = new TreeSet<>(ends);
        Arrays.stream(probes).forEach(terminals::add);
        OhmsRange most = spread(group, terminals);
        if (!most.isKnown() && !actual.isAsListed(group)) {
          most = new OhmsRange(0, Math.max(allowanceOhms(), WIRES_ON_THE_WAY * longestOhms()));
        }
        if (!most.isKnown()) {
          return new OhmsRange(0, allowanceOhms());
        }
        high += most.highOhms();
        if (probes.length == 1 && ends.size() == 1) {
          low += most.lowOhms();
        }
      }
      return new OhmsRange(low, high);
    }

    private int[] probesIn(int group) {
      return probing.points().filter(point -> actual.groupOf(point) == group).toArray();
    }

    /** The most between any two points of a group, by way of the first where there are many. */
    private OhmsRange spread(int group, Set<Integer> terminals) {
      if (terminals.size() < 2) {
        return OhmsRange.NONE;
      }
      if (!actual.isAsListed(group)) {
        return OhmsRange.ANY;
      }
      List<Integer> points = List.copyOf(terminals);
      double low = 0;
      double farthest = 0;
      double second = 0;
      for (int point : points.subList(1, points.size())) {
        OhmsRange way = resistances.between(points.get(0), point, probing.state());
        if (!way.isKnown()) {
          return OhmsRange.ANY;
        }
        low = way.lowOhms();
        if (way.highOhms() > farthest) {
          second = farthest;
          farthest = way.highOhms();
        } else {
          second = Math.max(second, way.highOhms());
        }
      }
      return new OhmsRange(low, farthest + second);
    }
  }

  /** The most that any wire of the unit has, of those whose ohms are known. */
  private double longestOhms() {
    if (longestOhms.isEmpty()) {
      longestOhms =
          OptionalDouble.of(
              IntStream.range(0, circuit.conductors().size())
                  .filter(circuit::isWire)
                  .mapToObj(resistances::of)
                  .filter(OhmsRange::isKnown)
                  .mapToDouble(OhmsRange::highOhms)
                  .max()
                  .orElse(0));
    }
    return longestOhms.getAsDouble();
  }

  /** What wires of unknown resistance may add: the highest reading that still counts as joined. */
  private double allowanceOhms() {
    Limits limits = circuit.harness().limits();
    return limits.closedMaxOhms().orElse(limits.fixedClosedMaxOhms());
  }
}
