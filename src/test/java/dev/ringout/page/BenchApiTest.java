package dev.ringout.page;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.ringout.page.PageForLists.Answered;
import dev.ringout.support.Run;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Base64;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Whatever the page is answered is as docs/reference/bench-api.md and its schema have it. */
class BenchApiTest {
  private static final Path BOX = Path.of("harness-samples/swing-bridge/junction-box.xlsx");

  /** One white dot. */
  private static final byte[] PICTURE =
      Base64.getDecoder()
          .decode(
              "iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAAAAAA6fptVAAAACklEQVR4nGNgAAAAAgABSK+kcQAAAABJRU5ErkJggg==");

  private static final String CABLE =
      "Wire,From,To,Gauge,Length (m)\nW1,J1-1,P1-1,20,2\nW2,J1-2,P1-2,20,2\nW3,J1-3,P1-3,20,2\n";

  @TempDir private Path folder;
  private PageForLists page;

  @BeforeEach
  void open() throws Exception {
    page = new PageForLists(folder);
  }

  @AfterEach
  void close() {
    page.close();
    assertEquals(List.of(), page.failures);
  }

  private Answered begun() throws Exception {
    String list = page.take(page.handIn(BOX)).text("list");
    return page.post(
            "/api/session/start", Map.of("list", list, "serial", "0420", "tester", "R. Adeyemi"))
        .is("state");
  }

  private static Map<?, ?> session(Answered state) {
    return (Map<?, ?>) of(state.json(), "session");
  }

  private static Object of(Object object, String name) {
    return Objects.requireNonNull(((Map<?, ?>) object).get(name), name);
  }

  private Answered type(Answered state, String value) throws Exception {
    String step = String.valueOf(of(of(session(state), "step"), "id"));
    return page.post("/api/session/take", Map.of("step", step, "typed", value));
  }

  private String unit() throws Exception {
    return page.get("/api/units").is("units").each("units", "id").get(0);
  }

  @Test
  void every_answer_is_as_its_schema_says() throws Exception {
    page.get("/api/state").is("state");
    page.get("/api/who").is("who");
    page.get("/api/units").is("units");
    Answered state = begun();
    state = type(state, "OL").is("state");
    type(state, "OL").is("state");
    page.post("/api/session/note", Map.of("text", "lid missing")).is("state");
    page.photo("burnt", PICTURE).is("state");
    String unit = unit();
    page.get("/api/units/" + unit).is("unit");
    page.get("/api/units/" + unit + "/faces").is("faces");
    page.get("/api/units/" + unit + "/ticks").is("ticks");
    page.get("/api/keys").is("keys");
    page.get("/api/shop").is("shop");
    String lot = page.get("/api/shop").each("lots", "id").get(0);
    page.get("/api/lots/" + lot).is("lot");
    page.post("/api/session/jump", Map.of("to", "no such wire")).isRefused(404);
    page.post("/api/session/take", Map.of("step", "another", "typed", "1")).isRefused(409);
    page.post("/api/session/take", Map.of("step", 7)).isRefused(400);
    page.get("/api/units/none").isRefused(404);
    page.get("/api/none").isRefused(404);
    page.post("/api/session/finish", Map.of()).is("state");
    page.post("/api/session/note", Map.of("text", "after")).isRefused(404);
  }

  @Test
  void a_record_from_the_page_is_byte_for_byte_that_of_the_command_line() throws Exception {
    Answered state = begun();
    for (String value : List.of("28", "48", "0.02", "0.3?", "OL", "OL")) {
      Answered next = type(state, value);
      state = next.status() == 200 ? next : state;
    }
    page.post("/api/session/finish", Map.of());
    String unit = unit();
    for (String form : List.of("html", "pdf", "xlsx")) {
      Path written = folder.resolve("0420." + form);
      Run run = Run.of("report", "unit:0420", "-o", written, "--store", page.store());
      assertTrue(run.code() < 64, run.err());
      byte[] shown = page.bytes("/api/units/" + unit + "/record." + form);
      assertArrayEquals(Files.readAllBytes(written), shown, form);
      assertEquals(
          Files.readString(folder.resolve("0420." + form + ".seal")),
          new String(
              page.bytes("/api/units/" + unit + "/record." + form + ".seal"),
              StandardCharsets.UTF_8));
    }
  }

