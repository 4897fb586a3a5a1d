package dev.ringout.text;

import dev.ringout.check.CheckResult;
import dev.ringout.check.Doubt;
import dev.ringout.check.Noted;
import dev.ringout.compare.Conceded;
import dev.ringout.compare.IdleConcession;
import dev.ringout.compare.Judged;
import dev.ringout.readings.Job;
import dev.ringout.readings.Rework;
import dev.ringout.source.Problem;
import dev.ringout.units.Numbers;
import dev.ringout.units.Text;
import dev.ringout.words.Sentences;
import java.util.List;
import java.util.function.Predicate;

/** What is to be known before the faults: cells not read, doubts, rework, waivers. */
final class CheckCaveats {
  private static final int MOST_NOTES = 12;

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
    part.noted();
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

  /** A value may be good, and the note beside it say that something is not. */
  private void noted() {
    List<Noted> noted = result.noted();
    List<Job> remarked =
        result.readings().jobs().stream().filter(job -> !job.remarks().isEmpty()).toList();
    if (noted.isEmpty() && remarked.isEmpty()) {
      return;
    }
    page.heading("Written on the sheet: read it before you believe the verdict");
    for (Job job : remarked) {
      job.remarks()
          .forEach(text -> page.paragraph("  - ", Text.of("\"%s\" (Job, %s)", text, job.file())));
    }
    for (Noted one : noted.subList(0, Math.min(noted.size(), MOST_NOTES))) {
      page.paragraph(
          "  - ",
          Text.of(
              "%s, %s: \"%s\" (%s)",
              one.reading().subject(),
              one.reading().measured().made() ? one.reading().measured().text() : "not tested",
              one.words(),
              lines.place(one.reading())));
    }
    if (noted.size() > MOST_NOTES) {
      page.paragraph("  - ", Text.of("and %d more", noted.size() - MOST_NOTES));
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
