package dev.ringout.pictures;

import dev.ringout.units.Text;

/** Text inside a page of HTML that is also XML. */
public final class Html {
  private static final int MOST_IN_MARGIN = 160;

  private Html() {}

  public static String escaped(String text) {
    return Text.visible(text)
        .replace("&", "&amp;")
        .replace("<", "&lt;")
        .replace(">", "&gt;")
        .replace("\"", "&quot;");
  }

  /** Inside a quoted string of a style sheet that stands in the page: what a margin holds. */
  public static String inCss(String text) {
    String fitting =
        text.length() <= MOST_IN_MARGIN ? text : text.substring(0, MOST_IN_MARGIN) + "…";
    return Text.visible(fitting)
        .replace("\\", "\\\\")
        .replace("\"", "\\\"")
        .replace("<", "\\3C ")
        .replace("&", "\\26 ")
        .replace("\n", " ");
  }
}
