package dev.ringout.serve;

import com.sun.net.httpserver.HttpExchange;
import com.sun.net.httpserver.HttpHandler;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;

/**
 * Where every request comes in: let in or refused, then the page's files, the events, the handler.
 */
final class Door implements HttpHandler {
  private static final String TICKET = "token";

  private static final Reply NOT_LET_IN =
      Reply.of(
          403,
          "text/html; charset=utf-8",
          """
          <!doctype html><html lang="en"><meta charset="utf-8"><title>The bench</title>
          <h1>This browser was not let in</h1>
          <p>Open the address that the command <code>ringout bench</code> printed: each is good once,
          for one browser.</p></html>
          """
              .getBytes(StandardCharsets.UTF_8));

  private final Gate gate;
  private final Entrance entrance;
  private final Site site;
  private final Handler handler;
  private final Streams streams;
  private final Watch watch;

  Door(Gate gate, Entrance entrance, Site site, Handler handler, Streams streams, Watch watch) {
    this.gate = gate;
    this.entrance = entrance;
    this.site = site;
    this.handler = handler;
    this.streams = streams;
    this.watch = watch;
  }

  /**
   * Answers. Where that fails the server must hear of it: of a connection that is closed behind its
   * back it would keep account for ever.
   */
  @Override
  public void handle(HttpExchange exchange) throws IOException {
    if (!watch.working()) {
      throw new IOException("the client took too long to ask");
    }
    try {
      answer(exchange);
    } catch (Error e) {
      throw new IOException(e);
    }
  }

  private void answer(HttpExchange exchange) throws IOException {
    Wire wire = new Wire(exchange, watch);
    try {
      gate.check(exchange);
      Target target = Target.of(exchange.getRequestURI().toString());
      Optional<Guest> guest = entrance.guest(values(exchange, "Cookie"));
      if (guest.isPresent() && target.path().equals(BenchServer.EVENTS)) {
        listen(exchange, guest.get(), wire);
      } else {
        wire.write(replyWhatever(exchange, target, guest, wire));
      }
    } catch (Refused e) {
      if (exchange.getRequestMethod().equals("HEAD")
          && Gate.hasBody(exchange.getRequestHeaders())) {
        throw new IOException(e);
      }
      // What was not read may still come: this connection is of no more use.
      wire.write(e.why().reply().with("Connection", "close"));
    }
  }

  private void listen(HttpExchange exchange, Guest guest, Wire wire) throws IOException, Refused {
    if (!exchange.getRequestMethod().equals("GET")) {
      throw new Refused(Refusal.METHOD);
    }
    streams.run(guest, wire);
  }

  /** The answer. Whatever goes wrong in making it, the page gets one and the bench goes on. */
  private Reply replyWhatever(
      HttpExchange exchange, Target target, Optional<Guest> guest, Wire wire)
      throws IOException, Refused {
    try {
      return reply(exchange, target, guest, wire);
    } catch (RuntimeException | Error e) {
      return Mistake.told(handler, e);
    }
  }

  private Reply reply(HttpExchange exchange, Target target, Optional<Guest> guest, Wire wire)
      throws IOException, Refused {
    boolean front = target.path().equals("/") && exchange.getRequestMethod().equals("GET");
    String ticket = target.query().get(TICKET);
    Optional<Tickets> tickets = entrance.tickets();
    if (front && ticket != null && tickets.isPresent()) {
      return letIn(tickets.get(), ticket, guest.isPresent());
    }
    boolean post = exchange.getRequestMethod().equals("POST");
    if (guest.isEmpty() && tickets.isPresent()) {
      if (front) {
        return NOT_LET_IN.with("Connection", "close");
      }
      throw new Refused(Refusal.STRANGER);
    }
    // Whoever is to sign in needs the page for it; there is nothing of the shop in its files.
    boolean ofPage = !post && site.at(target.path()).isPresent();
    if (guest.isEmpty() && !ofPage && !handler.isForStrangers(target.path())) {
      throw new Refused(Refusal.SIGN_IN);
    }
    Reply reply = post ? done(exchange, target, guest, wire) : told(exchange, target, guest);
    return entrance.visits().isEmpty() ? reply : came(entrance.visits().get(), guest, reply, post);
  }

  /** The cookie of who came in or went out with an answer. */
  private static Reply came(Visits visits, Optional<Guest> guest, Reply reply, boolean post) {
    if (reply.coming().isEmpty()) {
      guest.filter(one -> post).ifPresent(visits::used);
      return reply;
    }
    Reply.Coming coming = reply.coming().get();
    return reply.with(
        "Set-Cookie",
        coming.who().isPresent()
            ? visits.come(guest, coming.who().get(), coming.since())
            : visits.leave(guest));
  }

  private Reply letIn(Tickets tickets, String ticket, boolean known) throws Refused {
    Optional<String> cookie = tickets.redeem(ticket, known);
    Reply home = Reply.text(303, "").with("Location", "/");
    if (known) {
      return home;
    }
    return home.with("Set-Cookie", cookie.orElseThrow(() -> new Refused(Refusal.USED)));
  }

  private Reply told(HttpExchange exchange, Target target, Optional<Guest> guest) {
    Optional<Site.Page> page = site.at(target.path());
    return page.isPresent()
        ? page.get().told(values(exchange, "If-None-Match"))
        : handler.answer(Ask.get(target.path(), target.query()).by(guest, machine(exchange)));
  }

  private Reply done(HttpExchange exchange, Target target, Optional<Guest> guest, Wire wire)
      throws IOException, Refused {
    BodyRule rule = handler.body(target.path());
    String type = Gate.contentType(exchange.getRequestHeaders(), rule);
    return handler.answer(Ask.received(target, type, wire.read(rule)).by(guest, machine(exchange)));
  }

  private static String machine(HttpExchange exchange) {
    return exchange.getRemoteAddress().getAddress().getHostAddress();
  }

  private static List<String> values(HttpExchange exchange, String name) {
    return exchange.getRequestHeaders().getOrDefault(name, List.of());
  }
}
