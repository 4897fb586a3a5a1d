package dev.ringout.diagnose.values;

import dev.ringout.circuit.Circuit;
import dev.ringout.circuit.Leaks;
import dev.ringout.circuit.Leaks.Leak;
import dev.ringout.circuit.Leaks.Pair;
import dev.ringout.circuit.Partition;
import dev.ringout.compare.Comparison;
import dev.ringout.compare.Judged;
import dev.ringout.compare.Outcome;
import dev.ringout.diagnose.Certainty;
import dev.ringout.diagnose.Fault;
import dev.ringout.diagnose.Fault.Finding;
import dev.ringout.diagnose.wiring.ListedUnit;
import dev.ringout.diagnose.wiring.Neighbours;
import dev.ringout.diagnose.wiring.WiringFaults;
import dev.ringout.harness.Part;
import dev.ringout.harness.Point;
import dev.ringout.readings.Reading;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.DoubleSummaryStatistics;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Low insulation as leaks between nets, on the unit as it was found. Where most of the nets read at
 * one connector are low, that is one finding: moisture or dirt there is more likely than so many
 * damaged wires (common practice, no source).
 */
public final class LowInsulations {
  private static final int LEAST_FOR_ONE_CAUSE = 3;
  private static final double SHARE_FOR_ONE_CAUSE = 0.5;

  /** A leak that is less of a reading against the rest than this is not what it shows. */
  private static final double LEAST_SHARE = 0.1;

  /** A part that is less of a leak than this can't be seen in its reading. */
  private static final double OUT_OF_SIGHT = 0.05;

  private final Circuit circuit;
  private final Neighbours neighbours;
  private final Comparison comparison;
  private final WiringFaults wiring;
  private final Partition found;
  private final LeakPairs pairs;
  private final Set<Judged> readTwice;

  /** What lies between nets as listed; through what has no ohms of its own a leak shows whole. */
  private final Map<Pair, Double> parts;

  private final Map<Integer, Set<String>> itemsOf = new HashMap<>();

  /** Nets that were tied together in a reading against the rest, by the one that stands for all. */
  private final Map<Integer, Set<Integer>> tied = new HashMap<>();

  private LowInsulations(
      Circuit circuit, Neighbours neighbours, Comparison comparison, WiringFaults wiring) {
    this.circuit = circuit;
    this.neighbours = neighbours;
    this.comparison = comparison;
    this.wiring = wiring;
    this.found = wiring.found();
    this.pairs = new LeakPairs(circuit, found);
    this.readTwice = comparison.readTwiceAlike();
    this.parts = parts(circuit, found);
  }

  /** Low insulation that no fault of the wiring explains. */
  public static List<Fault> of(ListedUnit unit, Comparison comparison, WiringFaults wiring) {
    return new LowInsulations(unit.circuit(), unit.neighbours(), comparison, wiring)
        .faults(wiring.explained());
  }

  private List<Fault> faults(Set<Judged> explainedOtherwise) {
    List<Judged> low =
        Stream.concat(
                comparison.with(Outcome.LOW_INSULATION).stream(),
                comparison.with(Outcome.RESISTIVE).stream()
                    .filter(judged -> !judged.expected().isJoined()))
            .filter(judged -> !explainedOtherwise.contains(judged))
            .toList();
    if (low.isEmpty()) {
      return List.of();
    }
    List<Fault> faults = new ArrayList<>();
    List<Judged> left = new ArrayList<>(low);
    List<Judged> read = insulationReadings();
    Map<String, AtItem> readAt = byItem(read);
    while (true) {
      Map<String, AtItem> lowAt = byItem(left);
      List<String> wet = wetItems(lowAt, readAt);
      if (wet.isEmpty()) {
        break;
      }
      Set<Integer> nets = netsAt(wet.get(0), lowAt);
      List<Judged> there = left.stream().filter(judged -> nets.containsAll(nets(judged))).toList();
      faults.add(wet(wet, there, nets, netsAt(wet.get(0), readAt).size()));
      left.removeAll(there);
    }
    faults.addAll(leaks(left, read));
    return faults;
  }