  @Test
  void an_end_is_made_by_one_person_and_checked_by_another() throws Exception {
    begun();
    String ticks = "/api/units/" + unit() + "/ticks";
    Map<?, ?> end = (Map<?, ?>) page.get(ticks).list("ends").get(0);
    Map<String, Object> tick =
        Map.of("wire", end.get("wire"), "item", end.get("item"), "pin", end.get("pin"));
    page.post(ticks, with(tick, "checked", "K. Novak")).isRefused(409);
    page.post(ticks, with(tick, "made", "R. Adeyemi")).is("ticks");
    page.post(ticks, with(tick, "checked", "r. adeyemi")).isRefused(400);
    Answered checked = page.post(ticks, with(tick, "checked", "K. Novak")).is("ticks");
    assertEquals("K. Novak", of(of(checked.list("ends").get(0), "checked"), "who"));
    page.post("/api/session/finish", Map.of()).is("state");
    page.post(ticks, with(tick, "undone", "R. Adeyemi")).is("ticks");
    Answered unit = page.get("/api/units/" + unit()).is("unit");
    assertEquals(true, unit.json().get("underWay"));
    assertEquals(List.of(), unit.list("leads"), "who ticks an end leads nothing");
    assertEquals(0, Run.of("store", "check", "--store", page.store()).code());
  }

  /** Found by an attacker: a second person had looked at a crimp that was made after it. */
  @Test
  void the_ends_of_a_wire_that_was_touched_are_made_and_checked_anew() throws Exception {
    String list = page.take(page.handIn("cable.csv", CABLE)).text("list");
    Map<String, Object> start = Map.of("list", list, "serial", "7", "tester", "R. Adeyemi");
    Answered state = page.post("/api/session/start", start);
    String ticks = "/api/units/" + unit() + "/ticks";
    for (String wire : List.of("W1", "W2")) {
      Map<String, Object> end = Map.of("wire", wire, "item", "J1", "pin", wire.substring(1));
      page.post(ticks, with(end, "made", "R. Adeyemi")).is("ticks");
      page.post(ticks, with(end, "checked", "K. Novak")).is("ticks");
    }
    type(state, "0.07");
    page.post("/api/session/finish", Map.of());
    page.post(
            "/api/session/start",
            Map.of(
                "unit", unit(), "tester", "R. Adeyemi", "touched", List.of("W1"), "why", "crimp"))
        .is("state");
    Map<String, Object> made = new HashMap<>();
    for (Object end : page.get(ticks).list("ends")) {
      made.put(of(end, "wire") + "-" + of(end, "item"), ((Map<?, ?>) end).get("made") != null);
    }
    assertEquals(false, made.get("W1-J1"));
    assertEquals(true, made.get("W2-J1"));
  }

  private static Map<String, Object> with(Map<String, Object> tick, String what, String who) {
    return Map.of(
        "wire", tick.get("wire"),
        "item", tick.get("item"),
        "pin", tick.get("pin"),
        "what", what,
        "who", who);
  }

  @Test
  void nobody_inspects_on_the_page_what_he_measured_himself() throws Exception {
    type(begun(), "OL");
    Path keys = Files.createDirectories(folder.resolve("keys"));
    assertEquals(
        0,
        Run.of("report", "--new-key", keys.resolve("inspector.key"), "--passphrase", pass())
            .code());
    String sign = "/api/units/" + unit() + "/sign";
    Map<String, Object> other =
        Map.of(
            "who", "M. Lindqvist",
            "role", "inspector",
            "key", "inspector.key",
            "passphrase", "swing");
    page.post(sign, other).isRefused(400);
    page.post("/api/session/finish", Map.of()).is("state");
    Map<String, Object> own =
        Map.of(
            "who",
            "R. Adeyemi",
            "role",
            "inspector",
            "key",
            "inspector.key",
            "passphrase",
            "swing");
    page.post(sign, own).isRefused(400);
    page.post(
            sign,
            Map.of(
                "who",
                "M. Lindqvist",
                "role",
                "inspector",
                "key",
                "../ringout.db",
                "passphrase",
                ""))
        .isRefused(400);
    Map<String, Object> asTester = new HashMap<>(other);
    asTester.put("role", "tester");
    page.post(sign, asTester).isRefused(400);
    page.post(sign, other).is("unit");
    assertEquals(0, Run.of("store", "check", "--store", page.store()).code());
  }

  /** A verdict ends a led test: a note would have let an inspector sign at the first reading. */
  @Test
  void what_is_said_of_a_unit_under_way_does_not_end_its_test() throws Exception {
    type(begun(), "OL");
    String unit = "/api/units/" + unit();
    page.post(unit + "/note", Map.of("text", "lid missing", "who", "K. Novak")).is("unit");
    assertEquals(true, page.get(unit).json().get("underWay"));
    assertTrue(
        Run.of("store", "sign", "unit:0420", "--who", "K. Novak", "--role", "inspector").code()
            >= 64);
    assertEquals(0, Run.of("store", "check", "--store", page.store()).code());
  }

