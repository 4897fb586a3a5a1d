package dev.ringout.sheet;

/**
 * A row of a test sheet that holds no reading: a bar across it that says what to do before those
 * below. Its first cell begins with a mark that nobody types.
 */
public final class SheetBar {
  private static final String MARK = "■ ";

  private SheetBar() {}

  /** The text of a bar. */
  public static String of(String words) {
    return MARK + words;
  }

  /** Whether a first cell is that of a bar. */
  public static boolean is(String cell) {
    return cell.startsWith(MARK.strip());
  }
}
