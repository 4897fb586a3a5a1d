package dev.ringout.json;

import dev.ringout.circuit.Circuit;
import dev.ringout.compare.Coverage;
import dev.ringout.compare.Coverage.Tally;
import dev.ringout.compare.Coverage.Unprovable;
import java.util.LinkedHashMap;
import java.util.Map;

/** What is proven, as a part of a JSON document. */
final class CoverageJson {
  private CoverageJson() {}

  static Map<String, Object> of(Coverage coverage, Circuit circuit) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("joins", tally(coverage.joins()));
    json.put("isolation", tally(coverage.isolation()));
    json.put("insulation", tally(coverage.insulation()));
    json.put("wires", tally(coverage.wires()));
    json.put("switches", tally(coverage.switches()));
    json.put("parts", tally(coverage.parts()));
    json.put(
        "unproven",
        coverage.unproven().stream().map(one -> UnprovenJson.of(circuit, one)).toList());
    json.put(
        "unprovable", coverage.unprovable().stream().map(one -> unprovable(one, circuit)).toList());
    return json;
  }

  private static Map<String, Object> tally(Tally tally) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("needed", tally.needed());
    json.put("proven", tally.proven());
    return json;
  }

  static Map<String, Object> unprovable(Unprovable unprovable, Circuit circuit) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("kind", unprovable.insulation() ? "insulation" : "isolation");
    json.put(
        "points",
        unprovable.points().stream().map(point -> circuit.point(point).toString()).toList());
    json.put(
        "parts",
        unprovable.parts().stream().map(part -> circuit.part(part).label()).distinct().toList());
    return json;
  }
}
