package dev.ringout.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.ringout.circuit.Circuit;
import dev.ringout.circuit.JoinLimits;
import dev.ringout.compare.Comparison;
import dev.ringout.readings.Reading;
import dev.ringout.readings.ReadingSet;
import dev.ringout.standards.HandMovements;
import dev.ringout.standards.Tables;
import dev.ringout.support.UnitUnderTest;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a good unit reads stands on no sheet: each reading is known by its step. */
class GoodUnitTest {
  @TempDir Path folder;

  private Circuit circuit() {
    return new UnitUnderTest(folder)
        .wire("W1,J1-A,P1-1,20,1 m")
        .wire("W2,J1-B,P1-2,20,1 m")
        .part("R1,1,2,resistor,100,5")
        .wire("W3,R1-1,J1-C")
        .wire("W4,R1-2,J1-D")
        .reads("J1-A", "P1-1", "")
        .check()
        .circuit();
  }

  private static ReadingSet readings(Circuit circuit, JoinLimits limits) {
    TestPlan plan =
        Planner.plan(circuit, limits, new HandMovements(Tables.published()), PlanOptions.ALL);
    return GoodUnit.readings(circuit, plan.steps());
  }

  private static JoinLimits limits(Circuit circuit) {
    return JoinLimits.of(circuit, Tables.published());
  }

  @Test
  void each_reading_is_its_own_and_stands_in_no_file() {
    Circuit circuit = circuit();
    List<Reading> readings = readings(circuit, limits(circuit)).readings();
    assertTrue(readings.stream().allMatch(one -> one.place().isNowhere()));
    for (Reading one : readings) {
      assertEquals(1, readings.stream().filter(one::isSameAs).count(), one.toString());
    }
  }

  @Test
  void all_of_them_stand_together_and_none_fails() {
    Circuit circuit = circuit();
    JoinLimits limits = limits(circuit);
    ReadingSet readings = readings(circuit, limits);
    Comparison comparison = Comparison.of(circuit, limits, readings);
    assertEquals(readings.readings().size(), comparison.inForce().size());
    assertEquals(readings.readings().size(), Set.copyOf(comparison.inForce()).size());
    assertEquals(List.of(), comparison.failing());
  }

  /** The same cell read for a first and a second sheet is one reading; a planned one is neither. */
  @Test
  void a_reading_of_a_sheet_is_known_by_its_cell_alone() {
    Reading planned = readings(circuit(), limits(circuit())).readings().get(0);
    UnitUnderTest unit = new UnitUnderTest(folder.resolve("other")).wire("W1,J1-A,P1-1");
    Reading written = unit.reads("J1-A", "P1-1", "0.1").check().readings().readings().get(0);
    assertTrue(written.isSameAs(written.at(planned)), "judged at other points it is the same");
    assertFalse(written.isSameAs(planned));
    assertEquals(
        1, new HashSet<>(List.of(written.identity(), written.at(planned).identity())).size());
  }
}
