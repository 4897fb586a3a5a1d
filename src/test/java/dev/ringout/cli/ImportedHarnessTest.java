package dev.ringout.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.ringout.support.Run;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What {@code import -o} writes is a harness file to every other command. */
class ImportedHarnessTest {
  private static final String NETS =
      "Net,Ref,Pin\nGND,U1,1\nGND,U2,3\nGND,TB-1,A-1\nVCC,U1,2\nVCC,U2,4\n";

  @TempDir Path folder;

  private Path list(String text) throws IOException {
    Path file = folder.resolve("list.csv");
    Files.writeString(file, text);
    return file;
  }

  private Path imported(String name, String text, Object... options) throws IOException {
    Path harness = folder.resolve(name);
    Object[] words = new Object[options.length + 4];
    words[0] = "import";
    words[1] = list(text);
    words[2] = "-o";
    words[3] = name.contains(".") ? harness : harness + "/";
    System.arraycopy(options, 0, words, 4, options.length);
    Run run = Run.of(words);
    assertEquals(ExitCode.DONE, run.code(), run.err());
    return harness;
  }

  /** Each command does its work; what it then says of the unit is another matter. */
  private void loadsInEveryCommand(Path harness, String point) {
    Path sheets = folder.resolve("sheets.xlsx");
    done(Run.of("review", harness));
    done(Run.of("trace", harness, point));
    done(Run.of("work", harness));
    done(Run.of("plan", harness, "-o", sheets, "--force"));
    done(Run.of("diff", harness, harness));
    Run check = Run.of("check", harness, sheets);
    assertEquals(ExitCode.INCOMPLETE, check.code(), check.err());
    assertEquals(
        ExitCode.INCOMPLETE,
        Run.of("report", harness, sheets, "-o", folder.resolve("r.html"), "--force").code());
  }

  private static void done(Run run) {
    assertEquals(ExitCode.DONE, run.code(), run.err());
    assertFalse(run.err().contains("error:"), run.err());
  }

  @ParameterizedTest
  @ValueSource(strings = {"harness.xlsx", "harness", "harness.csv"})
  void a_gauge_and_a_length_that_say_no_unit_do_not_stop_what_comes_after(String name)
      throws Exception {
    Path harness =
        imported(
            name,
            "Wire,From,From Pin,To,To Pin,Gauge,Length\nW1,J1,1,J2,1,thick,12\nW2,J1,2,J2,2,20,13\n");
    loadsInEveryCommand(harness, "J1-1");
  }

  @ParameterizedTest
  @ValueSource(strings = {"harness.xlsx", "harness", "harness.csv"})
  void a_column_of_the_list_s_own_is_never_taken_for_one_of_the_harness(String name)
      throws Exception {
    Path harness =
        imported(
            name,
            "Wire,From,From Pin,To,To Pin,Gauge,Gauge as listed,gauge  as listed,Comment,"
                + "\"a;b;c;d;e;f;g;h\",\"two\nlines\",=Sum\n"
                + "W1,J1,1,J2,1,20,x,y,\"so;it;goes;on\nand;on;and;on;and;on\",+24V,-,'=1+1\n"
                + "W2,J1,2,J2,2,20,x,y,Größe µ Ω 配線,,z,\"say \"\"yes\"\"\"\n",
            "--column",
            "A=Wire",
            "--column",
            "Gauge as listed=Keep");
    loadsInEveryCommand(harness, "J1-1");
  }

  @ParameterizedTest
  @ValueSource(strings = {"harness.xlsx", "harness"})
  void a_list_of_nets_is_a_harness_of_links_alone(String name) throws Exception {
    Path harness = imported(name, NETS, "--join-by", "Net");
    loadsInEveryCommand(harness, "U1-1");
    Run trace = Run.of("trace", harness, "U1-1", "TB-1-A-1");
    assertTrue(trace.out().contains("TB-1-A-1"), trace.out());
  }

  @Test
  void links_alone_need_no_sheet_of_wires() throws Exception {
    Path harness = imported("harness", NETS, "--join-by", "Net");
    Files.delete(harness.resolve("wires.csv"));
    loadsInEveryCommand(harness, "U2-4");
    Files.writeString(harness.resolve("wires.csv"), "");
    loadsInEveryCommand(harness, "U2-4");
  }

  @Test
  void wires_under_another_name_are_missed_however_many_links_there_are() throws Exception {
    Path harness = imported("harness", NETS, "--join-by", "Net");
    Files.move(harness.resolve("wires.csv"), harness.resolve("wire list.csv"));
    Run run = Run.of("review", harness);
    assertEquals(ExitCode.NOT_UNDERSTOOD, run.code());
    assertTrue(run.err().contains("there is no sheet Wires"), run.err());
  }

  @Test
  void neither_wires_nor_links_are_no_harness() throws Exception {
    Path harness = Files.createDirectory(folder.resolve("harness"));
    Files.writeString(harness.resolve("links.csv"), "Ref,Pin,To Pin\n");
    Run run = Run.of("review", harness);
    assertEquals(ExitCode.NOT_UNDERSTOOD, run.code());
    assertTrue(run.err().contains("lists no links, and there is no sheet Wires"), run.err());
  }

