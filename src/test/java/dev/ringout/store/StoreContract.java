package dev.ringout.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.ringout.seal.Digest;
import dev.ringout.source.FileBytes;
import dev.ringout.store.StoreFinding.Kind;
import java.nio.charset.StandardCharsets;
import java.security.KeyPair;
import java.security.KeyPairGenerator;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** What a store promises, on whichever engine. */
abstract class StoreContract {
  /** Where a new store may be, in which there is nothing. */
  abstract StoreAddress nothing();

  /** Where the passwords stand. */
  abstract Map<String, String> environment();

  private StoreAddress empty() throws StoreTrouble {
    StoreAddress address = nothing();
    Stores.migrate(address, environment(), Optional.empty());
    return address;
  }

  private Store open(StoreAddress address) throws StoreTrouble {
    return Stores.open(address, environment(), true);
  }

  /** Runs a statement past the store, as somebody with a tool of his own would. */
  void behindItsBack(StoreAddress address, String sql) throws SQLException, StoreTrouble {
    try (Connection connection = Stores.engine(address, environment()).open(true);
        Statement statement = connection.createStatement()) {
      statement.execute(sql);
    }
  }

  static HarnessFile list(String text) {
    FileBytes part = FileBytes.of("wires.csv", text.getBytes(StandardCharsets.UTF_8));
    List<FileBytes> parts = List.of(part);
    return new HarnessFile(
        HarnessFile.digest(false, parts), "Bridge cable", "HSB-1", "A", "wires.csv", false, parts);
  }

  static NewSession sheet(String serial, String id, String... rows) {
    HarnessFile list = list("Wire,From,To\nW1,J1-A,P2-1\n");
    List<Entry.Draft> entries = new ArrayList<>();
    entries.add(new Entry.Draft(EntryKind.SHEET, "", "", "Continuity\t\tContinuity\t\n\t\n\n"));
    for (String row : rows) {
      entries.add(new Entry.Draft(EntryKind.READING, "2026-11-30T10:00", "R. Adeyemi", row));
    }
    entries.add(new Entry.Draft(EntryKind.VERDICT, "", "", "verdict\tconforms"));
    Session session =
        new Session(
            (id + "-" + "0".repeat(36)).substring(0, 36),
            Digest.of(serial),
            list.digest(),
            1,
            "bench 1",
            "R. Adeyemi",
            "2026-11-30",
            "sheet.xlsx",
            Digest.of(id),
            "ringout test",
            "2026-11-30T10:00:00Z");
    return new NewSession(list, serial, session, "folder/sheet.xlsx", entries);
  }

  @Test
  void what_is_added_is_there_as_it_was_with_the_list_whole() throws StoreTrouble {
    StoreAddress address = empty();
    try (Store store = open(address)) {
      assertEquals(Store.Added.ADDED, store.add(sheet("0418", "a", "14\nA\t\tJ1-A", "15")));
    }
    try (Store store = Stores.open(address, environment(), false)) {
      StoredUnit unit = store.find(Digest.of("0418")).get(0);
      assertEquals("0418", unit.serial());
      assertEquals("A", unit.revision());
      HarnessFile list = store.harness(unit.harness()).orElseThrow();
      assertEquals(
          "Wire,From,To\nW1,J1-A,P2-1\n",
          StandardCharsets.UTF_8.decode(list.parts().get(0).buffer()).toString());
      Session session = store.sessions(unit).get(0);
      List<Entry> entries = store.entries(session);
      assertEquals(4, entries.size());
      assertEquals("14\nA\t\tJ1-A", entries.get(1).body());
      assertEquals("R. Adeyemi", entries.get(1).who());
      assertEquals(List.of(), Stores.check(store).findings());
    }
  }

  @Test
  void the_same_sheet_twice_adds_nothing() throws StoreTrouble {
    try (Store store = open(empty())) {
      store.add(sheet("0418", "a", "1"));
      assertEquals(Store.Added.WAS_THERE, store.add(sheet("0418", "a", "1")));
      assertEquals(1, Stores.check(store).sessions());
    }
  }

  @Test
  void a_second_sheet_of_a_unit_has_the_next_number_and_a_name_of_its_own() throws StoreTrouble {
    try (Store store = open(empty())) {
      store.add(sheet("0418", "a", "1"));
      store.add(sheet("0418", "b", "1"));
      store.add(sheet("0418", "c", "1"));
      List<Session> sessions = store.sessions(store.units().get(0).unit());
      assertEquals(List.of(1, 2, 3), sessions.stream().map(Session::number).toList());
      assertEquals(
          List.of("sheet.xlsx", "folder/sheet.xlsx", "folder/sheet.xlsx (2)"),
          sessions.stream().map(Session::file).toList());
    }
  }

  @Test
  void a_serial_number_is_any_text() throws StoreTrouble {
    try (Store store = open(empty())) {
      List<String> serials =
          List.of(
              "O'Brien\"; drop table entry; --", "❄ 0418 \ud83d\udd27", "x".repeat(10_000), "%_\\");
      for (int i = 0; i < serials.size(); i++) {
        store.add(sheet(serials.get(i), "s" + i, "1"));
      }
      for (String serial : serials) {
        assertEquals(serial, store.find(Digest.of(serial)).get(0).serial());
      }
      assertEquals(List.of(), Stores.check(store).findings());
    }
  }

  @Test
  void the_units_stand_with_their_last_verdict() throws StoreTrouble {
    try (Store store = open(empty())) {
      store.add(sheet("0418", "a", "1"));
      store.add(sheet("0418", "b", "1"));
      store.add(sheet("0419", "c", "1"));
      List<UnitSummary> units = store.units();
      assertEquals(2, units.size());
      UnitSummary first =
          units.stream()
              .filter(one -> one.unit().serial().equals("0418"))
              .findFirst()
              .orElseThrow();
      assertEquals(2, first.sessions());
      assertEquals("verdict\tconforms", first.verdict().body());
    }
  }

  private List<Kind> after(String... tampering) throws StoreTrouble, SQLException {
    StoreAddress address = empty();
    try (Store store = open(address)) {
      store.add(sheet("0418", "a", "1\nA\t\t0.31", "2"));
      store.add(sheet("0418", "b", "1"));
      store.add(sheet("0419", "c", "1"));
    }
    for (String one : tampering) {
      behindItsBack(address, one);
    }
    try (Store store = open(address)) {
      return Stores.check(store).findings().stream().map(StoreFinding::kind).toList();
    }
  }

