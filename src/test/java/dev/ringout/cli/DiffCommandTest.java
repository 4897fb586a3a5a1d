package dev.ringout.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
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
import org.junit.jupiter.api.io.TempDir;

class DiffCommandTest {
  private static final Path B = Path.of("harness-samples/swing-bridge/junction-box.xlsx");
  private static final Path C = Path.of("harness-samples/swing-bridge/junction-box-c.xlsx");

  @TempDir Path folder;

  private Path list(String name, String wires, String... sheets) throws IOException {
    Path unit = Files.createDirectories(folder.resolve(name));
    Files.writeString(unit.resolve("wires.csv"), wires);
    for (int i = 0; i < sheets.length; i += 2) {
      Files.writeString(unit.resolve(sheets[i] + ".csv"), sheets[i + 1]);
    }
    return unit;
  }

  /** Worked example 10 of the trade notes: pull both, then seat both. */
  @Test
  void a_ring_of_moves_takes_both_ends_off_before_it_puts_one_on() throws IOException {
    Path a = list("a", "Wire,From,To\nW5,J1-E,P2-5\nW7,J1-G,P2-7\n");
    Path b = list("b", "Wire,From,To\nW5,P2-7,J1-E\nW7,P2-5,J1-G\n");
    Run run = Run.of("diff", a, b);
    assertEquals(1, run.code(), run.err());
    assertTrue(
        run.out()
            .contains(
                """
                  At P2
                  [ ]   1  take W5 off P2-5; cap it and tag it "for P2-7"
                  [ ]   2  take W7 off P2-7; cap it and tag it "for P2-5"
                  [ ]   3  put W7, from P2-7, on P2-5
                  [ ]   4  put W5, from P2-5, on P2-7
                """),
        run.out());
    assertTrue(run.out().contains("J1-E to P2-7: W5 touched"), run.out());
    assertTrue(run.out().contains("2 wires listed - 0 removed + 0 added = 2 listed"), run.out());
  }

  @Test
  void a_reading_to_take_again_names_the_positions_of_the_switches() throws IOException {
    String contacts = "Ref,State,Pin,To Pin\nS1,OFF,C,NC\nS1,ON,C,NO\n";
    Path a = list("a", "Wire,From,To\nW1,J1-1,S1-C\nW2,S1-NO,P2-2\n", "switches", contacts);
    Path b = list("b", "Wire,From,To\nW1,J1-1,S1-C\nW2,S1-NO,P2-3\n", "switches", contacts);
    Run paper = Run.of("diff", a, b);
    assertTrue(paper.out().contains("S1-C to S1-NO (S1=ON): "), paper.out());
    Run json = Run.of("diff", "--json", a, b);
    assertTrue(json.out().replaceAll("\\s", "").contains("\"state\":\"S1=ON\""), json.out());
  }

  /** Worked example 11: one rename, nothing to rewire, labels to reprint. */
  @Test
  void a_renamed_connector_is_one_rename_and_no_moves() throws IOException {
    StringBuilder a = new StringBuilder("Wire,From,To\n");
    StringBuilder b = new StringBuilder("Wire,From,To\n");
    for (int pin = 1; pin <= 37; pin++) {
      a.append("W" + pin + ",J1-" + pin + ",P2-" + pin + "\n");
      b.append("W" + pin + ",J101-" + pin + ",P2-" + pin + "\n");
    }
    Path old = list("a", a.toString());
    Path now = list("b", b.toString());
    Run run = Run.of("diff", old, now);
    assertTrue(run.out().startsWith("ELECTRICALLY THE SAME"), run.out());
    assertTrue(
        run.out().contains("J1 is J101 now: 37 of 37 wire ends go where they went"), run.out());
    assertTrue(run.out().contains("To confirm: --rename J1=J101"), run.out());
    assertTrue(
        run.out().contains("at J101 and every sleeve that names it: \"J1\" becomes \"J101\""),
        run.out());
    assertFalse(run.out().contains("CHANGES"), run.out());
    assertFalse(run.out().contains("READ AGAIN"), run.out());
    Run told = Run.of("diff", old, now, "--rename", "J1=J101");
    assertTrue(told.out().contains("(as you said)"), told.out());
    assertFalse(told.out().contains("To confirm"), told.out());
    Run asNamed = Run.of("diff", old, now, "--as-named");
    assertTrue(asNamed.out().contains("37 wires listed"), asNamed.out());
    assertTrue(asNamed.out().startsWith("ELECTRICALLY CHANGED"), asNamed.out());
    assertEquals(64, Run.of("diff", old, now, "--rename", "J1").code());
    assertEquals(64, Run.of("diff", old, now, "--rename", "J9=J101").code());
  }

