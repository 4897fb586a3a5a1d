package dev.ringout.bench;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/** How quick a person is from step to step: the middle of the last ones, pauses left aside. */
final class Pace {
  private static final int FEWEST = 5;
  private static final int MOST = 25;

  /** Longer is a pause, and no step. */
  private static final Duration LONGEST = Duration.ofMinutes(5);

  private final Deque<Long> millis = new ArrayDeque<>();
  private Optional<Instant> last = Optional.empty();

  /** A step was made. */
  void step(Instant now) {
    last.ifPresent(
        one -> {
          Duration took = Duration.between(one, now);
          if (!took.isNegative() && took.compareTo(LONGEST) < 0) {
            millis.addLast(took.toMillis());
            if (millis.size() > MOST) {
              millis.removeFirst();
            }
          }
        });
    last = Optional.of(now);
  }

  /** Minutes for so many steps; absent until enough were made. */
  OptionalInt minutes(int steps) {
    if (millis.size() < FEWEST) {
      return OptionalInt.empty();
    }
    List<Long> sorted = millis.stream().sorted().toList();
    double minutes = steps * sorted.get(sorted.size() / 2) / 60_000.0;
    return OptionalInt.of((int) Math.ceil(minutes));
  }
}
