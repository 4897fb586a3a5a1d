package dev.ringout.sheet;

/**
 * What stands in the margins of every printed page, and on which paper.
 *
 * @param title above each page
 * @param whichUnit beside it: a place to write which unit it is
 * @param resume below, where it is written how far the work has come; may be empty
 * @param signed below, where those sign who did it and who looked at it
 */
public record PrintForm(
    String title, String whichUnit, String resume, String signed, PaperSize paper) {
  /** The paper of a printer. */
  public enum PaperSize {
    /** 210 mm by 297 mm, ISO 216. */
    A4,
    /** 8.5 in by 11 in. */
    LETTER
  }

  /** A sheet that one reads a meter for. */
  public static PrintForm tested(String title, PaperSize paper) {
    return new PrintForm(
        title,
        "serial number ______________",
        "",
        "read by __________   inspected __________",
        paper);
  }

  /** A page of many units. */
  public static PrintForm lot(String title, PaperSize paper) {
    return new PrintForm(title, "lot ______________", "", "looked at by __________", paper);
  }

  /** A sheet that one wires by. */
  public static PrintForm wired(String title, PaperSize paper) {
    return new PrintForm(
        title,
        "serial number ______________",
        "go on at __________",
        "made by __________   checked by __________",
        paper);
  }
}
