package dev.ringout.source;

/**
 * What is wrong in a file.
 *
 * @param place file, sheet and cell
 * @param heading the heading of the cell's column, or empty
 * @param severity an error stops the work, after everything has been read
 * @param text what was found and what was expected
 * @param maybe what was probably meant, or empty
 */
public record Problem(Place place, String heading, Severity severity, String text, String maybe) {

  /** The finding in one line, without its place. */
  public String sentence() {
    return maybe.isEmpty() ? text : text + "; maybe " + maybe;
  }
}