  @Test
  void a_reading_that_was_changed_is_found() throws Exception {
    assertEquals(
        List.of(Kind.ENTRY_CHANGED), after("update entry set body = '1' where body like '%0.31'"));
  }

  @Test
  void an_entry_that_was_taken_out_is_found() throws Exception {
    assertEquals(List.of(Kind.ENTRY_MISSING), after("delete from entry where body like '%0.31'"));
  }

  @Test
  void an_entry_that_was_taken_out_and_the_others_moved_up_is_found() throws Exception {
    assertEquals(
        List.of(Kind.ENTRY_CHANGED),
        after(
            "delete from entry where body like '%0.31'",
            "update entry set seq = seq - 1 where session like 'a%' and seq = 3",
            "update entry set seq = seq - 1 where session like 'a%' and seq = 4"));
  }

  @Test
  void the_end_of_a_test_that_was_cut_off_is_found() throws Exception {
    assertEquals(
        List.of(Kind.END_MISSING),
        after("delete from entry where session like 'a%' and kind = 'verdict'"));
  }

  @Test
  void a_test_that_was_taken_out_is_found_by_the_next() throws Exception {
    assertEquals(
        List.of(Kind.SESSION_MISSING),
        after(
            "delete from entry where session like 'a%'", "delete from session where id like 'a%'"));
  }

  @Test
  void who_tested_can_t_be_exchanged_afterwards() throws Exception {
    assertEquals(
        List.of(Kind.CHAIN_BROKEN), after("update session set who = 'X' where id like 'a%'"));
  }

  @Test
  void a_list_that_was_exchanged_is_found() throws Exception {
    assertEquals(List.of(Kind.LIST_CHANGED), after(changedPart()));
  }

  /** Statements differ in how they write bytes. */
  abstract String changedPart();

  private static SaidOfPeople said(SaidOfPeople.Kind kind, String name) {
    return new SaidOfPeople(kind, "2026-11-30T10:00:00Z", "M. Lindqvist", name + "\tmore");
  }

  private StoreAddress withPeople() throws StoreTrouble {
    StoreAddress address = empty();
    try (Store store = open(address)) {
      store.decide(
          0, List.of(said(SaidOfPeople.Kind.ADDED, "A"), said(SaidOfPeople.Kind.PASSPHRASE, "A")));
      store.tell(said(SaidOfPeople.Kind.SIGNED_IN, "A"));
      store.tell(said(SaidOfPeople.Kind.TURNED_AWAY, ""));
      store.decide(2, List.of(said(SaidOfPeople.Kind.ROLES, "A")));
    }
    return address;
  }

  @Test
  void what_decides_who_may_come_in_is_told_from_who_came() throws StoreTrouble {
    try (Store store = open(withPeople())) {
      assertEquals(5, store.people().size());
      assertEquals(
          List.of("added", "passphrase", "roles"),
          store.peopleWhoMay().stream().map(Entry::kind).toList());
      assertEquals(5, store.peopleWhoMay().get(2).seq());
      assertEquals(List.of(), Stores.check(store).findings());
    }
  }

  /** Two terminals at once could take the last two administrators away. */
  @Test
  void who_decides_on_what_has_changed_meanwhile_is_told_so() throws StoreTrouble {
    try (Store store = open(withPeople())) {
      List<SaidOfPeople> gone = List.of(said(SaidOfPeople.Kind.WITHDRAWN, "A"));
      assertThrows(StoreTrouble.class, () -> store.decide(2, gone));
      assertEquals(5, store.people().size());
      store.decide(5, gone);
      assertEquals(6, store.people().size());
    }
  }

  @Test
  void what_is_kept_of_people_is_a_chain_too() throws Exception {
    for (String tampering :
        List.of(
            "update people set body = 'B' where seq = 1",
            "delete from people where seq = 3",
            "update people set who = 'X' where seq = 4")) {
      StoreAddress address = withPeople();
      String before;
      try (Store store = open(address)) {
        before = Stores.check(store).digest();
      }
      behindItsBack(address, tampering);
      try (Store store = open(address)) {
        StoreState state = Stores.check(store);
        assertEquals(1, state.findings().size(), tampering);
        assertEquals("people", state.findings().get(0).file());
      }
      behindItsBack(address, "delete from people where seq > 2");
      try (Store store = open(address)) {
        assertNotEquals(before, Stores.check(store).digest(), "what was cut off is in the digest");
      }
    }
  }

  private static Kind kind(Parted one) {
    return one.finding().kind();
  }

  /** A bench without network lets people in by what it was told before, and keeps that. */
  @Test
  void who_came_in_at_a_bench_without_network_is_told_behind_who_came_in_elsewhere()
      throws StoreTrouble {
    try (Store shop = open(withPeople());
        Store bench = open(empty())) {
      Stores.copy(shop, bench);
      SaidOfPeople here =
          new SaidOfPeople(
              SaidOfPeople.Kind.SIGNED_IN, "2026-12-01T08:00:00Z", "R. Adeyemi", "B\tbench 3");
      bench.tell(here);
      shop.tell(said(SaidOfPeople.Kind.SIGNED_OUT, "A"));
      shop.decide(5, List.of(said(SaidOfPeople.Kind.WITHDRAWN, "A")));
      for (int i = 0; i < 2; i++) {
        assertEquals(List.of(), Stores.copy(bench, shop).parted());
        assertEquals(8, shop.people().size(), "once");
        assertEquals("B\tbench 3", shop.people().get(7).body());
        assertEquals(List.of(), Stores.check(shop).findings());
      }
      // What was decided without the shop is not slipped in behind what the shop decided.
      bench.decide(5, List.of(said(SaidOfPeople.Kind.OUT_EVERYWHERE, "A")));
      List<Parted> parted = Stores.copy(bench, shop).parted();
      assertEquals(List.of(Kind.TWO_HISTORIES), parted.stream().map(StoreContract::kind).toList());
      assertEquals("signed_out", parted.get(0).to().orElseThrow().kind());
      assertEquals(8, shop.people().size());
    }
  }

