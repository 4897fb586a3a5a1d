package dev.ringout.text;

import dev.ringout.harness.SwitchState;
import dev.ringout.jobs.Retest;
import dev.ringout.jobs.RevisionPaper;
import dev.ringout.revision.Change;
import dev.ringout.revision.Difference;
import dev.ringout.revision.HeaderChange;
import dev.ringout.revision.Reach;
import dev.ringout.revision.Rename;
import dev.ringout.revision.ReworkOrder;
import dev.ringout.revision.ReworkStep;
import dev.ringout.revision.Unsure;
import dev.ringout.standards.Cautions;
import dev.ringout.text.Page.Style;
import dev.ringout.units.Text;
import dev.ringout.words.ChangeGroups;
import dev.ringout.words.ChangeWords;
import dev.ringout.words.DiffWords;
import dev.ringout.words.RelabelWords;
import dev.ringout.words.UnitTitle;
import java.util.List;

/** Two revisions as a page on a terminal. */
public final class DiffText {
  private static final int RETESTS_SHOWN = 30;
  private static final int ITEMS_NAMED = 20;

  private final RevisionPaper paper;
  private final Difference difference;
  private final Page page;

  private DiffText(RevisionPaper paper, Look look) {
    this.paper = paper;
    this.difference = paper.difference();
    this.page = new Page(look);
  }

  /** The page. */
  public static String write(RevisionPaper paper, Look look) {
    return new DiffText(paper, look).write();
  }

  private String write() {
    headline();
    renames();
    field();
    changes();
    nets();
    rework();
    parts();
    retest();
    return page.toString();
  }

  private void headline() {
    Style style = difference.isElectricallySame() ? Style.GOOD : Style.BAD;
    page.paragraph(
        "",
        page.styled(style, DiffWords.verdict(difference, paper.header(), paper.fromReadings())));
    page.blank();
    page.paragraph("From     ", UnitTitle.of(difference.before()));
    page.paragraph("To       ", UnitTitle.of(difference.after()));
    for (HeaderChange headerChange : paper.header()) {
      page.paragraph("Header   ", page.styled(Style.BAD, DiffWords.sentence(headerChange)));
    }
    page.paragraph(
        "Balance  ",
        paper.fromReadings() ? DiffWords.FROM_READINGS : DiffWords.balance(difference));
    for (String doubled : DiffWords.doubled(difference)) {
      page.paragraph("         ", doubled);
    }
    for (Unsure unsure : paper.unsure()) {
      page.paragraph("Unsure   ", DiffWords.sentence(unsure));
    }
  }

  private void renames() {
    if (difference.renames().isEmpty() && difference.possible().isEmpty()) {
      return;
    }
    page.heading("Other names");
    for (Rename rename : difference.renames()) {
      page.paragraph("  ", ChangeWords.sentence(rename));
    }
    String told = DiffWords.toConfirm(difference.renames());
    if (!told.isEmpty()) {
      page.paragraph("  ", "To confirm: " + told);
    }
    for (Rename rename : difference.possible()) {
      page.paragraph("  ", DiffWords.possible(rename));
    }
  }

  private void field() {
    if (paper.field().isEmpty()) {
      return;
    }
    RevisionPaper.FieldChanges field = paper.field().get();
    page.heading("Changed in the field");
    if (field.changes().isEmpty() && field.nets().isEmpty()) {
      page.paragraph("  ", "The unit is as the earlier revision lists it.");
    }
    list(field.changes());
    if (!field.nets().isEmpty()) {
      page.paragraph("  ", DiffWords.FROM_READINGS);
      field.nets().forEach(net -> page.paragraph("  ", ChangeWords.sentence(net)));
    }
    if (!field.done().isEmpty()) {
      page.paragraph("  ", "Already done, of the new revision:");
      field.done().forEach(change -> said("    ", change));
    }
    if (!field.undone().isEmpty()) {
      page.paragraph(
          "  ", page.styled(Style.OWED, "The work below takes these away; ask before it is done:"));
      field.undone().forEach(change -> said("    ", change));
    }
  }

  private void list(List<Change> changes) {
    changes.forEach(change -> said("  ", change));
  }

