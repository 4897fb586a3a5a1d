package dev.ringout.serve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.atomic.AtomicLong;
import org.junit.jupiter.api.Test;

/** Who signed in, and for how long. */
class VisitsTest {
  private final AtomicLong minutes = new AtomicLong();
  private final Visits visits =
      new Visits(
          8443,
          new Stay(Duration.ofMinutes(30), Duration.ofHours(12)),
          () -> 60_000 * minutes.get());

  private static String pair(String line) {
    return line.substring(0, line.indexOf(';'));
  }

  private Optional<Guest> guest(String line) {
    return visits.guest(List.of(pair(line)));
  }

  @Test
  void a_cookie_is_of_this_host_alone_goes_over_tls_alone_and_to_no_script_or_other_site() {
    String line = visits.come(Optional.empty(), "A", 2);
    assertTrue(
        line.matches("__Host-ringout-8443=[\\w-]{43}; Path=/; Secure; HttpOnly; SameSite=Strict"),
        line);
  }

  /** A cookie that somebody else knows, planted before, is nobody's after the sign-in. */
  @Test
  void each_sign_in_has_a_cookie_of_its_own_and_ends_what_the_browser_was_before() {
    String first = visits.come(Optional.empty(), "A", 2);
    Optional<Guest> before = guest(first);
    String second = visits.come(before, "B", 3);
    assertNotEquals(pair(first), pair(second));
    assertEquals(Optional.empty(), guest(first));
    assertEquals("B", guest(second).orElseThrow().who());
    assertEquals(Optional.empty(), visits.guest(List.of("__Host-ringout-8443=made-up")));
    assertEquals(Optional.empty(), visits.guest(List.of("__Host-ringout-8443=")));
    assertEquals(Optional.empty(), visits.guest(List.of()));
  }

  @Test
  void who_does_nothing_for_half_an_hour_is_out() {
    String line = visits.come(Optional.empty(), "A", 2);
    minutes.set(30);
    visits.used(guest(line).orElseThrow());
    minutes.set(60);
    assertTrue(visits.isIn(guest(line).orElseThrow()));
    minutes.set(61);
    assertEquals(Optional.empty(), guest(line));
    assertEquals(Set.of("A"), visits.goneWith(Set.of()));
    assertEquals(Set.of(), visits.goneWith(Set.of()), "told once");
  }

  @Test
  void a_value_from_the_meter_is_something_done_too() {
    String line = visits.come(Optional.empty(), "A", 2);
    minutes.set(29);
    visits.used("A");
    minutes.set(58);
    assertTrue(guest(line).isPresent());
  }

  @Test
  void whatever_is_done_nobody_is_in_for_longer_than_a_shift() {
    String line = visits.come(Optional.empty(), "A", 2);
    for (int i = 0; i <= 12 * 6; i++) {
      minutes.set(10L * i);
      guest(line).ifPresent(visits::used);
    }
    assertTrue(guest(line).isPresent());
    minutes.incrementAndGet();
    assertEquals(Optional.empty(), guest(line));
  }

  @Test
  void who_goes_out_is_out_with_this_browser_and_in_with_others() {
    String here = visits.come(Optional.empty(), "A", 2);
    String there = visits.come(Optional.empty(), "A", 2);
    String taken = visits.leave(guest(here));
    assertTrue(taken.startsWith("__Host-ringout-8443=;") && taken.endsWith("Max-Age=0"), taken);
    assertEquals(Optional.empty(), guest(here));
    Guest other = guest(there).orElseThrow();
    assertEquals(Set.of(), visits.goneWith(Set.of()), "in with the other browser still");
    assertEquals(Set.of("A"), visits.goneWith(Set.of(other)));
    assertFalse(visits.isIn(other));
  }

  /** However short the visit was: what goes on in the name of who is out is to end. */
  @Test
  void who_came_and_went_between_two_looks_is_told_to_be_gone() {
    String line = visits.come(Optional.empty(), "A", 2);
    visits.come(guest(line), "B", 3);
    assertEquals(Set.of("A"), visits.goneWith(Set.of()));
  }

  @Test
  void one_person_is_in_with_eight_browsers_at_most() {
    String first = visits.come(Optional.empty(), "A", 2);
    for (int i = 0; i < 8; i++) {
      minutes.incrementAndGet();
      visits.come(Optional.empty(), "A", 2);
    }
    assertEquals(Optional.empty(), guest(first));
    assertEquals(8, visits.in().size());
  }
}
