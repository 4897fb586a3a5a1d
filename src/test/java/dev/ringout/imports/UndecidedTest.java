package dev.ringout.imports;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.jr.ob.JSON;
import dev.ringout.support.Run;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What is not certain is asked, and what the user says is final. */
class UndecidedTest {
  /** Points under two headings that say nothing of ends. */
  private static final String LETTERS =
      """
      Tag,A,B,Color
      101,J1-1,P2-1,RED
      102,J1-2,P2-2,BLU
      103,J1-3,P2-3,BLK
      """;

  /** Pins of a connector that nothing names. */
  private static final String PINS =
      """
      No,Pin,Goes,Color
      1,1,K1-A1,RED
      2,2,K1-A2,BLU
      3,3,K2-A1,BLK
      """;

  /** Headings of which one is of a side, so that the rows may be wires, or pins and far ends. */
  private static final String SIDES =
      """
      Tag,Box side,Bridge side,Color
      301,J1-1,P2-1,RED
      302,J1-2,P2-2,BLU
      303,J1-3,TB1-4,BLK
      """;

  private static final String PLAIN =
      """
      Wire,From,To,Signal
      101,J1-1,P2-1,RUN
      102,J1-2,P2-2,STOP
      """;

  /** A third column of points beside two ends. */
  private static final String WITH_OLD_ENDS =
      """
      Wire,From,To,Was
      101,J1-1,P2-1,P9-1
      102,J1-2,P2-2,P9-2
      """;

  private static final Pattern WORD = Pattern.compile("'([^']*)'|\"([^\"]*)\"|(\\S+)");

  @TempDir Path folder;

  private Path list(String text) throws IOException {
    return Files.writeString(folder.resolve("unit.csv"), text);
  }

  private Path harness() {
    return folder.resolve("harness.xlsx");
  }

  private Run run(Path list, String... options) {
    List<Object> words = new ArrayList<>(List.of("import", list));
    words.addAll(List.of(options));
    return Run.of(words.toArray());
  }

  /** Wires as {@code J1-1 > P2-1}, and links. */
  private List<String> wires(Path list, String... options) throws IOException {
    List<String> words = new ArrayList<>(List.of(options));
    words.add("--json");
    Map<String, Object> json = JSON.std.mapFrom(run(list, words.toArray(String[]::new)).out());
    List<String> wires = new ArrayList<>();
    for (String part : List.of("wires", "links")) {
      if (json.get(part) instanceof List<?> all) {
        for (Object one : all) {
          if (one instanceof Map<?, ?> wire) {
            wires.add(wire.get("from") + " > " + wire.get("to"));
          }
        }
      }
    }
    return wires;
  }

  /** The commands that a page shows, each in words as a shell would part it. */
  private static List<List<String>> commands(String page) {
    List<List<String>> commands = new ArrayList<>();
    Matcher shown = Pattern.compile("say so: (.*)").matcher(page);
    while (shown.find()) {
      List<String> words = new ArrayList<>();
      Matcher word = WORD.matcher(shown.group(1));
      while (word.find()) {
        words.add(word.group().replaceAll("^['\"]|['\"]$", ""));
      }
      commands.add(words);
    }
    return commands;
  }

  @ParameterizedTest
  @ValueSource(strings = {LETTERS, SIDES})
  void what_is_not_certain_writes_nothing_and_exits_with_65(String text) throws IOException {
    Run run = run(list(text), "-o", harness().toString());
    assertEquals(65, run.code(), run.out());
    assertFalse(Files.exists(harness()));
    assertTrue(run.err().contains("not certain, so nothing is written"), run.err());
    assertTrue(run.err().contains("error: unit.csv!A1"), run.err());
  }

  @ParameterizedTest
  @ValueSource(strings = {LETTERS, SIDES})
  void each_way_is_shown_as_sentences_with_what_speaks_for_it_and_the_command_that_takes_it(
      String text) throws IOException {
    String page = run(list(text)).out();
    assertTrue(page.contains("not certain how to read it, so nothing is read"), page);
    assertTrue(page.contains("  1. ") && page.contains("  2. "), page);
    assertTrue(page.matches("(?s).* runs from .* terminal .* to .* terminal .*"), page);
    assertTrue(page.matches("(?s).*\\n +[+-]\\d+  \\S.*"), page);
    assertTrue(commands(page).size() >= 2, page);
    assertTrue(page.contains("None of these?"), page);
    assertTrue(
        page.lines().allMatch(line -> line.length() <= 80 || line.contains("say so: ")), page);
  }