  /** Whoever has a bench to himself can make himself anybody in its file. */
  @Test
  void what_was_decided_of_people_away_is_taken_where_somebody_says_so() throws StoreTrouble {
    Stores.Taking handedOver = new Stores.Taking(false, Map.of());
    try (Store shop = open(withPeople());
        Store bench = open(empty())) {
      assertEquals(List.of(), Stores.copy(shop, bench, handedOver).parted(), "it has none yet");
      bench.decide(5, List.of(said(SaidOfPeople.Kind.ROLES, "B")));
      bench.tell(said(SaidOfPeople.Kind.KEY_ADDED, "A"));
      bench.tell(said(SaidOfPeople.Kind.SIGNED_IN, "B"));
      for (int i = 0; i < 2; i++) {
        List<Parted> parted = Stores.copy(bench, shop, handedOver).parted();
        assertEquals(
            List.of(Kind.DECIDED_ELSEWHERE, Kind.DECIDED_ELSEWHERE),
            parted.stream().map(StoreContract::kind).toList());
        assertEquals("roles", parted.get(0).from().orElseThrow().kind());
        assertEquals(6, shop.people().size());
        assertEquals("signed_in", shop.people().get(5).kind());
      }
    }
    try (Store shop = open(withPeople());
        Store bench = open(empty())) {
      Stores.copy(shop, bench);
      bench.decide(5, List.of(said(SaidOfPeople.Kind.ROLES, "B")));
      assertEquals(List.of(), Stores.copy(bench, shop, new Stores.Taking(true, Map.of())).parted());
      assertEquals(bench.people(), shop.people());
    }
  }

  @Test
  void people_are_copied_behind_those_that_are_there_and_nothing_where_both_went_on()
      throws StoreTrouble {
    StoreAddress address = withPeople();
    try (Store from = open(address);
        Store to = open(empty())) {
      assertEquals(List.of(), Stores.copy(from, to).parted());
      from.tell(said(SaidOfPeople.Kind.SIGNED_OUT, "A"));
      assertEquals(List.of(), Stores.copy(from, to).parted());
      assertEquals(from.people(), to.people());
      to.tell(said(SaidOfPeople.Kind.SIGNED_IN, "A"));
      assertEquals(List.of(), Stores.copy(from, to).parted(), "has all of it, and more");
      from.decide(5, List.of(said(SaidOfPeople.Kind.ROLES, "B")));
      assertEquals(
          List.of(Kind.TWO_HISTORIES),
          Stores.copy(from, to).parted().stream().map(StoreContract::kind).toList());
      assertEquals(7, to.people().size());
    }
  }

  @Test
  void of_ten_writers_at_once_each_sheet_is_there_once() throws Exception {
    StoreAddress address = empty();
    int writers = 10;
    int sheets = 12;
    ExecutorService pool = Executors.newFixedThreadPool(writers);
    List<Future<Integer>> all = new ArrayList<>();
    for (int w = 0; w < writers; w++) {
      Callable<Integer> writer =
          () -> {
            int added = 0;
            try (Store store = open(address)) {
              for (int i = 0; i < sheets; i++) {
                // All of them bring in the same sheets of two units.
                added += store.add(sheet("04" + i % 2, "s" + i, "1")) == Store.Added.ADDED ? 1 : 0;
              }
            }
            return added;
          };
      all.add(pool.submit(writer));
    }
    int added = 0;
    for (Future<Integer> one : all) {
      added += one.get();
    }
    pool.shutdown();
    assertEquals(sheets, added, "acknowledged once each");
    try (Store store = open(address)) {
      StoreState state = Stores.check(store);
      assertEquals(sheets, state.sessions());
      assertEquals(List.of(), state.findings());
    }
  }

  @Test
  void what_is_made_twice_is_as_it_was() throws StoreTrouble {
    StoreAddress address = empty();
    try (Store store = open(address)) {
      store.add(sheet("0418", "a", "1"));
    }
    Stores.migrate(address, environment(), Optional.empty());
    try (Store store = open(address)) {
      assertEquals(1, Stores.check(store).sessions());
    }
  }

  /** From every version that ever was, with units in it. */
  @Test
  void a_store_of_each_earlier_version_is_taken_along_with_all_that_is_in_it() throws Exception {
    for (int version = 1; version <= Migrations.CURRENT; version++) {
      StoreAddress address = nothing();
      Migrations.migrate(Stores.engine(address, environment()), version);
      for (String row : EarlierRows.of(version, this instanceof OnPostgres)) {
        behindItsBack(address, row);
      }
      if (version < Migrations.CURRENT) {
        StoreTrouble old = assertThrows(StoreTrouble.class, () -> open(address));
        assertTrue(old.text().contains("ringout store migrate"), old.text());
      }
      Stores.migrate(address, environment(), Optional.empty());
      try (Store store = open(address)) {
        StoreState state = Stores.check(store);
        assertEquals(List.of(), state.findings(), "from version " + version);
        assertEquals(1, state.sessions());
        assertEquals(Store.Added.ADDED, store.add(sheet("0500", "z", "1")));
      }
    }
  }

  /** Its engine is told by its test. */
  interface OnPostgres {}

  /** All that is in it, and how it was made. */
  private String whole(StoreAddress address) throws SQLException, StoreTrouble {
    StringBuilder all = new StringBuilder();
    List<String> tables = new ArrayList<>(JdbcStore.TABLES);
    tables.add(Migrations.HISTORY);
    try (Connection connection = Stores.engine(address, environment()).open(true);
        Statement statement = connection.createStatement()) {
      for (String table : tables) {
        try (ResultSet rows = statement.executeQuery("select * from " + table + " order by 1, 2")) {
          while (rows.next()) {
            for (int i = 1; i <= rows.getMetaData().getColumnCount(); i++) {
              all.append(rows.getString(i)).append('|');
            }
            all.append('\n');
          }
        }
      }
    }
    return all.toString();
  }

  @Test
  void a_store_of_a_newer_version_is_left_as_it_is() throws Exception {
    StoreAddress address = empty();
    try (Store store = open(address)) {
      store.add(sheet("0418", "a", "1"));
    }
    behindItsBack(
        address,
        "update " + Migrations.HISTORY + " set \"version\" = '99' where \"version\" = '1'");
    String before = whole(address);
    for (boolean toWrite : new boolean[] {true, false}) {
      StoreTrouble newer =
          assertThrows(StoreTrouble.class, () -> Stores.open(address, environment(), toWrite));
      assertEquals(StoreTrouble.Reason.NOT_UNDERSTOOD, newer.reason());
      assertTrue(newer.text().contains("use a newer ringout"), newer.text());
    }
    StoreTrouble newer =
        assertThrows(
            StoreTrouble.class, () -> Stores.migrate(address, environment(), Optional.empty()));
    assertTrue(newer.text().contains("nothing was changed"), newer.text());
    assertEquals(before, whole(address));
  }

