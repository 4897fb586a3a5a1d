package dev.ringout.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.ringout.support.Run;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * What is said of a unit after its sheets were brought in: notes, what is taken back, signatures.
 */
class LaterCommandTest {
  @TempDir private Path folder;

  private Path list = Path.of("");

  private Run at(Object... words) {
    List<Object> all = new ArrayList<>(List.of(words));
    all.addAll(List.of("--store", folder.resolve("bench.db")));
    return Run.of(all.toArray());
  }

  private static String flat(Run run) {
    return (run.out() + run.err()).replaceAll("\\s+", " ");
  }

  @BeforeEach
  void a_list_of_two_wires() throws IOException {
    list = Files.createDirectories(folder.resolve("list"));
    Files.writeString(list.resolve("wires.csv"), "Wire,From,To\nW1,J1-1,P2-1\nW2,J1-2,P2-2\n");
    Files.writeString(list.resolve("limits.csv"), "Name,Value,Unit\ninsulation test,none,\n");
  }

  private Path sheet(String name, String rows) throws IOException {
    Path sheet = Files.createDirectories(folder.resolve(name));
    Files.writeString(
        sheet.resolve("job.csv"),
        """
        Name,Value
        serial number,0418
        operator,R. Adeyemi
        date,2026-11-20
        continuity range,40 MΩ
        lead null,nulled
        meter resolution,1 mΩ
        instrument,milliohm meter
        calibration due,2027-03-31
        """);
    Files.writeString(sheet.resolve("continuity.csv"), "From,To,Reading,Reverse\n" + rows);
    return sheet;
  }

  private static final String GOOD = "J1-1,P2-1,0.021,\nJ1-2,P2-2,0.021,\nJ1-1,REST,OL,\n";

  @Test
  void a_good_unit_conforms_no_more_once_a_reading_of_it_is_taken_back() throws IOException {
    at("store", "add", list, sheet("first", GOOD));
    assertEquals(0, at("check", "unit:0418").code(), flat(at("check", "unit:0418")));
    Run back =
        at(
            "store",
            "take-back",
            "unit:0418",
            "first/continuity.csv!C2",
            "--why",
            "probe on the wrong pin",
            "--who",
            "R. Adeyemi");
    assertEquals(0, back.code(), flat(back));
    assertTrue(flat(back).contains("It now is not complete"), flat(back));
    Run check = at("check", "unit:0418");
    assertEquals(2, check.code());
    assertTrue(flat(check).contains("\"taken back: 0.021\""), flat(check));
    assertTrue(flat(at("units")).contains("0418 is not complete"), flat(at("units")));
    Run history = at("units", "0418");
    assertTrue(
        flat(history)
            .contains("first/continuity.csv!C2 taken back: probe on the wrong pin (R. Adeyemi"),
        flat(history));
    assertTrue(flat(history).contains("then the unit conforms"), "as it was shown then");
    assertEquals(0, at("store", "check").code());
  }

  /** An earlier good value does not come to life again. */
  @Test
  void what_is_taken_back_of_a_retest_brings_back_nothing_and_is_read_again() throws IOException {
    at("store", "add", list, sheet("first", GOOD));
    at("store", "add", list, sheet("second", "J1-1,P2-1,OL,\n"));
    assertEquals(1, at("check", "unit:0418").code());
    takeBack("second/continuity.csv!C2");
    assertEquals(2, at("check", "unit:0418").code());
    at("store", "add", list, sheet("third", "J1-1,P2-1,0.022,\n"));
    assertEquals(0, at("check", "unit:0418").code(), flat(at("check", "unit:0418")));
  }

  private Run takeBack(String cell) {
    return at("store", "take-back", "unit:0418", cell, "--why", "slipped", "--who", "R. Adeyemi");
  }

  @Test
  void both_directions_of_a_row_are_taken_back_together() throws IOException {
    at("store", "add", list, sheet("first", GOOD.replace("0.021,", "0.021,0.022")));
    assertEquals(0, takeBack("FIRST/continuity.csv!D3").code());
    assertEquals(2, at("check", "unit:0418").code());
    assertTrue(
        flat(takeBack("first/continuity.csv!C3")).contains("is taken back already"),
        flat(takeBack("first/continuity.csv!C3")));
  }

  @Test
  void a_cell_without_a_reading_is_refused_with_how_a_cell_is_named() throws IOException {
    at("store", "add", list, sheet("first", GOOD));
    String before = at("store", "check").out();
    Run none = takeBack("G14");
    assertEquals(64, none.code());
    assertTrue(flat(none).contains("such as first/continuity.csv!C2"), flat(none));
    assertEquals(66, at("store", "note", "unit:9", "x", "--who", "R. Adeyemi").code());
    assertEquals(64, at("store", "note", "unit:0418", "x", "--who", "n/a").code());
    assertEquals(before, at("store", "check").out());
  }

  /** Check leaves the file's name out where there is one; with two, a cell alone may be either. */
  @Test
  void a_cell_is_named_as_far_as_it_must_be() throws IOException {
    at("store", "add", list, sheet("first", GOOD));
    assertEquals(0, takeBack("c2").code());
    at("store", "add", list, sheet("second", "J1-1,P2-1,0.022,\n"));
    Run either = takeBack("C2");
    assertEquals(64, either.code());
    assertTrue(
        flat(either).contains("may be first/continuity.csv!C2 or second/continuity.csv!C2"),
        flat(either));
    assertEquals(0, takeBack("second/continuity.csv C2").code());
  }

