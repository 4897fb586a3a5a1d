package dev.ringout.serve;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;

/**
 * What happens, told to every page in the same order. Who publishes never waits for a page: one
 * that does not keep up is dropped, comes again, and begins with the whole state.
 */
public final class Events {
  private final Supplier<Event> first;
  private final List<Feed> feeds = new ArrayList<>();

  /**
   * Nobody listens yet.
   *
   * @param first makes what a page is told when it begins to listen: the state as it is then
   */
  public Events(Supplier<Event> first) {
    this.first = first;
  }

  /** Tells every page. */
  public synchronized void publish(Event event) {
    feeds.removeIf(feed -> !feed.offer(event));
  }

  /** How many pages listen. */
  public synchronized int listening() {
    feeds.removeIf(Feed::isOver);
    return feeds.size();
  }

  /** From now on all that is published comes here. */
  synchronized Feed open() {
    Feed feed = new Feed();
    feeds.add(feed);
    return feed;
  }

  /** The state as it is now: made after the feed was opened, so that nothing is between. */
  Event first() {
    return first.get();
  }

  /** Nobody is told anything any more. */
  synchronized void endAll() {
    feeds.forEach(Feed::end);
    feeds.clear();
  }
}
