package dev.ringout.text;

import dev.ringout.harness.Harness;
import dev.ringout.review.Remark;
import dev.ringout.review.Review;
import dev.ringout.review.Review.Waived;
import dev.ringout.source.Severity;
import dev.ringout.text.Page.Style;
import dev.ringout.units.Numbers;
import dev.ringout.units.Text;
import dev.ringout.words.LackWords;
import dev.ringout.words.RemarkWords;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** What is wrong on paper, the important first, each rule with its source once. */
public final class ReviewText {
  private static final int SHOWN_OF_A_RULE = 20;

  private ReviewText() {}

  /** The page for the person who reads the paper. */
  public static String write(Harness harness, Review review, Look look) {
    Page page = new Page(look);
    long errors = review.count(Severity.ERROR);
    String verdict =
        errors > 0
            ? page.styled(Style.BAD, Numbers.count(errors, "error").toUpperCase(Locale.ROOT))
            : page.styled(Style.GOOD, "NO ERROR");
    page.line(
        Text.of(
            "%s on paper, %s, %s.%s",
            verdict,
            Numbers.count(review.count(Severity.WARNING), "warning"),
            Numbers.count(review.count(Severity.NOTE), "note"),
            review.waived().isEmpty()
                ? ""
                : " " + Numbers.count(review.waived().size(), "remark") + " waived."));
    title(page, harness);
    for (Severity severity : Severity.values()) {
      List<Remark> some =
          review.remarks().stream().filter(remark -> remark.severity() == severity).toList();
      if (!some.isEmpty()) {
        page.heading(severity.word() + "s");
        remarks(page, some);
      }
    }
    waived(page, review);
    notRun(page, review);
    return page.toString();
  }

  private static void title(Page page, Harness harness) {
    List<String> parts = new ArrayList<>();
    for (String name : List.of("title", "drawing")) {
      if (!harness.headerValue(name).isEmpty()) {
        parts.add(harness.headerValue(name));
      }
    }
    if (!harness.headerValue("revision").isEmpty()) {
      parts.add("revision " + harness.headerValue("revision"));
    }
    parts.add(Numbers.count(harness.wires().size(), "wire"));
    page.paragraph("", String.join(", ", parts));
  }

  /** Remarks by rule and source. */
  static void remarks(Page page, List<Remark> remarks) {
    Map<String, List<Remark>> byRule = new LinkedHashMap<>();
    for (Remark remark : remarks) {
      byRule
          .computeIfAbsent(remark.rule() + "\t" + remark.source(), key -> new ArrayList<>())
          .add(remark);
    }
    byRule.forEach(
        (key, some) -> {
          page.blank().line("  " + page.styled(Style.STRONG, some.get(0).rule()));
          for (Remark remark : some.subList(0, Math.min(SHOWN_OF_A_RULE, some.size()))) {
            page.paragraph("  - ", RemarkWords.sentence(remark));
          }
          if (some.size() > SHOWN_OF_A_RULE) {
            page.line("    and " + (some.size() - SHOWN_OF_A_RULE) + " more; --json has them all");
          }
          page.paragraph("    source: ", some.get(0).source());
        });
  }

  private static void waived(Page page, Review review) {
    if (review.waived().isEmpty()) {
      return;
    }
    page.heading("Waived");
    for (Waived waived : review.waived()) {
      page.paragraph(
          "  - ",
          Text.of(
              "%s %s at %s: %s. Accepted by %s: %s%s",
              waived.remark().severity().word(),
              waived.remark().rule(),
              waived.remark().subject(),
              waived.remark().text(),
              waived.waiver().who(),
              waived.waiver().why(),
              waived.waiver().until().isEmpty() ? "" : ", until " + waived.waiver().until()));
    }
  }

  private static void notRun(Page page, Review review) {
    if (review.notRun().isEmpty()) {
      return;
    }
    page.heading("Checks that had nothing to look at");
    review
        .notRun()
        .forEach(
            (rule, lack) ->
                page.paragraph(
                    "  - ", rule + " (" + review.checks().get(rule) + "): " + LackWords.of(lack)));
  }
}
