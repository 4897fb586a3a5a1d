package dev.ringout.serve;

import java.io.IOException;
import java.net.CookieManager;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.atomic.AtomicInteger;

/** A server with a small page, and browsers that come to it. */
final class ServedBench implements AutoCloseable {
  static final String PAGE = "<!doctype html><title>The bench</title>";

  /** More than two ends of a connection keep for each other. */
  private static final Reply LARGE =
      Reply.of(200, "application/octet-stream", new byte[16 * 1024 * 1024]);

  final List<Throwable> failures = new CopyOnWriteArrayList<>();
  final List<Ask> asked = new CopyOnWriteArrayList<>();
  final AtomicInteger state = new AtomicInteger();
  final Events events = new Events(() -> Event.latest("state", String.valueOf(state.get())));
  final BenchServer server;

  ServedBench() throws IOException {
    this(Waits.USUAL);
  }

  ServedBench(Waits waits) throws IOException {
    this.server =
        BenchServer.start(BenchServer.loopback(), 0, site(), new Answers(), events, waits);
  }

  /** The cookie line of a browser that was let in. */
  String cookie() throws IOException, InterruptedException {
    HttpResponse<String> letIn = get(stranger(), server.newTicket());
    return letIn.headers().firstValue("Set-Cookie").orElseThrow().replaceFirst(";.*", "");
  }

  private static Site site() {
    return Site.EMPTY
        .with("/", "text/html; charset=utf-8", PAGE.getBytes(StandardCharsets.UTF_8))
        .with("/bench.css", "text/css; charset=utf-8", "p{}".getBytes(StandardCharsets.UTF_8));
  }

  int port() {
    return server.home().getPort();
  }

  String host() {
    return "127.0.0.1:" + port();
  }

  /** A browser that was let in. */
  HttpClient browser() throws IOException, InterruptedException {
    HttpClient browser = stranger();
    get(browser, server.newTicket());
    return browser;
  }

  /** A browser that was not. */
  static HttpClient stranger() {
    return HttpClient.newBuilder()
        .version(HttpClient.Version.HTTP_1_1)
        .cookieHandler(new CookieManager())
        .followRedirects(HttpClient.Redirect.NEVER)
        .build();
  }

  HttpResponse<String> get(HttpClient browser, String path)
      throws IOException, InterruptedException {
    return get(browser, server.home().resolve(path));
  }

  static HttpResponse<String> get(HttpClient browser, URI at)
      throws IOException, InterruptedException {
    return browser.send(HttpRequest.newBuilder(at).build(), HttpResponse.BodyHandlers.ofString());
  }

  /** A POST as the page sends it. */
  HttpRequest.Builder post(String path, String contentType, byte[] body) {
    return HttpRequest.newBuilder(server.home().resolve(path))
        .header("Content-Type", contentType)
        .header("Origin", "http://" + host())
        .POST(HttpRequest.BodyPublishers.ofByteArray(body));
  }

  HttpResponse<String> postJson(HttpClient browser, String path, String json)
      throws IOException, InterruptedException {
    HttpRequest request =
        post(path, "application/json", json.getBytes(StandardCharsets.UTF_8)).build();
    return browser.send(request, HttpResponse.BodyHandlers.ofString());
  }

  @Override
  public void close() {
    server.close();
  }

  /** Says what it was asked. */
  private final class Answers implements Handler {
    @Override
    public Reply answer(Ask ask) {
      asked.add(ask);
      if (ask.path().equals("/api/broken")) {
        throw new IllegalStateException("a secret of the program");
      }
      if (ask.path().equals("/api/paper")) {
        return Reply.paper("<style>p{}</style>".getBytes(StandardCharsets.UTF_8));
      }
      if (ask.path().equals("/api/record")) {
        return Reply.of(200, "application/pdf", new byte[] {1, 2}).savedAs("a\r\nX: \"ö\".pdf");
      }
      if (ask.path().equals("/api/large")) {
        return LARGE;
      }
      return Reply.json(
          200, ask.method() + " " + ask.path() + " " + ask.query() + " " + ask.size());
    }

    @Override
    public BodyRule body(String path) {
      return switch (path) {
        case "/api/lists" -> BodyRule.FILE;
        case "/api/session/photo" -> BodyRule.PICTURE;
        default -> BodyRule.JSON;
      };
    }

    @Override
    public Reply failed(Throwable cause) {
      failures.add(cause);
      return Reply.text(500, "The bench made a mistake.");
    }
  }
}
