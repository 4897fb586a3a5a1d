package dev.ringout.intake;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.ringout.check.CheckResult;
import dev.ringout.compare.Outcome;
import dev.ringout.support.UnitUnderTest;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Leads are noted to so many digits, and may have half of the last more or less: JCGM 100:2008
 * F.2.2.1. Four feet of AWG 20 with two contacts may have 0.0557 Ω.
 */
class LeadsAsNotedTest {
  @TempDir Path folder;

  private Outcome outcome(String leads, String reading) {
    CheckResult result =
        new UnitUnderTest(folder.resolve(leads.replace(' ', '_') + reading))
            .wire("W1,J1-A,P2-1,20,4 ft")
            .job("lead null," + leads)
            .job("meter accuracy,1 mΩ")
            .reads("J1-A", "P2-1", reading)
            .check();
    return result.comparison().inForce().get(0).outcome();
  }

  @Test
  void leads_noted_with_one_digit_may_have_half_of_it_more() {
    assertEquals(Outcome.CONFORMS, outcome("0.2 Ω", "0.300"));
    assertEquals(Outcome.RESISTIVE, outcome("0.2 Ω", "0.310"));
  }

  @Test
  void leads_noted_with_three_digits_are_what_they_are() {
    assertEquals(Outcome.CONFORMS, outcome("0.200 Ω", "0.257"));
    assertEquals(Outcome.RESISTIVE, outcome("0.200 Ω", "0.260"));
  }

  @Test
  void nulled_leads_have_nothing() {
    assertEquals(Outcome.CONFORMS, outcome("0 Ω", "0.056"));
    assertEquals(Outcome.RESISTIVE, outcome("0 Ω", "0.060"));
  }
}