  @Test
  void a_store_of_an_earlier_version_is_left_as_it_is_until_somebody_says_migrate()
      throws Exception {
    StoreAddress address = nothing();
    Migrations.migrate(Stores.engine(address, environment()), Migrations.CURRENT - 1);
    String before = whole(address);
    for (boolean toWrite : new boolean[] {true, false}) {
      StoreTrouble older =
          assertThrows(StoreTrouble.class, () -> Stores.open(address, environment(), toWrite));
      assertTrue(older.text().contains("then say ringout store migrate"), older.text());
    }
    assertEquals(before, whole(address));
  }

  /** A bench stays open for days, and at night somebody takes the store along. */
  @Test
  void a_program_under_whose_hands_the_store_becomes_another_version_adds_nothing_more()
      throws Exception {
    StoreAddress address = empty();
    try (Store store = open(address)) {
      store.add(sheet("0418", "a", "1"));
      behindItsBack(
          address,
          "insert into "
              + Migrations.HISTORY
              + " select \"installed_rank\" + 1, '99', \"description\", \"type\", \"script\","
              + " \"checksum\", \"installed_by\", \"installed_on\", \"execution_time\","
              + " \"success\" from "
              + Migrations.HISTORY
              + " order by 1 desc limit 1");
      String before = whole(address);
      for (int i = 0; i < 2; i++) {
        StoreTrouble refused =
            assertThrows(StoreTrouble.class, () -> store.add(sheet("0418", "b", "1")));
        assertTrue(refused.text().contains("another version while it was open"), refused.text());
        assertThrows(
            StoreTrouble.class, () -> store.append(last(store), end(store), note("lid missing")));
        assertThrows(StoreTrouble.class, () -> store.lead(last(store).id(), "bench 1", "A"));
      }
      assertEquals(before, whole(address));
    }
  }

  /** Killed, started again, killed a little later, and so on until it is through. */
  @Test
  void steps_that_are_killed_half_way_go_on_when_they_are_started_again() throws Exception {
    for (int version : new int[] {0, 1, Migrations.CURRENT - 1}) {
      StoreAddress address = nothing();
      Engine engine = Stores.engine(address, environment());
      if (version > 0) {
        Migrations.migrate(engine, version);
        for (String row : EarlierRows.of(version, this instanceof OnPostgres)) {
          behindItsBack(address, row);
        }
      }
      int kills = 0;
      int statements = 2;
      while (!isThrough(new KilledEngine(engine, statements))) {
        kills++;
        // The last step at every place where it may be cut off, the earlier ones at some.
        statements += version == Migrations.CURRENT - 1 ? 1 : 9;
        if (engine.isThere() && version > 0) {
          // Half way it is of the one version or of the other, and says so.
          openedOrRefused(address);
        }
      }
      assertTrue(kills >= 2, "killed " + kills + " times");
      Stores.migrate(address, environment(), Optional.empty());
      try (Store store = open(address)) {
        StoreState state = Stores.check(store);
        assertEquals(List.of(), state.findings(), "from version " + version);
        assertEquals(version > 0 ? 1 : 0, state.sessions());
        assertEquals(Store.Added.ADDED, store.add(sheet("0500", "z", "1")));
      }
    }
  }

  private static boolean isThrough(Engine engine) {
    try {
      Migrations.migrate(engine, Migrations.CURRENT);
      return true;
    } catch (StoreTrouble e) {
      assertFalse(e.text().contains("exists"), e.text());
      return false;
    }
  }

  private void openedOrRefused(StoreAddress address) {
    try {
      open(address).close();
    } catch (StoreTrouble e) {
      assertTrue(e.text().contains("ringout store migrate"), e.text());
    }
  }

  @Test
  void tables_of_something_else_are_left_alone() throws Exception {
    StoreAddress address = nothing();
    behindItsBack(address, "create table invoices (number integer)");
    StoreTrouble other =
        assertThrows(
            StoreTrouble.class, () -> Stores.migrate(address, environment(), Optional.empty()));
    assertTrue(other.text().contains("holds tables of another program"), other.text());
    StoreTrouble none = assertThrows(StoreTrouble.class, () -> open(address));
    assertTrue(none.text().contains("there is no store there yet"), none.text());
  }

  private static List<Entry.Draft> note(String text) {
    return List.of(
        new Entry.Draft(EntryKind.NOTE, "2026-11-30T11:00:00Z", "M. Lindqvist", text),
        new Entry.Draft(EntryKind.VERDICT, "", "", "verdict\tconforms"));
  }

  private static Session last(Store store) throws StoreTrouble {
    List<Session> sessions = store.sessions(store.units().get(0).unit());
    return sessions.get(sessions.size() - 1);
  }

  private static Head end(Store store) throws StoreTrouble {
    return store.head(last(store).id()).orElseThrow();
  }

  @Test
  void what_is_said_afterwards_follows_in_the_chain_of_the_last_test() throws StoreTrouble {
    try (Store store = open(empty())) {
      store.add(sheet("0418", "a", "1"));
      Head before = end(store);
      store.append(last(store), before, note("lid missing"));
      List<Entry> entries = store.entries(last(store));
      Entry added = entries.get(entries.size() - 2);
      assertEquals("lid missing", added.body());
      assertEquals(before.hash(), added.previous());
      assertEquals(before.seq() + 1, added.seq());
      assertEquals(List.of(), Stores.check(store).findings());
    }
  }

  /** What is said comes with the verdict that was shown then: one without is cut off. */
  @Test
  void what_was_said_afterwards_can_not_be_cut_off_its_verdict() throws Exception {
    StoreAddress address = empty();
    try (Store store = open(address)) {
      store.add(sheet("0418", "a", "1"));
      store.append(last(store), end(store), note("lid missing").subList(0, 1));
      assertEquals(
          List.of(Kind.END_MISSING),
          Stores.check(store).findings().stream().map(StoreFinding::kind).toList());
    }
  }

