package dev.ringout.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.ringout.support.Run;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Everything that a verdict rests on is in the seal: changed, taken away or added to, it is not as
 * it was sealed.
 */
class WhatASealHoldsTest {
  @TempDir Path folder;
  private Path key = Path.of("");

  @BeforeEach
  void key() throws IOException {
    key = folder.resolve("key");
    Files.createDirectories(folder.resolve("list"));
    assertEquals(0, Run.of("report", "--new-key", key).code());
    write("list/wires.csv", "Wire,From,To,Gauge,Length", "W1,J1-A,P1-1,20,1 m");
    write("list/header.csv", "Name,Value", "title,Box", "drawing,HSB-1", "revision,A");
    write("waivers.csv", "Rule,Subject,Who,Why", "crimp-gauge,W1,M. Lindqvist,seen");
    sheet("one", "OL");
    sheet("two", "0.04");
    write(
        "tables/wire-resistance.csv",
        "# source: our own",
        "type,awg,area_cmil,max_ohm_per_1000ft,confidence",
        "AS22759/16,26,304,41.3,seen");
  }

  private void write(String name, String... rows) throws IOException {
    Path file = folder.resolve(name);
    Files.createDirectories(file.getParent());
    Files.write(file, List.of(rows));
  }

  private void sheet(String name, String join) throws IOException {
    write(name + "/continuity.csv", "Step,From,To,Reading", "1,J1-A,P1-1," + join);
    write(name + "/job.csv", "Name,Value", "serial number,0418", "revision,A");
  }

  private Run record(String sheet, String name, Object... more) {
    List<Object> all =
        new ArrayList<>(List.of("report", folder.resolve("list"), folder.resolve(sheet)));
    all.addAll(List.of("-o", folder.resolve(name), "--seal", key));
    all.addAll(List.of(more));
    return Run.of(all.toArray());
  }

  private Run verify(String name) {
    return Run.of("report", "--verify", folder.resolve(name), "--key", folder.resolve("key.pub"));
  }

  /** A retest with everything that a record can be made from. */
  private void sealed() {
    assertEquals(1, record("one", "first.html").code());
    Run run =
        record(
            "two",
            "second.html",
            "--continues",
            folder.resolve("first.html"),
            "--waivers",
            folder.resolve("waivers.csv"),
            "--tables",
            folder.resolve("tables"));
    assertTrue(run.code() <= 2, run.err());
    Run untouched = verify("second.html");
    assertEquals(0, untouched.code(), untouched.out());
  }

  private static final String ALL =
      """
      list/wires.csv                 | input list/wires.csv
      list/header.csv                | input list/header.csv
      two/continuity.csv             | input two/continuity.csv
      two/job.csv                    | input two/job.csv
      waivers.csv                    | input waivers.csv
      tables/wire-resistance.csv     | input tables/wire-resistance.csv
      first.html                     | earlier record first.html
      first.html.seal                | seal of earlier record first.html
      """;

  @ParameterizedTest
  @CsvSource(textBlock = ALL, delimiter = '|')
  void whatever_is_changed_afterwards_differs(String file, String said) throws IOException {
    sealed();
    Path changed = folder.resolve(file);
    Files.writeString(changed, Files.readString(changed) + "\n");
    Run run = verify("second.html");
    assertEquals(1, run.code(), run.out());
    assertTrue(run.out().contains("DIFFERS     " + said), run.out());
    assertTrue(run.out().endsWith("NOT AS SEALED.\n"), run.out());
  }

  @ParameterizedTest
  @CsvSource(textBlock = ALL, delimiter = '|')
  void whatever_is_taken_away_afterwards_is_missed(String file, String said) throws IOException {
    sealed();
    Files.delete(folder.resolve(file));
    Run run = verify("second.html");
    assertEquals(2, run.code(), run.out());
    assertTrue(run.out().contains("not shown   " + said + ": it is not there"), run.out());
    assertFalse(run.out().contains("As sealed:"), run.out());
  }

  @Test
  void the_folder_of_own_tables_is_missed_as_a_whole() throws IOException {
    sealed();
    Files.delete(folder.resolve("tables/wire-resistance.csv"));
    Files.delete(folder.resolve("tables"));
    Run run = verify("second.html");
    assertEquals(2, run.code(), run.out());
    assertTrue(run.out().contains("not shown   input tables: it is not there"), run.out());
  }

  @ParameterizedTest
  @ValueSource(strings = {"list/limits.csv", "two/insulation.csv", "tables/slips.csv"})
  void a_table_that_is_added_to_a_folder_differs(String file) throws IOException {
    sealed();
    write(file, "Name,Value", "closed max,5 k\u03a9");
    Run run = verify("second.html");
    assertEquals(1, run.code(), run.out());
    assertTrue(
        run.out()
            .contains(
                "DIFFERS     input "
                    + file
                    + ": it was not there when the others of its folder were sealed"),
        run.out());
  }

