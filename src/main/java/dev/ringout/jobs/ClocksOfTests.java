package dev.ringout.jobs;

import dev.ringout.readings.Reading;
import dev.ringout.readings.TimeOfReading;
import dev.ringout.store.Head;
import dev.ringout.store.Session;
import dev.ringout.store.Store;
import dev.ringout.store.StoreFinding;
import dev.ringout.store.StoreFinding.Kind;
import dev.ringout.store.StoreTrouble;
import dev.ringout.store.StoredUnit;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * By which clocks the tests of a store were read that another is to take. Of two readings of the
 * same points the later one stands: by a clock that ran years behind, what failed would be replaced
 * by what was good before; by one that is ahead, what was good would stand for years.
 */
final class ClocksOfTests {
  /** Readings stand in the time of their place; nowhere is it further from that of another. */
  private static final Duration MOST_AHEAD = Duration.ofHours(26);

  private final StoreAtHand at;
  private final Store from;
  private final Store to;
  private final LocalDateTime latest;

  ClocksOfTests(StoreAtHand at, Store from, Store to, Instant now) {
    this.at = at;
    this.from = from;
    this.to = to;
    this.latest = LocalDateTime.ofInstant(now, ZoneOffset.UTC).plus(MOST_AHEAD);
  }

  /** The units of which nothing is to be taken, and why. */
  Map<StoredUnit, StoreFinding> refused() throws StoreTrouble {
    Map<StoredUnit, StoreFinding> refused = new LinkedHashMap<>();
    for (String list : from.harnesses()) {
      for (StoredUnit unit : from.siblings(list)) {
        if (isKnownThere(unit) && hasMore(unit)) {
          wrong(unit).ifPresent(finding -> refused.put(unit, finding));
        }
      }
    }
    return refused;
  }

  private boolean isKnownThere(StoredUnit unit) throws StoreTrouble {
    return to.unit(unit.key(), unit.harness()).isPresent();
  }

  private boolean hasMore(StoredUnit unit) throws StoreTrouble {
    for (Session session : from.sessions(unit)) {
      if (isNew(session)) {
        return true;
      }
    }
    return false;
  }

  private boolean isNew(Session session) throws StoreTrouble {
    Optional<Head> there = to.head(session.id());
    return there.isEmpty() || !there.equals(from.head(session.id()));
  }

  /**
   * A bench never writes a time before that of the test before, whatever its clock says; a sheet
   * may have been filled in before it was brought in.
   */
  private Optional<StoreFinding> wrong(StoredUnit unit) throws StoreTrouble {
    Path named = InputName.ofUnit(unit.serial(), unit.harness());
    FileInputs inputs = FileInputs.with(List.of(named), at);
    // What can't be understood gets no verdict anywhere.
    List<Reading> readings =
        inputs
            .soundHarness(named)
            .map(list -> inputs.readings(List.of(named), list).readings())
            .orElse(List.of());
    LocalDateTime before = LocalDateTime.MIN;
    for (Session session : from.sessions(unit)) {
      boolean isNew = isNew(session);
      LocalDateTime last = before;
      for (Reading reading : readings) {
        Optional<LocalDateTime> time =
            reading.time().filter(one -> one.day().isPresent()).map(TimeOfReading::at);
        if (session.holds(reading.place().file()) && time.isPresent()) {
          boolean isBehind = session.isLed() && time.get().isBefore(before);
          if (isNew && (isBehind || time.get().isAfter(latest))) {
            return Optional.of(StoreFinding.of(unit, session, 0, Kind.CLOCK_WRONG));
          }
          last = time.get().isAfter(last) ? time.get() : last;
        }
      }
      before = last;
    }
    return Optional.empty();
  }
}
