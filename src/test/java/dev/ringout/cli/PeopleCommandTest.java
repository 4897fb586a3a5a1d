package dev.ringout.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.networknt.schema.InputFormat;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import dev.ringout.support.Run;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Who may sign in is said at a terminal. */
class PeopleCommandTest {
  private static final String MAREN = "Maren Lindqvist";

  @TempDir private Path folder;

  private Run at(Object... words) {
    List<Object> all = new ArrayList<>(List.of(words));
    all.addAll(List.of("--store", folder.resolve("shop.db")));
    return Run.of(all.toArray());
  }

  private Path passphrase(String text) throws IOException {
    return Files.writeString(folder.resolve("passphrase.txt"), text + "\n");
  }

  private Run add(String name, String roles, String passphrase) throws IOException {
    return at(
        "people",
        "add",
        name,
        "--role",
        roles,
        "--passphrase",
        passphrase(passphrase),
        "--who",
        MAREN);
  }

  @Test
  void a_shop_begins_with_an_administrator_and_never_loses_the_last() throws IOException {
    Run first = add("Rotimi Adeyemi", "tester", "four lamps on a bridge");
    assertEquals(64, first.code());
    assertTrue(first.err().contains("the first is an administrator"), first.err());
    assertEquals(0, add(MAREN, "administrator,lead", "four lamps on a bridge").code());
    assertEquals(0, add("Rotimi Adeyemi", "tester", "vier Lampen über dem Fluß").code());
    for (Run last :
        List.of(
            at("people", "withdraw", MAREN, "--why", "left", "--who", MAREN),
            at("people", "role", MAREN, "--role", "lead", "--who", MAREN))) {
      assertEquals(64, last.code());
      assertTrue(last.err().contains("is the last administrator"), last.err());
    }
    Run gone = at("people", "withdraw", "rotimi adeyemi", "--why", "left", "--who", MAREN);
    assertEquals("Rotimi Adeyemi: withdrawn: left (was tester).\n", gone.out());
    String listed = at("people", "list").out();
    assertTrue(listed.startsWith("2 people in "), listed);
    assertTrue(listed.contains("Maren Lindqvist           lead, administrator; since "), listed);
    assertEquals(0, at("store", "check").code());
  }

  @Test
  void what_is_kept_of_a_passphrase_is_told_nobody() throws IOException {
    add(MAREN, "administrator", "four lamps on a bridge");
    for (Run run :
        List.of(at("people", "list", "--history"), at("people", "list", "--history", "--json"))) {
      assertEquals(0, run.code());
      assertTrue(run.out().contains(MAREN), run.out());
      assertFalse(run.out().contains("argon2"), run.out());
    }
  }

  @Test
  void every_document_follows_its_schema() throws IOException {
    Path nowhere = folder.resolve("nowhere").resolve("shop.db");
    Run refused = Run.of("people", "list", "--json", "--store", nowhere);
    assertEquals(66, refused.code());
    add(MAREN, "administrator", "four lamps on a bridge");
    add("Rotimi Adeyemi", "tester", "four lamps on a bridge");
    at("people", "withdraw", "Rotimi Adeyemi", "--why", "left", "--who", MAREN);
    String schema = Files.readString(Path.of("docs/reference/people.schema.json"));
    for (Run run : List.of(refused, at("people", "list", "--history", "--json"))) {
      assertEquals(
          List.of(),
          SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
              .getSchema(schema)
              .validate(run.out(), InputFormat.JSON),
          run.out());
    }
  }

  @Test
  void a_copy_and_a_backup_hold_the_people_too() throws IOException {
    add(MAREN, "administrator", "four lamps on a bridge");
    Path backup = folder.resolve("night.db");
    assertEquals(0, at("store", "backup", backup).code());
    assertTrue(Run.of("people", "list", "--store", backup).out().contains(MAREN));
    assertEquals(
        at("store", "check").out().replaceAll("(?s).*Digest", ""),
        Run.of("store", "check", "--store", backup).out().replaceAll("(?s).*Digest", ""));
  }

  @Test
  void what_can_t_be_meant_changes_nothing() throws IOException {
    add(MAREN, "administrator", "four lamps on a bridge");
    String before = at("store", "check").out();
    assertEquals(64, add("M. Lindqvist", "tester", "four lamps on a bridge").code());
    assertEquals(64, add("Rotimi Adeyemi", "tester", "too short").code());
    assertEquals(64, add("Rotimi Adeyemi", "captain", "four lamps on a bridge").code());
    assertEquals(64, at("people", "role", "Nobody Here", "--role", "lead", "--who", MAREN).code());
    assertEquals(64, at("people", "passphrase", MAREN, "--who", MAREN).code(), "no terminal");
    assertEquals(64, at("people").code());
    assertEquals(before, at("store", "check").out());
  }

  @Test
  void a_bench_is_not_open_to_a_shop_in_which_nobody_can_sign_in() throws IOException {
    assertEquals(66, at("bench", "--listen", "127.0.0.1").code());
    at("store", "migrate");
    Run nobody = at("bench", "--listen", "127.0.0.1");
    assertEquals(66, nobody.code());
    assertTrue(nobody.err().contains("nobody can sign in yet"), nobody.err());
  }

  @ParameterizedTest
  @CsvSource({
    "0.0.0.0, is every address",
    "[::], is every address",
    "192.0.2.7, is another machine",
    "no-such-machine.invalid, there is no machine called",
    "127.0.0.1:70000, is no port",
    "https://127.0.0.1, is no HOST",
    "127.0.0.1/x, is no HOST"
  })
  void it_is_listened_at_one_name_of_this_machine(String host, String why) throws IOException {
    Run run = at("bench", "--listen", host);
    assertEquals(73, run.code());
    assertTrue(run.err().contains(why), run.err());
  }

  @Test
  void a_certificate_that_can_t_be_used_is_told() throws IOException {
    add(MAREN, "administrator", "four lamps on a bridge");
    Path none = Files.writeString(folder.resolve("shop.p12"), "no certificate");
    Run run =
        at(
            "bench",
            "--listen",
            "127.0.0.1",
            "--certificate",
            none,
            "--passphrase",
            passphrase("secret"));
    assertEquals(65, run.code());
    assertTrue(run.err().contains("shop.p12"), run.err());
    assertEquals(64, at("bench", "--listen", "127.0.0.1", "--certificate", none).code());
    assertEquals(64, at("bench", "--listen", "127.0.0.1", "--practice").code());
    assertEquals(64, at("bench", "--listen", "127.0.0.1", "--port", "8443").code());
  }

  /** Two benches that are both called bench would take each other's tests. */
  @Test
  void a_bench_on_a_server_has_a_name_of_its_own() {
    Run run = Run.of("bench", "--store", "postgresql://127.0.0.1:9/shop");
    assertEquals(64, run.code());
    assertTrue(run.err().contains("--station"), run.err());
  }
}
