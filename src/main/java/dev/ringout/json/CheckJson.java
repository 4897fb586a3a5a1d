package dev.ringout.json;

import dev.ringout.check.CheckResult;
import dev.ringout.check.UnitOfTest;
import dev.ringout.check.Values;
import dev.ringout.compare.Judged;
import dev.ringout.compare.Outcome;
import dev.ringout.compare.ValueVerdict;
import dev.ringout.harness.Harness;
import dev.ringout.readings.Job;
import dev.ringout.readings.Measured;
import dev.ringout.readings.Reading;
import dev.ringout.seal.TestedUnit;
import dev.ringout.source.Problem;
import dev.ringout.words.DoubtSentences;
import dev.ringout.words.RecordLimits;
import java.io.IOException;
import java.io.Writer;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;

/** The check as one JSON document, {@code ringout-check/1}; its schema is in docs/reference. */
public final class CheckJson {
  /** The document's format and version. */
  public static final String FORMAT = "ringout-check/1";

  private final CheckResult result;

  private CheckJson(CheckResult result) {
    this.result = result;
  }

  /** The whole result, piece by piece: a large unit has a million readings. */
  public static void write(CheckResult result, Writer to) throws IOException {
    Json.write(new CheckJson(result).document(), to);
  }

  /** What is left to say where the files can't be understood. */
  public static String write(List<Problem> problems) {
    return Json.refused(FORMAT, problems);
  }

  private Map<String, Object> document() {
    Map<String, Object> document = new LinkedHashMap<>();
    document.put("format", FORMAT);
    document.put("harness", harness());
    document.put("unit", unit());
    document.put("jobs", result.readings().jobs().stream().map(CheckJson::job).toList());
    document.put("readings", readings());
    document.put("values", values());
    document.put(
        "insulationNotes", result.insulationNotes().stream().map(InsulationNoteJson::of).toList());
    document.put("verdict", result.verdict().word());
    document.put("doubts", DoubtJson.of(result.doubts()));
    document.put("faults", result.diagnosis().faults().stream().map(FaultJson::of).toList());
    document.put("unexplained", FaultJson.places(result.diagnosis().unexplained()));
    document.put("contradictions", contradictions());
    document.put("notTested", FaultJson.places(result.comparison().with(Outcome.NOT_TESTED)));
    document.put("notJudged", notJudged());
    document.put("replaced", replaced());
    document.put(
        "rework", result.readings().reworks().stream().map(ReworkJson::of).distinct().toList());
    document.put("overtaken", FaultJson.places(result.comparison().overtaken()));
    document.put(
        "noted",
        result.noted().stream()
            .map(one -> Map.of("reading", one.reading().place().toString(), "text", one.words()))
            .map(TreeMap::new)
            .toList());
    document.put("waived", result.comparison().conceded().stream().map(ReworkJson::of).toList());
    document.put(
        "idleWaivers", result.comparison().idleConcessions().stream().map(ReworkJson::of).toList());
    document.put("blind", BlindJson.of(result.diagnosis().blind()));
    document.put("coverage", CoverageJson.of(result.coverage(), result.circuit()));
    document.put(
        "next",
        result.diagnosis().next().stream().map(one -> NextJson.of(result.circuit(), one)).toList());
    document.put("searchComplete", result.diagnosis().searchComplete());
    document.put("remarks", Json.remarks(result.review().remarks()));
    List<Problem> problems = new ArrayList<>(result.problems());
    result.leadDoubt().map(DoubtSentences::problem).ifPresent(problems::add);
    document.put("problems", Json.problems(problems));
    document.put("judged", judged());
    return document;
  }

  private Map<String, Object> unit() {
    TestedUnit unit = UnitOfTest.of(result.harness(), result.readings());
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("serialNumber", unit.serialNumber());
    json.put("title", unit.title());
    json.put("drawing", unit.drawing());
    json.put("revision", unit.revision());
    return json;
  }

