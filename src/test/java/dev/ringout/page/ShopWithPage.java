package dev.ringout.page;

import dev.ringout.Ringout;
import dev.ringout.bench.BenchSetup;
import dev.ringout.jobs.LedTests.ListAtHand;
import dev.ringout.jobs.PeopleJob;
import dev.ringout.jobs.StoreAtHand;
import dev.ringout.json.BenchJson;
import dev.ringout.meter.Ticks;
import dev.ringout.meter.link.SystemTicks;
import dev.ringout.people.People;
import dev.ringout.people.Role;
import dev.ringout.serve.ShopCertificate;
import dev.ringout.serve.ShopDoor;
import dev.ringout.serve.Stay;
import dev.ringout.store.Store;
import dev.ringout.store.StoreAddress;
import dev.ringout.store.Stores;
import java.io.InputStream;
import java.net.CookieManager;
import java.net.InetAddress;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.KeyStore;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import javax.net.ssl.SSLContext;
import javax.net.ssl.TrustManagerFactory;

/** A bench of a shop, served by TLS to who signs in; and the shop's people. */
final class ShopWithPage implements AutoCloseable {
  static final String PASSPHRASE = "four lamps on a bridge";

  /** Of that passphrase, with so little work that a test can sign in often. */
  private static final String KEPT =
      "$argon2id$v=19$m=64,t=1,p=1$c2l4dGVlbiBieXRlcyBvaw$kfz0K5bSRxaZqdqU61iVjYELOBfmzawxHFCNZwHjjK4";

  static final String ADMINISTRATOR = "Maren Lindqvist";
  static final String TESTER = "Rotimi Adeyemi";
  static final String SECOND_TESTER = "Sofia Brandt";
  static final String INSPECTOR = "Katarina Novak";
  static final String ENGINEER = "Tomas Eriksen";
  static final String LEAD = "Ines Moreau";

  /** Each with the one role that the name says; none is two. */
  static final Map<Role, String> ONE_OF_EACH =
      Map.of(
          Role.ADMINISTRATOR, ADMINISTRATOR,
          Role.TESTER, TESTER,
          Role.INSPECTOR, INSPECTOR,
          Role.ENGINEER, ENGINEER,
          Role.LEAD, LEAD);

  final BenchPage page;
  final Ringout door;
  final ShopCertificate certificate;
  final List<Throwable> defects = Collections.synchronizedList(new ArrayList<>());
  private final Path folder;
  private final SSLContext trust;

  ShopWithPage(Path folder, Path... lists) throws Exception {
    this(folder, new SystemTicks(), lists);
  }

  ShopWithPage(Path folder, Ticks ticks, Path... lists) throws Exception {
    this.folder = folder;
    StoreAtHand store = new StoreAtHand(folder.resolve("units.db").toString(), Map.of());
    this.door = Ringout.onFilesAnd(store);
    StoreAddress address = StoreAddress.of(folder.resolve("units.db").toString());
    Stores.migrate(address, Map.of(), Optional.empty());
    try (Store open = Stores.open(address, Map.of(), true)) {
      add(open, ADMINISTRATOR, Role.ADMINISTRATOR);
      add(open, TESTER, Role.TESTER);
      add(open, SECOND_TESTER, Role.TESTER);
      add(open, INSPECTOR, Role.INSPECTOR);
      add(open, ENGINEER, Role.ENGINEER);
      add(open, LEAD, Role.LEAD);
    }
    InetAddress here = InetAddress.getLoopbackAddress();
    this.certificate = ShopCertificate.in(folder.resolve("tls"), "127.0.0.1", here);
    this.trust = trust(folder.resolve("tls"));
    List<ListAtHand> known = new ArrayList<>();
    for (Path list : lists) {
      known.add(BenchWithPage.list(door, list));
    }
    this.page =
        BenchPage.openToShop(
            door,
            new BenchSetup(
                store,
                "Bench 1",
                "none",
                Optional.empty(),
                "none",
                Optional.empty(),
                folder,
                false,
                0,
                1,
                ticks,
                ZoneId.of("UTC")),
            known,
            new ShopDoor(here, 0, "127.0.0.1", certificate.tls(), Stay.USUAL, () -> ticks.millis()),
            defects::add);
  }

  private static void add(Store store, String name, Role role) throws Exception {
    People people = People.of(store.peopleWhoMay());
    store.decide(
        people.known(),
        people.added(name, EnumSet.of(role), KEPT, ADMINISTRATOR, "2026-11-30T10:00:00Z"));
  }

