package dev.ringout.text;

import dev.ringout.check.CheckResult;
import dev.ringout.diagnose.NextReading;
import dev.ringout.diagnose.NextReading.Answer;
import dev.ringout.readings.Reading;
import dev.ringout.units.Text;
import dev.ringout.words.NextSentences;
import java.util.List;

/** What to measure next, and what each answer would mean. */
final class CheckNext {
  private static final int MOST_NEXT = 12;

  private CheckNext() {}

  static void write(CheckResult result, Page page) {
    List<NextReading> next = result.diagnosis().next();
    if (next.isEmpty()) {
      return;
    }
    page.heading("What to measure next");
    for (NextReading reading : next.stream().limit(MOST_NEXT).toList()) {
      page.paragraph(
          "  - ",
          Text.of(
              "%s to %s%s%s: %s",
              reading.from(),
              reading.to(),
              reading.state().isNormal() ? "" : " (" + reading.state() + ")",
              reading.kind() == Reading.Kind.INSULATION ? ", insulation" : "",
              NextSentences.why(result.circuit(), reading)));
      for (Answer answer : reading.answers()) {
        page.paragraph("      ", NextSentences.answer(answer));
      }
    }
    if (next.size() > MOST_NEXT) {
      page.paragraph(
          "  - ", Text.of("and %d more (all of them with --json)", next.size() - MOST_NEXT));
    }
  }
}
