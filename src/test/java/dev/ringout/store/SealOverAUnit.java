package dev.ringout.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.ringout.Ringout;
import dev.ringout.jobs.VerifyJob;
import dev.ringout.seal.Digest;
import dev.ringout.seal.SealFinding;
import dev.ringout.support.Run;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * A record of a unit of a store: whatever is changed in the store afterwards, by whichever tool, it
 * is not as it was sealed.
 */
abstract class SealOverAUnit {
  private static final String SHEET_OF_THE_FIRST =
      "session = (select id from session where number = 1 and unit_key = '"
          + Digest.of("418")
          + "')";

  private static final int FAULTS = 1;
  private static final int NOT_COMPLETE = 2;

  @TempDir Path folder;
  String store = "";

  /** Where a new store may be, as it is typed. */
  abstract String nothing();

  /** A connection past the store, as somebody with a tool of his own would have. */
  abstract Connection behindItsBack(String address) throws SQLException, StoreTrouble;

  /** Statements differ in how they write bytes. */
  abstract String bytes(String hex);

  @BeforeEach
  void aFailingUnit() throws IOException {
    store = nothing();
    assertEquals(0, Run.of("store", "migrate", "--store", store).code());
    assertEquals(0, Run.of("report", "--new-key", folder.resolve("key")).code());
    add(list("list", "A"), sheet("first", "0418", "J1-1,P2-1,OL\nJ1-2,P2-2,0.3\n"));
  }

  private Path list(String name, String revision) throws IOException {
    Path list = Files.createDirectories(folder.resolve(name));
    Files.writeString(list.resolve("wires.csv"), "Wire,From,To\nW1,J1-1,P2-1\nW2,J1-2,P2-2\n");
    Files.writeString(
        list.resolve("header.csv"), "Name,Value\ntitle,Cable\nrevision," + revision + "\n");
    return list;
  }

  private Path sheet(String name, String serial, String rows) throws IOException {
    Path sheet = Files.createDirectories(folder.resolve(name));
    Files.writeString(sheet.resolve("job.csv"), "Name,Value\nserial number," + serial + "\n");
    Files.writeString(sheet.resolve("continuity.csv"), "From,To,Reading\n" + rows);
    return sheet;
  }

  private void add(Path list, Path sheet) {
    Run added = Run.of("store", "add", list, sheet, "--store", store);
    assertEquals(0, added.code(), added.err());
  }

  private void addRetest() throws IOException {
    add(folder.resolve("list"), sheet("again", "0418", "J1-1,P2-1,0.2\n"));
  }

  private Run record(String name, Object... words) {
    List<Object> all = new ArrayList<>(List.of("report"));
    all.addAll(List.of(words));
    all.addAll(List.of("-o", folder.resolve(name), "--store", store));
    return Run.of(all.toArray());
  }

  final void sealed(String name) {
    sealed(name, FAULTS);
  }

  private void sealed(String name, int verdict) {
    Run run = record(name, "unit:0418", "--seal", folder.resolve("key"));
    assertEquals(verdict, run.code(), run.err());
    Run untouched = verify(name);
    assertEquals(0, untouched.code(), untouched.out());
  }

  private Run verify(String name) {
    return verify(name, store);
  }

  final Run verify(String name, String at) {
    Object key = folder.resolve("key.pub");
    return Run.of("report", "--verify", folder.resolve(name), "--key", key, "--store", at);
  }

  private Run unsigned(String name) {
    return Run.of("report", "--verify", folder.resolve(name), "--store", store);
  }

  private static void assertSays(Run run, int code, String... lines) {
    for (String line : lines) {
      assertTrue(run.out().contains(line), line + "\nis not in\n" + run.out() + run.err());
    }
    assertEquals(code, run.code(), run.out() + run.err());
    if (code != 0) {
      assertFalse(run.out().contains("As sealed:"), run.out());
    }
  }