  static PeopleJob.Said said() {
    return new PeopleJob.Said(ADMINISTRATOR, Instant.parse("2026-11-30T10:00:00Z"));
  }

  /** Trusts the one certificate of the bench, and nothing else. */
  private static SSLContext trust(Path tls) throws Exception {
    KeyStore keys = KeyStore.getInstance("PKCS12");
    try (InputStream in = Files.newInputStream(tls.resolve("bench.p12"))) {
      keys.load(in, Files.readString(tls.resolve("passphrase")).strip().toCharArray());
    }
    KeyStore trusted = KeyStore.getInstance("PKCS12");
    trusted.load(null, null);
    trusted.setCertificateEntry("bench", keys.getCertificate("bench"));
    TrustManagerFactory managers =
        TrustManagerFactory.getInstance(TrustManagerFactory.getDefaultAlgorithm());
    managers.init(trusted);
    SSLContext context = SSLContext.getInstance("TLS");
    context.init(null, managers.getTrustManagers(), null);
    return context;
  }

  SSLContext trust() {
    return trust;
  }

  Path folder() {
    return folder;
  }

  URI home() {
    return page.home();
  }

  String origin() {
    return home().toString().replaceFirst("/$", "");
  }

  /** A browser in which nobody signed in. */
  Tablet stranger() {
    return new Tablet();
  }

  /** A browser in which somebody signed in. */
  Tablet signedIn(String name) throws Exception {
    Tablet tablet = stranger();
    HttpResponse<String> answer = tablet.signIn(name, PASSPHRASE);
    if (answer.statusCode() != 200) {
      throw new AssertionError(name + ": " + answer.body());
    }
    return tablet;
  }

  static Map<String, Object> json(HttpResponse<String> answer) {
    return BenchJson.read(answer.body()).orElseThrow(() -> new AssertionError(answer.body()));
  }

  @Override
  public void close() {
    page.close();
    if (!defects.isEmpty()) {
      throw new AssertionError(defects);
    }
  }

  /** A browser that keeps cookies, and sends what the page sends. */
  final class Tablet {
    private final HttpClient client =
        HttpClient.newBuilder()
            .version(HttpClient.Version.HTTP_1_1)
            .sslContext(trust)
            .cookieHandler(new CookieManager())
            .build();

    HttpRequest.Builder to(String path) {
      return HttpRequest.newBuilder(home().resolve(path));
    }

    HttpResponse<String> send(HttpRequest request) throws Exception {
      return client.send(request, HttpResponse.BodyHandlers.ofString());
    }

    HttpResponse<String> get(String path) throws Exception {
      return send(to(path).build());
    }

    <T> HttpResponse<T> get(String path, HttpResponse.BodyHandler<T> handler) throws Exception {
      return client.send(to(path).build(), handler);
    }

    HttpResponse<byte[]> bytes(String path, String type, byte[] body) throws Exception {
      return client.send(
          to(path)
              .header("Content-Type", type)
              .header("Origin", origin())
              .POST(HttpRequest.BodyPublishers.ofByteArray(body))
              .build(),
          HttpResponse.BodyHandlers.ofByteArray());
    }

    HttpResponse<InputStream> stream(String path) throws Exception {
      return client.send(to(path).build(), HttpResponse.BodyHandlers.ofInputStream());
    }

    HttpResponse<String> post(String path, Map<String, Object> body) throws Exception {
      return post(path, "application/json", BenchJson.line(body), origin());
    }

    HttpResponse<String> post(String path, String type, String body, String from) throws Exception {
      return send(
          to(path)
              .header("Content-Type", type)
              .header("Origin", from)
              .POST(HttpRequest.BodyPublishers.ofString(body))
              .build());
    }

    HttpResponse<String> signIn(String name, String passphrase) throws Exception {
      return post("/api/sign-in", Map.of("name", name, "passphrase", passphrase));
    }

    /** The first list that new units can be made to. */
    String list() throws Exception {
      return idOfFirst("/api/units", "lists");
    }

    String unit(String serial) throws Exception {
      return idOfFirst("/api/units?search=" + serial, "units");
    }

    private String idOfFirst(String path, String name) throws Exception {
      List<?> all = (List<?>) Objects.requireNonNull(json(get(path)).get(name), name);
      return String.valueOf(((Map<?, ?>) all.get(0)).get("id"));
    }

    String who() throws Exception {
      return String.valueOf(Objects.requireNonNull(json(get("/api/who")).get("name")));
    }
  }
}
