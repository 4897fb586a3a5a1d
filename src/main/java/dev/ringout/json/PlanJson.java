package dev.ringout.json;

import dev.ringout.circuit.Circuit;
import dev.ringout.harness.Part;
import dev.ringout.plan.Step;
import dev.ringout.plan.TestPlan;
import dev.ringout.source.Problem;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** A plan as one JSON document, {@code ringout-plan/1}. */
public final class PlanJson {
  private static final String FORMAT = "ringout-plan/1";

  private PlanJson() {}

  /** What is left to say where the files can't be understood. */
  public static String write(List<Problem> problems) {
    return Json.refused(FORMAT, problems);
  }

  /** The whole plan. */
  public static String write(TestPlan plan, List<Problem> problems) {
    Map<String, Object> document = new LinkedHashMap<>();
    document.put("format", FORMAT);
    document.put("steps", plan.steps().stream().map(step -> step(plan.circuit(), step)).toList());
    Map<String, Object> walk = new LinkedHashMap<>();
    walk.put("moves", plan.moves());
    walk.put("movesAsListed", plan.movesAsListed());
    document.put("walk", walk);
    document.put(
        "rework", plan.options().reworks().stream().map(ReworkJson::of).distinct().toList());
    document.put("disconnect", plan.sensitive().stream().map(Part::label).toList());
    LeftOutJson leftOut = new LeftOutJson(plan.circuit());
    document.put("leftOut", plan.leftOut().stream().map(leftOut::of).toList());
    document.put("coverage", CoverageJson.of(plan.coverage(), plan.circuit()));
    document.put("problems", Json.problems(problems));
    return Json.text(document);
  }

  private static Map<String, Object> step(Circuit circuit, Step step) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("step", step.number());
    json.put("kind", step.kind().name().toLowerCase(Locale.ROOT));
    json.put("from", points(circuit, step.probing().from()));
    json.put(
        "to", step.probing().toRest() ? List.of("REST") : points(circuit, step.probing().to()));
    json.put("state", step.probing().state().toString());
    json.put("volts", Json.orNull(step.volts()));
    json.put("min", Json.orNull(step.minOhms()));
    json.put("max", Json.orNull(step.maxOhms()));
    json.put("unit", "ohm");
    json.put("proves", step.purpose().name().toLowerCase(Locale.ROOT));
    json.put("of", step.ofWhat());
    return json;
  }

  private static List<String> points(Circuit circuit, int[] points) {
    return Arrays.stream(points).mapToObj(point -> circuit.point(point).toString()).toList();
  }
}