  @Test
  void a_list_sorted_and_turned_and_respelled_is_no_difference() throws IOException {
    Path a = list("a", "Wire,From,To,Gauge,Color\nW1,J01-A,P2-1,20,RED\nW2,J01-a,P2-2,22,\n");
    Path b = list("b", "Wire,From,To,Gauge,Color\nW2,P2-2,J1-a,AWG 22,\nW1,P2-01,J1-A,20,red\n");
    Run run = Run.of("diff", a, b);
    assertEquals(0, run.code(), run.out());
    assertTrue(run.out().startsWith("NO DIFFERENCE"), run.out());
  }

  @Test
  void a_splice_within_a_net_changes_nothing_and_a_stud_does() throws IOException {
    Path a = list("a", "Wire,From,To\nW1,J1-A,P2-1\n");
    String spliced = "Wire,From,To\nW1,J1-A,X1-1\nW2,X1-1,P2-1\n";
    Path splice = list("b", spliced, "items", "Ref,Kind\nX1,splice\n");
    assertTrue(Run.of("diff", a, splice).out().startsWith("ELECTRICALLY THE SAME"));
    Path stud = list("c", spliced, "items", "Ref,Kind\nX1,ground stud\n");
    assertTrue(Run.of("diff", a, stud).out().startsWith("ELECTRICALLY CHANGED"));
    Path end =
        list("d", "Wire,From,To\nW1,J1-A,P2-1\nW2,P2-1,X1-1\n", "items", "Ref,Kind\nX1,splice\n");
    assertTrue(Run.of("diff", a, end).out().startsWith("ELECTRICALLY CHANGED"), "it leads away");
  }

  @Test
  void a_row_written_twice_counts_once_and_is_named() throws IOException {
    Path a = list("a", "Wire,From,To\nW1,J1-A,P2-1\nW1,P2-1,J1-A\nW2,J1-B,P2-2\n");
    Path b = list("b", "Wire,From,To\nW1,J1-A,P2-1\nW2,J1-B,P2-2\n");
    Run run = Run.of("diff", a, b);
    assertEquals(0, run.code(), run.out());
    assertTrue(run.out().contains("2 wires listed - 0 removed + 0 added = 2 listed"), run.out());
    assertTrue(run.out().contains("W1 is written twice in the earlier list"), run.out());
  }

  /** The same wire on the same points, and yet there is work. */
  @Test
  void another_contact_and_another_part_are_work_too() throws IOException {
    Path a =
        list(
            "a",
            "Wire,From,To,From Contact\nW1,J1-A,P2-1,20\nW2,J1-B,P2-2,20\n",
            "items",
            "Ref,Kind,Part\nP2,connector,X-19\n");
    Path b =
        list(
            "b",
            "Wire,To,From,To Contact\nW1,J1-A,P2-1,16\nW2,J1-C,P2-2,16\n",
            "items",
            "Ref,Kind,Part\nP2,connector,X-20\n");
    Run run = Run.of("diff", a, b);
    assertTrue(run.out().contains("put W1, from J1-A, on J1-A, with a new contact 16"), run.out());
    assertTrue(run.out().contains("put W2, from J1-B, on J1-C, with a new contact 16"), run.out());
    assertTrue(run.out().contains("P2: part X-19, now X-20; its wires come off"), run.out());
    assertTrue(run.out().contains("--only J1,P2"), run.out());
  }

  @Test
  void numbers_that_two_wires_exchanged_are_two_new_labels_and_no_work() throws IOException {
    Path a = list("a", "Wire,From,To\nW1,J1-A,P2-1\nW2,J1-B,P2-2\n");
    Path b = list("b", "Wire,From,To\nW2,J1-A,P2-1\nW1,J1-B,P2-2\n");
    Run run = Run.of("diff", a, b);
    assertTrue(run.out().startsWith("ELECTRICALLY THE SAME"), run.out());
    assertTrue(run.out().contains("at J1-A: \"W1\" becomes \"W2\""), run.out());
    assertFalse(run.out().contains("take W"), run.out());
  }

