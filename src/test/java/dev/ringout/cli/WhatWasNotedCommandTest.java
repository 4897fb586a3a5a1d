package dev.ringout.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.ringout.store.Entry;
import dev.ringout.store.EntryKind;
import dev.ringout.store.Photo;
import dev.ringout.store.Session;
import dev.ringout.store.Store;
import dev.ringout.store.StoreAddress;
import dev.ringout.store.StoreTrouble;
import dev.ringout.store.StoredUnit;
import dev.ringout.store.Stores;
import dev.ringout.store.Tick;
import dev.ringout.support.DrawnPhotograph;
import dev.ringout.support.Run;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What was said of a unit of the store, in the record of the unit. */
class WhatWasNotedCommandTest {
  private static final String AT = "2026-11-20T08:15:30Z";
  private static final byte[] PICTURE = DrawnPhotograph.of("png", 300, 200);

  @TempDir Path folder;

  private Path list = Path.of("");
  private Path sheet = Path.of("");

  @BeforeEach
  void a_good_unit_in_the_store() throws IOException {
    SmallUnit unit = new SmallUnit(folder);
    list = unit.list();
    sheet = unit.sheet("first", "serial number,0418", "operator,R. Adeyemi");
    assertEquals(0, at("store", "add", list, sheet).code());
  }

  private Run at(Object... words) {
    List<Object> all = new ArrayList<>(List.of(words));
    all.addAll(List.of("--store", store()));
    return Run.of(all.toArray());
  }

  private Path store() {
    return folder.resolve("bench.db");
  }

  private void note(String words) {
    assertEquals(0, at("store", "note", "unit:0418", words, "--who", "R. Adeyemi").code());
  }

  /** As a bench adds to the last test of a unit; a sheet's test ends with a verdict again. */
  private void add(EntryKind kind, String who, String body) throws StoreTrouble {
    try (Store store = Stores.open(StoreAddress.of(store().toString()), Map.of(), true)) {
      StoredUnit unit = store.units().get(0).unit();
      List<Session> sessions = store.sessions(unit);
      Session last = sessions.get(sessions.size() - 1);
      List<Entry> entries = store.entries(last);
      String verdict =
          entries.stream()
              .filter(one -> one.is(EntryKind.VERDICT))
              .findFirst()
              .orElseThrow()
              .body();
      store.append(
          last,
          store.head(last.id()).orElseThrow(),
          List.of(
              new Entry.Draft(kind, AT, who, body),
              new Entry.Draft(EntryKind.VERDICT, AT, who, verdict)));
    }
  }

  private void photograph(String type, String text, byte[] bytes) throws StoreTrouble {
    add(EntryKind.PHOTO, "R. Adeyemi", new Photo(type, text, "J1-A to P1-1", bytes).body());
  }

  private String record(String name) throws IOException {
    Path record = folder.resolve(name);
    Run run = at("report", "unit:0418", "-o", record);
    assertTrue(run.code() <= 2, run.err());
    return Files.readString(record);
  }

  @Test
  void a_note_is_told_where_the_unit_is_checked_and_changes_no_verdict() {
    assertEquals("", at("check", "unit:0418").err());
    note("lid missing, \u001B[2Jwires checked by eye");
    Run run = at("check", "unit:0418");
    assertEquals(0, run.code());
    assertTrue(run.out().startsWith("CONFORMS."), run.out());
    assertTrue(run.err().startsWith("warning: unit:0418: noted by R. Adeyemi, 20"), run.err());
    assertTrue(run.err().contains("wires checked by eye\""), run.err());
    assertFalse(run.err().contains("\u001B"), run.err());
    assertEquals("", Run.of("check", list, sheet).err());
    String beside = at("check", list, sheet, "unit:0418").err();
    assertTrue(beside.startsWith("warning: unit:0418: noted by"), beside);
  }

  @Test
  void all_that_was_said_stands_in_the_record_and_changes_no_verdict() throws Exception {
    int before = at("report", "unit:0418", "-o", folder.resolve("before.html")).code();
    note("lid missing");
    photograph("image/png", "contact <b>backed</b> out", PICTURE);
    add(EntryKind.TICK, "R. Adeyemi", new Tick(Tick.What.MADE, "W1", "J1", "A").body());
    String record = record("record.html");
    assertTrue(record.contains("<h2 id=\"what-was-noted\">What was noted</h2>"));
    assertTrue(record.contains(">lid missing</td>"));
    assertTrue(record.contains("alt=\"Photograph 1: contact &lt;b&gt;backed&lt;/b&gt; out"));
    assertFalse(record.contains("<b>backed"), "what somebody says is no mark of the page");
    assertTrue(record.contains(new Photo("", "", "", PICTURE).digest()));
    assertTrue(record.contains("4 of 4 ends not made and checked by a second person"));
    assertEquals(before, at("report", "unit:0418", "-o", folder.resolve("after.html")).code());
  }

