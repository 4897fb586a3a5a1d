package dev.ringout.json;

import dev.ringout.source.Problem;
import dev.ringout.standards.CrimpTools.Setting;
import dev.ringout.work.CutWire;
import dev.ringout.work.ItemSheet;
import dev.ringout.work.WireEnd;
import dev.ringout.work.WorkPapers;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The papers of the bench as one JSON document, {@code ringout-work/1}. */
public final class WorkJson {
  private static final String FORMAT = "ringout-work/1";

  private WorkJson() {}

  /** What is left to say where the file can't be understood. */
  public static String write(List<Problem> problems) {
    return Json.refused(FORMAT, problems);
  }

  /** All of it. */
  public static String write(WorkPapers papers, List<Problem> problems) {
    Map<String, Object> document = new LinkedHashMap<>();
    document.put("format", FORMAT);
    document.put("items", papers.sheets().stream().map(WorkJson::item).toList());
    document.put("cut", papers.cuts().stream().map(WorkJson::cut).toList());
    List<Map<String, Object>> totals = new ArrayList<>();
    for (WorkPapers.Total total : papers.totals()) {
      Map<String, Object> json = new LinkedHashMap<>();
      json.put("type", total.type());
      json.put("gauge", total.gauge());
      json.put("color", total.colour());
      json.put("wires", total.wires());
      json.put("metres", total.metres());
      json.put("withoutLength", total.withoutLength());
      totals.add(json);
    }
    document.put("totals", totals);
    document.put("kit", papers.kit());
    document.put("problems", Json.problems(problems));
    return Json.text(document);
  }

  private static Map<String, Object> item(ItemSheet sheet) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("item", sheet.ref());
    List<Map<String, Object>> cavities = new ArrayList<>();
    for (ItemSheet.Cavity cavity : sheet.cavities()) {
      Map<String, Object> one = new LinkedHashMap<>();
      one.put("pin", cavity.pin());
      one.put("ends", cavity.ends().stream().map(WorkJson::end).toList());
      one.put("plug", cavity.plug());
      one.put("jumpers", cavity.jumpers());
      cavities.add(one);
    }
    json.put("cavities", cavities);
    return json;
  }

  private static Map<String, Object> end(WireEnd end) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("wire", end.wire().name());
    json.put("color", end.wire().colour());
    json.put("gauge", end.wire().gaugeLabel());
    json.put("to", end.there().toString());
    json.put("contact", end.contact());
    json.put("tool", end.tool().map(Setting::text).orElse(""));
    json.put("strip", end.strip());
    json.put("marker", end.marker());
    return json;
  }

  private static Map<String, Object> cut(CutWire cut) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("wire", cut.wire().name());
    cut.listedMetres().ifPresent(metres -> json.put("listedMetres", metres));
    cut.cutMetres().ifPresent(metres -> json.put("cutMetres", metres));
    return json;
  }
}