  /** A seal is a stranger's text: what it names elsewhere may be any file, or another machine. */
  @Test
  void inputs_that_lie_elsewhere_are_looked_at_where_the_user_says_that_they_may_be()
      throws IOException {
    Path records = Files.createDirectory(folder.resolve("records"));
    assertEquals(1, record("one", "records/first.html").code());
    Run alone = verify("records/first.html");
    assertEquals(2, alone.code(), alone.out());
    assertTrue(
        alone
            .out()
            .contains(
                "not shown   input ../list/wires.csv: it does not lie beside the record and was"
                    + " not looked at; --inputs FOLDER"),
        alone.out());
    Object[] within = {
      "report",
      "--verify",
      records.resolve("first.html"),
      "--key",
      folder.resolve("key.pub"),
      "--inputs",
      folder
    };
    Run there = Run.of(within);
    assertEquals(0, there.code(), there.out());
    write("one/insulation.csv", "Step");
    assertEquals(1, Run.of(within).code(), "a table that is added there");
    within[6] = folder.resolve("list");
    assertEquals(2, Run.of(within).code(), "the readings lie in neither");
  }

  @Test
  void a_link_beside_the_record_leads_nowhere_else(@TempDir Path outside) throws IOException {
    sealed();
    Path list = folder.resolve("list");
    Files.move(list, outside.resolve("list"));
    Files.createSymbolicLink(list, outside.resolve("list"));
    Run run = verify("second.html");
    assertEquals(2, run.code(), run.out());
    assertTrue(
        run.out().contains("input list/wires.csv: it does not lie beside the record"), run.out());
  }

  @Test
  void a_key_that_is_protected_signs_with_its_passphrase() throws IOException {
    write("passphrase", "swing bridge 4");
    Path closed = folder.resolve("closed");
    Object said = folder.resolve("passphrase");
    assertEquals(0, Run.of("report", "--new-key", closed, "--passphrase", said).code());
    key = closed;
    assertEquals(64, record("one", "first.html").code(), "nobody can be asked");
    assertEquals(1, record("one", "first.html", "--passphrase", said).code());
    Run run = Run.of("report", "--verify", folder.resolve("first.html"), "--key", closed + ".pub");
    assertEquals(0, run.code(), run.out());
    write("passphrase", "swing bridge 5");
    Run wrong = record("one", "second.html", "--passphrase", said);
    assertEquals(64, wrong.code());
    assertTrue(wrong.err().contains("the passphrase is not that of " + closed), wrong.err());
  }

  @Test
  void what_is_no_table_may_lie_beside_the_tables() throws IOException {
    sealed();
    write("list/photo.jpg", "seen");
    assertEquals(0, verify("second.html").code());
  }

  /** A table of one's own makes what counts as joined, and so the verdict. */
  @Test
  void an_own_table_that_makes_a_poor_joint_good_stands_in_the_record_and_in_its_seal()
      throws IOException {
    write(
        "list/wires.csv", "Wire,From,To,Gauge,Length,Wire Type", "W1,J1-A,P1-1,20,1 m,AS22759/16");
    sheet("poor", "5");
    assertEquals(1, record("poor", "poor.html").code());
    write(
        "tables/wire-resistance.csv",
        "type,awg,area_cmil,max_ohm_per_1000ft,confidence",
        "AS22759/16,20,1216,2000,seen");
    Run run = record("poor", "good.html", "--tables", folder.resolve("tables"));
    assertEquals(0, run.code(), run.out() + run.err());
    String seal = Files.readString(folder.resolve("good.html.seal"));
    assertTrue(seal.contains("input\ttables/wire-resistance.csv\t"), seal);
    assertTrue(seal.contains("folder\ttables\n"), seal);
    String page = Files.readString(folder.resolve("good.html"));
    assertTrue(page.contains("tables/wire-resistance.csv"), "among what it was made from");
  }

  @ParameterizedTest
  @ValueSource(strings = {"NaN", "Infinity", "1e400", "0x1p3", "12d", "-9"})
  void an_own_table_holds_no_number_that_none_can_be(String number) throws IOException {
    write(
        "tables/wire-resistance.csv",
        "type,awg,area_cmil,max_ohm_per_1000ft,confidence",
        "AS22759/16,20,1216," + number + ",seen");
    Run run = record("two", "r.html", "--tables", folder.resolve("tables"));
    assertEquals(64, run.code(), run.out() + run.err());
    assertTrue(run.err().contains("max_ohm_per_1000ft needs a number"), run.err());
  }

  @Test
  void what_was_said_on_the_command_line_is_sealed_with_the_rest() throws IOException {
    write("two/job.csv", "Name,Value", "revision,B");
    Run run =
        record(
            "two",
            "r.html",
            "--serial",
            "0418",
            "--any-revision",
            "--touched",
            "W1",
            "--opened",
            "J1",
            "--date",
            "2026-11-20");
    assertTrue(run.code() <= 2, run.err());
    String seal = Files.readString(folder.resolve("r.html.seal"));
    assertTrue(
        seal.contains(
            """
            said\t--serial\t0418
            said\t--any-revision\t
            said\t--touched\tW1
            said\t--opened\tJ1
            said\t--date\t2026-11-20
            """),
        seal);
    Path sealFile = folder.resolve("r.html.seal");
    Files.writeString(sealFile, seal.replace("said\t--any-revision\t\n", ""));
    Run changed = verify("r.html");
    assertEquals(1, changed.code(), changed.out());
    assertTrue(changed.out().contains("DIFFERS     signature"), changed.out());
  }
}
