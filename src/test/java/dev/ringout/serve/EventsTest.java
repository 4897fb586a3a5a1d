package dev.ringout.serve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Every page is told what happens, in its order; who tells never waits for a page. */
class EventsTest {
  private static final Waits SHORT =
      new Waits(
          Duration.ofSeconds(10),
          Duration.ofSeconds(20),
          Duration.ofSeconds(20),
          Duration.ofMillis(500),
          Duration.ofMillis(100));

  private final List<RawClient> clients = new ArrayList<>();
  private ServedBench bench;

  @BeforeEach
  void start() throws IOException {
    bench = new ServedBench(SHORT);
  }

  @AfterEach
  void stop() throws IOException {
    bench.close();
    for (RawClient client : clients) {
      client.close();
    }
  }

  @Test
  void a_page_is_told_the_state_at_once_and_then_what_happens_in_its_order()
      throws IOException, InterruptedException {
    bench.state.set(7);
    RawClient page = listen(bench.cookie());
    String head = page.answer();
    assertTrue(head.startsWith("HTTP/1.1 200 "), head);
    assertTrue(head.contains("Content-type: text/event-stream; charset=utf-8"), head);
    assertEquals("retry: 1000\n\n", page.piece());
    assertEquals("event: state\ndata: 7\n\n", page.piece());
    for (int i = 0; i < 200; i++) {
      bench.events.publish(Event.each("tone", String.valueOf(i)));
    }
    List<String> data = dataOf(until(page, "data: 199\n\n"));
    assertEquals(java.util.stream.IntStream.range(0, 200).mapToObj(String::valueOf).toList(), data);
  }

  @Test
  void two_pages_are_told_the_same() throws IOException, InterruptedException {
    RawClient desk = page();
    RawClient tablet = page();
    until(desk, "data: 0\n\n");
    until(tablet, "data: 0\n\n");
    assertEquals(2, bench.events.listening());
    bench.events.publish(Event.each("state", "{\"version\": 2}"));
    assertEquals(dataOf(until(desk, "2}\n\n")), dataOf(until(tablet, "2}\n\n")));
  }

  @Test
  void a_text_of_several_lines_arrives_as_one_event() throws IOException, InterruptedException {
    RawClient page = page();
    until(page, "data: 0\n\n");
    bench.events.publish(Event.each("tone", "a\nevent: false\r\n\r\ndata: b"));
    String told = until(page, "b\n\n");
    assertTrue(
        told.contains("event: tone\ndata: a\ndata: event: false\ndata: \ndata: data: b\n\n"), told);
  }

  @Test
  void of_what_is_shown_live_the_newest_is_enough() throws InterruptedException {
    Feed feed = new Feed();
    feed.offer(Event.latest("live", "0.31"));
    feed.offer(Event.each("tone", "good"));
    feed.offer(Event.latest("state", "1"));
    feed.offer(Event.latest("live", "0.32"));
    feed.offer(Event.each("tone", "lifted"));
    assertEquals(
        List.of("good", "1", "0.32", "lifted"), feed.take().stream().map(Event::data).toList());
    assertEquals(List.of(), feed.take());
  }

  @Test
  void a_stream_on_which_nothing_happens_says_that_it_is_there()
      throws IOException, InterruptedException {
    RawClient page = page();
    until(page, "data: 0\n\n");
    until(page, ":\n\n");
  }

  @Test
  void a_page_that_went_away_is_noticed() throws IOException, InterruptedException {
    RawClient page = page();
    until(page, "data: 0\n\n");
    page.close();
    waitUntilNobodyListens();
  }

  @Test
  void a_page_that_takes_nothing_is_dropped_and_nobody_waits_for_it()
      throws IOException, InterruptedException {
    RawClient asleep = page();
    RawClient awake = page();
    until(awake, "data: 0\n\n");
    String text = "x".repeat(10_000);
    assertTimeoutPreemptively(
        Duration.ofSeconds(10),
        () -> {
          for (int i = 0; i < 10_000; i++) {
            bench.events.publish(Event.each("state", i + text));
          }
        });
    awake.close();
    waitUntilNobodyListens();
    assertTrue(asleep.rest().length() < 50_000_000, "it was cut off");
  }