  private void tamper(String... statements) throws Exception {
    try (Connection connection = behindItsBack(store);
        Statement statement = connection.createStatement()) {
      for (String sql : statements) {
        assertTrue(statement.executeUpdate(sql) > 0, "changed something: " + sql);
      }
    }
  }

  /** Makes a test anew with all its hashes, as who may write tables and knows the rule can. */
  private void rebuild(Session session, Session as, UnaryOperator<String> body) throws Exception {
    List<Entry.Draft> drafts = new ArrayList<>();
    Head start;
    try (Store open = Stores.open(StoreAddress.of(store), Map.of(), false)) {
      start = HashChain.start(open.find(as.unitKey()).get(0), as, "");
      for (Entry entry : open.entries(session)) {
        EntryKind kind = EntryKind.of(entry.kind()).orElseThrow();
        drafts.add(new Entry.Draft(kind, entry.at(), entry.who(), body.apply(entry.body())));
      }
    }
    HexFormat hex = HexFormat.of();
    try (Connection connection = behindItsBack(store);
        PreparedStatement change =
            connection.prepareStatement(
                "update entry set body = ?, previous = ?, hash = ? where session = ?"
                    + " and seq = ?")) {
      for (Entry entry : HashChain.chained(as, start, drafts)) {
        change.setString(1, entry.body());
        change.setBytes(2, hex.parseHex(entry.previous()));
        change.setBytes(3, hex.parseHex(entry.hash()));
        change.setString(4, session.id());
        change.setInt(5, entry.seq());
        assertEquals(1, change.executeUpdate());
      }
    }
  }

  private List<Session> sessions(String serial) throws StoreTrouble {
    try (Store open = Stores.open(StoreAddress.of(store), Map.of(), false)) {
      return open.sessions(open.find(Digest.of(serial)).get(0));
    }
  }

  private void assertTheStoreLooksWhole() {
    Run check = Run.of("store", "check", "--store", store);
    assertEquals(0, check.code(), check.out());
  }

  @Test
  void the_record_of_a_unit_is_that_of_its_files_but_for_what_its_inputs_are_called() {
    Path list = folder.resolve("list");
    assertEquals(1, record("files.html", list, folder.resolve("first")).code());
    assertEquals(1, record("unit.html", "unit:0418").code());
    assertEquals(1, record("both.html", list, "unit:0418").code());
    assertEquals(withoutInputs("files.html"), withoutInputs("unit.html"));
    assertEquals(withoutInputs("files.html"), withoutInputs("both.html"));
  }

  private String withoutInputs(String name) {
    try {
      return Files.readString(folder.resolve(name))
          .replaceAll("(?s)<h2[^>]*>Input files</h2>.*?<p>By ", "<p>By ")
          .replaceAll("[0-9a-f]{64}", "DIGEST");
    } catch (IOException e) {
      throw new IllegalStateException(e);
    }
  }

  @Test
  void the_seal_names_each_file_of_the_list_and_each_test_with_the_end_of_its_chain()
      throws Exception {
    addRetest();
    sealed("r.html", NOT_COMPLETE);
    String seal = Files.readString(folder.resolve("r.html.seal"));
    String wires = Digest.of(folder.resolve("list/wires.csv"));
    assertTrue(
        seal.matches("(?s).*\nlist\tlist\t[0-9a-f]{64}\twires.csv\t" + wires + "\n.*"), seal);
    for (Session test : sessions("418")) {
      try (Store open = Stores.open(StoreAddress.of(store), Map.of(), false)) {
        List<Entry> entries = open.entries(test);
        String line =
            String.join(
                "\t",
                "test",
                "0418",
                test.harness(),
                "" + test.number(),
                test.file(),
                "" + entries.size(),
                entries.get(entries.size() - 1).hash());
        assertTrue(seal.contains("\n" + line + "\n"), line + "\n" + seal);
      }
    }
    assertFalse(seal.contains("\ninput\t"), seal);
    assertFalse(seal.contains("\nfolder\t"), seal);
    String page = Files.readString(folder.resolve("r.html"));
    assertTrue(page.contains("unit 0418, test 2, again"), "among what it was made from");
    assertSays(
        verify("r.html"),
        0,
        "as sealed   store: list list/wires.csv",
        "as sealed   store: unit 0418, test 1, first\n",
        "as sealed   store: unit 0418, test 2, again\n",
        "As sealed: record, inputs and signature.");
  }

