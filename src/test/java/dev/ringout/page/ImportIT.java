package dev.ringout.page;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;

/** Another shop's wire list, dropped on the page, settled there, and tested by. */
class ImportIT {
  @RegisterExtension static final InBrowser BROWSER = new InBrowser();

  private static final String LIFT =
      """
      Tag,Box side,Bridge side,Colour,Length
      301,J1-1,P2-1,RED,3
      302,J1-2,P2-2,BLK,3
      303,J1-3,TB1-4,WHT,3
      """;

  @TempDir private Path folder;

  private static void drop(Tab tab, String name, String text) {
    tab.script(
        "const files = new DataTransfer();"
            + "files.items.add(new File([arguments[1]], arguments[0]));"
            + "for (const kind of ['dragover', 'drop']) document.body.dispatchEvent(new DragEvent("
            + "kind, { dataTransfer: files, bubbles: true, cancelable: true }));",
        name,
        text);
  }

  @Test
  void a_list_is_dropped_settled_by_a_choice_and_taken_and_a_unit_is_made_to_it() throws Exception {
    try (BenchWithPage bench = BenchWithPage.typed(folder)) {
      Tab tab = BROWSER.open(bench.ticket());
      tab.waitForText("#main", "First give the page a wire list");
      drop(tab, "lift.csv", LIFT);
      tab.waitForText("h1", "lift.csv");
      tab.waitForText(".headline", "Not sure: choose below how it is meant");
      tab.press("It is meant so: lift A1: a row is a wire from one point to another");
      tab.waitForText(".headline", "Understood");
      tab.waitForText("#main", "301 runs from P2 terminal 1 to J1 terminal 1, RED");
      tab.press("It is meant so: Lengths without a unit are in m.");
      tab.until("settled", () -> !tab.page().contains("Lengths without a unit"));
      tab.press("Take this list");
      tab.waitForText(".headline", "Taken. Now you can make units from it");
      tab.press("To the units");
      new Mechanic(tab).begins("0460", "R. Adeyemi");
      tab.waitForText(".run", "Step 1");
    }
  }

  @Test
  void a_file_that_is_no_list_is_refused_in_words_and_nothing_is_taken() throws Exception {
    try (BenchWithPage bench = BenchWithPage.typed(folder)) {
      Tab tab = BROWSER.open(bench.ticket());
      tab.waitFor("#field-file");
      Path file = folder.resolve("notes.txt");
      Files.writeString(file, "the lid is missing\n");
      tab.upload("field-file", file);
      tab.until("told", () -> tab.page().contains("notes.txt"));
      tab.waitForText("#main", "Not understood. Nothing is taken.");
      tab.press("Units");
      tab.waitForText("#main", "First give the page a wire list");
      assertEquals("", tab.text("#field-list"));
    }
  }
}
