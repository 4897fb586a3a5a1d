package dev.ringout.text;

import dev.ringout.check.CheckResult;
import dev.ringout.check.CheckResult.Verdict;
import dev.ringout.compare.Replaced;
import dev.ringout.readings.Reading;
import dev.ringout.standards.Cautions;
import dev.ringout.units.Text;
import java.util.List;

/**
 * The page that a mechanic reads at arm's length: verdict, faults, what to measure, what is owed.
 */
public final class CheckText {
  private CheckText() {}

  /**
   * The page as text, with terminal colours or without.
   *
   * @param nowDo the commands by which the check goes on
   */
  public static String write(CheckResult result, Look look, NowDo nowDo) {
    Page page = new Page(look);
    CheckHeadline.write(result, page);
    CheckCaveats.write(result, page);
    CheckFaults.write(result, page);
    CheckNotes.write(result, page);
    CheckNext.write(result, page);
    CheckProof.write(result, page);
    changed(result, page);
    cautions(result, page);
    CheckLast.write(result, page, nowDo);
    return page.toString();
  }

  private static void changed(CheckResult result, Page page) {
    List<Replaced> changed =
        result.comparison().replaced().stream().filter(Replaced::changed).toList();
    ReadingLines lines = new ReadingLines(result, page);
    if (!changed.isEmpty()) {
      page.heading("Readings that changed");
      for (Replaced replaced : changed) {
        page.paragraph(
            "  - ",
            Text.of(
                "%s: %s (%s), later %s (%s); the later stands",
                replaced.later().reading().subject(),
                replaced.earlier().reading().measured().text(),
                lines.place(replaced.earlier().reading()),
                replaced.later().reading().measured().text(),
                lines.place(replaced.later().reading())));
      }
    }
  }

  private static void cautions(CheckResult result, Page page) {
    if (result.verdict() == Verdict.CONFORMS) {
      return;
    }
    page.heading("Before you touch the unit");
    boolean insulation = result.comparison().made(Reading.Kind.INSULATION) > 0;
    Cautions.published(insulation).forEach(caution -> page.paragraph("  ! ", caution.text()));
  }
}
