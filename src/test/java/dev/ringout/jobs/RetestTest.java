package dev.ringout.jobs;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.ringout.circuit.Circuit;
import dev.ringout.harness.Harness;
import dev.ringout.plan.PlanOptions;
import dev.ringout.plan.Planner;
import dev.ringout.plan.TestPlan;
import dev.ringout.revision.Difference;
import dev.ringout.revision.RetestReason;
import dev.ringout.revision.ReworkOrder;
import dev.ringout.standards.HandMovements;
import dev.ringout.standards.Tables;
import dev.ringout.support.PublishedLimits;
import dev.ringout.support.ReadUnit;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Why each reading of a plan is taken after rework. */
class RetestTest {
  @TempDir Path folder;

  private Harness list(String name, String wires) throws IOException {
    Path unit = Files.createDirectories(folder.resolve(name));
    Files.writeString(unit.resolve("wires.csv"), "Wire,From,To\n" + wires);
    return ReadUnit.of(unit);
  }

  @Test
  void touched_wires_come_before_opened_items_and_what_is_left_lies_beside() throws IOException {
    Harness earlier = list("a", "W1,J1-A,P2-1\nW2,J3-B,P2-2\nW3,J5-A,P6-1\n");
    Harness later = list("b", "W1,J1-A,P2-9\nW2,J3-B,P2-2\nW3,J5-A,P6-1\n");
    ReworkOrder rework =
        ReworkOrder.of(
            Difference.of(
                earlier, later, new Difference.Options(Map.of(), true, ref -> false, false)));
    Circuit circuit = Circuit.of(later);
    TestPlan plan =
        Planner.plan(
            circuit,
            PublishedLimits.of(circuit),
            new HandMovements(Tables.published()),
            PlanOptions.ALL);
    List<String> said =
        Retest.of(plan, rework).stream()
            .filter(one -> !one.to().equals("REST"))
            .map(one -> one.from() + " " + one.to() + " " + one.why())
            .sorted()
            .toList();
    assertEquals(
        List.of(
            "J1-A P2-9 " + new RetestReason.WiresTouched(List.of("W1")),
            "J3-B P2-2 " + new RetestReason.ItemsOpened(List.of("P2"), false),
            "J5-A P6-1 " + new RetestReason.BesideTheWork(false)),
        said);
  }
}
