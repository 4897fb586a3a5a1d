package dev.ringout.benchmarks.exam;

import dev.ringout.benchmarks.exam.Edit.What;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;

/** Plants faults that the rows to be read would show. */
final class Planter {
  /** The sort of a fault. */
  enum Sort {
    OPEN,
    SHORT,
    SWAP,
    MOVED,
    JUMPER,
    POOR,
    GAUGE,
    LEAK,
    PART
  }

  private final Box listed;
  private final Bench bench;
  private final Random random;

  Planter(Box listed, Bench bench, Random random) {
    this.listed = listed;
    this.bench = bench;
    this.random = random;
  }

  /** So many faults, or fewer where no more were found to show. */
  List<List<Edit>> plant(int count, List<Row> rows, Meter meter) {
    List<List<Edit>> planted = new ArrayList<>();
    List<Edit> all = new ArrayList<>();
    for (int tries = 0; tries < 200 && planted.size() < count; tries++) {
      Sort sort = Sort.values()[random.nextInt(Sort.values().length)];
      Optional<List<Edit>> one = one(sort);
      if (one.isEmpty() || overlaps(one.get(), all) || !isShown(one.get(), all, rows, meter)) {
        continue;
      }
      planted.add(one.get());
      all.addAll(one.get());
    }
    return planted;
  }

  /** Two faults of one net are one story of their own, which no sheet need tell apart. */
  private boolean overlaps(List<Edit> one, List<Edit> all) {
    List<Integer> mine = touched(one);
    List<Integer> theirs = touched(all);
    return mine.stream().anyMatch(theirs::contains);
  }

  private List<Integer> touched(List<Edit> edits) {
    Joined net = bench.nets("");
    List<Integer> nets = new ArrayList<>();
    for (Edit edit : edits) {
      Marker.points(listed, edit).forEach(point -> nets.add(net.of(point)));
    }
    return nets;
  }

  /**
   * Whether a row shows it, by itself and beside the others, and what is joined changes with it.
   */
  private boolean isShown(List<Edit> one, List<Edit> others, List<Row> rows, Meter meter) {
    Box alone = Edit.applied(listed, one);
    if (one.stream().anyMatch(edit -> edit.what().joins()) && Marker.sameJoins(listed, alone)) {
      return false;
    }
    Map<String, Solver> solvers = Bench.solvers(alone);
    if (rows.stream().noneMatch(row -> bench.shows(row, solvers, meter))) {
      return false;
    }
    if (others.isEmpty()) {
      return true;
    }
    List<Edit> all = new ArrayList<>(others);
    all.addAll(one);
    Map<String, Solver> together = Bench.solvers(Edit.applied(listed, all));
    return rows.stream()
        .anyMatch(row -> bench.shows(row, solvers, meter) && bench.shows(row, together, meter));
  }

  /** Whether each of some faults is shown by a row of those. */
  boolean areShown(List<List<Edit>> planted, List<Row> rows, Meter meter) {
    return planted.stream().allMatch(one -> isShown(one, List.of(), rows, meter));
  }

  private Optional<List<Edit>> one(Sort sort) {
    return switch (sort) {
      case OPEN -> conductor(Box.Sort.WIRE).map(cond -> List.of(Edit.of(What.OPEN, cond.name())));
      case JUMPER -> conductor(Box.Sort.LINK).map(cond -> List.of(Edit.of(What.OPEN, cond.name())));
      case SHORT ->
          neighbours().map(pair -> List.of(Edit.between(What.SHORT, pair[0], pair[1], bridge())));
      case LEAK ->
          neighbours().map(pair -> List.of(Edit.between(What.LEAK, pair[0], pair[1], leak())));
      case POOR -> conductor(Box.Sort.WIRE).map(this::poor);
      case GAUGE -> conductor(Box.Sort.WIRE).flatMap(this::gauge);
      case SWAP -> swap();
      case MOVED -> moved();
      case PART -> part();
    };
  }

  private double bridge() {
    return random.nextInt(4) > 0
        ? 0.01 + 0.15 * random.nextDouble()
        : 0.4 + 2.6 * random.nextDouble();
  }