  /** What docs/reference/store.md says of hashes, done without the program's own. */
  @Test
  void the_hash_of_a_test_can_be_made_by_hand() throws Exception {
    sealed("r.html");
    String hash = "";
    try (Connection connection = behindItsBack(store);
        Statement statement = connection.createStatement()) {
      try (ResultSet row =
          statement.executeQuery(
              """
              select '', u.serial, h.title, h.drawing, h.revision, s.id, s.unit_key, s.harness,
                s.number, s.station, s.who, s.started, s.file, s.digest, s.program, s.added
              from session s
              join unit u on u.unit_key = s.unit_key and u.harness = s.harness
              join harness h on h.digest = s.harness
              """)) {
        assertTrue(row.next());
        hash = byHand(row, 16);
      }
      try (ResultSet row =
          statement.executeQuery(
              "select session, seq, at, who, kind, body from entry order by seq")) {
        while (row.next()) {
          hash = byHand(row, 6, hash);
        }
      }
    }
    assertTrue(Files.readString(folder.resolve("r.html.seal")).contains("\t" + hash + "\n"), hash);
  }

  private static String byHand(ResultSet row, int columns, String... more) throws SQLException {
    List<String> fields = new ArrayList<>();
    for (int i = 1; i <= columns; i++) {
      fields.add(row.getString(i));
    }
    fields.addAll(List.of(more));
    StringBuilder text = new StringBuilder();
    for (String field : fields) {
      text.append(field.getBytes(StandardCharsets.UTF_8).length).append(':').append(field);
    }
    return Digest.of(text.toString());
  }

  @ParameterizedTest
  @ValueSource(strings = {"r.html", "r.pdf", "r.xlsx"})
  void every_form_of_the_record_is_sealed_alike(String name) {
    sealed(name);
  }

  @Test
  void an_entry_that_was_changed_is_named() throws Exception {
    sealed("r.html");
    tamper("update entry set body = '2\nC\t\t0.2' where seq = 3 and " + SHEET_OF_THE_FIRST);
    assertSays(
        verify("r.html"), 1, "DIFFERS     store: unit 0418, test 1, first: entry 3 was changed");
  }

  @ParameterizedTest
  @CsvSource({"hash", "previous"})
  void an_entry_whose_hash_alone_was_changed_differs_too(String column) throws Exception {
    sealed("r.html");
    tamper(
        "update entry set "
            + column
            + " = "
            + bytes("ab".repeat(32))
            + " where seq = 3 and "
            + SHEET_OF_THE_FIRST);
    assertSays(verify("r.html"), 1, "DIFFERS     store: unit 0418, test 1, first: entry 3");
  }

  @Test
  void an_entry_that_was_taken_out_is_named() throws Exception {
    sealed("r.html");
    tamper("delete from entry where seq = 3 and " + SHEET_OF_THE_FIRST);
    assertSays(
        verify("r.html"), 1, "DIFFERS     store: unit 0418, test 1, first: entry 3 is not there");
  }

  @Test
  void the_end_of_a_test_that_was_cut_off_is_missed() throws Exception {
    sealed("r.html");
    tamper("delete from entry where kind = 'verdict'");
    assertSays(verify("r.html"), 1, "DIFFERS     store: unit 0418, test 1, first: ");
  }

  @Test
  void all_entries_that_were_taken_out_are_missed() throws Exception {
    sealed("r.html");
    tamper("delete from entry");
    assertSays(verify("r.html"), 1, "DIFFERS     store: unit 0418, test 1, first: ");
  }

