package dev.ringout.benchmarks.weaken;

import dev.ringout.benchmarks.weaken.Evidence.Reading;
import dev.ringout.benchmarks.weaken.Evidence.Rework;
import dev.ringout.benchmarks.weaken.Unit.Demand;
import dev.ringout.benchmarks.weaken.Values.Above;
import dev.ringout.benchmarks.weaken.Values.Ohms;
import dev.ringout.benchmarks.weaken.Values.Word;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;

/**
 * Says by brute force what a set of readings leaves open: each single fault that no reading that
 * stands would have shown, and each condition that is not met.
 */
final class Oracle {
  /** A beep says joined, no more: below any open, above any loop of wires. */
  private static final double BEEP_OHMS = 1000;

  private final Unit unit;
  private final Physics physics;
  private final List<Fault> faults;
  private final Map<Probing, Facts> known = new HashMap<>();

  /** What is not shown, and of which kind that is. */
  record Open(String kind, String text) {}

  /**
   * What a probing can read.
   *
   * @param good on the unit as listed
   * @param faulty with each fault
   */
  private record Facts(
      boolean join,
      boolean throughParts,
      boolean oneWay,
      boolean computed,
      Span good,
      List<Span> faulty) {}

  Oracle(Unit unit) {
    this.unit = unit;
    this.physics = new Physics(unit);
    this.faults = Faults.of(unit);
  }

  /** All that is not shown; nothing where the unit may conform. */
  List<Open> open(List<Folder> files, List<String> options) {
    Evidence evidence = SheetReader.read(unit, files, options);
    List<Open> open = new ArrayList<>();
    evidence.unread().forEach(row -> open.add(new Open("unread", row)));
    List<Reading> standing = standing(evidence);
    Conditions.check(unit.demand(), evidence, standing, open);
    for (Reading reading : standing) {
      if (fails(reading, evidence)) {
        open.add(new Open("failing", text(reading)));
      }
    }
    for (int number = 0; number < faults.size(); number++) {
      Fault fault = faults.get(number);
      int one = number;
      boolean shown =
          standing.stream().anyMatch(reading -> wouldShow(reading, evidence, fault, one));
      if (!shown) {
        open.add(new Open(fault.getClass().getSimpleName(), Faults.text(unit, fault)));
      }
    }
    return open;
  }

  private Facts facts(Probing probing) {
    return known.computeIfAbsent(
        probing,
        one ->
            new Facts(
                physics.isJoin(one),
                physics.isThroughParts(one),
                physics.isOneWay(one),
                physics.hasComputedLimit(one),
                physics.reading(one, Optional.empty()),
                faults.stream().map(fault -> physics.reading(one, Optional.of(fault))).toList()));
  }

  /** Of readings of the same points the last one measured. */
  private List<Reading> standing(Evidence evidence) {
    Map<Probing, List<Reading>> same = new LinkedHashMap<>();
    for (Reading reading : evidence.readings()) {
      Probing probing = reading.probing();
      boolean turn =
          !probing.isRest()
              && probing.from().get(0) > probing.to().get(0)
              && !facts(probing).oneWay();
      same.computeIfAbsent(turn ? probing.exchanged() : probing, key -> new ArrayList<>())
          .add(reading);
    }
    return same.values().stream().map(readings -> last(readings, evidence)).toList();
  }

  private static Reading last(List<Reading> same, Evidence evidence) {
    Reading last = same.get(0);
    boolean timed = same.stream().allMatch(one -> one.time().isPresent());
    for (Reading one : same) {
      boolean later =
          timed
              ? !one.time().orElseThrow().isBefore(last.time().orElseThrow())
              : reworksBefore(one, evidence) >= reworksBefore(last, evidence);
      last = later ? one : last;
    }
    return last;
  }

  private static long reworksBefore(Reading reading, Evidence evidence) {
    return evidence.reworks().stream().filter(rework -> rework.isBefore(reading)).count();
  }

