package dev.ringout.page;

import static dev.ringout.page.ShopWithPage.ADMINISTRATOR;
import static dev.ringout.page.ShopWithPage.ENGINEER;
import static dev.ringout.page.ShopWithPage.INSPECTOR;
import static dev.ringout.page.ShopWithPage.LEAD;
import static dev.ringout.page.ShopWithPage.ONE_OF_EACH;
import static dev.ringout.page.ShopWithPage.PASSPHRASE;
import static dev.ringout.page.ShopWithPage.SECOND_TESTER;
import static dev.ringout.page.ShopWithPage.TESTER;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.ringout.page.Routes.Route;
import dev.ringout.page.ShopWithPage.Tablet;
import dev.ringout.people.Role;
import dev.ringout.serve.Ask.Method;
import dev.ringout.serve.BodyRule;
import dev.ringout.store.Entry;
import java.io.IOException;
import java.io.InputStream;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import javax.net.ssl.SSLSocket;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Who comes in over a shop's network, and what he may do there. */
class ShopTest {
  private static final String NOT_FOR_YOU = "This is not for you to do";

  @TempDir private static Path folder;

  @SuppressWarnings("NullAway.Init")
  private static ShopWithPage shop;

  @BeforeAll
  static void open() throws Exception {
    shop = new ShopWithPage(folder, BenchWithPage.lamps(folder));
  }

  @AfterAll
  static void close() {
    shop.close();
  }

  // Coming in.

  @ParameterizedTest
  @ValueSource(
      strings = {
        "/api/state",
        "/api/events",
        "/api/units",
        "/api/keys",
        "/api/people",
        "/api/none"
      })
  void who_has_not_signed_in_is_told_nothing_of_the_shop(String path) throws Exception {
    HttpResponse<String> answer = shop.stranger().get(path);
    assertEquals(401, answer.statusCode());
    assertEquals("Sign in first.", answer.body());
  }

  @Test
  void the_page_s_own_files_are_for_who_wants_to_sign_in() throws Exception {
    for (String path : List.of("/", "/bench.js", "/bench.css")) {
      assertEquals(200, shop.stranger().get(path).statusCode(), path);
    }
    assertEquals("", shop.stranger().who());
  }

  @Test
  void who_signs_in_gets_a_cookie_that_only_this_host_sees() throws Exception {
    HttpResponse<String> answer = shop.stranger().signIn(" rotimi ADEYEMI ", PASSPHRASE);
    assertEquals(200, answer.statusCode());
    String cookie = answer.headers().firstValue("Set-Cookie").orElseThrow();
    assertTrue(cookie.startsWith("__Host-ringout-"), cookie);
    assertTrue(cookie.endsWith("; Path=/; Secure; HttpOnly; SameSite=Strict"), cookie);
    assertEquals(TESTER, ShopWithPage.json(answer).get("name"));
    for (Map.Entry<String, String> header :
        Map.of(
                "Cache-Control", "no-store",
                "X-Content-Type-Options", "nosniff",
                "Referrer-Policy", "no-referrer",
                "Cross-Origin-Opener-Policy", "same-origin",
                "Cross-Origin-Resource-Policy", "same-origin")
            .entrySet()) {
      assertEquals(header.getValue(), answer.headers().firstValue(header.getKey()).orElse(""));
    }
    assertTrue(
        answer
            .headers()
            .firstValue("Content-Security-Policy")
            .orElse("")
            .contains("frame-ancestors"));
  }

  @Test
  void a_cookie_that_was_there_before_is_nobody_s() throws Exception {
    Tablet tablet = shop.signedIn(TESTER);
    String before = cookie(tablet.signIn(INSPECTOR, PASSPHRASE));
    String after = cookie(tablet.signIn(LEAD, PASSPHRASE));
    assertNotEquals(before, after);
    HttpResponse<String> old =
        shop.stranger().send(shop.stranger().to("/api/state").header("Cookie", before).build());
    assertEquals(401, old.statusCode());
    assertEquals(LEAD, tablet.who());
  }

  private static String cookie(HttpResponse<String> answer) {
    return answer.headers().firstValue("Set-Cookie").orElseThrow().replaceFirst(";.*", "");
  }

  /**
   * What is said, and what is reckoned, is the same: {@code PassphrasesTest} has the other half.
   */
  @Test
  void nothing_tells_a_name_that_is_known_from_one_that_is_not() throws Exception {
    HttpResponse<String> wrong = shop.stranger().signIn(ENGINEER, "not my passphrase");
    HttpResponse<String> unknown = shop.stranger().signIn("Petra Nobel", "not my passphrase");
    assertEquals(401, wrong.statusCode());
    assertEquals(wrong.statusCode(), unknown.statusCode());
    assertEquals(wrong.body(), unknown.body());
    Map<String, List<String>> of = new LinkedHashMap<>(wrong.headers().map());
    Map<String, List<String>> other = new LinkedHashMap<>(unknown.headers().map());
    of.remove("date");
    other.remove("date");
    assertEquals(of, other);
  }

