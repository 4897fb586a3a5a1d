package dev.ringout.compare;

import dev.ringout.circuit.Circuit;
import dev.ringout.circuit.Nets;
import dev.ringout.circuit.Probing;
import dev.ringout.harness.SwitchState;
import dev.ringout.readings.Job;
import dev.ringout.readings.Jobs;
import dev.ringout.readings.Reading;
import dev.ringout.readings.ReadingSet;
import dev.ringout.readings.Rework;
import dev.ringout.readings.TimeOfReading;
import dev.ringout.source.Place;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Which readings were taken before what they touch was opened.
 *
 * <p>A reading counts as taken after a rework only where that is shown: it stands in a file that
 * tells of the rework, or it is dated later. In a file that tells of it, what is dated earlier was
 * taken before; and so was, in such a file, what has no date. In doubt a reading was taken before.
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

  Reworks(Circuit circuit, ReadingSet readings) {
    this.circuit = circuit;
    this.reworks = readings.reworks();
    this.jobs = new Jobs(readings.jobs());
    if (!reworks.isEmpty()) {
      for (Reading reading : readings.readings()) {
        dated(reading.time())
            .ifPresent(
                time ->
                    earliest.merge(
                        file(reading), time, (one, other) -> one.isBefore(other) ? one : other));
      }
    }
  }

  boolean isEmpty() {
    return reworks.isEmpty();
  }

  /** The nets that were touched since a reading was taken. */
  TouchedNets touchedSince(Reading reading) {
    BitSet since = since(reading);
    return since.isEmpty()
        ? TouchedNets.NONE
        : touchedBy.computeIfAbsent(
            since, which -> new TouchedNets(touched(which, circuit.normal())));
  }

  /** Whether anything that a reading's probes were joined to has been touched since. */
  boolean isOvertaken(Reading reading, Probing probing) {
    BitSet since = since(reading);
    if (since.isEmpty()) {
      return false;
    }
    Nets nets = circuit.in(probing.state());
    BitSet touched =
        touchedIn
            .computeIfAbsent(since, which -> new HashMap<>())
            .computeIfAbsent(probing.state(), state -> touched(since, nets));
    return probing.points().anyMatch(point -> touched.get(nets.of(point)));
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
    if (isToldIn(file(reading), rework)) {
      if (done.isEmpty()) {
        return true;
      }
      return taken.isPresent()
          ? !taken.get().isBefore(done.get())
          : Optional.ofNullable(earliest.get(file(reading)))
              .map(first -> !first.isBefore(done.get()))
              .orElse(true);
    }
    return done.isPresent() && taken.isPresent() && taken.get().isAfter(atLatest(done.get()));
  }

  /** A day without a time of day may mean its end. */
  private static LocalDateTime atLatest(LocalDateTime done) {
    return done.toLocalDate().atStartOfDay().equals(done)
        ? done.toLocalDate().plusDays(1).atStartOfDay()
        : done;
  }

  private boolean isToldIn(String file, Rework rework) {
    List<Rework> same = new ArrayList<>(reworks);
    same.removeIf(one -> !one.isSame(rework));
    return same.stream().anyMatch(one -> file(one.place()).equals(file));
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
    return time.map(TimeOfReading::at).filter(at -> !at.toLocalDate().equals(LocalDate.EPOCH));
  }
}
