package dev.ringout.page;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.networknt.schema.Error;
import com.networknt.schema.InputFormat;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import dev.ringout.Ringout;
import dev.ringout.bench.BenchSetup;
import dev.ringout.jobs.StoreAtHand;
import dev.ringout.json.BenchJson;
import dev.ringout.meter.link.SystemTicks;
import java.io.IOException;
import java.net.CookieManager;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.stream.Stream;

/** A bench whose values are typed, in a folder, and a browser that was let in. */
final class PageForLists implements AutoCloseable {
  private static final Path SCHEMA = Path.of("docs/reference/bench-api.schema.json");

  final List<Throwable> failures = new CopyOnWriteArrayList<>();
  private final Path data;
  private final BenchPage page;
  private final URI home;
  private final HttpClient browser;

  PageForLists(Path data) throws Exception {
    this.data = data;
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
    this.page = BenchPage.open(Ringout.onFilesAnd(store), setup, List.of(), 0, failures::add);
    URI ticket = page.ticket();
    this.home = ticket.resolve("/");
    this.browser =
        HttpClient.newBuilder()
            .version(HttpClient.Version.HTTP_1_1)
            .cookieHandler(new CookieManager())
            .build();
    browser.send(HttpRequest.newBuilder(ticket).build(), HttpResponse.BodyHandlers.discarding());
  }

  /** What was answered. */
  record Answered(int status, String text) {
    Map<String, Object> json() {
      return BenchJson.read(text).orElseThrow();
    }

    /** What stands in objects in objects. */
    Object inside(String... names) {
      Object object = json();
      for (String name : names) {
        object = Objects.requireNonNull(((Map<?, ?>) object).get(name), name);
      }
      return object;
    }

    String text(String name) {
      return String.valueOf(json().get(name));
    }

    List<?> list(String name) {
      return (List<?>) json().getOrDefault(name, List.of());
    }

    /** Objects of a list, one field of each. */
    List<String> each(String name, String field) {
      return list(name).stream().map(one -> String.valueOf(((Map<?, ?>) one).get(field))).toList();
    }

    /** The options of the first choice whose text holds these words. */
    List<?> choice(String words) {
      return list("choices").stream()
          .map(one -> (Map<?, ?>) one)
          .filter(one -> String.valueOf(one.get("text")).contains(words))
          .map(one -> (List<?>) one.get("options"))
          .findFirst()
          .orElseThrow();
    }

    /** The same, which has to be a list as the schema has it. */
    Answered isList() {
      assertEquals(200, status, text);
      return is("list");
    }

    Answered isRefused(int expected) {
      assertEquals(expected, status, text);
      return is("problems");
    }

    Answered is(String document) {
      try {
        String schema = Files.readString(SCHEMA);
        List<Error> errors =
            SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                .getSchema(
                    "{\"$ref\": \"#/$defs/" + document + "\"," + schema.substring(1),
                    InputFormat.JSON)
                .validate(text, InputFormat.JSON);
        assertEquals(List.of(), errors, text);
        return this;
      } catch (IOException e) {
        throw new AssertionError(e);
      }
    }
  }

  /** The bytes of an answer: a record, a picture. */
  byte[] bytes(String path) throws Exception {
    HttpResponse<byte[]> answer =
        browser.send(
            HttpRequest.newBuilder(home.resolve(path)).build(),
            HttpResponse.BodyHandlers.ofByteArray());
    assertEquals(200, answer.statusCode());
    return answer.body();
  }

  /** A picture that the camera took. */
  Answered photo(String text, byte[] picture) throws Exception {
    return post(
        "/api/session/photo?text=" + URLEncoder.encode(text, StandardCharsets.UTF_8),
        "image/png",
        picture);
  }

  Path store() {
    return data.resolve("ringout.db");
  }

  Answered get(String path) throws Exception {
    return answered(HttpRequest.newBuilder(home.resolve(path)).build());
  }

  Answered post(String path, Map<String, Object> body) throws Exception {
    return post(path, "application/json", BenchJson.line(body).getBytes(StandardCharsets.UTF_8));
  }

  private Answered post(String path, String type, byte[] body) throws Exception {
    return answered(
        HttpRequest.newBuilder(home.resolve(path))
            .header("Content-Type", type)
            .header("Origin", home.resolve("/").toString().replaceFirst("/$", ""))
            .POST(HttpRequest.BodyPublishers.ofByteArray(body))
            .build());
  }

  private Answered answered(HttpRequest request) throws Exception {
    HttpResponse<String> answer = browser.send(request, HttpResponse.BodyHandlers.ofString());
    return new Answered(answer.statusCode(), answer.body());
  }

  Answered handIn(String name, byte[] file) throws Exception {
    return post(
        "/api/lists?name=" + URLEncoder.encode(name, StandardCharsets.UTF_8),
        "application/octet-stream",
        file);
  }

  Answered handIn(String name, String csv) throws Exception {
    return handIn(name, csv.getBytes(StandardCharsets.UTF_8));
  }

  Answered handIn(Path file) throws Exception {
    return handIn(String.valueOf(file.getFileName()), Files.readAllBytes(file));
  }

  Answered read(Answered list, List<?> options) throws Exception {
    return post("/api/lists/" + list.text("id") + "/read", Map.of("options", options));
  }

  Answered take(Answered list) throws Exception {
    return post("/api/lists/" + list.text("id") + "/take", Map.of());
  }

  /** Every file below its lists, by its way from there. */
  List<String> files(String below) throws IOException {
    return filesIn(data.resolve("lists").resolve(below));
  }

  /** Every file of the bench. */
  List<String> filesOfBench() throws IOException {
    return filesIn(data);
  }

  private static List<String> filesIn(Path folder) throws IOException {
    if (!Files.exists(folder)) {
      return List.of();
    }
    try (Stream<Path> all = Files.walk(folder)) {
      return all.filter(Files::isRegularFile)
          .map(file -> folder.relativize(file).toString())
          .sorted()
          .toList();
    }
  }

  Path takenFile(String name) throws IOException {
    String way =
        files("taken").stream().filter(one -> one.endsWith(name)).findFirst().orElseThrow();
    return data.resolve("lists").resolve("taken").resolve(way);
  }

  @Override
  public void close() {
    page.close();
  }
}