  /** A passphrase that was typed in the place of the name would be kept for ever. */
  @Test
  void who_came_in_or_was_turned_away_is_kept_but_not_what_was_typed_for_a_name() throws Exception {
    shop.stranger().signIn("my secret passphrase", "x");
    shop.stranger().signIn(LEAD, "wrong");
    shop.signedIn(LEAD);
    List<Entry> kept = shop.door.people().list(true).history();
    List<String> last =
        kept.subList(kept.size() - 3, kept.size()).stream()
            .map(entry -> entry.kind() + " " + entry.body().replace('\t', '|'))
            .toList();
    assertEquals(
        List.of(
            "turned_away |Bench 1|127.0.0.1",
            "turned_away Ines Moreau|Bench 1|127.0.0.1",
            "signed_in Ines Moreau|Bench 1|127.0.0.1"),
        last);
    assertEquals(List.of(), shop.door.store().check().findings());
  }

  @Test
  void after_five_wrong_tries_the_right_passphrase_waits_too_whether_there_is_the_name_or_not(
      @TempDir Path other) throws Exception {
    try (ShopWithPage own = new ShopWithPage(other)) {
      for (String name : List.of(TESTER, "Petra Nobel")) {
        for (int i = 0; i < 5; i++) {
          assertEquals(401, own.stranger().signIn(name, "wrong " + i).statusCode(), name);
        }
        HttpResponse<String> waits = own.stranger().signIn(name, PASSPHRASE);
        assertEquals(429, waits.statusCode(), name);
        assertTrue(waits.body().contains("Too many wrong tries"), waits.body());
      }
      assertEquals(200, own.stranger().signIn(INSPECTOR, PASSPHRASE).statusCode());
    }
  }

  @Test
  void who_sends_many_tries_at_once_has_no_more_of_them(@TempDir Path other) throws Exception {
    try (ShopWithPage own = new ShopWithPage(other)) {
      ExecutorService hands = Executors.newFixedThreadPool(24);
      List<Future<Integer>> sent = new ArrayList<>();
      for (int i = 0; i < 24; i++) {
        Tablet tablet = own.stranger();
        sent.add(hands.submit(() -> tablet.signIn(TESTER, "not the passphrase").statusCode()));
      }
      List<Integer> answers = new ArrayList<>();
      for (Future<Integer> one : sent) {
        answers.add(one.get());
      }
      hands.shutdown();
      assertEquals(5, Collections.frequency(answers, 401), answers.toString());
      assertEquals(19, Collections.frequency(answers, 429), answers.toString());
    }
  }

  // Going out.

  @Test
  void who_signs_out_is_out_here_and_in_elsewhere_unless_he_says_everywhere() throws Exception {
    Tablet here = shop.signedIn(LEAD);
    Tablet there = shop.signedIn(LEAD);
    assertEquals(200, here.post("/api/sign-out", Map.of()).statusCode());
    assertEquals(401, here.get("/api/state").statusCode());
    assertEquals(200, there.get("/api/state").statusCode());
    Tablet third = shop.signedIn(LEAD);
    there.post("/api/sign-out", Map.of("everywhere", true));
    assertEquals(401, third.get("/api/state").statusCode());
  }

  @Test
  void who_changes_his_passphrase_stays_in_and_whoever_else_came_in_with_it_is_out()
      throws Exception {
    Tablet own = shop.signedIn(ENGINEER);
    Tablet stolen = shop.signedIn(ENGINEER);
    Map<String, Object> change = Map.of("now", PASSPHRASE, "next", "five lamps on a bridge");
    assertEquals(
        401,
        own.post("/api/passphrase", Map.of("now", "wrong", "next", "five lamps on a bridge"))
            .statusCode());
    assertEquals(200, own.post("/api/passphrase", change).statusCode());
    assertEquals(ENGINEER, own.who());
    assertEquals(401, stolen.get("/api/state").statusCode());
    assertEquals(401, shop.stranger().signIn(ENGINEER, PASSPHRASE).statusCode());
    shop.door.people().passphrase(ENGINEER, PASSPHRASE, ShopWithPage.said());
    assertEquals(401, own.get("/api/state").statusCode());
  }

