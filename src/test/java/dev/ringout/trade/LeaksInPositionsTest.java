package dev.ringout.trade;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import dev.ringout.check.CheckResult;
import dev.ringout.diagnose.Certainty;
import dev.ringout.diagnose.Fault;
import dev.ringout.harness.Point;
import dev.ringout.support.UnitUnderTest;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A switch of four positions, and a leak between the wires of its last two: read in each position
 * from the common contact it is one leak, and none of what is joined at rest; common practice, no
 * source.
 */
class LeaksInPositionsTest {
  @TempDir Path folder;

  private UnitUnderTest rotary() {
    UnitUnderTest unit = new UnitUnderTest(folder);
    for (String row : List.of("S1,OFF,B,0", "S1,LOW,B,1", "S1,MID,B,2", "S1,HIGH,B,3")) {
      unit.contact(row);
    }
    unit.wire("W1,J1-1,S1-B,22,1 m").wire("W2,J1-2,S1-0,22,1 m").wire("W3,J1-3,S1-1,22,1 m");
    unit.wire("W4,J1-4,S1-2,22,1 m").wire("W5,J1-5,S1-3,22,1 m");
    return unit;
  }

  private static List<String> points(Fault.LowInsulation leak) {
    return leak.points().stream().map(Point::toString).toList();
  }

  @Test
  void megohms_in_two_positions_and_low_insulation_at_rest_are_one_leak() {
    UnitUnderTest unit = rotary().job("continuity range,40 MΩ");
    unit.reads("S1-B", "S1-2", "OL").reads("S1-B", "S1-3", "OL");
    unit.readsIn("S1=MID", "S1-B", "S1-3", "1.369 MΩ");
    unit.readsIn("S1=HIGH", "S1-B", "S1-2", "1.369 MΩ");
    unit.insulation("J1-4", "REST", "1.37 MΩ").insulation("J1-5", "REST", "1.37 MΩ");
    Fault.LowInsulation leak =
        assertInstanceOf(Fault.LowInsulation.class, OnlyFault.of(unit.check()));
    assertEquals(List.of("J1-4", "J1-5"), points(leak));
  }

  @Test
  void a_leak_that_fails_in_two_positions_is_one() {
    UnitUnderTest unit = rotary();
    unit.reads("S1-B", "S1-2", "OL").reads("S1-B", "S1-3", "OL");
    unit.readsIn("S1=MID", "S1-B", "S1-3", "20 kΩ");
    CheckResult result = unit.readsIn("S1=HIGH", "S1-B", "S1-2", "20 kΩ").check();
    Fault.LowInsulation leak = assertInstanceOf(Fault.LowInsulation.class, OnlyFault.of(result));
    assertEquals(List.of("J1-4", "J1-5"), points(leak));
  }

  /** Of two wires joined in that position either may leak. */
  @Test
  void a_leak_read_in_one_position_alone_is_not_certain() {
    CheckResult result = rotary().readsIn("S1=MID", "S1-B", "S1-3", "20 kΩ").check();
    assertEquals(Certainty.LIKELY, OnlyFault.of(result).finding().certainty());
  }
}
