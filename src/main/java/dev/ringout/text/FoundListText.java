package dev.ringout.text;

import dev.ringout.harness.Point;
import dev.ringout.json.Json;
import dev.ringout.source.Problem;
import dev.ringout.units.Numbers;
import dev.ringout.units.Text;
import dev.ringout.work.FoundList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** What the readings of an unknown unit tell, for a reader and for programs. */
public final class FoundListText {
  private FoundListText() {}

  /** The page. */
  public static String write(FoundList list, boolean colour) {
    Page page = new Page(colour);
    page.paragraph(
        "",
        Text.of(
            "%s of two points and more, %s; %s of %d pairs of nets held apart.",
            Numbers.count(list.nets().size(), "net"),
            Numbers.count(list.wiring().pins().size(), "point") + " alone",
            "" + list.pairs().heldApart(),
            list.pairs().all()));
    page.heading("Nets as read");
    for (List<Point> net : list.nets()) {
      page.paragraph("  ", net.stream().map(Point::toString).collect(Collectors.joining(", ")));
    }
    if (!list.unsure().isEmpty()) {
      page.heading("Not sure");
      list.unsure().forEach(one -> page.paragraph("  - ", one));
    }
    if (!list.next().isEmpty()) {
      page.heading("Read next");
      list.next().forEach(one -> page.paragraph("  - ", one));
    }
    return page.toString();
  }

  /** As one JSON document, {@code ringout-asfound/1}. */
  public static String json(FoundList list, List<Problem> problems) {
    Map<String, Object> document = new LinkedHashMap<>();
    document.put("format", "ringout-asfound/1");
    document.put(
        "nets",
        list.nets().stream().map(net -> net.stream().map(Point::toString).toList()).toList());
    document.put(
        "alone", list.wiring().pins().stream().map(pin -> pin.point().toString()).toList());
    document.put("pairs", list.pairs().all());
    document.put("heldApart", list.pairs().heldApart());
    document.put("unsure", list.unsure());
    document.put("next", list.next());
    document.put("problems", Json.problems(problems));
    return Json.text(document);
  }
}
