package dev.ringout.text;

import dev.ringout.check.CheckResult.Verdict;
import dev.ringout.lot.ByFactor;
import dev.ringout.lot.Counted;
import dev.ringout.lot.Lot;
import dev.ringout.lot.LotUnit;
import dev.ringout.lot.SharedFault;
import dev.ringout.standards.Cautions;
import dev.ringout.text.Page.Style;
import dev.ringout.units.Numbers;
import dev.ringout.units.Text;
import dev.ringout.words.LotWords;
import dev.ringout.words.UnitTitle;
import java.util.List;

/** Many units side by side as a page on a terminal. */
public final class LotText {
  /** What a line has before its bar. */
  private static final int BESIDE_BAR = 46;

  private static final int MOST_UNITS = 60;
  private static final int MOST_OUTSTANDING = 20;
  private static final int MOST_COUNTED = 8;
  private static final int LONGEST_NAME = 24;

  private final Lot lot;
  private final Page page;

  private LotText(Lot lot, Look look) {
    this.lot = lot;
    this.page = new Page(look);
  }

  /** The page. */
  public static String write(Lot lot, Look look) {
    LotText text = new LotText(lot, look);
    text.headline();
    text.units();
    text.shared();
    text.outstanding();
    text.levels();
    text.counted("Faults by kind", lot.kinds());
    text.counted("Faults by item (one between two items counts at both)", lot.places());
    text.cautions();
    return text.page.toString();
  }

  private void headline() {
    page.paragraph("", page.styled(CheckHeadline.style(lot.verdict()), LotWords.verdict(lot)));
    page.blank();
    page.paragraph("Harness  ", UnitTitle.of(lot.harness()));
    page.paragraph("Passed   ", LotWords.firstPass(lot));
    page.paragraph(
        "Joins    ", Text.of("%s read as numbers", Numbers.count(lot.joins().size(), "join")));
    LotWords.limits(lot).forEach(limit -> page.paragraph("Few      ", limit));
    lot.sameValues().forEach(units -> page.paragraph("Copied!  ", LotWords.sameValues(units)));
  }

  /** A large lot shows those that are not simply good. */
  private void units() {
    page.heading("Units");
    boolean all = lot.units().size() <= MOST_UNITS;
    List<LotUnit> told = lot.units().stream().filter(unit -> all || !unit.passedAtOnce()).toList();
    int width = told.stream().mapToInt(unit -> name(unit.name()).length()).max().orElse(1);
    for (LotUnit unit : told.subList(0, Math.min(MOST_UNITS, told.size()))) {
      // Padded before it is coloured: colours have no width.
      String verdict = Text.of("%-21s", LotWords.verdict(unit));
      page.paragraph(
          Text.of("  %-" + width + "s  ", name(unit.name())) + verdict + " ", LotWords.what(unit));
    }
    if (told.size() > MOST_UNITS) {
      page.paragraph(
          "  ", Text.of("and %d more that did not pass at once", told.size() - MOST_UNITS));
    }
    if (!all) {
      page.paragraph(
          "  ", Numbers.count(lot.units().size() - told.size(), "unit") + " passed at once");
    }
    for (Lot.Refused refused : lot.refused()) {
      page.paragraph(
          Text.of("  %-" + width + "s  ", name(refused.name())),
          page.styled(Style.BAD, "can't be checked")
              + ": "
              + refused.problems().size()
              + (refused.problems().size() == 1 ? " problem" : " problems")
              + " in its files");
    }
  }

  private static String name(String name) {
    return name.length() <= LONGEST_NAME ? name : name.substring(0, LONGEST_NAME - 1) + "…";
  }

  private void shared() {
    if (lot.shared().isEmpty()) {
      return;
    }
    page.heading("What several units share");
    for (SharedFault shared : lot.shared()) {
      page.paragraph("  - ", LotWords.shared(shared));
      page.paragraph("    ", LotWords.suspect(shared));
    }
  }

  private void outstanding() {
    List<Lot.Outstanding> all = lot.outstanding();
    if (!lot.hasSiblings()) {
      return;
    }
    page.heading("Joins that stand out from their siblings");
    if (all.isEmpty()) {
      page.paragraph("  ", "None.");
    }
    all.stream()
        .limit(MOST_OUTSTANDING)
        .forEach(one -> page.paragraph("  - ", LotWords.outstanding(one)));
    if (all.size() > MOST_OUTSTANDING) {
      page.paragraph("  ", Text.of("and %d more", all.size() - MOST_OUTSTANDING));
    }
    page.paragraph(
        "  ",
        Text.of(
            "Compared with the middle unit, after taking off what wires, leads and the unit as"
                + " a whole explain. Shown is what lies beyond %s of the spread.",
            LotWords.times(lot.limitScore())));
  }

  private void levels() {
    if (lot.factors().isEmpty() && lot.drift().isEmpty()) {
      return;
    }
    page.heading("Levels: how much higher all joins of a unit read");
    lot.drift().ifPresent(drift -> page.paragraph("  Time  ", LotWords.drift(drift)));
    for (ByFactor by : lot.factors()) {
      page.paragraph("  ", "By " + by.factor().word() + ". " + LotWords.factor(by));
      for (ByFactor.Group group : by.groups()) {
        page.paragraph(
            "    ",
            Text.of(
                "%-24s %9s, %d with faults, %s",
                name(group.name()),
                Numbers.count(group.units(), "unit"),
                group.faulty(),
                LotWords.signed(group.levelOhms())));
      }
    }
  }

  private void counted(String heading, List<Counted> counted) {
    if (counted.isEmpty()) {
      return;
    }
    page.heading(heading);
    int most = counted.get(0).faults();
    int longest = Math.min(30, page.width() - BESIDE_BAR);
    for (Counted one : counted.subList(0, Math.min(MOST_COUNTED, counted.size()))) {
      page.line(
          Text.of(
              "  %-24s %4d in %9s  %s",
              name(one.name()),
              one.faults(),
              Numbers.count(one.units(), "unit"),
              "#".repeat(Math.max(1, one.faults() * longest / most))));
    }
    if (counted.size() > MOST_COUNTED) {
      page.paragraph("  ", Text.of("and %d more", counted.size() - MOST_COUNTED));
    }
  }

  private void cautions() {
    if (lot.verdict() != Verdict.CONFORMS) {
      page.heading("Before you touch a unit");
      Cautions.published(true).forEach(caution -> page.paragraph("  ! ", caution.text()));
    }
  }
}
