package dev.ringout.people;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

/** How often somebody may try to come in. */
class AttemptsTest {
  private final Attempts attempts = new Attempts(5);

  private void fail(String key, int times, long millis) {
    for (int i = 0; i < times; i++) {
      attempts.tries(key, millis);
    }
  }

  @Test
  void who_mistypes_now_and_then_does_not_wait() {
    fail("a", 4, 0);
    assertEquals(0, attempts.waits("a", 0));
  }

  @Test
  void from_the_fifth_failure_on_each_wait_is_twice_as_long_up_to_a_quarter_of_an_hour() {
    fail("a", 5, 0);
    assertEquals(30_000, attempts.waits("a", 0));
    assertEquals(0, attempts.waits("a", 30_000));
    fail("a", 1, 30_000);
    assertEquals(60_000, attempts.waits("a", 30_000));
    long now = 30_000;
    for (int i = 0; i < 20; i++) {
      now += attempts.waits("a", now);
      fail("a", 1, now);
    }
    assertEquals(16 * 60_000, attempts.waits("a", now));
    assertEquals(0, attempts.waits("b", now), "others do not");
  }

  @Test
  void who_comes_in_begins_anew_and_so_does_who_fails_no_more_for_an_hour() {
    fail("a", 5, 0);
    attempts.cameIn("a");
    assertEquals(0, attempts.waits("a", 0));
    fail("b", 5, 0);
    fail("b", 1, 3_600_001);
    assertEquals(0, attempts.waits("b", 3_600_001));
  }

  /** Nobody gets more guesses by sending them before the first is answered. */
  @Test
  void a_try_counts_before_it_is_known_to_fail_and_no_longer_where_it_was_none() {
    for (int i = 0; i < 5; i++) {
      assertEquals(0, attempts.tries("a", 0));
    }
    assertEquals(30_000, attempts.tries("a", 0));
    attempts.takenBack("a");
    assertEquals(0, attempts.tries("a", 0));
    assertEquals(30_000, attempts.tries("a", 0));
  }

  @Test
  void names_without_end_take_no_memory_without_end() {
    fail("first", 5, 0);
    for (int i = 0; i < 5000; i++) {
      attempts.tries("name " + i, 1);
    }
    assertEquals(0, attempts.waits("first", 1), "the oldest are forgotten");
    assertTrue(attempts.waits("name 4999", 1) == 0);
  }
}