  /** At another bench, or at the terminal: it counts here at once. */
  @Test
  void who_is_withdrawn_is_out_at_once_and_hears_no_more(@TempDir Path other) throws Exception {
    try (ShopWithPage own = new ShopWithPage(other)) {
      Tablet tablet = own.signedIn(INSPECTOR);
      HttpResponse<InputStream> stream = tablet.stream("/api/events");
      assertEquals(200, stream.statusCode());
      own.door.people().withdraw(INSPECTOR, "left", ShopWithPage.said());
      assertEquals(401, tablet.get("/api/state").statusCode());
      // Ends by itself: else this reads on until the test is stopped.
      assertTrue(stream.body().readAllBytes().length > 0);
      assertEquals(401, own.stranger().signIn(INSPECTOR, PASSPHRASE).statusCode());
    }
  }

  // Who may do what.

  private static String path(Route route) {
    return route.written().replace("*", "none");
  }

  private static HttpResponse<String> ask(Tablet tablet, Route route) throws Exception {
    if (route.method() == Method.GET) {
      return tablet.get(path(route));
    }
    BodyRule rule = route.body();
    return tablet.post(path(route), rule.contentTypes().get(0), "{}", shop.origin());
  }

  @Test
  void without_a_rule_stand_only_the_addresses_at_which_one_signs_in_and_out() {
    List<String> open =
        shop.page.routes().all().stream()
            .filter(route -> route.act().isEmpty())
            .map(route -> route.method() + " " + route.written())
            .toList();
    assertEquals(List.of("GET /api/who", "POST /api/sign-in", "POST /api/sign-out"), open);
  }

  @Test
  void each_address_is_answered_to_the_roles_of_its_rule_and_to_no_other() throws Exception {
    List<Route> routes =
        shop.page.routes().all().stream().filter(route -> route.act().isPresent()).toList();
    assertTrue(routes.size() > 35, routes.size() + " addresses");
    Map<Role, Tablet> tablets = new LinkedHashMap<>();
    for (Map.Entry<Role, String> one : ONE_OF_EACH.entrySet()) {
      tablets.put(one.getKey(), shop.signedIn(one.getValue()));
    }
    for (Route route : routes) {
      assertEquals(401, ask(shop.stranger(), route).statusCode(), path(route));
      for (Map.Entry<Role, Tablet> one : tablets.entrySet()) {
        String said = route.method() + " " + path(route) + " by " + one.getKey();
        HttpResponse<String> answer = ask(one.getValue(), route);
        if (route.act().orElseThrow().isFor(Set.of(one.getKey()))) {
          assertFalse(answer.body().contains(NOT_FOR_YOU), said);
        } else {
          assertEquals(403, answer.statusCode(), said);
          assertTrue(answer.body().contains(NOT_FOR_YOU), said);
        }
      }
    }
  }

  /** The table once more, by what it is for: a slip in it shows here. */
  @Test
  void the_addresses_of_an_act_are_those_that_are_meant() {
    Map<String, Set<String>> byAct = new LinkedHashMap<>();
    for (Route route : shop.page.routes().all()) {
      route
          .act()
          .ifPresent(
              act ->
                  byAct
                      .computeIfAbsent(act.word(), word -> new TreeSet<>())
                      .add(route.method() + " " + route.written()));
    }
    assertEquals(
        Set.of(
            "GET /api/keys",
            "GET /api/keys/*",
            "POST /api/keys",
            "POST /api/keys/withdraw",
            "POST /api/units/*/record.*.seal",
            "POST /api/units/*/sign"),
        byAct.get("sign"));
    assertEquals(Set.of("POST /api/units/*/take-back"), byAct.get("take-back"));
    assertEquals(Set.of("POST /api/units/*/note"), byAct.get("note"));
    assertEquals(Set.of("POST /api/units/*/ticks"), byAct.get("tick"));
    assertTrue(
        byAct.getOrDefault("people", Set.of()).stream()
            .allMatch(one -> one.contains(" /api/people")));
    assertTrue(
        byAct.getOrDefault("test", Set.of()).stream()
            .allMatch(one -> one.startsWith("POST /api/session/")));
    List<String> looking = new ArrayList<>(byAct.getOrDefault("look", Set.of()));
    looking.removeIf(one -> one.startsWith("GET "));
    assertEquals(List.of("POST /api/passphrase", "POST /api/units/*/diff"), looking);
  }

  // In whose name.

