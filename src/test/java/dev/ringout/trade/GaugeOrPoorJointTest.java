package dev.ringout.trade;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.ringout.diagnose.Certainty;
import dev.ringout.diagnose.Fault;
import dev.ringout.diagnose.Fault.HighResistance;
import dev.ringout.diagnose.Fault.WrongGauge;
import dev.ringout.support.UnitUnderTest;
import dev.ringout.units.Gauge;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A wire of another gauge reads what such a wire has, and as the unit's other wires tell what they
 * have within a few percent; a poor joint reads anything. Five metres of stranded AWG 22 have 0.23
 * to 0.27 Ω, of AWG 26 0.57 to 0.69 (MIL-DTL-29606A table III-A).
 */
class GaugeOrPoorJointTest {
  @TempDir Path folder;

  /** So many good wires, each of which reads a little under the most that it may have. */
  private UnitUnderTest wires(int good) {
    UnitUnderTest unit = new UnitUnderTest(folder.resolve("of" + good));
    for (int pin = 1; pin <= good; pin++) {
      unit.wire("W" + pin + ",J1-" + pin + ",P1-" + pin + ",22,5 m")
          .reads("J1-" + pin, "P1-" + pin, "0.25" + pin % 5);
    }
    return unit.wire("W20,J1-20,P1-20,22,5 m");
  }

  private Fault told(int good, String reading) {
    return OnlyFault.of(wires(good).reads("J1-20", "P1-20", reading).check());
  }

  @Test
  void what_a_finer_wire_has_is_that_wire() {
    WrongGauge wrong = assertInstanceOf(WrongGauge.class, told(8, "0.650"));
    assertEquals(new Gauge.Awg(26), wrong.likely());
  }

  @Test
  void the_other_wires_tell_how_much_such_a_wire_has() {
    WrongGauge alone = assertInstanceOf(WrongGauge.class, told(0, "0.650"));
    WrongGauge amongMany = assertInstanceOf(WrongGauge.class, told(8, "0.650"));
    assertTrue(amongMany.odds() > alone.odds() + 0.1, alone.odds() + " " + amongMany.odds());
  }

  @Test
  void between_what_gauges_have_it_is_a_poor_joint() {
    assertInstanceOf(HighResistance.class, told(8, "0.500"));
    assertInstanceOf(HighResistance.class, told(8, "0.800"));
  }

  @Test
  void a_low_value_is_never_certain_to_be_another_gauge_for_copper_may_lie_beside_it() {
    WrongGauge wrong = assertInstanceOf(WrongGauge.class, told(8, "0.100"));
    assertEquals(Certainty.LIKELY, wrong.finding().certainty());
  }
}
