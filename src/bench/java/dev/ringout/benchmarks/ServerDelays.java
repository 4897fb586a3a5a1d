package dev.ringout.benchmarks;

import dev.ringout.serve.Ask;
import dev.ringout.serve.BenchServer;
import dev.ringout.serve.BodyRule;
import dev.ringout.serve.Event;
import dev.ringout.serve.Events;
import dev.ringout.serve.Handler;
import dev.ringout.serve.Reply;
import dev.ringout.serve.Site;
import dev.ringout.units.Text;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.lang.management.ManagementFactory;
import java.net.CookieManager;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;

/** What the server under the bench's page takes, with a handler that does nothing. */
public final class ServerDelays {
  private static final int WARM = 500;
  private static final int EVENTS = 500;
  private static final int IDLE_SECONDS = 5;

  /** As long as a state is. */
  private static final String STATE = "x".repeat(4000);

  private ServerDelays() {}

  /** {@code ServerDelays POSTS PAGES}. */
  public static void main(String[] args) throws Exception {
    Events events = new Events(() -> Event.latest("state", STATE));
    long began = System.nanoTime();
    long ended;
    try (BenchServer server =
        BenchServer.start(BenchServer.loopback(), 0, Site.EMPTY, new Nothing(), events)) {
      HttpClient browser = HttpClient.newBuilder().cookieHandler(new CookieManager()).build();
      send(browser, HttpRequest.newBuilder(server.newTicket()).build());
      print("first answer, client's start included", new long[] {System.nanoTime() - began});
      HttpRequest post = post(server.home());
      time(WARM, () -> send(browser, post));
      print("POST and back", time(Integer.parseInt(args[0]), () -> send(browser, post)));
      toPages(server, events, Integer.parseInt(args[1]));
      idle();
      ended = System.nanoTime();
    }
    print("close", new long[] {System.nanoTime() - ended});
  }

  private static HttpRequest post(URI home) {
    return HttpRequest.newBuilder(home.resolve("/api/session/take"))
        .header("Content-Type", "application/json")
        .header("Origin", home.toString().replaceFirst("/$", ""))
        .POST(HttpRequest.BodyPublishers.ofString("{\"step\": \"1\"}"))
        .build();
  }

  private static void send(HttpClient browser, HttpRequest request) throws Exception {
    int status = browser.send(request, HttpResponse.BodyHandlers.ofString()).statusCode();
    if (status >= 400) {
      throw new IllegalStateException("answered with " + status);
    }
  }

  /** From telling an event until the last of the pages has it. */
  private static void toPages(BenchServer server, Events events, int pages) throws Exception {
    Semaphore arrived = new Semaphore(0);
    for (int i = 0; i < pages; i++) {
      HttpClient browser = HttpClient.newBuilder().cookieHandler(new CookieManager()).build();
      send(browser, HttpRequest.newBuilder(server.newTicket()).build());
      HttpRequest ask = HttpRequest.newBuilder(server.home().resolve(BenchServer.EVENTS)).build();
      InputStream in = browser.send(ask, HttpResponse.BodyHandlers.ofInputStream()).body();
      Thread reader = new Thread(() -> read(in, arrived));
      reader.setDaemon(true);
      reader.start();
    }
    arrived.acquire(pages);
    long[] delays =
        time(
            EVENTS,
            () -> {
              events.publish(Event.each("state", STATE));
              arrived.acquire(pages);
            });
    print("event to the last of " + pages + " pages", delays);
    long before = System.nanoTime();
    for (int i = 0; i < 100; i++) {
      events.publish(Event.latest("live", STATE));
    }
    print("telling an event", new long[] {(System.nanoTime() - before) / 100});
  }

  private static void read(InputStream in, Semaphore arrived) {
    try (BufferedReader lines =
        new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8))) {
      for (String line = lines.readLine(); line != null; line = lines.readLine()) {
        if (line.startsWith("data: ")) {
          arrived.release();
        }
      }
    } catch (IOException e) {
      // The server ended.
    }
  }

  private static void idle() throws InterruptedException {
    long cpu = processNanos();
    Thread.sleep(TimeUnit.SECONDS.toMillis(IDLE_SECONDS));
    double share = 100.0 * (processNanos() - cpu) / TimeUnit.SECONDS.toNanos(IDLE_SECONDS);
    System.out.println(Text.of("idle: %.2f %% of a core", share));
  }

  private static long processNanos() {
    return ((com.sun.management.OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean())
        .getProcessCpuTime();
  }

  private static long[] time(int times, Work work) throws Exception {
    long[] nanos = new long[times];
    for (int i = 0; i < times; i++) {
      long began = System.nanoTime();
      work.run();
      nanos[i] = System.nanoTime() - began;
    }
    Arrays.sort(nanos);
    return nanos;
  }

  private static void print(String what, long[] sorted) {
    System.out.println(
        Text.of(
            "%s: median %.2f ms, 99 of 100 %.2f ms, most %.2f ms",
            what,
            sorted[sorted.length / 2] / 1e6,
            sorted[sorted.length * 99 / 100] / 1e6,
            sorted[sorted.length - 1] / 1e6));
  }

  /** Something that is timed. */
  private interface Work {
    void run() throws Exception;
  }

  /** Says that all is well. */
  private static final class Nothing implements Handler {
    @Override
    public Reply answer(Ask ask) {
      return Reply.json(200, STATE);
    }

    @Override
    public BodyRule body(String path) {
      return BodyRule.JSON;
    }

    @Override
    public Reply failed(Throwable cause) {
      throw new IllegalStateException(cause);
    }
  }
}
