package dev.ringout.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.ringout.support.Run;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class AsFoundCommandTest {
  @TempDir Path folder;

  private Path readings(String... rows) throws IOException {
    return Files.writeString(
        folder.resolve("readings.csv"), "From,To,State,Reading\n" + String.join("\n", rows) + "\n");
  }

  @Test
  void the_list_that_is_built_has_no_fault_by_the_readings_it_was_built_from() throws IOException {
    Path readings =
        readings(
            "J1-A,P1-1,,0.2",
            "j1-B,P1-2,,0.3",
            "P1-2,TB1-4,,0.1",
            "J1-C,REST,,OL",
            "J1-A,J1-B,,OL");
    Path list = folder.resolve("found.xlsx");
    Run run = Run.of("asfound", readings, "-o", list);
    assertEquals(0, run.code(), run.err());
    assertTrue(run.out().contains("J1-B, P1-2, TB1-4"), run.out());
    assertTrue(run.out().startsWith("2 nets of two points and more, 1 point alone;"));
    Run check = Run.of("check", list, readings);
    assertFalse(check.code() == 1, check.out());
    assertTrue(check.out().contains("5 conform, 0 fail"), check.out());
    assertEquals(73, Run.of("asfound", readings, "-o", list).code());
  }

  @Test
  void what_readings_leave_open_or_say_twice_is_named() throws IOException {
    Path readings =
        readings(
            "J1-A,P1-1,,0.2",
            "J1-B,P1-1,,0.2",
            "J1-A,J1-B,,OL",
            "J1-C,P1-3,,82",
            "J1-D,P1-4,S1=SET,0.2");
    String said = Run.of("asfound", readings).out().replaceAll("\\s+", " ");
    assertTrue(said.contains("J1-A to J1-B reads OL, but other readings join the two"), said);
    assertTrue(said.contains("J1-C to P1-3 reads 82 Ω: a part, a leak or a poor joint"), said);
    assertTrue(said.contains("1 reading in another position of a switch is left out"), said);
    assertTrue(said.contains("READ NEXT"), said);
    assertTrue(Run.of("asfound", readings, "--json").out().contains("\"ringout-asfound/1\""));
  }

  @Test
  void a_cell_that_can_t_be_understood_stops_it_with_its_place() throws IOException {
    Run run = Run.of("asfound", readings("J1-A,P1-1,,O.2"));
    assertEquals(65, run.code());
    assertTrue(run.err().contains("D2"), run.err());
  }
}
