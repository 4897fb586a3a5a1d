package dev.ringout.benchmarks.faults;

import static org.junit.jupiter.api.Assertions.assertFalse;

import dev.ringout.benchmarks.faults.Sheet.Habit;
import dev.ringout.sample.Golden;
import dev.ringout.sample.Told;
import java.io.IOException;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Every kind of slip in a small random unit, read with a meter that shares nothing with the
 * program. By physics the story told, or one of its alternatives, makes the unit what it is; how it
 * is told, and how many more readings it takes to be certain, stands in golden files, below what
 * was planted and what fails.
 */
class EveryKindTest {
  private static final int WIRES = 20;
  private static final long SEED = 1;
  private static final int UNITS_OF_TWO = 12;

  @ParameterizedTest
  @EnumSource
  void a_slip_is_told_by_the_fewest_readings_as_what_it_is_or_among_what_it_may_be(Kind kind)
      throws IOException {
    assertTold("every-kind-sheet.txt", kind.words(), of(kind), SEED, Habit.SHEET);
  }

  @ParameterizedTest
  @EnumSource
  void a_slip_is_told_with_sweeps_as_what_it_is_or_among_what_it_may_be(Kind kind)
      throws IOException {
    assertTold(
        "every-kind-sheet-and-sweeps.txt", kind.words(), of(kind), SEED, Habit.SHEET_AND_SWEEPS);
  }

  static IntStream units() {
    return IntStream.range(0, UNITS_OF_TWO);
  }

  @ParameterizedTest
  @MethodSource("units")
  void two_slips_in_one_unit_are_told_as_two(int unit) throws IOException {
    List<Kind> two = Trial.mixed(SEED, UNITS_OF_TWO, 2).get(unit);
    String name = two.stream().map(Kind::words).collect(Collectors.joining(", "));
    assertTold("two-kinds.txt", name, two, SEED + unit, Habit.SHEET_AND_SWEEPS);
  }

  private static List<Kind> of(Kind kind) {
    return kind == Kind.NONE ? List.of() : List.of(kind);
  }

  private static void assertTold(
      String file, String name, List<Kind> planted, long seed, Habit habit) throws IOException {
    Trial trial = Trial.of(seed, planted, habit, WIRES);
    String input = Planted.of(trial);
    String told = Told.of(trial.check());
    Outcome outcome = trial.judge();
    assertFalse(outcome.missed(), name);
    assertFalse(outcome.falseAlarm(), name);
    assertFalse(outcome.wrong(), name);
    boolean more = outcome.readingsToCertainty() > 0;
    Golden.assertSection(
        file,
        name,
        input + told + (more ? "certain after " + outcome.readingsToCertainty() + " more\n" : ""));
  }
}
