package dev.ringout.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.ringout.jobs.LedTests;
import dev.ringout.jobs.StoreAtHand;
import dev.ringout.seal.KeyList;
import dev.ringout.seal.KeyList.Listed;
import dev.ringout.seal.Keys;
import dev.ringout.seal.Seal;
import dev.ringout.support.Run;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.KeyPair;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.Statement;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A shop's keys: whose each is, and what a record is worth that was signed with one. */
class KeysOfAShopTest {
  private static final String MAREN = "Maren Lindqvist";
  private static final String KATARINA = "Katarina Novak";

  @TempDir private static Path shop;

  @TempDir private Path folder;

  @BeforeAll
  static void people() throws IOException {
    Path passphrase = Files.writeString(shop.resolve("pass"), "four lamps on a bridge\n");
    for (String[] one : new String[][] {{MAREN, "administrator"}, {KATARINA, "inspector"}}) {
      Run added =
          Run.of(
              "people",
              "add",
              one[0],
              "--role",
              one[1],
              "--passphrase",
              passphrase,
              "--who",
              MAREN,
              "--store",
              shop.resolve("shop.db"));
      assertEquals(0, added.code(), added.err());
    }
  }

  @BeforeEach
  void shop() throws IOException {
    Files.copy(shop.resolve("shop.db"), folder.resolve("shop.db"));
  }

  private Run at(Object... words) {
    List<Object> all = new ArrayList<>(List.of(words));
    all.addAll(List.of("--store", folder.resolve("shop.db")));
    return Run.of(all.toArray());
  }

  private Path newKey(String name) {
    Path key = folder.resolve(name);
    assertEquals(0, Run.of("report", "--new-key", key).code());
    return key;
  }

  private Path pub(Path key) {
    return folder.resolve(key.getFileName() + ".pub");
  }

  private Run register(Path key, Object... more) {
    List<Object> words =
        new ArrayList<>(List.of("people", "key", KATARINA, "--key", pub(key), "--who", MAREN));
    words.addAll(List.of(more));
    return at(words.toArray());
  }

  private Path list() {
    Path list = folder.resolve("keys.txt");
    assertEquals(0, at("people", "keys", "-o", list, "--force").code());
    return list;
  }

  private Path record(String name, Path key) throws IOException {
    Path record = folder.resolve(name);
    SmallUnit unit = new SmallUnit(folder);
    Path sheet = unit.sheet("sheet", "operator,Rotimi Adeyemi");
    Run.of("report", unit.list(), sheet, "-o", record, "--seal", key);
    assertTrue(Files.exists(record), name);
    return record;
  }

  private Run verify(Path record, Path list) {
    return Run.of("report", "--verify", record, "--keys", list);
  }

  @Test
  void a_record_signed_with_a_key_of_the_list_is_its_person_s() throws IOException {
    Path key = newKey("katarina");
    assertEquals(0, register(key).code());
    Run good = verify(record("r.html", key), list());
    assertTrue(good.out().contains("as sealed   key "), good.out());
    assertTrue(good.out().contains(KATARINA + ", from "), good.out());
    assertTrue(good.out().contains("by the signer's word"), good.out());
    assertEquals(0, good.code(), good.out());
  }

  @Test
  void signed_before_a_withdrawal_it_was_good_at_its_time_and_signed_after_it_is_told()
      throws Exception {
    Path key = newKey("katarina");
    register(key);
    Path record = record("r.html", key);
    KeyPair pair = Keys.pair(key);
    Listed listed = KeyList.read(Files.readString(list())).of(pair.getPublic()).orElseThrow();
    Instant signed = listed.from().plusSeconds(3600);
    Path sealFile = folder.resolve("r.html.seal");
    Seal seal = Seal.read(Files.readString(sealFile)).seal();
    Files.writeString(sealFile, seal.signed(pair, signed));

    Run before = verify(record, withdrawn(listed, signed.plusSeconds(1)));
    assertTrue(before.out().contains("withdrawn " + signed.plusSeconds(1)), before.out());
    assertTrue(before.out().contains("(tablet lost): good at its time, if the time"), before.out());
    assertEquals(0, before.code(), before.out());

    Run after = verify(record, withdrawn(listed, signed.minusSeconds(1)));
    assertTrue(after.out().contains("DIFFERS     key "), after.out());
    assertTrue(after.out().contains("(tablet lost): signed after that"), after.out());
    assertEquals(1, after.code());

    Files.writeString(sealFile, seal.signed(pair));
    Run never = verify(record, withdrawn(listed, signed));
    assertTrue(never.out().contains("does not say when it was signed"), never.out());
    assertEquals(2, never.code());
  }

