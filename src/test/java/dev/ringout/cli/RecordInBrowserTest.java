package dev.ringout.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.ringout.support.Run;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The record in a browser, where the machine has one; elsewhere these tests are skipped. */
class RecordInBrowserTest {
  private static final Path SAMPLE = Path.of("harness-samples/swing-bridge");

  @TempDir Path folder;

  /** What a script finds in the record once it is shown. */
  private String ask(int width, String script) throws IOException, InterruptedException {
    Path page = folder.resolve("record.html");
    Run run =
        Run.of(
            "report",
            SAMPLE.resolve("junction-box.xlsx"),
            SAMPLE.resolve("point-to-point.xlsx"),
            "-o",
            page,
            "--force",
            "--date",
            "2026-11-20");
    assertEquals(1, run.code(), run.err());
    String asking = ShownPage.script("answer((function () {" + script + "})());");
    Files.writeString(page, Files.readString(page).replace("</body>", asking + "</body>"));
    return ShownPage.answer(page, width);
  }

  private static final String ROWS =
      "var form = document.querySelector('form');"
          + "var table = document.getElementById(form.getAttribute('data-for'));"
          + "function shown() { return Array.from(table.tBodies[0].rows)"
          + ".filter(function (r) { return !r.hidden; }).length; }";

  @Test
  void every_reading_is_shown_until_one_chooses() throws Exception {
    assertEquals(
        "206 206 of 206 shown",
        ask(1200, ROWS + "return shown() + ' ' + form.querySelector('output').textContent;"));
  }

  @Test
  void rows_are_chosen_by_verdict_and_by_what_is_typed() throws Exception {
    assertEquals(
        "4 1",
        ask(
            1200,
            ROWS
                + "form.querySelector('select').value = 'open';"
                + "form.dispatchEvent(new Event('change')); var open = shown();"
                + "form.querySelector('input').value = 'j1-h';"
                + "form.dispatchEvent(new Event('input')); return open + ' ' + shown();"));
  }

  @Test
  void nothing_is_fetched_and_every_part_can_be_jumped_to() throws Exception {
    assertEquals(
        "0 true",
        ask(
            1200,
            "var all = Array.from(document.querySelectorAll('nav a')).every(function (a) {"
                + "return document.getElementById(a.getAttribute('href').slice(1)) !== null; });"
                + "return performance.getEntriesByType('resource').length + ' ' + all;"));
  }

  @Test
  void a_narrow_screen_scrolls_tables_and_not_the_page() throws Exception {
    assertEquals(
        "true", ask(500, "return document.documentElement.scrollWidth <= window.innerWidth + 1;"));
  }
}
