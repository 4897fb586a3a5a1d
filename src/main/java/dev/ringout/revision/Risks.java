package dev.ringout.revision;

import dev.ringout.circuit.DisjointPoints;
import dev.ringout.harness.Harness;
import dev.ringout.harness.Link;
import dev.ringout.harness.Point;
import dev.ringout.harness.Wire;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Pattern;

/** Walks through the work and looks after each step at what is joined. */
public final class Risks {
  /** Names of power and ground: common practice, no source. */
  private static final Pattern POWER =
      Pattern.compile(
          "(?i)[+-]?[1-9]\\d*([.,]\\d+)?\\s*V(AC|DC)?([ _-].*)?|VCC.*|VDD.*|V\\+|.*\\bPWR\\b.*"
              + "|.*\\b(POWER|SUPPLY|BATT?|MAINS)\\b.*");

  private static final Pattern GROUND =
      Pattern.compile("(?i)0\\s*V([ _-].*)?|.*\\b(GND|GROUND|EARTH|CHASSIS|RTN|RETURN|PE)\\b.*");

  /** Steps times points beyond which the walk would take minutes. */
  private static final long MOST_WORK = 200_000_000L;

  private Risks() {}

  /** What is joined on the way; absent where the work is too large to walk through. */
  public static Optional<List<Risk>> of(Difference difference, ReworkOrder rework) {
    return new Walk(difference, rework).risks();
  }

  private static final class Walk {
    private final ReworkOrder rework;
    private final Bench bench;
    private final Map<Point, Integer> indexOf = new HashMap<>();
    private final List<Point> points = new ArrayList<>();
    private final DisjointPoints before;
    private final DisjointPoints after;

    /** The points that work can join to others: those of the nets in which something is done. */
    private final BitSet concerned = new BitSet();

    /** The place of each of them among themselves. */
    private final int[] placeOf;

    private final Map<Integer, String> power = new TreeMap<>();
    private final Map<Integer, String> ground = new TreeMap<>();

    /** Power and ground that met, and at which step. */
    private record Meeting(int step, int power, int ground) {}

    Walk(Difference difference, ReworkOrder rework) {
      this.rework = rework;
      this.bench = new Bench(difference, rework);
      difference.before().pointsAsListed().forEach(this::number);
      difference.after().pointsAsListed().forEach(this::number);
      DisjointPoints either = new DisjointPoints(points.size());
      before = nets(difference.before(), either);
      after = nets(difference.after(), either);
      Set<Integer> nets = new HashSet<>();
      rework.steps().forEach(step -> nets.add(either.firstOf(index(step.at()))));
      placeOf = new int[points.size()];
      int places = 0;
      for (int point = 0; point < points.size(); point++) {
        if (nets.contains(either.firstOf(point))) {
          placeOf[point] = places++;
          concerned.set(point);
        }
      }
      name(difference.before());
      name(difference.after());
      bench.keepOnly(point -> concerned.get(index(point)));
    }

    Optional<List<Risk>> risks() {
      if (power.isEmpty() || ground.isEmpty()) {
        return Optional.of(List.of());
      }
      if ((long) rework.steps().size() * concerned.cardinality() > MOST_WORK) {
        return Optional.empty();
      }
      List<Risk> risks = new ArrayList<>();
      Map<List<Integer>, Meeting> open = new LinkedHashMap<>();
      for (ReworkStep step : rework.steps()) {
        bench.step(step);
        Map<List<Integer>, Meeting> met = met(step.number());
        met.forEach(open::putIfAbsent);
        for (Map.Entry<List<Integer>, Meeting> entry : List.copyOf(open.entrySet())) {
          if (!met.containsKey(entry.getKey())) {
            risks.add(risk(entry.getValue(), step.number()));
            open.remove(entry.getKey());
          }
        }
      }
      return Optional.of(List.copyOf(risks));
    }

    private void number(Point point) {
      if (indexOf.putIfAbsent(point, points.size()) == null) {
        points.add(point);
      }
    }

    private int index(Point point) {
      return indexOf.getOrDefault(point, 0);
    }

    private int place(Point point) {
      return placeOf[index(point)];
    }

    private DisjointPoints nets(Harness harness, DisjointPoints either) {
      DisjointPoints nets = new DisjointPoints(points.size());
      for (Wire wire : harness.wires()) {
        nets.union(index(wire.from()), index(wire.to()));
        either.union(index(wire.from()), index(wire.to()));
      }
      for (Link link : harness.links()) {
        nets.union(index(link.from()), index(link.to()));
        either.union(index(link.from()), index(link.to()));
      }
      return nets;
    }

    private void name(Harness harness) {
      for (Wire wire : harness.wires()) {
        String signal = wire.signal().strip();
        boolean isGround = GROUND.matcher(signal).matches();
        if (isGround || POWER.matcher(signal).matches()) {
          for (Wire.End end : Wire.End.values()) {
            if (concerned.get(index(wire.at(end)))) {
              (isGround ? ground : power).putIfAbsent(index(wire.at(end)), signal);
            }
          }
        }
      }
    }

    /** Where power and ground meet though neither list joins them; known by their earlier nets. */
    private Map<List<Integer>, Meeting> met(int step) {
      DisjointPoints nets = new DisjointPoints(concerned.cardinality());
      for (Bench.Ends ends : bench.wires()) {
        if (ends.from().isPresent() && ends.to().isPresent()) {
          nets.union(place(ends.from().get()), place(ends.to().get()));
        }
      }
      bench.links().forEach(link -> nets.union(place(link.from()), place(link.to())));
      Map<Integer, List<Integer>> groundsOf = new HashMap<>();
      for (int point : ground.keySet()) {
        groundsOf
            .computeIfAbsent(nets.firstOf(placeOf[point]), net -> new ArrayList<>())
            .add(point);
      }
      Map<List<Integer>, Meeting> met = new LinkedHashMap<>();
      for (int point : power.keySet()) {
        for (int other : groundsOf.getOrDefault(nets.firstOf(placeOf[point]), List.of())) {
          int net = before.firstOf(point);
          int otherNet = before.firstOf(other);
          if (net != otherNet && after.firstOf(point) != after.firstOf(other)) {
            met.putIfAbsent(List.of(net, otherNet), new Meeting(step, point, other));
          }
        }
      }
      return met;
    }

    private Risk risk(Meeting meeting, int untilStep) {
      return new Risk(
          meeting.step(),
          untilStep,
          points.get(meeting.power()),
          power.getOrDefault(meeting.power(), ""),
          points.get(meeting.ground()),
          ground.getOrDefault(meeting.ground(), ""));
    }
  }
}
