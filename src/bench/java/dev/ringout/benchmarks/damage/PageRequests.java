package dev.ringout.benchmarks.damage;

import static java.util.stream.Collectors.joining;

import dev.ringout.Ringout;
import dev.ringout.bench.BenchSetup;
import dev.ringout.jobs.StoreAtHand;
import dev.ringout.json.BenchJson;
import dev.ringout.meter.link.SystemTicks;
import dev.ringout.page.BenchPage;
import dev.ringout.support.Folders;
import java.io.IOException;
import java.net.CookieManager;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.net.http.HttpTimeoutException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.ZoneId;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.stream.Stream;

/**
 * What is sent to the bench's page, damaged: documents whose fields are others, of other types, in
 * each other without end, no JSON at all; wire lists; names in addresses. Each gets an answer of
 * the interface, and no mistake of the program is told.
 */
final class PageRequests {
  private static final int REQUESTS = 25;
  private static final int DEEP = 20_000;

  /** A machine that does other things takes longer for everything. */
  private static final Duration PATIENCE = Duration.ofSeconds(100);

  private static final int CUT = 1;

  private static final String SHEET = "application/octet-stream";

  /** What a browser sends when it sends it well; $ names what the bench has at that moment. */
  private static final List<String> ASKED =
      List.of(
          "POST /api/session/start {\"list\":\"$list\",\"serial\":\"0418\",\"tester\":\"R. Adeyemi\"}",
          "POST /api/session/take {\"step\":\"$step\",\"typed\":\"0.3\"}",
          "POST /api/session/take {\"step\":\"$step\",\"typed\":\"OL\",\"unit\":\"k\u03a9\"}",
          "POST /api/session/back {\"reading\":\"$reading\",\"why\":\"slipped\"}",
          "POST /api/session/skip {\"step\":\"$step\",\"why\":\"no access\"}",
          "POST /api/session/jump {\"to\":\"J1-3\"}",
          "POST /api/session/lead {\"follow\":true}",
          "POST /api/session/confirm {\"step\":\"$step\"}",
          "POST /api/session/note {\"text\":\"lid missing\"}",
          "POST /api/session/leads {}",
          "POST /api/session/meter {\"address\":\"none\",\"profile\":\"\"}",
          "POST /api/session/conditions {\"conditions\":[{\"name\":\"date\",\"value\":\"2027-03-31\"}]}",
          "POST /api/session/leave {}",
          "POST /api/session/finish {}",
          "POST /api/units/$unit/note {\"text\":\"x\",\"who\":\"R. Adeyemi\"}",
          "POST /api/units/$unit/sign {\"who\":\"M. Lindqvist\",\"role\":\"lead\",\"key\":\"k\",\"passphrase\":\"\"}",
          "POST /api/units/$unit/ticks {\"wire\":\"W1\",\"item\":\"J1\",\"pin\":\"1\",\"what\":\"made\",\"who\":\"R. Adeyemi\"}",
          "POST /api/units/$unit/diff {\"list\":\"$list\"}",
          "POST /api/units/$unit/record.html.seal {\"key\":\"k\",\"passphrase\":\"\"}",
          "POST /api/lists/$read/read {\"options\":[\"--item\",\"Wires\"]}",
          "POST /api/lists/$read/take {}",
          "GET /api/units?search=04",
          "GET /api/units/$unit",
          "GET /api/units/$unit/faces",
          "GET /api/units/$unit/ticks",
          "GET /api/units/$unit/papers/plan",
          "GET /api/units/$unit/record.html",
          "GET /api/units/$unit/record.xlsx.seal",
          "GET /api/units/$unit/photos/$unit",
          "GET /api/lists/$read",
          "GET /api/keys",
          "GET /api/state");

  private static final List<String> FRAGMENTS =
      List.of(
          "null",
          "true",
          "-1",
          "1e999",
          "9".repeat(400),
          "[]",
          "{}",
          "[\"a\",\"b\"]",
          "[{\"name\":1}]",
          "\"\\ud800\"",
          "\"\\u0000\"",
          "\"",
          "[".repeat(DEEP),
          "{\"a\":".repeat(DEEP));

  private final Chance chance;
  private final FileDamage damage;
  private final Path seeds;
  private final Path home;
  private final List<Throwable> failures = new CopyOnWriteArrayList<>();
  private int benches;

