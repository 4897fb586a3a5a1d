package dev.ringout.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.jr.ob.JSON;
import com.networknt.schema.InputFormat;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import dev.ringout.support.Run;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** {@code ringout import} of a harness file in KBL as a user runs it. */
class ImportKblTest {
  private static final Path SWING_BRIDGE = Path.of("src/test/resources/kbl/swing-bridge.kbl");

  @TempDir Path folder;

  private Path damaged() throws IOException {
    return Files.writeString(
        folder.resolve("damaged.xml"),
        Files.readString(SWING_BRIDGE).replace("<Wire>wire_1</Wire>", "<Wire>wire_9</Wire>"));
  }

  @Test
  void it_shows_what_it_understood_and_counts_connections() {
    Run run = Run.of("import", SWING_BRIDGE);
    assertEquals(0, run.code(), run.err());
    for (String part :
        List.of("SB-100 Swing bridge", "4 connections: 4 wire", "J1-1", "0.75 mm² rd/wh RUN")) {
      assertTrue(run.out().contains(part), part + " in\n" + run.out());
    }
    assertTrue(run.err().contains("swing-bridge.kbl!4: the file holds 2 modules"), run.err());
    assertEquals(List.of(), run.out().lines().filter(line -> line.length() > 80).toList());
  }

  @Test
  void the_harness_that_it_writes_loads_in_every_other_command() {
    for (String name : List.of("unit.xlsx", "unit")) {
      Path harness = folder.resolve(name);
      Run run = Run.of("import", SWING_BRIDGE, "-o", harness + (name.contains(".") ? "" : "/"));
      assertEquals(0, run.code(), run.err());
      Run trace = Run.of("trace", harness, "J1-1");
      assertEquals(0, trace.code(), trace.err());
      assertTrue(trace.out().contains("P2-1"), trace.out());
      Run plan = Run.of("plan", harness, "-o", folder.resolve(name + "-plan.xlsx"));
      assertEquals(0, plan.code(), plan.err());
    }
    Run same = Run.of("diff", folder.resolve("unit.xlsx"), folder.resolve("unit"));
    assertTrue(same.out().contains("4 wires listed - 0 removed + 0 added"), same.out());
  }

  @Test
  void what_was_not_read_ends_with_65_and_keeps_the_harness_from_being_judged_by()
      throws IOException {
    Path harness = folder.resolve("unit.xlsx");
    Run run = Run.of("import", damaged(), "-o", harness);
    assertEquals(65, run.code());
    assertTrue(
        run.err()
            .contains(
                "damaged.xml!53: Connection connection_1: Wire refers to wire_9, and the file has no"
                    + " such element"),
        run.err());
    assertTrue(run.out().contains("4 connections: 3 wire, 1 skipped"), run.out());
    assertTrue(run.out().contains("1 connection could not be read"), run.out());
    assertEquals(65, Run.of("trace", harness, "J1-2").code(), "a wire is missing in it");
  }

  @Test
  void json_follows_the_schema_and_its_counts_add_up() throws IOException {
    for (Path file : List.of(SWING_BRIDGE, damaged())) {
      String json = Run.of("import", file, "--json").out();
      assertEquals(
          List.of(),
          SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
              .getSchema(Files.readString(Path.of("docs/reference/import.schema.json")))
              .validate(json, InputFormat.JSON));
      Map<String, Object> document = JSON.std.mapFrom(json);
      assertTrue(document.get("sheets") instanceof List<?> sheets && sheets.size() == 1);
      assertTrue(json.contains("\"layout\" : \"connections\""), json);
      assertTrue(json.contains("\"total\" : 4"), json);
    }
    assertTrue(
        Run.of("import", damaged(), "--json").out().contains("\"code\" : \"reference-not-there\""));
  }

  @Test
  void modules_are_chosen_by_option_and_a_list_has_none() throws IOException {
    Run heater = Run.of("import", SWING_BRIDGE, "--module", "SB-100-HEATER");
    assertEquals(0, heater.code(), heater.err());
    assertTrue(heater.out().contains("4 connections: 2 wire, 2 skipped"), heater.out());
    Run both =
        Run.of("import", SWING_BRIDGE, "--module", "SB-100-HEATER", "--module", "SB-100-BASE");
    assertTrue(both.out().contains("4 connections: 4 wire"), both.out());
    Run wrong = Run.of("import", SWING_BRIDGE, "--module", "HEATING");
    assertEquals(65, wrong.code());
    assertTrue(wrong.err().contains("it has SB-100-BASE, SB-100-HEATER"), wrong.err());
    Path list = Files.writeString(folder.resolve("list.csv"), "Wire,From,To\nW1,J1-A,P2-1\n");
    Run none = Run.of("import", list, "--module", "X");
    assertEquals(65, none.code());
    assertTrue(none.err().contains("no modules"), none.err());
    assertEquals(66, Run.of("import", folder.resolve("nowhere.kbl"), "--module", "X").code());
  }

  @Test
  void other_commands_say_that_it_is_to_be_imported_first() {
    Run run = Run.of("trace", SWING_BRIDGE, "J1-1");
    assertEquals(65, run.code());
    assertTrue(run.err().contains("ringout import swing-bridge.kbl -o"), run.err());
  }

  @Test
  void damaged_and_foreign_xml_is_refused_without_a_stack_trace() throws IOException {
    String text = Files.readString(SWING_BRIDGE);
    Path file = folder.resolve("bad.kbl");
    for (String bad :
        List.of(
            "",
            "Wire,From,To\nW1,J1-A,P2-1\n",
            "<html><body/></html>",
            text.substring(0, text.length() / 2),
            "<!DOCTYPE x [<!ENTITY a \"b\">]>" + text.substring(text.indexOf("<kbl:")))) {
      Files.writeString(file, bad);
      Run run = Run.of("import", file);
      assertEquals(65, run.code(), bad);
      assertTrue(run.err().contains("bad.kbl"), run.err());
      assertFalse(run.err().contains("Exception"), run.err());
    }
    Files.delete(file);
    assertEquals(66, Run.of("import", file).code());
  }
}
