package dev.ringout.benchmarks.weaken;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.ringout.benchmarks.weaken.Bench.Outcome;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;
import org.junit.jupiter.api.io.TempDir;

/**
 * Never a false pass: 90 seeded cases over 50 units, or as many as {@code -Dringout.weakenedCases}
 * says. A bug found here gets a test of its own where it belongs.
 */
class WeakeningBenchTest {
  private static final int UNITS = 50;
  private static final int SEED = 22;
  private static final int CASES = 90;
  private static final int HELD_OUT_UNITS = 10;
  private static final int HELD_OUT_SEED = 7919;
  private static final int HELD_OUT_CASES = 2_000;
  private static final int THREADS = 2;
  private static final int MOST_SHOWN = 12;

  @TempDir private Path folder;

  @Test
  void a_weakened_set_never_conforms_unless_everything_is_still_shown() {
    weaken(UNITS, SEED, Integer.getInteger("ringout.weakenedCases", CASES));
  }

  /** Seeds that nobody looks at while the program is being changed. */
  @Test
  @EnabledIfSystemProperty(named = "ringout.heldOut", matches = "true")
  void a_weakened_set_of_units_held_out_never_conforms_either() {
    weaken(HELD_OUT_UNITS, HELD_OUT_SEED, HELD_OUT_CASES);
  }

  @Test
  void a_good_set_conforms_under_every_harmless_change() {
    good(UNITS, SEED);
  }

  @Test
  @EnabledIfSystemProperty(named = "ringout.heldOut", matches = "true")
  void a_good_set_of_units_held_out_conforms_under_every_harmless_change() {
    good(HELD_OUT_UNITS, HELD_OUT_SEED);
  }

  private void weaken(int units, int seed, int cases) {
    Bench bench = Bench.of(folder, units, seed);
    Counts counts = new Counts();
    List<String> falsePasses = Collections.synchronizedList(new ArrayList<>());
    eachThread(
        thread -> {
          Path own = folder.resolve("thread-" + thread);
          for (int number = 0; number < cases; number++) {
            // A unit is one thread's own, with all that its oracle remembers.
            int subject = number % units;
            if (subject % THREADS == thread) {
              long ofCase = seed * 1_000_003L + number;
              Subject one = bench.subjects.get(subject);
              Outcome outcome = Bench.run(one, Bench.steps(ofCase), ofCase, own);
              counts.add(outcome);
              if (outcome.isFalsePass()) {
                falsePasses.add(text(ofCase, Bench.least(outcome, ofCase, own)));
              }
            }
          }
        });
    System.out.println(counts.text());
    assertEquals(cases, counts.cases());
    assertTrue(counts.conforming() > 0, "no weakened set conforms: the bench compares nothing");
    assertTrue(
        falsePasses.isEmpty(),
        () ->
            falsePasses.size()
                + " false passes\n"
                + falsePasses.stream()
                    .sorted()
                    .limit(Integer.getInteger("ringout.mostShown", MOST_SHOWN))
                    .collect(Collectors.joining("\n")));
  }

  private static String text(long seed, Outcome outcome) {
    List<String> open =
        outcome.open().stream().limit(3).map(one -> one.kind() + ": " + one.text()).toList();
    return "seed "
        + seed
        + ", unit "
        + outcome.subject().unit().name()
        + "\n  "
        + String.join("\n  ", outcome.told())
        + "\n  exit 0, but not shown: "
        + String.join("; ", open);
  }

  private void good(int units, int seed) {
    Bench bench = Bench.of(folder, units, seed);
    List<String> refused = Collections.synchronizedList(new ArrayList<>());
    eachThread(
        thread -> {
          for (int subject = thread; subject < units; subject += THREADS) {
            Subject one = bench.subjects.get(subject);
            for (Harmless change : Harmless.values()) {
              Random random = new Random(seed + subject);
              Case changed = new Case(one, change.apply(one, one.good(), random));
              Path own = folder.resolve("thread-" + thread);
              List<Oracle.Open> open = one.oracle().open(changed.files, changed.options);
              Ran ran = Bench.check(one, changed, own);
              if (ran.code() != Ran.CONFORMS || !open.isEmpty()) {
                refused.add(
                    one.unit().name() + " " + change + " " + open + "\n" + ran.out() + ran.err());
              }
            }
          }
        });
    assertTrue(
        refused.isEmpty(),
        () -> refused.size() + " good sets do not conform\n" + String.join("\n", refused));
  }

  private interface OfThread {
    void run(int thread);
  }

  private static void eachThread(OfThread work) {
    IntStream.range(0, THREADS).parallel().forEach(work::run);
  }
}
