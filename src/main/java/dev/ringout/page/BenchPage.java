package dev.ringout.page;

import dev.ringout.Ringout;
import dev.ringout.bench.Bench;
import dev.ringout.bench.BenchSetup;
import dev.ringout.bench.BenchState;
import dev.ringout.jobs.LedTests.ListAtHand;
import dev.ringout.json.BenchJson;
import dev.ringout.meter.MeterTrouble;
import dev.ringout.meter.Settling;
import dev.ringout.serve.BenchServer;
import dev.ringout.serve.Event;
import dev.ringout.serve.Events;
import dev.ringout.serve.Reply;
import dev.ringout.serve.Site;
import java.io.IOException;
import java.io.InputStream;
import java.net.URI;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.function.Consumer;

/** The bench's page, served to this machine until it is closed. */
public final class BenchPage implements AutoCloseable {
  private static final String HTML = "text/html; charset=utf-8";
  private static final String STYLE = "text/css; charset=utf-8";
  private static final String SCRIPT = "text/javascript; charset=utf-8";

  private final Bench bench;
  private final BenchServer server;

  private BenchPage(Bench bench, BenchServer server) {
    this.bench = bench;
    this.server = server;
  }

  /**
   * Opens a bench and serves its page.
   *
   * @param door where units, records and papers come from
   * @param lists that units can be made to
   * @param port 0 for any that is free
   * @param failures is told what went wrong in the program itself
   * @throws MeterTrouble where a meter's address or profile is none
   * @throws IOException where the port can't be had
   */
  public static BenchPage open(
      Ringout door,
      BenchSetup setup,
      List<ListAtHand> lists,
      int port,
      Consumer<Throwable> failures)
      throws MeterTrouble, IOException {
    Told told = new Told(failures);
    Events events = new Events(told::first);
    told.events = Optional.of(events);
    Bench bench = Bench.open(setup, told);
    told.bench = Optional.of(bench);
    UnitsOfPage units = new UnitsOfPage(door, bench);
    lists.forEach(units::take);
    Routes routes = new Routes(failures);
    new SessionRoutes(bench, units).in(routes);
    UnitRoutes ofUnits = new UnitRoutes(door, bench, units);
    ofUnits.in(routes);
    new RecordRoutes(door, bench, units, ofUnits).in(routes);
    new ListRoutes(door, bench, units).in(routes);
    CompletableFuture<BenchServer> served = new CompletableFuture<>();
    routes.post("/api/ticket", (ask, names) -> ticket(served.join()));
    try {
      BenchServer server = BenchServer.start(BenchServer.loopback(), port, site(), routes, events);
      served.complete(server);
      return new BenchPage(bench, server);
    } catch (IOException e) {
      bench.close();
      throw e;
    }
  }

  /** For another browser of this machine: the first one is in and asks for it. */
  private static Reply ticket(BenchServer server) {
    return Reply.json(200, BenchJson.event("address", server.newTicket().toString()));
  }

  private static Site site() throws IOException {
    return Site.EMPTY
        .with("/", HTML, resource("index.html"))
        .with("/bench.css", STYLE, resource("bench.css"))
        .with("/bench.js", SCRIPT, resource("bench.js"))
        .with("/speech.ogg", "audio/ogg", resource("speech.ogg"))
        .with("/speech.json", "application/json", resource("speech.json"));
  }

  private static byte[] resource(String name) throws IOException {
    try (InputStream in = Objects.requireNonNull(BenchPage.class.getResourceAsStream(name), name)) {
      return in.readAllBytes();
    }
  }

  /** Tells every page what happens. */
  private static final class Told implements Bench.Listener {
    private final Consumer<Throwable> failures;
    private volatile Optional<Events> events = Optional.empty();
    private volatile Optional<Bench> bench = Optional.empty();

    Told(Consumer<Throwable> failures) {
      this.failures = failures;
    }

    @Override
    public void defect(Throwable cause) {
      failures.accept(cause);
    }

    Event first() {
      return Event.each("state", BenchJson.write(bench.orElseThrow().state()));
    }

    private void tell(Event event) {
      events.ifPresent(all -> all.publish(event));
    }

    @Override
    public void state(BenchState state) {
      tell(Event.latest("state", BenchJson.write(state)));
    }

    @Override
    public void live(String text, Settling.Stage stage) {
      tell(
          Event.latest(
              "live",
              BenchJson.event("text", text, "stage", stage.name().toLowerCase(Locale.ROOT))));
    }

    @Override
    public void tone(BenchState.Tone tone) {
      tell(Event.each("tone", BenchJson.event("tone", tone.name().toLowerCase(Locale.ROOT))));
    }
  }

  /** The address that lets one browser in. */
  public URI ticket() {
    return server.newTicket();
  }

  /** The bench that is shown. */
  public Bench bench() {
    return bench;
  }

  @Override
  public void close() {
    server.close();
    bench.close();
  }
}
