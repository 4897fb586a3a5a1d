package dev.ringout.page;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.ringout.support.Run;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;

/** A unit without a fault, from its serial number to a signed record. */
class GoodUnitIT {
  @RegisterExtension static final InBrowser BROWSER = new InBrowser();

  @TempDir private Path folder;

  @Test
  void a_good_unit_is_led_to_its_end_and_its_record_is_what_report_makes() throws Exception {
    try (BenchWithPage bench = BenchWithPage.typed(folder, BenchWithPage.lamps(folder))) {
      Mechanic mechanic = new Mechanic(BROWSER.open(bench.ticket()));
      mechanic.begins("0418", "R. Adeyemi");
      mechanic.readsAll(BuiltUnit.lamps());
      mechanic.ends();
      Tab tab = mechanic.tab;
      tab.waitForText(".headline", "CONFORMS");
      assertEquals(0, bench.said("check", "unit:0418").code());
      tab.press("Record");
      tab.waitForText("h1", "Record of unit 0418");
      Map<String, String> forms = tab.links("#main section a.button");
      assertEquals(3, forms.size(), forms.toString());
      for (String href : forms.values()) {
        Path file = folder.resolve("record" + href.substring(href.lastIndexOf('.')));
        Run made = bench.said("report", "unit:0418", "-o", file);
        assertEquals(0, made.code(), made.err());
        assertArrayEquals(Files.readAllBytes(file), tab.fetched(href), href);
      }
      assertTrue(tab.page().contains("Nobody has signed"));
    }
  }
}
