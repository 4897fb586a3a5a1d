package dev.ringout.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class WorkCommandTest {
  private static final Path BRIDGE = Path.of("harness-samples/swing-bridge/junction-box.xlsx");

  @TempDir Path folder;

  private Path unit() throws IOException {
    Path unit = Files.createDirectories(folder.resolve("unit"));
    Files.writeString(
        unit.resolve("wires.csv"),
        """
        Wire,From,To,Gauge,Color,Length,Wire Type,Signal
        W1,J1-A,TB1-1,20,RED,1 m,M1,LIFT
        W2,J1-b,TB1-2,20,RED,2.5 m,M1,
        W3,J1-B,TB1-3,16,BLK,,M1,
        """);
    Files.writeString(
        unit.resolve("pins.csv"), "Ref,Pin,Size\nJ1,A,20\nJ1,B,16\nJ1,C,22D\nJ1,b,20\n");
    Files.writeString(unit.resolve("links.csv"), "Ref,Pin,To Pin\nTB1,1,2\n");
    Files.writeString(
        unit.resolve("limits.csv"), "Name,Value,Unit\nre-termination,50,mm\nservice loop,0.2,m\n");
    return unit;
  }

  @Test
  void each_item_shows_its_wires_from_its_own_end_in_the_order_of_its_cavities()
      throws IOException {
    Run run = Run.of("work", unit());
    assertEquals(0, run.code(), run.err());
    String sheet = run.out().substring(run.out().indexOf("\nJ1\n"), run.out().indexOf("\nTB1\n"));
    assertEquals(
        """

        J1
          A      W1, RED, AWG 20, to TB1-1, contact 20, strip 4–5 mm
          B      W3, BLK, AWG 16, to TB1-3, contact 16, strip 6–7.2 mm
          C      empty: sealing plug MS27488-22 black
          b      W2, RED, AWG 20, to TB1-2, contact 20, strip 4–5 mm
        """,
        sheet);
    assertTrue(run.out().contains("  1      jumper to TB1-2\n"), run.out());
  }

  /** 1 m + 2.5 m, and for each of the two 0.2 m of loop and 50 mm at either end. */
  @Test
  void the_kit_adds_up_the_cut_lengths_and_names_what_has_none() throws IOException {
    Run run = Run.of("work", unit());
    assertTrue(run.out().contains("4.1 m of M1 AWG 20 RED, 2 wires\n"), run.out());
    assertTrue(
        run.out().contains("0 m of M1 AWG 16 BLK, 1 wire, without W3 (no length listed)"),
        run.out());
    assertTrue(run.out().contains("2 × contact 20\n"), run.out());
    assertTrue(run.out().contains("1 × sealing plug MS27488-22 black\n"), run.out());
    assertTrue(run.out().contains("6 × marker sleeve\n"), run.out());
  }

  @Test
  void sleeves_say_what_the_shop_wants_at_either_end() throws IOException {
    Path papers = folder.resolve("papers");
    Run run = Run.of("work", unit(), "--sleeve", "{wire}/{here}-{signal}", "-o", papers);
    assertEquals(0, run.code(), run.err());
    String markers = Files.readString(papers.resolve("markers.csv"));
    assertTrue(markers.contains("W1/J1-A-LIFT,W1,J1-A"), markers);
    assertTrue(markers.contains("W1/TB1-1-LIFT,W1,TB1-1"), markers);
    String asFound = Files.readString(papers.resolve("as found.csv"));
    assertTrue(asFound.contains("T1,J1-A,W1,RED"), asFound);
    assertTrue(asFound.contains(",J1-C,empty"), asFound);
  }

  @Test
  void the_sample_is_written_in_every_form_and_the_same_each_time() throws IOException {
    for (String name : new String[] {"work.xlsx", "work.pdf", "work.html"}) {
      Path one = folder.resolve("one-" + name);
      Path other = folder.resolve("other-" + name);
      assertEquals(0, Run.of("work", BRIDGE, "-o", one).code());
      assertEquals(0, Run.of("work", BRIDGE, "-o", other).code());
      assertArrayEquals(Files.readAllBytes(one), Files.readAllBytes(other), name);
    }
    assertEquals(73, Run.of("work", BRIDGE, "-o", folder.resolve("one-work.pdf")).code());
    assertEquals(64, Run.of("work", BRIDGE, "--only", "J99").code());
    assertTrue(Run.of("work", BRIDGE, "--json").out().contains("\"ringout-work/1\""));
  }

  @Test
  void an_allowance_without_a_unit_is_refused_with_its_cell() throws IOException {
    Path unit = unit();
    Files.writeString(unit.resolve("limits.csv"), "Name,Value,Unit\nservice loop,0.2,\n");
    Run run = Run.of("work", unit);
    assertEquals(65, run.code());
    assertTrue(run.err().contains("has no unit"), run.err());
  }
}
