package dev.ringout.standards;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.ringout.units.Gauge;
import org.junit.jupiter.api.Test;

/** Contacts of AS39029 take 28–22, 24–20, 20–16 and 14–12, lugs of AS7928 22–18, 16–14, 12–10. */
class CrimpBarrelsTest {
  private final CrimpBarrels barrels = CrimpBarrels.of(Tables.published(), CopperWire.published());

  private void assertBoth(boolean expected, int one, int other) {
    assertEquals(
        expected, barrels.takeBoth(new Gauge.Awg(one), new Gauge.Awg(other)), one + " " + other);
    assertEquals(
        expected, barrels.takeBoth(new Gauge.Awg(other), new Gauge.Awg(one)), other + " " + one);
  }

  @Test
  void wires_of_one_contact_or_one_lug_may_be_taken_for_each_other() {
    assertBoth(true, 22, 28);
    assertBoth(true, 20, 24);
    assertBoth(true, 20, 16);
    assertBoth(true, 18, 22);
    assertBoth(true, 16, 14);
  }

  @Test
  void a_wire_that_no_barrel_of_the_other_takes_is_seen() {
    assertBoth(false, 26, 30);
    assertBoth(false, 14, 18);
    assertBoth(false, 16, 22);
  }

  @Test
  void metric_wires_go_by_their_area() {
    assertEquals(
        true,
        barrels.takeBoth(new Gauge.SquareMillimetres(0.5), new Gauge.SquareMillimetres(0.34)));
    assertEquals(
        false,
        barrels.takeBoth(new Gauge.SquareMillimetres(0.5), new Gauge.SquareMillimetres(2.5)));
  }
}
