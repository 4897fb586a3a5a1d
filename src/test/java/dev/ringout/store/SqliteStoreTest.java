package dev.ringout.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.ringout.seal.Digest;
import java.io.IOException;
import java.io.RandomAccessFile;
import java.lang.reflect.Proxy;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** One file for one bench. */
class SqliteStoreTest extends StoreContract {
  @TempDir private Path folder;
  private int stores;

  @Override
  StoreAddress nothing() {
    return new StoreAddress.OnFile(folder.resolve("store" + stores++ + ".db"));
  }

  @Override
  Map<String, String> environment() {
    return Map.of();
  }

  @Override
  String changedPart() {
    return "update harness_part set content = x'41'";
  }

  private static String pragma(Connection connection, String name) throws SQLException {
    try (Statement statement = connection.createStatement();
        ResultSet rows = statement.executeQuery("pragma " + name)) {
      rows.next();
      return rows.getString(1);
    }
  }

  private StoreAddress withOneUnit() throws StoreTrouble {
    StoreAddress address = nothing();
    Stores.migrate(address, environment(), Optional.empty());
    try (Store store = Stores.open(address, environment(), true)) {
      store.add(sheet("0418", "a", "1"));
      store.keep(new Station("bench 1", "2026-11-30T10:00:00Z", "procedure\tHSB-TP-07"));
      store.tell(new SaidOfPeople(SaidOfPeople.Kind.SIGNED_IN, "", "", "A"));
    }
    return address;
  }

  private static Path file(StoreAddress address) {
    return Path.of(address.shown());
  }

  /** With {@code synchronous=NORMAL} 78 of 80 power cuts lost what had been acknowledged. */
  @Test
  void what_keeps_a_power_cut_from_losing_anything_is_in_force() throws Exception {
    StoreAddress address = withOneUnit();
    for (boolean toWrite : new boolean[] {true, false}) {
      try (Connection connection = Stores.engine(address, Map.of()).open(toWrite)) {
        assertEquals("wal", pragma(connection, "journal_mode"));
        assertEquals("2", pragma(connection, "synchronous"), "FULL");
        assertEquals("1", pragma(connection, "foreign_keys"));
      }
    }
  }

  /** An engine whose first connection finds a full disk. */
  private static Engine fullAtFirst(Engine real) {
    boolean[] full = {true};
    return (Engine)
        Proxy.newProxyInstance(
            Engine.class.getClassLoader(),
            new Class<?>[] {Engine.class},
            (proxy, method, given) -> {
              if (method.getName().equals("open")) {
                Connection connection = real.open(true);
                if (full[0]) {
                  full[0] = false;
                  String pages = pragma(connection, "page_count");
                  pragma(connection, "max_page_count = " + pages);
                }
                return connection;
              }
              return method.invoke(real, given);
            });
  }

  /** Found by an attacker: what was refused was kept, and nothing was kept any more. */
  @Test
  void after_a_full_disk_nothing_of_it_is_there_and_the_same_store_goes_on() throws Exception {
    StoreAddress address = withOneUnit();
    String[] many = new String[2000];
    Arrays.fill(many, "a row of a sheet, and what stands in its cells");
    try (Store store = JdbcStore.open(fullAtFirst(Stores.engine(address, Map.of())), true)) {
      StoreTrouble full =
          assertThrows(StoreTrouble.class, () -> store.add(sheet("0419", "b", many)));
      assertEquals(StoreTrouble.Reason.NOT_WRITTEN, full.reason(), full.text());
      assertEquals(List.of(), store.find(Digest.of("0419")));
      assertEquals(Store.Added.ADDED, store.add(sheet("0419", "c", many)));
      assertEquals(List.of(), Stores.check(store).findings());
      assertEquals(1, store.sessions(store.find(Digest.of("0419")).get(0)).size());
    }
  }

  /** Found by an attacker: what was told as kept was in a file that nobody finds any more. */
  @Test
  void nothing_is_kept_in_a_file_that_was_taken_away_or_exchanged() throws Exception {
    StoreAddress address = withOneUnit();
    Path copy = Files.copy(file(address), folder.resolve("copy.db"));
    try (Store store = Stores.open(address, Map.of(), true)) {
      Files.move(file(address), folder.resolve("away.db"));
      assertThrows(StoreTrouble.class, () -> store.add(sheet("0419", "b", "1")));
      Files.move(copy, file(address));
      assertThrows(StoreTrouble.class, () -> store.add(sheet("0419", "b", "1")));
    }
    try (Store store = Stores.open(address, Map.of(), true)) {
      assertEquals(List.of(), store.find(Digest.of("0419")));
      assertEquals(Store.Added.ADDED, store.add(sheet("0419", "b", "1")));
    }
  }