  /** Two people at two benches: the second one has not seen what the first one said. */
  @Test
  void what_was_added_to_meanwhile_is_looked_at_again() throws StoreTrouble {
    try (Store store = open(empty())) {
      store.add(sheet("0418", "a", "1"));
      Session first = last(store);
      Head before = end(store);
      store.append(first, before, note("lid missing"));
      assertThrows(StoreTrouble.class, () -> store.append(first, before, note("lid there")));
      Head now = end(store);
      store.add(sheet("0418", "b", "1"));
      assertThrows(StoreTrouble.class, () -> store.append(first, now, note("lid there")));
      assertEquals(List.of(), Stores.check(store).findings());
    }
  }

  @Test
  void a_copy_takes_along_what_was_said_since_the_last_one() throws StoreTrouble {
    StoreAddress other = empty();
    try (Store from = open(empty());
        Store to = open(other)) {
      from.add(sheet("0418", "a", "1"));
      Stores.copy(from, to);
      from.append(last(from), end(from), note("lid missing"));
      assertEquals(new Stores.Copy(0, 1, 0, List.of()), Stores.copy(from, to));
      assertEquals(Stores.check(from).digest(), Stores.check(to).digest());
      assertEquals(new Stores.Copy(0, 0, 0, List.of()), Stores.copy(from, to));
      to.append(last(to), end(to), note("found"));
      assertEquals(new Stores.Copy(0, 0, 0, List.of()), Stores.copy(from, to), "TO is ahead");
    }
  }

  @Test
  void what_went_on_in_two_ways_is_told_and_neither_is_changed() throws StoreTrouble {
    StoreAddress other = empty();
    try (Store from = open(empty());
        Store to = open(other)) {
      from.add(sheet("0418", "a", "1"));
      Stores.copy(from, to);
      from.append(last(from), end(from), note("lid missing"));
      to.append(last(to), end(to), note("lid there"));
      String before = Stores.check(to).digest();
      Stores.Copy copied = Stores.copy(from, to);
      assertEquals(
          List.of(Kind.TWO_HISTORIES), copied.parted().stream().map(StoreContract::kind).toList());
      assertEquals(before, Stores.check(to).digest());
    }
  }

  private static Entry.Draft signature(Store store, Map<String, String> tests) throws Exception {
    KeyPair pair = KeyPairGenerator.getInstance("Ed25519").generateKeyPair();
    Signature signature =
        Signature.of(
            "M. Lindqvist",
            "2026-11-30T12:00:00Z",
            "inspector",
            tests,
            end(store).hash(),
            pair.getPublic(),
            pair.getPrivate());
    return new Entry.Draft(
        EntryKind.SIGNATURE, "2026-11-30T12:00:00Z", "M. Lindqvist", signature.body());
  }

  @Test
  void a_signature_is_of_every_test_before_it() throws Exception {
    try (Store store = open(empty())) {
      store.add(sheet("0418", "a", "1"));
      Session first = last(store);
      String head = end(store).hash();
      store.add(sheet("0418", "b", "1"));
      store.append(last(store), end(store), List.of(signature(store, Map.of(first.id(), head))));
      assertEquals(List.of(), Stores.check(store).findings());
      store.append(last(store), end(store), List.of(signature(store, Map.of())));
      assertEquals(
          List.of(Kind.SIGNATURE_WRONG),
          Stores.check(store).findings().stream().map(StoreFinding::kind).toList(),
          "a test before it is left out");
    }
  }

  /** Whoever makes a chain anew has not the key. */
  @Test
  void a_signature_under_something_else_is_seen() throws Exception {
    try (Store store = open(empty())) {
      store.add(sheet("0418", "a", "1"));
      Entry.Draft signature = signature(store, Map.of());
      store.append(
          last(store),
          end(store),
          Stream.concat(note("lid missing").stream(), Stream.of(signature)).toList());
      assertEquals(
          List.of(Kind.SIGNATURE_WRONG),
          Stores.check(store).findings().stream().map(StoreFinding::kind).toList());
    }
  }

  private List<Kind> kinds(StoreAddress address) throws StoreTrouble {
    try (Store store = open(address)) {
      return Stores.check(store).findings().stream().map(StoreFinding::kind).distinct().toList();
    }
  }

  /** Whose readings they are is part of what was written. */
  @Test
  void a_serial_number_or_the_name_of_a_list_that_was_changed_is_seen() throws Exception {
    for (String changed :
        List.of("unit set serial = '0500'", "harness set revision = 'Z', title = 'Other cable'")) {
      StoreAddress address = empty();
      try (Store store = open(address)) {
        store.add(sheet("0418", "a", "1"));
      }
      behindItsBack(address, "update " + changed);
      assertEquals(List.of(Kind.CHAIN_BROKEN), kinds(address), changed);
    }
  }

  /** What the list is called stands in no digest of its bytes: each test says it in its chain. */
  @Test
  void another_name_of_a_list_or_of_its_file_is_seen_where_a_test_says_it() throws Exception {
    for (String changed :
        List.of("harness set file = 'other.csv'", "harness_part set name = 'other.csv'")) {
      StoreAddress address = empty();
      try (Store store = open(address)) {
        store.add(sayingNames(sheet("0418", "a", "1")));
        assertEquals(List.of(), Stores.check(store).findings());
      }
      behindItsBack(address, "update " + changed);
      assertEquals(List.of(Kind.LIST_RENAMED), kinds(address), changed);
    }
  }

  /** Found by damage at random: they stand in no hash. */
  @Test
  void files_of_a_list_are_numbered_from_one_on() throws Exception {
    StoreAddress address = empty();
    try (Store store = open(address)) {
      store.add(sheet("0418", "a", "1"));
    }
    behindItsBack(address, "update harness_part set number = 7");
    assertEquals(List.of(Kind.LIST_CHANGED), kinds(address));
  }

  /** Two benches may be given the same list under two names, and their stores be put together. */
  @Test
  void a_list_keeps_the_name_under_which_it_came_first_whatever_other_tests_call_it()
      throws Exception {
    try (Store one = open(empty());
        Store other = open(empty())) {
      one.add(sayingNames(sheet("0418", "a", "1")));
      NewSession there = sheet("0419", "b", "1");
      HarnessFile list = there.harness();
      HarnessFile renamed =
          new HarnessFile(
              list.digest(),
              list.title(),
              list.drawing(),
              list.revision(),
              "list of bench 2.csv",
              false,
              list.parts());
      other.add(
          sayingNames(
              new NewSession(
                  renamed, there.serial(), there.session(), there.fileAsTyped(), there.entries())));
      Stores.copy(other, one);
      assertEquals(List.of(), Stores.check(one).findings());
      assertEquals("wires.csv", one.harness(list.digest()).orElseThrow().file());
    }
  }

