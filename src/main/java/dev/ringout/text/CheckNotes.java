package dev.ringout.text;

import dev.ringout.check.CheckResult;
import dev.ringout.compare.Judged;
import dev.ringout.compare.ValueVerdict;
import dev.ringout.review.Remark;
import dev.ringout.source.Severity;
import dev.ringout.units.Numbers;
import dev.ringout.units.Text;
import dev.ringout.words.InsulationNoteSentences;
import java.util.List;

/** What is odd beside the faults: values, insulation, and the paper. */
final class CheckNotes {
  private static final int MOST_READINGS = 8;

  private final CheckResult result;
  private final Page page;
  private final ReadingLines lines;

  private CheckNotes(CheckResult result, Page page) {
    this.result = result;
    this.page = page;
    this.lines = new ReadingLines(result, page);
  }

  static void write(CheckResult result, Page page) {
    CheckNotes part = new CheckNotes(result, page);
    part.unlike();
    part.insulationNotes();
    part.remarks();
  }

  /** Joined and within the limit, but with ohms that the wires do not account for. */
  private void unlike() {
    List<Judged> unlike = result.values().unlike();
    if (unlike.isEmpty()) {
      return;
    }
    page.heading("Joined, but not as expected from the wires");
    for (Judged judged : unlike.subList(0, Math.min(unlike.size(), MOST_READINGS))) {
      page.paragraph(
          "  - ",
          Text.of(
              "%s reads %s, %s; expected %s (%s)",
              judged.reading().subject(),
              judged.reading().measured().text(),
              judged.value() == ValueVerdict.LOW ? "low" : "high",
              judged.limit().expected().text(),
              lines.place(judged.reading())));
    }
    if (unlike.size() > MOST_READINGS) {
      page.paragraph("  - ", Text.of("and %d more", unlike.size() - MOST_READINGS));
    }
    boolean anyLow = unlike.stream().anyMatch(judged -> judged.value() == ValueVerdict.LOW);
    page.paragraph(
        "    ",
        anyLow
            ? "Low: another way lies in parallel, or the wire is shorter or thicker than listed, or"
                + " the leads were nulled too far."
            : "High: within the limit of the harness file, and more than copper and contacts"
                + " have.");
  }

  private void insulationNotes() {
    List<String> notes = InsulationNoteSentences.of(result.insulationNotes());
    if (!notes.isEmpty()) {
      page.heading("On the insulation readings");
      notes.forEach(note -> page.paragraph("  ! ", note));
    }
  }

  private void remarks() {
    List<Remark> remarks = result.review().remarks();
    List<Remark> shown =
        remarks.stream().filter(remark -> remark.severity() != Severity.NOTE).toList();
    if (!shown.isEmpty()) {
      page.heading("What is wrong on paper");
      ReviewText.remarks(page, shown);
    }
    int notes = remarks.size() - shown.size();
    if (notes > 0) {
      page.blank()
          .line("ringout review shows " + Numbers.count(notes, "note") + " on the paper besides.");
    }
  }
}