  private void said(String indent, Change change) {
    ChangeWords.Said said = ChangeWords.of(change);
    page.paragraph(Text.of("%s%-17s ", indent, said.kind()), said.sentence());
  }

  private void line(ChangeGroups.Line line) {
    page.paragraph(Text.of("  %-17s ", line.kind()), line.sentence());
  }

  private void changes() {
    if (!difference.changes().isEmpty()) {
      page.heading("Changes");
      page.paragraph("  ", ChangeGroups.counts(difference.changes()));
      ChangeGroups.of(difference).forEach(this::line);
    }
  }

  private void nets() {
    if (!difference.nets().isEmpty()) {
      page.heading("Nets");
      difference.nets().forEach(net -> page.paragraph("  ", ChangeWords.sentence(net)));
    }
  }

  private void rework() {
    ReworkOrder rework = paper.rework();
    if (rework.visits().isEmpty() && rework.relabels().isEmpty() && rework.exchanges().isEmpty()) {
      return;
    }
    page.heading("Work");
    Cautions.published(false).forEach(caution -> page.paragraph("  ! ", caution.text()));
    DiffWords.risks(paper.risks())
        .forEach(risk -> page.paragraph("  ! ", page.styled(Style.BAD, risk)));
    if (!rework.exchanges().isEmpty()) {
      subheading("Items and parts to exchange");
      DiffWords.exchanges(rework).forEach(text -> page.paragraph("  [ ] ", text));
    }
    rework.visits().forEach(this::visit);
    if (!rework.relabels().isEmpty()) {
      subheading("Labels and sleeves");
      rework
          .relabels()
          .forEach(label -> page.paragraph("  [ ] ", RelabelWords.of(label).sentence()));
    }
    reaches(rework);
  }

  private void subheading(String text) {
    page.paragraph("  ", page.styled(Style.STRONG, text));
  }

  private void visit(ReworkOrder.Visit visit) {
    if (visit.steps().isEmpty()) {
      return;
    }
    subheading("At " + DiffWords.at(visit, difference));
    for (ReworkStep step : visit.steps()) {
      page.paragraph(Text.of("  [ ] %3d  ", step.number()), DiffWords.sentence(step));
    }
  }

  private void reaches(ReworkOrder rework) {
    List<Reach> unsure =
        rework.reaches().stream()
            .filter(reach -> reach.verdict() != Reach.Verdict.REACHES)
            .toList();
    if (!unsure.isEmpty()) {
      subheading("Does it reach");
      unsure.forEach(one -> page.paragraph("  ", DiffWords.sentence(one)));
    }
  }

  private void parts() {
    List<String> plus = DiffWords.plus(paper.plus(), paper.splices());
    List<String> minus = DiffWords.minus(paper.minus());
    if (plus.isEmpty() && minus.isEmpty()) {
      return;
    }
    page.heading("Parts");
    plus.forEach(line -> page.paragraph("  + ", line));
    minus.forEach(line -> page.paragraph("  - ", line));
  }

  private void retest() {
    if (paper.rework().visits().isEmpty()) {
      return;
    }
    page.heading("Read again");
    List<Retest> retests = paper.retests();
    for (Retest retest : retests.subList(0, Math.min(RETESTS_SHOWN, retests.size()))) {
      page.paragraph(
          Text.of("  [ ] %3d  ", retest.step().number()),
          Text.of(
              "%s to %s%s: %s",
              retest.from(), retest.to(), state(retest), DiffWords.sentence(retest.why())));
    }
    if (retests.size() > RETESTS_SHOWN) {
      page.paragraph("  ", Text.of("and %d more", retests.size() - RETESTS_SHOWN));
    }
    page.paragraph("  ", "To make a sheet for these readings: ringout plan NEW" + planOptions());
  }

  private static String state(Retest retest) {
    SwitchState state = retest.step().probing().state();
    return state.isNormal() ? "" : Text.of(" (%s)", state);
  }

  /** What makes the plan of the retest; where much was opened, all is read. */
  private String planOptions() {
    List<String> opened = List.copyOf(paper.rework().opened());
    return opened.size() > ITEMS_NAMED ? "" : " --only " + String.join(",", opened);
  }
}