  /** The readings at one item, and the nets that they are about. */
  private static final class AtItem {
    final Set<Integer> nets = new TreeSet<>();
    int readings;
  }

  private static Set<Integer> netsAt(String item, Map<String, AtItem> byItem) {
    AtItem there = byItem.get(item);
    return there == null ? Set.of() : there.nets;
  }

  private List<Judged> insulationReadings() {
    return comparison.inForce().stream()
        .filter(judged -> judged.reading().kind() == Reading.Kind.INSULATION)
        .filter(judged -> judged.reading().measured().made())
        .toList();
  }

  private Set<Integer> nets(Judged judged) {
    Set<Integer> nets = new LinkedHashSet<>();
    judged.probing().points().forEach(point -> nets.add(found.groupOf(point)));
    return nets;
  }

  /** Readings, by the items at which all nets of each have points. */
  private Map<String, AtItem> byItem(List<Judged> readings) {
    Map<String, AtItem> byItem = new TreeMap<>();
    for (Judged judged : readings) {
      Set<Integer> nets = nets(judged);
      Set<String> shared = new TreeSet<>();
      for (int net : nets) {
        Set<String> items = itemsOf.computeIfAbsent(net, this::items);
        if (shared.isEmpty()) {
          shared.addAll(items);
        } else {
          shared.retainAll(items);
        }
        if (shared.isEmpty()) {
          break;
        }
      }
      for (String item : shared) {
        AtItem there = byItem.computeIfAbsent(item, ref -> new AtItem());
        there.nets.addAll(nets);
        there.readings++;
      }
    }
    return byItem;
  }

  private Set<String> items(int net) {
    return IntStream.of(found.pointsOf(net))
        .mapToObj(neighbours::refOf)
        .collect(Collectors.toCollection(TreeSet::new));
  }

  /**
   * The items at which the greatest share of the nets read is low, if it is most of them. Several
   * with the same share are the ends of one cable: those with the most low nets.
   */
  private static List<String> wetItems(Map<String, AtItem> lowAt, Map<String, AtItem> readAt) {
    Map<String, Double> shareAt = new TreeMap<>();
    lowAt.forEach(
        (item, low) -> {
          int nets = low.nets.size();
          double share = nets / (double) Math.max(nets, netsAt(item, readAt).size());
          if (nets >= LEAST_FOR_ONE_CAUSE
              && low.readings >= LEAST_FOR_ONE_CAUSE
              && share >= SHARE_FOR_ONE_CAUSE) {
            shareAt.put(item, share);
          }
        });
    double most = shareAt.values().stream().mapToDouble(share -> share).max().orElse(0);
    shareAt.values().removeIf(share -> share < most);
    int highest =
        shareAt.keySet().stream().mapToInt(item -> netsAt(item, lowAt).size()).max().orElse(0);
    return shareAt.keySet().stream().filter(item -> netsAt(item, lowAt).size() == highest).toList();
  }

  private Fault wet(List<String> items, List<Judged> readings, Set<Integer> nets, int read) {
    List<Point> points =
        nets.stream()
            .flatMapToInt(net -> IntStream.of(found.pointsOf(net)))
            .filter(point -> neighbours.refOf(point).equals(items.get(0)))
            .mapToObj(circuit::point)
            .sorted()
            .toList();
    return fault(readings, readings, points, items, nets.size(), read, Certainty.LIKELY);
  }

  private List<Fault> leaks(List<Judged> low, List<Judged> read) {
    Leaks leaks = leaksShownBy(low, read);
    List<Fault> faults = new ArrayList<>();
    Set<Judged> shown = new HashSet<>();
    for (Leak leak : leaks.all()) {
      List<Judged> readings = shownBy(leak, low, leaks);
      if (readings.isEmpty()) {
        continue;
      }
      shown.addAll(readings);
      faults.add(
          leak(
              readings,
              valuesOf(leak, readings),
              ends(leak),
              wiring.certaintyBeside(
                  leak.read()
                      && !pairs.isUnsure(leak.between())
                      && isAtNoPart(leak)
                      && areMoreThanOne(readings),
                  readings)));
    }
    for (int net : leaks.loose()) {
      List<Judged> readings =
          low.stream()
              .filter(judged -> !shown.contains(judged) && nets(judged).contains(net))
              .toList();
      if (!readings.isEmpty()) {
        shown.addAll(readings);
        faults.add(leakAsRead(readings));
      }
    }
    low.stream()
        .filter(judged -> !shown.contains(judged))
        .forEach(judged -> faults.add(leakAsRead(List.of(judged))));
    return faults;
  }