  @Test
  void a_link_between_two_items_keeps_their_names_and_pins_apart() throws Exception {
    Path harness = imported("harness", NETS, "--join-by", "Net");
    assertEquals(
        List.of(
            "\ufeffRef,Pin,To,To Pin,Note",
            "U1,1,U2,3,joined by the name GND",
            "U2,3,TB-1,A-1,joined by the name GND",
            "U1,2,U2,4,joined by the name VCC"),
        Files.readAllLines(harness.resolve("links.csv")));
  }

  @Test
  void a_spare_wire_keeps_its_number() throws Exception {
    Path harness =
        imported(
            "harness",
            """
            Wire,From,From Pin,To,To Pin,Gauge,Remark
            W1,J1,1,J2,1,20,
            W2,J1,2,SPARE,,,
            W3,J1,3,,,,SPARE
            W4,J1,4,,,20,spare
            """);
    assertEquals(
        List.of(
            "\ufeffRef,Pin,Size,Contact,Note",
            "J1,2,,,\"SPARE, wire W2\"",
            "J1,3,,,\"SPARE, wire W3\""),
        Files.readAllLines(harness.resolve("pins.csv")));
    assertTrue(
        Files.readString(harness.resolve("wires.csv")).contains("W4,J1,4,STOWED,W4,"),
        "a spare wire of a gauge is there, its end on no contact");
    loadsInEveryCommand(harness, "J1-2");
  }

  @Test
  void a_wire_without_its_other_end_that_is_not_spare_is_still_asked_about() throws Exception {
    Run run = Run.of("import", list("Wire,From,From Pin,To,To Pin\nW1,J1,1,J2,1\nW3,J1,3,,\n"));
    assertEquals(ExitCode.NOT_UNDERSTOOD, run.code());
  }

  @Test
  void a_single_table_says_what_it_can_t_hold() throws Exception {
    Path harness = folder.resolve("harness.csv");
    Run run =
        Run.of(
            "import",
            list("Wire,From,From Pin,To,To Pin\nW1,J1,1,J2,1\n,J1,2,SPARE,\n"),
            "-o",
            harness);
    assertEquals(ExitCode.DONE, run.code());
    assertTrue(run.err().contains("Pins"), run.err());
  }

  @Test
  void of_two_columns_with_one_meaning_the_second_goes_along() throws Exception {
    Path harness =
        imported(
            "harness.csv",
            "Wire,From,From Pin,To,To Pin,Remark,Remark,Notes\nW1,J1,1,J2,1,first,second,third\nW2,J1,2,J2,2,,alone,\n");
    assertEquals(
        List.of(
            "\ufeffWire,From,From Pin,To,To Pin,Note,Remark,Notes",
            "W1,J1,1,J2,1,first,second,third",
            "W2,J1,2,J2,2,alone,,"),
        Files.readAllLines(harness));
    loadsInEveryCommand(harness, "J1-1");
  }

  @Test
  void the_names_of_pins_are_written_and_counted_wired_or_not() throws Exception {
    Path lists = Files.createDirectory(folder.resolve("lists"));
    Files.writeString(
        lists.resolve("pinout.csv"),
        "Connector,Pin,Name\nJ1,1,GND\nJ1,2,+24V\nJ1,3,SPARE\nJ1,4,\nJ1,5,RETURN\n");
    Files.writeString(
        lists.resolve("wires.csv"),
        "Wire,From,From Pin,To,To Pin\nW1,J1,1,P2,1\nW2,J1,2,P2,2\nW3,J1,5,P2,3\n");
    Path harness = folder.resolve("harness");
    Run run = Run.of("import", lists, "-o", harness + "/");
    assertEquals(ExitCode.DONE, run.code(), run.err());
    assertTrue(
        run.out()
            .contains("3 wires; 2 pins listed without a wire; 3 wired pins with a name beside"),
        run.out());
    assertEquals(
        List.of("J1,1,,,GND", "J1,2,,,'+24V", "J1,3,,,SPARE", "J1,4,,,", "J1,5,,,RETURN"),
        Files.readAllLines(harness.resolve("pins.csv")).subList(1, 6));
    loadsInEveryCommand(harness, "J1-4");
  }

  @Test
  void a_list_that_joins_nothing_is_not_understood() throws Exception {
    Run run = Run.of("import", list("Ref,Pin,Name\nJ1,1,A\nJ1,2,B\nJ1,3,C\n"));
    assertEquals(ExitCode.NOT_UNDERSTOOD, run.code(), run.err());
  }

  @Test
  void a_test_sheet_is_refused_by_the_name_of_what_reads_it() throws Exception {
    Path harness = imported("harness", NETS, "--join-by", "Net");
    Path sheets = folder.resolve("sheets.xlsx");
    assertEquals(ExitCode.DONE, Run.of("plan", harness, "-o", sheets).code());
    Run run = Run.of("import", sheets);
    assertEquals(ExitCode.NOT_UNDERSTOOD, run.code());
    assertTrue(run.err().contains("ringout check HARNESS sheets.xlsx"), run.err());
  }

  @ParameterizedTest
  @ValueSource(strings = {"harness.xlsx", "harness"})
  void a_harness_file_is_refused_by_the_name_of_what_reads_it(String name) throws Exception {
    Path wires = imported(name, "Wire,From,From Pin,To,To Pin\nW1,J1,1,J2,1\nW2,J1,2,J2,2\n");
    Run run = Run.of("import", wires);
    assertEquals(ExitCode.NOT_UNDERSTOOD, run.code());
    assertTrue(run.err().contains("ringout review " + name), run.err());
  }
}
