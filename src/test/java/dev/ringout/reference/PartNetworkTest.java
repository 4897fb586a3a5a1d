package dev.ringout.reference;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import dev.ringout.circuit.Circuit;
import dev.ringout.circuit.Expected.ThroughParts;
import dev.ringout.circuit.Predictor;
import dev.ringout.circuit.Probing;
import dev.ringout.harness.Point;
import dev.ringout.harness.SwitchState;
import dev.ringout.support.PublishedLimits;
import dev.ringout.support.UnitUnderTest;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Resistance through parts against closed forms of circuit theory. */
class PartNetworkTest {
  @TempDir Path folder;

  private double between(UnitUnderTest unit, String from, String to) {
    Circuit circuit = Circuit.of(unit.harness());
    Probing probing =
        Probing.pair(
            circuit.index(new Point("N", from)),
            circuit.index(new Point("N", to)),
            SwitchState.normal());
    return assertInstanceOf(
            ThroughParts.class,
            new Predictor(circuit, PublishedLimits.of(circuit).resistances()).asListed(probing))
        .lowOhms();
  }

  private UnitUnderTest resistors(String... pairs) {
    UnitUnderTest unit = new UnitUnderTest(folder).wire("W,T-1,T-2");
    for (String pair : pairs) {
      unit.part("N," + pair.replace("-", ",") + ",resistor,1 Ω,0");
    }
    return unit;
  }

  /** Two of three equal windings in delta: the one in parallel with two, 2/3 R (Kirchhoff). */
  @Test
  void a_delta_of_equal_windings_reads_two_thirds_of_one() {
    assertEquals(2.0 / 3, between(resistors("1-2", "2-3", "3-1"), "1", "2"), 1e-12);
  }

  /** A balanced Wheatstone bridge of equal arms reads R, whatever its middle branch is. */
  @Test
  void a_balanced_bridge_reads_one_arm() {
    assertEquals(1, between(resistors("1-2", "2-4", "1-3", "3-4", "2-3"), "1", "4"), 1e-12);
  }

  /**
   * Cube of equal resistors: 5/6 R across the body, 3/4 R across a face, 7/12 R along an edge
   * (classic problem of circuit theory, in many textbooks).
   */
  @Test
  void a_cube_reads_five_sixths_three_quarters_and_seven_twelfths() {
    UnitUnderTest cube =
        resistors(
            "0-1", "0-2", "0-4", "1-3", "1-5", "2-3", "2-6", "3-7", "4-5", "4-6", "5-7", "6-7");
    assertEquals(5.0 / 6, between(cube, "0", "7"), 1e-12);
    assertEquals(3.0 / 4, between(cube, "0", "3"), 1e-12);
    assertEquals(7.0 / 12, between(cube, "0", "1"), 1e-12);
  }
}