  private Path withdrawn(Listed key, Instant at) throws IOException {
    Listed gone =
        new Listed(
            key.person(),
            key.fingerprint(),
            key.from(),
            key.until(),
            Optional.of(at),
            "tablet lost");
    return Files.writeString(folder.resolve("withdrawn.txt"), new KeyList(List.of(gone)).text());
  }

  @Test
  void the_signer_of_a_key_that_no_list_has_is_not_known() throws IOException {
    register(newKey("katarina"));
    Run unknown = verify(record("r.html", newKey("stranger")), list());
    assertTrue(unknown.out().contains("signer not known"), unknown.out());
    assertEquals(1, unknown.code());
  }

  /** Else whoever alters the time of a record that was signed later makes it good again. */
  @Test
  void the_time_is_signed_with_the_rest() throws IOException {
    Path key = newKey("katarina");
    register(key);
    Path record = record("r.html", key);
    Path seal = folder.resolve("r.html.seal");
    Files.writeString(
        seal, Files.readString(seal).replaceFirst("\nsigned\t\\d{4}", "\nsigned\t2000"));
    Run altered = verify(record, list());
    assertTrue(altered.out().contains("it is not of this seal"), altered.out());
    assertEquals(1, altered.code());
  }

  @Test
  void a_key_that_the_list_withdrew_is_not_trusted_again_by_giving_it() throws IOException {
    Path key = newKey("katarina");
    register(key);
    String print = fingerprint();
    at("people", "withdraw-key", print, "--why", "tablet lost", "--who", MAREN);
    Path record = record("r.html", key);
    Run given = Run.of("report", "--verify", record, "--keys", list(), "--key", pub(key));
    assertTrue(given.out().contains("signed after that"), given.out());
    assertEquals(1, given.code());
  }

  private String fingerprint() {
    return at("people", "keys").out().lines().toList().get(1).split("\t", -1)[2];
  }

  @Test
  void who_leaves_the_shop_signs_no_more_with_any_key() {
    Path key = newKey("katarina");
    register(key);
    at("people", "withdraw", KATARINA, "--why", "left", "--who", MAREN);
    String line = at("people", "keys").out().lines().toList().get(1);
    assertTrue(line.matches("key\tKatarina Novak\t.*\tleft"), line);
    assertEquals(64, register(newKey("second")).code());
    assertEquals(0, at("store", "check").code());
  }

  @Test
  void a_key_is_one_person_s_and_withdrawn_once_with_a_word() {
    Path key = newKey("katarina");
    assertEquals(0, register(key, "--until", "2027-12-31").code());
    Run again = at("people", "key", MAREN, "--key", pub(key), "--who", MAREN);
    assertEquals(64, again.code());
    assertTrue(again.err().contains("as Katarina Novak's"), again.err());
    assertEquals(64, at("people", "key", KATARINA, "--key", key, "--who", MAREN).code());
    String print = fingerprint();
    assertEquals(64, withdraw(print, " ").code());
    assertEquals(64, withdraw("0123", "lost").code());
    assertEquals(0, withdraw(print.replace(" ", ""), "lost").code());
    assertEquals(64, withdraw(print, "lost again").code());
    String history = at("people", "list", "--history").out();
    assertTrue(history.replaceAll("\\s+", " ").contains("no more with key " + print), history);
  }

  private Run withdraw(String fingerprint, String why) {
    return at("people", "withdraw-key", fingerprint, "--why", why, "--who", MAREN);
  }

