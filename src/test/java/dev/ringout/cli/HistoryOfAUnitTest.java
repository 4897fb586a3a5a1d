package dev.ringout.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.ringout.seal.Keys;
import dev.ringout.seal.Seal;
import dev.ringout.support.Run;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What failed first stays in the history of a unit, whoever would rather have it gone. */
class HistoryOfAUnitTest {
  @TempDir Path folder;
  private Path key = Path.of("");

  @BeforeEach
  void unit() throws IOException {
    key = folder.resolve("key");
    assertEquals(0, Run.of("report", "--new-key", key).code());
    write("list/wires.csv", "Wire,From,To", "W1,J1-A,P1-1");
    write("list/header.csv", "Name,Value", "title,Box", "drawing,HSB-1");
    for (String[] sheet : new String[][] {{"bad", "OL"}, {"good", "0.2"}}) {
      write(sheet[0] + "/continuity.csv", "Step,From,To,Reading", "1,J1-A,P1-1," + sheet[1]);
      write(sheet[0] + "/job.csv", "Name,Value", "serial number,0418");
    }
  }

  private void write(String name, String... rows) throws IOException {
    Path file = folder.resolve(name);
    Files.createDirectories(file.getParent());
    Files.write(file, List.of(rows));
  }

  private Run record(String sheet, String name, Object... more) {
    List<Object> all = new ArrayList<>(List.of("report", folder.resolve("list")));
    all.addAll(List.of(folder.resolve(sheet), "-o", folder.resolve(name)));
    all.addAll(List.of(more));
    return Run.of(all.toArray());
  }

  private Run signed(String sheet, String name, Object... more) {
    List<Object> all = new ArrayList<>(List.of("--seal", key));
    all.addAll(List.of(more));
    return record(sheet, name, all.toArray());
  }

  private Run retest(String name, String before, Object... more) {
    List<Object> all = new ArrayList<>(List.of("--continues", folder.resolve(before)));
    all.addAll(List.of(more));
    return signed("good", name, all.toArray());
  }

  private Run verify(String name, String... keys) {
    List<Object> all = new ArrayList<>(List.of("report", "--verify", folder.resolve(name)));
    for (String one : keys) {
      all.addAll(List.of("--key", folder.resolve(one)));
    }
    return Run.of(all.toArray());
  }

  private void change(String name, UnaryOperator<String> how) throws IOException {
    Path seal = folder.resolve(name + ".seal");
    Files.writeString(seal, how.apply(Files.readString(seal)));
  }

  /** What a forger would make of a record that failed: another verdict, and nothing that failed. */
  private static String laundered(String seal) {
    return seal.replaceAll("(?m)^(failed|key|signature)\t.*\n", "")
        .replace("verdict\tfaults", "verdict\tconforms");
  }

  private static void assertRefused(Run run, String why) {
    assertEquals(65, run.code(), run.out() + run.err());
    assertTrue(run.err().contains(why), run.err());
  }

  @Test
  void a_chain_by_one_key_is_as_it_was_sealed() {
    assertEquals(1, signed("bad", "first.html").code());
    assertEquals(0, retest("second.html", "first.html").code());
    assertEquals(0, retest("third.html", "second.html").code());
    Run run = verify("third.html", "key.pub");
    assertEquals(0, run.code(), run.out());
    for (String said :
        new String[] {
          "as sealed   earlier record first.html\n",
          "as sealed   seal of earlier record first.html\n",
          "as sealed   seal of earlier record first.html: signature by key ",
          "as sealed   history of first.html\n",
          "as sealed   history of second.html\n"
        }) {
      assertTrue(run.out().contains(said), said + run.out());
    }
  }

  @Test
  void a_history_without_its_signature_is_not_signed_again() throws IOException {
    assertEquals(1, signed("bad", "first.html").code());
    change("first.html", HistoryOfAUnitTest::laundered);
    assertRefused(retest("second.html", "first.html"), "first.html is not signed");
    assertFalse(Files.exists(folder.resolve("second.html")));
    assertRefused(
        record(
            "good",
            "second.html",
            "--continues",
            folder.resolve("first.html"),
            "--key",
            folder.resolve("key.pub")),
        "first.html is not signed");
  }

  @Test
  void a_key_that_is_not_known_here_vouches_for_nothing() throws IOException {
    Path other = folder.resolve("other");
    Run.of("report", "--new-key", other);
    assertEquals(1, record("bad", "first.html", "--seal", other).code());
    assertRefused(retest("second.html", "first.html"), "which is none that is known here");
    Path theirs = folder.resolve("other.pub");
    assertEquals(0, retest("second.html", "first.html", "--key", theirs).code());
    Run one = verify("second.html", "key.pub");
    assertEquals(2, one.code(), one.out());
    assertTrue(
        one.out().contains("not shown   seal of earlier record first.html: signature good, by key"),
        one.out());
    assertEquals(0, verify("second.html", "key.pub", "other.pub").code());
    assertRefused(
        record("good", "third.html", "--continues", folder.resolve("first.html")),
        "which is none that is known here");
  }