  PageRequests(Chance chance, FileDamage damage, Path seeds, Path home) {
    this.chance = chance;
    this.damage = damage;
    this.seeds = seeds;
    this.home = home;
  }

  /** A bench of its own, and what it is asked. */
  void round(Runs runs, Path work) throws Exception {
    Path data = Files.createDirectories(home.resolve("bench-" + benches++));
    StoreAtHand store = StoreAtHand.inFolderOfItsOwn(data.resolve("ringout.db"), Map.of());
    BenchSetup setup =
        new BenchSetup(
            store,
            "bench 1",
            "none",
            Optional.empty(),
            "none",
            Optional.empty(),
            data,
            false,
            0,
            1,
            new SystemTicks(),
            ZoneId.of("UTC"));
    try (BenchPage page =
        BenchPage.open(Ringout.onFilesAnd(store), setup, List.of(), 0, failures::add)) {
      Browser browser = new Browser(page.ticket());
      Asked taken = takesList(browser);
      browser.send(
          "POST",
          "/api/session/start",
          json(
              "{\"list\":\"" + taken.text("list") + "\",\"serial\":\"0418\",\"tester\":\"A. B\"}"));
      for (int i = 0; i < REQUESTS; i++) {
        one(browser, taken, runs, work);
      }
    }
    store.close();
    Folders.delete(data);
  }

  private Asked takesList(Browser browser) throws IOException, InterruptedException {
    Path file = seeds.resolve("openpyxl-harness.xlsx");
    Asked list =
        browser.send("POST", "/api/lists?name=box.xlsx", new Body(SHEET, Files.readAllBytes(file)));
    return browser.send("POST", "/api/lists/" + list.text("id") + "/take", json("{}"));
  }

  private void one(Browser browser, Asked taken, Runs runs, Path work)
      throws IOException, InterruptedException {
    if (chance.oneIn(10)) {
      listIn(browser, runs, work);
      return;
    }
    String[] asked = named(chance.of(ASKED), browser, taken).split(" ", 3);
    String path = chance.oneIn(12) ? damagedPath(asked[1]) : asked[1];
    Body body = new Body("", new byte[0]);
    if (asked.length > 2) {
      body = new Body("application/json", damaged(asked[2]));
    }
    judge(runs, work, asked[0] + " " + path, body, browser.send(asked[0], path, body));
  }

  /** A wire list that is damaged, read and taken all the same. */
  private void listIn(Browser browser, Runs runs, Path work)
      throws IOException, InterruptedException {
    String name =
        chance.of(List.of("office-harness.xlsx", "xlwt-harness.xls", "odfpy-harness.ods"));
    Path file = work.resolve(name);
    Files.write(file, Files.readAllBytes(seeds.resolve(name)));
    damage.damage(file);
    Body body = new Body(SHEET, Files.readAllBytes(file));
    String path = "/api/lists?name=" + encoded(name);
    Asked list = browser.send("POST", path, body);
    judge(runs, work, "POST " + path, body, list);
    if (list.status() == 200) {
      String take = "/api/lists/" + list.text("id") + "/take";
      judge(runs, work, "POST " + take, body, browser.send("POST", take, json("{}")));
    }
  }

  private String named(String asked, Browser browser, Asked taken)
      throws IOException, InterruptedException {
    Map<String, Object> session =
        inside(browser.send("GET", "/api/state", none()).json(), "session");
    String text =
        asked
            .replace("$list", taken.text("list"))
            .replace("$read", taken.text("id"))
            .replace("$step", String.valueOf(inside(session, "step").get("id")))
            .replace("$reading", String.valueOf(inside(session, "last").get("id")))
            .replace("$unit", String.valueOf(inside(session, "unit").get("id")));
    return text.contains("$") ? text.replace("$", "") : text;
  }

  @SuppressWarnings("unchecked")
  private static Map<String, Object> inside(Map<String, Object> json, String name) {
    return json.get(name) instanceof Map<?, ?> map ? (Map<String, Object>) map : Map.of();
  }

  private String damagedPath(String path) {
    int from = path.lastIndexOf('/') + 1;
    return path.substring(0, from) + encoded(chance.word());
  }

  private static String encoded(String word) {
    return URLEncoder.encode(word, StandardCharsets.UTF_8);
  }

