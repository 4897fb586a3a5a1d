package dev.ringout.json;

import com.fasterxml.jackson.jr.ob.JSON;
import dev.ringout.bench.BenchState;
import dev.ringout.bench.BenchState.FaultState;
import dev.ringout.bench.BenchState.MeterState;
import dev.ringout.bench.BenchState.SessionState;
import dev.ringout.bench.BenchState.SideState;
import dev.ringout.bench.BenchState.StepState;
import dev.ringout.bench.BenchState.TakenState;
import dev.ringout.bench.BenchState.UnitState;
import dev.ringout.bench.Refused;
import dev.ringout.source.Problem;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** What the bench's page is answered: docs/reference/bench-api.md. */
public final class BenchJson {
  private static final String FORMAT = "ringout-bench/1";

  private BenchJson() {}

  /** The bench as it is now, in one line. */
  public static String write(BenchState state) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("format", FORMAT);
    json.put("version", state.version());
    json.put("program", state.program());
    json.put("store", state.store());
    json.put("station", state.station());
    json.put("practice", state.practice());
    json.put("tester", state.tester());
    json.put("meter", meter(state.meter()));
    json.put("insulationMeter", meter(state.insulationMeter()));
    json.put("session", Json.orNull(state.session().map(BenchJson::session)));
    return line(json);
  }

  /** An answer that is a document of its own, in one line. */
  public static String line(Map<String, Object> document) {
    try {
      return JSON.std.with(JSON.Feature.WRITE_NULL_PROPERTIES).asString(document);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** What was wrong in what was asked. */
  public static String write(Refused refused) {
    return line(Map.of("problems", refused.problems().stream().map(BenchJson::problem).toList()));
  }

  /** Whether a text is a name. */
  public static String named(boolean isName) {
    return line(Map.of("named", isName));
  }

  static Map<String, Object> problem(Problem problem) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("text", problem.text());
    json.put("place", problem.place().isNowhere() ? "" : problem.place().toString());
    json.put("maybe", problem.maybe());
    return json;
  }

  private static Map<String, Object> meter(MeterState meter) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("address", meter.address());
    json.put("profile", meter.profile());
    json.put("state", word(meter.link()));
    json.put("text", meter.text());
    json.put("trouble", meter.trouble());
    json.put(
        "leads",
        Json.orNull(meter.leads().map(one -> Json.object("text", one.text(), "at", one.at()))));
    json.put("needsLeads", meter.needsLeads());
    return json;
  }

  static String word(Enum<?> one) {
    return one.name().toLowerCase(Locale.ROOT);
  }

  private static Map<String, Object> session(SessionState session) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("id", session.id());
    json.put("number", session.number());
    json.put("trouble", session.trouble());
    json.put("unit", unit(session.unit()));
    Map<String, Object> progress = new LinkedHashMap<>();
    progress.put("made", session.progress().made());
    progress.put("of", session.progress().of());
    progress.put("skipped", session.progress().skipped());
    progress.put(
        "minutes",
        Json.orNull(
            session.progress().minutes().isPresent()
                ? Optional.of(session.progress().minutes().getAsInt())
                : Optional.empty()));
    json.put("progress", progress);
    json.put("leading", word(session.leading()));
    json.put(
        "offer",
        Json.orNull(
            session
                .offer()
                .map(offer -> Json.object("text", offer.text(), "telling", offer.telling()))));
    json.put(
        "conditions",
        session.conditions().entrySet().stream()
            .map(one -> Json.object("name", one.getKey(), "value", one.getValue()))
            .toList());
    json.put("step", Json.orNull(session.step().map(BenchJson::step)));
    json.put("last", Json.orNull(session.last().map(BenchJson::taken)));
    json.put(
        "found",
        Json.object(
            "working",
            session.found().working(),
            "faults",
            session.found().faults().stream().map(BenchJson::fault).toList()));
    json.put("open", open(session.open()));
    json.put(
        "others",
        session.others().stream()
            .map(
                other -> {
                  Map<String, Object> one = new LinkedHashMap<>();
                  one.put("station", other.station());
                  one.put("who", other.who());
                  one.put("at", other.at());
                  one.put("text", other.text());
                  one.put("leads", word(other.leads()));
                  return one;
                })
            .toList());
    return json;
  }

  static Map<String, Object> open(BenchState.Open open) {
    return Json.object("sentences", open.sentences(), "more", open.more());
  }

  static Map<String, Object> unit(UnitState unit) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("id", unit.id());
    json.put("serial", unit.serial());
    json.put("title", unit.title());
    json.put("drawing", unit.drawing());
    json.put("revision", unit.revision());
    json.put("practice", unit.practice());
    return json;
  }

  private static Map<String, Object> side(SideState side) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("text", side.text());
    json.put("spoken", side.spoken());
    json.put(
        "points",
        side.points().stream()
            .map(point -> Json.object("item", point.item(), "pin", point.pin()))
            .toList());
    json.put("rest", side.rest());
    json.put("how", side.how());
    return json;
  }

  private static Map<String, Object> step(StepState step) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("id", step.id());
    json.put("number", step.number());
    json.put("kind", step.kind());
    json.put("asks", word(step.asks()));
    json.put("from", side(step.from()));
    json.put("to", side(step.to()));
    json.put("stays", step.stays());
    json.put(
        "state",
        step.state().stream()
            .map(one -> Json.object("text", one.text(), "changed", one.changed()))
            .toList());
    json.put("wire", step.wire());
    json.put(
        "expected", Json.object("text", step.expected().text(), "means", step.expected().means()));
    json.put("why", step.why());
    json.put("again", step.again());
    json.put("reverse", step.reverse());
    json.put("cautions", step.cautions());
    json.put("confirm", step.confirm());
    json.put("volts", step.volts());
    json.put("unit", step.unit());
    json.put("units", step.units());
    return json;
  }

  private static Map<String, Object> taken(TakenState taken) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("id", taken.id());
    json.put("text", taken.text());
    json.put("value", taken.value());
    json.put("raw", taken.raw());
    json.put("how", taken.how());
    json.put("outcome", word(taken.outcome()));
    json.put("says", taken.says());
    json.put("at", taken.at());
    json.put("who", taken.who());
    json.put("taken", taken.counts());
    return json;
  }

  static Map<String, Object> fault(FaultState fault) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("title", fault.title());
    json.put("certainty", fault.certainty());
    json.put("text", fault.text());
    json.put("advice", fault.advice());
    json.put("readings", fault.readings());
    json.put("others", fault.others());
    return json;
  }

  /** What a page sent, as names and values; absent where it is no object. */
  public static Optional<Map<String, Object>> read(String text) {
    try {
      return Optional.ofNullable(JSON.std.mapFrom(text));
    } catch (IOException | IllegalArgumentException e) {
      return Optional.empty();
    }
  }

  /** What happens in between: one name and one value. */
  public static String event(String name, String value, String other, String otherValue) {
    return line(Json.object(name, value, other, otherValue));
  }

  /** What happens in between: a name and a value. */
  public static String event(String name, String value) {
    return line(Map.of(name, value));
  }

  static List<Map<String, Object>> faults(List<FaultState> faults) {
    return faults.stream().map(BenchJson::fault).toList();
  }
}
