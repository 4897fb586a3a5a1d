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

  private record Failures(int count, long last) {}

  /**
   * Nobody tried yet.
   *
   * @param free from which failure on one waits
   */
  public Attempts(int free) {
    this.free = free;
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

  /** Somebody failed. */
  public synchronized void failed(String key, long millis) {
    failures.values().removeIf(one -> millis - one.last() > FORGOTTEN);
    Failures before = failures.remove(key);
    if (failures.size() >= MOST_KEPT) {
      failures.remove(failures.keySet().iterator().next());
    }
    failures.put(key, new Failures(before == null ? 1 : before.count() + 1, millis));
  }

  /** Somebody came in. */
  public synchronized void cameIn(String key) {
    failures.remove(key);
  }
}
