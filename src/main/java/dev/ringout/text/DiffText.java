package dev.ringout.text;

import dev.ringout.harness.Wire;
import dev.ringout.jobs.Retest;
import dev.ringout.jobs.RevisionPaper;
import dev.ringout.revision.Change;
import dev.ringout.revision.Difference;
import dev.ringout.revision.HeaderChange;
import dev.ringout.revision.Reach;
import dev.ringout.revision.Rename;
import dev.ringout.revision.Rework;
import dev.ringout.revision.Risk;
import dev.ringout.revision.Step;
import dev.ringout.standards.Cautions;
import dev.ringout.text.Page.Style;
import dev.ringout.units.Numbers;
import dev.ringout.units.Text;
import dev.ringout.words.ChangeWords;
import dev.ringout.work.WorkPapers;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** Two revisions as a page on a terminal. */
public final class DiffText {
  public static final String FROM_READINGS =
      "A list that was built from readings knows no wires: only nets are compared. What was never"
          + " read shows as apart; see what ringout asfound wants read next.";

  private static final int RETESTS_SHOWN = 30;
  private static final int ITEMS_NAMED = 20;
  private static final String SPLICE = " × splice for ";

  private final RevisionPaper paper;
  private final Difference difference;
  private final Page page;

  private DiffText(RevisionPaper paper, boolean colour) {
    this.paper = paper;
    this.difference = paper.difference();
    this.page = new Page(colour);
  }

