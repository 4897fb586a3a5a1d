package dev.ringout.words;

import dev.ringout.harness.Effectivity;
import dev.ringout.harness.Harness;
import java.util.ArrayList;
import java.util.List;

/** What stands above each page: which unit, by which drawing and revision, for which serials. */
public final class UnitTitle {
  private UnitTitle() {}

  /** The title. */
  public static String of(Harness harness) {
    String name = harness.headerValue("title");
    String drawing = harness.headerValue("drawing");
    String revision = harness.headerValue("revision");
    String effectivity = Effectivity.of(harness);
    List<String> parts = new ArrayList<>();
    parts.add(name.isEmpty() ? "Unit without a title" : name);
    if (!drawing.isEmpty()) {
      parts.add(drawing);
    }
    parts.add(revision.isEmpty() ? "revision not stated" : "revision " + revision);
    if (!effectivity.isEmpty()) {
      parts.add("for " + effectivity);
    }
    if (!harness.limits().demands().insulationTest()) {
      parts.add("no insulation test");
    }
    return String.join(", ", parts);
  }
}
