package dev.ringout.trade;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.ringout.check.CheckResult;
import dev.ringout.check.CheckResult.Verdict;
import dev.ringout.compare.LeadResistance;
import dev.ringout.diagnose.Fault;
import dev.ringout.support.UnitUnderTest;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Leads that are in every reading, and leads that were nulled too far. */
class LeadsNotNulledTest {
  @TempDir Path folder;

  @Test
  void readings_that_are_nearly_all_high_put_the_leads_in_doubt() {
    UnitUnderTest unit = new UnitUnderTest(folder);
    for (int pin = 1; pin <= 10; pin++) {
      unit.wire("W" + pin + ",J1-" + pin + ",P2-" + pin + ",20,4 ft");
      unit.reads("J1-" + pin, "P2-" + pin, pin == 3 ? "0.05" : "0.35");
    }
    CheckResult result = unit.check();
    LeadResistance.AllOff off = result.leadDoubt().orElseThrow().leads();
    assertTrue(off.above());
    assertEquals(List.of(9, 10), List.of(off.off(), off.compared()));
    Fault.LeadsNotNulled leads = assertInstanceOf(Fault.LeadsNotNulled.class, OnlyFault.of(result));
    assertEquals(0.3, leads.ohms(), 0.02);
    assertEquals(9, leads.finding().readings().size());
  }

  @Test
  void readings_that_are_nearly_all_low_were_nulled_too_far_and_blame_no_gauge() {
    UnitUnderTest unit = new UnitUnderTest(folder);
    for (int pin = 1; pin <= 10; pin++) {
      unit.wire("W" + pin + ",J1-" + pin + ",P2-" + pin + ",20,40 ft");
      unit.reads("J1-" + pin, "P2-" + pin, pin == 3 ? "0.41" : "0.21");
    }
    CheckResult result = unit.check();
    assertFalse(result.leadDoubt().orElseThrow().leads().above());
    assertEquals(List.of(), result.diagnosis().faults());
    assertEquals(Verdict.INCOMPLETE, result.verdict());
    assertEquals(9, result.values().unlike().size());
  }
}
