package dev.ringout.serve;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The streams of events that are open. */
final class Streams {
  static final int MOST = 32;

  /** A browser has six connections to one address; the last is for everything else. */
  private static final int MOST_OF_A_BROWSER = 5;

  private static final int TRIES = 5;
  private static final long TRY_MILLIS = 20;

  private static final byte[] BEGIN = "retry: 1000\n\n".getBytes(StandardCharsets.US_ASCII);
  private static final byte[] STILL_HERE = ":\n\n".getBytes(StandardCharsets.US_ASCII);

  private final Events events;
  private final Handler handler;
  private final Entrance entrance;
  private final Waits waits;
  private final List<Listener> open = new ArrayList<>();

  Streams(Events events, Handler handler, Entrance entrance, Waits waits) {
    this.events = events;
    this.handler = handler;
    this.entrance = entrance;
    this.waits = waits;
  }

  /** Tells a page what happens until it goes away, or does not keep up, or all is ended. */
  void run(Guest browser, Wire wire) throws IOException, Refused {
    Listener listener = enter(browser.number());
    try {
      wire.beginEvents();
      wire.writeEvents(BEGIN);
      wire.writeEvents(events.first().bytes());
      while (!listener.feed().isOver()) {
        listener.feed().await(waits.quiet().toMillis());
        if (!entrance.isIn(browser)) {
          break;
        }
        wire.writeEvents(together(listener.feed().take()));
      }
      wire.end();
    } catch (InterruptedException e) {
      throw new IOException(e);
    } catch (RuntimeException | Error e) {
      Mistake.told(handler, e);
      throw e;
    } finally {
      leave(listener);
    }
  }

  private Listener enter(int browser) throws Refused {
    for (int i = 0; i < TRIES; i++) {
      Optional<Listener> entered = tryToEnter(browser);
      if (entered.isPresent()) {
        return entered.get();
      }
      lookWhoIsGone();
    }
    return tryToEnter(browser).orElseThrow(() -> new Refused(Refusal.FULL));
  }

  private synchronized Optional<Listener> tryToEnter(int browser) {
    long ofBrowser = open.stream().filter(one -> one.browser() == browser).count();
    if (open.size() >= MOST || ofBrowser >= MOST_OF_A_BROWSER) {
      return Optional.empty();
    }
    Listener listener = new Listener(browser, events.open());
    open.add(listener);
    return Optional.of(listener);
  }

  /**
   * A page that is loaded again leaves its stream behind, on which a first write seems to go well.
   */
  private void lookWhoIsGone() throws Refused {
    nudgeAll();
    try {
      Thread.sleep(TRY_MILLIS);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new Refused(Refusal.FULL);
    }
  }

  private synchronized void nudgeAll() {
    open.forEach(one -> one.feed().nudge());
  }

  private synchronized void leave(Listener listener) {
    listener.feed().end();
    open.remove(listener);
  }

  private static byte[] together(List<Event> taken) {
    ByteArrayOutputStream all = new ByteArrayOutputStream();
    taken.forEach(event -> all.writeBytes(event.bytes()));
    return taken.isEmpty() ? STILL_HERE : all.toByteArray();
  }

  /** A page that listens. */
  private record Listener(int browser, Feed feed) {}
}
