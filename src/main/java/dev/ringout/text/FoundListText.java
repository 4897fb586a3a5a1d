package dev.ringout.text;

import dev.ringout.harness.Point;
import dev.ringout.standards.Cautions;
import dev.ringout.units.Numbers;
import dev.ringout.units.Text;
import dev.ringout.words.FoundListWords;
import dev.ringout.work.FoundList;
import java.util.stream.Collectors;

/** What the readings of an unknown unit tell, for a reader. */
public final class FoundListText {
  private FoundListText() {}

  /** The page. */
  public static String write(FoundList list, Look look) {
    Page page = new Page(look);
    page.paragraph(
        "",
        Text.of(
            "%s of two points and more, %s; %s of %d pairs of nets held apart.",
            Numbers.count(list.nets().size(), "net"),
            Numbers.count(list.alone().size(), "point") + " alone",
            "" + list.pairs().heldApart(),
            list.pairs().all()));
    page.heading("Nets as read");
    for (FoundList.Net net : list.nets()) {
      page.paragraph(
          "  ", net.points().stream().map(Point::toString).collect(Collectors.joining(", ")));
    }
    if (!list.unsure().isEmpty()) {
      page.heading("Not sure");
      FoundListWords.unsure(list).forEach(one -> page.paragraph("  - ", one));
    }
    if (!list.next().isEmpty()) {
      page.heading("Read next");
      page.paragraph("  ", Cautions.onPageOfHands());
      list.next().forEach(one -> page.paragraph("  - ", FoundListWords.sentence(one)));
    }
    return page.toString();
  }
}
