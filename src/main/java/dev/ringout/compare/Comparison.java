package dev.ringout.compare;

import dev.ringout.circuit.Circuit;
import dev.ringout.circuit.JoinLimits;
import dev.ringout.readings.Reading;
import dev.ringout.readings.ReadingSet;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/**
 * Every reading with its verdict.
 *
 * @param inForce the readings that stand, in the order of the files; steps not tested among them
 * @param replaced those that a later reading of the same points replaces
 * @param contradictions what can't all be true
 * @param overtaken readings of what was opened or touched after they were taken: kept, and no proof
 * @param conceded those in force that are accepted out of limits
 * @param idleConcessions words of an inspector that cover nothing
 */
public record Comparison(
    List<Judged> inForce,
    List<Replaced> replaced,
    List<Contradiction> contradictions,
    List<Judged> overtaken,
    List<Conceded> conceded,
    List<IdleConcession> idleConcessions) {

  /** Judges every reading. */
  public static Comparison of(Circuit circuit, JoinLimits limits, ReadingSet readings) {
    return of(circuit, limits, readings, Optional.empty());
  }

  /**
   * Judges every reading.
   *
   * @param statedDay the day of the test, as somebody states it beside the sheets
   */
  public static Comparison of(
      Circuit circuit, JoinLimits limits, ReadingSet readings, Optional<LocalDate> statedDay) {
    JobOfReading jobs = new JobOfReading(readings.jobs());
    Judge judge = new Judge(circuit, limits, jobs);
    Reworks reworks = Reworks.of(circuit, readings);
    List<Judged> all = new ArrayList<>(readings.readings().size());
    List<Judged> overtaken = new ArrayList<>();
    for (Reading reading : readings.readings()) {
      Judged judged = judge.judge(reading);
      reworks
          .touchedSince(reading, judged.probing())
          .ifPresentOrElse(touched -> all.add(judged.before(touched)), () -> overtaken.add(judged));
    }
    Standing standing = Standing.of(circuit, all, jobs);
    Concessions concessions =
        Concessions.of(
            DiodePairs.judge(circuit, standing.inForce()), readings.concessions(), jobs, statedDay);
    List<Judged> judged = List.copyOf(concessions.judged());
    return new Comparison(
        judged,
        List.copyOf(standing.replaced()),
        Contradictions.find(circuit, judged),
        List.copyOf(overtaken),
        List.copyOf(concessions.conceded()),
        List.copyOf(concessions.idle()));
  }

  /** Those in force that an earlier reading of the same points shows too. */
  public Set<Judged> readTwiceAlike() {
    return replaced.stream()
        .filter(one -> !one.changed())
        .map(Replaced::later)
        .collect(Collectors.toUnmodifiableSet());
  }

  /** Readings that stand, and nothing else. */
  public static Comparison inForce(List<Judged> judged) {
    return new Comparison(judged, List.of(), List.of(), List.of(), List.of(), List.of());
  }

  /** These readings and others besides, as if they had been taken together. */
  public Comparison and(Circuit circuit, Comparison others) {
    List<Judged> all = new ArrayList<>(inForce);
    all.addAll(others.inForce);
    return new Comparison(
        List.copyOf(DiodePairs.judge(circuit, all)),
        replaced,
        contradictions,
        overtaken,
        conceded,
        idleConcessions);
  }

  /**
   * The same readings held against another circuit with the same points: the unit as it was found.
   *
   * @param changed readings that it may make a difference to; only those between two points are
   *     judged anew, since it is the paper that says what the rest of a net is
   */
  public Comparison comparedWith(Circuit found, JoinLimits limits, Predicate<Judged> changed) {
    return comparedWith(found, limits, changed, false);
  }

  /**
   * The same, for what values say: one that is as expected by the list is not high because a stray
   * join, of whatever ohms, lies beside its way.
   */
  public Comparison valuesComparedWith(
      Circuit found, JoinLimits limits, Predicate<Judged> changed) {
    return comparedWith(found, limits, changed, true);
  }

  private Comparison comparedWith(
      Circuit found, JoinLimits limits, Predicate<Judged> changed, boolean goodStayGood) {
    Judge judge = new Judge(found, limits, JobOfReading.NONE);
    List<Judged> anew =
        inForce.stream()
            .map(
                judged ->
                    judged.probing().isPair()
                            && judged.reading().kind() == Reading.Kind.CONTINUITY
                            && changed.test(judged)
                            && !(goodStayGood && judged.provesJoin())
                        ? judge.judge(judged.reading())
                        : judged)
            .toList();
    return new Comparison(anew, replaced, contradictions, overtaken, conceded, idleConcessions);
  }

  /**
   * The same readings with so much more in the meter's leads. What that would make too low stays as
   * it was.
   */
  Comparison withLeads(Circuit circuit, JoinLimits limits, Map<Judged, Double> leads) {
    Judge judge = new Judge(circuit, limits, JobOfReading.NONE);
    List<Judged> anew =
        inForce.stream()
            .map(
                judged -> {
                  double ohms = leads.getOrDefault(judged, 0.0);
                  boolean isJoinRead =
                      judged.outcome() == Outcome.CONFORMS || judged.outcome() == Outcome.RESISTIVE;
                  if (ohms <= 0 || !judged.expected().isJoined() || !isJoinRead) {
                    return judged;
                  }
                  Reading reading = judged.reading();
                  Judged other =
                      judge.judge(reading.with(LeadEstimate.with(reading.meter(), ohms)));
                  return other.value() == ValueVerdict.LOW && judged.value() != ValueVerdict.HIGH
                      ? judged
                      : other.before(judged.touchedSince());
                })
            .toList();
    return new Comparison(anew, replaced, contradictions, overtaken, conceded, idleConcessions);
  }

  /** The same with some rows as they should have been written. */
  Comparison rewritten(Circuit circuit, JoinLimits limits, Map<Judged, Reading> rows) {
    Judge judge = new Judge(circuit, limits, JobOfReading.NONE);
    List<Judged> anew =
        inForce.stream()
            .map(
                judged ->
                    rows.containsKey(judged)
                        ? rewritten(
                            judged, judge.judge(rows.getOrDefault(judged, judged.reading())))
                        : judged)
            .toList();
    return new Comparison(
        List.copyOf(DiodePairs.judge(circuit, anew)),
        replaced,
        contradictions.stream()
            .filter(
                contradiction ->
                    !rows.containsKey(contradiction.apart())
                        && contradiction.joins().stream().noneMatch(rows::containsKey))
            .toList(),
        overtaken,
        conceded,
        idleConcessions);
  }

  /** A good value that would be too low elsewhere was written where it belongs. */
  private static Judged rewritten(Judged judged, Judged anew) {
    return anew.value() == ValueVerdict.LOW && judged.value() == ValueVerdict.AS_EXPECTED
        ? judged
        : anew.before(judged.touchedSince());
  }

  /** The same without some readings: what they show is not taken for the unit's. */
  public Comparison without(Collection<Judged> doubtful) {
    if (doubtful.isEmpty()) {
      return this;
    }
    Set<Judged> out = Set.copyOf(doubtful);
    return new Comparison(
        inForce.stream().filter(judged -> !out.contains(judged)).toList(),
        replaced,
        contradictions.stream()
            .filter(
                contradiction ->
                    !out.contains(contradiction.apart())
                        && contradiction.joins().stream().noneMatch(out::contains))
            .toList(),
        overtaken,
        conceded,
        idleConcessions);
  }

  /** Readings of one kind that were made (and judged or not). */
  public long made(Reading.Kind kind) {
    return inForce.stream()
        .filter(one -> one.reading().kind() == kind && one.reading().measured().made())
        .count();
  }

  /** Readings in force with an outcome. */
  public List<Judged> with(Outcome outcome) {
    return inForce.stream().filter(one -> one.outcome() == outcome).toList();
  }

  /** Readings in force that show something wrong. */
  public List<Judged> failing() {
    return inForce.stream().filter(one -> one.outcome().fails()).toList();
  }

  /** Readings in force that are a word without a number. */
  public long unquantified() {
    return inForce.stream().filter(one -> one.reading().measured().isWord()).count();
  }
}
