package dev.ringout.benchmarks.faults;

import dev.ringout.diagnose.NextReading;
import dev.ringout.harness.Point;
import dev.ringout.harness.SwitchState;
import dev.ringout.readings.Measured;
import dev.ringout.readings.Meter;
import dev.ringout.readings.Reading;
import dev.ringout.readings.Side;
import dev.ringout.source.Place;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.TreeMap;

/** A test sheet: the steps of one reading habit, and what the meter showed. */
final class Sheet {
  /** The second side of a step against all other nets. */
  static final int REST = -1;

  private static final double LEADS_OHMS = 0.4;

  /** How much is read. */
  enum Habit {
    /** Every point against every other, in every state. */
    FULL_MATRIX,
    /** The fewest steps, and for every step that failed a sweep from its two ends. */
    SHEET_AND_SWEEPS,
    /** The fewest steps alone. */
    SHEET
  }

  /** One step. */
  record Step(boolean insulation, int from, int to, Map<String, String> state) {}

  private final Rig paper;
  private final Rig bench;
  final Map<Step, Double> steps = new LinkedHashMap<>();

  /** What steps showed when they were made once more. */
  private final Map<Step, Double> again = new LinkedHashMap<>();

  Sheet(Rig paper, Rig bench) {
    this.paper = paper;
    this.bench = bench;
  }

  Sheet read(Habit habit) {
    if (habit == Habit.FULL_MATRIX) {
      fullMatrix();
    } else {
      fewest();
    }
    if (habit == Habit.SHEET_AND_SWEEPS) {
      sweeps();
    }
    return this;
  }

  void add(boolean insulation, int from, int to, Map<String, String> state) {
    Step step = new Step(insulation, from, to, state);
    if (from != to && !steps.containsKey(step)) {
      steps.put(step, measure(step, bench));
    }
  }

  /** Makes a reading that was asked for. */
  void add(NextReading next) {
    boolean insulation = next.kind() == Reading.Kind.INSULATION;
    int to = next.to().equals("REST") ? REST : paper.point(next.to());
    Step step = new Step(insulation, paper.point(next.from()), to, next.state().positions());
    if (steps.containsKey(step)) {
      again.put(step, measure(step, bench));
    } else {
      steps.put(step, measure(step, bench));
    }
  }

  /** Does to the sheet what a hand may do to it while the unit is sound. */
  void spoil(Kind kind, Random random) {
    List<Step> continuity = steps.keySet().stream().filter(step -> !step.insulation()).toList();
    if (kind == Kind.LEADS) {
      for (Step step : continuity) {
        steps.computeIfPresent(step, (key, ohms) -> ohms + LEADS_OHMS);
      }
    } else if (kind == Kind.ROW_SLIP) {
      for (int row = random.nextInt(continuity.size() - 2); row < continuity.size(); row++) {
        boolean last = row + 1 == continuity.size();
        steps.put(
            continuity.get(row),
            last ? Double.NaN : steps.getOrDefault(continuity.get(row + 1), Double.NaN));
      }
    } else if (kind == Kind.WRONG_PIN) {
      List<Step> pairs = continuity.stream().filter(step -> step.to() != REST).toList();
      Step step = pairs.get(random.nextInt(pairs.size()));
      List<Integer> pins = paper.pinsOf(paper.itemOf(step.to()));
      int next = pins.indexOf(step.to()) + (random.nextBoolean() ? 1 : -1);
      if (next >= 0 && next < pins.size() && pins.get(next) != step.from()) {
        steps.put(step, bench.continuity(step.from(), pins.get(next), step.state()));
      }
    }
  }

  double measure(Step step, Rig rig) {
    if (step.insulation()) {
      return step.to() == REST
          ? rig.insulationToRest(step.from(), paper, step.state())
          : rig.insulation(step.from(), step.to(), step.state());
    }
    return step.to() == REST
        ? rig.continuityToRest(step.from(), paper, step.state())
        : rig.continuity(step.from(), step.to(), step.state());
  }

  private boolean hasPart(int point, Map<String, String> state) {
    int[] of = paper.nodes(state).of;
    return paper.parts.stream()
        .anyMatch(part -> of[part.ends[0]] == of[point] || of[part.ends[1]] == of[point]);
  }

  private List<Integer> hubs() {
    int[] of = paper.nodes(Map.of()).of;
    Map<Integer, Integer> first = new LinkedHashMap<>();
    for (int i = 0; i < of.length; i++) {
      first.putIfAbsent(of[i], i);
    }
    return List.copyOf(first.values());
  }

  private void fullMatrix() {
    int size = paper.points.size();
    for (Map<String, String> state : paper.states()) {
      for (int from = 0; from < size; from++) {
        for (int to = from + 1; to < size; to++) {
          add(false, from, to, state);
        }
      }
    }
    diodesBothWays();
    List<Integer> hubs = hubs();
    for (int i = 0; i < hubs.size(); i++) {
      if (!hasPart(hubs.get(i), Map.of())) {
        add(true, hubs.get(i), REST, Map.of());
        for (int j = i + 1; j < hubs.size(); j++) {
          if (!hasPart(hubs.get(j), Map.of())) {
            add(true, hubs.get(i), hubs.get(j), Map.of());
          }
        }
      }
    }
  }