  /** Whether a reading can't be of a unit that has the fault. */
  private boolean wouldShow(Reading reading, Evidence evidence, Fault fault, int number) {
    if (fault instanceof Fault.Leak && !reading.probing().insulation()) {
      return false;
    }
    for (Rework rework : evidence.reworks()) {
      if (!rework.isBefore(reading) && Faults.mayBeFrom(unit, fault, rework)) {
        return false;
      }
    }
    Optional<Span> said = said(reading, evidence);
    return said.isPresent() && said.get().excludes(facts(reading.probing()).faulty().get(number));
  }

  /** What a reading says; nothing where it may not count. */
  private Optional<Span> said(Reading reading, Evidence evidence) {
    Facts facts = facts(reading.probing());
    Evidence.Job job = evidence.jobs().get(reading.file());
    boolean insulation = reading.probing().insulation();
    if (insulation) {
      OptionalDouble volts = reading.volts().isPresent() ? reading.volts() : job.insulationVolts();
      if (facts.join()
          || facts.throughParts()
          || volts.orElse(0) < unit.demand().insulationVolts()) {
        return Optional.empty();
      }
    }
    if (reading.value() instanceof Ohms number) {
      return Optional.of(Span.of(number.ohms()));
    }
    if (reading.value() instanceof Above above) {
      OptionalDouble least = least(above, job, insulation);
      return least.isPresent()
          ? Optional.of(new Span(least.getAsDouble(), Double.POSITIVE_INFINITY))
          : Optional.empty();
    }
    boolean mayBeAWord =
        !insulation && facts.join() && (!facts.computed() || unit.demand().wordsProveJoins());
    return mayBeAWord && ((Word) reading.value()).good()
        ? Optional.of(new Span(0, BEEP_OHMS))
        : Optional.empty();
  }

  /** OL on continuity is an open where the range is not told; on insulation it is nothing then. */
  private static OptionalDouble least(Above above, Evidence.Job job, boolean insulation) {
    if (above.ohms().isPresent()) {
      return above.ohms();
    }
    OptionalDouble range = insulation ? job.insulationRange() : job.continuityRange();
    return range.isPresent() || insulation ? range : OptionalDouble.of(Demand.OPEN_MIN_OHMS);
  }

  /** Whether a reading shows something wrong, clear of its limits by a margin. */
  private boolean fails(Reading reading, Evidence evidence) {
    Facts facts = facts(reading.probing());
    if (reading.value() instanceof Word word) {
      return !word.good();
    }
    boolean insulation = reading.probing().insulation();
    if (insulation && (facts.join() || facts.throughParts())) {
      return false;
    }
    double most = facts.good().high();
    double low = facts.good().low();
    if (facts.join() && !facts.computed()) {
      most = Physics.FIXED_LIMIT_OHMS;
      low = 0;
    }
    if (reading.value() instanceof Above above) {
      Evidence.Job job = evidence.jobs().get(reading.file());
      double least = least(above, job, insulation).orElse(0);
      return least > most;
    }
    double ohms = ((Ohms) reading.value()).ohms();
    double margin = facts.join() ? 0.2 : insulation ? 0 : 0.02;
    return ohms > most * 1.02 + 0.002 || ohms < low * (1 - margin) - (insulation ? 0 : 0.002);
  }

  private String text(Reading reading) {
    Probing probing = reading.probing();
    return (probing.insulation() ? "insulation " : "continuity ")
        + probing.from().stream().map(unit.points()::get).toList()
        + " to "
        + (probing.isRest() ? "REST" : probing.to().stream().map(unit.points()::get).toList())
        + " "
        + reading.value();
  }

  /** The kinds of what is open, each once. */
  static Set<String> kinds(List<Open> open) {
    Set<String> kinds = new TreeSet<>();
    open.forEach(one -> kinds.add(one.kind()));
    return kinds;
  }
}
