package dev.ringout.report;

import dev.ringout.units.Text;

/** Text inside a page of HTML that is also XML. */
final class Html {
  private Html() {}

  static String escaped(String text) {
    return Text.visible(text)
        .replace("&", "&amp;")
        .replace("<", "&lt;")
        .replace(">", "&gt;")
        .replace("\"", "&quot;");
  }

  /** Inside a quoted string of a style sheet that stands in the page. */
  static String inCss(String text) {
    return Text.visible(text)
        .replace("\\", "\\\\")
        .replace("\"", "\\\"")
        .replace("<", "\\3C ")
        .replace("&", "\\26 ")
        .replace("\n", " ");
  }
}
