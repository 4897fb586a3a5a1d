package dev.ringout.people;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.concurrent.TimeUnit;

/**
 * How often somebody may try to come in: after some failures in a row whoever comes with the same
 * name, or from the same machine, waits, each time twice as long. Of names that nobody has as of
 * others. An administrator who waits can be let in at the terminal: {@code ringout people
 * passphrase}.
 */
public final class Attempts {
  private static final long FIRST_WAIT = TimeUnit.SECONDS.toMillis(30);
  private static final int MOST_DOUBLED = 5;

  /** Who fails no more for so long begins anew. */
  private static final long FORGOTTEN = TimeUnit.HOURS.toMillis(1);

  private static final int MOST_KEPT = 4096;

  private final Map<String, Failures> failures = new LinkedHashMap<>();
  private final int free;

  /**
   * In a row.
   *
   * @param before when the one before the last was
   */
  private record Failures(int count, long last, long before) {}

  /**
   * Nobody tried yet.
   *
   * @param free from which failure on one waits
   */
  public Attempts(int free) {
    this.free = free;
  }

  /** A wait in whole seconds, as it is told. */
  public static long seconds(long millis) {
    return (millis + 999) / 1000;
  }

  /**
   * How long somebody has to wait; 0 where nobody has.
   *
   * @param key a name, or a machine
   * @param millis now
   */
  public synchronized long waits(String key, long millis) {
    Failures of = failures.get(key);
    if (of == null || of.count() < free) {
      return 0;
    }
    long wait = FIRST_WAIT << Math.min(of.count() - free, MOST_DOUBLED);
    return Math.max(0, of.last() + wait - millis);
  }

  /**
   * Somebody tries. It counts as a failure until he comes in, or until it is taken back: of many
   * who try at once with one name each sees those before him.
   *
   * @return how long he has to wait instead; 0 where he may try
   */
  public synchronized long tries(String key, long millis) {
    long waits = waits(key, millis);
    if (waits == 0) {
      failed(key, millis);
    }
    return waits;
  }

  /** A try was none: nobody was asked, or who tried came in. */
  public synchronized void takenBack(String key) {
    Failures of = failures.remove(key);
    if (of != null && of.count() > 1) {
      failures.put(key, new Failures(of.count() - 1, of.before(), of.before()));
    }
  }

  private void failed(String key, long millis) {
    failures.values().removeIf(one -> millis - one.last() > FORGOTTEN);
    Failures before = failures.remove(key);
    if (failures.size() >= MOST_KEPT) {
      failures.remove(failures.keySet().iterator().next());
    }
    failures.put(
        key,
        before == null
            ? new Failures(1, millis, millis)
            : new Failures(before.count() + 1, millis, before.last()));
  }

  /** Somebody came in. */
  public synchronized void cameIn(String key) {
    failures.remove(key);
  }
}
