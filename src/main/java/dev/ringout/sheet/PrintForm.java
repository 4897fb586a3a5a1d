package dev.ringout.sheet;

/**
 * What stands in the margins of every printed page, and on which paper.
 *
 * @param title above each page
 * @param whichUnit beside it: a place to write which unit it is
 * @param resume below, where it is written how far the work has come; may be empty
 * @param signed below, where those sign who did it and who looked at it
 * @param upright whether the paper is higher than wide
 */
public record PrintForm(
    String title,
    String whichUnit,
    String resume,
    String signed,
    PaperSize paper,
    boolean upright) {
  /** Left and right of what is printed. */
  public static final double MARGIN_MM = 10;

  /** An inch has 72 points and 25.4 mm. */
  public static final double POINTS_OF_A_MM = 72 / 25.4;

  private static final String SERIAL = "serial number ";
  private static final String TO_WRITE = SERIAL + "______________";
  private static final String READ_BY = "read by __________   inspected __________";

  /** The paper of a printer. */
  public enum PaperSize {
    /** 210 mm by 297 mm, ISO 216. */
    A4(210, 297),
    /** 8.5 in by 11 in. */
    LETTER(215.9, 279.4);

    private final double shortMm;
    private final double longMm;

    PaperSize(double shortMm, double longMm) {
      this.shortMm = shortMm;
      this.longMm = longMm;
    }

    /** Its shorter side. */
    public double shortMm() {
      return shortMm;
    }

    /** Its longer side. */
    public double longMm() {
      return longMm;
    }
  }

  /** A sheet that one reads a meter for. */
  public static PrintForm tested(String title, PaperSize paper) {
    return new PrintForm(title, TO_WRITE, "", READ_BY, paper, true);
  }

  /** A record, whose tables are wide. */
  public static PrintForm recorded(String title, PaperSize paper) {
    return new PrintForm(title, TO_WRITE, "", READ_BY, paper, false);
  }

  /** A page of many units. */
  public static PrintForm lot(String title, PaperSize paper) {
    return new PrintForm(title, "lot ______________", "", "looked at by __________", paper, false);
  }

  /** A sheet that one wires by. */
  public static PrintForm wired(String title, PaperSize paper) {
    return new PrintForm(
        title,
        TO_WRITE,
        "go on at __________",
        "made by __________   checked by __________",
        paper,
        false);
  }

  /** The same of one unit; of one without a serial number there is a place to write it. */
  public PrintForm of(String serial) {
    return serial.isEmpty()
        ? this
        : new PrintForm(title, SERIAL + serial, resume, signed, paper, upright);
  }

  /** How wide what is printed can be. */
  public double widthMm() {
    return (upright ? paper.shortMm : paper.longMm) - 2 * MARGIN_MM;
  }
}
