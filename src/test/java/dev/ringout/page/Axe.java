package dev.ringout.page;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;

/** The rules of accessibility that a program can look at. */
final class Axe {
  private static final String RUN =
      "const done = arguments[arguments.length - 1];"
          + "axe.run(document, { runOnly: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa',"
          + " 'best-practice'], resultTypes: ['violations'] }).then((found) => done("
          + "found.violations.flatMap((rule) => rule.nodes.map((node) => rule.id + ': '"
          + " + node.target.join(' ') + ' ' + node.failureSummary.replace(/\\s+/g, ' ')))),"
          + " (e) => done(['axe: ' + e]));";

  private Axe() {}

  /** What is against the rules on the screen as it is. */
  static List<String> violations(Tab tab) {
    if (tab.script("return typeof axe === 'undefined';").equals(true)) {
      tab.driver().executeScript(source());
    }
    tab.until(
        "all is still", () -> tab.script("return document.getAnimations().length;").equals(0L));
    return ((List<?>) tab.answered(RUN)).stream().map(String::valueOf).toList();
  }

  private static String source() {
    try (InputStream in =
        Objects.requireNonNull(Axe.class.getResourceAsStream("/axe.min.js"), "axe")) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new AssertionError(e);
    }
  }
}
