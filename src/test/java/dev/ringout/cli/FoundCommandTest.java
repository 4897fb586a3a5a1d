package dev.ringout.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.networknt.schema.InputFormat;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import dev.ringout.support.Run;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

class FoundCommandTest {
  private static final Path BRIDGE = Path.of("harness-samples/swing-bridge/junction-box.xlsx");

  private static String found(String words) {
    Run run = Run.of("found", BRIDGE, words);
    assertEquals(0, run.code(), run.err());
    return run.out().replaceAll("\\s+", " ");
  }

  @Test
  void a_wire_one_cavity_over_is_told_with_who_belongs_there() {
    String said = found("W043 on J2-18");
    assertTrue(said.startsWith("W043 belongs in J2-17: it is one cavity over."), said);
    assertTrue(said.contains("Tag it as found before it is moved."), said);
    String crossed = found("w048 at p11 6");
    assertTrue(crossed.startsWith("W048 belongs in P11-5: it is one cavity over."), crossed);
    assertTrue(crossed.contains("P11-6 is for W049"), crossed);
  }

  @Test
  void a_wire_in_its_place_and_one_at_an_item_that_it_does_not_go_to() {
    assertTrue(found("W043 on J2-17").startsWith("W043 belongs on J2-17."));
    assertTrue(found("W008 on P3-4").contains("Its number may be misread."));
  }

  @Test
  void the_same_cavity_of_another_plug_is_a_label_to_look_at() {
    String said = found("W048 on P2-5");
    assertTrue(said.contains("the plugs or their labels may be exchanged"), said);
  }

  @Test
  void what_can_t_be_understood_is_refused_with_the_nearest() {
    Run where = Run.of("found", BRIDGE, "J2-18");
    assertEquals(64, where.code());
    assertTrue(where.err().contains("which wire was found on J2-18?"), where.err());
    Run none = Run.of("found", BRIDGE, "W999");
    assertTrue(none.err().contains("no wire W999; its wires are W001 to W093"), none.err());
    Run pin = Run.of("found", BRIDGE, "W043 on J2-99");
    assertTrue(pin.err().contains("J2 has the pins 1, 2, 3"), pin.err());
    Run wire = Run.of("found", BRIDGE, "W0I2 on J2-17");
    assertEquals(64, wire.code());
    assertTrue(wire.err().contains("maybe W012"), wire.err());
    assertEquals(64, Run.of("found", BRIDGE, "W043 on J77-1").code());
    assertTrue(Run.of("found", BRIDGE, "W043 on J2-18", "--json").out().contains("neighbour"));
  }

  @Test
  void a_wire_alone_is_answered_with_both_its_ends() {
    for (String said : List.of("W043", "w43", "43", "wire 43", "W-43", "W043 blu", "BLU W43")) {
      assertTrue(found(said).startsWith("W043 belongs on TB2-7 and J2-17. wire"), found(said));
    }
  }

  @Test
  void a_point_may_be_said_without_a_word_between() {
    for (String said : List.of("w043 j2 18", "W43 J2-18", "43 at j2 pin 18", "w043 j2:18")) {
      assertTrue(found(said).startsWith("W043 belongs in J2-17: it is one"), found(said));
    }
  }

  @Test
  void a_number_without_its_item_is_asked_about_and_not_taken_for_a_wire() {
    Run said = Run.of("found", BRIDGE, "w43 18");
    assertEquals(64, said.code(), said.out());
    assertTrue(said.err().contains("Maybe \"W043 on J2-18\""), said.err());
    Run on = Run.of("found", BRIDGE, "w43 on 18");
    assertEquals(64, on.code(), on.out());
    assertTrue(on.err().contains("\"18\" is not a point"), on.err());
  }

  @Test
  void a_colour_is_taken_for_a_wire_where_one_of_the_item_has_it() {
    assertTrue(found("gry on J1-G").startsWith("W008 belongs in J1-H"), found("gry on J1-G"));
    Run two = Run.of("found", BRIDGE, "BLU on J2-18");
    assertEquals(64, two.code());
    assertTrue(
        two.err().contains("may be any of W005 (J1-E to J2-3), W043 (TB2-7 to J2-17)"), two.err());
    Run other = Run.of("found", BRIDGE, "W043 red");
    assertTrue(other.err().contains("W043 is BLU"), other.err());
  }

  @Test
  void json_follows_its_schema_whatever_slip_it_is_and_where_the_file_is_refused()
      throws IOException {
    var schema =
        SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
            .getSchema(Files.readString(Path.of("docs/reference/found.schema.json")));
    for (String words :
        List.of(
            "W043",
            "W043 on J2-17",
            "W043 on J2-18",
            "W043 on J2-1",
            "W048 on P2-5",
            "W008 on P3-4")) {
      Run run = Run.of("found", BRIDGE, words, "--json");
      assertEquals(0, run.code(), run.err());
      assertEquals(List.of(), schema.validate(run.out(), InputFormat.JSON));
    }
    Run none = Run.of("found", "nowhere.xlsx", "W043 on J2-17", "--json");
    assertEquals(66, none.code());
    assertEquals(List.of(), schema.validate(none.out(), InputFormat.JSON));
    assertTrue(none.out().contains("there is no such file"), none.out());
    assertEquals("", Run.of("found", "nowhere.xlsx", "W043 on J2-17").out(), "a page says nothing");
    assertTrue(
        !schema
            .validate(
                "{\"format\": \"ringout-found/1\", \"wire\": \"W1\", \"problems\": []}",
                InputFormat.JSON)
            .isEmpty(),
        "the schema can fail");
  }
}
