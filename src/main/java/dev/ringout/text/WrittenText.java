package dev.ringout.text;

/** That a result was written, where, and what is in it. */
public final class WrittenText {
  private WrittenText() {}

  /**
   * One line.
   *
   * @param what is in it, such as "289 steps", or empty
   */
  public static String write(String file, String what, Look look) {
    return new Page(look)
        .paragraph("", "Written: " + file + (what.isEmpty() ? "" : ", " + what))
        .toString();
  }
}
