package dev.ringout.json;

import dev.ringout.circuit.Conductor;
import dev.ringout.circuit.Expected;
import dev.ringout.harness.Part;
import dev.ringout.harness.Wire;
import dev.ringout.source.Problem;
import dev.ringout.trace.Trace;
import dev.ringout.trace.Trace.Between;
import dev.ringout.units.OhmsRange;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** A net as one JSON document, {@code ringout-trace/1}. */
public final class TraceJson {
  private static final String FORMAT = "ringout-trace/1";

  private TraceJson() {}

  /** What is left to say where the file can't be understood. */
  public static String write(List<Problem> problems) {
    Map<String, Object> document = new LinkedHashMap<>();
    document.put("format", FORMAT);
    document.put("problems", Json.problems(problems));
    return Json.text(document);
  }

  /** The whole net. */
  public static String write(Trace trace, List<Problem> problems) {
    Map<String, Object> document = new LinkedHashMap<>();
    document.put("format", FORMAT);
    document.put("point", trace.start().toString());
    document.put("state", trace.state().toString());
    document.put("points", trace.points());
    document.put("steps", trace.steps().stream().map(TraceJson::step).toList());
    document.put("loops", trace.loops().stream().map(Conductor::label).toList());
    document.put("parts", trace.parts().stream().map(TraceJson::part).toList());
    List<Map<String, Object>> contacts = new ArrayList<>();
    for (Trace.OpenContact contact : trace.openContacts()) {
      Map<String, Object> json = new LinkedHashMap<>();
      json.put("switch", contact.ref());
      json.put("position", contact.position());
      json.put("from", contact.here().toString());
      json.put("to", contact.there().toString());
      contacts.add(json);
    }
    document.put("openContacts", contacts);
    Map<String, Object> insulation = new LinkedHashMap<>();
    insulation.put("minOhms", trace.insulation().minOhms());
    insulation.put("volts", trace.insulation().volts());
    insulation.put("leastVolts", trace.insulation().leastVolts());
    insulation.put(
        "disconnect", trace.insulation().sensitive().stream().map(Part::label).distinct().toList());
    document.put("insulation", insulation);
    trace.between().ifPresent(between -> document.put("between", between(between)));
    document.put("problems", Json.problems(problems));
    return Json.text(document);
  }

  private static Map<String, Object> step(Trace.Step step) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("depth", step.depth());
    json.put("from", step.from().toString());
    json.put("to", step.to().toString());
    json.put("by", step.by().label());
    if (step.by() instanceof Conductor.OfWire one) {
      Wire wire = one.wire();
      json.put("wire", wire.name());
      json.put("color", wire.colour());
      json.put("signal", wire.signal());
      wire.gauge().ifPresent(gauge -> json.put("gauge", gauge.label()));
      wire.length().ifPresent(length -> json.put("metres", length.metres()));
    }
    range(json, "ohmsFromStart", step.fromStart());
    return json;
  }

  private static Map<String, Object> part(Part part) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("part", part.label());
    json.put("from", part.from().toString());
    json.put("to", part.to().toString());
    return json;
  }

  private static Map<String, Object> between(Between between) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("to", between.to().toString());
    json.put("way", between.way().stream().map(Conductor::label).toList());
    boolean joined = between.expected() instanceof Expected.Joined;
    json.put("joined", joined);
    if (joined) {
      range(json, "ohms", between.limit().expected());
      json.put("maxOhms", between.limit().ohms());
      json.put("basis", between.limit().basis().name().toLowerCase(Locale.ROOT).replace('_', '-'));
    } else if (between.expected() instanceof Expected.ThroughParts through) {
      json.put("through", between.partNames());
      range(json, "ohms", new OhmsRange(through.lowOhms(), through.highOhms()));
    }
    json.put("joinedIn", between.joinedIn().stream().map(Object::toString).toList());
    return json;
  }

  private static void range(Map<String, Object> json, String name, OhmsRange range) {
    if (range.isKnown()) {
      Map<String, Object> ohms = new LinkedHashMap<>();
      ohms.put("min", range.lowOhms());
      ohms.put("max", range.highOhms());
      json.put(name, ohms);
    }
  }
}
