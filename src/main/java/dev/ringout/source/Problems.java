package dev.ringout.source;

import java.util.ArrayList;
import java.util.List;

/** Collects every problem of every file: reading goes on after each. */
public final class Problems {
  private final List<Problem> found = new ArrayList<>();

  /** Problems of which there is none yet. */
  public Problems() {
    // Nothing was found so far.
  }

  /** Adds a problem. */
  public void add(Problem problem) {
    found.add(problem);
  }

  /** Adds an error without a suggestion. */
  public void error(Place place, String text) {
    add(new Problem(place, "", Severity.ERROR, text, ""));
  }

  /** Adds a warning without a suggestion. */
  public void warning(Place place, String text) {
    add(new Problem(place, "", Severity.WARNING, text, ""));
  }

  /** Whether anything found stops the work. */
  public boolean hasErrors() {
    return found.stream().anyMatch(problem -> problem.severity() == Severity.ERROR);
  }

  /** Everything found, in the order of reading. */
  public List<Problem> list() {
    return List.copyOf(found);
  }
}