  private Leaks leaksShownBy(List<Judged> low, List<Judged> read) {
    List<Judged> between = new ArrayList<>(low);
    conformingGaps()
        .filter(judged -> judged.reading().measured().value().isPresent())
        .forEach(between::add);
    Set<Pair> apart = apart(read);
    Map<Pair, Double> leaking = pairs.shownBy(between, open(apart), LowInsulations::ohms);
    Map<Integer, Double> toRest = new HashMap<>();
    for (Judged judged : low) {
      Set<Integer> nets = nets(judged);
      boolean isShown =
          leaking.keySet().stream().anyMatch(pair -> nets.stream().anyMatch(pair::has));
      if (judged.probing().toRest() && (judged.probing().from().length == 1 || !isShown)) {
        int first = found.groupOf(judged.probing().from()[0]);
        tied.computeIfAbsent(first, key -> new LinkedHashSet<>()).addAll(nets);
        toRest.merge(first, ohms(judged), Math::min);
      }
    }
    return new Leaks(leaking, toRest, apart, parts);
  }

  private Set<Pair> apart(List<Judged> read) {
    return read.stream()
        .filter(judged -> judged.outcome() == Outcome.CONFORMS)
        .flatMap(judged -> pairs.onlyOf(judged).stream())
        .collect(Collectors.toSet());
  }

  /** Pairs that read well by themselves, or show a continuity meter nothing at all. */
  private Set<Pair> open(Set<Pair> apart) {
    Set<Pair> open = new HashSet<>(apart);
    conformingGaps()
        .filter(judged -> judged.reading().measured().isOverRange())
        .forEach(judged -> pairs.onlyOf(judged).ifPresent(open::add));
    return open;
  }

  /**
   * What a continuity meter shows where nothing joins, good there: ohms may say who leaks all the
   * same.
   */
  private Stream<Judged> conformingGaps() {
    return comparison.inForce().stream()
        .filter(judged -> judged.reading().kind() == Reading.Kind.CONTINUITY)
        .filter(judged -> judged.outcome() == Outcome.CONFORMS && judged.expected().isApart());
  }

  private static Map<Pair, Double> parts(Circuit circuit, Partition found) {
    Map<Pair, Double> parts = new LinkedHashMap<>();
    for (int part = 0; part < circuit.harness().parts().size(); part++) {
      int one = found.groupOf(circuit.fromOfPart(part));
      int other = found.groupOf(circuit.toOfPart(part));
      Part between = circuit.part(part);
      if (one != other && (between.ohms().isPresent() || !between.kind().isOpenToDirectCurrent())) {
        parts.merge(Pair.of(one, other), between.ohms().orElse(0), Math::min);
      }
    }
    return parts;
  }

  /** A single reading, made once, may have been made at other points. */
  private boolean areMoreThanOne(List<Judged> readings) {
    return readings.size() > 1 || readTwice.contains(readings.get(0));
  }

  /** A leak of which nothing more is known than what was read at its points. */
  private Fault leakAsRead(List<Judged> readings) {
    // Of nets tied together any may be the one that leaks.
    boolean isOfOneNet =
        readings.stream().allMatch(judged -> judged.probing().isPair() || nets(judged).size() == 1);
    return leak(
        readings,
        readings,
        probed(readings),
        wiring.certaintyBeside(isOfOneNet && areMoreThanOne(readings), readings));
  }

  /** A leak's own ohms are those read between its two nets; a net's others are in no reading. */
  private List<Judged> valuesOf(Leak leak, List<Judged> readings) {
    List<Judged> between =
        readings.stream().filter(reading -> pairs.of(reading).contains(leak.between())).toList();
    return between.isEmpty() ? readings : between;
  }

