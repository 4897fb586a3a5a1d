package dev.ringout.words;

import dev.ringout.review.Remark;
import java.util.regex.Pattern;

/** A remark on the paper, in words. */
public final class RemarkWords {
  private RemarkWords() {}

  /** What is wrong, and with what. */
  public static String sentence(Remark remark) {
    boolean named = remark.text().matches("(?s)" + Pattern.quote(remark.subject()) + "\\b.*");
    return (named ? "" : remark.subject() + ": ") + remark.text();
  }
}
