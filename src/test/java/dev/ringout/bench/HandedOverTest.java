package dev.ringout.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.ringout.jobs.StoreAtHand;
import dev.ringout.jobs.StoreCare;
import dev.ringout.jobs.StoreCare.Copied;
import dev.ringout.store.Entry;
import dev.ringout.store.EntryKind;
import dev.ringout.store.HarnessFile;
import dev.ringout.store.NewSession;
import dev.ringout.store.Session;
import dev.ringout.store.Store;
import dev.ringout.store.StoreAddress;
import dev.ringout.store.StoreFinding.Kind;
import dev.ringout.store.StoredUnit;
import dev.ringout.store.Stores;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a bench without network hands over, whose clock is not to be believed. */
class HandedOverTest {
  @TempDir private Path folder;

  private LocalDate day = LocalDate.EPOCH;

  /** A unit that was tested in the shop, and a file of all of it for the way. */
  @BeforeEach
  void goAway() throws Exception {
    try (BenchOfTest bench = BenchOfTest.in(folder)) {
      bench.bench.start(bench.list(BenchOfTest.cable(folder)), "7", BenchOfTest.by("R. Adeyemi"));
      bench.type("0.07");
      bench.bench.finish();
    }
    new StoreCare(at("units.db")).backUp(folder.resolve("away.db"), Map.of());
  }

  private StoreAtHand at(String file) {
    return new StoreAtHand(folder.resolve(file).toString(), Map.of());
  }

  /** The same test once more, as it is written by a clock of another day. */
  private void testAwayOn(LocalDate other) throws Exception {
    StoreAddress away = StoreAddress.of(folder.resolve("away.db").toString());
    try (Store store = Stores.open(away, Map.of(), true)) {
      StoredUnit unit = store.units().get(0).unit();
      HarnessFile list = store.harness(unit.harness()).orElseThrow();
      Session first = store.sessions(unit).get(0);
      day = LocalDate.parse(first.started());
      List<Entry.Draft> entries =
          store.entries(first).stream()
              .map(
                  entry ->
                      new Entry.Draft(
                          EntryKind.of(entry.kind()).orElseThrow(),
                          entry.at(),
                          entry.who(),
                          entry.body().replace(day.toString(), other.toString())))
              .toList();
      Session next =
          new Session(
              UUID.randomUUID().toString(),
              first.unitKey(),
              first.harness(),
              1,
              "bench 3",
              first.who(),
              other.toString(),
              "bench 3 " + other,
              "",
              first.program(),
              first.added());
      store.add(new NewSession(list, unit.serial(), next, next.file(), entries));
    }
  }

  private Copied handOver() throws Exception {
    Instant now = Instant.parse(day.plusDays(2) + "T08:00:00Z");
    return new StoreCare(at("away.db"))
        .copyTo(folder.resolve("units.db").toString(), Map.of(), false, now);
  }

  private static List<Kind> kinds(Copied copied) {
    return copied.copy().parted().stream().map(one -> one.finding().kind()).toList();
  }

  @Test
  void what_was_read_a_day_later_becomes_the_next_test() throws Exception {
    testAwayOn(LocalDate.of(2026, 12, 2));
    Copied copied = handOver();
    assertEquals(List.of(), kinds(copied));
    assertEquals(1, copied.copy().sessions());
  }

  /** What failed by such a clock would be replaced by what had been good before. */
  @Test
  void what_was_read_by_a_clock_that_begins_in_1999_is_not_taken_over() throws Exception {
    testAwayOn(LocalDate.of(1999, 1, 1));
    Copied copied = handOver();
    assertEquals(List.of(Kind.CLOCK_WRONG), kinds(copied));
    assertEquals(0, copied.copy().sessions());
  }

  /** What was good by such a clock would stand for years, whatever is read after it. */
  @Test
  void what_was_read_by_a_clock_that_is_years_ahead_is_not_taken_over() throws Exception {
    testAwayOn(LocalDate.of(2099, 1, 1));
    Copied copied = handOver();
    assertEquals(List.of(Kind.CLOCK_WRONG), kinds(copied));
    assertEquals(0, copied.copy().sessions());
  }
}
