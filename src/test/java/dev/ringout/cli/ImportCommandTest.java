package dev.ringout.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.jr.ob.JSON;
import dev.ringout.support.Run;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** {@code ringout import} as a user runs it. */
class ImportCommandTest {
  private static final Path SAMPLE = Path.of("harness-samples/swing-bridge/as-received");

  @TempDir Path folder;

  private Path list(String text) throws IOException {
    Path file = folder.resolve("list.csv");
    Files.writeString(file, text);
    return file;
  }

  @Test
  void without_o_it_shows_its_understanding_on_one_screen_and_writes_nothing() throws IOException {
    Run run = Run.of("import", SAMPLE.resolve("cable-schedule.ods"));
    assertEquals(0, run.code(), run.err());
    assertTrue(run.out().lines().count() <= 40, "one screen");
    assertEquals(List.of(), run.out().lines().filter(line -> line.length() > 80).toList());
    for (String part : List.of("FROM Term.", "From Pin", "certain", "100 wire", "FIRST WIRES")) {
      assertTrue(run.out().contains(part), part + " in\n" + run.out());
    }
    try (Stream<Path> files = Files.list(SAMPLE)) {
      assertEquals(3, files.count());
    }
  }

  private static Map<?, ?> first(Map<?, ?> json, String list) {
    return json.get(list) instanceof List<?> some && some.get(0) instanceof Map<?, ?> one
        ? one
        : Map.of();
  }

  @Test
  void json_is_one_document_with_the_contract_s_names() throws IOException {
    Run run = Run.of("import", SAMPLE.resolve("net-table.csv"), "--json");
    Map<String, Object> json = JSON.std.mapFrom(run.out());
    assertEquals("ringout-import/1", json.get("format"));
    Map<?, ?> sheet = first(json, "sheets");
    assertEquals(3, sheet.get("headingRow"));
    Map<?, ?> column = first(sheet, "columns");
    assertEquals("A", column.get("column"));
    assertEquals("Signal", column.get("heading"));
    assertEquals("Signal", column.get("as"));
    assertEquals("certain", column.get("certainty"));
    Map<?, ?> wire = first(json, "wires");
    assertEquals("J1-A", wire.get("from"));
    assertTrue(json.get("problems") instanceof List<?>);
  }

  @Test
  void a_column_can_be_named_by_its_heading_or_its_letter() throws IOException {
    Path list = list("Tag,Left thing,Fm Zap,Right thing,To Zap\nW1,J1,A,P2,1\nW2,J1,B,P2,2\n");
    Run run =
        Run.of(
            "import",
            list,
            "--column",
            "Left thing=From",
            "--column",
            "Fm Zap=From Pin",
            "--column",
            "Right thing=To",
            "--column",
            "To Zap=To Pin",
            "--column",
            "Tag=Wire",
            "--json");
    assertEquals(0, run.code(), run.err());
    assertTrue(run.out().contains("\"from\" : \"J1-A\""), run.out());
    Run wrong = Run.of("import", list, "--column", "Tag=Nonsense");
    assertEquals(64, wrong.code());
    assertTrue(wrong.err().contains("From Pin"), "the roles are listed: " + wrong.err());
    Run unused = Run.of("import", list, "--column", "Gone=Wire");
    assertTrue(unused.err().contains("no column is headed \"Gone\""), unused.err());
  }

  @Test
  void a_profile_keeps_what_was_said_for_the_shop_s_next_list() throws IOException {
    Path list = list("Tag,Here,There\nW1,J1-A,P2-1\nW2,J1-B,P2-2\nW3,J1-C,P2-3\n");
    Path profile = folder.resolve("shop.profile");
    Run first =
        Run.of(
            "import",
            list,
            "--column",
            "Tag=Wire",
            "--column",
            "Here=From",
            "--column",
            "There=To",
            "--save-profile",
            profile);
    assertEquals(0, first.code(), first.err());
    assertTrue(Files.exists(profile));
    String saved = Files.readString(profile);
    Run second = Run.of("import", list, "--profile", profile, "--json");
    assertTrue(second.out().contains("\"wire\" : \"W1\""), second.out());
    assertEquals(saved, Files.readString(profile), "a profile is never written over");
    Files.writeString(profile, "nonsense");
    assertEquals(64, Run.of("import", list, "--profile", profile).code());
  }

