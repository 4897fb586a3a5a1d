package dev.ringout.serve;

import com.sun.net.httpserver.HttpExchange;
import com.sun.net.httpserver.HttpHandler;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

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
  private final Tickets tickets;
  private final Site site;
  private final Handler handler;
  private final Streams streams;
  private final Watch watch;

  Door(Gate gate, Tickets tickets, Site site, Handler handler, Streams streams, Watch watch) {
    this.gate = gate;
    this.tickets = tickets;
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
      OptionalInt browser = tickets.browser(values(exchange, "Cookie"));
      if (browser.isPresent() && target.path().equals(BenchServer.EVENTS)) {
        listen(exchange, browser.getAsInt(), wire);
      } else {
        wire.write(replyWhatever(exchange, target, browser.isPresent(), wire));
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

  private void listen(HttpExchange exchange, int browser, Wire wire) throws IOException, Refused {
    if (!exchange.getRequestMethod().equals("GET")) {
      throw new Refused(Refusal.METHOD);
    }
    streams.run(browser, wire);
  }

  /** The answer. Whatever goes wrong in making it, the page gets one and the bench goes on. */
  private Reply replyWhatever(HttpExchange exchange, Target target, boolean known, Wire wire)
      throws IOException, Refused {
    try {
      return reply(exchange, target, known, wire);
    } catch (RuntimeException | Error e) {
      return Mistake.told(handler, e);
    }
  }

  private Reply reply(HttpExchange exchange, Target target, boolean known, Wire wire)
      throws IOException, Refused {
    boolean front = target.path().equals("/") && exchange.getRequestMethod().equals("GET");
    String ticket = target.query().get(TICKET);
    if (front && ticket != null) {
      return letIn(ticket, known);
    }
    if (!known) {
      if (front) {
        return NOT_LET_IN.with("Connection", "close");
      }
      throw new Refused(Refusal.STRANGER);
    }
    return exchange.getRequestMethod().equals("POST")
        ? done(exchange, target, wire)
        : told(exchange, target);
  }

  private Reply letIn(String ticket, boolean known) throws Refused {
    Optional<String> cookie = tickets.redeem(ticket, known);
    Reply home = Reply.text(303, "").with("Location", "/");
    if (known) {
      return home;
    }
    return home.with("Set-Cookie", cookie.orElseThrow(() -> new Refused(Refusal.USED)));
  }

  private Reply told(HttpExchange exchange, Target target) {
    Optional<Site.Page> page = site.at(target.path());
    return page.isPresent()
        ? page.get().told(values(exchange, "If-None-Match"))
        : handler.answer(Ask.get(target.path(), target.query()));
  }

  private Reply done(HttpExchange exchange, Target target, Wire wire) throws IOException, Refused {
    BodyRule rule = handler.body(target.path());
    String type = Gate.contentType(exchange.getRequestHeaders(), rule);
    return handler.answer(Ask.received(target, type, wire.read(rule)));
  }

  private static List<String> values(HttpExchange exchange, String name) {
    return exchange.getRequestHeaders().getOrDefault(name, List.of());
  }
}
