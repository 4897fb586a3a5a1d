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
  private static final int THREADS = 48;
  private static final int IDLE_SECONDS = 30;

  /** A browser sends the lines before a body at once. */
  private static final Duration MOST_FOR_HEADERS = Duration.ofSeconds(10);

  private final Watch watch;

  Crew() {
    super(
        THREADS,
        THREADS,
        IDLE_SECONDS,
        TimeUnit.SECONDS,
        new LinkedBlockingQueue<>(),
        work -> Threads.named("bench-answers", work));
    allowCoreThreadTimeOut(true);
    this.watch = new Watch(getQueue()::size);
  }

  Watch watch() {
    return watch;
  }

  /** A request is read from its first line by the thread that will answer it. */
  @Override
  protected void beforeExecute(Thread thread, Runnable work) {
    watch.waiting(MOST_FOR_HEADERS, true);
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
