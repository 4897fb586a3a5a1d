package dev.ringout.harness;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** What counts as joined and as apart where a list says nothing (common practice, no source). */
class LimitsTest {
  private final Limits usual = Limits.usual(0.1);

  @Test
  void a_list_that_says_nothing_has_its_joins_computed_and_asks_100_megohms_at_500_volts() {
    assertEquals(OptionalDouble.empty(), usual.closedMaxOhms());
    assertEquals(1, usual.fixedClosedMaxOhms());
    assertEquals(100e3, usual.openMinOhms());
    assertEquals(100e6, usual.insulationMinOhms());
    assertEquals(500, usual.insulationVolts());
  }

  @Test
  void a_limit_that_is_changed_by_its_name_leaves_all_others() {
    Limits warm = usual.toBuilder().celsius(40).build();
    assertEquals(40, warm.celsius());
    assertEquals(usual, warm.toBuilder().celsius(usual.celsius()).build());
  }
}
