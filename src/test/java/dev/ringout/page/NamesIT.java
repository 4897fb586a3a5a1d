package dev.ringout.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;

/** Names are names: what somebody gives as one is shown, and never runs. */
class NamesIT {
  @RegisterExtension static final InBrowser BROWSER = new InBrowser();

  private static final String IMAGE = "<img src=x onerror=window.ran=1>";
  private static final String SCRIPT = "\"><script>window.ran=1</script>";
  private static final String ADDRESS = "javascript:window.ran=1";

  @TempDir private Path folder;

  private static String cell(String text) {
    return '"' + text.replace("\"", "\"\"") + '"';
  }

  private Path list() throws Exception {
    Path list = Files.createDirectories(folder.resolve("list"));
    Files.writeString(
        list.resolve("wires.csv"),
        "Wire,From,To,Gauge,Length (m),Signal\n"
            + String.join(",", cell(IMAGE), "J1-<b>", "P1-<i>", "20", "2", cell(SCRIPT))
            + "\nW2,J1-2,P1-2,20,2,"
            + cell(IMAGE)
            + "\n");
    Files.writeString(
        list.resolve("header.csv"),
        "Name,Value\ntitle,"
            + cell(SCRIPT)
            + "\ndrawing,"
            + cell(IMAGE)
            + "\nrevision,"
            + cell(ADDRESS)
            + "\n");
    Files.writeString(list.resolve("limits.csv"), "Name,Value,Unit\ninsulation test,none,\n");
    return list;
  }

  private static void assertShown(Tab tab, String... texts) {
    for (String text : texts) {
      tab.until("shown: " + text, () -> tab.page().contains(text));
    }
    assertEquals("", tab.script("return window.ran;"), "nothing ran");
  }

  @Test
  void whatever_is_given_as_a_name_is_shown_as_text_on_every_screen() throws Exception {
    try (BenchWithPage bench = BenchWithPage.another(folder, "Bench " + IMAGE, list())) {
      Mechanic mechanic = new Mechanic(BROWSER.open(bench.ticket()));
      Tab tab = mechanic.tab;
      assertShown(tab, "Bench " + IMAGE);
      mechanic.begins(SCRIPT, IMAGE);
      assertShown(tab, SCRIPT, IMAGE);
      mechanic.types("o");
      mechanic.types("o");
      tab.keys("?");
      assertShown(tab, "Why");
      tab.press("Close");
      tab.keys("n");
      tab.fill("What you saw", SCRIPT + IMAGE);
      tab.press("Keep the note");
      tab.until("kept", () -> !tab.isThere("dialog[open]"));
      tab.keys("s");
      tab.fill("Another reason", IMAGE);
      tab.press("Skip");
      tab.until("skipped", () -> !tab.isThere("dialog[open]"));
      tab.keys("/");
      tab.fill("A point", IMAGE + "x");
      tab.press("Go there");
      tab.waitForText("#banners", IMAGE + "x");
      tab.press("Leave it");
      tab.scan(SCRIPT + "y");
      assertShown(tab, SCRIPT + "y");
      tab.press("Unit");
      tab.waitFor(".proof");
      assertShown(tab, SCRIPT + IMAGE, IMAGE, ADDRESS, "<b>");
      tab.press("Tick ends as they are made");
      tab.waitFor("ol.ticks");
      tab.fill("Who ticks", SCRIPT);
      tab.press("Made");
      tab.waitForText("ol.ticks", "made by " + SCRIPT);
      assertShown(tab, IMAGE);
      tab.press("Record");
      tab.waitFor("#sign");
      assertShown(tab, SCRIPT, IMAGE);
      tab.press("Units");
      tab.waitFor(".cards");
      assertShown(tab, SCRIPT, IMAGE, ADDRESS);
      tab.fill("Search", IMAGE + "z");
      assertShown(tab, "No unit found for");
      assertTrue(tab.texts("a[href]").stream().noneMatch(String::isBlank));
      assertEquals(
          "", tab.script("return document.querySelector('a[href^=\"javascript\" i]') ?? ''"));
    }
  }
}
