package dev.ringout.imports;

import dev.ringout.imports.Finding.Kind;
import dev.ringout.source.Place;
import dev.ringout.source.Problem;
import dev.ringout.source.Severity;
import java.util.ArrayList;
import java.util.List;

/** Collects what is suspect in a list. */
final class Findings {
  private final List<Finding> found = new ArrayList<>();

  void add(Kind kind, Severity severity, Place place, String heading, String text, String maybe) {
    found.add(new Finding(kind, new Problem(place, heading, severity, text, maybe)));
  }

  void error(Kind kind, Place place, String text, String maybe) {
    add(kind, Severity.ERROR, place, "", text, maybe);
  }

  void warning(Kind kind, Place place, String text) {
    add(kind, Severity.WARNING, place, "", text, "");
  }

  void warning(Kind kind, Place place, String text, String maybe) {
    add(kind, Severity.WARNING, place, "", text, maybe);
  }

  void note(Kind kind, Place place, String text) {
    add(kind, Severity.NOTE, place, "", text, "");
  }

  List<Finding> list() {
    return List.copyOf(found);
  }
}