  /** A test that an earlier program kept says nothing, and may have been the first to name it. */
  @Test
  void a_list_that_came_with_a_test_that_says_no_names_is_no_finding() throws Exception {
    StoreAddress address = empty();
    try (Store store = open(address)) {
      store.add(sheet("0418", "a", "1"));
      store.add(sayingNames(sheet("0419", "b", "1")));
    }
    behindItsBack(address, "update harness set file = 'first.csv'");
    assertEquals(List.of(), kinds(address));
  }

  private static NewSession sayingNames(NewSession added) {
    List<Entry.Draft> entries = new ArrayList<>(added.entries());
    entries.add(entries.size() - 1, added.harness().names());
    return new NewSession(
        added.harness(), added.serial(), added.session(), added.fileAsTyped(), entries);
  }

  @Test
  void the_name_of_a_file_of_a_list_is_in_the_digest() throws Exception {
    StoreAddress address = empty();
    String before;
    try (Store store = open(address)) {
      store.add(sheet("0418", "a", "1"));
      before = Stores.check(store).digest();
    }
    behindItsBack(address, "update harness set file = 'other.csv'");
    try (Store store = open(address)) {
      assertNotEquals(before, Stores.check(store).digest());
    }
  }

  /** The list of all units is quick because it derives nothing: it looks at what it shows. */
  @Test
  void a_verdict_that_was_changed_is_seen_where_units_are_listed() throws Exception {
    StoreAddress address = empty();
    try (Store store = open(address)) {
      store.add(sheet("0418", "a", "1"));
      assertTrue(store.units().get(0).verdict().asWritten());
    }
    behindItsBack(address, "update entry set body = 'verdict\tfaults' where kind = 'verdict'");
    try (Store store = open(address)) {
      assertFalse(store.units().get(0).verdict().asWritten());
    }
  }

  /** A shop goes on adding while a copy is made. */
  @Test
  void what_is_held_is_read_as_it_was_whatever_others_add() throws StoreTrouble {
    StoreAddress address = empty();
    try (Store writer = open(address);
        Store reader = Stores.open(address, environment(), false)) {
      writer.add(sheet("0418", "a", "1"));
      reader.hold();
      String before = Stores.check(reader).digest();
      writer.add(sheet("0418", "b", "1"));
      writer.add(sheet("0419", "c", "1"));
      assertEquals(before, Stores.check(reader).digest());
      assertEquals(3, Stores.check(writer).sessions());
    }
  }

  private static Session begun(Store store) throws StoreTrouble {
    store.add(sheet("0418", "a", "1"));
    return last(store);
  }

  /** A program that was stopped in the middle of a reading, and goes on an hour later. */
  @Test
  void who_is_late_with_an_earlier_fence_adds_nothing() throws StoreTrouble {
    StoreAddress address = empty();
    try (Store late = open(address);
        Store store = open(address)) {
      Session test = begun(store);
      Lease before = late.lead(test.id(), "bench 1", "R. Adeyemi");
      Lease now = store.lead(test.id(), "bench 1", "K. Novak");
      assertTrue(now.fence() > before.fence());
      StoreTrouble refused =
          assertThrows(
              StoreTrouble.class,
              () -> late.append(test, end(late), note("late"), Optional.of(before), List.of()));
      assertEquals(StoreTrouble.Reason.TAKEN_OVER, refused.reason());
      assertTrue(refused.text().contains("K. Novak"), refused.text());
      assertThrows(StoreTrouble.class, () -> late.goOn(before, ""));
      late.giveBack(before);
      store.append(test, end(store), note("in time"), Optional.of(now), List.of());
      assertEquals(List.of(now.fence()), store.leases().stream().map(Lease::fence).toList());
      assertEquals(5, store.entries(test).size());
    }
  }

  @Test
  void two_stations_lead_one_test_each_by_a_lease_of_its_own() throws StoreTrouble {
    try (Store store = open(empty())) {
      Session test = begun(store);
      Lease one = store.lead(test.id(), "bench 1", "R. Adeyemi");
      Lease other = store.lead(test.id(), "bench 2", "K. Novak");
      store.append(test, end(store), note("one"), Optional.of(one), List.of());
      store.append(test, end(store), note("other"), Optional.of(other), List.of());
      assertEquals(
          List.of("bench 1", "bench 2"),
          store.leases(test.id()).stream().map(Lease::station).toList());
      store.giveBack(one);
      assertEquals(
          List.of("bench 2"), store.leases(test.id()).stream().map(Lease::station).toList());
    }
  }

  /** A lead hand wants to know where a bench hangs. */
  @Test
  void a_lease_says_which_step_is_asked_and_since_when() throws Exception {
    StoreAddress address = empty();
    try (Store store = open(address)) {
      Session test = begun(store);
      Lease lease = store.lead(test.id(), "bench 1", "R. Adeyemi");
      assertEquals("", lease.asked());
      store.goOn(lease, "3: J1-A to J2-A");
      behindItsBack(address, "update lease set asked_second = asked_second - 200");
      store.goOn(lease, "3: J1-A to J2-A");
      store.append(test, end(store), note("lid missing"), Optional.of(lease), List.of());
      Lease still = store.leases(test.id()).get(0);
      assertEquals("3: J1-A to J2-A", still.asked());
      assertTrue(still.askedSeconds() >= 200, still.toString());
      store.goOn(lease, "4: J1-B to J2-B");
      Lease next = store.leases(test.id()).get(0);
      assertEquals("4: J1-B to J2-B", next.asked());
      assertTrue(next.askedSeconds() < 100, next.toString());
      store.lead(test.id(), "bench 1", "K. Novak");
      assertEquals("", store.leases(test.id()).get(0).asked());
    }
  }