  /** The chain itself can't tell: whoever may write the tables can make it anew. */
  @Test
  void a_test_that_was_made_anew_from_its_beginning_is_another_than_was_sealed() throws Exception {
    sealed("r.html");
    Session first = sessions("418").get(0);
    rebuild(first, first, body -> body.replace("OL", "0.2"));
    assertTheStoreLooksWhole();
    assertEquals(2, Run.of("check", "unit:0418", "--store", store).code(), "and it passes now");
    assertSays(
        verify("r.html"),
        1,
        "DIFFERS     store: unit 0418, test 1, first: its entries changed since it was sealed",
        "as sealed   record r.html");
  }

  @Test
  void who_tested_can_t_be_exchanged_afterwards() throws Exception {
    sealed("r.html");
    tamper("update session set who = 'X'");
    assertSays(verify("r.html"), 1, "DIFFERS     store: unit 0418, test 1, first: the test as a");
  }

  @Test
  void a_test_that_was_taken_out_as_a_whole_is_missed() throws Exception {
    addRetest();
    sealed("r.html", NOT_COMPLETE);
    tamper(
        "delete from entry where session in (select id from session where number = 2)",
        "delete from session where number = 2");
    assertTheStoreLooksWhole();
    assertSays(
        verify("r.html"),
        1,
        "as sealed   store: unit 0418, test 1, first",
        "DIFFERS     store: unit 0418, test 2, again: it is not there any more");
  }

  @Test
  void a_unit_that_is_not_there_at_all_is_not_shown() throws Exception {
    sealed("r.html");
    tamper("delete from entry", "delete from session", "delete from unit");
    assertSays(
        verify("r.html"),
        2,
        "as sealed   store: list list/wires.csv",
        "not shown   store: unit 0418, test 1, first: there is no such unit of this list in "
            + shown());
  }

  private String shown() throws StoreTrouble {
    return StoreAddress.of(store).shown();
  }

  @Test
  void a_list_that_was_changed_or_added_to_differs() throws Exception {
    sealed("r.html");
    String changed = "update harness_part set content = " + bytes("41") + " where name = 'header";
    tamper(changed + ".csv'");
    assertSays(
        verify("r.html"),
        1,
        "DIFFERS     store: list list/header.csv: changed since it was sealed",
        "as sealed   store: list list/wires.csv");
  }

  @Test
  void a_file_that_was_added_to_a_list_differs() throws Exception {
    sealed("r.html");
    tamper(
        "insert into harness_part (harness, number, name, content) select digest, 9,"
            + " 'limits.csv', "
            + bytes("41")
            + " from harness");
    assertSays(
        verify("r.html"),
        1,
        "DIFFERS     store: list list: its files, or their order, changed since it was sealed");
  }

  @Test
  void a_file_that_was_taken_out_of_a_list_differs() throws Exception {
    sealed("r.html");
    tamper("delete from harness_part where name = 'header.csv'");
    assertSays(verify("r.html"), 1, "DIFFERS     store: list list/header.csv: ");
  }

  @Test
  void a_list_that_was_taken_out_is_not_shown() throws Exception {
    sealed("r.html");
    tamper("delete from harness_part", "delete from harness");
    Run run = verify("r.html");
    assertSays(run, 2, "not shown   store: list list/wires.csv: there is no such list in ");
  }

  @Test
  void a_test_of_another_unit_in_its_place_differs() throws Exception {
    add(folder.resolve("list"), sheet("other", "0419", "J1-1,P2-1,0.2\nJ1-2,P2-2,0.2\n"));
    sealed("r.html");
    Session other = sessions("419").get(0);
    tamper(
        "delete from entry where " + SHEET_OF_THE_FIRST,
        "delete from session where unit_key = '" + Digest.of("418") + "'",
        "update session set unit_key = '" + Digest.of("418") + "'",
        "delete from unit where serial = '0419'");
    assertSays(verify("r.html"), 1, "DIFFERS     store: unit 0418, test 1, first: ");
    rebuild(other, sessions("418").get(0), body -> body.replace("0419", "0418"));
    assertTheStoreLooksWhole();
    assertSays(
        verify("r.html"),
        1,
        "DIFFERS     store: unit 0418, test 1, first: its entries changed since it was sealed");
  }

