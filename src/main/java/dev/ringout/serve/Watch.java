package dev.ringout.serve;

import java.time.Duration;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.function.IntSupplier;

/**
 * Ends what waits too long for somebody outside, by interrupting the thread: that closes the
 * connection under it. A thread says when it begins to wait and when it is back at its own work, in
 * which it is never interrupted.
 */
final class Watch implements AutoCloseable {
  private static final long TICK_MILLIS = 100;

  /** Who waits for less than this is not sent away for others who want to come in. */
  private static final long GRACE_NANOS = TimeUnit.MILLISECONDS.toNanos(250);

  private final Map<Thread, Wait> waiting = new LinkedHashMap<>();
  private final Waits waits;
  private final IntSupplier kept;
  private boolean closed;

  /**
   * A watch that runs until it is closed.
   *
   * @param waits how long is waited for what
   * @param kept how many stand outside because every thread is taken
   */
  Watch(Waits waits, IntSupplier kept) {
    this.waits = waits;
    this.kept = kept;
    Threads.start("bench-watch", this::run);
  }

  Waits waits() {
    return waits;
  }

  /** From now on this thread waits for somebody outside, and for so long at most. */
  synchronized void waiting(Duration most) {
    waiting.remove(Thread.currentThread());
    long now = System.nanoTime();
    Wait wait = new Wait(now, now + most.toNanos(), false);
    waiting.put(Thread.currentThread(), closed ? wait.cut(Thread.currentThread()) : wait);
  }

  /** This thread is back at its own work; whether nobody ended its waiting meanwhile. */
  synchronized boolean working() {
    Wait wait = waiting.remove(Thread.currentThread());
    boolean whole = wait == null || !wait.isCut();
    if (!whole) {
      Thread.interrupted();
    }
    return whole;
  }

  private synchronized void run() {
    try {
      while (!closed) {
        wait(TICK_MILLIS);
        cut(System.nanoTime());
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  /** Ends what is late; and where others stand outside, who has waited longest, one for each. */
  private void cut(long now) {
    int outside = kept.getAsInt();
    for (Map.Entry<Thread, Wait> one : List.copyOf(waiting.entrySet())) {
      Wait wait = one.getValue();
      boolean forAnother = outside > 0 && now - wait.since() > GRACE_NANOS;
      if (!wait.isCut() && (forAnother || now - wait.until() > 0)) {
        outside--;
        one.setValue(wait.cut(one.getKey()));
      }
    }
  }

  /** Ends every waiting, and each that begins from now on. */
  @Override
  public synchronized void close() {
    closed = true;
    waiting.replaceAll((thread, wait) -> wait.isCut() ? wait : wait.cut(thread));
    notifyAll();
  }

  /** A waiting, from when until when. */
  private record Wait(long since, long until, boolean isCut) {
    Wait cut(Thread thread) {
      thread.interrupt();
      return new Wait(since, until, true);
    }
  }
}
