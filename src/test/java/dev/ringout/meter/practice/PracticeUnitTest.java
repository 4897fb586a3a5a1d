package dev.ringout.meter.practice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.ringout.harness.Harness;
import dev.ringout.harness.Point;
import dev.ringout.harness.SwitchState;
import dev.ringout.harness.Wire;
import dev.ringout.jobs.FileInputs;
import dev.ringout.readings.Side;
import dev.ringout.standards.Tables;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** A unit to practise on: as its list where nothing was planted, else wrong by its seed. */
class PracticeUnitTest {
  private static final Path LIST = Path.of("harness-samples/swing-bridge/junction-box.xlsx");
  private static final Harness BOX = new FileInputs(List.of(LIST)).soundHarness(LIST).orElseThrow();

  private static double ohms(PracticeUnit unit, Wire wire) {
    return unit.ohms(side(wire.from()), side(wire.to()), SwitchState.normal());
  }

  private static Side side(Point point) {
    return new Side.Points(List.of(point));
  }

  private static long joined(PracticeUnit unit) {
    return unit.wires().stream().filter(wire -> ohms(unit, wire) < 1).count();
  }

  @Test
  void a_unit_without_slips_reads_as_its_list_says() {
    PracticeUnit unit = PracticeUnit.of(BOX, Tables.published(), 1, 0);
    assertEquals(List.of(), unit.slips());
    assertEquals(BOX.wires().size(), joined(unit));
  }

  @Test
  void slips_are_found_by_a_meter() {
    PracticeUnit unit = PracticeUnit.of(BOX, Tables.published(), 3, 5);
    assertEquals(5, unit.slips().size());
    assertTrue(joined(unit) < BOX.wires().size());
  }

  @Test
  void a_seed_makes_the_same_slips_each_time() {
    assertEquals(
        PracticeUnit.of(BOX, Tables.published(), 3, 5).slips(),
        PracticeUnit.of(BOX, Tables.published(), 3, 5).slips());
    assertNotEquals(
        PracticeUnit.of(BOX, Tables.published(), 3, 5).slips(),
        PracticeUnit.of(BOX, Tables.published(), 4, 5).slips());
  }

  @Test
  void every_kind_of_slip_is_planted_by_some_seed() {
    String all =
        IntStream.range(0, 20)
            .mapToObj(seed -> "" + PracticeUnit.of(BOX, Tables.published(), seed, 3).slips())
            .reduce("", String::concat);
    assertTrue(all.contains("not home"), all);
    assertTrue(all.contains("crossed"), all);
    assertTrue(all.contains("poor joint"), all);
  }

  @Test
  void a_point_against_the_rest_is_open_where_nothing_leaks() {
    PracticeUnit unit = PracticeUnit.of(BOX, Tables.published(), 1, 0);
    Wire wire = BOX.wires().get(0);
    double ohms = unit.ohms(side(wire.from()), new Side.Rest(), SwitchState.normal());
    assertTrue(ohms > 1, "" + ohms);
  }
}