  @Test
  void another_store_with_the_same_serial_number_is_not_the_one_that_was_sealed() throws Exception {
    sealed("r.html");
    String first = store;
    store = nothing();
    Run.of("store", "migrate", "--store", store);
    assertSays(verify("r.html"), 2, "not shown   store: list list/wires.csv: there is no such");
    add(list("list B", "B"), sheet("first", "0418", "J1-1,P2-1,OL\nJ1-2,P2-2,0.3\n"));
    assertSays(
        verify("r.html"),
        2,
        "not shown   store: unit 0418, test 1, first: there is no such unit of this list in ");
    add(folder.resolve("list"), sheet("other", "0418", "J1-1,P2-1,0.2\nJ1-2,P2-2,0.3\n"));
    assertSays(verify("r.html"), 1, "DIFFERS     store: unit 0418, test 1, first: its entries");
    store = first;
    assertEquals(0, verify("r.html").code());
  }

  @Test
  void a_copy_of_the_store_shows_the_same() {
    sealed("r.html");
    Path copy = folder.resolve("copy.db");
    assertEquals(0, Run.of("store", "migrate", "--store", copy).code());
    assertEquals(0, Run.of("store", "copy", store, copy).code());
    assertEquals(0, verify("r.html", copy.toString()).code());
  }

  @Test
  void without_a_store_the_inputs_are_not_found() throws IOException {
    sealed("r.html");
    Path nowhere = folder.resolve("nowhere.db");
    assertSays(
        verify("r.html", nowhere.toString()),
        2,
        "as sealed   record r.html",
        "not shown   store: list list/wires.csv: not found: " + nowhere + ": there is no such",
        "not shown   store: unit 0418, test 1, first: not found: " + nowhere + ": there is no");
    assertFalse(Files.exists(nowhere), "looking makes no store");
    Path letter = Files.writeString(folder.resolve("letter.txt"), "Dear sir, ".repeat(200));
    assertSays(verify("r.html", letter.toString()), 2, "not shown   store: list list/wires.csv");
    assertSays(
        verify("r.html", "postgresql://127.0.0.1:9/shop"),
        2,
        "not found: postgresql://127.0.0.1:9/shop: ");
  }

  @Test
  void another_program_that_names_no_store_is_told_so() throws Exception {
    sealed("r.html");
    VerifyJob.Result result =
        Ringout.onFiles().verify(VerifyJob.Request.of(folder.resolve("r.html"), List.of()));
    assertFalse(result.isAsSealed());
    assertTrue(
        result
            .findings()
            .contains(
                new SealFinding(
                    SealFinding.Kind.KEPT_NOT_FOUND,
                    "unit 0418, test 1, first",
                    "--store: no store was named")),
        result.toString());
  }

  @Test
  void a_store_of_another_version_shows_nothing() throws Exception {
    sealed("r.html");
    tamper("update " + Migrations.HISTORY + " set \"version\" = '99' where \"version\" = '1'");
    assertSays(
        verify("r.html"), 2, "not shown   store: unit 0418, test 1, first: not found: ", "newer");
  }

  @Test
  void a_serial_number_in_another_spelling_is_the_same_unit_and_the_same_record() throws Exception {
    sealed("r.html");
    byte[] page = Files.readAllBytes(folder.resolve("r.html"));
    assertEquals(1, record("r.html", "unit:  418 ", "--force").code());
    assertEquals(
        Digest.of(page), Digest.of(folder.resolve("r.html")), "byte for byte the same page");
    assertSays(unsigned("r.html"), 2, "as sealed   store: unit 0418, test 1, first");
  }