  @Test
  void what_is_taken_back_stands_with_its_points_its_cell_and_why() throws IOException {
    Run back =
        at(
            "store",
            "take-back",
            "unit:0418",
            "first/continuity.csv!D2",
            "--why",
            "probe on the wrong pin",
            "--who",
            "R. Adeyemi");
    assertEquals(0, back.code(), back.err());
    String record = record("record.html");
    assertTrue(record.contains("probe on the wrong pin</td>"), record);
    assertTrue(record.contains("J1-A to P1-1, continuity.csv D2</td>"), record);
  }

  @Test
  void a_signature_stands_with_its_role_and_the_fingerprint_of_its_key() throws IOException {
    Path key = folder.resolve("key");
    String made = Run.of("report", "--new-key", key).out().strip();
    String fingerprint = made.substring(made.indexOf("Fingerprint ") + 12);
    Run signed =
        at(
            "store",
            "sign",
            "unit:0418",
            "--key",
            key,
            "--role",
            "inspector",
            "--who",
            "M. Lindqvist");
    assertEquals(0, signed.code(), signed.err());
    String record = record("record.html").replaceAll("<[^>]*>", "|");
    assertTrue(record.contains("M. Lindqvist||signed as inspector||"), record);
    assertTrue(record.contains("the signature holds; key " + fingerprint), fingerprint);
  }

  @ParameterizedTest
  @ValueSource(strings = {"record.pdf", "record.xlsx", "record.html"})
  void every_form_is_as_sealed_until_a_note_or_a_photograph_is_changed(String form)
      throws Exception {
    note("lid missing");
    photograph("image/png", "contact backed out", PICTURE);
    Path record = folder.resolve(form);
    assertTrue(at("report", "unit:0418", "-o", record).code() <= 2);
    Run whole = at("report", "--verify", record);
    assertTrue(whole.out().contains("as sealed   store: unit 0418, test 1, first"), whole.out());
    assertFalse(whole.out().contains("DIFFERS"), whole.out());
    behindItsBack("update entry set body = 'lid fitted' where kind = 'note'");
    Run note = at("report", "--verify", record);
    assertEquals(1, note.code(), note.out());
    assertTrue(note.out().contains("DIFFERS"), note.out());
    behindItsBack("update entry set body = 'lid missing' where kind = 'note'");
    assertTrue(at("report", "--verify", record).code() != 1, "as it was");
    byte[] other = DrawnPhotograph.of("png", 300, 201);
    String body = new Photo("image/png", "contact backed out", "J1-A to P1-1", other).body();
    behindItsBack("update entry set body = '" + body + "' where kind = 'photo'");
    assertEquals(1, at("report", "--verify", record).code());
    Run again = at("report", "unit:0418", "-o", folder.resolve("again.html"));
    assertEquals(65, again.code(), "and no record is made of it");
  }

  private void behindItsBack(String sql) throws SQLException {
    try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + store());
        Statement statement = connection.createStatement()) {
      statement.execute("drop trigger if exists entry_update");
      assertEquals(1, statement.executeUpdate(sql));
    }
  }

  @Test
  void what_is_no_picture_is_named_and_the_record_is_made_all_the_same() throws Exception {
    photograph("image/webp", "the lid", new byte[] {'R', 'I', 'F', 'F'});
    String record = record("record.html");
    assertTrue(
        record.contains(
            "It is not shown here: it is not a JPEG or PNG (kept as image/webp). R. Adeyemi"));
    assertFalse(record.contains("<img"));
  }

  @Test
  void a_record_of_files_or_of_the_list_alone_tells_nothing_of_it() throws IOException {
    Path files = folder.resolve("files.html");
    at("report", list, sheet, "-o", files);
    String before = Files.readString(files);
    note("lid missing");
    assertTrue(at("report", list, sheet, "-o", files, "--force").code() <= 2);
    assertEquals(before, Files.readString(files));
    Path listAlone = folder.resolve("list.html");
    at("report", "unit:0418", sheet, "-o", listAlone);
    assertFalse(Files.readString(listAlone).contains("What was noted"));
    Path readingsAlone = folder.resolve("readings.html");
    at("report", list, "unit:0418", "-o", readingsAlone);
    assertTrue(Files.readString(readingsAlone).contains("lid missing"));
  }
}
