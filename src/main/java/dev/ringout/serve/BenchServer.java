package dev.ringout.serve;

import com.sun.net.httpserver.HttpServer;
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
  private static final Duration TO_FINISH = Duration.ofMillis(500);

  private final HttpServer server;
  private final Crew crew;
  private final Events events;
  private final Tickets tickets;
  private final URI home;

  private BenchServer(HttpServer server, Crew crew, Events events, Tickets tickets, URI home) {
    this.server = server;
    this.crew = crew;
    this.events = events;
    this.tickets = tickets;
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
    Crew crew = new Crew(waits);
    Tickets tickets = new Tickets(taken);
    Streams streams = new Streams(events, handler, waits);
    Gate gate = new Gate(hosts(address, taken));
    server.setExecutor(crew);
    server.createContext("/", new Door(gate, tickets, site, handler, streams, crew.watch()));
    startQuietly(server);
    URI home = URI.create("http://" + hosts(address, taken).get(0) + "/");
    return new BenchServer(server, crew, events, tickets, home);
  }

  /** This machine as seen from itself. */
  public static InetAddress loopback() {
    return InetAddress.getLoopbackAddress();
  }

  /** Where the page is, for a browser that was let in. */
  public URI home() {
    return home;
  }

  /** An address by which one browser comes in, once. */
  public URI newTicket() {
    return home.resolve("?token=" + tickets.issue());
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
  private static List<String> hosts(InetAddress address, int port) {
    List<String> hosts = new ArrayList<>();
    for (String name : List.of(literal(address), "localhost")) {
      hosts.add(name + ":" + port);
      if (port == 80) {
        hosts.add(name);
      }
    }
    return hosts;
  }

  private static String literal(InetAddress address) {
    return address instanceof Inet6Address ? "[::1]" : address.getHostAddress();
  }
}
