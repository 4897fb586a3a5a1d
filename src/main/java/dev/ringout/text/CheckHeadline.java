package dev.ringout.text;

import dev.ringout.check.CheckResult;
import dev.ringout.check.CheckResult.Verdict;
import dev.ringout.check.Values;
import dev.ringout.compare.Comparison;
import dev.ringout.compare.Outcome;
import dev.ringout.compare.ValueVerdict;
import dev.ringout.harness.Harness;
import dev.ringout.readings.Job;
import dev.ringout.text.Page.Style;
import dev.ringout.units.Numbers;
import dev.ringout.units.Ohms;
import dev.ringout.units.Text;
import dev.ringout.words.Sentences;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** The verdict, and of what it is: unit, size, readings, and how far they prove it. */
final class CheckHeadline {
  private final CheckResult result;
  private final Page page;

  private CheckHeadline(CheckResult result, Page page) {
    this.result = result;
    this.page = page;
  }

  static void write(CheckResult result, Page page) {
    CheckHeadline part = new CheckHeadline(result, page);
    part.headline();
  }

  private void headline() {
    page.paragraph("", page.styled(style(result.verdict()), Sentences.verdict(result)));
    page.paragraph("", counts(result.comparison()));
    page.blank();
    about();
  }

  static Style style(Verdict verdict) {
    return switch (verdict) {
      case CONFORMS -> Style.GOOD;
      case FAULTS -> Style.BAD;
      case INCOMPLETE -> Style.OWED;
    };
  }

  private static String counts(Comparison comparison) {
    int accepted = comparison.conceded().size();
    return Text.of(
        "%d conform,%s %d fail, %d not tested, %d not judged.",
        comparison.with(Outcome.CONFORMS).size(),
        accepted == 0 ? "" : " " + accepted + " accepted out of limits,",
        comparison.failing().size(),
        comparison.with(Outcome.NOT_TESTED).size(),
        comparison.with(Outcome.NOT_JUDGED).size());
  }

  /** Of what the verdict is, a line for each thing. */
  private void about() {
    Harness harness = result.harness();
    page.paragraph(
        "Harness  ",
        Sentences.named(
            harness.headerValue("title"),
            harness.headerValue("drawing"),
            revision(harness.headerValue("revision"))));
    page.paragraph("Unit     ", unit());
    page.paragraph(
        "Size     ",
        Text.of(
            "%s, %s, %s",
            Numbers.count(result.circuit().size(), "point"),
            Numbers.count(harness.wires().size(), "wire"),
            Numbers.count(result.circuit().normal().count(), "net")));
    page.paragraph("Readings ", ReadingCounts.of(result));
    values();
    page.paragraph("Proven   ", Sentences.coverage(result.coverage()));
  }

  /** How the ohms of the joins stand to what their wires account for. */
  private void values() {
    Values values = result.values();
    List<String> parts = new ArrayList<>();
    add(parts, values.count(ValueVerdict.AS_EXPECTED), "as expected from their wires");
    add(parts, values.count(ValueVerdict.HIGH), "high");
    add(parts, values.count(ValueVerdict.LOW), "low");
    add(parts, values.count(ValueVerdict.CANT_TELL), "too small for this meter to tell");
    String fixed =
        "compared with the fixed limit, "
            + Ohms.text(result.harness().limits().fixedClosedMaxOhms());
    add(
        parts,
        values.fixedLimit() - values.otherMetal(),
        fixed + " (no gauge or length, or links alone)");
    add(parts, values.otherMetal(), fixed + " (no published value for their metal)");
    if (!parts.isEmpty()) {
      page.paragraph("Ohms     ", String.join(", ", parts));
    }
  }

  private static void add(List<String> parts, long count, String what) {
    if (count > 0) {
      parts.add(count + " " + what);
    }
  }

  private static String revision(String revision) {
    return revision.isEmpty() ? "revision not stated" : "revision " + revision;
  }

  private String unit() {
    String serial = jobValue("serial number");
    return Sentences.named(
        serial.isEmpty() ? "serial number not stated" : "serial " + serial,
        jobRevision(),
        prefixed("read by ", jobValue("operator")),
        prefixed("with ", Sentences.named(jobValue("instrument"), jobValue("instrument number"))));
  }

  private String jobRevision() {
    String revision =
        result.readings().jobs().stream()
            .map(Job::revision)
            .filter(one -> !one.isEmpty())
            .distinct()
            .collect(Collectors.joining(" and "));
    return revision.isEmpty()
        ? "readings do not say against which revision"
        : "read against revision " + revision;
  }

  private static String prefixed(String prefix, String value) {
    return value.isEmpty() ? "" : prefix + value;
  }

  private String jobValue(String name) {
    return result.readings().jobs().stream()
        .map(job -> job.value(name))
        .filter(value -> !value.isEmpty())
        .distinct()
        .collect(Collectors.joining(", "));
  }
}
