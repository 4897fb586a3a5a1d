package dev.ringout.text;

import dev.ringout.standards.Cautions;
import dev.ringout.text.Page.Style;
import dev.ringout.words.FoundWords;
import dev.ringout.work.FoundWire;

/** What is to be said of a wire found on a point, for a reader at the bench. */
public final class FoundText {
  private FoundText() {}

  /** In sentences. */
  public static String write(FoundWire found, Look look) {
    Page page = new Page(look);
    page.paragraph("", page.styled(Style.STRONG, FoundWords.slip(found)));
    page.paragraph("wire   ", FoundWords.wire(found.wire()));
    if (found.here().isPresent()) {
      page.paragraph("there  ", FoundWords.there(found));
    }
    if (found.slip() != FoundWire.Slip.NONE && found.slip() != FoundWire.Slip.NOT_SAID) {
      page.paragraph("do     ", FoundWords.advice(found));
      page.paragraph("", Cautions.onPageOfHands());
    }
    return page.toString();
  }
}
