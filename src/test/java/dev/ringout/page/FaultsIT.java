package dev.ringout.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;

/** What a mechanic is told of a unit that was built wrong, while the probes are still on it. */
class FaultsIT {
  @RegisterExtension static final InBrowser BROWSER = new InBrowser();

  @TempDir private Path folder;

  /** What was asked, and what the page says of the unit in the end. */
  private record Led(List<String> asked, String page) {}

  private Led led(BuiltUnit unit) throws Exception {
    try (BenchWithPage bench = BenchWithPage.typed(folder, BenchWithPage.lamps(folder))) {
      Mechanic mechanic = new Mechanic(BROWSER.open(bench.ticket()));
      mechanic.begins("0419", "R. Adeyemi");
      List<String> asked = mechanic.readsAll(unit);
      mechanic.ends();
      mechanic.tab.waitForText(".headline", "FAULTS");
      assertEquals(1, bench.said("check", "unit:0419").code());
      return new Led(asked, mechanic.tab.page());
    }
  }

  private static void assertSays(Led led, String... sentences) {
    for (String sentence : sentences) {
      assertTrue(led.page().contains(sentence), sentence + ": " + led.asked() + led.page());
    }
  }

  @Test
  void an_open_wire_is_named() throws Exception {
    assertSays(led(BuiltUnit.lamps().without("J1-a", "P1-2")), "W2 is open");
  }

  @Test
  void two_crossed_wires_are_named_and_the_telling_readings_are_asked_for() throws Exception {
    Led led =
        led(
            BuiltUnit.lamps()
                .without("J1-A", "P1-1")
                .without("J1-B", "P1-3")
                .wire("J1-A", "P1-3", 0.067)
                .wire("J1-B", "P1-1", 0.067));
    assertSays(led, "W1 and W3 are crossed");
    assertTrue(led.asked().stream().anyMatch(one -> one.startsWith("offer")), led.toString());
    assertTrue(led.asked().stream().anyMatch(one -> one.startsWith("Extra step")), led.toString());
  }

  @Test
  void a_poor_joint_is_named() throws Exception {
    assertSays(
        led(BuiltUnit.lamps().without("J2-1", "P2-1").wire("J2-1", "P2-1", 0.9)), "J2-1", "poor");
  }

  @Test
  void two_wires_that_touch_are_named() throws Exception {
    assertSays(
        led(BuiltUnit.lamps().wire("P1-1", "P1-2", 0.02)),
        "P1-1 and P1-2 are joined and should not be");
  }
}