  @Test
  void what_is_no_list_is_told_before_anything_is_looked_at() throws IOException {
    Path key = newKey("katarina");
    Path record = record("r.html", key);
    Run none = verify(record, Files.writeString(folder.resolve("none.txt"), "no list\n"));
    assertEquals(64, none.code());
    assertTrue(none.err().contains("--keys: "), none.err());
    assertTrue(none.err().contains("is no list of keys"), none.err());
  }

  private Path cable() throws IOException {
    Path list = Files.createDirectories(folder.resolve("list"));
    Files.writeString(list.resolve("wires.csv"), "Wire,From,To\nW1,J1-1,P2-1\n");
    Files.writeString(list.resolve("header.csv"), "Name,Value\ntitle,Cable\n");
    Files.writeString(list.resolve("limits.csv"), "Name,Value,Unit\ninsulation test,none,\n");
    return list;
  }

  private void readBySofia() throws IOException {
    Path sheet = Files.createDirectories(folder.resolve("sheet"));
    Files.writeString(
        sheet.resolve("job.csv"), "Name,Value\nserial number,9\noperator,Sofia Brandt\n");
    Files.writeString(sheet.resolve("continuity.csv"), "From,To,Reading\nJ1-1,P2-1,0.2\n");
    assertEquals(0, at("store", "add", cable(), sheet).code());
  }

  private Run sign(Path key, String who) {
    return at("store", "sign", "unit:9", "--key", key, "--role", "inspector", "--who", who);
  }

  private Path key(String name) {
    Path key = folder.resolve(name);
    assertEquals(0, Run.of("report", "--new-key", key).code());
    return key;
  }

  /** At a terminal as on the page: the store knows whose each key is, and who is what. */
  @Test
  void at_a_terminal_too_nobody_signs_as_another_or_as_what_he_is_not() throws IOException {
    readBySofia();
    Path own = key("katarina.key");
    Path other = key("maren.key");
    for (String[] one : new String[][] {{MAREN, "maren"}, {KATARINA, "katarina"}}) {
      Path open = folder.resolve(one[1] + ".key.pub");
      assertEquals(0, at("people", "key", one[0], "--key", open, "--who", MAREN).code());
    }
    for (Run refused :
        List.of(
            sign(other, KATARINA),
            sign(other, MAREN),
            sign(key("new.key"), KATARINA),
            sign(own, "Petra Nobel"))) {
      assertEquals(64, refused.code(), refused.out());
    }
    assertTrue(sign(other, KATARINA).err().contains("it is another's"));
    assertTrue(sign(other, MAREN).err().contains("Maren Lindqvist is not inspector here"));
    assertEquals(0, sign(own, KATARINA).code());
    assertFalse(at("units", "9").out().contains("does not count"));
  }

  /** Such a signature was made past the program, or before there were people in the store. */
  @Test
  void a_signature_by_a_key_that_is_not_the_person_s_does_not_count_and_is_told() throws Exception {
    readBySofia();
    Path before = folder.resolve("before.db");
    Files.copy(folder.resolve("shop.db"), before);
    try (Connection past = DriverManager.getConnection("jdbc:sqlite:" + before);
        Statement statement = past.createStatement()) {
      statement.execute("drop trigger people_delete");
      statement.execute("delete from people");
    }
    Run signed =
        Run.of(
            "store",
            "sign",
            "unit:9",
            "--key",
            key("any.key"),
            "--role",
            "inspector",
            "--who",
            KATARINA,
            "--store",
            before);
    assertEquals(0, signed.code(), signed.err());
    assertEquals(0, Run.of("store", "copy", before, folder.resolve("shop.db")).code());
    String why = "does not count: the shop's list of keys does not have it";
    assertTrue(at("units", "9").out().replaceAll("\\s+", " ").contains(why));
    assertTrue(at("check", "unit:9").err().replaceAll("\\s+", " ").contains(why));
    LedTests tests = new LedTests(new StoreAtHand(folder.resolve("shop.db").toString(), Map.of()));
    assertFalse(tests.isInspected(tests.called("9").get(0)));
  }
}
