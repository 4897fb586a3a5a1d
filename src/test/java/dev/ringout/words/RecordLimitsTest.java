package dev.ringout.words;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.ringout.check.CheckResult;
import dev.ringout.compare.Judged;
import dev.ringout.compare.Outcome;
import dev.ringout.support.UnitUnderTest;
import dev.ringout.words.RecordLimits.Limit;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** What each reading was held against, and where that comes from. */
class RecordLimitsTest {
  private final CheckResult result;

  /**
   * A wire of known length, one of none, a jumper, a resistor, and a net with a limit of its own.
   */
  RecordLimitsTest(@TempDir Path folder) {
    result =
        new UnitUnderTest(folder)
            .wire("W1,J1-A,P2-1,20,4 ft")
            .wire("W2,J1-B,P2-2")
            .wire("W3,J1-C,R1-1,20,4 ft")
            .link("TB1,1,2")
            .part("R1,1,2,resistor,100,5")
            .limit("insulation min,100,MΩ")
            .netLimit("insulation min,20,MΩ,J1-A")
            .reads("J1-A", "P2-1", "0.05")
            .reads("J1-B", "P2-2", "0.05")
            .reads("TB1-1", "TB1-2", "0.01")
            .reads("J1-A", "J1-B", "OL")
            .reads("J1-C", "R1-2", "100")
            .insulation("J1-A", "REST", "500 M")
            .insulation("J1-B", "REST", "500 M")
            .check();
  }

  private Judged judged(String subject, String kind) {
    return result.comparison().inForce().stream()
        .filter(one -> one.reading().subject().equals(subject))
        .filter(one -> one.reading().kind().name().equals(kind))
        .findFirst()
        .orElseThrow();
  }

  private Limit limit(String subject) {
    return new RecordLimits(result).of(judged(subject, "CONTINUITY"));
  }

  @Test
  void a_join_of_known_gauge_and_length_is_held_against_what_they_account_for() {
    Limit limit = limit("J1-A to P2-1");
    assertTrue(limit.words().startsWith("≤ "), limit.toString());
    assertFalse(limit.expected().isEmpty());
    assertEquals("computed", limit.from());
  }

  @Test
  void a_join_without_a_length_is_held_against_the_fixed_limit() {
    assertEquals("fixed, no length", limit("J1-B to P2-2").from());
    assertEquals("fixed, jumpers", limit("TB1-1 to TB1-2").from());
    assertEquals("", limit("J1-B to P2-2").expected());
  }

  @Test
  void points_that_are_apart_are_held_against_open_min() {
    Limit limit = limit("J1-A to J1-B");
    assertTrue(limit.words().startsWith("≥ "), limit.toString());
    assertEquals("open min", limit.from());
  }

  @Test
  void a_part_is_held_against_what_is_listed_from_least_to_most() {
    Limit limit = limit("J1-C to R1-2");
    assertTrue(limit.words().matches("[0-9.]+ Ω to [0-9.]+ Ω"), limit.toString());
    assertEquals("parts", limit.from());
  }

  @Test
  void a_net_with_a_limit_of_its_own_is_held_against_that() {
    RecordLimits limits = new RecordLimits(result);
    assertEquals(new Limit("≥ 20 MΩ", "", "own"), limits.of(judged("J1-A to REST", "INSULATION")));
    assertEquals(
        new Limit("≥ 100 MΩ", "", "insulation min"),
        limits.of(judged("J1-B to REST", "INSULATION")));
  }

  @Test
  void every_source_of_a_limit_is_in_the_legend() {
    RecordLimits limits = new RecordLimits(result);
    for (Judged one : result.comparison().inForce()) {
      String word = limits.of(one).from().split(",", -1)[0];
      assertTrue(RecordLimits.LEGEND.contains(word), word);
    }
  }

  @ParameterizedTest
  @EnumSource(Outcome.class)
  void every_outcome_has_words_in_lower_case(Outcome outcome) {
    assertTrue(RecordLimits.words(outcome).matches("[a-z ]+"), RecordLimits.words(outcome));
  }
}
