package dev.ringout.json;

import dev.ringout.check.CheckResult;
import dev.ringout.check.UnitOfTest;
import dev.ringout.check.Values;
import dev.ringout.circuit.Conductor;
import dev.ringout.compare.Judged;
import dev.ringout.compare.Outcome;
import dev.ringout.compare.ValueVerdict;
import dev.ringout.diagnose.Fault;
import dev.ringout.diagnose.Fault.HighResistance;
import dev.ringout.diagnose.Fault.LowInsulation;
import dev.ringout.diagnose.Fault.Miswire;
import dev.ringout.diagnose.Fault.Open;
import dev.ringout.diagnose.Fault.UnequalWire;
import dev.ringout.diagnose.Fault.WrongGauge;
import dev.ringout.diagnose.Fault.WrongPart;
import dev.ringout.diagnose.Fault.WrongSwitch;
import dev.ringout.diagnose.Move;
import dev.ringout.diagnose.NextReading;
import dev.ringout.harness.Harness;
import dev.ringout.harness.Point;
import dev.ringout.harness.Wire;
import dev.ringout.readings.Job;
import dev.ringout.readings.Measured;
import dev.ringout.readings.Reading;
import dev.ringout.seal.TestedUnit;
import dev.ringout.source.Problem;
import dev.ringout.units.OhmsRange;
import dev.ringout.words.DoubtSentences;
import dev.ringout.words.RecordLimits;
import dev.ringout.words.Sentences;
import java.io.IOException;
import java.io.Writer;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

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
    Map<String, Object> document = new LinkedHashMap<>();
    document.put("format", FORMAT);
    document.put("problems", Json.problems(problems));
    return Json.text(document);
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
    document.put("faults", result.diagnosis().faults().stream().map(CheckJson::fault).toList());
    document.put("unexplained", places(result.diagnosis().unexplained()));
    document.put("contradictions", contradictions());
    document.put("notTested", places(result.comparison().with(Outcome.NOT_TESTED)));
    document.put("notJudged", notJudged());
    document.put("replaced", replaced());
    document.put(
        "rework", result.readings().reworks().stream().map(ReworkJson::of).distinct().toList());
    document.put("overtaken", places(result.comparison().overtaken()));
    document.put("waived", result.comparison().conceded().stream().map(ReworkJson::of).toList());
    document.put(
        "idleWaivers", result.comparison().idleConcessions().stream().map(ReworkJson::of).toList());
    document.put("blind", result.diagnosis().blind());
    document.put("coverage", CoverageJson.of(result.coverage(), result.circuit()));
    document.put("next", result.diagnosis().next().stream().map(this::next).toList());
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
    json.put("cantTellReadings", places(values.cantTell()));
    json.put(
        "unlikeReadings",
        values.unlike().stream()
            .map(
                judged -> {
                  Map<String, Object> one = new LinkedHashMap<>();
                  one.put("reading", judged.reading().place().toString());
                  one.put("expected", range(judged.limit().expected()));
                  return one;
                })
            .toList());
    return json;
  }

  private static List<String> places(List<Judged> readings) {
    return readings.stream().map(judged -> judged.reading().place().toString()).toList();
  }

  private static Map<String, Object> fault(Fault fault) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("kind", Sentences.kind(fault));
    if (fault instanceof Miswire miswire) {
      json.put("pattern", miswire.pattern().word());
      miswire.arrangement().ifPresent(how -> json.put("arrangement", how.word()));
    }
    json.put("certainty", fault.finding().certainty().word());
    if (fault instanceof Miswire miswire) {
      json.put("moves", moves(miswire.moves()));
    }
    json.put("points", fault.points().stream().map(Point::toString).toList());
    json.put("wires", Sentences.wires(fault).stream().map(Wire::name).toList());
    addValues(fault, json);
    json.put("readings", places(fault.finding().readings()));
    if (fault instanceof Miswire miswire) {
      json.put(
          "equivalents",
          miswire.equivalents().stream().map(moves -> Map.of("moves", moves(moves))).toList());
    }
    if (!fault.finding().alternatives().isEmpty()) {
      json.put("alternatives", alternatives(fault));
    }
    fault.finding().runnerUp().ifPresent(one -> json.put("runnerUp", runnerUp(one)));
    if (fault.finding().story() > 0) {
      json.put("story", fault.finding().story());
    }
    json.put("summary", Sentences.summary(fault));
    json.put("advice", Sentences.advice(fault));
    return json;
  }

  private static void addValues(Fault fault, Map<String, Object> json) {
    if (fault instanceof Fault.SlippedRows slipped) {
      json.put("rows", slipped.rows());
      json.put("step", slipped.step());
      json.put("firstRow", slipped.first().reading().place().toString());
    } else if (fault instanceof Fault.LeadsNotNulled leads) {
      json.put("measured", ohms("value", leads.ohms()));
    } else if (fault instanceof Fault.OnPaper paper) {
      json.put("also", paper.others());
      json.put("would", Sentences.kind(paper.same()));
    } else if (fault instanceof Open open) {
      json.put("suspects", open.suspects().stream().map(Conductor::label).toList());
    } else if (fault instanceof HighResistance high) {
      json.put("suspects", high.suspects().stream().map(one -> one.conductor().label()).toList());
      json.put("odds", high.suspects().stream().map(one -> rounded(one.odds())).toList());
      json.put("expected", ohms("max", high.limitOhms()));
      json.put("measured", ohms("value", high.measuredOhms()));
    } else if (fault instanceof UnequalWire unequal) {
      json.put("expected", range(unequal.fellowsOhms()));
      json.put("measured", ohms("value", unequal.measuredOhms()));
      json.put("fellows", unequal.fellows());
    } else if (fault instanceof WrongGauge wrong) {
      json.put("listedGauge", wrong.listed().label());
      json.put("likelyGauge", wrong.likely().label());
      json.put("odds", List.of(rounded(wrong.odds())));
      json.put("expected", range(wrong.expected()));
      json.put("expectedOfLikely", range(wrong.expectedOfLikely()));
      json.put("measured", ohms("value", wrong.measuredOhms()));
    } else if (fault instanceof LowInsulation low) {
      json.put("items", low.places());
      if (low.measuredOhms().isPresent()) {
        json.put("measured", ohms("value", low.measuredOhms().getAsDouble()));
      }
      if (low.volts().isPresent()) {
        json.put("volts", low.volts().getAsDouble());
      }
    } else if (fault instanceof WrongPart part) {
      Map<String, Object> expected = new LinkedHashMap<>();
      expected.put("min", part.lowOhms());
      if (Double.isInfinite(part.lowOhms())) {
        expected.remove("min");
      }
      if (Double.isFinite(part.highOhms())) {
        expected.put("max", part.highOhms());
      }
      expected.put("unit", "ohm");
      json.put("part", part.part().label());
      json.put("how", part.how().word());
      json.put("expected", expected);
      json.put("measured", part.measured());
    } else if (fault instanceof WrongSwitch wrong) {
      json.put("switch", wrong.which().ref());
      json.put("how", wrong.how().word());
      json.put("position", wrong.position());
    }
  }

  private static double rounded(double odds) {
    return Math.round(odds * 10_000) / 10_000.0;
  }

  private static Map<String, Object> range(OhmsRange range) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("min", range.lowOhms());
    json.put("max", range.highOhms());
    json.put("unit", "ohm");
    return json;
  }

  private static Map<String, Object> ohms(String name, double ohms) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put(name, ohms);
    json.put("unit", "ohm");
    return json;
  }

  private static Map<String, Object> runnerUp(Fault.RunnerUp runnerUp) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("summary", Sentences.slips(runnerUp.slips()));
    json.put("against", places(runnerUp.against()));
    return json;
  }

  private static List<Map<String, Object>> alternatives(Fault fault) {
    List<Map<String, Object>> alternatives = new ArrayList<>();
    for (Fault.Alternative alternative : fault.finding().alternatives()) {
      Map<String, Object> json = new LinkedHashMap<>();
      json.put("odds", rounded(alternative.odds()));
      json.put("summary", Sentences.slips(alternative.slips()));
      alternatives.add(json);
    }
    return alternatives;
  }

  private static List<Map<String, Object>> moves(List<Move> moves) {
    List<Map<String, Object>> list = new ArrayList<>();
    for (Move move : moves) {
      Map<String, Object> json = new LinkedHashMap<>();
      json.put("wire", move.wire().name());
      json.put("from", move.from().toString());
      json.put("to", move.to().toString());
      list.add(json);
    }
    return list;
  }

  private List<Map<String, Object>> contradictions() {
    return result.comparison().contradictions().stream()
        .map(
            one -> {
              Map<String, Object> json = new LinkedHashMap<>();
              json.put("apart", one.apart().reading().place().toString());
              json.put("joins", places(one.joins()));
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

  private Map<String, Object> next(NextReading next) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("kind", next.kind().name().toLowerCase(Locale.ROOT));
    json.put("from", next.from());
    json.put("to", next.to());
    json.put("state", next.state().toString());
    json.put("why", Sentences.why(result.circuit(), next));
    if (!next.answers().isEmpty()) {
      json.put("answers", next.answers().stream().map(CheckJson::answer).toList());
    }
    return json;
  }

  private static Map<String, Object> answer(NextReading.Answer answer) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("reads", Sentences.reads(answer));
    json.put("odds", rounded(answer.odds()));
    json.put("means", answer.meanings().stream().map(Sentences::slips).toList());
    return json;
  }
}
