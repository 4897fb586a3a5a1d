package dev.ringout.page;

import static dev.ringout.page.ShopWithPage.INSPECTOR;
import static dev.ringout.page.ShopWithPage.LEAD;
import static dev.ringout.page.ShopWithPage.SECOND_TESTER;
import static dev.ringout.page.ShopWithPage.TESTER;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.ringout.page.ShopWithPage.Tablet;
import dev.ringout.people.Role;
import dev.ringout.support.Run;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a lead hand sees of the shop, and who may sign what he sees. */
class ShopFloorTest {
  @TempDir private Path folder;

  @SuppressWarnings("NullAway.Init")
  private ShopWithPage shop;

  @BeforeEach
  void open() throws Exception {
    shop = new ShopWithPage(folder, BenchWithPage.lamps(folder));
  }

  @AfterEach
  void close() {
    shop.close();
  }

  private static Map<?, ?> map(Map<?, ?> of, String name) {
    return (Map<?, ?>) Objects.requireNonNull(of.get(name), name);
  }

  private static List<?> list(Map<?, ?> of, String name) {
    return (List<?>) Objects.requireNonNull(of.get(name), name);
  }

  private Map<?, ?> floor() throws Exception {
    return ShopWithPage.json(shop.signedIn(LEAD).get("/api/shop"));
  }

  private static Map<?, ?> begun(Tablet tester, String serial) throws Exception {
    return begun(tester, serial, Map.of());
  }

  private static Map<?, ?> begun(Tablet tester, String serial, Map<String, String> conditions)
      throws Exception {
    HttpResponse<String> begun =
        tester.post(
            "/api/session/start",
            Map.of(
                "list",
                tester.list(),
                "serial",
                serial,
                "takeOver",
                true,
                "conditions",
                conditions.entrySet().stream()
                    .map(one -> Map.of("name", one.getKey(), "value", one.getValue()))
                    .toList()));
    assertEquals(200, begun.statusCode(), begun.body());
    return map(ShopWithPage.json(begun), "session");
  }

  /** Reads every step as the list has it, but what goes to a broken point. */
  private static void reads(Tablet tester, Map<?, ?> session, String brokenAt) throws Exception {
    Map<?, ?> now = session;
    while (now.get("step") != null) {
      Map<?, ?> step = map(now, "step");
      boolean joined = String.valueOf(map(step, "expected").get("text")).contains("mΩ");
      boolean broken = !brokenAt.isEmpty() && step.toString().contains(brokenAt);
      String typed = joined && !broken ? "0.07" : "OL";
      HttpResponse<String> taken =
          tester.post(
              "/api/session/take", Map.of("step", String.valueOf(step.get("id")), "typed", typed));
      assertEquals(200, taken.statusCode(), taken.body());
      now = map(ShopWithPage.json(taken), "session");
      if (now.get("offer") != null) {
        now =
            map(
                ShopWithPage.json(tester.post("/api/session/lead", Map.of("follow", false))),
                "session");
      }
    }
  }

  @Test
  void a_test_that_is_led_is_seen_with_bench_person_and_last_reading() throws Exception {
    Tablet tester = shop.signedIn(TESTER);
    Map<?, ?> step = map(begun(tester, "S-1"), "step");
    assertEquals(0, list(floor(), "waiting").size());
    tester.post(
        "/api/session/take", Map.of("step", String.valueOf(step.get("id")), "typed", "0.07"));
    Map<?, ?> led = (Map<?, ?>) list(floor(), "underWay").get(0);
    assertEquals("Bench 1", led.get("station"));
    assertEquals(TESTER, led.get("who"));
    assertEquals(1, led.get("readings"));
    assertTrue(String.valueOf(led.get("last")).contains("J1-A"), led.toString());
    assertEquals(1, ((Map<?, ?>) list(floor(), "lots").get(0)).get("underWay"));
    assertEquals(403, shop.signedIn(SECOND_TESTER).get("/api/shop").statusCode());
  }

  /** A lead hand looks where a bench hangs, and whether its meters may still be believed. */
  @Test
  void of_each_bench_is_seen_which_step_is_asked_since_when_and_until_when_its_meter_is_good()
      throws Exception {
    LocalDate today = LocalDate.now(ZoneId.of("UTC"));
    Tablet tester = shop.signedIn(TESTER);
    Map<?, ?> session =
        begun(tester, "S-5", Map.of("calibration due", today.minusDays(3).toString()));
    shop.page.bench().lookForOthers();
    Map<?, ?> led = (Map<?, ?>) list(floor(), "underWay").get(0);
    assertEquals("here", led.get("leads"));
    assertEquals("1: J1-A to P1-1", led.get("asked"));
    assertTrue(String.valueOf(led.get("since")).startsWith(today.toString()), led.toString());
    assertEquals(-3, ((Map<?, ?>) list(led, "meters").get(0)).get("daysLeft"));

    String step = String.valueOf(map(session, "step").get("id"));
    tester.post("/api/session/take", Map.of("step", step, "typed", "0.07"));
    shop.page.bench().lookForOthers();
    Map<?, ?> later = (Map<?, ?>) list(floor(), "underWay").get(0);
    assertTrue(String.valueOf(later.get("asked")).startsWith("2: "), later.toString());
    assertEquals(200, tester.post("/api/session/leave", Map.of()).statusCode());
    Map<?, ?> left = (Map<?, ?>) list(floor(), "underWay").get(0);
    assertEquals("left", left.get("leads"));
    assertEquals("", left.get("asked"));
  }

