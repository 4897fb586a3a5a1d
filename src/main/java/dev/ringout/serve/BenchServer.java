package dev.ringout.serve;

import com.sun.net.httpserver.HttpServer;
import com.sun.net.httpserver.HttpsServer;
import java.io.IOException;
import java.net.Inet6Address;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.URI;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;

/**
 * Serves the bench's page on this machine, to browsers that were let in: each comes with an address
 * that is good once, and has a cookie from then on.
 */
public final class BenchServer implements AutoCloseable {
  /** Where the events are. */
  public static final String EVENTS = "/api/events";

  private static final int WAITING_CONNECTIONS = 64;
  private static final int PLAIN_PORT = 80;
  private static final int TLS_PORT = 443;
  private static final long LOOK_MILLIS = 1000;
  private static final Duration TO_FINISH = Duration.ofMillis(500);

  private final HttpServer server;
  private final Crew crew;
  private final Events events;
  private final Entrance entrance;
  private final URI home;

  private BenchServer(HttpServer server, Crew crew, Events events, Entrance entrance, URI home) {
    this.server = server;
    this.crew = crew;
    this.events = events;
    this.entrance = entrance;
    this.home = home;
  }

  /**
   * Starts to serve.
   *
   * @param address of this machine alone
   * @param port 0 for any that is free
   * @param site the files of the page
   * @param handler answers everything else
   * @param events what the pages are told; ended when this is closed
   * @throws IOException where the port is taken, or may not be used
   */
  public static BenchServer start(
      InetAddress address, int port, Site site, Handler handler, Events events) throws IOException {
    return start(address, port, site, handler, events, Waits.USUAL);
  }

  static BenchServer start(
      InetAddress address, int port, Site site, Handler handler, Events events, Waits waits)
      throws IOException {
    if (!address.isLoopbackAddress()) {
      throw new IllegalArgumentException("other machines could come in at " + address);
    }
    JdkSettings.set();
    HttpServer server =
        HttpServer.create(new InetSocketAddress(address, port), WAITING_CONNECTIONS);
    int taken = server.getAddress().getPort();
    return started(
        server,
        "http://",
        hosts(List.of(literal(address), "localhost"), taken, PLAIN_PORT),
        new Tickets(taken),
        new Served(site, handler, events, waits));
  }

  /**
   * Starts to serve a shop's network: by TLS alone, to who signed in.
   *
   * @param site the files of the page, which whoever is to sign in needs
   * @throws IOException where the port is taken, or may not be used
   */
  public static BenchServer start(ShopDoor door, Site site, Handler handler, Events events)
      throws IOException {
    return start(door, site, handler, events, Waits.USUAL);
  }

  static BenchServer start(ShopDoor door, Site site, Handler handler, Events events, Waits waits)
      throws IOException {
    JdkSettings.set();
    HttpsServer server =
        HttpsServer.create(new InetSocketAddress(door.address(), door.port()), WAITING_CONNECTIONS);
    server.setHttpsConfigurator(door.configurator());
    int taken = server.getAddress().getPort();
    Visits visits = new Visits(taken, door.stay(), door.millis());
    BenchServer started =
        started(
            server,
            "https://",
            hosts(List.of(door.name(), literal(door.address())), taken, TLS_PORT),
            visits,
            new Served(site, handler, events, waits));
    Threads.start("bench-visits", () -> tellWhoIsGone(visits, handler, started.crew));
    return started;
  }

  /** What is served. */
  private record Served(Site site, Handler handler, Events events, Waits waits) {}

  private static BenchServer started(
      HttpServer server, String scheme, List<String> hosts, Entrance entrance, Served served) {
    Crew crew = new Crew(served.waits());
    Streams streams = new Streams(served.events(), served.handler(), entrance, served.waits());
    Gate gate = new Gate(scheme, hosts);
    server.setExecutor(crew);
    server.createContext(
        "/", new Door(gate, entrance, served.site(), served.handler(), streams, crew.watch()));
    startQuietly(server);
    URI home = URI.create(scheme + hosts.get(0) + "/");
    return new BenchServer(server, crew, served.events(), entrance, home);
  }

  /** Whoever went out, or whose time is over, does nothing any more that goes on by itself. */
  private static void tellWhoIsGone(Visits visits, Handler handler, Crew crew) {
    try {
      while (!crew.isShutdown()) {
        Thread.sleep(LOOK_MILLIS);
        lookWhoIsGone(visits, handler);
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  /** Whatever goes wrong in it, the next look follows. */
  private static void lookWhoIsGone(Visits visits, Handler handler) {
    try {
      visits.goneWith(handler.out(visits.in())).forEach(handler::gone);
    } catch (RuntimeException | Error e) {
      Mistake.told(handler, e);
    }
  }

  /** Somebody does something that no browser asked for: a meter's value is the hand's too. */
  public void used(String who) {
    entrance.visits().ifPresent(visits -> visits.used(who));
  }

  /** This machine as seen from itself. */
  public static InetAddress loopback() {
    return InetAddress.getLoopbackAddress();
  }

  /** Where the page is, for a browser that was let in. */
  public URI home() {
    return home;
  }

  /** An address by which one browser comes in, once; of a bench that its own machine opens. */
  public URI newTicket() {
    return home.resolve(
        "?token=" + entrance.tickets().map(Tickets::issue).orElseThrow(IllegalStateException::new));
  }

  /**
   * Ends: streams and who is still sending at once, answers that are being made within a moment.
   */
  @Override
  public void close() {
    events.endAll();
    try {
      crew.end(TO_FINISH);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
    server.stop(0);
  }

  /** The server's own thread keeps a program alive, but where a thread that does not starts it. */
  private static void startQuietly(HttpServer server) {
    Thread starter = Threads.start("bench-start", server::start);
    boolean interrupted = false;
    while (starter.isAlive()) {
      try {
        starter.join();
      } catch (InterruptedException e) {
        interrupted = true;
      }
    }
    if (interrupted) {
      Thread.currentThread().interrupt();
    }
  }

  /** What a browser calls this address: as it is served, and by its name. */
  private static List<String> hosts(List<String> names, int port, int usual) {
    List<String> hosts = new ArrayList<>();
    for (String name : names) {
      hosts.add(name + ":" + port);
      if (port == usual) {
        hosts.add(name);
      }
    }
    return hosts;
  }

  private static String literal(InetAddress address) {
    return address instanceof Inet6Address
        ? "[" + (address.isLoopbackAddress() ? "::1" : address.getHostAddress()) + "]"
        : address.getHostAddress();
  }
}