  /** Half done, 24 V is on the way to 0 V; neither list joins them. */
  @Test
  void power_that_meets_ground_half_way_is_told_with_its_steps() throws IOException {
    String links = "Ref,Pin,To Pin\nTB1,1,2\n";
    Path a =
        list(
            "a",
            "Wire,From,To,Signal\nW1,J1-A,J9-1,24V\nW2,TB1-2,TB9-1,0V\nW3,TB9-1,E1-1,0V\n",
            "links",
            links);
    Path b =
        list(
            "b",
            """
            Wire,From,To,Signal
            W1,J1-A,J9-1,24V
            W4,J1-A,TB1-1,24V
            W2,TB1-2,TB9-1,24V
            W3,TB9-2,E1-1,0V
            """,
            "links",
            links);
    Run run = Run.of("diff", a, b);
    assertTrue(run.out().contains("is joined to 0V"), run.out());
    assertTrue(run.out().contains("From step 2 until step 3, half done, 24V"), run.out());
  }

  @Test
  void a_moved_end_says_whether_it_reaches() throws IOException {
    Path a =
        list(
            "a", "Wire,From,To,Length (m)\nW1,J1-A,TB1-1,0.8\nW2,J1-B,TB2-1,1.4\nW3,J1-C,TB3-1,\n");
    Path b =
        list(
            "b", "Wire,From,To,Length (m)\nW1,J1-A,TB2-2,0.8\nW2,J1-B,TB2-1,1.4\nW3,J1-C,TB1-1,\n");
    Run run = Run.of("diff", a, b);
    assertTrue(
        run.out()
            .contains(
                "W1, from TB1-1 to TB2-2, may be too short: it is 0.8 m, the shortest other\n"
                    + "  wire that way 1.4 m"),
        run.out());
    assertTrue(run.out().contains("W3, from TB3-1 to TB1-1, can't be told"), run.out());
  }

  @Test
  void what_was_changed_in_the_field_is_told_and_what_the_work_would_take_away()
      throws IOException {
    Path a = list("a", "Wire,From,To\nW1,J1-A,P2-1\nW2,J1-B,P2-2\nW3,J1-C,P2-3\n");
    Path built = list("built", "Wire,From,To\nW1,J1-A,P2-4\nW2,J1-B,P2-5\nW3,J1-C,P2-3\n");
    Path b = list("b", "Wire,From,To\nW1,J1-A,P2-4\nW2,J1-B,P2-2\nW3,J1-C,P2-6\n");
    Run run = Run.of("diff", a, b, "--as-built", built);
    String done = run.out().substring(run.out().indexOf("Already done"));
    assertTrue(
        done.replaceAll("\\s+", " ")
            .startsWith("Already done, of the new revision: moved W1 moves from P2-1"),
        done);
    String undone = run.out().substring(run.out().indexOf("ask before it is done"));
    assertTrue(undone.contains("W2 moves from P2-5 to P2-2"), undone);
    assertFalse(undone.contains("take W1 off"), "it is there already");
    assertTrue(undone.contains("take W3 off P2-3"), undone);
  }

  /** The readings of the sample's faulty unit, held against its drawing: what is planted there. */
  @Test
  void a_list_built_from_readings_tells_the_nets_that_were_changed_in_the_field()
      throws IOException {
    Path found = folder.resolve("found");
    Path readings = Path.of("harness-samples/swing-bridge/point-to-point.xlsx");
    assertEquals(0, Run.of("asfound", readings, "-o", found + "/").code());
    Run run = Run.of("diff", B, found);
    assertEquals(1, run.code());
    assertTrue(run.out().contains("knows no wires"), run.out());
    assertTrue(run.out().contains("{J1-H, J2-6} → {J1-H} + {J2-6}"), run.out());
    assertTrue(run.out().contains("{P1-E, P11-5} + {P1-F, P11-6}"), run.out());
    assertFalse(run.out().contains("CHANGES"), run.out());
    assertFalse(run.out().contains("WORK"), run.out());
    Run built = Run.of("diff", B, C, "--as-built", found);
    assertTrue(built.out().contains("{J1-H, J2-6} → {J1-H} + {J2-6}"), built.out());
    assertTrue(built.out().contains("take W013 off J1-N"), built.out());
  }