  /**
   * Found by an attacker: a backup was copied over the open file, and what came after it was gone
   * without a word.
   */
  @Test
  void nothing_is_kept_behind_what_is_not_there_any_more() throws Exception {
    StoreAddress address = withOneUnit();
    try (Store store = Stores.open(address, Map.of(), true)) {
      store.settle();
      byte[] backup = Files.readAllBytes(file(address));
      store.add(longSheet("0419", "b"));
      store.settle();
      // In place, as cp does: the file is the same one to whoever holds it open.
      Files.write(file(address), backup);
      for (int i = 0; i < 2; i++) {
        StoreTrouble trouble =
            assertThrows(StoreTrouble.class, () -> store.add(sheet("0420", "c", "1")));
        assertTrue(trouble.text().contains("was set back while it was open"), trouble.text());
      }
    }
    try (Store store = Stores.open(address, Map.of(), true)) {
      assertEquals(List.of(), store.find(Digest.of("0420")));
    }
  }

  /** The log beside it has all since the backup, and is read before the file. */
  @Test
  void a_backup_put_over_the_file_alone_takes_nothing_away_that_stands_in_the_log()
      throws Exception {
    StoreAddress address = withOneUnit();
    try (Store store = Stores.open(address, Map.of(), true)) {
      store.settle();
      byte[] backup = Files.readAllBytes(file(address));
      store.add(longSheet("0419", "b"));
      Files.write(file(address), backup);
      assertEquals(Store.Added.ADDED, store.add(sheet("0420", "c", "1")));
    }
    try (Store store = Stores.open(address, Map.of(), false)) {
      assertEquals(List.of(), Stores.check(store).findings());
      assertEquals(2, store.find(Digest.of("0419")).size() + store.find(Digest.of("0420")).size());
    }
  }

  /** On more than one page. */
  private static NewSession longSheet(String serial, String id) {
    String[] rows = new String[60];
    Arrays.fill(rows, "a row of a sheet, and what stands in its cells".repeat(20));
    return sheet(serial, id, rows);
  }

  /** Found by an attacker: what was added last stands in the log alone until the file is closed. */
  @Test
  void nothing_is_kept_once_the_log_was_taken_away_and_what_was_there_is_saved() throws Exception {
    StoreAddress address = withOneUnit();
    Path log = folder.resolve(file(address).getFileName() + "-wal");
    try (Store store = Stores.open(address, Map.of(), true)) {
      store.add(sheet("0419", "b", "1"));
      Files.delete(log);
      StoreTrouble gone =
          assertThrows(StoreTrouble.class, () -> store.add(sheet("0420", "c", "1")));
      assertTrue(gone.text().contains(".saved"), gone.text());
    }
    Path saved = folder.resolve(file(address).getFileName() + ".saved");
    try (Store store = Stores.open(StoreAddress.of(saved.toString()), Map.of(), false)) {
      assertEquals(1, store.find(Digest.of("0419")).size());
      assertEquals(List.of(), store.find(Digest.of("0420")));
      assertEquals(List.of(), Stores.check(store).findings());
    }
  }

  /** Found by an attacker: a copy of the file alone was empty, and whole. */
  @Test
  void a_copy_of_the_file_alone_has_all_once_it_was_settled() throws Exception {
    StoreAddress address = withOneUnit();
    try (Store store = Stores.open(address, Map.of(), true)) {
      store.add(sheet("0419", "b", "1"));
      store.settle();
      Path copy = Files.copy(file(address), folder.resolve("copy.db"));
      try (Store copied = Stores.open(StoreAddress.of(copy.toString()), Map.of(), false)) {
        assertEquals(1, copied.find(Digest.of("0419")).size());
      }
    }
  }

  @Test
  void entries_are_neither_changed_nor_taken_away_through_the_file_s_own_rules() throws Exception {
    StoreAddress address = withOneUnit();
    for (String table : JdbcStore.TABLES) {
      for (String sql :
          new String[] {"delete from " + table, "update " + table + " set " + column(table)}) {
        try (Connection connection = Stores.engine(address, Map.of()).open(true);
            Statement statement = connection.createStatement()) {
          SQLException refused =
              assertThrows(SQLException.class, () -> statement.execute(sql), sql);
          String told = String.valueOf(refused.getMessage());
          assertTrue(told.contains("rows are only added"), told);
        }
      }
    }
  }

