package dev.ringout.compare;

import dev.ringout.circuit.Circuit;
import dev.ringout.circuit.Nets;
import dev.ringout.circuit.Probing;
import dev.ringout.harness.SwitchState;
import dev.ringout.readings.Day;
import dev.ringout.readings.Job;
import dev.ringout.readings.Jobs;
import dev.ringout.readings.Reading;
import dev.ringout.readings.ReadingSet;
import dev.ringout.readings.Rework;
import dev.ringout.readings.TimeOfReading;
import dev.ringout.source.Place;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Which readings were taken before what they touch was opened.
 *
 * <p>A reading counts as taken after a rework only where that is shown: it is dated later, or the
 * sheet Rework of its own file says so, as a sheet does that was planned after it. What is dated
 * earlier was taken before, whatever the sheet says; and so was what has no date in a sheet of an
 * earlier day, or beside readings that are dated earlier. In doubt a reading was taken before.
 */
final class Reworks {
  private final Circuit circuit;
  private final List<Rework> reworks;
  private final Jobs jobs;

  /** The earliest dated reading of each file. */
  private final Map<String, LocalDateTime> earliest = new HashMap<>();

  /** Touched nets, by the reworks that a reading was taken before. */
  private final Map<BitSet, TouchedNets> touchedBy = new HashMap<>();

  private final Map<BitSet, Map<SwitchState, BitSet>> touchedIn = new HashMap<>();

  private Reworks(Circuit circuit, List<Rework> reworks, Jobs jobs) {
    this.circuit = circuit;
    this.reworks = reworks;
    this.jobs = jobs;
  }

  /** The reworks that stand beside some readings. */
  static Reworks of(Circuit circuit, ReadingSet readings) {
    Reworks all = new Reworks(circuit, readings.reworks(), new Jobs(readings.jobs()));
    if (!readings.reworks().isEmpty()) {
      readings.readings().forEach(all::note);
    }
    return all;
  }

  private void note(Reading reading) {
    dated(reading.time())
        .ifPresent(
            time ->
                earliest.merge(
                    file(reading), time, (one, other) -> one.isBefore(other) ? one : other));
  }

  /**
   * The nets that were touched since a reading was taken; absent where any that its probes were
   * joined to is among them, so that nothing of it stands.
   */
  Optional<TouchedNets> touchedSince(Reading reading, Probing probing) {
    if (reworks.isEmpty()) {
      return Optional.of(TouchedNets.NONE);
    }
    BitSet since = since(reading);
    if (since.isEmpty()) {
      return Optional.of(TouchedNets.NONE);
    }
    Nets nets = circuit.in(probing.state());
    BitSet touched =
        touchedIn
            .computeIfAbsent(since, which -> new HashMap<>())
            .computeIfAbsent(probing.state(), state -> touched(since, nets));
    if (probing.points().anyMatch(point -> touched.get(nets.of(point)))) {
      return Optional.empty();
    }
    return Optional.of(
        touchedBy.computeIfAbsent(
            since, which -> new TouchedNets(touched(which, circuit.normal()))));
  }

  /** The nets with a point at an item that was opened. */
  private BitSet touched(BitSet which, Nets nets) {
    BitSet touched = new BitSet();
    for (int point = 0; point < circuit.size(); point++) {
      String ref = circuit.point(point).ref();
      if (which.stream().anyMatch(one -> reworks.get(one).items().contains(ref))) {
        touched.set(nets.of(point));
      }
    }
    return touched;
  }

  /** The reworks, by number, that a reading was not taken after. */
  private BitSet since(Reading reading) {
    BitSet since = new BitSet();
    for (int one = 0; one < reworks.size(); one++) {
      if (!isAfter(reading, reworks.get(one))) {
        since.set(one);
      }
    }
    return since;
  }

  private boolean isAfter(Reading reading, Rework rework) {
    Optional<LocalDateTime> done = dated(rework.time());
    Optional<LocalDateTime> taken = dated(reading.time());
    if (taken.isPresent() && done.isPresent()) {
      boolean own = file(rework.place()).equals(file(reading));
      boolean told = own || isTold(rework, reading);
      return told ? !taken.get().isBefore(done.get()) : taken.get().isAfter(atLatest(done.get()));
    }
    return isTold(rework, reading)
        && !isEarlierThatDay(reading, rework)
        && !isDatedBefore(reading, done);
  }

  /** Whether the sheet of a reading, or one that it is read with, may be older than a rework. */
  private boolean isDatedBefore(Reading reading, Optional<LocalDateTime> done) {
    if (done.isEmpty()) {
      return false;
    }
    Optional<LocalDateTime> first = Optional.ofNullable(earliest.get(file(reading)));
    Optional<LocalDate> day = jobs.of(reading.place()).flatMap(Day::ofTest);
    return first.map(one -> one.isBefore(done.get())).orElse(false)
        || day.map(one -> one.isBefore(done.get().toLocalDate())).orElse(false);
  }

  /** Times of day without a day: in one sheet they are of one day. */
  private static boolean isEarlierThatDay(Reading reading, Rework rework) {
    return reading.time().isPresent()
        && rework.time().isPresent()
        && reading.time().get().at().toLocalTime().isBefore(rework.time().get().at().toLocalTime());
  }

  /** A day without a time of day may mean its end. */
  private static LocalDateTime atLatest(LocalDateTime done) {
    return done.toLocalDate().atStartOfDay().equals(done)
        ? done.toLocalDate().plusDays(1).atStartOfDay()
        : done;
  }

  /** Whether the sheet of a reading says that it was filled in after a rework. */
  private boolean isTold(Rework rework, Reading reading) {
    String file = file(reading);
    boolean own = file(rework.place()).equals(file);
    if (own && rework.readAfter()) {
      return true;
    }
    return !own
        && reworks.stream()
            .filter(row -> file(row.place()).equals(file))
            .anyMatch(rework::isToldBy);
  }

  private String file(Reading reading) {
    return file(reading.place());
  }

  /** The workbook or the folder in which a cell stands. */
  private String file(Place place) {
    return jobs.of(place).map(Job::file).orElse(place.file());
  }

  /** Only what has a day can be compared. */
  private static Optional<LocalDateTime> dated(Optional<TimeOfReading> time) {
    return time.filter(one -> one.day().isPresent()).map(TimeOfReading::at);
  }
}