  @Test
  void a_note_stays_with_the_unit() throws IOException {
    at("store", "add", list, sheet("first", GOOD));
    Run note = at("store", "note", "unit:418", "lid missing", "--who", "M. Lindqvist");
    assertEquals(0, note.code(), flat(note));
    assertTrue(flat(note).contains("noted. It now conforms, no insulation test."), flat(note));
    assertTrue(flat(at("units", "0418")).contains("note: lid missing (M. Lindqvist"));
    assertTrue(at("units", "0418", "--json").out().contains("\"text\" : \"lid missing\""));
  }

  private Run sign(String who, String role) throws IOException {
    Path key = folder.resolve("inspector.key");
    if (!Files.exists(key)) {
      assertEquals(0, Run.of("report", "--new-key", key).code());
    }
    return at("store", "sign", "unit:0418", "--key", key, "--role", role, "--who", who);
  }

  @Test
  void an_inspector_signs_and_his_signature_is_held_against_what_stands_before() throws Exception {
    at("store", "add", list, sheet("first", GOOD));
    at("store", "add", list, sheet("second", "J1-1,P2-1,0.022,\n"));
    Run signed = sign("M. Lindqvist", "inspector");
    assertEquals(0, signed.code(), flat(signed));
    Run history = at("units", "0418");
    assertTrue(flat(history).contains("signed by M. Lindqvist as inspector, key "), flat(history));
    assertEquals(0, at("store", "check").code());
  }

  @Test
  void a_secret_key_that_others_can_read_is_said_to_be_none() throws IOException {
    at("store", "add", list, sheet("first", GOOD));
    assertEquals("", sign("M. Lindqvist", "inspector").err());
    Files.setPosixFilePermissions(
        folder.resolve("inspector.key"), PosixFilePermissions.fromString("rw-r--r--"));
    Run signed = sign("M. Lindqvist", "inspector");
    assertEquals(0, signed.code(), flat(signed));
    assertTrue(flat(signed).contains("key: may be read by others than its owner"), flat(signed));
  }

  /** However he writes his name. */
  @Test
  void who_measured_does_not_sign_as_the_inspector() throws IOException {
    at("store", "add", list, sheet("first", GOOD));
    Run own = sign("Adeyemi, R", "inspector");
    assertEquals(64, own.code(), flat(own));
    assertTrue(flat(own).contains("can't sign as its inspector"), flat(own));
    assertEquals(0, sign("Adeyemi, R", "tester").code());
  }

  @Test
  void the_inspector_of_readings_that_nobody_put_his_name_to_is_refused() throws IOException {
    Path sheet = sheet("first", GOOD);
    Files.writeString(sheet.resolve("job.csv"), "Name,Value\nserial number,0418\n");
    at("store", "add", list, sheet);
    Run signed = sign("M. Lindqvist", "inspector");
    assertEquals(64, signed.code());
    assertTrue(flat(signed).contains("is not stated"), flat(signed));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "RAdeyemi",
        "\uff32\uff0e Adeyemi",
        "R. Ade\u200byemi",
        "R. Adey\u00e9mi",
        "RA",
        "Rolf Adeyemi"
      })
  void who_measured_is_known_however_he_writes_his_name(String who) throws IOException {
    at("store", "add", list, sheet("first", GOOD));
    Run own = sign(who, "inspector");
    assertEquals(64, own.code(), flat(own));
  }

  /** A note of several lines could look like what the program itself says. */
  @Test
  void what_somebody_says_stays_in_one_line() throws IOException {
    at("store", "add", list, sheet("first", GOOD));
    String forged = "ok\n      signed by M. Lindqvist as inspector, key 0000";
    assertEquals(0, at("store", "note", "unit:0418", forged, "--who", "R. Adeyemi").code());
    assertTrue(flat(at("units", "0418")).contains("note: ok signed by"));
    assertEquals(
        List.of(),
        at("units", "0418").out().lines().filter(one -> one.startsWith("      signed")).toList());
    assertEquals(64, at("store", "note", "unit:0418", " ", "--who", "R. Adeyemi").code());
  }

  @Test
  void a_unit_did_not_pass_at_once_where_a_reading_was_taken_back() throws IOException {
    at("store", "add", list, sheet("first", "J1-1,P2-1,OL,\n"));
    at("store", "add", list, sheet("second", GOOD));
    takeBack("first/continuity.csv!C2");
    assertEquals(0, at("check", "unit:0418").code());
    assertTrue(flat(at("lot", "unit:0418")).contains("0 of 1 whose test has an end"));
  }

  /** A record that goes on from another is of no older store. */
  @Test
  void a_record_is_not_continued_over_less_than_it_was_made_from() throws IOException {
    Path older = folder.resolve("older.db");
    at("store", "add", list, sheet("first", GOOD));
    assertEquals(0, at("store", "backup", older).code());
    at("store", "add", list, sheet("second", "J1-1,P2-1,OL,\n"));
    Path key = folder.resolve("inspector.key");
    Run.of("report", "--new-key", key);
    Path first = folder.resolve("first.html");
    assertEquals(1, at("report", "unit:0418", "-o", first, "--seal", key).code());
    Run less =
        Run.of(
            "report",
            "unit:0418",
            "-o",
            folder.resolve("second.html"),
            "--seal",
            key,
            "--continues",
            first,
            "--store",
            older);
    assertEquals(65, less.code(), flat(less));
    assertTrue(flat(less).contains("is it another store?"), flat(less));
  }
}
