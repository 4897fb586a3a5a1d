package dev.ringout.serve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.time.Duration;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** What goes out: what a browser may do with it, and nothing of the program's inside. */
class AnswersTest {
  private static final String PAGE_POLICY =
      "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' blob: data:; "
          + "connect-src 'self'; media-src 'self'; frame-src 'self'; form-action 'none'; "
          + "base-uri 'none'; frame-ancestors 'self'; require-trusted-types-for 'script'";

  private ServedBench bench;
  private HttpClient browser;

  @BeforeEach
  void start() throws IOException, InterruptedException {
    bench = new ServedBench();
    browser = bench.browser();
  }

  @AfterEach
  void stop() {
    bench.close();
  }

  @Test
  void every_answer_says_what_may_be_done_with_it() throws IOException, InterruptedException {
    HttpClient stranger = ServedBench.stranger();
    assertGuarded(bench.get(browser, "/"));
    assertGuarded(bench.get(browser, "/api/state"));
    assertGuarded(bench.get(browser, "/api/broken"));
    assertGuarded(bench.get(stranger, "/"));
    assertGuarded(bench.get(stranger, "/api/state"));
    assertGuarded(bench.postJson(stranger, "/api/state", "{}"));
    assertGuarded(ServedBench.get(stranger, bench.server.newTicket()));
  }

  @Test
  void a_paper_may_have_styles_of_its_own_and_runs_nothing()
      throws IOException, InterruptedException {
    String policy = header(bench.get(browser, "/api/paper"), "Content-Security-Policy");
    assertTrue(policy.startsWith("default-src 'none'; style-src 'unsafe-inline';"), policy);
    assertFalse(policy.contains("script"), policy);
  }

  @Test
  void what_is_of_the_moment_is_not_kept_and_a_file_is_asked_for_again_only_when_it_changed()
      throws IOException, InterruptedException {
    assertEquals("no-store", header(bench.get(browser, "/api/state"), "Cache-Control"));
    HttpResponse<String> first = bench.get(browser, "/bench.css");
    assertEquals("no-cache", header(first, "Cache-Control"));
    HttpResponse<String> again = getIfNot(header(first, "ETag"));
    assertEquals(304, again.statusCode());
    assertEquals("", again.body());
    assertEquals("p{}", getIfNot("\"another\"").body());
  }

  @Test
  void a_name_of_a_file_starts_no_line_of_its_own() throws IOException, InterruptedException {
    HttpResponse<String> answer = bench.get(browser, "/api/record");
    assertEquals(
        "attachment; filename=\"a__X: ___.pdf\"; filename*=UTF-8''a__X%3A%20%22%C3%B6%22.pdf",
        header(answer, "Content-Disposition"));
    assertTrue(answer.headers().firstValue("X").isEmpty());
    assertThrows(IllegalArgumentException.class, () -> Reply.text(200, "").with("A", "b\r\nC: d"));
    assertThrows(
        IllegalArgumentException.class, () -> Reply.of(200, "text/html\r\nX: y", new byte[0]));
  }

  @Test
  void to_look_is_answered_like_to_read_without_the_bytes()
      throws IOException, InterruptedException {
    for (String path : new String[] {"/", "/bench.css", "/api/state"}) {
      HttpResponse<String> looked = head(path);
      HttpResponse<String> read = bench.get(browser, path);
      assertEquals(200, looked.statusCode());
      assertEquals("", looked.body());
      assertEquals(header(read, "Content-Length"), header(looked, "Content-Length"));
      assertEquals(header(read, "Content-Type"), header(looked, "Content-Type"));
    }
    assertEquals(405, head(BenchServer.EVENTS).statusCode());
  }

  @Test
  void a_mistake_of_the_program_is_kept_and_not_told() throws IOException, InterruptedException {
    HttpResponse<String> answer = bench.get(browser, "/api/broken");
    assertEquals(500, answer.statusCode());
    assertEquals("The bench made a mistake.", answer.body());
    assertEquals("a secret of the program", bench.failures.get(0).getMessage());
    assertEquals(200, bench.get(browser, "/api/state").statusCode());
  }

  @Test
  void nothing_says_by_what_it_is_served() throws IOException, InterruptedException {
    HttpResponse<String> answer = bench.get(browser, "/api/state");
    assertTrue(answer.headers().firstValue("Server").isEmpty());
    assertTrue(answer.headers().firstValue("X-Powered-By").isEmpty());
  }

  @Test
  void it_ends_whoever_is_in() throws IOException, InterruptedException {
    RawClient slow = new RawClient(bench.port()).bytes("GET / HTTP/1.1\r\nHost");
    RawClient unread =
        new RawClient(bench.port())
            .lines("GET /api/large HTTP/1.1", "Host: " + bench.host(), "Cookie: " + bench.cookie());
    Thread.sleep(100);
    assertTimeoutPreemptively(Duration.ofSeconds(5), bench.server::close);
    assertThrows(IOException.class, () -> bench.get(ServedBench.stranger(), "/"));
    bench.server.close();
    slow.close();
    unread.close();
  }

  private static void assertGuarded(HttpResponse<String> answer) {
    assertEquals(PAGE_POLICY, header(answer, "Content-Security-Policy"));
    assertEquals("nosniff", header(answer, "X-Content-Type-Options"));
    assertEquals("no-referrer", header(answer, "Referrer-Policy"));
    assertEquals("same-origin", header(answer, "Cross-Origin-Opener-Policy"));
    assertEquals("same-origin", header(answer, "Cross-Origin-Resource-Policy"));
  }

  private HttpResponse<String> getIfNot(String tag) throws IOException, InterruptedException {
    HttpRequest request =
        HttpRequest.newBuilder(bench.server.home().resolve("/bench.css"))
            .header("If-None-Match", tag)
            .build();
    return browser.send(request, HttpResponse.BodyHandlers.ofString());
  }

  private HttpResponse<String> head(String path) throws IOException, InterruptedException {
    HttpRequest request =
        HttpRequest.newBuilder(bench.server.home().resolve(path))
            .method("HEAD", HttpRequest.BodyPublishers.noBody())
            .build();
    return browser.send(request, HttpResponse.BodyHandlers.ofString());
  }

  private static String header(HttpResponse<String> answer, String name) {
    return answer.headers().firstValue(name).orElse("");
  }
}