  /** The last that is shown takes the table for none of wires. */
  @ParameterizedTest
  @ValueSource(strings = {LETTERS, SIDES})
  void each_command_that_is_shown_settles_the_table_as_it_stands(String text) throws IOException {
    Path list = list(text);
    List<List<String>> commands = commands(run(list).out());
    for (List<String> command : commands) {
      assertEquals(List.of("ringout", "import"), command.subList(0, 2));
      Path to = folder.resolve("way-" + commands.indexOf(command) + ".xlsx");
      List<Object> typed = new ArrayList<>(command.subList(1, command.size()));
      typed.addAll(List.of("-o", to.toString()));
      Run run = Run.of(typed.toArray());
      assertFalse(run.out().contains("not certain"), command + "\n" + run.out());
      boolean none = command.contains("none");
      assertEquals(none ? 65 : 0, run.code(), command + "\n" + run.err());
      assertEquals(!none, Files.exists(to), command.toString());
    }
  }

  /** Three ends in a row; a terminal between; items under headings that say nothing of it. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        LETTERS,
        SIDES,
        """
        From (Board),Signal,Dial pin,Lamp pin
        IO5,SCL,SCL,SCL
        IO4,SDA,SDA,SDA
        """,
        """
        Morsetto,Da,A,Colore
        1,QG-1,M1-U,nero
        2,QG-2,M1-V,nero
        3,QG-3,M1-W,nero
        """,
        """
        Coil,Driver OUT,Pin,Color
        Cyl 1,OUT 1,34-pin pin 3,Y
        Cyl 2,OUT 2,34-pin pin 4,R
        Cyl 3,OUT 3,34-pin pin 5,O
        """
      })
  void the_command_that_is_shown_makes_the_wires_that_are_shown(String text) throws IOException {
    Path list = list(text);
    String page = run(list).out();
    for (String way : page.split("\n {2}(?=\\d\\. )", -1)) {
      List<List<String>> commands = commands(way);
      String oneLine = way.replaceAll("\\s+", " ");
      Matcher first = Pattern.compile("runs from (.+?) (?:terminal|\\(no)").matcher(oneLine);
      if (!commands.isEmpty() && first.find()) {
        List<String> command = commands.get(0);
        List<String> options = command.subList(3, command.size());
        String item = first.group(1);
        List<String> wires = wires(list, options.toArray(String[]::new));
        assertTrue(
            wires.stream().anyMatch(wire -> wire.startsWith(item)),
            options + " was shown from " + item + " and made " + wires);
      }
    }
  }

  @Test
  void json_has_every_way_with_its_score_its_evidence_and_its_options() throws IOException {
    Map<String, Object> json = JSON.std.mapFrom(run(list(SIDES), "--json").out());
    assertEquals(false, json.get("decided"));
    assertEquals(List.of(), json.get("sheets"));
    assertEquals(List.of(), json.get("wires"));
    String text = JSON.std.asString(json);
    assertTrue(text.contains("\"certain\":false"), text);
    assertTrue(text.contains("\"options\":[\"--layout\",\"block\"]"), text);
    assertTrue(text.contains("\"code\":\"pins-once\""), text);
  }

  @Test
  void one_uncertain_table_keeps_the_certain_ones_from_being_written() throws IOException {
    Path both = list(PLAIN + "\n\n" + LETTERS);
    Run run = run(both, "-o", harness().toString());
    assertEquals(65, run.code(), run.out());
    assertFalse(Files.exists(harness()));
  }

  @Test
  void a_table_that_is_none_is_left_out_and_the_others_are_read() throws IOException {
    Path both = list(PLAIN + "\n\n" + LETTERS);
    List<List<String>> commands = commands(run(both).out());
    List<String> none = commands.get(commands.size() - 1);
    assertEquals(List.of("ringout", "import", both.toString(), "--layout", "unit!A6!none"), none);
    assertEquals(List.of("J1-1 > P2-1", "J1-2 > P2-2"), wires(both, "--layout", "unit!A6!none"));
  }

  /** A date under the bridges: their column is not taken for one. */
  private static final String STRIP =
      """
      Internal,Terminal TB3,Bridge,External
      K1-13,1,2025-01-02,S1-1
      K1-14,2,,S1-2
      K2-13,3,,S2-1
      """;

  @Test
  void the_layout_alone_leaves_open_a_column_that_may_change_the_wires() throws IOException {
    Path list = list(STRIP);
    Run run = run(list, "--layout", "terminals");
    assertEquals(65, run.code(), run.out());
    assertTrue(
        run.err().contains("unit.csv!C1") && run.err().contains("--column C=Keep"), run.err());
    assertEquals(0, run(list, "--layout", "terminals", "--column", "C=Keep").code());
  }