  /** The good unit, all of it read: nothing was changed in the field. */
  @Test
  void a_good_unit_s_readings_show_no_change_in_the_field() throws IOException {
    Path found = folder.resolve("found");
    Path readings = Path.of("harness-samples/swing-bridge/point-to-point-clean.xlsx");
    assertEquals(0, Run.of("asfound", readings, "-o", found + "/").code());
    Run run = Run.of("diff", B, found);
    assertEquals(0, run.code(), run.out());
    assertTrue(run.out().startsWith("NO DIFFERENCE in what was read"), run.out());
  }

  @Test
  void json_holds_what_the_contract_names() throws IOException {
    Run run = Run.of("diff", B, C, "--json");
    assertEquals(1, run.code());
    for (String part :
        new String[] {
          "\"format\" : \"ringout-diff/1\"",
          "\"electrical\" : \"changed\"",
          "\"old\" : \"J4\"",
          "\"change\" : \"removed\"",
          "\"change\" : \"moved\"",
          "\"change\" : \"split\"",
          "\"do\" : \"disconnect\"",
          "\"kind\" : \"continuity\""
        }) {
      assertTrue(run.out().replaceAll("\\s", "").contains(part.replace(" ", "")), part);
    }
  }

  private static List<String> against(String name, String json) throws IOException {
    return SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
        .getSchema(Files.readString(Path.of("docs/reference/" + name)))
        .validate(json, InputFormat.JSON)
        .stream()
        .map(Object::toString)
        .toList();
  }

  @Test
  void json_follows_its_schema_refused_files_too() throws IOException {
    Path found = folder.resolve("found");
    Path readings = Path.of("harness-samples/swing-bridge/point-to-point.xlsx");
    assertEquals(0, Run.of("asfound", readings, "-o", found + "/").code());
    Path none = folder.resolve("none.xlsx");
    for (Run run :
        List.of(
            Run.of("diff", B, C, "--json"),
            Run.of("diff", C, B, "--json"),
            Run.of("diff", B, C, "--as-named", "--json"),
            Run.of("diff", B, B, "--json"),
            Run.of("diff", B, C, "--as-built", C, "--json"),
            Run.of("diff", B, C, "--as-built", found, "--json"),
            Run.of("diff", B, found, "--json"),
            Run.of("diff", B, none, "--json"))) {
      assertEquals(List.of(), against("diff.schema.json", run.out()));
    }
    String schema = "diff.schema.json";
    assertFalse(against(schema, "{\"format\": \"ringout-diff/1\"}").isEmpty(), "it can fail");
    String half = "{\"format\": \"ringout-diff/1\", \"electrical\": \"same\", \"problems\": []}";
    assertFalse(against(schema, half).isEmpty(), "half a document is none");
  }

  @Test
  void every_reason_in_json_has_a_code_its_facts_and_its_sentence() throws IOException {
    Path a =
        list("a", "Wire,From,To,Length (m)\nW1,J1-A,P2-1,1\nW2,J1-B,P2-2,2\nW3,J1-C,P3-1,2.5\n");
    Path b =
        list("b", "Wire,From,To,Length (m)\nW1,J1-A,P2-9,1\nW2,J1-B,P3-2,2\nW3,J1-C,P3-1,2.5\n");
    String json = Run.of("diff", a, b, "--json").out();
    assertEquals(List.of(), against("diff.schema.json", json));
    String plain = json.replaceAll("\\s+", " ");
    assertTrue(
        plain.contains(
            "\"verdict\" : \"too short\", \"why\" : { \"code\" : \"others-that-way\","
                + " \"metres\" : 2.0, \"shortestMetres\" : 2.5, \"text\" : \"it is 2 m, the"
                + " shortest other wire that way 2.5 m\" }"),
        plain);
    assertTrue(
        plain.contains(
            "\"why\" : { \"code\" : \"wires-touched\", \"wires\" : [ \"W1\" ], \"text\" : \"W1"
                + " touched\" }"),
        plain);
  }

  @Test
  void the_sample_is_written_in_every_form_and_the_same_each_time() throws IOException {
    for (String name : new String[] {"diff.xlsx", "diff.pdf", "diff.html"}) {
      Path one = folder.resolve("one-" + name);
      Path other = folder.resolve("other-" + name);
      assertEquals(1, Run.of("diff", B, C, "-o", one).code());
      assertEquals(1, Run.of("diff", B, C, "-o", other).code());
      assertArrayEquals(Files.readAllBytes(one), Files.readAllBytes(other), name);
    }
    assertEquals(73, Run.of("diff", B, C, "-o", folder.resolve("one-diff.pdf")).code());
    assertEquals(66, Run.of("diff", B, folder.resolve("none.xlsx")).code());
  }

