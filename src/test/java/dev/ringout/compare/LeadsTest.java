package dev.ringout.compare;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.ringout.check.CheckResult;
import dev.ringout.circuit.JoinLimits;
import dev.ringout.standards.Tables;
import dev.ringout.support.UnitUnderTest;
import dev.ringout.words.DoubtSentences;
import java.nio.file.Path;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * When nearly all values are off by about as much it is the leads. The shares (four of five, of at
 * least five) are common practice, no source. A metre of AWG 20 with its contacts reads 0.03 to
 * 0.0476 Ω here.
 */
class LeadsTest {
  @TempDir Path folder;

  private int number;

  private CheckResult check(String... values) {
    UnitUnderTest unit = new UnitUnderTest(folder.resolve("unit" + number++));
    IntStream.range(0, values.length)
        .forEach(
            i -> {
              unit.wire("W" + i + ",J1-" + i + ",P2-" + i + ",20,1 m");
              unit.reads("J1-" + i, "P2-" + i, values[i]);
            });
    return unit.check();
  }

  private String doubt(String... values) {
    return check(values).leadDoubt().map(one -> DoubtSentences.problem(one).text()).orElse("");
  }

  @Test
  void four_of_five_high_are_the_leads_and_three_are_not() {
    String doubt = doubt("0.200", "0.200", "0.300", "0.250", "0.040");
    assertTrue(
        doubt.startsWith(
            "4 of 5 readings across wires are higher than copper and contacts explain"),
        doubt);
    assertTrue(doubt.contains("the least by 0.152 Ω"), doubt);
    assertEquals("", doubt("0.200", "0.200", "0.300", "0.040", "0.040"));
  }

  @Test
  void four_readings_are_too_few_to_tell() {
    assertEquals("", doubt("0.200", "0.200", "0.300", "0.250"));
  }

  @Test
  void four_of_five_low_were_nulled_too_far() {
    String doubt = doubt("0.010", "0.010", "0.012", "0.005", "0.040");
    assertTrue(doubt.startsWith("4 of 5 readings across wires are lower than copper"), doubt);
    assertTrue(doubt.contains("the least by 0.0137 Ω"), doubt);
  }

  @Test
  void as_many_low_as_high_are_no_leads() {
    assertEquals("", doubt("0.200", "0.200", "0.010", "0.010", "0.040", "0.040"));
  }

  @Test
  void only_values_of_wires_with_a_length_count() {
    UnitUnderTest unit = new UnitUnderTest(folder);
    for (int i = 0; i < 6; i++) {
      unit.wire("W" + i + ",J1-" + i + ",P2-" + i + (i < 4 ? ",20,1 m" : ""));
      unit.reads("J1-" + i, "P2-" + i, "0.2");
      unit.wire("V" + i + ",J3-" + i + ",P4-" + i + ",20,1 m");
      unit.reads("J3-" + i, "P4-" + i, "beep");
      unit.reads("J1-" + i, "J3-" + i, "OL");
    }
    assertTrue(unit.check().leadDoubt().isEmpty(), "four values, the rest tell nothing of leads");
  }

  private LeadEstimate leads(CheckResult result) {
    return leadsIn(result).orElseThrow();
  }

  private static Optional<LeadEstimate> leadsIn(CheckResult result) {
    return LeadEstimate.of(
        result.circuit(), JoinLimits.of(result.circuit(), Tables.published()), result.comparison());
  }

  @Test
  void what_the_leads_have_is_what_most_values_have_too_much() {
    LeadEstimate leads = leads(check("0.150", "0.200", "0.210", "0.220", "0.220", "0.900"));
    assertEquals(0.22 - (0.0257 + 0.0476) / 2, leads.ohms(), 0.02);
    assertEquals(5, leads.mended().size(), "0.9 Ω is more than the leads account for");
    assertFalse(leads.noted());
    assertTrue(leadsIn(check("0.2", "0.2", "0.2", "0.2")).isEmpty(), "too few to tell");
    assertTrue(
        leadsIn(check("0.200", "0.200", "0.200", "0.040", "0.040", "0.040")).isEmpty(),
        "as many are as expected");
  }

  @Test
  void leads_that_warm_up_blame_no_wire() {
    CheckResult result =
        check("0.040", "0.043", "0.046", "0.048", "0.051", "0.054", "0.057", "0.060");
    LeadEstimate leads = leads(result);
    assertEquals(4, leads.mended().size());
    assertEquals(1, result.diagnosis().faults().size());
  }

  @Test
  void one_value_that_is_high_by_itself_is_no_lead() {
    assertTrue(
        leadsIn(check("0.040", "0.040", "0.110", "0.040", "0.040", "0.040", "0.040")).isEmpty());
  }
}