  private void edit(String from, String to) throws IOException {
    Path file = folder.resolve("r.html.seal");
    String seal = Files.readString(file);
    assertTrue(seal.contains(from), seal);
    Files.writeString(file, seal.replace(from, to));
  }

  @Test
  void a_line_of_the_seal_that_was_edited_breaks_its_signature() throws Exception {
    add(folder.resolve("list"), sheet("other", "0419", "J1-1,P2-1,0.2\nJ1-2,P2-2,0.2\n"));
    sealed("r.html");
    edit("\ntest\t0418\t", "\ntest\t0419\t");
    assertSays(
        verify("r.html"),
        1,
        "DIFFERS     signature",
        "DIFFERS     store: unit 0419, test 1, first: its entries changed since it was sealed");
  }

  /** Whoever edits a seal that is not signed still has to name what the store holds. */
  @ParameterizedTest
  @CsvSource({
    "'\t1\tfirst\t9\t','\t1\tfirst\t8\t',1",
    "'\t1\tfirst\t9\t','\t1\tfirst\t10\t',1",
    "'\t1\tfirst\t9\t','\t2\tfirst\t9\t',1",
    "'\t1\tfirst\t9\t','\t1\tfirst\t0\t',65",
    "'\t1\tfirst\t9\t','\t1\tfirst\t-7\t',65",
    "'\t1\tfirst\t9\t','\t1\tfirst\t09\t',65",
    "'\t1\tfirst\t9\t','\t+1\tfirst\t9\t',65",
    "'\t1\tfirst\t9\t','\t1\tfirst\tall\t',65",
    "'\t1\tfirst\t9\t','\t1\tfirst\t9\tmore\t',65",
    "'\theader.csv\t','\twires.csv\t',1",
    "'\theader.csv\t','\tother.csv\t',1",
    "'test\t0418','unit\t0418',65",
    "'list\tlist','input\tlist',65"
  })
  void a_seal_that_says_otherwise_is_not_shown_by_the_store(String from, String to, int code)
      throws Exception {
    assertEquals(1, record("r.html", "unit:0418").code());
    assertSays(unsigned("r.html"), 2, "as sealed   store: unit 0418, test 1, first");
    edit(from, to);
    Run run = unsigned("r.html");
    assertEquals(code, run.code(), run.out() + run.err());
  }

  @Test
  void a_file_that_is_called_like_a_unit_is_looked_for_as_a_file() throws Exception {
    Path sheet = folder.resolve("unit:0418");
    Files.move(sheet("named", "0418", "J1-1,P2-1,OL\nJ1-2,P2-2,0.3\n"), sheet);
    Run run = record("r.html", folder.resolve("list"), sheet, "--seal", folder.resolve("key"));
    assertEquals(1, run.code(), run.err());
    String seal = Files.readString(folder.resolve("r.html.seal"));
    assertTrue(seal.contains("\ninput\tunit:0418/continuity.csv\t"), seal);
    assertFalse(seal.contains("\ntest\t"), seal);
    assertSays(verify("r.html"), 0, "as sealed   input unit:0418/continuity.csv");
    assertFalse(verify("r.html").out().contains("store:"), "no store is asked");
    Files.writeString(sheet.resolve("continuity.csv"), "From,To,Reading\nJ1-1,P2-1,0.2\n");
    assertSays(
        verify("r.html"),
        1,
        "DIFFERS     input unit:0418/continuity.csv: changed since it was sealed");
  }

  @Test
  void what_was_added_since_is_told_and_breaks_nothing() throws Exception {
    sealed("r.html");
    addRetest();
    assertSays(
        verify("r.html"),
        0,
        "as sealed   store: unit 0418, test 1, first\n",
        "note        store: unit 0418: since then 1 test was added",
        "As sealed:");
    add(folder.resolve("list"), sheet("third", "0418", "J1-1,P2-1,0.1\n"));
    assertSays(verify("r.html"), 0, "note        store: unit 0418: since then 2 tests were added");
  }

