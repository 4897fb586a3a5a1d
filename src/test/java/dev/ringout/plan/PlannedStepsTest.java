package dev.ringout.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.ringout.check.CheckResult;
import dev.ringout.circuit.Circuit;
import dev.ringout.harness.Harness;
import dev.ringout.plan.PlanOptions.Isolation;
import dev.ringout.readings.Reading;
import dev.ringout.sample.Golden;
import dev.ringout.standards.HandMovements;
import dev.ringout.standards.Tables;
import dev.ringout.support.PublishedLimits;
import dev.ringout.support.UnitUnderTest;
import dev.ringout.units.Ohms;
import dev.ringout.words.LeftOutSentences;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Every step for one small unit in which there is one of each: a changeover contact with wires on
 * both sides, a selector, a strip, a loop, parallel wires, a resistor, a lamp, a diode, a
 * suppressor, a spare pin and a shell. The steps are kept in a file, read once by hand.
 */
class PlannedStepsTest {
  @TempDir Path folder;

  private static UnitUnderTest unit(UnitUnderTest unit) {
    return unit.wire("W1,J1-A,S1-1,20,1 m")
        .wire("W2,S1-2,J2-1,20,1 m")
        .wire("W3,J2-1,J3-1,20,2 m")
        .wire("W4,J3-1,J4-1,20,2 m")
        .wire("W5,S1-3,J2-2,20,1 m")
        .wire("W6,J1-B,TB1-1,18,3 m")
        .wire("W7,TB1-2,J2-3,18,3 m")
        .wire("W8,J1-C,J2-4,20,2 m")
        .wire("W9,J1-C,J2-4,20,2 m")
        .wire("W10,J1-D,J2-5,20,1 m")
        .wire("W11,J2-5,J3-5,20,1 m")
        .wire("W12,J3-5,J1-D,20,1 m")
        .wire("W13,J1-E,R1-1,22,1 m")
        .wire("W14,R1-2,J2-6,22,1 m")
        .wire("W15,J1-F,CR1-A,22,1 m")
        .wire("W16,CR1-K,J2-7,22,1 m")
        .wire("W17,J2-8,S2-C,22,1 m")
        .wire("W18,S2-1,J3-8,22,1 m")
        .wire("W19,S2-2,J3-9,22,1 m")
        .wire("W20,J1-SHELL,TB1-5,16,0.3 m")
        .link("TB1,1,2")
        .link("TB1,2,3")
        .contact("S1,CLEAR,1,2")
        .contact("S1,CAUGHT,1,3")
        .contact("S2,ONE,C,1")
        .contact("S2,TWO,C,2")
        .contact("S2,OFF,3,4")
        .part("R1,1,2,resistor,470,5")
        .part("CR1,A,K,diode,")
        .part("DS1,1,2,lamp,40,20,50")
        .part("RV1,1,2,suppressor,,,30")
        .pin("J4,9,20");
  }

  private TestPlan plan(Harness harness, PlanOptions options) {
    Circuit circuit = Circuit.of(harness);
    return Planner.plan(
        circuit, PublishedLimits.of(circuit), new HandMovements(Tables.published()), options);
  }

  private static PlanOptions apart(Isolation isolation) {
    return new PlanOptions(isolation, true, false, Set.of(), Set.of(), Optional.empty());
  }

  private static String said(TestPlan plan) {
    StringBuilder text = new StringBuilder();
    for (Step step : plan.steps()) {
      text.append(
          "%s %s to %s%s, %s, %s%s%s%s%n"
              .formatted(
                  step.kind() == Reading.Kind.CONTINUITY ? "c" : "i",
                  points(plan, step.probing().from()),
                  step.probing().toRest() ? "REST" : points(plan, step.probing().to()),
                  step.probing().state().isNormal() ? "" : " (" + step.probing().state() + ")",
                  range(step.minOhms(), step.maxOhms()),
                  step.purpose(),
                  step.ofWhat().isEmpty() ? "" : " " + step.ofWhat(),
                  step.volts().isPresent() ? ", " + step.volts().getAsDouble() + " V" : "",
                  step.samePoint() ? ", same point" : ""));
    }
    plan.sensitive().forEach(part -> text.append("off before volts: " + part.label() + "\n"));
    LeftOutSentences leftOut = new LeftOutSentences(plan.circuit());
    plan.leftOut().stream()
        .map(one -> one.match(leftOut))
        .distinct()
        .forEach(one -> text.append("left out: " + one + "\n"));
    text.append(
        "%.1f movements, %.1f as listed%n%s%n%n"
            .formatted(plan.moves(), plan.movesAsListed(), tallies(plan)));
    return text.toString();
  }