  private static final String TWO_WIRES = "Wire,From,To\nW1,J1-A,P2-1\nW2,J1-B,P2-2\n";

  private Path headed(String name, String... rows) throws IOException {
    return list(name, TWO_WIRES, "header", "Name,Value\n" + String.join("\n", rows) + "\n");
  }

  /** Which unit is built by a list is as much its business as which wires it has. */
  @Test
  void a_list_that_is_for_other_units_differs_though_nothing_else_does() throws IOException {
    Path a = headed("a", "title,Box", "revision,B", "effectivity,0100 to 0200");
    for (String row :
        new String[] {
          "effectivity,0100 to 0300", "Serial numbers,0100 to 0300", "effective for,0100 to 0300"
        }) {
      Path b = headed("b", "title,Box", "revision,C", row);
      Run run = Run.of("diff", a, b);
      assertEquals(1, run.code(), run.out());
      assertTrue(
          run.out()
              .startsWith(
                  "ELECTRICALLY THE SAME: the same points are joined; the units it is for differ.\n"),
          run.out());
      assertTrue(
          run.out().contains("effectivity: was \"0100 to 0200\", now \"0100 to 0300\""), run.out());
      String json = Run.of("diff", a, b, "--json").out().replaceAll("\\s", "");
      assertTrue(
          json.contains(
              "\"header\":[{\"name\":\"effectivity\",\"old\":\"0100to0200\",\"new\":\"0100to0300\"}]"),
          json);
    }
    Path page = folder.resolve("page.html");
    assertEquals(1, Run.of("diff", a, headed("b", "revision,C"), "-o", page).code());
    String html = Files.readString(page).replace("&quot;", "\"");
    assertTrue(html.contains("effectivity: was \"0100 to 0200\", now not stated"), html);
    assertTrue(
        Run.of("diff", a, headed("b", "revision,B", "effectivity,all"))
            .out()
            .contains("both say revision B, and differ"));
  }

  @Test
  void the_same_units_in_other_words_and_another_title_or_revision_are_no_difference()
      throws IOException {
    Path a = headed("a", "title,Box", "drawing,HSB-1", "revision,B", "effectivity,0100-0200");
    Path b =
        headed("b", "title,The box", "drawing,HSB-1", "revision,C", "effectivity,0100 to 0200");
    Run run = Run.of("diff", a, b);
    assertEquals(0, run.code(), run.out());
    assertTrue(run.out().startsWith("NO DIFFERENCE"), run.out());
    assertTrue(
        Run.of("diff", a, b, "--json").out().replaceAll("\\s", "").contains("\"header\":[]"));
  }

  /** What one unit's own list says of other units is nobody's change. */
  @Test
  void a_unit_as_it_was_found_does_not_change_for_whom_the_list_is() throws IOException {
    Path a = headed("a", "revision,B", "effectivity,0100 to 0200");
    Path c = headed("c", "revision,C", "effectivity,0100 to 0200");
    Path built = headed("built", "revision,B");
    Run run = Run.of("diff", a, c, "--as-built", built);
    assertEquals(0, run.code(), run.out());
    assertFalse(run.out().contains("effectivity: was"), run.out());
  }

  @Test
  void an_item_cant_get_the_name_of_another_with_the_same_pins() throws IOException {
    Path old = Files.createDirectories(folder.resolve("old"));
    Files.writeString(old.resolve("wires.csv"), "Wire,From,To\nW1,J1-1,P1-1\nW2,J2-1,P1-2\n");
    Path now = Files.createDirectories(folder.resolve("now"));
    Files.writeString(now.resolve("wires.csv"), "Wire,From,To\nW1,J2-1,P1-1\nW2,J3-1,P1-2\n");
    Run refused = Run.of("diff", old, now, "--rename", "J1=J2");
    assertEquals(ExitCode.USAGE, refused.code());
    assertTrue(
        refused.err().contains("has a J2-1 of its own; say how that J2 is called now"),
        refused.err());
    assertEquals(ExitCode.FAULTS, Run.of("diff", old, now, "--rename", "J1=J2,J2=J3").code());
  }
}