  private void append(UnaryOperator<Entry> as) throws Exception {
    Session first = sessions("418").get(0);
    Entry last;
    try (Store open = Stores.open(StoreAddress.of(store), Map.of(), false)) {
      List<Entry> entries = open.entries(first);
      last = entries.get(entries.size() - 1);
    }
    Entry draft =
        new Entry(last.seq() + 1, "", "", last.kind(), "verdict\tconforms", last.hash(), "");
    Entry next =
        as.apply(
            new Entry(
                draft.seq(),
                draft.at(),
                draft.who(),
                draft.kind(),
                draft.body(),
                draft.previous(),
                HashChain.of(first.id(), draft)));
    HexFormat hex = HexFormat.of();
    try (Connection connection = behindItsBack(store);
        PreparedStatement insert =
            connection.prepareStatement(
                "insert into entry (session, seq, at, who, kind, body, previous, hash)"
                    + " values (?, ?, '', '', ?, ?, ?, ?)")) {
      insert.setString(1, first.id());
      insert.setInt(2, next.seq());
      insert.setString(3, next.kind());
      insert.setString(4, next.body());
      insert.setBytes(5, hex.parseHex(next.previous()));
      insert.setBytes(6, hex.parseHex(next.hash()));
      assertEquals(1, insert.executeUpdate());
    }
  }

  @Test
  void entries_behind_those_that_were_sealed_are_told_and_break_nothing() throws Exception {
    sealed("r.html");
    append(UnaryOperator.identity());
    assertTheStoreLooksWhole();
    assertSays(
        verify("r.html"),
        0,
        "as sealed   store: unit 0418, test 1, first\n",
        "note        store: unit 0418, test 1, first: since then 1 entry was added");
  }

  @Test
  void an_entry_behind_those_that_were_sealed_that_is_not_as_it_was_written_is_told()
      throws Exception {
    sealed("r.html");
    append(
        entry ->
            new Entry(entry.seq(), "", "", entry.kind(), "other", entry.previous(), entry.hash()));
    assertSays(
        verify("r.html"),
        0,
        "as sealed   store: unit 0418, test 1, first\n",
        "note        store: unit 0418, test 1, first: behind what was sealed, entry 10 was changed");
  }

  @Test
  void a_record_may_be_made_from_a_unit_and_from_files() throws Exception {
    Path again = sheet("again", "0418", "J1-1,P2-1,0.2\n");
    Run run = record("r.html", "unit:0418", "unit:0418", again, "--seal", folder.resolve("key"));
    assertEquals(2, run.code(), run.err());
    assertSays(
        verify("r.html"),
        0,
        "as sealed   input again/continuity.csv",
        "as sealed   store: list list/wires.csv",
        "as sealed   store: unit 0418, test 1, first");
    Files.writeString(again.resolve("job.csv"), "Name,Value\nserial number,0418\nrevision,A\n");
    assertSays(verify("r.html"), 1, "DIFFERS     input again/job.csv");
  }

  @Test
  void of_a_unit_before_readings_the_list_alone_is_taken() throws Exception {
    Path again = sheet("again", "0418", "J1-1,P2-1,0.2\n");
    assertEquals(2, record("r.html", "unit:0418", again).code());
    assertEquals(2, record("files.html", folder.resolve("list"), again).code());
    assertEquals(withoutInputs("files.html"), withoutInputs("r.html"));
    String seal = Files.readString(folder.resolve("r.html.seal"));
    assertTrue(seal.contains("\nlist\t") && !seal.contains("\ntest\t"), seal);
    addRetest();
    assertFalse(unsigned("r.html").out().contains("since then"), "it rests on no test of it");
  }

