package dev.ringout.trade;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import dev.ringout.check.CheckResult;
import dev.ringout.diagnose.Fault;
import dev.ringout.diagnose.Fault.Miswire;
import dev.ringout.diagnose.Fault.Pattern;
import dev.ringout.support.UnitUnderTest;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** One mistake of the wiring that coils, resistors and contacts show many times is still one. */
class PartsInTheWayTest {
  @TempDir Path folder;

  /** Through its coil the other net is low too: three of five nets at J1, and no water in it. */
  @Test
  void a_short_beside_a_coil_is_a_short_and_no_moisture() {
    UnitUnderTest unit = new UnitUnderTest(folder).part("K1,1,2,winding,300 Ω,10,");
    unit.wire("W1,J1-1,K1-1,22,1 m").wire("W2,J1-2,K1-2,22,1 m");
    unit.reads("J1-1", "K1-1", "0.05").reads("J1-2", "K1-2", "0.05").reads("K1-1", "K1-2", "300");
    for (int pin = 3; pin <= 5; pin++) {
      unit.wire("W" + pin + ",J1-" + pin + ",P" + pin + "-1,22,1 m");
      unit.reads("J1-" + pin, "P" + pin + "-1", "0.05");
    }
    unit.insulation("J1-1", "REST", "0").insulation("J1-2", "REST", "0");
    unit.insulation("J1-3", "REST", "0").reads("J1-2", "J1-3", "0.1").reads("J1-1", "J1-3", "300");
    CheckResult result =
        unit.insulation("J1-4", "REST", "500").insulation("J1-5", "REST", "500").check();
    Fault.Shorted shorted = assertInstanceOf(Fault.Shorted.class, OnlyFault.of(result));
    assertEquals("[J1-2, J1-3]", shorted.points().toString());
    assertEquals(List.of(), result.diagnosis().unexplained());
  }

  /** Forty metres of AWG 24 each way: what its contact joins by mistake reads 6.8 Ω. */
  @Test
  void a_contact_that_never_opens_makes_no_poor_joint() {
    UnitUnderTest unit = new UnitUnderTest(folder);
    unit.contact("S1,FREE,COM,NC").contact("S1,MADE,COM,NO");
    unit.wire("W1,P2-1,S1-COM,24,40 m").wire("W2,P3-1,S1-NO,24,40 m");
    unit.wire("W3,P4-1,S1-NC,24,40 m");
    unit.reads("P2-1", "S1-COM", "3.4").reads("P3-1", "S1-NO", "3.4");
    unit.reads("P4-1", "S1-NC", "3.4");
    unit.reads("P2-1", "P4-1", "6.8").reads("P2-1", "P3-1", "OL");
    unit.readsIn("S1=MADE", "P2-1", "P3-1", "6.8").readsIn("S1=MADE", "P2-1", "P4-1", "6.8");
    CheckResult result = unit.readsIn("S1=MADE", "S1-COM", "S1-NC", "0.01").check();
    Fault.Shorted shorted = assertInstanceOf(Fault.Shorted.class, OnlyFault.of(result));
    assertEquals("[S1-COM, S1-NC]", shorted.points().toString());
    assertEquals(1, shorted.equivalents().size());
    assertEquals(List.of(), result.diagnosis().unexplained());
  }

  /** R1 lies between the first two wires: mirrored it answers at the last two. */
  @Test
  void a_value_that_the_mirrored_insert_gives_is_no_second_fault() {
    UnitUnderTest unit = new UnitUnderTest(folder).part("R1,1,2,resistor,100 Ω,5,");
    String pins = "ABCDE";
    for (int i = 0; i < 5; i++) {
      String far = i < 2 ? "R1-" + (i + 1) : "P" + i + "-1";
      unit.wire("W" + (i + 1) + ",J1-" + pins.charAt(i) + "," + far + ",22,1 m");
    }
    unit.reads("J1-A", "R1-1", "OL").reads("J1-B", "R1-2", "OL").reads("J1-C", "P2-1", "0.05");
    unit.reads("J1-D", "P3-1", "OL").reads("J1-E", "P4-1", "OL");
    unit.reads("J1-A", "P4-1", "0.05").reads("J1-B", "P3-1", "0.05");
    unit.reads("J1-E", "R1-1", "0.05").reads("J1-D", "R1-2", "0.05");
    unit.reads("R1-1", "R1-2", "100").reads("J1-A", "J1-B", "OL");
    CheckResult result = unit.reads("J1-D", "J1-E", "100").check();
    assertEquals(Pattern.REVERSED, assertInstanceOf(Miswire.class, OnlyFault.of(result)).pattern());
    assertEquals(List.of(), result.diagnosis().unexplained());
  }
}
