package dev.ringout.bench;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Executors;
import java.util.concurrent.RejectedExecutionException;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.ScheduledFuture;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;

/**
 * What is done behind the page, so that nobody who holds probes waits for it. A mistake of the
 * program there is told, and ends nothing.
 */
final class Behind implements AutoCloseable {
  /** One works out explanations, one does everything else. */
  private static final int THREADS = 2;

  private final ScheduledExecutorService threads;
  private final Consumer<Throwable> defects;
  private final Map<String, ScheduledFuture<?>> byName = new HashMap<>();
  private final List<ScheduledFuture<?>> again = new ArrayList<>();

  Behind(Consumer<Throwable> defects) {
    this.defects = defects;
    this.threads =
        Executors.newScheduledThreadPool(
            THREADS,
            task -> {
              Thread thread = new Thread(task, "bench");
              thread.setDaemon(true);
              return thread;
            });
  }

  /** Does it as soon as a thread is free. */
  void later(Runnable what) {
    try {
      threads.execute(told(what));
    } catch (RejectedExecutionException e) {
      // The bench is closed: nobody waits for it.
    }
  }

  /** Does it after a time; what was to be done under the same name before is not done any more. */
  synchronized void after(String name, long millis, Runnable what) {
    try {
      ScheduledFuture<?> before =
          byName.put(name, threads.schedule(told(what), millis, TimeUnit.MILLISECONDS));
      if (before != null) {
        before.cancel(false);
      }
    } catch (RejectedExecutionException e) {
      // The bench is closed: nobody waits for it.
    }
  }

  /** Does it again and again, with so long a pause between. */
  synchronized void every(long millis, Runnable what) {
    again.add(threads.scheduleWithFixedDelay(told(what), millis, millis, TimeUnit.MILLISECONDS));
  }

  private Runnable told(Runnable what) {
    return () -> {
      try {
        what.run();
      } catch (RuntimeException | Error e) {
        defects.accept(e);
      }
    };
  }

  @Override
  public void close() {
    threads.shutdownNow();
  }
}