  /** The same sentences that the command says, and the same page. */
  @Test
  void a_lot_is_seen_with_each_of_its_units_while_they_are_tested() throws Exception {
    Tablet tester = shop.signedIn(TESTER);
    for (String serial : List.of("S-6", "S-7")) {
      reads(tester, begun(tester, serial), "J1-B");
      assertEquals(200, tester.post("/api/session/finish", Map.of()).statusCode());
    }
    begun(tester, "S-8");
    Tablet lead = shop.signedIn(LEAD);
    String id = String.valueOf(((Map<?, ?>) list(floor(), "lots").get(0)).get("id"));
    Map<?, ?> lot = ShopWithPage.json(lead.get("/api/lots/" + id));
    assertEquals(
        "3 units: 0 conform, 2 have faults, 1 is not complete. NO INSULATION TEST: the list asks"
            + " for none.",
        lot.get("verdict"));
    assertEquals(
        List.of("faults", "faults", "incomplete"),
        list(lot, "units").stream().map(unit -> ((Map<?, ?>) unit).get("stands")).toList());
    assertTrue(list(lot, "shared").toString().contains("S-6, S-7"), lot.toString());
    HttpResponse<String> paper = lead.get("/api/lots/" + id + "/lot.html");
    assertEquals(200, paper.statusCode());
    Path written = folder.resolve("lot.html");
    Run run =
        Run.of("lot", "unit:S-6", "-o", written, "--store", folder.resolve("units.db").toString());
    assertTrue(run.code() < 64, run.err());
    assertEquals(Files.readString(written), paper.body());
    assertEquals(404, lead.get("/api/lots/none").statusCode());
    assertEquals(403, tester.get("/api/lots/" + id).statusCode());
  }

  @Test
  void the_faults_of_the_week_are_counted_by_place_and_by_kind() throws Exception {
    Tablet tester = shop.signedIn(TESTER);
    for (String serial : List.of("S-2", "S-3")) {
      reads(tester, begun(tester, serial), "J1-B");
      assertEquals(200, tester.post("/api/session/finish", Map.of()).statusCode());
    }
    Map<?, ?> floor = floor();
    assertEquals(2, ((Map<?, ?>) list(floor, "lots").get(0)).get("faulty"));
    assertTrue(list(floor, "kinds").contains(Map.of("what", "open", "units", 2)), floor.toString());
    assertTrue(list(floor, "places").contains(Map.of("what", "J1", "units", 2)), floor.toString());
    assertEquals(List.of(), list(floor, "waiting"));
  }

  /** Two roles in one person: what counts is who held the probes. */
  @Test
  void what_conforms_waits_for_an_inspector_who_is_not_the_tester() throws Exception {
    shop.door.people().roles(TESTER, Set.of(Role.TESTER, Role.INSPECTOR), ShopWithPage.said());
    Tablet tester = shop.signedIn(TESTER);
    reads(tester, begun(tester, "S-4"), "");
    assertEquals(200, tester.post("/api/session/finish", Map.of()).statusCode());
    Map<?, ?> waits = (Map<?, ?>) list(floor(), "waiting").get(0);
    assertEquals("S-4", map(waits, "unit").get("serial"));
    assertEquals(TESTER, waits.get("who"));

    String sign = "/api/units/" + tester.unit("S-4") + "/sign";
    HttpResponse<String> own = tester.post(sign, signature(tester));
    assertEquals(400, own.statusCode());
    assertTrue(own.body().contains("can't sign as its inspector"), own.body());
    assertEquals(1, list(floor(), "waiting").size());

    Tablet inspector = shop.signedIn(INSPECTOR);
    HttpResponse<String> signed = inspector.post(sign, signature(inspector));
    assertEquals(200, signed.statusCode(), signed.body());
    assertEquals(List.of(), list(floor(), "waiting"));
  }

  /** With a key of one's own, made for it. */
  private static Map<String, Object> signature(Tablet by) throws Exception {
    HttpResponse<String> made = by.post("/api/keys", Map.of("passphrase", "swing bridge"));
    assertEquals(200, made.statusCode(), made.body());
    Map<?, ?> key = (Map<?, ?>) list(ShopWithPage.json(made), "own").get(0);
    return Map.of(
        "role",
        "inspector",
        "key",
        String.valueOf(key.get("name")),
        "passphrase",
        "swing bridge",
        "who",
        INSPECTOR);
  }
}
