package dev.ringout.imports.list;

import dev.ringout.imports.list.Finding.Kind;
import dev.ringout.source.Place;
import dev.ringout.source.Problem;
import dev.ringout.source.Severity;
import java.util.ArrayList;
import java.util.List;

/** Collects what is suspect in a list. */
public final class Findings {
  private final List<Finding> found = new ArrayList<>();

  public void add(
      Kind kind, Severity severity, Place place, String heading, String text, String maybe) {
    found.add(new Finding(kind, new Problem(place, heading, severity, text, maybe)));
  }

  public void error(Kind kind, Place place, String text, String maybe) {
    add(kind, Severity.ERROR, place, "", text, maybe);
  }

  public void warning(Kind kind, Place place, String text) {
    add(kind, Severity.WARNING, place, "", text, "");
  }

  public void warning(Kind kind, Place place, String text, String maybe) {
    add(kind, Severity.WARNING, place, "", text, maybe);
  }

  public void note(Kind kind, Place place, String text) {
    add(kind, Severity.NOTE, place, "", text, "");
  }

  public List<Finding> list() {
    return List.copyOf(found);
  }
}
