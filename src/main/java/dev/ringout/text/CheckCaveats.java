package dev.ringout.text;

import dev.ringout.check.CheckResult;
import dev.ringout.check.Doubt;
import dev.ringout.compare.Conceded;
import dev.ringout.compare.IdleConcession;
import dev.ringout.compare.Judged;
import dev.ringout.readings.Rework;
import dev.ringout.source.Problem;
import dev.ringout.units.Numbers;
import dev.ringout.units.Text;
import dev.ringout.words.Sentences;
import java.util.List;
import java.util.function.Predicate;

/** What is to be known before the faults: cells not read, doubts, rework, waivers. */
final class CheckCaveats {
  private final CheckResult result;
  private final Page page;
  private final ReadingLines lines;

  private CheckCaveats(CheckResult result, Page page) {
    this.result = result;
    this.page = page;
    this.lines = new ReadingLines(result, page);
  }

  static void write(CheckResult result, Page page) {
    CheckCaveats part = new CheckCaveats(result, page);
    part.unread();
    part.doubts();
    part.overtaken();
    part.conceded();
  }

  /** The cells that could not be read: nothing is final before they are. */
  private void unread() {
    if (result.readings().unread().isEmpty()) {
      return;
    }
    page.heading("Cells that can't be understood: no verdict before they are mended");
    for (Problem problem : result.readings().unread()) {
      page.paragraph("  ! ", Text.of("%s (%s)", problem.sentence(), problem.place()));
    }
  }

  private void doubts() {
    // Leads that were not nulled make faults of good joints: to be settled before anything else.
    doubts("First of all", one -> one.doubt().ofLeads().isPresent());
    doubts("What weakens this verdict", one -> one.doubt().ofLeads().isEmpty());
  }

  private void doubts(String heading, Predicate<Doubt.Raised> which) {
    List<Doubt.Raised> shown = result.doubts().stream().filter(which).toList();
    if (!shown.isEmpty()) {
      page.heading(heading);
      shown.forEach(doubt -> page.paragraph("  ! ", Sentences.doubt(doubt)));
    }
  }

  /** What was opened and touched, and which readings are older than that. */
  private void overtaken() {
    if (result.readings().reworks().isEmpty()) {
      return;
    }
    page.heading("Opened and touched");
    for (Rework rework : result.readings().reworksOnce()) {
      page.paragraph("  - ", Sentences.rework(rework));
    }
    List<Judged> overtaken = result.comparison().overtaken();
    long failed = overtaken.stream().filter(judged -> judged.outcome().fails()).count();
    if (overtaken.isEmpty()) {
      page.paragraph("    ", "All readings given were taken after that.");
      return;
    }
    page.paragraph(
        "    ",
        Text.of(
            "%s taken before, where it was opened: they no longer count%s.",
            Numbers.count(overtaken.size(), "reading"),
            failed == 0 ? "" : Text.of(" (%d of them failed)", failed)));
  }

  /** Readings out of limits that an inspector accepts, and words of his that cover nothing. */
  private void conceded() {
    if (!result.comparison().conceded().isEmpty()) {
      page.heading("Out of limits, and accepted");
      for (Conceded conceded : result.comparison().conceded()) {
        page.paragraph(
            "  - ",
            Sentences.conceded(conceded) + " (" + lines.place(conceded.judged().reading()) + ")");
      }
    }
    if (!result.comparison().idleConcessions().isEmpty()) {
      page.heading("Waivers that cover nothing");
      for (IdleConcession idleConcession : result.comparison().idleConcessions()) {
        page.paragraph(
            "  - ",
            Sentences.idle(idleConcession) + " (" + idleConcession.concession().place() + ")");
      }
    }
  }
}
