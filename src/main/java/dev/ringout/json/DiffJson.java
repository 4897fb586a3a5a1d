package dev.ringout.json;

import dev.ringout.harness.Point;
import dev.ringout.jobs.Retest;
import dev.ringout.jobs.RevisionPaper;
import dev.ringout.revision.Change;
import dev.ringout.revision.Difference;
import dev.ringout.revision.HeaderChange;
import dev.ringout.revision.NetChange;
import dev.ringout.revision.Reach;
import dev.ringout.revision.Relabel;
import dev.ringout.revision.Rename;
import dev.ringout.revision.ReworkOrder;
import dev.ringout.revision.ReworkStep;
import dev.ringout.source.Problem;
import dev.ringout.standards.Cautions;
import dev.ringout.words.ChangeWords;
import dev.ringout.words.DiffWords;
import dev.ringout.words.RelabelWords;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** Two revisions as one JSON document, {@code ringout-diff/1}. */
public final class DiffJson {
  private static final String FORMAT = "ringout-diff/1";

  private DiffJson() {}

  /** What is left to say where the files can't be understood. */
  public static String write(List<Problem> problems) {
    return Json.refused(FORMAT, problems);
  }

  /** All of it. */
  public static String write(RevisionPaper paper, List<Problem> problems) {
    Difference difference = paper.difference();
    Map<String, Object> document = new LinkedHashMap<>();
    document.put("format", FORMAT);
    document.put("electrical", difference.isElectricallySame() ? "same" : "changed");
    document.put("fromReadings", paper.fromReadings());
    document.put("header", paper.header().stream().map(DiffJson::header).toList());
    document.put("balance", balance(difference));
    document.put("renamed", difference.renames().stream().map(DiffJson::rename).toList());
    document.put("possible", difference.possible().stream().map(DiffJson::rename).toList());
    document.put("wires", wires(difference.changes()));
    document.put("others", others(difference.changes()));
    document.put("nets", difference.nets().stream().map(DiffJson::net).toList());
    document.put("unsure", paper.unsure().stream().map(DiffWords::sentence).toList());
    document.put("rework", paper.rework().steps().stream().map(DiffJson::step).toList());
    document.put("visits", paper.rework().visits().stream().map(ReworkOrder.Visit::items).toList());
    document.put(
        "work", paper.rework().visits().stream().map(visit -> at(visit, difference)).toList());
    document.put("cautions", Cautions.published(false).stream().map(one -> one.text()).toList());
    document.put("exchange", DiffWords.exchanges(paper.rework()));
    document.put("relabel", paper.rework().relabels().stream().map(DiffJson::relabel).toList());
    document.put("reach", paper.rework().reaches().stream().map(DiffJson::reach).toList());
    document.put("risks", DiffWords.risks(paper.risks()));
    document.put("partsPlus", DiffWords.plus(paper.plus(), paper.splices()));
    document.put("partsMinus", DiffWords.minus(paper.minus()));
    document.put("retest", paper.retests().stream().map(DiffJson::retest).toList());
    paper
        .field()
        .ifPresent(
            field -> {
              document.put("field", sentences(field.changes()));
              document.put("fieldNets", field.nets().stream().map(DiffJson::net).toList());
              document.put("alreadyDone", sentences(field.done()));
              document.put("undoesField", sentences(field.undone()));
            });
    document.put("problems", Json.problems(problems));
    return Json.text(document);
  }

  private static Map<String, Object> header(HeaderChange change) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("name", change.name());
    json.put("old", change.old());
    json.put("new", change.now());
    return json;
  }

  private static Map<String, Object> balance(Difference difference) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("old", difference.before().wires().size());
    json.put("removed", difference.changes(Change.Removed.class).size());
    json.put("added", difference.changes(Change.Added.class).size());
    json.put("new", difference.after().wires().size());
    return json;
  }

  private static Map<String, Object> rename(Rename rename) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("old", rename.oldRef());
    json.put("new", rename.newRef());
    json.put("pins", rename.pins());
    json.put("agreeing", rename.agreeing());
    json.put("ends", rename.ends());
    json.put("told", rename.asTold());
    return json;
  }

  /** The differences of wires: after the renames they make the later list of the earlier. */
  private static List<Map<String, Object>> wires(List<Change> changes) {
    List<Map<String, Object>> wires = new ArrayList<>();
    for (Change change : changes) {
      if (change.isOfWire()) {
        wires.addAll(change.match(new ChangeFacts()));
      }
    }
    return wires;
  }

  private static List<Map<String, Object>> others(List<Change> changes) {
    List<Map<String, Object>> others = new ArrayList<>();
    for (Change change : changes) {
      if (!change.isOfWire()) {
        others.addAll(change.match(new ChangeFacts()));
      }
    }
    return others;
  }

  private static List<String> sentences(List<Change> changes) {
    return changes.stream().map(change -> ChangeWords.of(change).sentence()).toList();
  }

  private static Map<String, Object> net(NetChange change) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("change", change.kind().name().toLowerCase(Locale.ROOT));
    json.put("old", points(change.before()));
    json.put("new", points(change.after()));
    return json;
  }

  private static List<List<String>> points(List<List<Point>> nets) {
    return nets.stream().map(net -> net.stream().map(Point::toString).toList()).toList();
  }

  private static Map<String, Object> step(ReworkStep step) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("step", step.number());
    json.put("do", step.what().word());
    json.put("wire", step.wire());
    json.put("at", step.at().toString());
    json.put("text", DiffWords.sentence(step));
    return json;
  }

  private static Map<String, Object> relabel(Relabel label) {
    RelabelWords.Said said = RelabelWords.of(label);
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("at", said.at());
    json.put("old", said.old());
    json.put("new", said.now());
    json.put("text", said.sentence());
    return json;
  }

  private static Map<String, Object> at(ReworkOrder.Visit visit, Difference difference) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("items", visit.items());
    json.put("at", DiffWords.at(visit, difference));
    json.put("steps", visit.steps().stream().map(ReworkStep::number).toList());
    return json;
  }

  private static Map<String, Object> reach(Reach reach) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("wire", reach.wire().name());
    json.put("from", reach.from().toString());
    json.put("to", reach.to().toString());
    json.put("verdict", reach.verdict().name().toLowerCase(Locale.ROOT).replace('_', ' '));
    json.put("why", reach.why().match(new ReachFacts()).said(DiffWords.why(reach)));
    json.put("text", DiffWords.sentence(reach));
    return json;
  }

  private static Map<String, Object> retest(Retest retest) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("from", retest.from());
    json.put("to", retest.to());
    json.put("state", retest.step().probing().state().toString());
    json.put("kind", retest.step().kind().name().toLowerCase(Locale.ROOT));
    json.put("why", retest.why().match(new RetestFacts()).said(DiffWords.sentence(retest.why())));
    return json;
  }
}