  private byte[] damaged(String document) {
    Map<String, Object> fields = new LinkedHashMap<>(BenchJson.read(document).orElse(Map.of()));
    String text = document;
    if (!fields.isEmpty()) {
      String victim = chance.of(List.copyOf(fields.keySet()));
      String value = BenchJson.line(Map.of("x", fields.getOrDefault(victim, "")));
      value = value.substring("{\"x\":".length(), value.length() - 1);
      text =
          switch (chance.below(7)) {
            case 0 -> BenchJson.line(without(fields, victim));
            case 1, 2 -> text.replace(value, chance.of(FRAGMENTS));
            case 3, 4 -> text.replace(value, quoted(chance.word()));
            case 5 -> text.replaceFirst("}$", ",\"" + victim + "\":1}");
            default -> text;
          };
    }
    byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
    return chance.oneIn(8) ? chance.bytes(bytes) : bytes;
  }

  private static Map<String, Object> without(Map<String, Object> fields, String name) {
    Map<String, Object> less = new LinkedHashMap<>(fields);
    less.remove(name);
    return less;
  }

  private static String quoted(String word) {
    String line = BenchJson.line(Map.of("x", word));
    return line.substring("{\"x\":".length(), line.length() - 1);
  }

  /** No mistake is told, and what is refused says why. */
  private void judge(Runs runs, Path work, String what, Body body, Asked answer)
      throws IOException {
    runs.counted("page " + answer.status());
    Files.write(work.resolve("body"), body.bytes());
    if (answer.status() >= 500 && answer.status() != 507) {
      runs.keep(work, "page answered " + answer.status() + " to " + what, "page");
    }
    if (answer.status() == 0) {
      runs.keep(work, "page did not answer " + what, "page");
    }
    if (answer.isJson() && answer.status() >= 400 && answer.json().isEmpty()) {
      runs.keep(work, "page refuses without a word: " + what, "page");
    }
    for (Throwable failure : failures) {
      String frames =
          Stream.of(failure.getStackTrace()).limit(12).map(Object::toString).collect(joining(" "));
      runs.keep(work, "page: " + failure + " at " + frames, what);
    }
    failures.clear();
  }

  private static Body json(String text) {
    return new Body("application/json", text.getBytes(StandardCharsets.UTF_8));
  }

  private static Body none() {
    return new Body("", new byte[0]);
  }

  /** What is sent, and what it says that it is. */
  private static final class Body {
    private final String type;
    private final byte[] bytes;

    Body(String type, byte[] bytes) {
      this.type = type;
      this.bytes = bytes.clone();
    }

    String type() {
      return type;
    }

    byte[] bytes() {
      return bytes.clone();
    }
  }

  /** What was answered; {@link #CUT} where the connection was, 0 where nothing came. */
  private record Asked(int status, String type, String text) {
    boolean isJson() {
      return type.startsWith("application/json");
    }

    Map<String, Object> json() {
      return BenchJson.read(text).orElse(Map.of());
    }

    String text(String name) {
      return String.valueOf(json().get(name));
    }
  }

  /** A browser that was let in. */
  private static final class Browser {
    private final HttpClient client =
        HttpClient.newBuilder()
            .version(HttpClient.Version.HTTP_1_1)
            .cookieHandler(new CookieManager())
            .build();
    private final URI home;

    Browser(URI ticket) throws IOException, InterruptedException {
      this.home = ticket.resolve("/");
      client.send(HttpRequest.newBuilder(ticket).build(), HttpResponse.BodyHandlers.discarding());
    }

    Asked send(String method, String path, Body body) throws IOException, InterruptedException {
      HttpRequest.Builder request = HttpRequest.newBuilder(home.resolve(path)).timeout(PATIENCE);
      if (method.equals("POST")) {
        request
            .header("Content-Type", body.type())
            .header("Origin", home.toString().replaceFirst("/$", ""))
            .POST(HttpRequest.BodyPublishers.ofByteArray(body.bytes()));
      }
      try {
        HttpResponse<String> answer =
            client.send(request.build(), HttpResponse.BodyHandlers.ofString());
        String type = answer.headers().firstValue("Content-Type").orElse("");
        return new Asked(answer.statusCode(), type, answer.body());
      } catch (HttpTimeoutException e) {
        return new Asked(0, "", "");
      } catch (IOException e) {
        // Refused before it was read to its end: the answer is lost with the connection.
        return new Asked(CUT, "", "");
      }
    }
  }
}
