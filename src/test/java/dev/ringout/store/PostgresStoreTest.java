package dev.ringout.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.ringout.support.PostgresServer;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A server for a shop. */
class PostgresStoreTest extends StoreContract implements StoreContract.OnPostgres {
  private static final PostgresServer SERVER = PostgresServer.running();

  @TempDir private Path folder;

  @Override
  StoreAddress nothing() {
    try {
      return StoreAddress.of(SERVER.address(SERVER.database()));
    } catch (StoreTrouble e) {
      throw new IllegalStateException(e);
    }
  }

  @Override
  Map<String, String> environment() {
    return Map.of("PGPASSWORD", SERVER.password());
  }

  @Override
  String changedPart() {
    return "update harness_part set content = '\\x41'";
  }

  private static String quoted(String password) {
    return "'" + password.replace("'", "''") + "'";
  }

  @Test
  void the_role_of_a_bench_reads_and_adds_and_does_nothing_else() throws Exception {
    String database = SERVER.database();
    SERVER.sql("postgres", "create role \"bench 1\" login password " + quoted(SERVER.password()));
    StoreAddress owner = StoreAddress.of(SERVER.address(database));
    Stores.migrate(owner, environment(), Optional.of("bench 1"));
    StoreAddress bench = StoreAddress.of(SERVER.address(database, "bench%201"));
    try (Store store = Stores.open(bench, environment(), true)) {
      assertEquals(Store.Added.ADDED, store.add(sheet("0418", "a", "1")));
      assertEquals(1, Stores.check(store).sessions());
      String test = store.sessions(store.units().get(0).unit()).get(0).id();
      Lease lease = store.lead(test, "bench 1", "R. Adeyemi");
      store.goOn(lease, "J1-A to J2-A");
      store.giveBack(lease);
    }
    for (String table : JdbcStore.TABLES) {
      for (String sql :
          new String[] {
            "update " + table + " set harness = harness",
            "update " + table + " set digest = digest",
            "update " + table + " set body = body",
            "delete from " + table,
            "truncate " + table + " cascade",
            "drop table " + table + " cascade",
            "alter table " + table + " add column x integer"
          }) {
        try (Connection connection = Stores.engine(bench, environment()).open(true);
            Statement statement = connection.createStatement()) {
          SQLException refused =
              assertThrows(SQLException.class, () -> statement.execute(sql), sql);
          boolean noSuchColumn = "42703".equals(refused.getSQLState());
          assertTrue(noSuchColumn || "42501".equals(refused.getSQLState()), sql + ": " + refused);
        }
      }
    }
    StoreAddress empty = StoreAddress.of(SERVER.address(SERVER.database(), "bench%201"));
    StoreTrouble denied =
        assertThrows(
            StoreTrouble.class, () -> Stores.migrate(empty, environment(), Optional.empty()));
    assertEquals(StoreTrouble.Reason.DENIED, denied.reason(), denied.text());
  }

  /** What may change rows by another way than the grant is no bench's role. */
  @Test
  void a_role_that_may_do_more_than_read_and_add_is_refused() throws Exception {
    StoreAddress address = nothing();
    Stores.migrate(address, environment(), Optional.empty());
    String owner = "";
    try (Connection connection = Stores.engine(address, environment()).open(true);
        Statement statement = connection.createStatement()) {
      owner = connection.getMetaData().getUserName();
      statement.execute("grant delete on entry to public");
    }
    for (String role : List.of("public", "bench 1", owner)) {
      StoreTrouble refused =
          assertThrows(
              StoreTrouble.class,
              () -> Stores.migrate(address, environment(), Optional.of(role)),
              role);
      assertTrue(refused.text().startsWith("nothing was granted: "), refused.text());
    }
    try (Store store = Stores.open(address, environment(), true)) {
      assertEquals(Store.Added.ADDED, store.add(sheet("0418", "a", "1")), "the owner still may");
    }
  }

  @Test
  void a_wrong_password_is_told_without_it() throws Exception {
    StoreAddress address = nothing();
    StoreTrouble denied =
        assertThrows(
            StoreTrouble.class,
            () -> Stores.open(address, Map.of("PGPASSWORD", "my secret"), true));
    assertEquals(StoreTrouble.Reason.DENIED, denied.reason());
    assertFalse(denied.text().contains("my secret"));
    StoreAddress typed = StoreAddress.of(address.shown().replace("://", "://owner:my%20secret@"));
    assertFalse(typed.shown().contains("secret"), typed.shown());
    assertFalse(typed.toString().contains("secret"), typed.toString());
  }

  @Test
  void a_server_that_is_not_there_is_missing() throws Exception {
    StoreTrouble missing =
        assertThrows(
            StoreTrouble.class,
            () -> Stores.open(StoreAddress.of("postgresql://127.0.0.1:9/shop"), Map.of(), true));
    assertEquals(StoreTrouble.Reason.MISSING, missing.reason(), missing.text());
    StoreTrouble none =
        assertThrows(
            StoreTrouble.class,
            () -> Stores.open(StoreAddress.of(SERVER.address("nowhere")), environment(), true));
    assertTrue(none.text().contains("no such database"), none.text());
  }

  /** A slip in the option for TLS would be no TLS. */
  @Test
  void an_option_that_the_driver_does_not_know_is_refused() throws Exception {
    StoreAddress address = StoreAddress.of(nothing().shown() + "?sslmod=verify-full");
    StoreTrouble unknown =
        assertThrows(StoreTrouble.class, () -> Stores.open(address, environment(), false));
    assertTrue(unknown.text().contains("does not know: sslmod"), unknown.text());
  }

  @Test
  void an_address_that_is_none_is_told_without_being_repeated() {
    StoreTrouble none =
        assertThrows(StoreTrouble.class, () -> StoreAddress.of("postgresql://me:secret@/"));
    assertFalse(none.text().contains("secret"));
    assertThrows(StoreTrouble.class, () -> StoreAddress.of("postgresql://h ost/x"));
  }

  @Test
  void from_file_to_server_and_back_all_digests_are_the_same() throws Exception {
    StoreAddress file = new StoreAddress.OnFile(folder.resolve("bench.db"));
    StoreAddress back = new StoreAddress.OnFile(folder.resolve("back.db"));
    StoreAddress server = nothing();
    for (StoreAddress one : new StoreAddress[] {file, back, server}) {
      Stores.migrate(one, environment(), Optional.empty());
    }
    try (Store from = Stores.open(file, environment(), true);
        Store shop = Stores.open(server, environment(), true);
        Store to = Stores.open(back, environment(), true)) {
      // A server sorts them as its language does, a file by their bytes.
      from.keep(new Station("bench 1", "2026-11-30T10:00:00Z", "operator\tR. Adeyemi"));
      from.keep(new Station("Bench 2", "2026-11-30T10:00:00Z", "operator\tR. Adeyemi"));
      from.add(sheet("0418", "a", "1\nA\t\tΩ ∞ é e\u0301 \\ 'x'"));
      from.add(sheet("0418", "b", "2"));
      from.add(sheet("0419", "c", "1"));
      assertEquals(3, Stores.copy(from, shop).sessions());
      assertEquals(0, Stores.copy(from, shop).sessions(), "what is there is not copied again");
      assertEquals(3, Stores.copy(shop, to).sessions());
      StoreState first = Stores.check(from);
      assertEquals(first, Stores.check(shop));
      assertEquals(first, Stores.check(to));
    }
  }
}
