package dev.ringout.review;

import dev.ringout.source.Severity;
import java.util.List;

/** Whether the paper says which paper it is. */
final class HeaderMissing implements Check {
  @Override
  public String rule() {
    return "header";
  }

  @Override
  public String about() {
    return "drawing, revision and effectivity are in the header";
  }

  @Override
  public void run(Paper paper, Findings findings) {
    findings.looked();
    for (String name : List.of("drawing", "revision", "effectivity")) {
      boolean given =
          !paper.harness().headerValue(name).isEmpty()
              || (name.equals("effectivity") && !paper.harness().headerValue("unit").isEmpty());
      if (!given) {
        findings.say(
            Severity.WARNING,
            "header " + name,
            "the header names no " + name + ": nobody knows whether this paper is the right one",
            COMMON);
      }
    }
  }
}