  @Test
  void what_waits_for_a_page_is_bounded() {
    Feed feed = new Feed();
    int taken = 0;
    while (feed.offer(Event.each("tone", "good")) && taken < 10_000) {
      taken++;
    }
    assertEquals(256, taken);
    assertEquals(List.of(), feed.take(), "nothing is kept for who is dropped");
    Feed wide = new Feed();
    String large = "x".repeat(3 * 1024 * 1024);
    assertTrue(wide.offer(Event.each("state", large.repeat(2))), "one arrives, however long");
    assertEquals(1, wide.take().size());
    assertTrue(wide.offer(Event.each("state", large)));
    assertTrue(!wide.offer(Event.each("state", large)));
  }

  @Test
  void only_so_many_windows_listen() throws IOException, InterruptedException {
    int refused = 0;
    for (int browser = 0; browser < 8; browser++) {
      String cookie = bench.cookie();
      for (int window = 0; window < 5; window++) {
        String first = listen(cookie).answer();
        refused += first.startsWith("HTTP/1.1 503 ") && first.contains("Close one") ? 1 : 0;
      }
    }
    assertEquals(8, refused, "of 40");
    assertEquals(32, bench.events.listening());
    assertEquals(200, bench.get(bench.browser(), "/api/state").statusCode());
  }

  /** A browser opens six connections to one address: the page needs one beside its events. */
  @Test
  void one_browser_listens_in_five_windows() throws IOException, InterruptedException {
    String cookie = bench.cookie();
    for (int window = 0; window < 5; window++) {
      assertTrue(listen(cookie).answer().startsWith("HTTP/1.1 200 "));
    }
    assertTrue(listen(cookie).answer().startsWith("HTTP/1.1 503 "));
  }

  @Test
  void a_page_that_is_loaded_again_and_again_always_listens()
      throws IOException, InterruptedException {
    try (ServedBench usual = new ServedBench()) {
      String cookie = usual.cookie();
      for (int i = 0; i < 12; i++) {
        try (RawClient page = new RawClient(usual.port())) {
          page.lines("GET /api/events HTTP/1.1", "Host: " + usual.host(), "Cookie: " + cookie);
          assertTrue(page.answer().startsWith("HTTP/1.1 200 "), "loaded the time " + i);
        }
      }
    }
  }

  @Test
  void the_end_of_the_server_ends_the_streams() throws IOException, InterruptedException {
    List<RawClient> pages = new ArrayList<>();
    for (int i = 0; i < 10; i++) {
      pages.add(page());
    }
    until(pages.get(9), "data: 0\n\n");
    assertTimeoutPreemptively(Duration.ofSeconds(5), bench.server::close);
    for (RawClient page : pages) {
      page.rest();
    }
    bench.events.publish(Event.each("tone", "good"));
    assertEquals(0, bench.events.listening());
  }

  /** A page that listens. */
  private RawClient page() throws IOException, InterruptedException {
    RawClient page = listen(bench.cookie());
    String head = page.answer();
    assertTrue(head.startsWith("HTTP/1.1 200 "), head);
    return page;
  }

  private RawClient listen(String cookie) throws IOException {
    RawClient client = new RawClient(bench.port());
    clients.add(client);
    return client.lines("GET /api/events HTTP/1.1", "Host: " + bench.host(), "Cookie: " + cookie);
  }

  /** What a page was told until this came. */
  private static String until(RawClient page, String end) throws IOException {
    StringBuilder told = new StringBuilder();
    while (told.indexOf(end) < 0) {
      String some = page.piece();
      assertTrue(!some.isEmpty(), () -> "ended before " + end);
      told.append(some);
    }
    return told.toString();
  }

  private static List<String> dataOf(String told) {
    return told.lines()
        .filter(line -> line.startsWith("data: "))
        .map(line -> line.substring(6))
        .toList();
  }

  private void waitUntilNobodyListens() throws IOException, InterruptedException {
    waitUntil(() -> bench.events.listening() == 0);
  }

  private static void waitUntil(Condition condition) throws IOException, InterruptedException {
    boolean holds = condition.holds();
    for (int i = 0; i < 500 && !holds; i++) {
      Thread.sleep(20);
      holds = condition.holds();
    }
    assertTrue(holds);
  }

  /** Something that becomes true. */
  private interface Condition {
    boolean holds() throws IOException;
  }
}
