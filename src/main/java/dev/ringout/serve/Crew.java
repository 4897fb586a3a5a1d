package dev.ringout.serve;

import java.time.Duration;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.ThreadPoolExecutor;
import java.util.concurrent.TimeUnit;
import org.jspecify.annotations.Nullable;

/**
 * The threads that read requests and answer them. There are only so many; where all are taken, who
 * has waited longest for a client that sends or reads nothing gives way ({@link Watch}).
 */
final class Crew extends ThreadPoolExecutor {
  /** However many streams are open, so many are left. */
  private static final int THREADS = 48 + Streams.MOST;

  private static final int IDLE_SECONDS = 30;

  private final Watch watch;
  private final Waits waits;

  Crew(Waits waits) {
    super(
        THREADS,
        THREADS,
        IDLE_SECONDS,
        TimeUnit.SECONDS,
        new LinkedBlockingQueue<>(),
        work -> Threads.named("bench-answers", work));
    allowCoreThreadTimeOut(true);
    this.waits = waits;
    this.watch = new Watch(waits, getQueue()::size);
  }

  Watch watch() {
    return watch;
  }

  /** A request is read from its first line by the thread that will answer it. */
  @Override
  protected void beforeExecute(Thread thread, Runnable work) {
    watch.waiting(waits.headers());
  }

  @Override
  protected void afterExecute(Runnable work, @Nullable Throwable thrown) {
    watch.working();
  }

  /** Ends who waits at once; who works is given so long to come to an end. */
  void end(Duration most) throws InterruptedException {
    watch.close();
    shutdown();
    awaitTermination(most.toMillis(), TimeUnit.MILLISECONDS);
  }
}
