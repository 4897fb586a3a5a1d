package dev.ringout.json;

import dev.ringout.circuit.Conductor;
import dev.ringout.circuit.Expected;
import dev.ringout.circuit.InsulationLimits.InsulationLimit;
import dev.ringout.harness.Part;
import dev.ringout.harness.Wire;
import dev.ringout.source.Problem;
import dev.ringout.trace.Trace;
import dev.ringout.trace.Trace.Between;
import dev.ringout.units.OhmsRange;
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
    return Json.refused(FORMAT, problems);
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
    document.put("openContacts", trace.openContacts().stream().map(TraceJson::contact).toList());
    document.put("insulation", insulation(trace.insulation()));
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
    step.by().asWire().ifPresent(wire -> wire(json, wire));
    range(json, "ohmsFromStart", step.fromStart());
    return json;
  }

  private static void wire(Map<String, Object> json, Wire wire) {
    json.put("wire", wire.name());
    json.put("color", wire.colour());
    json.put("signal", wire.signal());
    wire.gauge().ifPresent(gauge -> json.put("gauge", gauge.label()));
    wire.length().ifPresent(length -> json.put("metres", length.metres()));
  }

  private static Map<String, Object> contact(Trace.OpenContact contact) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("switch", contact.ref());
    json.put("position", contact.position());
    json.put("from", contact.here().toString());
    json.put("to", contact.there().toString());
    return json;
  }

  private static Map<String, Object> insulation(InsulationLimit limit) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("minOhms", limit.minOhms());
    json.put("volts", limit.volts());
    json.put("leastVolts", limit.leastVolts());
    json.put("disconnect", labels(limit.sensitive()));
    return json;
  }

  private static List<String> labels(List<Part> parts) {
    return parts.stream().map(Part::label).distinct().toList();
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
    json.put("joined", between.expected().isJoined());
    between.expected().match(new Found(json, between));
    json.put("joinedIn", between.joinedIn().stream().map(Object::toString).toList());
    return json;
  }

  /** What is said of two points by how they are joined. */
  private record Found(Map<String, Object> json, Between between)
      implements Expected.Cases<Map<String, Object>> {
    @Override
    public Map<String, Object> joined(Expected.Joined expected) {
      range(json, "ohms", between.limit().expected());
      json.put("maxOhms", between.limit().ohms());
      json.put("basis", between.limit().basis().name().toLowerCase(Locale.ROOT).replace('_', '-'));
      return json;
    }

    @Override
    public Map<String, Object> apart(Expected.Apart expected) {
      return json;
    }

    @Override
    public Map<String, Object> throughParts(Expected.ThroughParts through) {
      json.put("through", labels(between.parts()));
      range(json, "ohms", new OhmsRange(through.lowOhms(), through.highOhms()));
      return json;
    }
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
