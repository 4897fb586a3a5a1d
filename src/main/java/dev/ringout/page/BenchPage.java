package dev.ringout.page;

import dev.ringout.Ringout;
import dev.ringout.bench.Bench;
import dev.ringout.bench.BenchSetup;
import dev.ringout.bench.BenchState;
import dev.ringout.jobs.LedTests.ListAtHand;
import dev.ringout.json.BenchJson;
import dev.ringout.meter.MeterTrouble;
import dev.ringout.meter.Settling;
import dev.ringout.people.Act;
import dev.ringout.serve.BenchServer;
import dev.ringout.serve.Event;
import dev.ringout.serve.Events;
import dev.ringout.serve.Reply;
import dev.ringout.serve.ShopDoor;
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
  private final Routes routes;

  private BenchPage(Bench bench, BenchServer server, Routes routes) {
    this.bench = bench;
    this.server = server;
    this.routes = routes;
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
    Starter starter =
        (routes, events) -> BenchServer.start(BenchServer.loopback(), port, site(), routes, events);
    return open(door, setup, lists, Optional.empty(), starter, failures);
  }

  /**
   * Opens a bench and serves its page to a shop's network, to who signs in there.
   *
   * @param at where
   * @throws MeterTrouble where a meter's address or profile is none
   * @throws IOException where the port can't be had
   */
  public static BenchPage openToShop(
      Ringout door,
      BenchSetup setup,
      List<ListAtHand> lists,
      ShopDoor at,
      Consumer<Throwable> failures)
      throws MeterTrouble, IOException {
    Shop shop = new Shop(door.people(), setup.station(), setup.ticks());
    Starter starter = (routes, events) -> BenchServer.start(at, site(), routes, events);
    return open(door, setup, lists, Optional.of(shop), starter, failures);
  }

  /** Starts the server of a page. */
  private interface Starter {
    BenchServer start(Routes routes, Events events) throws IOException;
  }

  private static BenchPage open(
      Ringout door,
      BenchSetup setup,
      List<ListAtHand> lists,
      Optional<Shop> shop,
      Starter starter,
      Consumer<Throwable> failures)
      throws MeterTrouble, IOException {
    Callers callers = new Callers(shop);
    Told told = new Told(failures, callers);
    Events events = new Events(told::first);
    told.events = Optional.of(events);
    Bench bench = Bench.open(setup, told);
    told.bench = Optional.of(bench);
    UnitsOfPage units = new UnitsOfPage(door, bench);
    lists.forEach(units::take);
    CompletableFuture<BenchServer> served = new CompletableFuture<>();
    Routes routes = routes(door, bench, units, callers, served, failures);
    try {
      BenchServer server = starter.start(routes, events);
      served.complete(server);
      told.server = Optional.of(server);
      return new BenchPage(bench, server, routes);
    } catch (IOException e) {
      bench.close();
      throw e;
    }
  }

  /** Every address of a bench's page. */
  private static Routes routes(
      Ringout door,
      Bench bench,
      UnitsOfPage units,
      Callers callers,
      CompletableFuture<BenchServer> served,
      Consumer<Throwable> failures) {
    Routes routes = new Routes(failures, callers, who -> leave(who, bench, callers));
    new PeopleRoutes(callers.shop()).in(routes);
    new SessionRoutes(bench, units, callers).in(routes);
    UnitRoutes ofUnits = new UnitRoutes(door, bench, units, callers);
    ofUnits.in(routes);
    KeyRoutes keys =
        new KeyRoutes(new KeyFolder(bench.setup().data()), callers.shop(), bench.setup().ticks());
    keys.in(routes);
    new RecordRoutes(door, bench, units, ofUnits, callers, keys).in(routes);
    new ListRoutes(door, bench, units).in(routes);
    new FloorRoutes(door, bench, units).in(routes);
    if (callers.shop().isEmpty()) {
      routes.post(Act.LOOK, "/api/ticket", (ask, names) -> ticket(served.join()));
    }
    return routes;
  }

  /** Nothing is read in the name of somebody who is out. */
  private static void leave(String who, Bench bench, Callers callers) {
    callers.ends(who, bench::leave);
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
    private volatile Optional<BenchServer> server = Optional.empty();
    private final Callers callers;

    Told(Consumer<Throwable> failures, Callers callers) {
      this.failures = failures;
      this.callers = callers;
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
      // Whoever holds the probes is here, though he touches no page.
      server.ifPresent(one -> one.used(callers.leader()));
      tell(Event.each("tone", BenchJson.event("tone", tone.name().toLowerCase(Locale.ROOT))));
    }
  }

  /** The address that lets one browser in. */
  public URI ticket() {
    return server.newTicket();
  }

  /** Where the page is. */
  public URI home() {
    return server.home();
  }

  /** Every address of the page. */
  Routes routes() {
    return routes;
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
