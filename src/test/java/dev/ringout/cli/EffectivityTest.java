package dev.ringout.cli;

import static dev.ringout.cli.SmallUnit.flat;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.ringout.support.Run;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * A list is for the units that its effectivity names (common practice, no source): a unit that is
 * good by another unit's list is not shown to be good.
 */
class EffectivityTest {
  @TempDir Path folder;
  private SmallUnit unit = new SmallUnit(Path.of(""));

  @BeforeEach
  void unit() {
    unit = new SmallUnit(folder);
  }

  private Run check(String header, String... job) throws IOException {
    return Run.of("check", unit.list(List.of(header), List.of()), unit.sheet("s", job));
  }

  @ParameterizedTest
  @ValueSource(strings = {"effectivity", "serial numbers", "effective for"})
  void a_unit_outside_is_said_and_not_passed(String name) throws IOException {
    Run run = check(name + ",0100 to 0200", "serial number,0501");
    assertEquals(2, run.code(), run.out());
    assertTrue(run.out().startsWith("NOT COMPLETE. Every value is good;"), run.out());
    assertTrue(
        flat(run.out())
            .contains("The list is not for unit 0501: it is effective for 0100 to 0200."),
        run.out());
  }

  @ParameterizedTest
  @CsvSource({"0100 to 0200,0100", "0100 to 0200,200", "0300 and on,0501", "all,0501"})
  void a_unit_inside_is_passed_without_a_word(String effectivity, String serial)
      throws IOException {
    Run run = check("effectivity," + effectivity, "serial number," + serial);
    assertEquals(0, run.code(), run.out());
    assertFalse(run.out().contains("effective for"), run.out());
  }

  @Test
  void a_unit_without_a_number_can_t_be_shown_to_be_inside() throws IOException {
    Run run = check("effectivity,0100 to 0200", "operator,A");
    assertEquals(2, run.code(), run.out());
    assertTrue(flat(run.out()).contains("There is no serial number"), run.out());
    assertEquals(0, check("effectivity,all", "operator,A").code());
    Run vouched =
        Run.of(
            "check",
            unit.list(List.of("effectivity,0100 to 0200"), List.of()),
            unit.sheet("s"),
            "--serial",
            "0501");
    assertEquals(2, vouched.code());
    assertTrue(flat(vouched.out()).contains("not for unit 0501"), vouched.out());
  }

  @Test
  void an_effectivity_that_can_t_be_read_is_waited_for_and_how_to_write_it_is_said()
      throws IOException {
    Run run = check("effectivity,see sheet 2", "serial number,0150");
    assertEquals(2, run.code(), run.out());
    assertTrue(
        flat(run.out()).contains("effectivity \"see sheet 2\" can't be understood"), run.out());
    assertTrue(flat(run.out()).contains("such as 0100 to 0200"), run.out());
  }

  @Test
  void a_fault_is_a_fault_all_the_same() throws IOException {
    Path sheet =
        unit.filled(
            "bad",
            "1,J1-A,P1-1,OL,Ω\n2,J1-B,P1-2,0.04,Ω\n3,J1-A,REST,OL,\n",
            "",
            "serial number,0501");
    Run run = Run.of("check", unit.list(List.of("effectivity,0100 to 0200"), List.of()), sheet);
    assertEquals(1, run.code(), run.out());
    assertTrue(run.out().startsWith("FAULTS: 1."), run.out());
    assertTrue(flat(run.out()).contains("not for unit 0501"), run.out());
  }
}
