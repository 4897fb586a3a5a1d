package dev.ringout.json;

import dev.ringout.review.Lack;
import dev.ringout.review.Review;
import dev.ringout.source.Problem;
import dev.ringout.words.LackWords;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** A review as one JSON document: {@code docs/reference/review.md}. */
public final class ReviewJson {
  private static final String FORMAT = "ringout-review/1";

  private ReviewJson() {}

  /** Every remark, what is waived, and the checks that could not look. */
  public static String write(Review review, List<Problem> problems) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("format", FORMAT);
    json.put("remarks", Json.remarks(review.remarks()));
    json.put(
        "waived",
        review.waived().stream()
            .map(
                one -> {
                  Map<String, Object> waived = Json.remark(one.remark());
                  waived.put("who", one.waiver().who());
                  waived.put("why", one.waiver().why());
                  waived.put("until", one.waiver().until());
                  return waived;
                })
            .toList());
    json.put(
        "notRun",
        review.notRun().entrySet().stream()
            .map(
                entry -> {
                  Map<String, Object> notRun = new LinkedHashMap<>();
                  notRun.put("rule", entry.getKey());
                  notRun.put("why", why(entry.getValue()));
                  return notRun;
                })
            .toList());
    json.put("problems", Json.problems(problems));
    return Json.text(json);
  }

  private static Map<String, Object> why(Lack lack) {
    return Reason.of(lack.code()).said(LackWords.of(lack));
  }

  /** Files that can't be understood. */
  public static String write(List<Problem> problems) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("format", FORMAT);
    json.put("remarks", List.of());
    json.put("problems", Json.problems(problems));
    return Json.text(json);
  }
}
