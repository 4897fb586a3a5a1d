package dev.ringout.serve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.net.InetAddress;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpResponse;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** A browser comes in with an address that is good once, and has a cookie from then on. */
class LettingInTest {
  private ServedBench bench;

  @BeforeEach
  void start() throws IOException {
    bench = new ServedBench();
  }

  @AfterEach
  void stop() {
    bench.close();
  }

  @Test
  void the_printed_address_leads_to_the_page_and_is_gone_from_the_browsers_line()
      throws IOException, InterruptedException {
    HttpClient browser = ServedBench.stranger();
    HttpResponse<String> answer = ServedBench.get(browser, bench.server.newTicket());
    assertEquals(303, answer.statusCode());
    assertEquals("/", answer.headers().firstValue("Location").orElse(""));
    assertEquals(ServedBench.PAGE, bench.get(browser, "/").body());
    assertEquals(200, bench.get(browser, "/bench.css").statusCode());
  }

  @Test
  void the_cookie_is_hidden_from_scripts_and_from_other_sites_and_names_the_port()
      throws IOException, InterruptedException {
    URI ticket = bench.server.newTicket();
    String cookie =
        ServedBench.get(ServedBench.stranger(), ticket)
            .headers()
            .firstValue("Set-Cookie")
            .orElse("");
    String value = "[A-Za-z0-9_-]{43}";
    assertTrue(
        cookie.matches(
            "ringout-"
                + bench.port()
                + "="
                + value
                + "; Path=/; HttpOnly; SameSite=Strict; Max-Age=604800"),
        cookie);
    assertTrue(ticket.getQuery().matches("token=" + value), ticket.getQuery());
    assertFalse(cookie.contains(ticket.getQuery().substring(6)), "the cookie has its own value");
  }

  @Test
  void an_address_that_was_used_lets_nobody_in() throws IOException, InterruptedException {
    URI ticket = bench.server.newTicket();
    HttpClient first = ServedBench.stranger();
    ServedBench.get(first, ticket);
    HttpResponse<String> second = ServedBench.get(ServedBench.stranger(), ticket);
    assertEquals(403, second.statusCode());
    assertTrue(second.body().contains("used before"), second.body());
    assertTrue(second.headers().firstValue("Set-Cookie").isEmpty());
    assertEquals(303, ServedBench.get(first, ticket).statusCode(), "who is in goes to the page");
  }

  @Test
  void looking_at_an_address_does_not_use_it() throws IOException, InterruptedException {
    URI ticket = bench.server.newTicket();
    HttpClient browser = ServedBench.stranger();
    int looked =
        browser
            .send(
                java.net.http.HttpRequest.newBuilder(ticket)
                    .method("HEAD", java.net.http.HttpRequest.BodyPublishers.noBody())
                    .build(),
                HttpResponse.BodyHandlers.discarding())
            .statusCode();
    assertEquals(403, looked);
    assertEquals(303, ServedBench.get(browser, ticket).statusCode());
  }

  @Test
  void each_address_is_for_one_browser_and_a_second_one_has_its_own()
      throws IOException, InterruptedException {
    assertNotEquals(bench.server.newTicket(), bench.server.newTicket());
    HttpClient desk = bench.browser();
    HttpClient tablet = bench.browser();
    assertEquals(200, bench.get(desk, "/api/state").statusCode());
    assertEquals(200, bench.get(tablet, "/api/state").statusCode());
  }

  @Test
  void who_comes_by_a_bookmark_reads_what_to_do() throws IOException, InterruptedException {
    HttpResponse<String> answer = bench.get(ServedBench.stranger(), "/");
    assertEquals(403, answer.statusCode());
    assertTrue(answer.body().contains("ringout bench"), answer.body());
  }

  @Test
  void nothing_is_told_without_the_cookie() throws IOException, InterruptedException {
    HttpClient stranger = ServedBench.stranger();
    for (String path : new String[] {"/api/state", "/api/events", "/bench.css", "/none"}) {
      assertEquals(403, bench.get(stranger, path).statusCode(), path);
    }
    assertEquals(403, bench.postJson(stranger, "/api/session/take", "{}").statusCode());
    assertEquals(0, bench.asked.size());
  }

  @Test
  void two_benches_on_one_machine_keep_their_browsers_apart()
      throws IOException, InterruptedException {
    try (ServedBench other = new ServedBench()) {
      HttpClient browser = bench.browser();
      assertEquals(403, other.get(browser, "/").statusCode());
      ServedBench.get(browser, other.server.newTicket());
      assertEquals(200, other.get(browser, "/").statusCode());
      assertEquals(200, bench.get(browser, "/").statusCode());
    }
  }

  @Test
  void it_is_served_on_this_machine_alone() throws IOException {
    InetAddress any = InetAddress.getByAddress(new byte[] {0, 0, 0, 0});
    Assertions.assertThrows(
        IllegalArgumentException.class,
        () -> BenchServer.start(any, 0, Site.EMPTY, new NoHandler(), bench.events));
  }

  /** Is never asked. */
  private static final class NoHandler implements Handler {
    @Override
    public Reply answer(Ask ask) {
      throw new AssertionError(ask.path());
    }

    @Override
    public BodyRule body(String path) {
      return BodyRule.JSON;
    }

    @Override
    public Reply failed(Throwable cause) {
      return Reply.text(500, "");
    }
  }
}