  /** Its time is counted by the store's own clock: benches may have others. */
  @Test
  void a_test_is_taken_over_after_its_time_and_not_before() throws Exception {
    StoreAddress address = empty();
    try (Store late = open(address);
        Store store = open(address)) {
      Session test = begun(store);
      Lease gone = late.lead(test.id(), "bench 1", "R. Adeyemi");
      Lease here = store.lead(test.id(), "bench 2", "K. Novak");
      assertFalse(gone.isSilent());
      assertThrows(
          StoreTrouble.class,
          () -> store.append(test, end(store), note("early"), Optional.of(here), List.of(gone)));
      assertEquals(3, store.entries(test).size(), "the word is not there without the deed");
      behindItsBack(
          address, "update lease set until_second = until_second - 3600 where station = 'bench 1'");
      assertTrue(store.leases(test.id()).get(0).isSilent());
      store.append(test, end(store), note("in time"), Optional.of(here), List.of(gone));
      StoreTrouble refused =
          assertThrows(
              StoreTrouble.class,
              () -> late.append(test, end(late), note("late"), Optional.of(gone), List.of()));
      assertTrue(refused.text().contains("K. Novak at bench 2 took this test over"));
      assertEquals(5, store.entries(test).size());
    }
  }

  /** Whoever slept over his time, and was not taken over, is still the only one who adds there. */
  @Test
  void who_is_late_and_was_not_taken_over_goes_on() throws Exception {
    StoreAddress address = empty();
    try (Store store = open(address)) {
      Session test = begun(store);
      Lease lease = store.lead(test.id(), "bench 1", "R. Adeyemi");
      behindItsBack(address, "update lease set until_second = 1");
      store.append(test, end(store), note("late"), Optional.of(lease), List.of());
      assertFalse(store.leases(test.id()).get(0).isSilent());
    }
  }

  /** Who leads is no evidence: two stores with the same content have the same digest. */
  @Test
  void leases_are_in_no_copy_and_in_no_digest() throws StoreTrouble {
    try (Store store = open(empty());
        Store other = open(empty())) {
      Session test = begun(store);
      String before = Stores.check(store).digest();
      store.lead(test.id(), "bench 1", "R. Adeyemi");
      assertEquals(before, Stores.check(store).digest());
      Stores.copy(store, other);
      assertEquals(before, Stores.check(other).digest());
      assertEquals(List.of(), other.leases());
      // A backup may be taken along: who goes on with it has to know.
      Stores.copyLeases(store, other);
      Stores.copyLeases(store, other);
      assertEquals(
          List.of("bench 1: R. Adeyemi, 1"),
          other.leases().stream()
              .map(one -> one.station() + ": " + one.who() + ", " + one.fence())
              .toList());
    }
  }

  /** Two benches that each read the same unit apart from the other. */
  @Test
  void two_first_tests_of_one_unit_do_not_become_one_history() throws StoreTrouble {
    try (Store from = open(empty());
        Store to = open(empty())) {
      from.add(sheet("0418", "a", "1"));
      to.add(sheet("0418", "b", "1"));
      String before = Stores.check(to).digest();
      assertEquals(
          List.of(Kind.TWO_HISTORIES),
          Stores.copy(from, to).parted().stream().map(StoreContract::kind).toList());
      assertEquals(before, Stores.check(to).digest());
    }
  }

  @Test
  void units_of_another_file_of_the_same_list_are_found() throws StoreTrouble {
    try (Store store = open(empty())) {
      store.add(sheet("0418", "a", "1"));
      assertEquals(
          List.of("0418"),
          store.unitsOfLikeLists(list("Wire,From,To\nW1,J1-A,P2-1\n\n")).stream()
              .map(StoredUnit::serial)
              .toList());
      assertEquals(List.of(), store.unitsOfLikeLists(list("Wire,From,To\nW1,J1-A,P2-1\n")));
    }
  }

  /** Who signed, and when, is what was signed. */
  @Test
  void another_name_or_day_beside_a_signature_is_seen() throws Exception {
    for (Entry.Draft other :
        List.of(
            new Entry.Draft(EntryKind.SIGNATURE, "2026-11-30T12:00:00Z", "J. Other", ""),
            new Entry.Draft(EntryKind.SIGNATURE, "2020-01-01T12:00:00Z", "M. Lindqvist", ""))) {
      try (Store store = open(empty())) {
        store.add(sheet("0418", "a", "1"));
        String body = signature(store, Map.of()).body();
        Entry.Draft changed = new Entry.Draft(other.kind(), other.at(), other.who(), body);
        store.append(last(store), end(store), List.of(changed));
        assertEquals(
            List.of(Kind.SIGNATURE_WRONG),
            Stores.check(store).findings().stream().map(StoreFinding::kind).toList());
      }
    }
  }

  /** The next test hangs on what was said behind the one before. */
  @Test
  void what_was_said_behind_a_test_can_not_be_cut_off_once_another_follows() throws Exception {
    StoreAddress address = empty();
    try (Store store = open(address)) {
      store.add(sheet("0418", "a", "1"));
      store.append(last(store), end(store), note("lid missing"));
      store.add(sheet("0418", "b", "1"));
      assertEquals(List.of(), Stores.check(store).findings());
    }
    behindItsBack(address, "delete from entry where seq > 3");
    assertEquals(List.of(Kind.CHAIN_BROKEN), kinds(address));
  }

  /** A test at a bench without network, while the unit was tested at another. */
  @Test
  void a_test_that_was_begun_without_network_becomes_the_next_of_its_unit() throws StoreTrouble {
    try (Store bench = open(empty());
        Store shop = open(empty())) {
      shop.add(sheet("0418", "a", "1"));
      Stores.copy(shop, bench);
      bench.add(sheet("0418", "b", "1", "2"));
      bench.add(sheet("0418", "c", "1"));
      shop.add(sheet("0418", "d", "1"));
      Stores.Copy copied = Stores.copy(bench, shop);
      assertEquals(List.of(), copied.parted());
      assertEquals(2, copied.handedOver());
      List<Session> sessions = shop.sessions(shop.units().get(0).unit());
      assertEquals(
          List.of("a", "d", "b", "c"),
          sessions.stream().map(one -> one.id().substring(0, 1)).toList());
      assertEquals(bodies(bench, 1), bodies(shop, 2));
      assertEquals(List.of(), Stores.check(shop).findings());
      assertTrue(Stores.copy(bench, shop).isNothing(), "handed over again it is there already");
      bench.append(last(bench), end(bench), note("lid missing"));
      assertEquals(1, Stores.copy(bench, shop).grown());
      assertTrue(Stores.copy(bench, shop).isNothing());
      assertEquals(bodies(bench, 2), bodies(shop, 3));
      assertEquals(List.of(), Stores.check(shop).findings());
    }
  }

  /** The bodies of the how-manieth test of the only unit. */
  private static List<String> bodies(Store store, int index) throws StoreTrouble {
    Session session = store.sessions(store.units().get(0).unit()).get(index);
    return store.entries(session).stream().map(Entry::body).toList();
  }