  /** The readings of its two nets, and those of others that lead over it. */
  private List<Judged> shownBy(Leak leak, List<Judged> low, Leaks leaks) {
    Set<Pair> direct = leaks.all().stream().map(Leak::between).collect(Collectors.toSet());
    return low.stream()
        .filter(
            judged -> {
              Set<Pair> of = pairs.of(judged);
              if (of.isEmpty()) {
                return isMuchOf(leak, judged)
                    && nets(judged).stream().anyMatch(leak.between()::has);
              }
              return of.stream().anyMatch(direct::contains)
                  ? of.contains(leak.between())
                  : of.stream().anyMatch(pair -> leaks.accountsFor(leak, pair, ohms(judged)));
            })
        .sorted(Comparator.comparingDouble(LowInsulations::ohms))
        .toList();
  }

  private static boolean isMuchOf(Leak leak, Judged judged) {
    return leak.ohms() * LEAST_SHARE <= ohms(judged) || ohms(judged) == 0;
  }

  /** Whether no meter would read the same from the other end of a part. */
  private boolean isAtNoPart(Leak leak) {
    return Stream.of(leak.between().one(), leak.between().other())
        .allMatch(net -> netsLike(net, leak).size() == 1);
  }

  /**
   * A net, those tied to it in the reading, and those behind parts, which read the leak as well.
   */
  private Set<Integer> netsLike(int net, Leak leak) {
    Set<Integer> like = new LinkedHashSet<>(tied.getOrDefault(net, Set.of()));
    like.add(net);
    parts.forEach(
        (pair, ohms) -> {
          if (pair.has(net) && ohms < leak.ohms() * OUT_OF_SIGHT) {
            like.add(pair.one());
            like.add(pair.other());
          }
        });
    return like;
  }

  private int[] pointsLike(int net, Leak leak) {
    return netsLike(net, leak).stream()
        .flatMapToInt(one -> IntStream.of(found.pointsOf(one)))
        .toArray();
  }

  /** Where two nets are nearest to each other. */
  private List<Point> ends(Leak leak) {
    Pair nets = leak.between();
    int[] others = pointsLike(nets.other(), leak);
    int[] best = {found.pointsOf(nets.one())[0], found.pointsOf(nets.other())[0]};
    int least = Integer.MAX_VALUE;
    for (int one : pointsLike(nets.one(), leak)) {
      for (int other : others) {
        if (neighbours.sameItem(one, other) && neighbours.distance(one, other) < least) {
          least = neighbours.distance(one, other);
          best = new int[] {one, other};
        }
      }
    }
    return IntStream.of(best).mapToObj(circuit::point).toList();
  }

  private List<Point> probed(List<Judged> readings) {
    return readings.stream()
        .flatMap(judged -> judged.probing().points().mapToObj(circuit::point))
        .distinct()
        .toList();
  }

  private static Fault leak(
      List<Judged> readings, List<Judged> values, List<Point> points, Certainty certainty) {
    return fault(readings, values, points, List.of(), 1, 1, certainty);
  }

  private static Fault fault(
      List<Judged> readings,
      List<Judged> values,
      List<Point> points,
      List<String> items,
      int netsLow,
      int netsRead,
      Certainty certainty) {
    DoubleSummaryStatistics ohms =
        values.stream()
            .mapToDouble(LowInsulations::ohms)
            .filter(one -> one > 0)
            .summaryStatistics();
    boolean measured = ohms.getCount() > 0;
    Reading first = readings.get(0).reading();
    return new Fault.LowInsulation(
        Finding.alone(certainty, readings, List.of()),
        points,
        items,
        netsLow,
        netsRead,
        measured ? OptionalDouble.of(ohms.getMin()) : OptionalDouble.empty(),
        measured ? OptionalDouble.of(ohms.getMax()) : OptionalDouble.empty(),
        first.kind() == Reading.Kind.INSULATION ? first.volts() : OptionalDouble.empty());
  }

  /** What was read, or what it was less than; 0 where it is no such number. */
  private static double ohms(Judged judged) {
    double most = judged.reading().measured().atMostOhms();
    return Double.isInfinite(most) ? 0 : most;
  }
}
