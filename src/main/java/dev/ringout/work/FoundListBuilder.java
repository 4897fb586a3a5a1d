package dev.ringout.work;

import dev.ringout.circuit.DisjointPoints;
import dev.ringout.harness.Point;
import dev.ringout.readings.Reading;
import dev.ringout.readings.ReadingSet;
import dev.ringout.readings.Side;
import dev.ringout.source.Place;
import dev.ringout.work.FoundList.Alone;
import dev.ringout.work.FoundList.Join;
import dev.ringout.work.FoundList.Net;
import dev.ringout.work.FoundList.Next;
import dev.ringout.work.FoundList.Pairs;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/** Puts a list together from readings, one after the other. */
final class FoundListBuilder {
  private static final int MOST_NEXT = 20;

  private final Map<String, String> spelling = new HashMap<>();
  private final List<Reading> kept;
  private final Set<OpenQuestion> unsure = new LinkedHashSet<>();

  /** Every point that a sheet names, in order. */
  private final List<Point> points;

  private final Map<Point, Integer> numberOf = new HashMap<>();

  /** Nets: a net is known by its first point. */
  private final DisjointPoints joined;

  /** For each net the readings that united it. */
  private final Map<Integer, List<Join>> joinsOf = new HashMap<>();

  /** For each net the others that it was read apart from. */
  private final Map<Integer, BitSet> apart = new HashMap<>();

  /** Two sides as one kind of test reads them: the last reading of them stands. */
  private record Probed(Reading.Kind kind, String subject) {}

  FoundListBuilder(ReadingSet readings) {
    Map<Probed, Reading> last = new LinkedHashMap<>();
    Set<Point> all = new TreeSet<>();
    int otherPositions = 0;
    for (Reading reading : readings.readings()) {
      all.addAll(named(reading.from()));
      all.addAll(named(reading.to()));
      if (!reading.state().isNormal()) {
        otherPositions++;
      } else if (Shown.by(reading) != Shown.NOTHING) {
        last.put(new Probed(reading.kind(), reading.subject()), reading);
      }
    }
    kept = List.copyOf(last.values());
    points = List.copyOf(all);
    points.forEach(point -> numberOf.put(point, numberOf.size()));
    joined = new DisjointPoints(points.size());
    if (otherPositions > 0) {
      unsure.add(new OpenQuestion.OtherPositionsLeftOut(otherPositions));
    }
  }

  private List<Point> named(Side side) {
    List<Point> named = new ArrayList<>();
    for (Point point : side.points()) {
      String ref =
          spelling.computeIfAbsent(point.ref().toUpperCase(Locale.ROOT), key -> point.ref());
      named.add(new Point(ref, point.pin()));
    }
    return named;
  }

  private int net(Point point) {
    return joined.firstOf(numberOf.getOrDefault(point, 0));
  }

  FoundList build() {
    kept.forEach(this::join);
    Map<Integer, List<Point>> pointsOf = new TreeMap<>();
    points.forEach(
        point -> pointsOf.computeIfAbsent(net(point), key -> new ArrayList<>()).add(point));
    pointsOf.keySet().forEach(net -> apart.put(net, new BitSet()));
    kept.forEach(this::holdApart);
    List<Net> nets = new ArrayList<>();
    List<Alone> alone = new ArrayList<>();
    List<Next> next = new ArrayList<>();
    long missing = 0;
    for (Map.Entry<Integer, List<Point>> entry : pointsOf.entrySet()) {
      List<Point> net = entry.getValue();
      int open = pointsOf.size() - 1 - apartFrom(entry.getKey()).cardinality();
      missing += open;
      if (open > 0 && next.size() < MOST_NEXT) {
        next.add(new Next(net.get(0), open));
      }
      if (net.size() > 1) {
        List<Join> joins = joinsOf.getOrDefault(entry.getKey(), List.of());
        nets.add(new Net(List.copyOf(net), List.copyOf(joins), open == 0));
      } else {
        alone.add(new Alone(net.get(0), open == 0, somePlace()));
      }
    }
    long all = (long) pointsOf.size() * (pointsOf.size() - 1) / 2;
    return new FoundList(
        List.copyOf(nets),
        List.copyOf(alone),
        List.copyOf(unsure),
        List.copyOf(next),
        new Pairs(all, all - missing / 2));
  }

  private Place somePlace() {
    return kept.isEmpty() ? Place.of("") : kept.get(0).place();
  }

  private BitSet apartFrom(int net) {
    return apart.getOrDefault(net, new BitSet());
  }

  private void join(Reading reading) {
    List<Point> from = named(reading.from());
    List<Point> to = named(reading.to());
    if (Shown.by(reading) == Shown.JOINED && from.size() == 1 && to.size() == 1) {
      join(new Join(from.get(0), to.get(0), reading.place()));
    }
  }

  private void join(Join join) {
    int from = net(join.from());
    int to = net(join.to());
    if (from == to) {
      return;
    }
    List<Join> joins = new ArrayList<>(joinsOf.getOrDefault(from, List.of()));
    joins.addAll(joinsOf.getOrDefault(to, List.of()));
    joins.add(join);
    joined.union(from, to);
    joinsOf.put(net(join.from()), joins);
  }

  private void holdApart(Reading reading) {
    Shown shown = Shown.by(reading);
    if (shown == Shown.BETWEEN) {
      unsure.add(
          new OpenQuestion.NeitherJoinedNorApart(reading.from(), reading.to(), reading.measured()));
    }
    if (shown != Shown.APART) {
      return;
    }
    List<Point> from = named(reading.from());
    List<Point> to = named(reading.to());
    Set<Integer> own = nets(from.isEmpty() ? to : from);
    Set<Integer> others = new LinkedHashSet<>();
    if (from.isEmpty() || to.isEmpty()) {
      others.addAll(apart.keySet());
      others.removeAll(own);
    } else {
      others.addAll(nets(to));
    }
    own.forEach(one -> others.forEach(other -> holdApart(one, other, reading)));
  }

  private void holdApart(int one, int other, Reading reading) {
    if (one == other) {
      unsure.add(new OpenQuestion.Contradicted(reading.from(), reading.to(), reading.measured()));
    } else {
      apartFrom(one).set(other);
      apartFrom(other).set(one);
    }
  }

  private Set<Integer> nets(List<Point> some) {
    Set<Integer> nets = new LinkedHashSet<>();
    some.forEach(point -> nets.add(net(point)));
    return nets;
  }
}