  @Test
  void whatever_name_is_sent_what_is_done_stands_under_that_of_who_signed_in() throws Exception {
    Tablet tester = shop.signedIn(TESTER);
    Tablet other = shop.signedIn(SECOND_TESTER);
    HttpResponse<String> begun =
        tester.post(
            "/api/session/start",
            Map.of("list", tester.list(), "serial", "S-1", "tester", "Petra Nobel"));
    assertEquals(200, begun.statusCode(), begun.body());
    assertEquals(TESTER, ShopWithPage.json(begun).get("tester"));

    HttpResponse<String> takes = other.post("/api/session/note", Map.of("text", "lid missing"));
    assertEquals(403, takes.statusCode());
    assertTrue(takes.body().contains(TESTER + " leads this test"), takes.body());
    HttpResponse<String> begins =
        other.post("/api/session/start", Map.of("list", other.list(), "serial", "S-2"));
    assertEquals(403, begins.statusCode(), "nor is the bench taken from under his hands");

    String unit = tester.unit("S-1");
    HttpResponse<String> over =
        other.post("/api/session/start", Map.of("unit", unit, "takeOver", true));
    assertEquals(SECOND_TESTER, ShopWithPage.json(over).get("tester"), over.body());
    assertEquals(403, tester.post("/api/session/note", Map.of("text", "mine")).statusCode());
    assertEquals(200, other.post("/api/session/finish", Map.of()).statusCode());

    Tablet engineer = shop.signedIn(ENGINEER);
    engineer.post("/api/units/" + unit + "/note", Map.of("text", "seen", "who", TESTER));
    String history = engineer.get("/api/units/" + unit).body();
    assertTrue(history.contains("\"who\":\"" + ENGINEER + "\""), history);
  }

  /** A list may ask for an independent inspector: then a name on the sheet decides. */
  @Test
  void a_tester_names_no_inspector_who_is_none_nor_himself() throws Exception {
    Tablet tester = shop.signedIn(TESTER);
    for (String name : List.of("Petra Nobel", TESTER, ENGINEER, SECOND_TESTER)) {
      for (String row : List.of("inspector", "Inspector ", "inspector\u200b")) {
        HttpResponse<String> begun =
            tester.post(
                "/api/session/start",
                Map.of(
                    "list",
                    tester.list(),
                    "serial",
                    "S-9",
                    "takeOver",
                    true,
                    "conditions",
                    List.of(Map.of("name", row, "value", name))));
        assertEquals(400, begun.statusCode(), name + begun.body());
        assertTrue(begun.body().contains("inspector is somebody else"), begun.body());
      }
    }
    Map<String, Object> named =
        Map.of("conditions", List.of(Map.of("name", "inspector", "value", INSPECTOR)));
    Map<String, Object> start = new LinkedHashMap<>(named);
    start.putAll(Map.of("list", tester.list(), "serial", "S-9", "takeOver", true));
    assertEquals(200, tester.post("/api/session/start", start).statusCode());
    assertEquals(200, tester.post("/api/session/conditions", named).statusCode());
    assertEquals(
        400,
        tester
            .post(
                "/api/session/conditions",
                Map.of("conditions", List.of(Map.of("name", "inspector", "value", "Petra Nobel"))))
            .statusCode());
    tester.post("/api/session/finish", Map.of());
  }

  /** Else what the one does would stand under the other's name. */
  @Test
  void nobody_takes_a_test_over_between_the_question_who_leads_and_what_is_done() throws Exception {
    Callers callers = new Callers(Optional.empty());
    CountDownLatch asked = new CountDownLatch(1);
    List<String> order = Collections.synchronizedList(new ArrayList<>());
    ExecutorService hands = Executors.newSingleThreadExecutor();
    Future<?> over =
        callers.inTurn(
            () -> {
              Future<?> other =
                  hands.submit(
                      () -> {
                        asked.countDown();
                        return callers.inTurn(() -> order.add("taken over"));
                      });
              awaitQuietly(asked);
              order.add("done");
              return other;
            });
    over.get();
    hands.shutdown();
    assertEquals(List.of("done", "taken over"), order);
  }

