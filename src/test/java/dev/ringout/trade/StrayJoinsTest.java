package dev.ringout.trade;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import dev.ringout.check.CheckResult;
import dev.ringout.diagnose.Fault;
import dev.ringout.support.UnitUnderTest;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Joins by mistake have ohms of their own: a whisker some, a wire of sixty metres more. */
class StrayJoinsTest {
  @TempDir Path folder;

  private UnitUnderTest pairs(String length) {
    UnitUnderTest unit = new UnitUnderTest(folder);
    for (int pin = 1; pin <= 4; pin++) {
      unit.wire("W" + pin + ",J1-" + pin + ",P2-" + pin + ",24," + length);
    }
    return unit;
  }

  @ParameterizedTest
  @CsvSource({"2.9,0.3", "0.3,2.9", "2.9,2.9", "4.5,4.5"})
  void a_bridge_with_some_ohms_is_a_short_whichever_side_reads_them(String one, String other) {
    UnitUnderTest unit = pairs("1 m");
    for (int pin = 1; pin <= 4; pin++) {
      unit.reads("J1-" + pin, "P2-" + pin, "0.085");
    }
    unit.reads("J1-1", "REST", one).reads("J1-2", "REST", other).reads("J1-1", "J1-2", one);
    unit.reads("J1-3", "REST", "OL").reads("J1-4", "REST", "OL");
    Fault.Shorted shorted = assertInstanceOf(Fault.Shorted.class, OnlyFault.of(unit.check()));
    assertEquals(2, shorted.points().size());
  }

  /**
   * Sixty metres of AWG 24 have 5.1 Ω: two of them crossed read as much where nothing is listed.
   */
  @Test
  void two_long_wires_crossed_are_a_swap_and_no_opens_with_a_leak() {
    UnitUnderTest unit = pairs("60 m");
    unit.reads("J1-1", "P2-1", "OL").reads("J1-2", "P2-2", "OL");
    unit.reads("J1-1", "P2-2", "5.1").reads("J1-2", "P2-1", "5.1");
    CheckResult result = unit.reads("J1-3", "P2-3", "5.1").reads("J1-4", "P2-4", "5.1").check();
    Fault.Miswire swap = assertInstanceOf(Fault.Miswire.class, OnlyFault.of(result));
    assertEquals(Fault.Pattern.SWAP, swap.pattern());
    assertEquals(List.of(), result.diagnosis().unexplained());
  }

  @Test
  void a_leak_that_shows_through_a_coil_is_one_leak() {
    UnitUnderTest unit = new UnitUnderTest(folder).part("K1,1,2,winding,300 Ω,10,");
    unit.wire("W1,J1-1,K1-1,,").wire("W2,J1-2,K1-2,,").wire("W3,J1-3,P2-3,,");
    unit.reads("J1-1", "K1-1", "0.1").reads("J1-2", "K1-2", "0.1").reads("J1-3", "P2-3", "0.1");
    unit.reads("K1-1", "K1-2", "301");
    unit.insulation("J1-1", "J1-3", "0.5").insulation("J1-2", "J1-3", "0.5");
    CheckResult result = unit.insulation("J1-1+J1-2", "REST", "0.5").check();
    assertInstanceOf(Fault.LowInsulation.class, OnlyFault.of(result));
  }
}
