package dev.ringout.text;

import dev.ringout.check.CheckResult;
import dev.ringout.compare.Judged;
import dev.ringout.compare.Outcome;
import dev.ringout.compare.Unproven;
import dev.ringout.readings.Reading;
import dev.ringout.units.Numbers;
import dev.ringout.units.Text;
import dev.ringout.words.BlindSentences;
import dev.ringout.words.NotJudgedSentences;
import dev.ringout.words.Sentences;
import dev.ringout.words.UnprovenSentences;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/** What is not yet proven, and what no such reading shows. */
final class CheckProof {
  private static final int MOST_UNPROVEN = 12;
  private static final int MOST_WIRES = 24;

  private final CheckResult result;
  private final Page page;
  private final ReadingLines lines;

  private CheckProof(CheckResult result, Page page) {
    this.result = result;
    this.page = page;
    this.lines = new ReadingLines(result, page);
  }

  static void write(CheckResult result, Page page) {
    CheckProof part = new CheckProof(result, page);
    part.unproven();
    part.unseen();
  }

  private void unproven() {
    List<Judged> notTested = result.comparison().with(Outcome.NOT_TESTED);
    List<Judged> notJudged = result.comparison().with(Outcome.NOT_JUDGED);
    List<Unproven> unproven = result.coverage().unproven();
    if (!notTested.isEmpty() || !notJudged.isEmpty() || !unproven.isEmpty()) {
      page.heading("What is not yet proven");
    }
    for (Judged judged : notTested) {
      page.paragraph(
          "  - ",
          Text.of(
              "not tested: %s (%s)", judged.reading().subject(), lines.place(judged.reading())));
    }
    for (Judged judged : notJudged) {
      page.paragraph(
          "  - ",
          Text.of(
              "not judged: %s, %s (%s)",
              judged.reading().subject(),
              NotJudgedSentences.why(judged),
              lines.place(judged.reading())));
    }
    gaps(unproven);
  }

  private void unseen() {
    if (!result.coverage().unprovable().isEmpty()) {
      page.heading("What no reading shows with the parts in place");
      several(
          result.coverage().unprovable().stream()
              .map(one -> Sentences.unprovable(result.circuit(), one))
              .toList());
    }
    if (!result.diagnosis().blind().isEmpty()) {
      page.heading("What these readings can't see");
      several(result.diagnosis().blind().stream().map(BlindSentences::of).toList());
    }
  }

  /** What is not proven, where another line does not say it. */
  private void gaps(List<Unproven> unproven) {
    Set<Integer> netsOfWiresOwed = wiresOwed(unproven);
    boolean noInsulation = result.comparison().made(Reading.Kind.INSULATION) == 0;
    SaidByItself byItself =
        new SaidByItself(
            result.circuit().normal(), netsOfWiresOwed, noInsulation, netsOfFailingInsulation());
    if (noInsulation && result.coverage().insulation().needed() > 0) {
      page.paragraph(
          "  - ",
          Text.of(
              "no insulation reading was made: %s of nets",
              Numbers.count(result.coverage().insulation().needed(), "pair")));
    }
    several(
        unproven.stream()
            .filter(one -> one.match(byItself))
            .map(one -> UnprovenSentences.said(result.circuit(), one))
            .toList());
    if (unproven.stream().anyMatch(Unproven::waitsForJoins)) {
      page.paragraph("  - ", "after the repair, prove that these nets are apart from all others");
    }
  }

  /** Of them the failing reading says more than that their insulation is not shown. */
  private Set<Integer> netsOfFailingInsulation() {
    return result.comparison().failing().stream()
        .filter(judged -> judged.reading().kind() == Reading.Kind.INSULATION)
        .flatMap(judged -> judged.probing().points().boxed())
        .map(result.circuit().normal()::of)
        .collect(Collectors.toSet());
  }

  /** Wires that only lack a good reading are named together; gives their nets. */
  private Set<Integer> wiresOwed(List<Unproven> unproven) {
    List<Integer> conductors =
        unproven.stream().flatMapToInt(one -> one.unreadWire().stream()).boxed().toList();
    List<String> wires =
        conductors.stream()
            .map(conductor -> result.circuit().conductors().get(conductor).label())
            .toList();
    if (!wires.isEmpty()) {
      page.paragraph("  - ", "no good reading goes through " + Text.first(wires, MOST_WIRES));
    }
    return conductors.stream()
        .map(conductor -> result.circuit().normal().of(result.circuit().from(conductor)))
        .collect(Collectors.toSet());
  }

  private void several(List<String> lines) {
    lines.stream().limit(MOST_UNPROVEN).forEach(line -> page.paragraph("  - ", line));
    if (lines.size() > MOST_UNPROVEN) {
      page.paragraph(
          "  - ", Text.of("and %d more (all of them with --json)", lines.size() - MOST_UNPROVEN));
    }
  }
}
