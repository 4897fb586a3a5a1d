package dev.ringout.print;

import dev.ringout.harness.Point;
import dev.ringout.jobs.Retest;
import dev.ringout.jobs.RevisionPaper;
import dev.ringout.pictures.NetPicture;
import dev.ringout.readings.Reading;
import dev.ringout.revision.Change;
import dev.ringout.revision.Difference;
import dev.ringout.revision.NetChange;
import dev.ringout.revision.Reach;
import dev.ringout.revision.Relabel;
import dev.ringout.revision.Rename;
import dev.ringout.revision.ReworkOrder;
import dev.ringout.revision.ReworkStep;
import dev.ringout.sheet.OutSheet;
import dev.ringout.sheet.OutSheet.Look;
import dev.ringout.standards.Cautions;
import dev.ringout.words.ChangeWords;
import dev.ringout.words.DiffWords;
import dev.ringout.words.RelabelWords;
import dev.ringout.words.UnitTitle;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Two revisions as sheets: for a workbook, a page or a PDF. */
public final class DiffSheets {
  private static final int NETS_DRAWN = 60;

  private DiffSheets() {}

  /** Every sheet that has something to say. */
  public static List<OutSheet> of(RevisionPaper paper) {
    String title = UnitTitle.of(paper.difference().after());
    List<OutSheet> sheets = new ArrayList<>();
    sheets.add(first(paper, title));
    sheets.add(changes("Changes", paper.difference().changes(), title));
    paper.field().ifPresent(field -> sheets.add(changes("Field", field.changes(), title)));
    sheets.add(nets(paper.difference(), title));
    sheets.add(exchange(paper.rework(), title));
    sheets.add(work(paper, title));
    sheets.add(labels(paper.rework(), title));
    sheets.add(reach(paper.rework(), title));
    sheets.add(parts(paper, title));
    sheets.add(retest(paper, title));
    sheets.removeIf(sheet -> sheet.rows().isEmpty());
    return sheets;
  }

  private static OutSheet first(RevisionPaper paper, String title) {
    Difference difference = paper.difference();
    List<List<String>> rows = new ArrayList<>();
    rows.add(
        List.of("verdict", DiffWords.verdict(difference, paper.header(), paper.fromReadings())));
    rows.add(List.of("from", UnitTitle.of(difference.before())));
    rows.add(List.of("to", UnitTitle.of(difference.after())));
    paper.header().forEach(one -> rows.add(List.of("header", DiffWords.sentence(one))));
    rows.add(
        List.of(
            "balance",
            paper.fromReadings() ? DiffWords.FROM_READINGS : DiffWords.balance(difference)));
    DiffWords.doubled(difference).forEach(text -> rows.add(List.of("twice", text)));
    for (Rename rename : difference.renames()) {
      rows.add(
          List.of(rename.asTold() ? "renamed" : "renamed? confirm", ChangeWords.sentence(rename)));
    }
    difference.possible().forEach(one -> rows.add(List.of("renamed?", DiffWords.possible(one))));
    paper.unsure().forEach(one -> rows.add(List.of("unsure", DiffWords.sentence(one))));
    Cautions.published(false).forEach(one -> rows.add(List.of("caution", one.text())));
    DiffWords.risks(paper.risks()).forEach(risk -> rows.add(List.of("danger", risk)));
    paper.field().ifPresent(field -> addField(field, rows));
    return new OutSheet("Read first", List.of("About", "What to know"), rows, Look.printed(title));
  }

  private static void addField(RevisionPaper.FieldChanges field, List<List<String>> rows) {
    field.nets().forEach(net -> rows.add(List.of("in the field", ChangeWords.sentence(net))));
    for (Change change : field.done()) {
      rows.add(List.of("already done", ChangeWords.of(change).sentence()));
    }
    for (Change one : field.undone()) {
      rows.add(List.of("undoes a field change", ChangeWords.of(one).sentence()));
    }
  }

  private static OutSheet changes(String name, List<Change> changes, String title) {
    List<List<String>> rows = new ArrayList<>();
    for (Change change : changes) {
      ChangeWords.Said said = ChangeWords.of(change);
      rows.add(List.of(said.kind(), said.subject(), said.sentence()));
    }
    return new OutSheet(name, List.of("Change", "Wire or item", "What"), rows, Look.printed(title));
  }