  private void diodesBothWays() {
    for (Rig.Component part : paper.parts) {
      add(false, part.ends[0], part.ends[1], Map.of());
      if (part.diode) {
        add(false, part.ends[1], part.ends[0], Map.of());
      }
    }
  }

  private void fewest() {
    int[] of = paper.nodes(Map.of()).of;
    List<Integer> hubs = hubs();
    for (int hub : hubs) {
      for (int point = 0; point < of.length; point++) {
        if (of[point] == of[hub]) {
          add(false, hub, point, Map.of());
        }
      }
    }
    diodesBothWays();
    for (Map<String, String> state : paper.states()) {
      int[] now = paper.nodes(state).of;
      for (Rig.Joint joint : paper.joints) {
        if (!joint.ofSwitch.isEmpty()) {
          add(false, joint.ends[0], joint.ends[1], state);
          for (int point = 0; point < now.length && !state.isEmpty(); point++) {
            if (now[point] == now[joint.ends[0]]) {
              add(false, joint.ends[0], point, state);
            }
          }
        }
      }
    }
    for (int hub : hubs) {
      if (!hasPart(hub, Map.of())) {
        add(false, hub, REST, Map.of());
        add(true, hub, REST, Map.of());
      } else {
        for (int other : hubs) {
          if (of[other] != of[hub]) {
            add(false, hub, other, Map.of());
          }
        }
      }
    }
  }

  /** From both ends of a step that failed: the pins of both items, and a point of every net. */
  private void sweeps() {
    List<Integer> hubs = hubs();
    for (Step step : List.copyOf(steps.keySet())) {
      if (!differs(step)) {
        continue;
      }
      for (int point :
          step.to() == REST ? new int[] {step.from()} : new int[] {step.from(), step.to()}) {
        for (int hub : hubs) {
          if (!hasPart(hub, Map.of())) {
            add(step.insulation(), point, hub, step.state());
          }
        }
        if (!step.insulation()) {
          for (int end :
              step.to() == REST ? new int[] {point} : new int[] {step.from(), step.to()}) {
            bench.pinsOf(bench.itemOf(end)).forEach(pin -> add(false, point, pin, step.state()));
          }
        }
      }
    }
  }

  private boolean differs(Step step) {
    double now = steps.getOrDefault(step, 0.0);
    double listed = measure(step, paper);
    boolean sameKind = Double.isFinite(now) == Double.isFinite(listed);
    return !sameKind || (Double.isFinite(now) && (now > listed * 1.5 || now < listed / 1.5));
  }

  /** How many steps show something else than the unit on paper would. */
  long different() {
    return steps.keySet().stream().filter(this::differs).count();
  }

  /** Whether a unit would show each two sides joined or apart as this sheet has them. */
  boolean joinsAsIn(Rig rig) {
    return steps.entrySet().stream()
        .filter(step -> !step.getKey().insulation())
        .allMatch(
            step ->
                Double.isFinite(step.getValue()) == Double.isFinite(measure(step.getKey(), rig)));
  }

  static Point point(String name) {
    int dash = name.indexOf('-');
    return new Point(name.substring(0, dash), name.substring(dash + 1));
  }

  private Side side(int point) {
    return point == REST
        ? new Side.Rest()
        : new Side.Points(List.of(point(paper.points.get(point))));
  }

  /** The readings, each in a row of its own. */
  List<Reading> readings(String file) {
    List<Reading> readings = new ArrayList<>();
    Map<Boolean, Integer> rows = new HashMap<>();
    steps.forEach((step, ohms) -> readings.add(reading(file, step, ohms, rows)));
    again.forEach((step, ohms) -> readings.add(reading(file, step, ohms, rows)));
    return readings;
  }

  private Reading reading(String file, Step step, double ohms, Map<Boolean, Integer> rows) {
    int row = rows.merge(step.insulation(), 1, Integer::sum) + 1;
    Measured measured =
        Double.isInfinite(ohms)
            ? new Measured.OverRange(OptionalDouble.of(Rig.OVER_RANGE_OHMS))
            : Double.isNaN(ohms)
                ? new Measured.NotTested()
                : new Measured.Value(rounded(ohms), 0.0005);
    return new Reading(
        step.insulation() ? Reading.Kind.INSULATION : Reading.Kind.CONTINUITY,
        "" + row,
        side(step.from()),
        side(step.to()),
        new SwitchState(new TreeMap<>(step.state())),
        measured,
        Meter.UNKNOWN,
        step.insulation() ? OptionalDouble.of(500) : OptionalDouble.empty(),
        OptionalDouble.empty(),
        Optional.empty(),
        "",
        "",
        new Place(file, step.insulation() ? "Insulation" : "Continuity", row, 4));
  }

  private static double rounded(double ohms) {
    return Math.round(ohms * 1000) / 1000.0;
  }
}
