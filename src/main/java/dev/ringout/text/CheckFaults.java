package dev.ringout.text;

import dev.ringout.check.CheckResult;
import dev.ringout.compare.Contradiction;
import dev.ringout.diagnose.Fault;
import dev.ringout.diagnose.Fault.Alternative;
import dev.ringout.harness.Wire;
import dev.ringout.text.Page.Style;
import dev.ringout.units.Numbers;
import dev.ringout.units.Text;
import dev.ringout.words.FaultSentences;
import dev.ringout.words.Sentences;
import java.util.List;
import java.util.Locale;

/** The faults, and the failing readings that no fault explains. */
final class CheckFaults {
  private static final int MOST_ALTERNATIVES = 3;
  private static final double LEAST_ODDS_SHOWN = 0.015;

  private final CheckResult result;
  private final Page page;
  private final ReadingLines lines;

  private CheckFaults(CheckResult result, Page page) {
    this.result = result;
    this.page = page;
    this.lines = new ReadingLines(result, page);
  }

  static void write(CheckResult result, Page page) {
    CheckFaults part = new CheckFaults(result, page);
    part.faults();
    part.unexplained();
  }

  private void faults() {
    List<Fault> faults = result.diagnosis().faults();
    if (faults.isEmpty()) {
      return;
    }
    page.heading("What is wrong");
    int number = 0;
    for (Fault fault : faults) {
      number++;
      fault(number, fault);
    }
  }

  private void fault(int number, Fault fault) {
    page.blank();
    String lead = Text.of("%2d  ", number);
    page.line(
        lead
            + page.styled(
                Style.BAD, FaultSentences.kind(fault).toUpperCase(Locale.ROOT).replace('-', ' '))
            + "  ("
            + fault.finding().certainty().word()
            + ")");
    page.paragraph("    ", FaultSentences.summary(fault));
    for (Wire wire : fault.wires()) {
      page.paragraph("    wire   ", Sentences.wire(wire));
    }
    lines.shown("    shown  ", fault.finding().readings());
    page.paragraph("    do     ", FaultSentences.advice(fault));
    alternatives(fault);
  }

  private void alternatives(Fault fault) {
    List<Alternative> alternatives =
        fault.finding().alternatives().stream()
            .filter(alternative -> alternative.odds() >= LEAST_ODDS_SHOWN)
            .toList();
    for (int i = 0; i < Math.min(alternatives.size(), MOST_ALTERNATIVES); i++) {
      Alternative alternative = alternatives.get(i);
      page.paragraph(
          "    or     ",
          Text.of(
              "%s (%s)",
              FaultSentences.slips(alternative.slips()), Sentences.percent(alternative.odds())));
    }
    fault
        .finding()
        .runnerUp()
        .ifPresent(one -> page.paragraph("    not    ", FaultSentences.runnerUp(one)));
    if (alternatives.size() > MOST_ALTERNATIVES) {
      page.paragraph(
          "    or     ",
          Numbers.count(alternatives.size() - (long) MOST_ALTERNATIVES, "less likely explanation"));
    }
  }

  private void unexplained() {
    if (!result.diagnosis().searchComplete()) {
      page.blank()
          .paragraph(
              "",
              "The search for explanations was cut short: there may be others, as likely as any"
                  + " given here.");
    }
    if (!result.diagnosis().unexplained().isEmpty()) {
      page.heading("Failing readings without an explanation");
      lines.shown("  - ", result.diagnosis().unexplained());
    }
    if (!result.comparison().contradictions().isEmpty()) {
      page.heading("Readings that can't all be true");
      for (Contradiction contradiction : result.comparison().contradictions()) {
        page.paragraph(
            "  - ",
            lines.inLine(List.of(contradiction.apart()))
                + ", yet "
                + lines.inLine(contradiction.joins()));
      }
    }
  }
}
