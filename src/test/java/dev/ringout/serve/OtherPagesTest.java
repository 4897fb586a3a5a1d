package dev.ringout.serve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Another page in the same browser, with the cookie that the browser may add, can do nothing. */
class OtherPagesTest {
  private ServedBench bench;
  private String cookie;

  @BeforeEach
  void start() throws IOException, InterruptedException {
    bench = new ServedBench();
    cookie = bench.cookie();
  }

  @AfterEach
  void stop() {
    bench.close();
  }

  @Test
  void the_page_itself_is_answered() throws IOException {
    assertEquals(200, post(bench.host(), "Origin: http://" + bench.host()));
    assertEquals(
        200, post(bench.host(), "Origin: http://" + bench.host(), "Sec-Fetch-Site: same-origin"));
    assertEquals(
        200, post("localhost:" + bench.port(), "Origin: http://localhost:" + bench.port()));
    assertEquals(200, get(bench.host(), "Sec-Fetch-Site: none"));
  }

  /** A name of theirs may lead to this machine: then their page is of one origin with the bench. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "evil.example",
        "evil.example:PORT",
        "127.0.0.1",
        "127.0.0.1:1",
        "127.0.0.1:PORT.evil.example",
        "localhost",
        "LOCALHOST:PORT",
        "localhost.:PORT",
        "0.0.0.0:PORT",
        "[::1]:PORT",
        "127.1:PORT",
        "2130706433:PORT",
        "evil.example@127.0.0.1:PORT",
        "127.0.0.1:PORT ",
        "127.0.0.1:0PORT",
        ""
      })
  void a_host_that_is_not_served_is_refused(String host) throws IOException {
    String sent = host.replace("PORT", String.valueOf(bench.port()));
    int expected = host.endsWith(" ") ? 200 : 403; // White space around a value is none of it.
    assertEquals(expected, get(sent), sent);
    assertEquals(403, post(sent, "Origin: http://" + sent + "."), sent);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "http://evil.example", "http://evil.example:PORT", "null", "https://127.0.0.1:PORT",
        "http://127.0.0.1", "http://127.0.0.1:1", "http://localhost:PORT", "http://127.0.0.1:PORT/",
        "http://127.0.0.1:PORT.evil.example", "http://127.0.0.1:PORT http://evil.example", ""
      })
  void another_origin_is_refused(String origin) throws IOException {
    String sent = "Origin: " + origin.replace("PORT", String.valueOf(bench.port()));
    assertEquals(403, post(bench.host(), sent), sent);
    assertEquals(403, get(bench.host(), sent), sent);
  }

  @Test
  void a_post_that_does_not_say_where_it_comes_from_is_refused() throws IOException {
    assertEquals(403, post(bench.host(), "X-Nothing: said"));
  }

  /** A page at another port of this machine is of the same site: the browser adds the cookie. */
  @ParameterizedTest
  @ValueSource(strings = {"cross-site", "same-site", "SAME-ORIGIN", ""})
  void what_the_browser_says_to_come_from_elsewhere_is_refused(String site) throws IOException {
    assertEquals(403, get(bench.host(), "Sec-Fetch-Site: " + site));
    assertEquals(
        403, post(bench.host(), "Origin: http://" + bench.host(), "Sec-Fetch-Site: " + site));
  }

  @Test
  void nobody_types_a_post() throws IOException {
    assertEquals(403, post(bench.host(), "Origin: http://" + bench.host(), "Sec-Fetch-Site: none"));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "text/plain",
        "application/x-www-form-urlencoded",
        "multipart/form-data; boundary=x",
        "application/octet-stream",
        "application/json; charset=utf-16",
        "application/jsonp",
        ""
      })
  void a_form_is_no_document(String type) throws IOException {
    String answer = send("POST", bench.host(), type, "Origin: http://" + bench.host());
    assertTrue(answer.startsWith("HTTP/1.1 415 "), answer);
    assertEquals(List.of(), bench.asked);
  }

  @Test
  void a_document_may_say_its_letters() throws IOException {
    String type = "Application/JSON; charset=UTF-8";
    String answer = send("POST", bench.host(), type, "Origin: http://" + bench.host());
    assertTrue(answer.startsWith("HTTP/1.1 200 "), answer);
  }

  @Test
  void a_question_beforehand_allows_nothing() throws IOException {
    String answer =
        send(
            "OPTIONS",
            bench.host(),
            "application/json",
            "Origin: http://evil.example",
            "Access-Control-Request-Method: POST");
    assertTrue(answer.startsWith("HTTP/1.1 405 "), answer);
    assertTrue(!answer.contains("Access-Control"), answer);
  }

  @Test
  void no_web_socket_is_opened() throws IOException {
    String upgrade = "Upgrade: websocket";
    assertEquals(403, get(bench.host(), upgrade, "Origin: http://evil.example"));
    assertEquals(400, get(bench.host(), upgrade, "Sec-WebSocket-Key: dGhlIHNhbXBsZSBub25jZQ=="));
  }

  private int get(String host, String... more) throws IOException {
    return status(send("GET", host, "", more));
  }

  private int post(String host, String... more) throws IOException {
    return status(send("POST", host, "application/json", more));
  }

  private static int status(String answer) {
    return Integer.parseInt(answer.substring(9, 12));
  }

  private String send(String method, String host, String type, String... more) throws IOException {
    List<String> lines = new ArrayList<>();
    lines.add(method + " /api/session/leave HTTP/1.1");
    lines.add("Host: " + host);
    lines.add("Cookie: theirs=1; " + cookie);
    lines.addAll(List.of(more));
    String body = method.equals("POST") ? "{}" : "";
    if (!type.isEmpty()) {
      lines.add("Content-Type: " + type);
    }
    lines.add("Content-Length: " + body.length());
    try (RawClient client = new RawClient(bench.port())) {
      return client.lines(lines.toArray(String[]::new)).bytes(body).answer();
    }
  }
}
