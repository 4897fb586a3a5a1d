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

  @Override
  public void handle(HttpExchange exchange) {
    Wire wire = new Wire(exchange, watch);
    boolean whole = watch.working();
    boolean handedOver = false;
    try {
      handedOver = whole && answer(exchange, wire);
    } catch (IOException e) {
      // The client is gone: there is nobody to be told.
      handedOver = false;
    } finally {
      if (!handedOver) {
        wire.end();
      }
    }
  }

  /** Answers; whether the connection is a stream's from now on. */
  private boolean answer(HttpExchange exchange, Wire wire) throws IOException {
    boolean head = exchange.getRequestMethod().equals("HEAD");
    try {
      gate.check(exchange);
      Target target = Target.of(exchange.getRequestURI().toString());
      OptionalInt browser = tickets.browser(values(exchange, "Cookie"));
      if (browser.isPresent() && target.path().equals(BenchServer.EVENTS)) {
        listen(exchange, browser.getAsInt(), wire);
        return true;
      }
      wire.write(reply(exchange, target, browser.isPresent(), wire), !head);
    } catch (Refused e) {
      // What was not read may still come: this connection is of no more use.
      wire.write(e.why().reply().with("Connection", "close"), !head);
    }
    return false;
  }

  private void listen(HttpExchange exchange, int browser, Wire wire) throws Refused {
    if (!exchange.getRequestMethod().equals("GET")) {
      throw new Refused(Refusal.METHOD);
    }
    streams.open(browser, wire);
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
        : answered(Ask.get(target.path(), target.query()));
  }

  private Reply done(HttpExchange exchange, Target target, Wire wire) throws IOException, Refused {
    BodyRule rule = handler.body(target.path());
    String type = Gate.contentType(exchange.getRequestHeaders(), rule);
    return answered(Ask.post(target.path(), target.query(), type, wire.read(rule)));
  }

  /** The handler's answer. Whatever goes wrong in it, the page gets one and the bench goes on. */
  private Reply answered(Ask ask) {
    try {
      return handler.answer(ask);
    } catch (RuntimeException | Error e) {
      return handler.failed(e);
    }
  }

  private static List<String> values(HttpExchange exchange, String name) {
    return exchange.getRequestHeaders().getOrDefault(name, List.of());
  }
}