  private static String tallies(TestPlan plan) {
    return "joins %s, isolation %s, wires %s, switches %s"
        .formatted(
            plan.coverage().joins(),
            plan.coverage().isolation(),
            plan.coverage().wires(),
            plan.coverage().switches())
        .replaceAll("Tally\\[needed=(\\d+), proven=(\\d+)]", "$2 of $1");
  }

  private static String points(TestPlan plan, int[] points) {
    return Arrays.stream(points)
        .mapToObj(point -> plan.circuit().point(point).toString())
        .collect(Collectors.joining("+"));
  }

  private static String range(OptionalDouble min, OptionalDouble max) {
    return (min.isPresent() ? Ohms.text(min.getAsDouble()) : "")
        + ".."
        + (max.isPresent() ? Ohms.text(max.getAsDouble()) : "");
  }

  @Test
  void every_step_of_a_small_unit_in_each_way_of_planning() throws Exception {
    UnitUnderTest under = unit(new UnitUnderTest(folder));
    Harness harness = under.harness();
    StringBuilder text = new StringBuilder();
    for (Isolation isolation : Isolation.values()) {
      text.append("APART BY " + isolation + "\n").append(said(plan(harness, apart(isolation))));
    }
    text.append("WITHOUT INSULATION, CONNECTOR BY CONNECTOR\n")
        .append(
            said(
                plan(
                    harness,
                    new PlanOptions(
                        Isolation.REST, false, true, Set.of(), Set.of(), Optional.empty()))));
    for (Isolation isolation : Isolation.values()) {
      text.append("ONLY J3, APART BY " + isolation + "\n")
          .append(
              said(
                  plan(
                      harness,
                      new PlanOptions(
                          isolation, true, false, Set.of("J3"), Set.of(), Optional.empty()))));
    }
    text.append("TOUCHED W8\n")
        .append(
            said(
                plan(
                    harness,
                    new PlanOptions(
                        Isolation.REST, true, false, Set.of(), Set.of("W8"), Optional.empty()))));
    Golden.assertMatches("planned-steps.txt", text.toString());
  }

  @Test
  void what_is_proven_is_not_planned_again() throws Exception {
    UnitUnderTest under =
        unit(new UnitUnderTest(folder))
            .reads("J1-A", "S1-1", "0.05")
            .reads("S1-2", "J2-1", "0.05")
            .reads("J2-1", "J4-1", "0.15")
            .reads("J1-B", "J2-3", "0.1")
            .reads("J1-C", "J2-4", "0.08")
            .reads("J1-E", "J2-6", "470")
            .reads("J1-F", "J2-7", "3.2 k")
            .readsIn("S1=CAUGHT", "J1-A", "J2-2", "0.1")
            .reads("J1-B", "REST", "OL")
            .reads("J1-SHELL", "TB1-5", "")
            .insulation("J1-B", "REST", "500")
            .insulation("J1-D", "REST", "500")
            .insulation("J3-8", "REST", "5");
    CheckResult check = under.check();
    TestPlan plan =
        plan(
            check.harness(),
            new PlanOptions(
                Isolation.REST, true, false, Set.of(), Set.of(), Optional.of(check.comparison())));
    Golden.assertMatches("planned-after.txt", said(plan));
  }

  @Test
  void a_good_unit_s_readings_prove_what_the_plan_says() {
    Harness harness = unit(new UnitUnderTest(folder)).harness();
    TestPlan plan = plan(harness, PlanOptions.ALL);
    CheckResult result =
        CheckResult.of(harness, GoodUnit.readings(plan.circuit(), plan.steps()), List.of());
    assertEquals(List.of(), result.comparison().failing());
    assertEquals(plan.coverage(), result.coverage());
    assertTrue(result.coverage().joins().isComplete());
  }
}