  private static OutSheet nets(Difference difference, String title) {
    List<List<String>> rows = new ArrayList<>();
    NetPicture picture = new NetPicture(difference);
    StringBuilder pictures = new StringBuilder();
    for (NetChange change : difference.nets()) {
      rows.add(
          List.of(
              Integer.toString(rows.size() + 1),
              change.kind().name().toLowerCase(Locale.ROOT),
              points(change.before()),
              points(change.after())));
      if (rows.size() <= NETS_DRAWN) {
        pictures.append(picture.draw(rows.size(), change));
      }
    }
    return new OutSheet(
        "Nets",
        List.of("No.", "Change", "Before", "After"),
        rows,
        Look.printed(title).withNumbers(0).withPicture(pictures.toString()));
  }

  private static String points(List<List<Point>> nets) {
    List<String> texts = new ArrayList<>();
    nets.forEach(net -> texts.add(String.join(" ", net.stream().map(Object::toString).toList())));
    return String.join(" | ", texts);
  }

  private static OutSheet work(RevisionPaper paper, String title) {
    List<List<String>> rows = new ArrayList<>();
    for (ReworkOrder.Visit visit : paper.rework().visits()) {
      for (ReworkStep step : visit.steps()) {
        rows.add(
            List.of(
                Integer.toString(step.number()),
                DiffWords.at(visit, paper.difference()),
                step.what().word(),
                step.wire(),
                step.at().toString(),
                DiffWords.sentence(step),
                "",
                ""));
      }
    }
    return new OutSheet(
        "Work",
        List.of("Step", "At", "Do", "Wire", "Point", "In words", "Made", "Checked by another"),
        rows,
        Look.printed(title).withCaution(Cautions.onPageOfHands()).withNumbers(0).withToFill(6, 7));
  }

  private static OutSheet exchange(ReworkOrder rework, String title) {
    List<List<String>> rows = new ArrayList<>();
    DiffWords.exchanges(rework).forEach(text -> rows.add(List.of(text, "")));
    return new OutSheet(
        "Exchange",
        List.of("What", "Made"),
        rows,
        Look.printed(title).withCaution(Cautions.onPageOfHands()).withToFill(1));
  }

  private static OutSheet labels(ReworkOrder rework, String title) {
    List<List<String>> rows = new ArrayList<>();
    for (Relabel label : rework.relabels()) {
      RelabelWords.Said said = RelabelWords.of(label);
      rows.add(List.of(said.at(), said.old(), said.now(), ""));
    }
    return new OutSheet(
        "Labels",
        List.of("At", "Was", "Is now", "Made"),
        rows,
        Look.printed(title).withCaution(Cautions.onPageOfHands()).withToFill(3));
  }

  private static OutSheet reach(ReworkOrder rework, String title) {
    List<List<String>> rows = new ArrayList<>();
    for (Reach reach : rework.reaches()) {
      rows.add(
          List.of(
              reach.wire().name(),
              reach.from().toString(),
              reach.to().toString(),
              reach.verdict().name().toLowerCase(Locale.ROOT).replace('_', ' '),
              DiffWords.why(reach)));
    }
    return new OutSheet(
        "Reach", List.of("Wire", "From", "To", "Reaches", "Because"), rows, Look.printed(title));
  }

  private static OutSheet parts(RevisionPaper paper, String title) {
    List<List<String>> rows = new ArrayList<>();
    DiffWords.plus(paper.plus(), paper.splices()).forEach(line -> rows.add(List.of("plus", line)));
    DiffWords.minus(paper.minus()).forEach(line -> rows.add(List.of("minus", line)));
    return new OutSheet("Parts", List.of("Which", "What"), rows, Look.printed(title));
  }

  /** Of the readings that are taken again, with volts where any of them are. */
  private static String caution(RevisionPaper paper) {
    double volts =
        paper.retests().stream()
            .mapToDouble(retest -> retest.step().volts().orElse(0))
            .max()
            .orElse(0);
    return volts > 0 ? Cautions.onPageOfVolts(volts) : Cautions.onPageOfHands();
  }

  private static OutSheet retest(RevisionPaper paper, String title) {
    List<List<String>> rows = new ArrayList<>();
    for (Retest retest : paper.retests()) {
      rows.add(
          List.of(
              Integer.toString(retest.step().number()),
              retest.step().kind() == Reading.Kind.INSULATION ? "insulation" : "continuity",
              retest.from(),
              retest.to(),
              retest.step().probing().state().toString(),
              DiffWords.sentence(retest.why()),
              ""));
    }
    return new OutSheet(
        "Read again",
        List.of("Step", "Kind", "From", "To", "State", "Because", "Reading"),
        rows,
        Look.printed(title).withCaution(caution(paper)).withNumbers(0).withToFill(6));
  }
}