  /** To a trigger an insert that replaces is no deletion. */
  @ParameterizedTest
  @ValueSource(
      strings = {"harness", "harness_part", "unit", "session", "entry", "station", "people"})
  void a_row_is_not_replaced_by_adding_it_again(String table) throws Exception {
    StoreAddress address = withOneUnit();
    try (Store store = Stores.open(address, Map.of(), true)) {
      store.keep(new Station("bench 1", "2026-11-30T10:00:00Z", "calibration due\t2027-03-31"));
    }
    String before;
    try (Store store = Stores.open(address, Map.of(), false)) {
      before = Stores.check(store).digest();
    }
    String column = column(table).split(" = ", -1)[0];
    try (Connection connection = Stores.engine(address, Map.of()).open(true);
        Statement statement = connection.createStatement()) {
      statement.execute("create temporary table other as select * from " + table);
      statement.execute("update other set " + column + " = 'another'");
      statement.execute("insert or replace into " + table + " select * from other");
    } catch (SQLException e) {
      assertTrue(String.valueOf(e.getMessage()).contains("rows are only added"), e.getMessage());
    }
    try (Store store = Stores.open(address, Map.of(), false)) {
      assertEquals(before, Stores.check(store).digest());
      assertEquals(List.of(), Stores.check(store).findings());
    }
  }

  private static String column(String table) {
    return switch (table) {
      case "harness" -> "title = ''";
      case "harness_part" -> "name = ''";
      case "unit" -> "serial = ''";
      case "session" -> "who = ''";
      default -> "body = ''";
    };
  }

  /** The triggers can be dropped by who has the file; the chains still tell. */
  @Override
  void behindItsBack(StoreAddress address, String sql) throws SQLException, StoreTrouble {
    try (Connection connection = Stores.engine(address, environment()).open(true);
        Statement statement = connection.createStatement()) {
      statement.execute("pragma foreign_keys = off");
      for (String table : JdbcStore.TABLES) {
        statement.execute("drop trigger if exists " + table + "_update");
        statement.execute("drop trigger if exists " + table + "_delete");
      }
      statement.execute(sql);
    }
  }

  /** What is in the file and is read by nobody would not be missed. */
  @ParameterizedTest
  @ValueSource(strings = {"unit", "harness", "harness_part", "session where number = 2", "session"})
  void what_lost_its_unit_its_list_or_its_test_is_seen(String taken) throws Exception {
    StoreAddress address = nothing();
    Stores.migrate(address, Map.of(), Optional.empty());
    try (Store store = Stores.open(address, Map.of(), true)) {
      store.add(StoreContract.sheet("0418", "a", "1"));
      store.add(StoreContract.sheet("0418", "b", "1"));
    }
    behindItsBack(address, "delete from " + taken);
    try (Store store = Stores.open(address, Map.of(), false)) {
      assertFalse(Stores.check(store).findings().isEmpty(), taken);
    }
  }

  /** A page of an index that lost its last row: the index would hide a test. */
  @Test
  void a_damaged_index_hides_no_test_and_is_told() throws Exception {
    StoreAddress address = nothing();
    Stores.migrate(address, Map.of(), Optional.empty());
    long root;
    int size;
    try (Store store = Stores.open(address, Map.of(), true)) {
      store.add(StoreContract.sheet("0418", "a", "1"));
      store.add(StoreContract.sheet("0418", "b", "1"));
    }
    try (Connection connection = Stores.engine(address, environment()).open(true);
        Statement statement = connection.createStatement()) {
      root =
          number(
              statement,
              "select rootpage from sqlite_master where name = 'sqlite_autoindex_session_2'");
      size = (int) number(statement, "pragma page_size");
    }
    byte[] bytes = Files.readAllBytes(file(address));
    int rows = (int) (root - 1) * size + 4;
    assertEquals(2, bytes[rows]);
    bytes[rows] = 1;
    Files.write(file(address), bytes);
    try (Store store = Stores.open(address, Map.of(), false)) {
      assertEquals(2, store.sessions(store.find(Digest.of("0418")).get(0)).size());
      assertTrue(
          Stores.check(store).findings().stream()
              .anyMatch(finding -> finding.kind() == StoreFinding.Kind.DAMAGED));
    }
  }

