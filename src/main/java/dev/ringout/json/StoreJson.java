package dev.ringout.json;

import dev.ringout.jobs.AddJob;
import dev.ringout.jobs.KeptVerdict;
import dev.ringout.source.Problem;
import dev.ringout.store.StoreFinding;
import dev.ringout.store.StoreState;
import dev.ringout.words.StoreWords;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** What was done with a store as one JSON document, {@code ringout-store/1}. */
public final class StoreJson {
  private static final String FORMAT = "ringout-store/1";

  private StoreJson() {}

  /** What is left to say where the list can't be understood. */
  public static String refused(List<Problem> problems) {
    return Json.refused(FORMAT, problems);
  }

  /** What is left to say where the store can't be used. */
  public static String refused(String store, String why) {
    return Json.refused(FORMAT, store, why);
  }

  /** What became of each sheet. */
  public static String added(AddJob.Result result, List<Problem> problems) {
    Map<String, Object> document = new LinkedHashMap<>();
    document.put("format", FORMAT);
    document.put("sheets", result.sheets().stream().map(StoreJson::sheet).toList());
    result.stopped().ifPresent(trouble -> document.put("stopped", trouble.text()));
    document.put("problems", Json.problems(problems));
    return Json.text(document);
  }

  private static Map<String, Object> sheet(AddJob.AddedSheet sheet) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("file", sheet.file());
    json.put("unit", sheet.unit());
    json.put("state", sheet.state().name().toLowerCase(Locale.ROOT).replace('_', '-'));
    sheet.verdict().ifPresent(verdict -> json.put("verdict", verdict(verdict)));
    return json;
  }

  static Map<String, Object> verdict(KeptVerdict kept) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("verdict", kept.verdict().map(one -> one.word()).orElse(""));
    json.put("faults", kept.faults());
    json.put("fail", kept.failing());
    json.put("notProven", kept.notProven());
    json.put("conceded", kept.conceded());
    json.put("insulationTest", kept.insulationTest());
    json.put("program", kept.program());
    return json;
  }

  /** Whether everything is as it was written. */
  public static String state(StoreState state) {
    Map<String, Object> document = new LinkedHashMap<>();
    document.put("format", FORMAT);
    document.put("whole", state.findings().isEmpty());
    document.put("lists", state.lists());
    document.put("units", state.units());
    document.put("tests", state.sessions());
    document.put("entries", state.entries());
    document.put("digest", state.digest());
    document.put("findings", state.findings().stream().map(StoreJson::finding).toList());
    document.put("problems", List.of());
    return Json.text(document);
  }

  private static Map<String, Object> finding(StoreFinding finding) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("kind", finding.kind().name().toLowerCase(Locale.ROOT).replace('_', '-'));
    json.put("unit", finding.unit());
    json.put("test", finding.session());
    json.put("file", finding.file());
    json.put("entry", finding.seq());
    json.put("text", StoreWords.finding(finding));
    return json;
  }

  static Optional<Map<String, Object>> verdict(Optional<KeptVerdict> kept) {
    return kept.map(StoreJson::verdict);
  }
}
