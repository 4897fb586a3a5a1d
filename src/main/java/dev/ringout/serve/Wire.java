package dev.ringout.serve;

import com.sun.net.httpserver.Headers;
import com.sun.net.httpserver.HttpExchange;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.time.Duration;

/** Bytes from and to one client; each wait for it is watched. */
final class Wire {
  private static final Duration MOST_FOR_END = Duration.ofSeconds(2);

  /** As the server of the JDK wants it said; it then ends the exchange by itself. */
  private static final int NO_BODY = -1;

  private static final int SLICE_BYTES = 64 * 1024;

  /** So much of what is too long is read and dropped: who is still sending hears no answer. */
  private static final int MOST_DROPPED_BYTES = 64 * 1024 * 1024;

  private final HttpExchange exchange;
  private final Watch watch;
  private final Waits waits;

  Wire(HttpExchange exchange, Watch watch) {
    this.exchange = exchange;
    this.watch = watch;
    this.waits = watch.waits();
  }

  /** The body. */
  byte[] read(BodyRule rule) throws IOException, Refused {
    byte[] body =
        watched(waits.body(), () -> readUpTo(rule.mostBytes(), exchange.getRequestBody()));
    if (body.length > rule.mostBytes()) {
      throw new Refused(Refusal.TOO_LONG);
    }
    return body;
  }

  /** All of it; of what is too long one byte too much, and the rest is dropped. */
  private static byte[] readUpTo(int most, InputStream in) throws IOException {
    byte[] body = in.readNBytes(most + 1);
    if (body.length > most) {
      byte[] slice = new byte[SLICE_BYTES];
      int dropped = 0;
      for (int n = in.read(slice); n >= 0 && dropped < MOST_DROPPED_BYTES; n = in.read(slice)) {
        dropped += n;
      }
    }
    return body;
  }

  /** Writes an answer; without its bytes where only its headers were asked for. */
  void write(Reply reply) throws IOException {
    Headers headers = exchange.getResponseHeaders();
    standing(headers, reply.policy());
    headers.set("Content-Type", reply.contentType());
    reply.headers().forEach(headers::set);
    byte[] bytes = reply.raw();
    if (exchange.getRequestMethod().equals("HEAD")) {
      headers.set("Content-Length", String.valueOf(bytes.length));
      begin(reply.status(), NO_BODY);
    } else if (bytes.length == 0) {
      begin(reply.status(), NO_BODY);
    } else {
      begin(reply.status(), bytes.length);
      writeSlices(exchange.getResponseBody(), bytes);
      end();
    }
  }

  private void writeSlices(OutputStream out, byte[] bytes) throws IOException {
    for (int from = 0; from < bytes.length; from += SLICE_BYTES) {
      int start = from;
      int length = Math.min(SLICE_BYTES, bytes.length - from);
      watched(waits.answer(), () -> write(out, bytes, start, length));
    }
  }

  /** Begins a stream of events, which has no end of its own. */
  void beginEvents() throws IOException {
    Headers headers = exchange.getResponseHeaders();
    standing(headers, Policy.PAGE);
    headers.set("Content-Type", "text/event-stream; charset=utf-8");
    headers.set("Connection", "close");
    begin(200, 0);
  }

  /** Writes events. A page that takes none is left alone. */
  void writeEvents(byte[] events) throws IOException {
    OutputStream out = exchange.getResponseBody();
    watched(waits.events(), () -> write(out, events, 0, events.length));
  }

  /**
   * Ends an exchange of which all is written; what was sent and not read is waited for a little.
   */
  void end() throws IOException {
    watched(
        MOST_FOR_END,
        () -> {
          exchange.getResponseBody().close();
          return exchange;
        });
  }

  private static void standing(Headers headers, Policy policy) {
    headers.set("Content-Security-Policy", policy.text());
    headers.set("X-Content-Type-Options", "nosniff");
    headers.set("Referrer-Policy", "no-referrer");
    headers.set("Cross-Origin-Opener-Policy", "same-origin");
    headers.set("Cross-Origin-Resource-Policy", "same-origin");
    headers.set("Cache-Control", "no-store");
  }

  private void begin(int status, long length) throws IOException {
    watched(
        waits.answer(),
        () -> {
          exchange.sendResponseHeaders(status, length);
          return status;
        });
  }

  private static int write(OutputStream out, byte[] bytes, int from, int length)
      throws IOException {
    out.write(bytes, from, length);
    out.flush();
    return length;
  }

  private <T> T watched(Duration most, Transfer<T> transfer) throws IOException {
    watch.waiting(most);
    boolean whole;
    T result;
    try {
      result = transfer.run();
    } finally {
      whole = watch.working();
    }
    if (!whole) {
      throw new IOException("the client took too long");
    }
    return result;
  }

  /** Something that waits for the client. */
  private interface Transfer<T> {
    T run() throws IOException;
  }
}
