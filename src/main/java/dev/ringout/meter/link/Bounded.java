package dev.ringout.meter.link;

import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.function.Consumer;

/** Runs what may hang without end, and waits for it only so long. */
final class Bounded {
  private Bounded() {}

  /**
   * What it gives.
   *
   * @param undo what is done with a result that came too late
   */
  static <T> T call(Callable<T> call, long millis, Consumer<T> undo)
      throws InterruptedException, TimeoutException, ExecutionException {
    Late<T> late = new Late<>(undo);
    FutureTask<T> task = new FutureTask<>(() -> late.check(call.call()));
    Thread thread = new Thread(task, "meter-link");
    thread.setDaemon(true);
    thread.start();
    try {
      return task.get(millis, TimeUnit.MILLISECONDS);
    } catch (InterruptedException | TimeoutException e) {
      if (late.giveUp()) {
        throw e;
      }
      return task.get();
    }
  }

  /** Hands a result over once: to who waits, or to be undone. */
  private static final class Late<T> {
    private final Consumer<T> undo;
    private boolean given;
    private boolean givenUp;

    Late(Consumer<T> undo) {
      this.undo = undo;
    }

    synchronized T check(T result) {
      given = true;
      if (givenUp) {
        undo.accept(result);
      }
      return result;
    }

    synchronized boolean giveUp() {
      givenUp = !given;
      return givenUp;
    }
  }
}
