package dev.ringout.work;

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
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
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
      return word == Measured.Word.FAIL ? Shown.NOTHING : Shown.JOINED;
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
    private final Set<Point> points = new TreeSet<>();
    private final Map<Point, Point> parent = new HashMap<>();
    private final List<Reading> kept = new ArrayList<>();
    private final Set<String> unsure = new LinkedHashSet<>();
    private final Map<Point, List<Wire>> wiresOf = new HashMap<>();

    Builder(ReadingSet readings) {
      // The last reading of the same two sides stands.
      Map<String, Reading> last = new LinkedHashMap<>();
      int otherState = 0;
      for (Reading reading : readings.readings()) {
        points.addAll(named(reading.from()));
        points.addAll(named(reading.to()));
        if (!reading.state().isNormal()) {
          otherState++;
        } else if (shown(reading) != Shown.NOTHING) {
          last.put(reading.kind() + " " + reading.subject(), reading);
        }
      }
      kept.addAll(last.values());
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

    private Point first(Point point) {
      Point above = parent.getOrDefault(point, point);
      while (!above.equals(parent.getOrDefault(above, above))) {
        above = parent.getOrDefault(above, above);
      }
      return above;
    }

    FoundList build() {
      for (Reading reading : kept) {
        List<Point> from = named(reading.from());
        List<Point> to = named(reading.to());
        if (shown(reading) == Shown.JOINED && from.size() == 1 && to.size() == 1) {
          join(reading, from.get(0), to.get(0));
        }
      }
      Map<Point, List<Point>> nets = new TreeMap<>();
      points.forEach(
          point -> nets.computeIfAbsent(first(point), key -> new ArrayList<>()).add(point));
      Set<List<Point>> apart = new HashSet<>();
      kept.forEach(reading -> heldApart(reading, nets.keySet(), apart));
      List<Wire> wires = new ArrayList<>();
      List<PinDetail> pins = new ArrayList<>();
      List<List<Point>> joined = new ArrayList<>();
      List<String> next = new ArrayList<>();
      long missing = 0;
      for (Map.Entry<Point, List<Point>> net : nets.entrySet()) {
        long open = nets.size() - 1 - count(net.getKey(), nets.keySet(), apart);
        missing += open;
        if (open > 0 && next.size() < MOST_NEXT) {
          next.add(
              Text.of(
                  "%s to REST: not held apart from %d other nets", net.getValue().get(0), open));
        }
        if (net.getValue().size() > 1) {
          joined.add(net.getValue());
          wires(net.getKey(), net.getValue(), open == 0, wires);
        } else {
          Point lone = net.getKey();
          pins.add(
              new PinDetail(
                  lone,
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
          joined,
          List.copyOf(unsure),
          next,
          new Pairs(all, all - missing / 2));
    }

    private void join(Reading reading, Point from, Point to) {
      Point one = first(from);
      Point other = first(to);
      if (one.equals(other)) {
        return;
      }
      Wire wire =
          new Wire(
              "",
              from,
              to,
              Optional.empty(),
              "",
              "",
              Optional.empty(),
              "",
              "",
              "",
              "",
              "",
              reading.place().toString(),
              Map.of(),
              reading.place());
      List<Wire> wires = new ArrayList<>(wiresOf.getOrDefault(one, List.of()));
      wires.addAll(wiresOf.getOrDefault(other, List.of()));
      wires.add(wire);
      Point top = one.compareTo(other) <= 0 ? one : other;
      parent.put(one, top);
      parent.put(other, top);
      wiresOf.put(top, wires);
    }

    private void heldApart(Reading reading, Set<Point> nets, Set<List<Point>> apart) {
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
      Set<Point> own = new LinkedHashSet<>();
      from.forEach(point -> own.add(first(point)));
      to.stream().filter(point -> from.isEmpty()).forEach(point -> own.add(first(point)));
      Set<Point> others = new LinkedHashSet<>();
      if (reading.to() instanceof Side.Rest || reading.from() instanceof Side.Rest) {
        others.addAll(nets);
        others.removeAll(own);
      } else {
        to.forEach(point -> others.add(first(point)));
      }
      for (Point one : own) {
        for (Point other : others) {
          if (one.equals(other)) {
            unsure.add(
                Text.of(
                    "%s reads %s, but other readings join the two",
                    reading.subject(), reading.measured().text()));
          } else {
            apart.add(one.compareTo(other) < 0 ? List.of(one, other) : List.of(other, one));
          }
        }
      }
    }

    private static long count(Point net, Set<Point> nets, Set<List<Point>> apart) {
      return nets.stream()
          .filter(other -> !other.equals(net))
          .filter(
              other ->
                  apart.contains(
                      net.compareTo(other) < 0 ? List.of(net, other) : List.of(other, net)))
          .count();
    }

    private void wires(Point net, List<Point> points, boolean closed, List<Wire> wires) {
      String note =
          points.size() > 2
              ? Text.of(
                  "inferred: read joined, but which wires make this net of %d points no meter tells",
                  points.size())
              : closed ? "read joined, and apart from all else" : "inferred: read joined";
      for (Wire wire : wiresOf.getOrDefault(net, List.of())) {
        wires.add(
            new Wire(
                "F" + (wires.size() + 1),
                wire.from(),
                wire.to(),
                Optional.empty(),
                "",
                "",
                Optional.empty(),
                "",
                "",
                "",
                "",
                "",
                note + " (" + wire.note() + ")",
                Map.of(),
                wire.place()));
      }
    }
  }
}
