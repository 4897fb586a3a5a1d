package dev.ringout.json;

import dev.ringout.harness.Point;
import dev.ringout.harness.Wire;
import dev.ringout.source.Problem;
import dev.ringout.words.FoundWords;
import dev.ringout.work.FoundWire;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** A wire found on a point as one JSON document, {@code ringout-found/1}. */
public final class FoundJson {
  private static final String FORMAT = "ringout-found/1";

  private FoundJson() {}

  /** What is left to say where the file can't be understood. */
  public static String write(List<Problem> problems) {
    return Json.refused(FORMAT, problems);
  }

  /** All of it. */
  public static String write(FoundWire found, List<Problem> problems) {
    Map<String, Object> document = new LinkedHashMap<>();
    document.put("format", FORMAT);
    document.put("wire", found.wire().name());
    document.put("point", found.here().map(Point::toString).orElse(""));
    document.put("belongs", found.belongs().stream().map(Point::toString).toList());
    document.put("listedThere", found.listedHere().stream().map(Wire::name).toList());
    document.put("slip", found.slip().name().toLowerCase(Locale.ROOT));
    document.put("sameNet", found.sameNet());
    document.put("summary", FoundWords.slip(found));
    document.put("problems", Json.problems(problems));
    return Json.text(document);
  }
}
