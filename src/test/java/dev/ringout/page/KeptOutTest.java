package dev.ringout.page;

import static dev.ringout.page.ShopWithPage.ENGINEER;
import static dev.ringout.page.ShopWithPage.LEAD;
import static dev.ringout.page.ShopWithPage.PASSPHRASE;
import static dev.ringout.page.ShopWithPage.SECOND_TESTER;
import static dev.ringout.page.ShopWithPage.TESTER;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.ringout.page.ShopWithPage.Tablet;
import dev.ringout.seal.Digest;
import java.io.IOException;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What a colleague, a stranger or a thief tries at a bench of a shop, and that it fails. */
class KeptOutTest {
  /** The first bytes of a picture are what it is known by. */
  private static final byte[] PICTURE = {
    (byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1a, '\n', 0, 0, 0, 13, 'I', 'H', 'D', 'R'
  };

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

  /** Session fixation: who planted a cookie beforehand would be in with whoever signs in then. */
  @Test
  void a_cookie_that_somebody_else_chose_becomes_nobody_s_visit() throws Exception {
    String name = "__Host-ringout-" + shop.home().getPort();
    String planted = name + "=" + "A".repeat(43);
    HttpRequest.Builder asks =
        shop.stranger()
            .to("/api/sign-in")
            .header("Content-Type", "application/json")
            .header("Origin", shop.origin())
            .header("Cookie", planted)
            .POST(
                HttpRequest.BodyPublishers.ofString(
                    "{\"name\":\"" + LEAD + "\",\"passphrase\":\"" + PASSPHRASE + "\"}"));
    HttpResponse<String> in = shop.stranger().send(asks.build());
    assertEquals(200, in.statusCode());
    String given = in.headers().firstValue("Set-Cookie").orElse("").replaceFirst(";.*", "");
    assertTrue(given.startsWith(name + "="), given);
    assertNotEquals(planted, given);
    HttpRequest with = shop.stranger().to("/api/state").header("Cookie", planted).build();
    assertEquals(401, shop.stranger().send(with).statusCode());
  }

  /** What is known of a name is told neither by an answer nor by how soon a wait begins. */
  @Test
  void names_can_t_be_counted_through_by_asking() throws Exception {
    Tablet engineer = shop.signedIn(ENGINEER);
    for (String name : List.of(TESTER, "Petra%20Nobel")) {
      String path = "/api/people/" + name.replace(" ", "%20") + "/withdraw";
      HttpResponse<String> answer = engineer.post(path, Map.of("why", "x"));
      assertEquals(403, answer.statusCode());
      assertFalse(answer.body().contains("Nobel") || answer.body().contains(TESTER));
    }
  }

  private static HttpResponse<byte[]> photo(Tablet by, byte[] bytes, String type) throws Exception {
    return by.bytes("/api/session/photo?text=burnt", type, bytes);
  }

  @Test
  void nobody_puts_a_photo_into_another_s_test_nor_sees_it_under_another_unit() throws Exception {
    Tablet tester = shop.signedIn(TESTER);
    Tablet other = shop.signedIn(SECOND_TESTER);
    begin(tester, "P-1");
    assertEquals(403, photo(other, PICTURE, "image/png").statusCode());
    assertEquals(200, photo(tester, PICTURE, "image/png").statusCode());
    tester.post("/api/session/finish", Map.of());
    String first = tester.unit("P-1");
    String address = "/photos/" + Digest.of(PICTURE);
    assertArrayEquals(
        PICTURE,
        tester
            .get("/api/units/" + first + address, HttpResponse.BodyHandlers.ofByteArray())
            .body());
    begin(tester, "P-2");
    tester.post("/api/session/note", Map.of("text", "seen"));
    tester.post("/api/session/finish", Map.of());
    assertEquals(404, tester.get("/api/units/" + tester.unit("P-2") + address).statusCode());
  }

  /** Shown as a page of the bench it would run there. */
  @Test
  void what_is_no_picture_is_not_kept_as_one() throws Exception {
    Tablet tester = shop.signedIn(TESTER);
    begin(tester, "P-3");
    byte[] script = "<script>alert(1)</script>".getBytes(StandardCharsets.UTF_8);
    assertEquals(400, photo(tester, script, "image/png").statusCode());
    assertEquals(415, photo(tester, script, "text/html").statusCode());
    assertEquals(413, photo(tester, new byte[(8 << 20) + 1], "image/png").statusCode());
    tester.post("/api/session/finish", Map.of());
  }

  private static void begin(Tablet tester, String serial) throws Exception {
    HttpResponse<String> begun =
        tester.post(
            "/api/session/start",
            Map.of("list", tester.list(), "serial", serial, "takeOver", true));
    assertEquals(200, begun.statusCode(), begun.body());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "..%2Funits.db",
        "%2e%2e",
        "..",
        "keys%00.pub",
        "a%0d%0aSet-Cookie:%20x",
        "%5c..%5cunits.db",
        ".hidden"
      })
  void the_name_of_a_key_leads_nowhere_and_starts_no_header(String name) throws Exception {
    HttpResponse<String> answer = shop.signedIn(LEAD).get("/api/keys/" + name);
    assertTrue(List.of(400, 404).contains(answer.statusCode()), name + " " + answer.statusCode());
    assertFalse(answer.body().contains("SQLite"), name);
    assertTrue(answer.headers().firstValue("Set-Cookie").isEmpty(), name);
  }

  /** The page of threats names a test for each answer: a test that is gone would be a promise. */
  @Test
  void every_test_that_the_page_of_threats_names_is_there() throws IOException {
    String page = Files.readString(Path.of("docs/explanation/threats.md"));
    Matcher named = Pattern.compile("`(\\w+(?:Test|IT|Contract))\\.(\\w+)`").matcher(page);
    int count = 0;
    while (named.find()) {
      Path file = file(named.group(1) + ".java");
      assertTrue(Files.readString(file).contains("void " + named.group(2) + "("), named.group());
      count++;
    }
    assertTrue(count > 30, count + " tests are named");
  }

  private static Path file(String name) throws IOException {
    try (Stream<Path> all = Files.walk(Path.of("src/test/java"))) {
      return all.filter(file -> file.endsWith(name))
          .findFirst()
          .orElseThrow(() -> new AssertionError(name + " is no test"));
    }
  }
}