  @Test
  void the_layout_alone_says_which_columns_are_taken_for_ends_by_their_cells() throws IOException {
    Path list = list("Board,KEYPAD,LAMP\n39,Row 4,\n36,Row 3,\n35,Row 2,\n34,Row 1,\n33,,Green\n");
    String asked = run(list, "--layout", "block").err();
    assertTrue(asked.contains("A (Board), B (KEYPAD)"), asked);
    // Full points are ends whatever stands over them.
    assertEquals("", run(list(LETTERS), "--layout", "from-to").err());
  }

  @Test
  void a_kept_column_is_no_end_whatever_its_heading_says() throws IOException {
    assertEquals(
        List.of("P9-1 > P2-1", "P9-2 > P2-2"),
        wires(list(WITH_OLD_ENDS), "--column", "B=Keep", "--column", "Was=From"));
  }

  @Test
  void a_column_is_named_by_its_heading_or_by_its_letter() throws IOException {
    for (String was : List.of("Was", "D")) {
      for (String to : List.of("To", "C")) {
        assertEquals(
            List.of("J1-1 > P9-1", "J1-2 > P9-2"),
            wires(list(WITH_OLD_ENDS), "--column", to + "=Keep", "--column", was + "=To"),
            was + " " + to);
      }
    }
  }

  @Test
  void a_letter_is_a_column_s_letter_where_another_column_is_headed_by_it() throws IOException {
    assertEquals(
        List.of("J1-1 > P2-1", "J1-2 > P2-2", "J1-3 > P2-3"),
        wires(list(LETTERS), "--column", "B=From", "--column", "C=To"));
  }

  @Test
  void of_two_columns_with_one_heading_a_letter_names_one_and_the_heading_both()
      throws IOException {
    Path list = list("Pin,Ref,To,Ref,Kind\n1,a,K1-A1,x,wire\n2,b,K1-A2,y,wire\n3,c,K2-A1,z,wire\n");
    String json = run(list, "--item", "J9", "--column", "B=Signal", "--json").out();
    assertTrue(json.contains("\"signal\" : \"a\""), json);
    assertFalse(json.contains("\"signal\" : \"x\""), json);
    String both = run(list, "--item", "J9", "--column", "Ref=Keep").out();
    assertTrue(both.contains("kept as notes: Ref, Ref, Kind"), both);
  }

  @Test
  void the_user_says_where_the_headings_stand() throws IOException {
    Path list =
        list("Wire,From,To\nof the bridge,,\nNo,Here,There\n101,J1-1,P2-1\n102,J1-2,P2-2\n");
    Run run = run(list, "--heading-row", "3", "--column", "Here=From", "--column", "There=To");
    assertEquals(0, run.code(), run.err());
    assertTrue(run.out().contains("(headings in row 3)"), run.out());
  }

  @Test
  void the_user_says_that_there_are_no_headings() throws IOException {
    Path list = list("From,1,To,1,RED\nJ1,2,P2,2,BLU\nJ1,3,P2,3,BLK\n");
    List<String> options = new ArrayList<>(List.of("--heading-row", "0"));
    for (String column : List.of("A=From", "B=From Pin", "C=To", "D=To Pin", "E=Color")) {
      options.addAll(List.of("--column", column));
    }
    assertEquals(
        List.of("From-1 > To-1", "J1-2 > P2-2", "J1-3 > P2-3"),
        wires(list, options.toArray(String[]::new)));
  }

  @Test
  void the_user_says_which_rows_and_which_sheet_are_read() throws IOException {
    assertEquals(List.of("J1-1 > P2-1"), wires(list(PLAIN), "--rows", "1-2"));
    assertEquals(2, wires(list(PLAIN), "--sheet", "unit").size());
  }

  @Test
  void the_user_says_whose_pins_they_are() throws IOException {
    Path list = list("Pin,To,Color\n1,P2-1,RED\n2,P2-2,BLU\n3,P2-3,BLK\n");
    assertEquals(List.of("J9-1 > P2-1", "J9-2 > P2-2", "J9-3 > P2-3"), wires(list, "--item", "J9"));
  }

  /** A number after a name is a pin or a part of the name: only the shop knows. */
  @ParameterizedTest
  @CsvSource({"blank, Lamp-1 > Motor-4", "none, Lamp 1-? > Motor 4-?"})
  void the_user_says_what_stands_between_item_and_pin(String separator, String wire)
      throws IOException {
    Path list = list("Wire,From,To,Color\nW1,Lamp 1,Motor 4,RED\nW2,Lamp 2,Motor 5,BLU\n");
    assertEquals(wire, wires(list, "--separator", separator).get(0));
  }

