package dev.ringout.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.ringout.support.Run;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The papers as pages, in a browser as wide as a phone, a tablet and a desk: nothing lies beyond
 * the edge, and no words of a drawing lie over others.
 */
class PapersInBrowserTest {
  private static final Path SAMPLE = Path.of("harness-samples/swing-bridge");
  private static final Path BRIDGE = SAMPLE.resolve("junction-box.xlsx");

  /** Each page in a frame of each width: one start of the browser for all of them. */
  private static final String LOOK =
      """
      var widths = [390, 820, 1440], left = pages.length * widths.length, found = [];
      function beyond(frame, name, width) {
        var root = frame.contentDocument.documentElement;
        if (root.scrollWidth > width + 1) {
          found.push(name + ' at ' + width + ' is ' + root.scrollWidth + ' wide');
        }
        root.querySelectorAll('svg').forEach(function (svg) {
          var words = Array.from(svg.querySelectorAll('text')).map(function (text) {
            return { said: text.textContent, box: text.getBoundingClientRect() };
          });
          words.forEach(function (one, i) {
            words.slice(i + 1).forEach(function (other) {
              var wide = Math.min(one.box.right, other.box.right) - Math.max(one.box.left, other.box.left);
              var high = Math.min(one.box.bottom, other.box.bottom) - Math.max(one.box.top, other.box.top);
              if (wide > 1 && high > 0.4 * Math.min(one.box.height, other.box.height)) {
                found.push(name + ' at ' + width + ': ' + one.said + ' over ' + other.said);
              }
            });
          });
        });
      }
      pages.forEach(function (name) {
        widths.forEach(function (width) {
          var frame = document.createElement('iframe');
          frame.style.cssText = 'border: 0; height: 900px; width: ' + width + 'px';
          frame.onload = function () {
            beyond(frame, name, width);
            if (--left === 0) { answer(found.join('; ')); }
          };
          frame.src = name;
          document.body.appendChild(frame);
        });
      });
      """;

  @TempDir Path folder;

  private void written(String name, int code, Object... words) {
    Object[] all = new Object[words.length + 2];
    System.arraycopy(words, 0, all, 0, words.length);
    all[words.length] = "-o";
    all[words.length + 1] = folder.resolve(name);
    Run run = Run.of(all);
    assertEquals(code, run.code(), run.err());
  }

  private String found(List<String> pages) throws Exception {
    Path page = folder.resolve("frames.html");
    String names = "var pages = ['" + String.join("', '", pages) + "'];";
    Files.writeString(
        page, "<!DOCTYPE html><html><body>" + ShownPage.script(names + LOOK) + "</body></html>");
    return ShownPage.answer(page, 1500);
  }

  @Test
  void nothing_lies_beyond_the_edge_and_no_words_lie_over_others() throws Exception {
    Path faulty = SAMPLE.resolve("point-to-point.xlsx");
    written("work.html", 0, "work", BRIDGE);
    written("plan.html", 0, "plan", BRIDGE, "--serial", "0418");
    written("diff.html", 1, "diff", BRIDGE, SAMPLE.resolve("junction-box-c.xlsx"));
    written("record.html", 1, "report", BRIDGE, faulty, "--date", "2026-11-20");
    written("values.html", 1, "report", BRIDGE, SAMPLE.resolve("point-to-point-values.xlsx"));
    written("lot.html", 1, "lot", BRIDGE, faulty, SAMPLE.resolve("point-to-point-clean.xlsx"));
    List<String> pages =
        List.of("work.html", "plan.html", "diff.html", "record.html", "values.html", "lot.html");
    for (String page : pages) {
      String html = Files.readString(folder.resolve(page));
      assertTrue(html.contains("content=\"width=device-width, initial-scale=1\""), page);
      assertTrue(html.contains("prefers-color-scheme: dark"), page);
    }
    assertEquals("", found(pages));
  }

  /** What these frames are looked at with can find something. */
  @Test
  void a_page_that_is_too_wide_and_words_over_words_are_found() throws Exception {
    Files.writeString(
        folder.resolve("wide.html"),
        "<!DOCTYPE html><html><body><div style=\"width: 600px\">wide</div>"
            + "<svg width=\"90\" height=\"20\"><text y=\"15\">as listed</text>"
            + "<text x=\"9\" y=\"15\">as measured</text></svg></body></html>");
    String found = found(List.of("wide.html"));
    assertTrue(found.contains("wide.html at 390 is 60"), found);
    assertTrue(found.contains("as listed over as measured"), found);
  }
}