  @Test
  void a_signature_that_does_not_hold_is_continued_by_none() throws IOException {
    assertEquals(1, signed("bad", "first.html").code());
    change("first.html", seal -> seal.replaceAll("(?m)^failed\t.*\n", ""));
    assertRefused(retest("second.html", "first.html"), "is not as it was sealed");
  }

  @Test
  void without_keys_records_go_on_from_each_other_and_say_that_anyone_may_have_made_them() {
    assertEquals(1, record("bad", "first.html").code());
    assertEquals(
        0, record("good", "second.html", "--continues", folder.resolve("first.html")).code());
    Run run = verify("second.html");
    assertEquals(2, run.code(), run.out());
    assertTrue(run.out().contains("not shown   signature: the seal is not signed"), run.out());
    assertTrue(
        run.out().contains("not shown   seal of earlier record first.html: it is not signed"),
        run.out());
  }

  @Test
  void a_seal_that_was_exchanged_later_differs_however_well_it_is_signed() throws Exception {
    assertEquals(1, signed("bad", "first.html").code());
    assertEquals(0, retest("second.html", "first.html").code());
    Path file = folder.resolve("first.html.seal");
    Seal seal = Seal.read(Files.readString(file)).seal();
    Files.writeString(file, Seal.read(laundered(seal.text())).seal().signed(Keys.pair(key)));
    Run run = verify("second.html", "key.pub");
    assertEquals(1, run.code(), run.out());
    assertTrue(
        run.out().contains("DIFFERS     seal of earlier record first.html: changed"), run.out());
    assertTrue(
        run.out().contains("DIFFERS     history of first.html: its own seal says conforms"),
        run.out());
  }

  /** Signed with the right key, by a program that forgets. */
  @Test
  void a_value_that_failed_before_and_is_not_kept_is_named() throws Exception {
    assertEquals(1, signed("bad", "first.html").code());
    assertEquals(0, retest("second.html", "first.html", "--done", "W1 crimped anew").code());
    assertEquals(0, retest("third.html", "second.html").code());
    Path file = folder.resolve("third.html.seal");
    String text = Seal.read(Files.readString(file)).seal().text();
    String forgetful =
        text.replaceAll("(?m)^(failed|note)\t.*\n", "").replaceFirst("earlier\tfirst.*\n", "");
    Files.writeString(file, Seal.read(forgetful).seal().signed(Keys.pair(key)));
    Run run = verify("third.html", "key.pub");
    assertEquals(1, run.code(), run.out());
    assertTrue(
        run.out()
            .contains(
                "DIFFERS     history of second.html: J1-A to P1-1 OL failed first, and is not"
                    + " kept"),
        run.out());
    assertTrue(run.out().contains("its own seal names other records before it"), run.out());
    assertTrue(run.out().contains("what was done before it is told otherwise"), run.out());
  }

  @Test
  void a_record_that_is_not_the_last_says_which_one_goes_on_from_it() {
    assertEquals(1, signed("bad", "first.html").code());
    assertEquals(0, retest("second.html", "first.html").code());
    Run run = verify("first.html", "key.pub");
    assertEquals(0, run.code(), run.out());
    assertTrue(
        run.out().contains("note        second.html goes on from first.html: the later one stands"),
        run.out());
  }

  @Test
  void two_retests_of_one_record_are_two_histories_and_said_to_be() {
    assertEquals(1, signed("bad", "first.html").code());
    assertEquals(
        1, signed("bad", "second.html", "--continues", folder.resolve("first.html")).code());
    Run fork = retest("third.html", "first.html");
    assertEquals(0, fork.code(), fork.err());
    assertTrue(fork.err().contains("first.html: is continued already by second.html"), fork.err());
    for (String[] one :
        new String[][] {{"third.html", "second.html"}, {"second.html", "third.html"}}) {
      Run run = verify(one[0], "key.pub");
      assertEquals(2, run.code(), run.out());
      assertTrue(
          run.out().contains("not shown   " + one[1] + " goes on from first.html too"), run.out());
    }
  }

  @Test
  void a_stranger_s_seal_beside_a_signed_record_makes_no_history() throws IOException {
    assertEquals(1, signed("bad", "first.html").code());
    assertEquals(0, retest("second.html", "first.html").code());
    write("noise.seal", "ringout-seal/1", "nothing");
    String text = Files.readString(folder.resolve("second.html.seal"));
    Files.writeString(
        folder.resolve("other.html.seal"),
        text.substring(0, text.indexOf("key\t")).replace("second.html", "other.html"));
    Run run = verify("second.html", "key.pub");
    assertEquals(0, run.code(), run.out());
  }

  @Test
  void a_fork_by_a_key_that_is_not_given_is_a_note_and_with_the_key_it_counts() {
    assertEquals(1, signed("bad", "first.html").code());
    assertEquals(0, retest("second.html", "first.html").code());
    Path other = folder.resolve("other");
    Run.of("report", "--new-key", other);
    assertEquals(
        0,
        record(
                "good",
                "third.html",
                "--seal",
                other,
                "--key",
                folder.resolve("key.pub"),
                "--continues",
                folder.resolve("first.html"))
            .code());
    Run run = verify("second.html", "key.pub");
    assertEquals(0, run.code(), run.out());
    assertTrue(
        run.out().contains("note        third.html says that it goes on from first.html too"),
        run.out());
    assertEquals(2, verify("second.html", "key.pub", "other.pub").code());
  }

