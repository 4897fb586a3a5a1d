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
    assertEquals(0, Run.of("store", "check", "--store", page.store()).code());
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
    page.post(sign, other).is("unit");
    assertEquals(0, Run.of("store", "check", "--store", page.store()).code());
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
