package dev.ringout.work;

import dev.ringout.circuit.DisjointPoints;
import dev.ringout.harness.PinDetail;
import dev.ringout.harness.Point;
import dev.ringout.harness.Wire;
import dev.ringout.harness.Wiring;
import dev.ringout.readings.Measured;
import dev.ringout.readings.Reading;
import dev.ringout.readings.ReadingSet;
import dev.ringout.readings.Side;
import dev.ringout.source.Place;
import dev.ringout.units.Numbers;
import dev.ringout.units.Text;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * A wire list built from the readings of a unit for which there is none. Nothing is invented: a
 * join stands in it only where it was read, and says so; which wires make a net of more than two
 * points no meter can tell.
 *
 * @param wiring the joins as wires, and the points that join nothing as pins
 * @param nets the points read to be joined, nets of two points and more
 * @param unsure what the readings leave open, or say twice
 * @param next what to read next, the most telling first
 * @param pairs how many pairs of nets there are, and how many were held apart
 */
public record FoundList(
    Wiring wiring, List<List<Point>> nets, List<String> unsure, List<String> next, Pairs pairs) {
  private static final double JOINED_OHMS = 1;
  private static final double OPEN_OHMS = 100e3;
  private static final int MOST_NEXT = 20;

  /** Pairs of nets, single points included. */
  public record Pairs(long all, long heldApart) {}

  /** The list that readings tell. */
  public static FoundList of(ReadingSet readings) {
    return new Builder(readings).build();
  }

  private enum Shown {
    JOINED,
    APART,
    BETWEEN,
    NOTHING
  }

  private static Shown shown(Reading reading) {
    Measured measured = reading.measured();
    if (reading.kind() == Reading.Kind.CONTINUITY && measured instanceof Measured.Word word) {
      return word.meaning() == Measured.Meaning.FAIL ? Shown.NOTHING : Shown.JOINED;
    }
    if (measured instanceof Measured.OverRange) {
      return reading.kind() == Reading.Kind.CONTINUITY ? Shown.APART : Shown.NOTHING;
    }
    if (measured instanceof Measured.MoreThan more) {
      return more.ohms() >= OPEN_OHMS ? Shown.APART : Shown.NOTHING;
    }
    if (measured instanceof Measured.LessThan less) {
      return less.ohms() <= JOINED_OHMS ? Shown.JOINED : Shown.NOTHING;
    }
    if (measured instanceof Measured.Value value) {
      return value.ohms() <= JOINED_OHMS
          ? Shown.JOINED
          : value.ohms() >= OPEN_OHMS ? Shown.APART : Shown.BETWEEN;
    }
    return Shown.NOTHING;
  }

  private static final class Builder {
    private final Map<String, String> spelling = new HashMap<>();
    private final List<Reading> kept = new ArrayList<>();
    private final Set<String> unsure = new LinkedHashSet<>();

    /** Every point that a sheet names, in order. */
    private final List<Point> points;

    private final Map<Point, Integer> numberOf = new HashMap<>();

    /** Nets: a net is known by its first point. */
    private final DisjointPoints joined;

    /** For each net the readings that united it. */
    private final Map<Integer, List<Join>> joinsOf = new HashMap<>();

    private record Join(Point from, Point to, Place place) {}

    Builder(ReadingSet readings) {
      // The last reading of the same two sides stands.
      Map<String, Reading> last = new LinkedHashMap<>();
      Set<Point> all = new TreeSet<>();
      int otherState = 0;
      for (Reading reading : readings.readings()) {
        all.addAll(named(reading.from()));
        all.addAll(named(reading.to()));
        if (!reading.state().isNormal()) {
          otherState++;
        } else if (shown(reading) != Shown.NOTHING) {
          last.put(reading.kind() + " " + reading.subject(), reading);
        }
      }
      kept.addAll(last.values());
      points = List.copyOf(all);
      points.forEach(point -> numberOf.put(point, numberOf.size()));
      joined = new DisjointPoints(points.size());
      if (otherState > 0) {
        unsure.add(
            Text.of(
                "%s in another position of a switch %s left out: a list of joins has no switches",
                Numbers.count(otherState, "reading"), otherState == 1 ? "is" : "are"));
      }
    }

    private List<Point> named(Side side) {
      List<Point> named = new ArrayList<>();
      if (side instanceof Side.Points some) {
        for (Point point : some.points()) {
          String ref =
              spelling.computeIfAbsent(point.ref().toUpperCase(Locale.ROOT), key -> point.ref());
          named.add(new Point(ref, point.pin()));
        }
      }
      return named;
    }

    private int net(Point point) {
      return joined.firstOf(numberOf.getOrDefault(point, 0));
    }

    FoundList build() {
      for (Reading reading : kept) {
        List<Point> from = named(reading.from());
        List<Point> to = named(reading.to());
        if (shown(reading) == Shown.JOINED && from.size() == 1 && to.size() == 1) {
          join(from.get(0), to.get(0), reading.place());
        }
      }
      Map<Integer, List<Point>> nets = new TreeMap<>();
      points.forEach(
          point -> nets.computeIfAbsent(net(point), key -> new ArrayList<>()).add(point));
      Map<Integer, BitSet> apart = new HashMap<>();
      nets.keySet().forEach(net -> apart.put(net, new BitSet()));
      kept.forEach(reading -> heldApart(reading, apart));
      List<Wire> wires = new ArrayList<>();
      List<PinDetail> pins = new ArrayList<>();
      List<List<Point>> joinedNets = new ArrayList<>();
      List<String> next = new ArrayList<>();
      long missing = 0;
      for (Map.Entry<Integer, List<Point>> entry : nets.entrySet()) {
        List<Point> net = entry.getValue();
        int open = nets.size() - 1 - apart.getOrDefault(entry.getKey(), new BitSet()).cardinality();
        missing += open;
        if (open > 0 && next.size() < MOST_NEXT) {
          next.add(Text.of("%s to REST: not held apart from %d other nets", net.get(0), open));
        }
        if (net.size() > 1) {
          joinedNets.add(net);
          String note = note(net, open == 0);
          for (Join join : joinsOf.getOrDefault(entry.getKey(), List.of())) {
            wires.add(wire("F" + (wires.size() + 1), join, note));
          }
        } else {
          pins.add(
              new PinDetail(
                  net.get(0),
                  "",
                  "",
                  OptionalDouble.empty(),
                  OptionalDouble.empty(),
                  open == 0 ? "joins nothing that was read" : "not read against everything",
                  kept.isEmpty() ? Place.of("") : kept.get(0).place()));
        }
      }
      long all = (long) nets.size() * (nets.size() - 1) / 2;
      return new FoundList(
          new Wiring(wires, List.of(), pins, List.of()),
          joinedNets,
          List.copyOf(unsure),
          next,
          new Pairs(all, all - missing / 2));
    }

    private void join(Point from, Point to, Place place) {
      if (net(from) == net(to)) {
        return;
      }
      List<Join> joins = new ArrayList<>(joinsOf.getOrDefault(net(from), List.of()));
      joins.addAll(joinsOf.getOrDefault(net(to), List.of()));
      joins.add(new Join(from, to, place));
      joined.union(numberOf.getOrDefault(from, 0), numberOf.getOrDefault(to, 0));
      joinsOf.put(net(from), joins);
    }

    private void heldApart(Reading reading, Map<Integer, BitSet> apart) {
      List<Point> from = named(reading.from());
      List<Point> to = named(reading.to());
      Shown shown = shown(reading);
      if (shown == Shown.BETWEEN) {
        unsure.add(
            Text.of(
                "%s reads %s: a part, a leak or a poor joint is between them",
                reading.subject(), reading.measured().text()));
      }
      if (shown != Shown.APART) {
        return;
      }
      Set<Integer> own = nets(from.isEmpty() ? to : from);
      Set<Integer> others = new LinkedHashSet<>();
      if (reading.to() instanceof Side.Rest || reading.from() instanceof Side.Rest) {
        others.addAll(apart.keySet());
        others.removeAll(own);
      } else {
        others.addAll(nets(to));
      }
      for (int one : own) {
        for (int other : others) {
          if (one == other) {
            unsure.add(
                Text.of(
                    "%s reads %s, but other readings join the two",
                    reading.subject(), reading.measured().text()));
          } else {
            apart.getOrDefault(one, new BitSet()).set(other);
            apart.getOrDefault(other, new BitSet()).set(one);
          }
        }
      }
    }

    private Set<Integer> nets(List<Point> some) {
      Set<Integer> nets = new LinkedHashSet<>();
      some.forEach(point -> nets.add(net(point)));
      return nets;
    }

    private static String note(List<Point> net, boolean closed) {
      if (net.size() > 2) {
        return Text.of(
            "inferred: read joined, but which wires make this net of %d points no meter tells",
            net.size());
      }
      return closed ? "read joined, and apart from all else" : "inferred: read joined";
    }

    private static Wire wire(String name, Join join, String note) {
      return Wire.of(name, join.from(), join.to(), join.place())
          .noted(note + " (" + join.place() + ")");
    }
  }
}