  @ParameterizedTest
  @CsvSource({
    "--sheet, nowhere, nowhere",
    "--column, Nowhere=From, Nowhere",
    "--column, Z=From, Z",
    "--layout, nowhere!none, nowhere",
    "--item, unit!C9!J1, unit!C9",
    "--join-by, Nowhere, Nowhere",
  })
  void what_the_list_does_not_have_is_said_and_nothing_is_written(
      String option, String value, String missing) throws IOException {
    Run run = run(list(PLAIN), option, value, "-o", harness().toString());
    assertEquals(65, run.code(), run.err());
    assertTrue(run.err().contains(missing), run.err());
    assertFalse(Files.exists(harness()), run.err());
  }

  @Test
  void a_saved_profile_reads_the_next_list_without_options() throws IOException {
    Path list = list(PINS);
    Path profile = folder.resolve("shop.txt");
    String[] options = {"--layout", "block", "--item", "J9", "--column", "No=Wire"};
    List<String> saving = new ArrayList<>(List.of(options));
    saving.addAll(List.of("--save-profile", profile.toString()));
    Run saved = run(list, saving.toArray(String[]::new));
    assertEquals(0, saved.code(), saved.err());
    assertEquals(wires(list, options), wires(list, "--profile", profile.toString()));
    String text = Files.readString(profile);
    assertTrue(text.contains("layout: block\n") && text.contains("item: J9\n"), text);
    assertTrue(text.contains("column: No = Wire\n"), text);
    assertTrue(text.startsWith("# "), "remarks for the one who changes it by hand");
    Path next = folder.resolve("next.csv");
    Files.writeString(next, PINS.replace("K1", "K7"));
    assertTrue(wires(next, "--profile", profile.toString()).contains("J9-1 > K7-A1"));
  }

  @Test
  void everything_that_can_be_said_stands_in_a_profile_and_is_read_again() throws IOException {
    Path list = list("Wire,From,To,Len,Ga\n1,Lamp 1,Motor 1,12,20\n2,Lamp 2,Motor 2,14,20\n");
    Path profile = folder.resolve("shop.txt");
    String[] options = {
      "--sheet",
      "unit",
      "--rows",
      "1-3",
      "--heading-row",
      "1",
      "--layout",
      "from-to",
      "--separator",
      "blank",
      "--column",
      "D=Length",
      "--column",
      "Ga=Gauge",
      "--length-unit",
      "in",
      "--gauge-unit",
      "AWG",
      "--one-point",
      "Motor"
    };
    List<String> saving = new ArrayList<>(List.of(options));
    saving.addAll(List.of("--save-profile", profile.toString()));
    assertEquals(0, run(list, saving.toArray(String[]::new)).code());
    assertEquals(run(list, options).out(), run(list, "--profile", profile.toString()).out());
    Path again = folder.resolve("again.txt");
    run(list, "--profile", profile.toString(), "--save-profile", again.toString());
    assertEquals(Files.readString(profile), Files.readString(again));
  }

  @Test
  void a_profile_that_no_longer_fits_says_what_is_not_there() throws IOException {
    Path profile = folder.resolve("shop.txt");
    Files.writeString(profile, "profile: ringout 2\n\ncolumn: Goes = Far End\n");
    Run run = run(list(PLAIN), "--profile", profile.toString(), "-o", harness().toString());
    assertEquals(65, run.code());
    assertTrue(run.err().contains("Goes"), run.err());
    assertFalse(Files.exists(harness()));
  }

  @ParameterizedTest
  @CsvSource({
    "colunm: Goes = To, line 3",
    "layout: sideways, line 3",
    "rows: all, line 3",
    "column: Goes = Somewhere, line 3",
    "no colon here, line 3",
  })
  void a_line_of_a_profile_that_can_t_be_understood_is_named(String line, String said)
      throws IOException {
    Path profile = folder.resolve("shop.txt");
    Files.writeString(profile, "# a shop\nprofile: ringout 2\n" + line + "\n");
    Run run = run(list(PLAIN), "--profile", profile.toString());
    assertEquals(64, run.code());
    assertTrue(run.err().contains(said), run.err());
  }

  @Test
  void a_profile_is_not_written_over_without_force() throws IOException {
    Path profile = Files.writeString(folder.resolve("shop.txt"), "mine\n");
    Run run = run(list(PLAIN), "--layout", "from-to", "--save-profile", profile.toString());
    assertEquals(73, run.code(), run.err());
    assertEquals("mine\n", Files.readString(profile));
  }
}