  private static Map<String, Object> job(Job job) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("file", job.file());
    json.put("entries", job.entries());
    json.put("instruments", job.instruments().stream().map(DoubtJson::instrument).toList());
    return json;
  }

  /** Every reading in force, made only while it is written. */
  private Iterable<Map<String, Object>> judged() {
    RecordLimits limits = new RecordLimits(result);
    return () -> result.comparison().inForce().stream().map(one -> judged(one, limits)).iterator();
  }

  private static Map<String, Object> judged(Judged judged, RecordLimits limits) {
    Reading reading = judged.reading();
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("reading", reading.place().toString());
    json.put("step", reading.step());
    json.put("kind", reading.kind().name().toLowerCase(Locale.ROOT));
    json.put("from", reading.from().toString());
    json.put("to", reading.to().toString());
    json.put("state", reading.state().toString());
    json.put("value", reading.measured().text());
    json.put("ohms", Json.orNull(reading.measured().value().map(Measured.Value::ohms)));
    json.put("volts", Json.orNull(reading.volts()));
    json.put("limit", limit(limits.bounds(judged)));
    json.put("outcome", judged.outcome().name().toLowerCase(Locale.ROOT).replace('_', '-'));
    json.put("requirement", RecordLimits.requirement(judged));
    json.put("why", Json.orNull(NotJudgedJson.of(judged)));
    return json;
  }

  private static Map<String, Object> limit(RecordLimits.Bounds bounds) {
    Map<String, Object> json = new LinkedHashMap<>();
    bounds.minOhms().ifPresent(ohms -> json.put("minOhms", ohms));
    bounds.maxOhms().ifPresent(ohms -> json.put("ohms", ohms));
    json.put("basis", bounds.basis());
    return json;
  }

  private Map<String, Object> harness() {
    Harness harness = result.harness();
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("title", harness.headerValue("title"));
    json.put("revision", harness.headerValue("revision"));
    json.put("points", result.circuit().size());
    json.put("wires", harness.wires().size());
    json.put("nets", result.circuit().normal().count());
    return json;
  }

  private Map<String, Object> readings() {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("continuity", result.comparison().made(Reading.Kind.CONTINUITY));
    json.put("insulation", result.comparison().made(Reading.Kind.INSULATION));
    json.put("replaced", result.comparison().replaced().size());
    json.put("unquantified", result.comparison().unquantified());
    json.put("conform", result.comparison().with(Outcome.CONFORMS).size());
    json.put("accepted", result.comparison().conceded().size());
    json.put("fail", result.comparison().failing().size());
    json.put("notTested", result.comparison().with(Outcome.NOT_TESTED).size());
    json.put("notJudged", result.comparison().with(Outcome.NOT_JUDGED).size());
    return json;
  }

  private Map<String, Object> values() {
    Values values = result.values();
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("asExpected", values.count(ValueVerdict.AS_EXPECTED));
    json.put("high", values.count(ValueVerdict.HIGH));
    json.put("low", values.count(ValueVerdict.LOW));
    json.put("cantTell", values.count(ValueVerdict.CANT_TELL));
    json.put("notCompared", values.count(ValueVerdict.NOT_COMPARED));
    json.put("fixedLimit", values.fixedLimit());
    json.put("otherMetal", values.otherMetal());
    json.put("cantTellReadings", FaultJson.places(values.cantTell()));
    json.put(
        "unlikeReadings",
        values.unlike().stream()
            .map(
                judged -> {
                  Map<String, Object> one = new LinkedHashMap<>();
                  one.put("reading", judged.reading().place().toString());
                  one.put("expected", FaultJson.range(judged.limit().expected()));
                  return one;
                })
            .toList());
    return json;
  }

  private List<Map<String, Object>> contradictions() {
    return result.comparison().contradictions().stream()
        .map(
            one -> {
              Map<String, Object> json = new LinkedHashMap<>();
              json.put("apart", one.apart().reading().place().toString());
              json.put("joins", FaultJson.places(one.joins()));
              return json;
            })
        .toList();
  }

  private List<Map<String, Object>> notJudged() {
    return result.comparison().with(Outcome.NOT_JUDGED).stream()
        .map(
            judged -> {
              Map<String, Object> json = new LinkedHashMap<>();
              json.put("reading", judged.reading().place().toString());
              json.put("why", Json.orNull(NotJudgedJson.of(judged)));
              return json;
            })
        .toList();
  }

  private List<Map<String, Object>> replaced() {
    return result.comparison().replaced().stream()
        .map(
            one -> {
              Map<String, Object> json = new LinkedHashMap<>();
              json.put("reading", one.earlier().reading().place().toString());
              json.put("value", one.earlier().reading().measured().text());
              json.put("by", one.later().reading().place().toString());
              json.put("changed", one.changed());
              return json;
            })
        .toList();
  }
}