  /** The next test was built on the end as it was then. */
  @Test
  void a_test_behind_one_that_was_noted_upon_meanwhile_breaks_no_chain() throws StoreTrouble {
    try (Store bench = open(empty());
        Store shop = open(empty())) {
      shop.add(sheet("0418", "a", "1"));
      Stores.copy(shop, bench);
      shop.append(last(shop), end(shop), note("lid missing"));
      bench.add(sheet("0418", "b", "1"));
      assertEquals(1, Stores.copy(bench, shop).handedOver());
      assertEquals(List.of(), Stores.check(shop).findings());
    }
  }

  @Test
  void of_a_test_that_went_on_in_two_ways_both_are_told_and_nothing_is_written()
      throws StoreTrouble {
    try (Store bench = open(empty());
        Store shop = open(empty())) {
      shop.add(sheet("0418", "a", "1"));
      Stores.copy(shop, bench);
      bench.append(last(bench), end(bench), note("at the bench"));
      shop.append(last(shop), end(shop), note("in the shop"));
      bench.add(sheet("0418", "b", "1"));
      String before = Stores.check(shop).digest();
      Stores.Copy copied = Stores.copy(bench, shop);
      assertEquals(0, copied.sessions(), "what comes behind it hangs on it");
      Parted parted = copied.parted().get(0);
      assertEquals(Kind.TWO_HISTORIES, parted.finding().kind());
      assertEquals(4, parted.finding().seq());
      assertEquals("at the bench", parted.from().orElseThrow().body());
      assertEquals("in the shop", parted.to().orElseThrow().body());
      assertEquals(before, Stores.check(shop).digest());
    }
  }

  /** A signature is over the hashes themselves: on others it would be nobody's. */
  @Test
  void a_test_that_is_signed_is_not_put_behind_another() throws Exception {
    try (Store bench = open(empty());
        Store shop = open(empty())) {
      shop.add(sheet("0418", "a", "1"));
      Stores.copy(shop, bench);
      Map<String, String> tests = Map.of(last(bench).id(), end(bench).hash());
      bench.add(sheet("0418", "b", "1"));
      bench.append(last(bench), end(bench), List.of(signature(bench, tests)));
      shop.add(sheet("0418", "c", "1"));
      assertEquals(
          List.of(Kind.TWO_HISTORIES),
          Stores.copy(bench, shop).parted().stream().map(StoreContract::kind).toList());
      assertEquals(2, shop.sessions(shop.units().get(0).unit()).size());
    }
  }

  /** One hour, two benches: these are two units by one number. */
  @Test
  void a_unit_that_was_read_at_two_places_at_once_is_not_put_together() throws StoreTrouble {
    for (boolean same : new boolean[] {true, false}) {
      try (Store bench = open(empty());
          Store shop = open(empty())) {
        shop.add(sheet("0418", "a", "1"));
        Stores.copy(shop, bench);
        bench.add(led("b", "2026-12-01T08:00:00Z", "2026-12-01T09:00:00Z"));
        shop.add(
            same
                ? led("c", "2026-12-01T08:30:00Z", "2026-12-01T08:40:00Z")
                : led("c", "2026-12-01T10:30:00Z", "2026-12-01T10:40:00Z"));
        Stores.Copy copied = Stores.copy(bench, shop);
        assertEquals(same ? 0 : 1, copied.handedOver());
        assertEquals(same ? 1 : 0, copied.parted().size());
      }
    }
  }

  private static NewSession led(String id, String from, String until) {
    NewSession sheet = sheet("0418", id, "1", "2");
    Session one = sheet.session();
    List<Entry.Draft> entries = new ArrayList<>(sheet.entries());
    entries.set(1, new Entry.Draft(EntryKind.READING, from, "R. Adeyemi", "1"));
    entries.set(2, new Entry.Draft(EntryKind.READING, until, "R. Adeyemi", "2"));
    Session led =
        new Session(
            one.id(),
            one.unitKey(),
            one.harness(),
            1,
            one.station(),
            one.who(),
            one.started(),
            "bench " + id,
            "",
            one.program(),
            one.added());
    return new NewSession(sheet.harness(), sheet.serial(), led, "bench " + id, entries);
  }

  /** What was changed at the bench is not made whole by being handed over. */
  @Test
  void a_chain_that_is_broken_is_not_handed_over() throws Exception {
    StoreAddress address = empty();
    try (Store bench = open(address);
        Store shop = open(empty())) {
      bench.add(sheet("0418", "a", "1\nA\t\t0.31"));
      bench.add(sheet("0419", "b", "1"));
      behindItsBack(address, "update entry set body = '1' where body like '%0.31'");
      Stores.Copy copied = Stores.copy(bench, shop);
      assertEquals(
          List.of(Kind.ENTRY_CHANGED), copied.parted().stream().map(StoreContract::kind).toList());
      assertEquals(List.of("0419"), shop.units().stream().map(u -> u.unit().serial()).toList());
    }
  }

  /** A job template that was made after a bench was filled comes with the next copy. */
  @Test
  void what_stations_carry_along_goes_on_where_one_has_more() throws StoreTrouble {
    try (Store from = open(empty());
        Store to = open(empty())) {
      from.keep(new Station("bench 1", "2026-11-30T10:00:00Z", "procedure\tA"));
      Stores.copy(from, to);
      from.keep(new Station("bench 1", "2026-12-01T10:00:00Z", "procedure\tB"));
      from.keep(new Station("bench 2", "2026-12-01T10:00:00Z", "procedure\tB"));
      Stores.copy(from, to);
      assertEquals(from.stations(), to.stations());
    }
  }

  @Test
  void what_was_taken_back_and_names_no_row_is_told() throws StoreTrouble {
    for (String body : List.of("", "x", "no such test\t2\tC\twhy", "\tx\tC\twhy")) {
      try (Store store = open(empty())) {
        store.add(sheet("0418", "a", "1"));
        store.append(
            last(store),
            end(store),
            List.of(
                new Entry.Draft(EntryKind.TAKEN_BACK, "", "", body),
                new Entry.Draft(EntryKind.VERDICT, "", "", "verdict\tconforms")));
        assertEquals(
            List.of(Kind.NOT_UNDERSTOOD),
            Stores.check(store).findings().stream().map(StoreFinding::kind).toList(),
            body);
      }
    }
  }
}
