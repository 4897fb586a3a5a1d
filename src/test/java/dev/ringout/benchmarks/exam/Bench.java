package dev.ringout.benchmarks.exam;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;

/** A unit on a bench, with its list beside it: what is read, and what the meter shows. */
final class Bench {
  /** What is read. */
  enum Reads {
    EVERY_PAIR,
    SHEET,
    SHEET_AND_SWEEPS,
    HALF_SHEET
  }

  private static final double OPEN_OHMS = 100_000;
  private static final double INSULATED_OHMS = 100e6;
  private static final double JOINT_OHMS = 1;

  private final Box listed;
  private final Map<String, Solver> asListed = new HashMap<>();
  private final Map<String, Joined> nets = new HashMap<>();

  Bench(Box listed) {
    this.listed = listed;
    for (String state : listed.states()) {
      asListed.put(state, new Solver(listed, state));
      nets.put(state, listed.joined(state));
    }
  }

  Joined nets(String state) {
    return nets.getOrDefault(state, listed.joined(state));
  }

  /** The rows of a sheet, nothing read yet. */
  List<Row> rows(Reads reads, Random random) {
    Map<String, Row> rows = new LinkedHashMap<>();
    if (reads == Reads.EVERY_PAIR) {
      for (int a = 0; a < listed.points.size(); a++) {
        for (int b = a + 1; b < listed.points.size(); b++) {
          put(rows, Row.pair(a, b, ""));
        }
      }
    }
    for (Box.Cond cond : listed.conds) {
      if (cond.sort() == Box.Sort.CONTACT) {
        String ref = cond.position().substring(0, cond.position().indexOf('='));
        listed.states().stream()
            .filter(state -> state.isEmpty() || state.startsWith(ref + "="))
            .forEach(state -> put(rows, Row.pair(cond.a(), cond.b(), state)));
      } else {
        put(rows, Row.pair(cond.a(), cond.b(), ""));
      }
    }
    listed.parts.forEach(part -> put(rows, Row.pair(part.a(), part.k(), "")));
    List<Row> all = new ArrayList<>(rows.values());
    all.addAll(insulation());
    if (reads == Reads.HALF_SHEET) {
      all.removeIf(row -> random.nextBoolean());
    }
    return all;
  }

  private static void put(Map<String, Row> rows, Row row) {
    int a = Math.min(row.plus()[0], row.minus()[0]);
    int b = Math.max(row.plus()[0], row.minus()[0]);
    rows.putIfAbsent(a + " " + b + " " + row.state(), row);
  }

  /** Each net against the rest; nets that parts join are tied together. */
  private List<Row> insulation() {
    Joined net = nets("");
    Joined tied = listed.joined("");
    listed.parts.forEach(part -> tied.join(part.a(), part.k()));
    Map<Integer, Map<Integer, Integer>> groups = new LinkedHashMap<>();
    for (int point = 0; point < listed.points.size(); point++) {
      groups
          .computeIfAbsent(tied.of(point), one -> new LinkedHashMap<>())
          .putIfAbsent(net.of(point), point);
    }
    return groups.values().stream()
        .map(group -> Row.rest(group.values().stream().mapToInt(Integer::intValue).toArray()))
        .toList();
  }

  /** The other side of a reading against the rest, by the list. */
  int[] rest(Row row) {
    Joined net = nets(row.state());
    Set<Integer> mine = new LinkedHashSet<>();
    for (int point : row.plus()) {
      mine.add(net.of(point));
    }
    List<Integer> others = new ArrayList<>();
    for (int point = 0; point < listed.points.size(); point++) {
      if (!mine.contains(net.of(point))) {
        others.add(point);
      }
    }
    return others.stream().mapToInt(Integer::intValue).toArray();
  }

  /** The true ohms of a row on a unit. */
  double ohms(Row row, Map<String, Solver> unit, boolean turned) {
    int[] minus = row.minus().length == 0 ? rest(row) : row.minus();
    if (minus.length == 0) {
      return Double.POSITIVE_INFINITY;
    }
    Solver solver = unit.get(row.state());
    if (solver == null) {
      throw new IllegalStateException("no state " + row.state());
    }
    return turned ? solver.between(minus, row.plus()) : solver.between(row.plus(), minus);
  }