  @Test
  void names_join_and_marks_become_wires_only_when_asked() throws IOException {
    Path pins = list("Connector,Pin,Signal\nJ1,A,RUN\nJ1,B,STOP\nP2,1,RUN\nP2,2,STOP\n");
    assertTrue(Run.of("import", pins).out().contains("0 wires"));
    Run joined = Run.of("import", pins, "--join-by", "Signal", "--json");
    assertTrue(joined.out().contains("joined by the name RUN"), joined.out());

    Path marks = list("Device,TB1-1,TB1-2,TB1-3\nHorn,X,,o\nLamp,,X,o\nBell,X,o,\n");
    assertTrue(Run.of("import", marks).err().contains("say --marks"));
    assertTrue(Run.of("import", marks, "--marks", "X").out().contains("3 wires"));
  }

  @Test
  void an_item_without_pins_is_one_point_where_the_user_says_so() throws IOException {
    Path list = list("Wire,From,To\nW1,Rail,J1-A\nW2,Rail,J1-B\n");
    assertTrue(Run.of("import", list, "--json").out().contains("Rail-?2"));
    Run one = Run.of("import", list, "--one-point", "RAIL", "--json");
    assertTrue(one.out().contains("\"from\" : \"Rail-1\""), one.out());
    assertFalse(one.out().contains("Rail-?"), one.out());
  }

  @Test
  void a_remark_beside_a_point_goes_along_as_a_note() throws IOException {
    Run run = Run.of("import", list("Wire,From,To\nW1,J1-A,TB1-1 (24V)\n"), "--json");
    assertTrue(run.out().contains("\"To as listed\" : \"TB1-1 (24V)\""), run.out());
    assertTrue(run.out().contains("\"to\" : \"TB1-1\""), run.out());
  }

  @Test
  void words_of_another_language_come_from_a_file() throws IOException {
    Path words = folder.resolve("fr.txt");
    Files.writeString(words, "from: de\nto: vers\npin: broche\nwire: fil\n");
    Path list = list("Fil;De;Broche;Vers;Broche\n1;J1;A;P2;1\n2;J1;B;P2;2\n");
    Run run = Run.of("import", list, "--words", words, "--json");
    assertTrue(run.out().contains("\"to\" : \"P2-1\""), run.out());
    Files.writeString(words, "no colon here\n");
    assertEquals(64, Run.of("import", list, "--words", words).code());
  }

  /** Rows that could not be read must not be missing silently from what is judged later. */
  @Test
  void a_harness_with_rows_that_were_not_read_is_not_judged() throws IOException {
    Path list = list("Wire,From,To\nW1,J1-A,P2-1\nW2,2-Jan,P2-2\nW3,J1-C,P2-3\n");
    Path harness = folder.resolve("out.xlsx");
    Run run = Run.of("import", list, "-o", harness);
    assertEquals(65, run.code());
    assertTrue(Files.exists(harness));
    Path readings = folder.resolve("readings.csv");
    Files.writeString(readings, "From,To,Reading\nJ1-A,P2-1,0.1\n");
    Run check = Run.of("check", harness, readings);
    assertEquals(65, check.code(), check.out());
    assertTrue(check.err().contains("1 row of the list could not be read"), check.err());
  }

  @Test
  void nothing_of_the_user_s_is_overwritten_and_the_same_list_gives_the_same_bytes()
      throws IOException {
    Path list = list("Wire,From,To\nW1,J1-A,P2-1\nW2,J1-B,+5\n");
    Path one = folder.resolve("one.xlsx");
    Path two = folder.resolve("two.xlsx");
    assertEquals(0, Run.of("import", list, "-o", one).code());
    assertEquals(73, Run.of("import", list, "-o", one).code());
    assertEquals(0, Run.of("import", list, "-o", two).code());
    assertArrayEquals(Files.readAllBytes(one), Files.readAllBytes(two));
    assertEquals(64, Run.of("import", list, "-o", folder.resolve("x.ods")).code());
    Path text = folder.resolve("out.csv");
    assertEquals(0, Run.of("import", list, "-o", text).code());
    assertTrue(Files.readString(text).contains("'+5"), "no spreadsheet takes it for a formula");
    assertTrue(Run.of("import", text, "--json").out().contains("\"to\" : \"+5"));
  }

  @Test
  void a_list_that_is_missing_or_no_table_is_said_so() throws IOException {
    assertEquals(66, Run.of("import", folder.resolve("gone.xlsx")).code());
    Path picture = folder.resolve("list.xlsx");
    Files.writeString(picture, "no workbook");
    Run run = Run.of("import", picture, "--json");
    assertEquals(65, run.code());
    assertTrue(run.out().contains("ringout-import/1"), run.out());
  }
}
