package dev.ringout.json;

import dev.ringout.harness.Point;
import dev.ringout.source.Problem;
import dev.ringout.words.FoundListWords;
import dev.ringout.work.FoundList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** What the readings of an unknown unit tell as one JSON document, {@code ringout-asfound/1}. */
public final class FoundListJson {
  private static final String FORMAT = "ringout-asfound/1";

  private FoundListJson() {}

  /** What is left to say where the files can't be understood. */
  public static String write(List<Problem> problems) {
    return Json.refused(FORMAT, problems);
  }

  /** All of it. */
  public static String write(FoundList list, List<Problem> problems) {
    Map<String, Object> document = new LinkedHashMap<>();
    document.put("format", FORMAT);
    document.put(
        "nets",
        list.nets().stream()
            .map(net -> net.points().stream().map(Point::toString).toList())
            .toList());
    document.put("alone", list.alone().stream().map(one -> one.point().toString()).toList());
    document.put("pairs", list.pairs().all());
    document.put("heldApart", list.pairs().heldApart());
    document.put("unsure", FoundListWords.unsure(list));
    document.put("next", list.next().stream().map(FoundListWords::sentence).toList());
    document.put("problems", Json.problems(problems));
    return Json.text(document);
  }
}
