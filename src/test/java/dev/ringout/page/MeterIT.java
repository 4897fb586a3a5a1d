package dev.ringout.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.ringout.meter.link.SystemTicks;
import dev.ringout.meter.practice.PracticeInstrument;
import dev.ringout.meter.practice.PracticeProbes;
import dev.ringout.meter.practice.PracticeServer;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.Keys;

/** A meter on a socket, hands that lift and touch, and a page that hears it. */
class MeterIT {
  @RegisterExtension static final InBrowser BROWSER = new InBrowser();

  private static final int LIFTED_MILLIS = 450;

  @TempDir private Path folder;
  private final PracticeProbes probes = new PracticeProbes(new SystemTicks(), 1);

  private PracticeServer meter(int port) throws IOException {
    probes.lead();
    return new PracticeServer(
        new PracticeInstrument(probes, (from, to) -> Optional.empty()), port, 0);
  }

  /** Touches what the page asks for; by a key where nothing is taken by itself. */
  private void touches(Mechanic mechanic, BuiltUnit unit) {
    List<String> points = mechanic.points();
    String step = mechanic.step();
    String last = mechanic.tab.text(".last");
    boolean joined = mechanic.tab.text(".means").contains("joined");
    probes.lift();
    Tab.pause(LIFTED_MILLIS);
    probes.touch(unit.ohms(points.get(0), points.get(1)).orElse(Double.POSITIVE_INFINITY));
    if (!joined) {
      mechanic.tab.keys(Keys.SPACE);
    }
    mechanic.tab.until(
        "taken", () -> !step.equals(mechanic.step()) || !last.equals(mechanic.tab.text(".last")));
  }

  private void holdsTheLeadsTogether(Tab tab) {
    tab.waitFor("[data-key=leads]");
    Tab.pause(Mechanic.LOOKING_MILLIS);
    tab.keys(Keys.SPACE);
    probes.lift();
    Tab.pause(LIFTED_MILLIS);
    probes.touch(0);
    tab.until("leads measured", () -> !tab.isThere("[data-key=leads]"));
  }

  @Test
  void values_are_taken_by_themselves_where_points_are_joined_and_by_a_key_where_they_are_apart()
      throws Exception {
    try (PracticeServer meter = meter(0);
        BenchWithPage bench =
            BenchWithPage.practice(
                folder, "127.0.0.1:" + meter.rawPort(), BenchWithPage.lamps(folder))) {
      Mechanic mechanic = new Mechanic(BROWSER.open(bench.ticket()));
      mechanic.begins("7", "R. Adeyemi");
      Tab tab = mechanic.tab;
      assertTrue(tab.text(".practice").equals("PRACTICE"), tab.page());
      holdsTheLeadsTogether(tab);
      for (int i = 0; i < 20 && !mechanic.isOver(); i++) {
        touches(mechanic, BuiltUnit.lamps());
      }
      mechanic.ends();
      tab.waitForText(".headline", "CONFORMS");
      String record = bench.said("check", "unit:PRACTICE 7").out();
      assertTrue(record.contains("7 continuity"), record);
    }
  }

  @Test
  void a_meter_that_is_pulled_out_is_told_of_and_nothing_is_kept_until_it_is_back()
      throws Exception {
    PracticeServer meter = meter(0);
    int port = meter.rawPort();
    try (BenchWithPage bench =
        BenchWithPage.practice(folder, "127.0.0.1:" + port, BenchWithPage.lamps(folder))) {
      Mechanic mechanic = new Mechanic(BROWSER.open(bench.ticket()));
      mechanic.begins("8", "R. Adeyemi");
      Tab tab = mechanic.tab;
      holdsTheLeadsTogether(tab);
      touches(mechanic, BuiltUnit.lamps());
      String step = mechanic.step();
      meter.close();
      tab.waitForText(".gate", "The meter is lost");
      tab.keys(Keys.SPACE);
      tab.waitForText("#banners", "The meter is lost");
      assertEquals(step, mechanic.step());
      probes.touch(0.067);
      try (PracticeServer back = meter(port)) {
        assertEquals(port, back.rawPort());
        tab.until("back", () -> !tab.isThere(".gate"));
        assertEquals(step, mechanic.step());
        Tab.pause(1000);
        assertEquals(step, mechanic.step(), "probes that were not lifted since are not taken");
        touches(mechanic, BuiltUnit.lamps());
      }
      String check = bench.said("check", "unit:PRACTICE 8").out();
      assertTrue(check.contains("2 continuity"), check);
    } finally {
      meter.close();
    }
  }
}