  /** Found by an attacker: the record of a test in its middle was signed, and conformed. */
  @Test
  void a_record_is_not_signed_while_a_test_is_under_way_and_says_so() throws Exception {
    type(begun(), "OL");
    Path keys = Files.createDirectories(folder.resolve("keys"));
    Run.of("report", "--new-key", keys.resolve("inspector.key"), "--passphrase", pass());
    String unit = "/api/units/" + unit();
    Map<String, Object> key = Map.of("key", "inspector.key", "passphrase", "swing");
    page.post(unit + "/record.html.seal", key).isRefused(400);
    assertTrue(
        new String(page.bytes(unit + "/record.html"), StandardCharsets.UTF_8)
            .contains("Test 1 is still under way"));
    page.post("/api/session/finish", Map.of());
    assertEquals(200, page.post(unit + "/record.html.seal", key).status());
  }

  @Test
  void a_reading_of_an_earlier_start_is_found_and_taken_back() throws Exception {
    String list = page.take(page.handIn("cable.csv", CABLE)).text("list");
    Map<String, Object> start = Map.of("list", list, "serial", "7", "tester", "R. Adeyemi");
    type(type(page.post("/api/session/start", start), "0.07"), "0.07");
    page.post("/api/session/leave", Map.of());
    page.post("/api/session/start", start);
    String unit = "/api/units/" + unit();
    Answered readings = page.get(unit + "/readings").is("readings");
    assertEquals(2, readings.list("readings").size());
    Map<?, ?> latest = (Map<?, ?>) readings.list("readings").get(0);
    String cell = String.valueOf(latest.get("cell"));
    Map<String, Object> back =
        Map.of("cell", cell, "why", "the probe slipped", "who", "R. Adeyemi");
    page.post(unit + "/take-back", Map.of("cell", cell, "why", "", "who", "R. Adeyemi"))
        .isRefused(400);
    Answered after = page.post(unit + "/take-back", back).is("unit");
    assertTrue(after.each("history", "text").stream().anyMatch(one -> one.contains(cell)), cell);
    page.post(unit + "/take-back", back).isRefused(400);
    List<String> taken = page.get(unit + "/readings").each("readings", "takenBack");
    assertEquals(List.of("true", "false"), taken);
    // What was taken back is asked for again, and nothing else than before.
    assertTrue(String.valueOf(of(session(page.get("/api/state")), "progress")).contains("made=1,"));
    String points = String.valueOf(latest.get("text"));
    assertEquals(
        List.of(points),
        page
            .get(unit + "/readings?search=" + points.substring(0, points.indexOf(' ')))
            .each("readings", "text")
            .stream()
            .distinct()
            .toList());
  }

  @Test
  void the_history_shows_what_was_done_and_seen_beside_the_readings() throws Exception {
    type(begun(), "OL");
    page.photo("burnt", PICTURE).is("state");
    page.post("/api/session/finish", Map.of());
    String unit = unit();
    page.post(
            "/api/session/start",
            Map.of(
                "unit",
                unit,
                "tester",
                "R. Adeyemi",
                "opened",
                List.of("J1"),
                "why",
                "new contact"))
        .is("state");
    Answered now = page.get("/api/units/" + unit).is("unit");
    assertEquals(List.of("test", "photo", "rework", "test"), now.each("history", "kind"));
    assertTrue(now.each("history", "text").get(2).endsWith("J1. new contact"));
    assertArrayEquals(PICTURE, page.bytes(now.each("history", "photo").get(1)));
  }

  /** The table of the readings has no row then, and had no column either. */
  @Test
  void a_test_of_which_nothing_was_read_yet_has_its_record_in_every_form() throws Exception {
    begun();
    for (String form : List.of("html", "pdf", "xlsx")) {
      assertTrue(page.bytes("/api/units/" + unit() + "/record." + form).length > 0, form);
    }
  }

  @Test
  void the_keys_of_the_bench_are_named_and_those_that_others_can_read() throws Exception {
    Path keys = Files.createDirectories(folder.resolve("keys"));
    for (String name : List.of("inspector.key", "lead.key")) {
      assertEquals(0, Run.of("report", "--new-key", keys.resolve(name)).code());
    }
    Files.setPosixFilePermissions(
        keys.resolve("lead.key"), PosixFilePermissions.fromString("rw-r--r--"));
    Answered named = page.get("/api/keys").is("keys");
    assertEquals(List.of("inspector.key", "lead.key"), named.list("keys"));
    assertEquals(List.of("lead.key"), named.list("open"));
  }

  private Path pass() throws Exception {
    return Files.writeString(folder.resolve("pass"), "swing\n");
  }
}