  private static long number(Statement statement, String sql) throws SQLException {
    try (ResultSet rows = statement.executeQuery(sql)) {
      assertTrue(rows.next(), sql);
      return rows.getLong(1);
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"2.1", "99", "next"})
  void a_version_that_this_program_would_not_write_is_a_later_ones(String version)
      throws Exception {
    StoreAddress address = nothing();
    Stores.migrate(address, Map.of(), Optional.empty());
    behindItsBack(address, "update " + Migrations.HISTORY + " set version = '" + version + "'");
    StoreTrouble later =
        assertThrows(StoreTrouble.class, () -> Stores.open(address, Map.of(), false));
    assertTrue(later.text().startsWith("is of a later version"), later.text());
  }

  @Test
  void a_file_that_is_not_there_is_no_store_and_is_not_made_by_looking() {
    StoreAddress address = nothing();
    StoreTrouble none =
        assertThrows(StoreTrouble.class, () -> Stores.open(address, Map.of(), false));
    assertEquals(StoreTrouble.Reason.MISSING, none.reason());
    assertFalse(Files.exists(file(address)));
  }

  @Test
  void a_file_of_something_else_is_left_as_it_is() throws IOException {
    Path letter = Files.writeString(folder.resolve("letter.txt"), "Dear sir, ".repeat(200));
    byte[] before = Files.readAllBytes(letter);
    StoreAddress address = new StoreAddress.OnFile(letter);
    for (boolean toWrite : new boolean[] {false, true}) {
      StoreTrouble none =
          assertThrows(StoreTrouble.class, () -> Stores.open(address, Map.of(), toWrite));
      assertEquals(StoreTrouble.Reason.NOT_UNDERSTOOD, none.reason(), none.text());
    }
    assertThrows(StoreTrouble.class, () -> Stores.migrate(address, Map.of(), Optional.empty()));
    assertTrue(java.util.Arrays.equals(before, Files.readAllBytes(letter)));
  }

  /** What the accidents of src/bench/store-accidents.sh come to, by SQLite's own codes. */
  @ParameterizedTest
  @CsvSource({
    "5,NOT_WRITTEN,is being written by another program",
    "8,NOT_WRITTEN,may only be read",
    "10,NOT_WRITTEN,disk full?",
    "13,NOT_WRITTEN,the disk is full; nothing was added",
    "778,NOT_WRITTEN,disk full?",
    "11,NOT_UNDERSTOOD,take the last backup",
    "26,NOT_UNDERSTOOD,is not a store",
    "14,MISSING,can't be opened"
  })
  void an_accident_is_told_by_what_it_is(int code, StoreTrouble.Reason reason, String text) {
    StoreTrouble told =
        new SqliteEngine(folder.resolve("x.db")).trouble(new SQLException("said", null, code));
    assertEquals(reason, told.reason());
    assertTrue(told.text().contains(text), told.text());
  }

  @Test
  void a_folder_is_no_store() {
    StoreTrouble none =
        assertThrows(
            StoreTrouble.class, () -> Stores.open(new StoreAddress.OnFile(folder), Map.of(), true));
    assertTrue(none.text().contains("is a folder"), none.text());
  }

  @Test
  void a_damaged_file_is_told_and_not_mended() throws Exception {
    StoreAddress address = nothing();
    Stores.migrate(address, environment(), Optional.empty());
    try (Store store = Stores.open(address, environment(), true)) {
      for (int i = 0; i < 60; i++) {
        store.add(sheet("04" + i, "s" + i, "x".repeat(3000)));
      }
    }
    try (RandomAccessFile raw = new RandomAccessFile(file(address).toFile(), "rw")) {
      for (long at = 4096 * 3L; at < raw.length(); at += 4096) {
        raw.seek(at);
        raw.write(new byte[200]);
      }
    }
    StoreTrouble damaged =
        assertThrows(
            StoreTrouble.class,
            () -> {
              try (Store store = Stores.open(address, environment(), false)) {
                Stores.check(store);
              }
            });
    assertEquals(StoreTrouble.Reason.NOT_UNDERSTOOD, damaged.reason());
    assertTrue(damaged.text().contains("take the last backup"), damaged.text());
  }

  @Test
  void a_store_that_another_program_holds_is_waited_for_and_then_told() throws Exception {
    StoreAddress address = withOneUnit();
    try (Connection other = Stores.engine(address, Map.of()).open(true);
        Statement statement = other.createStatement()) {
      statement.execute("begin immediate");
      try (Store store = Stores.open(address, Map.of(), false)) {
        assertEquals(1, store.units().size(), "reading goes on meanwhile");
      }
      statement.execute("rollback");
    }
  }
}
