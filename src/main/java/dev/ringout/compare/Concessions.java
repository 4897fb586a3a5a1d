package dev.ringout.compare;

import dev.ringout.compare.IdleConcession.Why;
import dev.ringout.readings.Concession;
import dev.ringout.readings.Job;
import dev.ringout.readings.Person;
import dev.ringout.readings.Reading;
import dev.ringout.readings.Side;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Takes readings out of limits for accepted, where an inspector's word covers them. */
final class Concessions {
  /** No joint has more, whoever accepts it (common practice, no source). */
  private static final double MOST_OF_A_JOIN_OHMS = 10;

  /** Nothing that reads so many times what is listed is the part (common practice, no source). */
  private static final double MOST_TIMES_A_PART = 2;

  private final JobOfReading jobs;
  private final Optional<LocalDate> statedDay;
  private final List<Conceded> conceded = new ArrayList<>();
  private final List<IdleConcession> idle = new ArrayList<>();
  private final List<Judged> judged;

  private Concessions(List<Judged> judged, JobOfReading jobs, Optional<LocalDate> statedDay) {
    this.statedDay = statedDay;
    this.judged = new ArrayList<>(judged);
    this.jobs = jobs;
  }

  static Concessions of(
      List<Judged> judged,
      List<Concession> concessions,
      JobOfReading jobs,
      Optional<LocalDate> statedDay) {
    Concessions all = new Concessions(judged, jobs, statedDay);
    if (!concessions.isEmpty()) {
      Map<String, List<Integer>> bySubject = new HashMap<>();
      for (int i = 0; i < judged.size(); i++) {
        if (judged.get(i).outcome().fails()) {
          Reading reading = judged.get(i).reading();
          bySubject
              .computeIfAbsent(
                  subject(reading.kind(), reading.from(), reading.to(), reading.state().toString()),
                  key -> new ArrayList<>())
              .add(i);
        }
      }
      for (Concession concession : concessions) {
        all.apply(
            concession,
            bySubject.getOrDefault(
                subject(
                    concession.kind(),
                    concession.from(),
                    concession.to(),
                    concession.state().toString()),
                List.of()));
      }
    }
    return all;
  }

  /** The readings, those that are accepted among them as such. */
  List<Judged> judged() {
    return judged;
  }

  List<Conceded> conceded() {
    return conceded;
  }

  List<IdleConcession> idle() {
    return idle;
  }

  private void apply(Concession concession, List<Integer> places) {
    boolean covers = false;
    Why why = Why.NO_SUCH_READING;
    for (int place : places) {
      Judged one = judged.get(place);
      Optional<Why> against = against(concession, one);
      if (against.isEmpty()) {
        Judged accepted = one.as(one.observed(), Outcome.ACCEPTED);
        judged.set(place, accepted);
        conceded.add(new Conceded(accepted, concession));
        covers = true;
      } else {
        why = against.get();
      }
    }
    if (!covers) {
      idle.add(new IdleConcession(concession, why));
    }
  }

  private Optional<Why> against(Concession concession, Judged one) {
    Optional<Job> job = jobs.of(one.reading());
    String tester = job.map(sheet -> sheet.value("operator")).orElse("");
    String by = one.reading().by();
    boolean byTester =
        !Person.isNamed(concession.who())
            || Person.isSame(concession.who(), tester)
            || Person.isSame(concession.who(), by);
    if (byTester) {
      return Optional.of(Why.BY_THE_TESTER);
    }
    if (!Person.isNamed(tester) && !Person.isNamed(by)) {
      return Optional.of(Why.TESTER_NOT_STATED);
    }
    String serial = job.map(Job::serialNumber).orElse("");
    if (concession.serials().isPresent()
        && (serial.isEmpty() || !concession.serials().get().covers(serial))) {
      return Optional.of(Why.OTHER_UNIT);
    }
    if (concession.untilDay().isPresent()) {
      Optional<LocalDate> day =
          Stream.concat(jobs.day(one.reading()).stream(), statedDay.stream())
              .max(LocalDate::compareTo);
      if (day.isEmpty() || day.get().isAfter(concession.untilDay().get())) {
        return Optional.of(Why.EXPIRED);
      }
    }
    return isWithin(concession, one) ? Optional.empty() : Optional.of(Why.NOT_SO_FAR);
  }

  /** Only a value can be accepted: an open, a short and a word have none. */
  private static boolean isWithin(Concession concession, Judged one) {
    return one.reading()
        .measured()
        .value()
        .map(value -> isWithin(concession, one, value.ohms()))
        .orElse(false);
  }

  private static boolean isWithin(Concession concession, Judged one, double ohms) {
    return switch (one.outcome()) {
      case LOW_INSULATION ->
          one.observed() == Observed.APART
              && ohms >= concession.acceptedOhms()
              && one.reading().volts().isPresent();
      case RESISTIVE ->
          one.expected().isJoined()
              && ohms <= Math.min(concession.acceptedOhms(), MOST_OF_A_JOIN_OHMS);
      case PART_VALUE ->
          one.expected()
              .throughParts()
              .filter(
                  parts ->
                      ohms
                          <= Math.min(
                              concession.acceptedOhms(), MOST_TIMES_A_PART * parts.highOhms()))
              .isPresent();
      case CONFORMS, ACCEPTED, OPEN, UNEXPECTED_JOIN, NOT_TESTED, NOT_JUDGED -> false;
    };
  }

  /** Points, state and kind in one text, whichever side was named first. */
  private static String subject(Reading.Kind kind, Side from, Side to, String state) {
    List<String> sides = new ArrayList<>(List.of(side(from), side(to)));
    sides.sort(Comparator.naturalOrder());
    return kind + "\t" + String.join("\t", sides) + "\t" + state;
  }

  private static String side(Side side) {
    return side.isRest()
        ? side.toString()
        : side.points().stream()
            .map(point -> point.ref().toUpperCase(Locale.ROOT) + "-" + point.pin())
            .sorted()
            .collect(Collectors.joining("+"));
  }
}
