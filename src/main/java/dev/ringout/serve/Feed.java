package dev.ringout.serve;

import java.util.ArrayList;
import java.util.List;

/** What one page has still to be told. */
final class Feed {
  private static final int MOST_EVENTS = 256;
  private static final long MOST_CHARS = 4L * 1024 * 1024;

  private final List<Event> waiting = new ArrayList<>();
  private long chars;
  private boolean over;
  private boolean nudged;

  /** Adds, and never waits; whether this page is still told anything. */
  synchronized boolean offer(Event event) {
    if (over) {
      return false;
    }
    if (event.latest()) {
      waiting.removeIf(older -> isReplaced(older, event));
    }
    waiting.add(event);
    chars += event.data().length();
    // A single event may be longer than all may be: it has to arrive all the same.
    if (waiting.size() > MOST_EVENTS || (waiting.size() > 1 && chars > MOST_CHARS)) {
      end();
    }
    notifyAll();
    return !over;
  }

  private boolean isReplaced(Event older, Event by) {
    boolean replaced = older.latest() && older.name().equals(by.name());
    if (replaced) {
      chars -= older.data().length();
    }
    return replaced;
  }

  /** Waits a while for something to come. */
  synchronized void await(long mostMillis) throws InterruptedException {
    boolean waited = false;
    while (waiting.isEmpty() && !over && !nudged && !waited) {
      wait(mostMillis);
      waited = true;
    }
    nudged = false;
  }

  /** Ends a waiting, so that something is written. */
  synchronized void nudge() {
    nudged = true;
    notifyAll();
  }

  /** All that waits, in order. */
  synchronized List<Event> take() {
    List<Event> taken = List.copyOf(waiting);
    waiting.clear();
    chars = 0;
    return taken;
  }

  synchronized boolean isOver() {
    return over;
  }

  synchronized void end() {
    over = true;
    waiting.clear();
    chars = 0;
    notifyAll();
  }
}
