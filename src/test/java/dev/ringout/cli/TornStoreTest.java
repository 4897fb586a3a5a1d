package dev.ringout.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.ringout.support.Run;
import dev.ringout.support.Triggers;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A store whose rows no longer belong together: whatever is asked of it, it is said. */
class TornStoreTest {
  private static final List<String> ASKED =
      List.of(
          "store check",
          "store check --json",
          "units",
          "units 0418",
          "units 0418 --json",
          "check unit:0418",
          "report unit:0418 -o FOLDER/record.html --force",
          "plan unit:0418 --after unit:0418",
          "lot unit:0418",
          "store note unit:0418 seen --who M.Lindqvist",
          "store sign unit:0418 --key FOLDER/key --role lead --who M.Lindqvist",
          "store backup FOLDER/copy.db");

  private static final int PAGE_BYTES = 4096;

  @TempDir Path folder;
  private Path store;

  @BeforeEach
  void fill() throws IOException {
    store = folder.resolve("bench.db");
    SmallUnit unit = new SmallUnit(folder);
    Path list = unit.list();
    for (String name : List.of("first", "second")) {
      Path sheet = unit.sheet(name, "serial number,0418", "operator,R. Adeyemi", "date,2027-03-31");
      assertEquals(0, Run.of("store", "add", list, sheet, "--store", store).code());
    }
    assertEquals(0, Run.of("report", "--new-key", folder.resolve("key")).code());
  }

  private Run asked(String words) throws IOException {
    Files.deleteIfExists(folder.resolve("copy.db"));
    String line = words.replace("FOLDER", folder.toString()) + " --store " + store;
    return Run.of((Object[]) line.split(" ", -1));
  }

  private void change(String sql) throws SQLException {
    try (Connection open = DriverManager.getConnection("jdbc:sqlite:" + store);
        Statement statement = open.createStatement()) {
      statement.execute("pragma foreign_keys = off");
      List<String> triggers = Triggers.takenFrom(statement);
      assertTrue(statement.executeUpdate(sql) > 0, sql);
      // Whoever knows how to change it also knows how to leave no trace of it.
      Triggers.putBack(statement, triggers);
    }
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "delete from harness",
        "delete from harness_part",
        "delete from unit",
        "delete from session",
        "delete from session where number = 1",
        "delete from entry",
        "delete from entry where seq = 1",
        "update harness set digest = 'x'",
        "update unit set harness = 'x'",
        "update session set harness = 'x'",
        "update session set number = -1",
        "update entry set kind = 'taken-back'",
        "update entry set kind = 'signature' where kind = 'verdict'",
        "update entry set body = '' where kind = 'sheet'",
        "update entry set seq = seq + 2147480000"
      })
  void rows_that_somebody_took_out_or_changed_are_missed(String sql) throws Exception {
    change(sql);
    for (String words : ASKED) {
      Run run = asked(words);
      assertNotEquals(ExitCode.DEFECT, run.code(), words + ": " + run.err());
    }
    assertNotEquals(ExitCode.DONE, asked("store check").code());
  }

  /**
   * A page of the file stands twice, and another is lost: as a disk that writes astray leaves it.
   */
  @Test
  void pages_of_the_file_that_are_others_are_told() throws Exception {
    byte[] whole = Files.readAllBytes(store);
    int pages = Math.min(18, whole.length / PAGE_BYTES);
    for (int from = 1; from < pages; from++) {
      for (int to : new int[] {from - 1, from + 2}) {
        if (to >= 1 && to < pages) {
          byte[] damaged = whole.clone();
          System.arraycopy(whole, from * PAGE_BYTES, damaged, to * PAGE_BYTES, PAGE_BYTES);
          Files.write(store, damaged);
          Run run = asked("store check");
          assertNotEquals(ExitCode.DEFECT, run.code(), from + " to " + to + ": " + run.err());
        }
      }
    }
  }

  /** In the rows themselves and in what finds them: each is another damage. */
  @Test
  void a_name_that_is_damaged_wherever_it_stands_in_the_file_is_told() throws Exception {
    String digest;
    try (Connection open = DriverManager.getConnection("jdbc:sqlite:" + store);
        Statement statement = open.createStatement();
        ResultSet row = statement.executeQuery("select digest from harness")) {
      digest = row.getString(1);
    }
    byte[] whole = Files.readAllBytes(store);
    String text = new String(whole, StandardCharsets.ISO_8859_1);
    int found = 0;
    for (int at = text.indexOf(digest); at >= 0; at = text.indexOf(digest, at + 1)) {
      byte[] damaged = whole.clone();
      damaged[at] = (byte) '~';
      Files.write(store, damaged);
      for (String words : List.of("store check", "check unit:0418", "units 0418")) {
        Run run = asked(words);
        assertNotEquals(ExitCode.DEFECT, run.code(), at + ", " + words + ": " + run.err());
        assertTrue(run.code() != 0 || !words.startsWith("store"), at + ": " + run.out());
      }
      found++;
    }
    assertTrue(found > 5, found + " places");
  }
}