  private double leak() {
    return Math.pow(10, 4.8 + 2.6 * random.nextDouble());
  }

  private List<Edit> poor(Box.Cond wire) {
    double least = Math.max(listed.gauges ? 0.3 : 1.3, 0.6 * wire.ohms());
    return List.of(Edit.of(What.POOR, wire.name(), least * (1 + 5 * random.nextDouble())));
  }

  /** A thinner wire, such that the poor joint is not as likely. */
  private Optional<List<Edit>> gauge(Box.Cond wire) {
    int thinner = wire.awg() + 4;
    if (!listed.gauges || thinner > 26 || wire.metres() < 2) {
      return Optional.empty();
    }
    return Optional.of(
        List.of(Edit.of(What.GAUGE, wire.name(), Maker.ohmsOf(thinner, wire.metres()))));
  }

  private Optional<Box.Cond> conductor(Box.Sort sort) {
    List<Box.Cond> some = listed.conds.stream().filter(one -> one.sort() == sort).toList();
    return some.isEmpty() ? Optional.empty() : Optional.of(some.get(random.nextInt(some.size())));
  }

  /** Two points of an item that stand side by side. */
  private Optional<int[]> neighbours() {
    int a = random.nextInt(listed.points.size() - 1);
    int b = a + 1;
    return listed.item(a).equals(listed.item(b)) ? Optional.of(new int[] {a, b}) : Optional.empty();
  }

  private Optional<List<Edit>> swap() {
    Optional<Box.Cond> one = conductor(Box.Sort.WIRE);
    Optional<Box.Cond> other = conductor(Box.Sort.WIRE);
    if (one.isEmpty() || other.isEmpty()) {
      return Optional.empty();
    }
    int a = one.get().a();
    int b = other.get().a();
    if (a == b
        || !listed.item(a).equals(listed.item(b))
        || one.get().b() == b
        || other.get().b() == a) {
      return Optional.empty();
    }
    return Optional.of(
        List.of(Edit.moved(one.get().name(), a, b), Edit.moved(other.get().name(), b, a)));
  }

  private Optional<List<Edit>> moved() {
    return conductor(Box.Sort.WIRE)
        .flatMap(
            wire -> {
              int from = random.nextBoolean() ? wire.a() : wire.b();
              int to = from + List.of(-1, 1, 1, 2).get(random.nextInt(4));
              boolean fits =
                  to >= 0
                      && to < listed.points.size()
                      && to != wire.a()
                      && to != wire.b()
                      && listed.item(from).equals(listed.item(to));
              return fits
                  ? Optional.of(List.of(Edit.moved(wire.name(), from, to)))
                  : Optional.empty();
            });
  }

  /** Without another one nothing shows that the meter opens diodes at all. */
  private boolean hasAnotherDiode() {
    return listed.parts.stream()
            .filter(part -> part.sort() == Box.PartSort.DIODE && !isBesideAWinding(part))
            .count()
        > 1;
  }

  /** Through the winding the meter reads the same, whatever the diode does. */
  private boolean isBesideAWinding(Box.Part diode) {
    return listed.parts.stream()
        .anyMatch(
            part ->
                part.sort() == Box.PartSort.WINDING
                    && listed.item(part.a()).equals(listed.item(diode.a())));
  }

  private Optional<List<Edit>> part() {
    if (listed.parts.isEmpty()) {
      return Optional.empty();
    }
    Box.Part part = listed.parts.get(random.nextInt(listed.parts.size()));
    What what =
        switch (part.sort()) {
          case DIODE ->
              hasAnotherDiode() && random.nextBoolean() ? What.PART_MISSING : What.PART_TURNED;
          case RESISTOR, WINDING, LAMP ->
              random.nextBoolean() ? What.PART_VALUE : What.PART_MISSING;
          case SUPPRESSOR, CAPACITOR -> What.OTHER;
        };
    double ohms = part.listed() * (random.nextBoolean() ? 0.4 : 2.2);
    return what == What.OTHER
        ? Optional.empty()
        : Optional.of(List.of(Edit.of(what, part.ref(), ohms)));
  }
}
