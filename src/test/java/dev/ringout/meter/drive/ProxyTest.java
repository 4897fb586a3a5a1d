package dev.ringout.meter.drive;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.ringout.support.MetersThroughProxy;
import dev.ringout.support.MetersThroughProxy.Outcome;
import dev.ringout.support.UnrulyProxy.Habit;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Whatever a line does to the packets, no value is that of another pair. */
@Timeout(60)
class ProxyTest {
  @ParameterizedTest
  @EnumSource(Habit.class)
  void plain_commands_through_an_unruly_line(Habit habit) throws Exception {
    check(MetersThroughProxy.raw(habit, 3, 11), habit);
  }

  @ParameterizedTest
  @EnumSource(Habit.class)
  void hislip_through_an_unruly_line(Habit habit) throws Exception {
    check(MetersThroughProxy.hislip(habit, 3, 11), habit);
  }

  private static void check(Outcome outcome, Habit habit) {
    assertEquals(0, outcome.wrong());
    assertEquals(3, outcome.read() + outcome.said());
    assertTrue(outcome.slowestMillis() < 8000, outcome.toString());
    if (habit == Habit.HONEST) {
      assertEquals(3, outcome.read());
    }
  }
}