  private static void awaitQuietly(CountDownLatch latch) {
    try {
      latch.await();
      Thread.sleep(100);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  @Test
  void nobody_signs_as_what_he_is_not_nor_with_a_key_that_anybody_could_use() throws Exception {
    Tablet tester = shop.signedIn(TESTER);
    HttpResponse<String> asInspector =
        tester.post("/api/units/none/sign", Map.of("role", "inspector", "key", "key"));
    assertEquals(403, asInspector.statusCode());
    assertTrue(asInspector.body().contains("You are not inspector here"), asInspector.body());
    HttpResponse<String> open =
        tester.post("/api/units/none/sign", Map.of("role", "tester", "key", "no-such-key"));
    assertEquals(403, open.statusCode());
    assertTrue(open.body().contains("has no passphrase of its own"), open.body());
  }

  @Test
  void when_who_leads_signs_out_nothing_more_is_read_in_his_name(@TempDir Path other)
      throws Exception {
    try (ShopWithPage own = new ShopWithPage(other, BenchWithPage.lamps(other))) {
      Tablet tester = own.signedIn(TESTER);
      tester.post("/api/session/start", Map.of("list", tester.list(), "serial", "S-3"));
      assertTrue(own.page.bench().unit().isPresent());
      tester.post("/api/sign-out", Map.of());
      for (int i = 0; i < 50 && own.page.bench().unit().isPresent(); i++) {
        Thread.sleep(100);
      }
      assertTrue(own.page.bench().unit().isEmpty());
    }
  }

  // Administrators.

  @Test
  void an_administrator_says_who_may_sign_in_and_can_t_lock_himself_out(@TempDir Path other)
      throws Exception {
    try (ShopWithPage own = new ShopWithPage(other)) {
      Tablet admin = own.signedIn(ADMINISTRATOR);
      HttpResponse<String> added =
          admin.post(
              "/api/people",
              Map.of("name", "Hanna Weiss", "roles", List.of("tester"), "passphrase", PASSPHRASE));
      assertEquals(200, added.statusCode(), added.body());
      assertFalse(added.body().contains("argon2"), "what is kept of a passphrase is told nobody");
      Tablet hanna = own.signedIn("Hanna Weiss");
      assertEquals(403, hanna.get("/api/people").statusCode());
      String path = "/api/people/" + ADMINISTRATOR.replace(" ", "%20");
      for (HttpResponse<String> last :
          List.of(
              admin.post(path + "/withdraw", Map.of("why", "left")),
              admin.post(path + "/roles", Map.of("roles", List.of("tester"))))) {
        assertEquals(400, last.statusCode());
        assertTrue(last.body().contains("the last administrator"), last.body());
      }
      assertEquals(
          200,
          admin
              .post("/api/people/Hanna%20Weiss/roles", Map.of("roles", List.of("administrator")))
              .statusCode());
      assertEquals(200, hanna.get("/api/people").statusCode(), "from the next request on");
    }
  }

  // What else comes over a network.

  @Test
  void another_site_s_page_can_do_nothing_even_in_a_browser_that_is_in() throws Exception {
    Tablet lead = shop.signedIn(LEAD);
    for (String from :
        List.of(
            "https://evil.example",
            "null",
            shop.origin().replace("https", "http"),
            shop.origin().replaceFirst(":\\d+$", ""))) {
      assertEquals(
          403, lead.post("/api/session/leave", "application/json", "{}", from).statusCode(), from);
      assertEquals(
          403,
          shop.stranger()
              .post(
                  "/api/sign-in",
                  "application/json",
                  "{\"name\":\"" + LEAD + "\",\"passphrase\":\"" + PASSPHRASE + "\"}",
                  from)
              .statusCode(),
          "nor sign somebody in: " + from);
    }
    for (String type : List.of("text/plain", "application/x-www-form-urlencoded")) {
      assertEquals(415, lead.post("/api/session/leave", type, "{}", shop.origin()).statusCode());
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"TLSv1.3", "TLSv1.2"})
  void tls_of_today_is_spoken(String version) throws Exception {
    try (SSLSocket socket = socket(version)) {
      socket.startHandshake();
      assertEquals(version, socket.getSession().getProtocol());
    }
  }

  /** Whether or not the Java runtime of the client would speak it. */
  @ParameterizedTest
  @ValueSource(strings = {"TLSv1.1", "TLSv1"})
  void tls_of_the_past_is_not(String version) {
    assertThrows(
        IOException.class,
        () -> {
          try (SSLSocket socket = socket(version)) {
            socket.startHandshake();
          }
        });
  }

  private static SSLSocket socket(String version) throws Exception {
    SSLSocket socket =
        (SSLSocket)
            shop.trust().getSocketFactory().createSocket("127.0.0.1", shop.home().getPort());
    socket.setEnabledProtocols(new String[] {version});
    socket.setSoTimeout(10_000);
    return socket;
  }

  @Test
  void the_fingerprint_is_that_of_the_certificate_that_a_browser_is_shown() throws Exception {
    try (SSLSocket socket = socket("TLSv1.3")) {
      socket.startHandshake();
      byte[] shown =
          MessageDigest.getInstance("SHA-256")
              .digest(socket.getSession().getPeerCertificates()[0].getEncoded());
      assertEquals(
          HexFormat.ofDelimiter(":").withUpperCase().formatHex(shown),
          shop.certificate.fingerprint());
    }
  }
}
