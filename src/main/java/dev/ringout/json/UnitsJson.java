package dev.ringout.json;

import dev.ringout.jobs.UnitsJob;
import dev.ringout.jobs.UnitsJob.History;
import dev.ringout.jobs.UnitsJob.Later;
import dev.ringout.jobs.UnitsJob.Listed;
import dev.ringout.jobs.UnitsJob.Test;
import dev.ringout.store.StoredUnit;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The units of a store as one JSON document, {@code ringout-units/1}. */
public final class UnitsJson {
  private static final String FORMAT = "ringout-units/1";

  private UnitsJson() {}

  /** What is left to say where the store can't be used. */
  public static String refused(String store, String why) {
    return Json.refused(FORMAT, store, why);
  }

  /** All of it. */
  public static String write(UnitsJob.Result result) {
    Map<String, Object> document = new LinkedHashMap<>();
    document.put("format", FORMAT);
    document.put("store", result.store());
    document.put("units", result.units().stream().map(UnitsJson::unit).toList());
    document.put("histories", result.histories().stream().map(UnitsJson::history).toList());
    document.put("problems", List.of());
    return Json.text(document);
  }

  private static Map<String, Object> unit(StoredUnit unit) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("unit", unit.serial());
    json.put("list", unit.harness());
    json.put("title", unit.title());
    json.put("drawing", unit.drawing());
    json.put("revision", unit.revision());
    return json;
  }

  private static Map<String, Object> unit(Listed one) {
    Map<String, Object> json = unit(one.unit());
    json.put("tests", one.sessions());
    json.put("day", one.started());
    json.put("who", one.who());
    json.put("asWritten", one.asWritten());
    if (!one.leads().isEmpty()) {
      json.put("leads", one.leads().stream().map(BenchUnitJson::lease).toList());
    }
    if (one.asWritten()) {
      StoreJson.verdict(one.verdict()).ifPresent(verdict -> json.put("verdict", verdict));
    }
    return json;
  }

  private static Map<String, Object> history(History history) {
    Map<String, Object> json = unit(history.unit());
    json.put("tests", history.tests().stream().map(UnitsJson::test).toList());
    json.put("verdict", history.now().map(now -> now.verdict().word()).orElse(""));
    history
        .now()
        .ifPresent(now -> json.put("coverage", CoverageJson.of(now.coverage(), now.circuit())));
    json.put("problems", Json.problems(history.problems()));
    return json;
  }

  private static Map<String, Object> test(Test test) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("test", test.session().id());
    json.put("number", test.session().number());
    json.put("file", test.session().file());
    json.put("digest", test.session().digest());
    json.put("readings", test.readings());
    json.put("day", test.session().started());
    json.put("who", test.session().who());
    json.put("station", test.session().station());
    json.put("added", test.session().added());
    StoreJson.verdict(test.verdict()).ifPresent(verdict -> json.put("verdict", verdict));
    json.put("later", test.later().stream().map(UnitsJson::later).toList());
    return json;
  }

  private static Map<String, Object> later(Later one) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("kind", one.kind().word().replace('_', '-'));
    json.put("at", one.at());
    json.put("who", one.who());
    if (!one.cell().isEmpty()) {
      json.put("cell", one.cell());
    }
    if (one.signature().isPresent()) {
      json.put("role", one.signature().get().role());
      json.put("key", one.signature().get().fingerprint());
    }
    if (one.signature().isEmpty() || !one.text().isEmpty()) {
      json.put("text", one.text());
    }
    return json;
  }
}
