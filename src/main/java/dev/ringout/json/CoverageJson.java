package dev.ringout.json;

import dev.ringout.circuit.Circuit;
import dev.ringout.compare.Coverage;
import dev.ringout.compare.Coverage.Tally;
import dev.ringout.compare.Coverage.Unprovable;
import dev.ringout.compare.Coverage.Unproven;
import java.util.LinkedHashMap;
import java.util.List;
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
    json.put("unproven", coverage.unproven().stream().map(one -> unproven(one, circuit)).toList());
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

  private static Map<String, Object> unprovable(Unprovable one, Circuit circuit) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("kind", one.insulation() ? "insulation" : "isolation");
    json.put(
        "points", one.points().stream().map(point -> circuit.point(point).toString()).toList());
    json.put(
        "parts", one.parts().stream().map(part -> circuit.part(part).label()).distinct().toList());
    return json;
  }

  private static Map<String, Object> unproven(Unproven one, Circuit circuit) {
    Map<String, Object> json = new LinkedHashMap<>();
    if (one instanceof Unproven.Join join) {
      json.put("kind", "join");
      json.put("points", points(circuit, join.from(), join.to()));
    } else if (one instanceof Unproven.Isolation isolation) {
      json.put("kind", "isolation");
      json.put("points", points(circuit, isolation.point(), isolation.other()));
      json.put("nets", isolation.others());
    } else if (one instanceof Unproven.Insulation insulation) {
      json.put("kind", "insulation");
      json.put("points", points(circuit, insulation.point(), insulation.other()));
      json.put("nets", insulation.others());
      json.put("volts", insulation.level().volts());
      json.put("minOhms", insulation.level().ohms());
    } else if (one instanceof Unproven.OfPart part) {
      json.put("kind", "part");
      json.put(
          "points",
          points(circuit, circuit.fromOfPart(part.part()), circuit.toOfPart(part.part())));
    } else if (one instanceof Unproven.OfWire wire) {
      json.put("kind", "wire");
      json.put("wire", circuit.conductors().get(wire.conductor()).label());
    } else if (one instanceof Unproven.Contact contact) {
      json.put("kind", "switch");
      json.put(
          "points",
          points(circuit, circuit.from(contact.conductor()), circuit.to(contact.conductor())));
      json.put("position", contact.position());
    }
    json.put("why", one.why());
    return json;
  }

  private static List<String> points(Circuit circuit, int one, int other) {
    return List.of(circuit.point(one).toString(), circuit.point(other).toString());
  }
}