  static Map<String, Solver> solvers(Box box) {
    Map<String, Solver> solvers = new HashMap<>();
    box.states().forEach(state -> solvers.put(state, new Solver(box, state)));
    return solvers;
  }

  /** Whether the row would read otherwise on that unit than on one as listed. */
  boolean shows(Row row, Map<String, Solver> unit, Meter meter) {
    if (shows(row, unit, meter, false)) {
      return true;
    }
    return isDiode(row) && shows(row, unit, meter, true);
  }

  private boolean shows(Row row, Map<String, Solver> unit, Meter meter, boolean turned) {
    double good = ohms(row, asListed, turned);
    double now = ohms(row, unit, turned);
    if (row.insulation()) {
      return now < INSULATED_OHMS * 0.8 != good < INSULATED_OHMS * 0.8;
    }
    if (good >= OPEN_OHMS || now >= OPEN_OHMS) {
      return good >= OPEN_OHMS != now >= OPEN_OHMS;
    }
    // A list without gauges has the fixed limit alone.
    double fixed = listed.gauges || good > 10 ? 0 : JOINT_OHMS;
    return Math.abs(now - good) > fixed + 0.35 * good + 0.03 + 2 * meter.mayBeOff(good);
  }

  private boolean isDiode(Row row) {
    return row.minus().length == 1
        && listed.parts.stream()
            .filter(part -> part.sort() == Box.PartSort.DIODE)
            .anyMatch(part -> part.a() == row.plus()[0] && part.k() == row.minus()[0]);
  }

  /** The rows as the meter shows them. */
  List<Row> read(List<Row> rows, Box unit, Meter meter, Random random) {
    Map<String, Solver> solvers = solvers(unit);
    List<Row> read = new ArrayList<>();
    int at = 0;
    for (Row row : rows) {
      double progress = (double) at++ / rows.size();
      read.add(reading(row, solvers, meter, progress, random));
    }
    return read;
  }

  /** A row as the meter shows it once the sheet is done. */
  Row reading(Row row, Map<String, Solver> unit, Meter meter, Random random) {
    return reading(row, unit, meter, 1, random);
  }

  private Row reading(
      Row row, Map<String, Solver> unit, Meter meter, double progress, Random random) {
    double ohms = ohms(row, unit, false);
    if (row.insulation()) {
      return row.showing(Meter.insulation(ohms, random));
    }
    String turned = isDiode(row) ? meter.shows(ohms(row, unit, true), progress, random) : "";
    return row.showing(meter.shows(ohms, progress, random), turned);
  }

  /** What a hand sweeps after a sheet: from both ends of what failed to all that may answer. */
  List<Row> sweeps(List<Row> rows, Box unit) {
    Map<String, Solver> solvers = solvers(unit);
    List<Row> sweeps = new ArrayList<>();
    Map<String, Row> made = new LinkedHashMap<>();
    rows.stream()
        .filter(row -> row.minus().length == 1 && row.plus().length == 1)
        .forEach(row -> put(made, row));
    Map<String, Row> more = new LinkedHashMap<>();
    for (Row row : rows) {
      double good = ohms(row, asListed, false);
      double now = ohms(row, solvers, false);
      if (row.insulation() && now < INSULATED_OHMS) {
        for (int point : row.plus()) {
          sweep(more, point, "");
        }
      } else if (!row.insulation() && good < OPEN_OHMS && now > OPEN_OHMS) {
        sweep(more, row.plus()[0], row.state());
        sweep(more, row.minus()[0], row.state());
      }
    }
    more.forEach(
        (key, row) -> {
          if (!made.containsKey(key)) {
            sweeps.add(row);
          }
        });
    return sweeps;
  }

  /** To every point of another net, or of the same item; of other nets one point. */
  private void sweep(Map<String, Row> more, int from, String state) {
    boolean small = listed.points.size() <= 150;
    Joined net = nets(state);
    Set<Integer> seen = new LinkedHashSet<>();
    for (int to = 0; to < listed.points.size(); to++) {
      if (to != from
          && (seen.add(net.of(to)) || small || listed.item(to).equals(listed.item(from)))) {
        put(more, Row.pair(from, to, state));
      }
    }
  }
}
