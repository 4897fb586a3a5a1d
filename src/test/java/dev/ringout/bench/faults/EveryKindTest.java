package dev.ringout.bench.faults;

import static org.junit.jupiter.api.Assertions.assertFalse;

import dev.ringout.bench.faults.FaultBench.Outcome;
import dev.ringout.bench.faults.FaultBench.Trial;
import dev.ringout.bench.faults.Sheet.Habit;
import dev.ringout.sample.Golden;
import dev.ringout.sample.Told;
import java.io.IOException;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * Every kind of slip in a small random unit, read with a meter that shares nothing with the
 * program. By physics the story told, or one of its alternatives, makes the unit what it is; how it
 * is told, and how many more readings it takes to be certain, stands in golden files.
 */
class EveryKindTest {
  private static final int WIRES = 20;
  private static final long SEED = 1;
  private static final int UNITS_OF_TWO = 12;

  @ParameterizedTest
  @EnumSource(names = {"SHEET", "SHEET_AND_SWEEPS"})
  void a_slip_is_told_as_what_it_is_or_among_what_it_may_be(Habit habit) throws IOException {
    StringBuilder page = new StringBuilder();
    for (Kind kind : Kind.values()) {
      add(page, kind == Kind.NONE ? List.of() : List.of(kind), SEED, habit);
    }
    Golden.assertMatches(
        "every-kind-" + habit.name().toLowerCase(Locale.ROOT).replace('_', '-') + ".txt",
        page.toString());
  }

  @Test
  void two_slips_in_one_unit_are_told_as_two() throws IOException {
    StringBuilder page = new StringBuilder();
    long seed = SEED;
    for (List<Kind> two : FaultBench.mixed(SEED, UNITS_OF_TWO, 2)) {
      add(page, two, seed++, Habit.SHEET_AND_SWEEPS);
    }
    Golden.assertMatches("two-kinds.txt", page.toString());
  }

  private static void add(StringBuilder page, List<Kind> planted, long seed, Habit habit) {
    String name = planted.stream().map(Kind::words).collect(Collectors.joining(", "));
    Trial trial = Trial.of(seed, planted, habit, WIRES);
    page.append("== ").append(planted.isEmpty() ? "good" : name).append('\n');
    page.append(Told.of(trial.check()));
    Outcome outcome = trial.judge();
    assertFalse(outcome.missed(), name);
    assertFalse(outcome.falseAlarm(), name);
    assertFalse(outcome.wrong(), name);
    if (outcome.readingsToCertainty() > 0) {
      page.append("certain after ").append(outcome.readingsToCertainty()).append(" more\n");
    }
  }
}