  /** The page. */
  public static String write(RevisionPaper paper, boolean colour) {
    return new DiffText(paper, colour).write();
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

  /** A change in a sentence. */
  public static String sentence(Change change) {
    return ChangeWords.of(change).sentence();
  }

  /** The verdict in words. */
  public static String verdict(RevisionPaper paper) {
    Difference difference = paper.difference();
    if (paper.isEmpty()) {
      return "NO DIFFERENCE";
    }
    if (difference.isElectricallySame()) {
      return "ELECTRICALLY THE SAME: the same points are joined; "
          + (difference.isEmpty()
              ? "the units it is for differ."
              : "names, wires or words differ.");
    }
    return "ELECTRICALLY CHANGED: "
        + (difference.nets().isEmpty()
            ? "switch contacts or parts lie between other nets."
            : Numbers.count(difference.nets().size(), "group") + " of nets changed.");
  }

  /** What the headers have otherwise, in words. */
  public static String sentence(HeaderChange change) {
    return Text.of(
        "%s: was %s, is %s now", change.name(), stated(change.old()), stated(change.now()));
  }

  private static String stated(String value) {
    return value.isEmpty() ? "not stated" : "\"" + value + "\"";
  }

  /** What was, what went, what came, what is. */
  public static String balance(Difference difference) {
    return Text.of(
        "%s listed - %d removed + %d added = %d listed",
        Numbers.count(difference.before().wires().size(), "wire"),
        difference.changes(Change.Removed.class).size(),
        difference.changes(Change.Added.class).size(),
        difference.after().wires().size());
  }

  private void headline() {
    Style style = difference.isElectricallySame() ? Style.GOOD : Style.BAD;
    page.paragraph("", page.styled(style, verdict(paper)));
    page.blank();
    page.paragraph("From     ", paper.oldTitle());
    page.paragraph("To       ", paper.newTitle());
    for (HeaderChange one : paper.header()) {
      page.paragraph("Header   ", page.styled(Style.BAD, sentence(one)));
    }
    page.paragraph("Balance  ", paper.fromReadings() ? FROM_READINGS : balance(difference));
    for (String doubled : doubled(difference)) {
      page.paragraph("         ", doubled);
    }
    for (String one : unsure(paper)) {
      page.paragraph("Unsure   ", one);
    }
  }

  /** What makes one doubt that the right lists, or the right wires, were held together. */
  public static List<String> unsure(RevisionPaper paper) {
    Difference difference = paper.difference();
    List<String> unsure = new ArrayList<>();
    String oldDrawing = difference.before().headerValue("drawing");
    String newDrawing = difference.after().headerValue("drawing");
    if (!oldDrawing.isEmpty() && !newDrawing.isEmpty() && !oldDrawing.equals(newDrawing)) {
      unsure.add(Text.of("these are two drawings: %s and %s", oldDrawing, newDrawing));
    }
    String revision = difference.after().headerValue("revision");
    boolean sameLetter = revision.equals(difference.before().headerValue("revision"));
    if (!revision.isEmpty() && sameLetter && !paper.isEmpty()) {
      unsure.add(Text.of("both say revision %s, and differ", revision));
    }
    unsure.addAll(difference.ties());
    return unsure;
  }

  /** Rows that are written twice, in words. */
  public static List<String> doubled(Difference difference) {
    List<String> texts = new ArrayList<>();
    difference.doubledBefore().forEach(wire -> texts.add(doubled(wire, "earlier")));
    difference.doubledAfter().forEach(wire -> texts.add(doubled(wire, "later")));
    return texts;
  }

  private static String doubled(Wire wire, String which) {
    return Text.of(
        "%s is written twice in the %s list (%s), and counts once",
        wire.name(), which, wire.place());
  }

  private void renames() {
    if (difference.renames().isEmpty() && difference.possible().isEmpty()) {
      return;
    }
    page.heading("Other names");
    for (Rename rename : difference.renames()) {
      page.paragraph("  ", ChangeWords.sentence(rename));
    }
    String told = toConfirm(difference.renames());
    if (!told.isEmpty()) {
      page.paragraph("  ", "To confirm: " + told);
    }
    for (Rename rename : difference.possible()) {
      page.paragraph("  ", possible(rename));
    }
  }

  /** The options that say what was found. */
  static String toConfirm(List<Rename> renames) {
    return renames.stream()
        .filter(rename -> rename.ofItem() && !rename.asTold())
        .map(rename -> "--rename " + rename.oldRef() + "=" + rename.newRef())
        .collect(Collectors.joining(" "));
  }

  public static String possible(Rename rename) {
    return Text.of(
        "%s may be %s now: too few wires to tell, so they are taken for two; if it is one, say"
            + " --rename %s=%s",
        rename.oldRef(), rename.newRef(), rename.oldRef(), rename.newRef());
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
      page.paragraph("  ", FROM_READINGS);
      field.nets().forEach(net -> page.paragraph("  ", ChangeWords.sentence(net)));
    }
    if (!field.done().isEmpty()) {
      page.paragraph("  ", "Of the new revision already there:");
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

  private void changes() {
    if (!difference.changes().isEmpty()) {
      page.heading("Changes");
      list(difference.changes());
    }
  }

  private void nets() {
    if (!difference.nets().isEmpty()) {
      page.heading("Nets");
      difference.nets().forEach(net -> page.paragraph("  ", ChangeWords.sentence(net)));
    }
  }

  private void rework() {
    Rework rework = paper.rework();
    if (rework.visits().isEmpty() && rework.relabels().isEmpty() && rework.exchanges().isEmpty()) {
      return;
    }
    page.heading("Work");
    Cautions.published(false).forEach(caution -> page.paragraph("  ! ", caution.text()));
    risks(paper).forEach(risk -> page.paragraph("  ! ", page.styled(Style.BAD, risk)));
    if (!rework.exchanges().isEmpty()) {
      page.paragraph("  ", page.styled(Style.STRONG, "Items and parts to exchange"));
      exchanges(rework).forEach(text -> page.paragraph("  [ ] ", text));
    }
    for (Rework.Visit visit : rework.visits()) {
      if (visit.steps().isEmpty()) {
        continue;
      }
      page.paragraph("  ", page.styled(Style.STRONG, "At " + at(visit, difference)));
      for (Step step : visit.steps()) {
        page.paragraph(Text.of("  [ ] %3d  ", step.number()), step.text());
      }
    }
    if (!rework.relabels().isEmpty()) {
      page.paragraph("  ", page.styled(Style.STRONG, "Labels and sleeves"));
      for (Rework.Relabel relabel : rework.relabels()) {
        page.paragraph("  [ ] ", relabel(relabel));
      }
    }
    List<Reach> unsure =
        rework.reaches().stream().filter(one -> one.verdict() != Reach.Verdict.REACHES).toList();
    if (!unsure.isEmpty()) {
      page.paragraph("  ", page.styled(Style.STRONG, "Does it reach"));
      unsure.forEach(one -> page.paragraph("  ", reach(one)));
    }
  }

  /** What is another thing now, in words. */
  public static List<String> exchanges(Rework rework) {
    List<String> texts = new ArrayList<>();
    for (Change change : rework.exchanges()) {
      String wires =
          change instanceof Change.ItemAltered ? "; its wires come off and on again" : "";
      texts.add(ChangeWords.of(change).sentence() + wires);
    }
    return texts;
  }

  /** The items of a visit, with the names that they still bear. */
  public static String at(Rework.Visit visit, Difference difference) {
    List<String> names = new ArrayList<>();
    for (String item : visit.items()) {
      String marked =
          difference.renames().stream()
              .filter(rename -> rename.ofItem() && rename.newRef().equals(item))
              .map(rename -> " (marked " + rename.oldRef() + ")")
              .findFirst()
              .orElse("");
      names.add(item + marked);
    }
    return names.size() > 1 ? String.join(" and ", names) + " together" : names.get(0);
  }

  static String relabel(Rework.Relabel relabel) {
    return Text.of("at %s: \"%s\" becomes \"%s\"", relabel.at(), relabel.old(), relabel.now());
  }

  static String reach(Reach reach) {
    return Text.of(
        "%s, from %s to %s, %s: %s",
        reach.wire().name(),
        reach.from(),
        reach.to(),
        reach.verdict() == Reach.Verdict.TOO_SHORT ? "may be too short" : "can't be told",
        reach.why());
  }

  /** What is joined on the way. */
  public static List<String> risks(RevisionPaper paper) {
    List<String> texts = new ArrayList<>();
    if (paper.risks().isEmpty()) {
      texts.add("The work is too large to look for power and ground joined on the way.");
    }
    for (Risk risk : paper.risks().orElse(List.of())) {
      texts.add(
          Text.of(
              "Half done, from step %d until step %d, %s (%s) is joined to %s (%s): never leave it"
                  + " there, never energise it there.",
              risk.afterStep(),
              risk.untilStep(),
              risk.powerSignal(),
              risk.power(),
              risk.groundSignal(),
              risk.ground()));
    }
    return texts;
  }

  private void parts() {
    List<String> plus = plus(paper);
    List<String> minus = minus(paper);
    if (plus.isEmpty() && minus.isEmpty()) {
      return;
    }
    page.heading("Parts");
    plus.forEach(line -> page.paragraph("  + ", line));
    minus.forEach(line -> page.paragraph("  - ", line));
  }

  /** What has to be at hand: wire by kind, then the rest; a new splice by all its wires. */
  public static List<String> plus(RevisionPaper paper) {
    List<String> lines = new ArrayList<>(kit(paper.plus()));
    lines.removeIf(line -> line.contains(SPLICE));
    paper
        .splices()
        .ifPresent(
            splices ->
                kit(splices).stream().filter(line -> line.contains(SPLICE)).forEach(lines::add));
    return lines;
  }

  /** What is left over. */
  public static List<String> minus(RevisionPaper paper) {
    return kit(paper.minus());
  }

  private static List<String> kit(WorkPapers papers) {
    List<String> lines = new ArrayList<>();
    papers.totals().forEach(total -> lines.add(WorkText.total(total)));
    papers.kit().forEach((what, count) -> lines.add(count + " × " + what));
    return lines;
  }

  private void retest() {
    if (paper.rework().visits().isEmpty()) {
      return;
    }
    page.heading("Read again");
    List<Retest> retests = paper.retests();
    for (Retest one : retests.subList(0, Math.min(RETESTS_SHOWN, retests.size()))) {
      page.paragraph(
          Text.of("  [ ] %3d  ", one.step().number()),
          Text.of("%s to %s: %s", one.from(), one.to(), one.why()));
    }
    if (retests.size() > RETESTS_SHOWN) {
      page.paragraph("  ", Text.of("and %d more", retests.size() - RETESTS_SHOWN));
    }
    page.paragraph(
        "  ", "A sheet to fill in, of the later revision: ringout plan NEW" + planOptions());
  }

  /** What makes the plan of the retest; where much was opened, all is read. */
  private String planOptions() {
    List<String> opened = List.copyOf(paper.rework().opened());
    return opened.size() > ITEMS_NAMED ? "" : " --only " + String.join(",", opened);
  }
}
