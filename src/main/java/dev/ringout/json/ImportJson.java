package dev.ringout.json;

import dev.ringout.harness.Link;
import dev.ringout.harness.PinDetail;
import dev.ringout.harness.Wire;
import dev.ringout.imports.list.CellBalance;
import dev.ringout.imports.list.Finding;
import dev.ringout.imports.list.HeaderFact;
import dev.ringout.imports.list.Hypothesis;
import dev.ringout.imports.list.ImportResult;
import dev.ringout.imports.list.ImportResult.SheetReport;
import dev.ringout.imports.list.ListColumn;
import dev.ringout.imports.list.Role;
import dev.ringout.imports.list.SkipReason;
import dev.ringout.imports.list.Weighed;
import dev.ringout.source.Place;
import dev.ringout.source.Problem;
import dev.ringout.units.Gauge;
import dev.ringout.words.HypothesisWords;
import dev.ringout.words.ImportWords;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** An import as one JSON document: {@code docs/reference/import.md}. */
public final class ImportJson {
  private static final String FORMAT = "ringout-import/1";

  private ImportJson() {}

  /** What was understood, and everything suspect. */
  public static String write(ImportResult result) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("format", FORMAT);
    json.put("sheets", result.sheets().stream().map(ImportJson::sheet).toList());
    json.put("decided", result.isDecided());
    json.put("tables", result.weighed().stream().map(ImportJson::table).toList());
    json.put("cells", result.cells().stream().map(ImportJson::cells).toList());
    json.put("header", result.header().stream().map(ImportJson::fact).toList());
    Map<String, Object> counts = new LinkedHashMap<>();
    counts.put("wires", result.wiring().wires().size());
    counts.put("links", result.wiring().links().size());
    counts.put("pins", result.wiring().pins().size());
    counts.put("pinsWithoutWire", result.pinsWithoutWire());
    counts.put("foundAtBothEnds", result.found().bothEnds());
    counts.put("foundAtOneEndOnly", result.found().oneSided());
    counts.put("farPinNotListed", result.found().farPinNotListed());
    counts.put("farEndHasNoList", result.found().farHasNoList());
    json.put("counts", counts);
    json.put("wires", result.wiring().wires().stream().map(ImportJson::wire).toList());
    json.put("links", result.wiring().links().stream().map(ImportJson::link).toList());
    json.put("pins", result.wiring().pins().stream().map(ImportJson::pin).toList());
    List<Map<String, Object>> problems = new ArrayList<>();
    for (Finding finding : result.findings()) {
      Problem said = ImportWords.problem(finding);
      Map<String, Object> problem = Json.problem(said);
      problem.put("kind", finding.kind().word());
      problem.put("why", OddityJson.why(finding.oddity(), said.text()));
      problems.add(problem);
    }
    json.put("problems", problems);
    return Json.text(json);
  }

  /** A file that could not be read at all. */
  public static String write(List<Problem> problems) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("format", FORMAT);
    json.put("sheets", List.of());
    json.put("decided", false);
    json.put("tables", List.of());
    json.put("wires", List.of());
    json.put("problems", Json.problems(problems));
    return Json.text(json);
  }

  private static Map<String, Object> fact(HeaderFact fact) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("fact", fact.name().word());
    json.put("value", fact.value());
    if (!fact.place().isNowhere()) {
      json.put("cell", fact.place().toString());
    }
    return json;
  }

  private static Map<String, Object> sheet(SheetReport sheet) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("sheet", sheet.sheet());
    json.put("range", sheet.range());
    json.put("headingRow", sheet.headingRow());
    json.put("layout", sheet.layout().word());
    json.put(
        "columns",
        sheet.columns().stream()
            .filter(column -> !column.heading().isEmpty() || column.role() != Role.KEEP)
            .map(ImportJson::column)
            .toList());
    json.put("wires", sheet.wires());
    Map<String, Object> rows = new LinkedHashMap<>();
    rows.put("total", sheet.rows().total());
    rows.put("wire", sheet.rows().wire());
    rows.put("spare", sheet.rows().spare());
    rows.put("heading", sheet.rows().heading());
    rows.put("note", sheet.rows().note());
    rows.put("blank", sheet.rows().blank());
    rows.put("skipped", sheet.rows().skipped());
    json.put("rows", rows);
    json.put(
        "skipped",
        sheet.skipped().stream()
            .map(
                row -> {
                  Map<String, Object> skipped = new LinkedHashMap<>();
                  skipped.put("row", row.row());
                  skipped.put("why", skipped(row.why()));
                  skipped.put("lost", row.lost());
                  return skipped;
                })
            .toList());
    return json;
  }

  private static Map<String, Object> cells(CellBalance cells) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("sheet", cells.sheet());
    json.put("filled", cells.filled());
    json.put("wires", cells.wires());
    json.put("pins", cells.pins());
    json.put("notes", cells.notes());
    json.put("headings", cells.headings());
    json.put("notRead", cells.notRead());
    json.put("notUsed", cells.notUsed());
    json.put("unused", cells.unused());
    return json;
  }

  private static Map<String, Object> table(Weighed table) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("sheet", table.sheet());
    json.put("firstCell", table.firstCell());
    json.put("certain", table.standing() == Weighed.Standing.CERTAIN);
    json.put("hypotheses", table.hypotheses().stream().map(ImportJson::hypothesis).toList());
    return json;
  }

  private static Map<String, Object> hypothesis(Hypothesis way) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("layout", way.table().layout().word());
    json.put("score", way.score());
    json.put("wires", way.wires());
    json.put(
        "columns",
        way.table().columns().stream()
            .filter(column -> column.role() != Role.KEEP)
            .map(ImportJson::column)
            .toList());
    json.put(
        "evidence",
        way.evidence().stream()
            .map(
                found -> {
                  Reason reason = Reason.of(found.kind().word()).with("points", found.points());
                  if (found.of() > 0) {
                    reason.with("count", found.count()).with("of", found.of());
                  }
                  if (!found.what().isEmpty()) {
                    reason.with("heading", found.what());
                  }
                  return reason.said(HypothesisWords.evidence(found));
                })
            .toList());
    json.put("first", way.first().stream().map(HypothesisWords::sentence).toList());
    json.put("options", way.options());
    return json;
  }

  private static Map<String, Object> skipped(SkipReason reason) {
    return Reason.of(reason.word()).said(ImportWords.skipped(reason));
  }

  private static Map<String, Object> column(ListColumn column) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("column", Place.columnLetters(column.index()));
    json.put("heading", column.heading());
    json.put("as", column.role().title());
    json.put("certainty", column.certainty().word());
    return json;
  }

  private static Map<String, Object> wire(Wire wire) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("wire", wire.name());
    json.put("from", wire.from().toString());
    json.put("to", wire.to().toString());
    wire.gauge().map(Gauge::label).ifPresent(gauge -> json.put("gauge", gauge));
    putIfSaid(json, "type", wire.type());
    putIfSaid(json, "color", wire.colour());
    wire.length().ifPresent(length -> json.put("metres", length.metres()));
    putIfSaid(json, "signal", wire.signal());
    putIfSaid(json, "cable", wire.cable());
    putIfSaid(json, "group", wire.group());
    putIfSaid(json, "fromContact", wire.fromContact());
    putIfSaid(json, "toContact", wire.toContact());
    putIfSaid(json, "note", wire.note());
    if (!wire.notes().isEmpty()) {
      json.put("notes", wire.notes());
    }
    json.put("row", wire.place().toString());
    return json;
  }

  private static void putIfSaid(Map<String, Object> json, String name, String text) {
    if (!text.isEmpty()) {
      json.put(name, text);
    }
  }

  private static Map<String, Object> link(Link link) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("from", link.from().toString());
    json.put("to", link.to().toString());
    json.put("note", link.note());
    return json;
  }

  private static Map<String, Object> pin(PinDetail pin) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("point", pin.point().toString());
    json.put("note", pin.note());
    return json;
  }
}