  /** To begin anew is the plainest way to lose what failed. */
  @Test
  void a_record_of_the_unit_that_is_in_no_history_with_this_one_is_named() {
    assertEquals(1, signed("bad", "first.html").code());
    assertEquals(0, signed("good", "again.html").code());
    Run run = verify("again.html", "key.pub");
    assertEquals(0, run.code(), run.out());
    assertTrue(run.out().contains("note        first.html is of the same unit"), run.out());
  }

  /** Escape sequences in a seal could write "As sealed" over what verify says. */
  @Test
  void what_a_seal_says_steers_no_terminal() throws Exception {
    assertEquals(1, signed("bad", "first.html").code());
    Path file = folder.resolve("first.html.seal");
    String text = Seal.read(Files.readString(file)).seal().text();
    String steering =
        text.replace("input\tlist/wires.csv", "input\t\u001b[2J\u001b[HAs sealed\u202e\u0007");
    Files.writeString(file, Seal.read(steering).seal().signed(Keys.pair(key)));
    Run run = verify("first.html", "key.pub");
    assertFalse(run.out().contains("\u001b"), run.out());
    assertFalse(run.out().contains("\u202e"), run.out());
    assertTrue(run.out().contains("\ufffd[2J\ufffd[HAs sealed"), run.out());
    Files.writeString(file, text.replace("record\tfirst.html", "record\tfirst.html\rAs sealed"));
    Run carriage = verify("first.html", "key.pub");
    assertEquals(65, carriage.code(), carriage.out());
  }

  /** A name that leads elsewhere would let a seal ask for any file. */
  @Test
  void a_record_before_that_does_not_lie_beside_is_not_looked_for() throws Exception {
    assertEquals(1, signed("bad", "first.html").code());
    assertEquals(0, retest("second.html", "first.html").code());
    Path file = folder.resolve("second.html.seal");
    Seal seal = Seal.read(Files.readString(file)).seal();
    String text = seal.text().replace("earlier\tfirst.html", "earlier\tlist/../../first.html");
    Files.writeString(file, Seal.read(text).seal().signed(Keys.pair(key)));
    Run run = verify("second.html", "key.pub");
    assertEquals(2, run.code(), run.out());
    assertTrue(run.out().contains("records of one history lie beside each other"), run.out());
  }

  @Test
  void two_records_of_one_history_have_two_names() throws IOException {
    assertEquals(1, signed("bad", "first.html").code());
    Files.createDirectory(folder.resolve("later"));
    assertRefused(retest("later/first.html", "first.html"), "is called first.html too");
  }

  @Test
  void a_key_beside_the_secret_one_that_is_not_its_own_is_not_taken() throws IOException {
    Run.of("report", "--new-key", folder.resolve("other"));
    Files.copy(
        folder.resolve("other.pub"),
        folder.resolve("key.pub"),
        StandardCopyOption.REPLACE_EXISTING);
    Run run = signed("bad", "first.html");
    assertEquals(64, run.code(), run.err());
    assertTrue(run.err().contains("key.pub is not the public key of"), run.err());
  }

  @Test
  void a_secret_key_that_others_can_read_is_said_to_be_none() throws IOException {
    assertFalse(signed("bad", "first.html").err().contains("may be read by others"));
    Files.setPosixFilePermissions(key, PosixFilePermissions.fromString("rw-r--r--"));
    Run run = signed("bad", "second.html");
    assertEquals(1, run.code(), run.err());
    assertTrue(run.err().contains("key: may be read by others than its owner"), run.err());
  }

  /** Text behind the signature, and other ways to say the same, are no part of what was signed. */
  @Test
  void a_seal_that_says_the_same_otherwise_is_none() throws IOException {
    assertEquals(1, signed("bad", "first.html").code());
    String seal = Files.readString(folder.resolve("first.html.seal"));
    List<UnaryOperator<String>> ways =
        List.of(
            text -> text.strip(),
            text -> text + "\n",
            text -> text.replaceFirst("\n$", "\tmore\n"),
            text -> text.replaceFirst("\n$", " \n"),
            text -> text.replace("\n", "\r\n"),
            text -> text.replaceFirst("==\n$", "=\n"),
            text -> text.replaceFirst("=\n$", "\n"),
            text -> text.replaceFirst("(key\t.*)\n", "$1\tmore\n"),
            text -> text.replaceFirst("(key\t.*\n)", "$1$1"),
            text -> "\ufeff" + text);
    for (UnaryOperator<String> way : ways) {
      Files.writeString(folder.resolve("first.html.seal"), way.apply(seal));
      Run run = verify("first.html", "key.pub");
      assertTrue(run.code() == 65 || run.code() == 1, run.out() + way.apply(seal));
    }
    Files.writeString(folder.resolve("first.html.seal"), seal);
    assertEquals(0, verify("first.html", "key.pub").code());
  }
}
