package dev.ringout.serve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Requests that no browser sends. */
class OddRequestsTest {
  private ServedBench bench;
  private String host;
  private String cookie;

  @BeforeEach
  void start() throws IOException, InterruptedException {
    bench = new ServedBench();
    host = "Host: " + bench.host();
    cookie = "Cookie: " + bench.cookie();
  }

  @AfterEach
  void stop() {
    bench.close();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "/../etc/passwd",
        "/api/../../x",
        "/%2e%2e/x",
        "/.%2E/x",
        "/./bench.css",
        "/a/%2e",
        "/%00",
        "/bench.css%00",
        "/a%5cb",
        "/a%2fb",
        "/a%2Fb",
        "//etc/passwd",
        "///",
        "/a//b",
        "/a/",
        "/%",
        "/%4",
        "/%zz",
        "/%c0%ae%c0%ae/",
        "/%ff",
        "/%0d%0aX:%20y",
        "/a;b\\c",
        "/caf\u00e9",
        "/%e2%80%ae",
        "/?a=1&a=2",
        "/?a=%00",
        "/?a=%",
        "/?a=<script>",
        "/a\tb",
        "*",
        "http://127.0.0.1/x",
        "http://evil.example/",
        "evil.example:443",
        "\\etc",
        "/%25%32%65%25%32%65/\u0000"
      })
  void an_address_that_climbs_or_is_odd_reaches_nobody(String address) throws IOException {
    String answer = ask("GET " + address + " HTTP/1.1", host, cookie);
    assertTrue(answer.isEmpty() || answer.matches("(?s)HTTP/1.1 40[04] .*"), answer);
    assertEquals(List.of(), bench.asked);
  }

  @Test
  void an_address_is_decoded_once() throws IOException {
    String answer = ask("GET /api/%252e%252e/J1%2DA?to=J1+%26%20%c3%a4 HTTP/1.1", host, cookie);
    assertTrue(answer.endsWith("GET /api/%2e%2e/J1-A {to=J1 & \u00e4} 0"), answer);
  }

  @Test
  void a_very_long_address_is_refused() throws IOException {
    String answer = ask("GET /" + "a".repeat(9000) + " HTTP/1.1", host, cookie);
    assertTrue(answer.startsWith("HTTP/1.1 414 "), answer);
  }

  @Test
  void the_first_edition_of_the_protocol_is_not_spoken() throws IOException {
    assertTrue(ask("GET /api/state HTTP/1.0").startsWith("HTTP/1.1 400 "));
    assertTrue(ask("GET /api/state HTTP/1.0", host, cookie).startsWith("HTTP/1.1 400 "));
  }

  @Test
  void a_request_without_host_or_with_two_is_refused() throws IOException {
    assertTrue(ask("GET /api/state HTTP/1.1", cookie).startsWith("HTTP/1.1 403 "));
    assertTrue(ask("GET /api/state HTTP/1.1", host, host, cookie).startsWith("HTTP/1.1 400 "));
    assertTrue(
        ask("GET /api/state HTTP/1.1", host, "host: evil.example", cookie)
            .startsWith("HTTP/1.1 400 "));
  }

  @Test
  void a_body_whose_length_is_told_in_two_ways_is_refused() throws IOException {
    String[] both = {"Content-Length: 2", "Transfer-Encoding: chunked"};
    assertTrue(ask(post(both)).startsWith("HTTP/1.1 400 "));
    String[] twice = {"Content-Length: 2", "Content-Length: 20"};
    assertTrue(ask(post(twice)).startsWith("HTTP/1.1 400 "));
    String[] other = {"Transfer-Encoding: gzip, chunked"};
    assertFalse(ask(post(other)).startsWith("HTTP/1.1 2"));
    String[] negative = {"Content-Length: -2"};
    assertFalse(ask(post(negative)).startsWith("HTTP/1.1 2"));
    assertEquals(List.of(), bench.asked);
  }

  @Test
  void a_question_has_no_body() throws IOException {
    String answer = ask("GET /api/state HTTP/1.1", host, cookie, "Content-Length: 2");
    assertTrue(answer.startsWith("HTTP/1.1 400 "), answer);
  }

  @Test
  void a_megabyte_of_headers_is_not_taken() throws IOException {
    try (RawClient client = new RawClient(bench.port())) {
      client.bytes("GET /api/state HTTP/1.1\r\n" + host + "\r\nX: ");
      assertFalse(sent(client, "y".repeat(1 << 20)).startsWith("HTTP/1.1 2"));
    }
    try (RawClient client = new RawClient(bench.port())) {
      client.bytes("GET /api/state HTTP/1.1\r\n" + host + "\r\n");
      assertFalse(sent(client, "X: y\r\n".repeat(1 << 17)).startsWith("HTTP/1.1 2"));
    }
    assertEquals(List.of(), bench.asked);
  }

  @ParameterizedTest
  @ValueSource(strings = {"OPTIONS", "TRACE", "PUT", "DELETE", "PATCH", "CONNECT", "get", "BREW"})
  void no_other_method_is_answered(String method) throws IOException {
    String answer = ask(method + " /api/state HTTP/1.1", host, cookie, "X-Secret: s3cret");
    assertTrue(answer.startsWith("HTTP/1.1 405 "), answer);
    assertFalse(answer.contains("s3cret"), "what was asked is not sent back");
  }

  @Test
  void what_is_no_http_at_all_is_not_answered_at_length() throws IOException {
    assertFalse(ask("\u0016\u0003\u0001\u0002\u0000").contains("java"));
    assertFalse(ask("GET").contains("java"));
  }

  @Test
  void several_requests_in_one_connection_are_answered_in_their_order() throws IOException {
    try (RawClient client = new RawClient(bench.port())) {
      client.lines("GET /api/a HTTP/1.1", host, cookie).lines("GET /api/b HTTP/1.1", host, cookie);
      assertTrue(client.answer().endsWith("GET /api/a {} 0"));
      assertTrue(client.answer().endsWith("GET /api/b {} 0"));
    }
  }

  private String[] post(String... more) {
    String[] lines = {
      "POST /api/x HTTP/1.1",
      host,
      cookie,
      "Origin: http://" + bench.host(),
      "Content-Type: application/json"
    };
    String[] all = java.util.Arrays.copyOf(lines, lines.length + more.length);
    System.arraycopy(more, 0, all, lines.length, more.length);
    return all;
  }

  private String ask(String... lines) throws IOException {
    try (RawClient client = new RawClient(bench.port())) {
      return client.lines(lines).answer();
    }
  }

  private static String sent(RawClient client, String bytes) {
    try {
      return client.bytes(bytes + "\r\n\r\n").answer();
    } catch (IOException e) {
      return "closed";
    }
  }
}
