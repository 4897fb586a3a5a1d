package dev.ringout.imports.list;

import dev.ringout.source.Place;
import dev.ringout.source.Severity;

/**
 * Something suspect in a list.
 *
 * @param severity an error where a wire could not be read
 * @param place where it stands
 * @param heading the heading of the cell's column, or empty
 * @param oddity what it is
 */
public record Finding(Severity severity, Place place, String heading, Oddity oddity) {

  /** What sort of mess it is. */
  public OddityKind kind() {
    return oddity.kind();
  }
}
