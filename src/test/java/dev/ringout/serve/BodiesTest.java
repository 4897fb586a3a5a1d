package dev.ringout.serve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** What is sent is bounded in length and in time, whatever it says of itself. */
class BodiesTest {
  private static final Waits IMPATIENT =
      new Waits(
          Duration.ofMillis(500),
          Duration.ofMillis(500),
          Duration.ofSeconds(20),
          Duration.ofSeconds(5),
          Duration.ofSeconds(5));

  /** Longer than any machine takes, and shorter than without the bound. */
  private static final Duration HANGS = Duration.ofSeconds(15);

  private static final int KIB = 1024;
  private static final int MIB = KIB * KIB;

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
  void a_document_has_up_to_64_KiB() throws IOException, InterruptedException {
    assertEquals(200, post("/api/session/note", "application/json", 64 * KIB));
    assertEquals(413, post("/api/session/note", "application/json", 64 * KIB + 1));
    assertEquals(1, bench.asked.size());
  }

  @Test
  void a_wire_list_and_a_picture_may_be_longer_where_they_are_sent()
      throws IOException, InterruptedException {
    assertEquals(200, post("/api/lists", "application/octet-stream", 32 * MIB));
    assertEquals(200, post("/api/session/photo", "image/jpeg", 8 * MIB));
    assertEquals(413, post("/api/session/photo", "image/png", 8 * MIB + 1));
    assertEquals(415, post("/api/session/photo", "image/svg+xml", 10));
    assertEquals(415, post("/api/session/note", "image/jpeg", 10));
  }

  @Test
  void who_sends_too_much_hears_it_when_he_is_done() throws IOException, InterruptedException {
    assertEquals(413, post("/api/lists", "application/octet-stream", 40 * MIB));
    assertEquals(200, bench.get(browser, "/api/state").statusCode());
  }

  @Test
  void a_body_that_does_not_say_its_length_is_counted() throws IOException, InterruptedException {
    assertEquals(200, postInPieces(64 * KIB));
    assertEquals(413, postInPieces(64 * KIB + 1));
    assertEquals(413, postInPieces(20 * MIB));
  }

  @Test
  void a_stranger_sends_nothing_at_all() throws IOException {
    try (RawClient client = new RawClient(bench.port())) {
      String answer =
          client
              .lines(
                  "POST /api/lists HTTP/1.1",
                  "Host: " + bench.host(),
                  "Origin: http://" + bench.host(),
                  "Content-Type: application/octet-stream",
                  "Content-Length: 33554432")
              .answer();
      assertTrue(answer.startsWith("HTTP/1.1 403 "), answer);
    }
  }

  @Test
  void a_body_that_does_not_come_is_not_waited_for() throws IOException, InterruptedException {
    try (ServedBench impatient = new ServedBench(IMPATIENT);
        RawClient client = new RawClient(impatient.port())) {
      client.bytes(postOf(impatient, 100) + "{\"half\": ");
      assertEquals("", client.rest());
      assertEquals(List.of(), impatient.asked);
    }
  }

  @Test
  void a_body_that_drips_is_not_waited_for() throws IOException, InterruptedException {
    try (ServedBench impatient = new ServedBench(IMPATIENT)) {
      String post = postOf(impatient, 1000);
      assertTimeoutPreemptively(HANGS, () -> drip(impatient, post));
      assertEquals(List.of(), impatient.asked);
    }
  }

  @Test
  void headers_that_drip_are_not_waited_for() throws IOException {
    try (ServedBench impatient = new ServedBench(IMPATIENT)) {
      assertTimeoutPreemptively(HANGS, () -> drip(impatient, "GET /api/state HTTP/1.1\r\nX: y"));
    }
  }

  @Test
  void many_who_send_nothing_more_keep_nobody_out() throws IOException {
    List<RawClient> slow = new ArrayList<>();
    try (ServedBench usual = new ServedBench()) {
      HttpClient other = usual.browser();
      for (int i = 0; i < 100; i++) {
        slow.add(new RawClient(usual.port()).bytes("POST /api/state HTTP/1.1\r\nHost: "));
      }
      assertTimeoutPreemptively(
          HANGS, () -> assertEquals(200, usual.get(other, "/api/state").statusCode()));
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    } finally {
      for (RawClient client : slow) {
        client.close();
      }
    }
  }

  @Test
  void who_does_not_read_the_answer_is_left_alone() throws IOException, InterruptedException {
    List<RawClient> slow = new ArrayList<>();
    String cookie = "Cookie: " + bench.cookie();
    for (int i = 0; i < 100; i++) {
      slow.add(
          new RawClient(bench.port())
              .lines("GET /api/large HTTP/1.1", "Host: " + bench.host(), cookie));
    }
    assertTimeoutPreemptively(
        HANGS, () -> assertEquals(200, bench.get(browser, "/api/state").statusCode()));
    for (RawClient client : slow) {
      client.close();
    }
  }

  /**
   * The server of the JDK keeps account of connections that are closed behind its back for ever.
   */
  @Test
  void who_leaves_before_the_answer_is_forgotten() throws IOException, InterruptedException {
    String host = "Host: " + bench.host();
    String cookie = "Cookie: " + bench.cookie();
    for (int i = 0; i < 520; i++) {
      try (RawClient client = new RawClient(bench.port())) {
        client.lines("GET /api/" + (i % 200 == 0 ? "events" : "state") + " HTTP/1.1", host, cookie);
      }
    }
    assertEquals(200, bench.get(browser, "/api/state").statusCode());
    assertEquals(200, bench.get(bench.browser(), "/api/state").statusCode());
  }

  private int post(String path, String type, int length) throws IOException, InterruptedException {
    HttpRequest request = bench.post(path, type, new byte[length]).build();
    return browser.send(request, HttpResponse.BodyHandlers.ofString()).statusCode();
  }

  private int postInPieces(int length) throws IOException, InterruptedException {
    HttpRequest request =
        bench
            .post("/api/session/note", "application/json", new byte[0])
            .POST(
                HttpRequest.BodyPublishers.ofInputStream(
                    () -> new ByteArrayInputStream(new byte[length])))
            .build();
    return browser.send(request, HttpResponse.BodyHandlers.ofString()).statusCode();
  }

  /** All but the body. */
  private static String postOf(ServedBench bench, int length)
      throws IOException, InterruptedException {
    return String.join(
        "\r\n",
        "POST /api/session/note HTTP/1.1",
        "Host: " + bench.host(),
        "Origin: http://" + bench.host(),
        "Cookie: " + bench.cookie(),
        "Content-Type: application/json",
        "Content-Length: " + length,
        "\r\n");
  }

  /** Sends a byte now and then, until the server has had enough. */
  private static void drip(ServedBench bench, String begun) throws InterruptedException {
    try (RawClient client = new RawClient(bench.port())) {
      client.bytes(begun);
      for (int i = 0; i < 1000; i++) {
        client.bytes("a");
        Thread.sleep(20);
      }
    } catch (IOException e) {
      return;
    }
    throw new AssertionError("it was listened to without end");
  }
}