  @Test
  void a_retest_keeps_the_first_failing_values_of_the_record_before() throws Exception {
    sealed("first.html");
    addRetest();
    Object key = folder.resolve("key");
    Object before = folder.resolve("first.html");
    Run retest = record("second.html", "unit:0418", "--seal", key, "--continues", before);
    assertEquals(2, retest.code(), retest.err());
    String seal = Files.readString(folder.resolve("second.html.seal"));
    assertTrue(seal.contains("failed\tfirst.html\tcontinuity\tJ1-1 to P2-1\tOL\n"), seal);
    assertSays(
        verify("second.html"),
        0,
        "as sealed   earlier record first.html",
        "as sealed   history of first.html");
    assertSays(
        verify("first.html"),
        0,
        "note        second.html goes on from first.html",
        "note        store: unit 0418: since then 1 test was added");
    Run files =
        record(
            "third.html",
            folder.resolve("list"),
            folder.resolve("again"),
            "--seal",
            key,
            "--continues",
            folder.resolve("second.html"));
    assertEquals(2, files.code(), files.err());
    assertTrue(
        Files.readString(folder.resolve("third.html.seal"))
            .contains("failed\tfirst.html\tcontinuity\tJ1-1 to P2-1\tOL\n"));
    assertEquals(0, verify("third.html").code());
  }

  @Test
  void a_record_of_another_unit_is_not_continued() throws Exception {
    sealed("first.html");
    add(folder.resolve("list"), sheet("other", "0419", "J1-1,P2-1,0.2\nJ1-2,P2-2,0.2\n"));
    Run run =
        record(
            "second.html",
            "unit:0419",
            "--seal",
            folder.resolve("key"),
            "--continues",
            folder.resolve("first.html"));
    assertEquals(65, run.code());
    assertTrue(run.err().contains("unit 0419 can't continue first.html"), run.err());
  }

  /** The number that a unit is shown by stands in its chain. */
  @Test
  void no_record_is_made_of_a_unit_that_somebody_has_renamed() throws Exception {
    tamper("update unit set serial = '0419'");
    Run run = record("r.html", "unit:0418");
    assertEquals(65, run.code(), run.err());
    assertTrue(run.err().contains("the test as a whole was changed"), run.err());
  }

  @Test
  void a_record_is_made_of_one_unit_that_is_as_it_was_written() throws Exception {
    Run none = record("r.html", "unit:0500");
    assertEquals(66, none.code());
    assertTrue(none.err().contains("unit:0500: there is no such unit in"), none.err());
    addRetest();
    tamper("delete from entry where " + SHEET_OF_THE_FIRST, "delete from session where number = 1");
    Run gap = record("r.html", "unit:0418");
    assertEquals(65, gap.code(), gap.err());
    assertTrue(gap.err().contains("a test before it is not there"), gap.err());
    assertEquals(65, Run.of("check", "unit:0418", "--store", store).code());
    assertFalse(Files.exists(folder.resolve("r.html")));
    assertFalse(Files.exists(folder.resolve("r.html.seal")));
  }

  @Test
  void a_serial_number_of_two_lists_is_asked_about() throws Exception {
    sealed("r.html");
    add(list("list B", "B"), sheet("of b", "0418", "J1-1,P2-1,0.2\nJ1-2,P2-2,0.2\n"));
    Run both = record("both.html", "unit:0418");
    assertEquals(65, both.code(), both.err());
    assertTrue(
        both.err().contains("is the serial number of 2 units: of Cable, revision A ("), both.err());
    assertEquals(1, record("a.html", folder.resolve("list"), "unit:0418").code());
    assertEquals(0, verify("r.html").code(), "the one that was sealed is known by its list");
  }

  @Test
  void a_unit_without_any_test_gives_what_the_other_commands_give() throws Exception {
    tamper("delete from entry", "delete from session");
    Run check = Run.of("check", "unit:0418", "--store", store);
    Run record = record("r.html", "unit:0418");
    assertEquals(check.code(), record.code(), check.err() + record.err());
    assertEquals(check.err(), record.err());
  }
}
