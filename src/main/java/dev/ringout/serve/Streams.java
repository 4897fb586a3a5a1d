package dev.ringout.serve;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/** The streams of events that are open, each with a thread of its own. */
final class Streams {
  private static final int MOST = 32;

  /** A browser has six connections to one address; the last is for everything else. */
  private static final int MOST_OF_A_BROWSER = 5;

  private static final byte[] BEGIN = "retry: 1000\n\n".getBytes(StandardCharsets.US_ASCII);
  private static final byte[] STILL_HERE = ":\n\n".getBytes(StandardCharsets.US_ASCII);

  private final Events events;
  private final Handler handler;
  private final Waits waits;
  private final List<Integer> open = new ArrayList<>();

  Streams(Events events, Handler handler, Waits waits) {
    this.events = events;
    this.handler = handler;
    this.waits = waits;
  }

  /** Opens one for a browser, which is from then on its own. */
  void open(int browser, Wire wire) throws Refused {
    enter(browser);
    Threads.start("bench-events", () -> run(browser, wire));
  }

  private synchronized void enter(int browser) throws Refused {
    if (open.size() >= MOST || Collections.frequency(open, browser) >= MOST_OF_A_BROWSER) {
      throw new Refused(Refusal.FULL);
    }
    open.add(browser);
  }

  private synchronized void leave(Integer browser) {
    open.remove(browser);
  }

  private void run(int browser, Wire wire) {
    Feed feed = events.open();
    try {
      wire.beginEvents();
      wire.writeEvents(BEGIN);
      wire.writeEvents(events.first().bytes());
      while (!feed.isOver()) {
        feed.await(waits.quiet().toMillis());
        wire.writeEvents(together(feed.take()));
      }
    } catch (IOException e) {
      // The page is gone; it comes again if it wants to.
      feed.end();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    } catch (RuntimeException e) {
      handler.failed(e);
    } finally {
      feed.end();
      wire.end();
      leave(browser);
    }
  }

  private static byte[] together(List<Event> taken) {
    ByteArrayOutputStream all = new ByteArrayOutputStream();
    taken.forEach(event -> all.writeBytes(event.bytes()));
    return taken.isEmpty() ? STILL_HERE : all.toByteArray();
  }
}
