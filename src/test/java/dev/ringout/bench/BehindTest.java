package dev.ringout.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/** What is done behind the page goes on, whatever went wrong in it once. */
class BehindTest {
  private final List<Throwable> defects = new CopyOnWriteArrayList<>();
  private final Behind behind = new Behind(defects::add);

  @AfterEach
  void close() {
    behind.close();
  }

  private static void await(CountDownLatch done) throws InterruptedException {
    assertTrue(done.await(20, TimeUnit.SECONDS));
  }

  /** A list of 300,000 wires may take all memory there is. */
  @Test
  void what_is_done_again_and_again_goes_on_after_memory_was_short() throws Exception {
    AtomicInteger times = new AtomicInteger();
    CountDownLatch again = new CountDownLatch(1);
    behind.every(
        5,
        () -> {
          if (times.incrementAndGet() == 1) {
            throw new OutOfMemoryError("heap");
          }
          again.countDown();
        });
    await(again);
    assertEquals(1, defects.size());
    assertInstanceOf(OutOfMemoryError.class, defects.get(0));
  }

  @Test
  void what_nobody_caught_is_told_and_the_next_thing_is_done() throws Exception {
    for (Error error : List.of(new StackOverflowError(), new LinkageError("half a program"))) {
      behind.later(
          () -> {
            throw error;
          });
    }
    CountDownLatch done = new CountDownLatch(2);
    behind.later(done::countDown);
    behind.after("explain", 5, done::countDown);
    await(done);
    assertEquals(2, defects.size());
  }
}
