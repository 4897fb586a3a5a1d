package dev.ringout.sheet;

import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * A sheet to be written: a row of headings and rows of text.
 *
 * @param rows cells as text, so that no spreadsheet makes a date of a pin
 * @param look how it prints and is filled in
 */
public record OutSheet(String name, List<String> headings, List<List<String>> rows, Look look) {

  /** A plain table. */
  public OutSheet(String name, List<String> headings, List<List<String>> rows) {
    this(name, headings, rows, Look.PLAIN);
  }

  /**
   * How a sheet prints and is filled in.
   *
   * @param title stands above each printed page; empty where the sheet is not for print
   * @param numbers columns whose cells are numbers
   * @param choices what may be chosen in a column
   * @param toFill columns that are written into
   * @param markWhere a formula over row 2: a filled row is marked where it is true; may be empty
   */
  public record Look(
      String title,
      Set<Integer> numbers,
      Map<Integer, List<String>> choices,
      Set<Integer> toFill,
      String markWhere) {
    /** Nothing but a table. */
    public static final Look PLAIN = new Look("", Set.of(), Map.of(), Set.of(), "");
  }
}
