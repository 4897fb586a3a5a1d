package dev.ringout.meter.practice;

import dev.ringout.meter.Ticks;
import java.util.Random;

/**
 * The two probes of a practice meter: they bounce when they touch, have leads, and what they find
 * is noisy; the meter looks for its range first.
 */
public final class PracticeProbes {
  private static final long BOUNCE_MILLIS = 70;
  private static final long RANGING_MILLIS = 160;
  private static final long MOVING_MILLIS = 700;
  private static final double LEADS_OHMS = 0.08;
  private static final double NOISE_OHMS = 0.0015;

  /** Nothing on a bench is a better insulator than the meter can tell. */
  private static final double OVER_RANGE_OHMS = 120e6;

  private final Ticks ticks;
  private final Random random;
  private double ohms = Double.POSITIVE_INFINITY;
  private long sinceMillis;
  private boolean led;
  private double nextOhms;
  private long nextMillis = Long.MAX_VALUE;

  /** Probes in the air. */
  public PracticeProbes(Ticks ticks, long seed) {
    this.ticks = ticks;
    this.random = new Random(seed);
  }

  /** Whether somebody says where they are to be. */
  public synchronized boolean isLed() {
    return led;
  }

  /** Says from now on where they are to be: hands of practice leave them alone. */
  public synchronized void lead() {
    led = true;
  }

  synchronized void touchUnlessLed(double otherOhms) {
    if (!led) {
      touch(otherOhms);
    }
  }

  /** Puts both onto something of so many ohms; infinite: into the air. */
  public synchronized void touch(double otherOhms) {
    ohms = otherOhms;
    sinceMillis = ticks.millis();
    nextMillis = Long.MAX_VALUE;
  }

  /** Lifts both, and puts them onto something else a moment later, as a hand does. */
  public synchronized void moveTo(double otherOhms) {
    lead();
    lift();
    nextOhms = otherOhms;
    nextMillis = sinceMillis + MOVING_MILLIS;
  }

  private void arrive() {
    if (ticks.millis() >= nextMillis) {
      ohms = nextOhms;
      sinceMillis = nextMillis;
      nextMillis = Long.MAX_VALUE;
    }
  }

  /** Takes both off. */
  public void lift() {
    touch(Double.POSITIVE_INFINITY);
  }

  /** What a meter finds now, its own leads in it where it reads over two wires. */
  public synchronized double ohms(boolean fourWire) {
    arrive();
    long since = ticks.millis() - sinceMillis;
    if (Double.isInfinite(ohms)) {
      return Double.POSITIVE_INFINITY;
    }
    if (since < BOUNCE_MILLIS) {
      return random.nextBoolean() ? Double.POSITIVE_INFINITY : ohms + 40 * random.nextDouble();
    }
    if (since < RANGING_MILLIS) {
      return Double.POSITIVE_INFINITY;
    }
    double noise = NOISE_OHMS * (2 * random.nextDouble() - 1) * Math.max(1, ohms / 100);
    double found = ohms + (fourWire ? 0 : LEADS_OHMS) + noise;
    return found > OVER_RANGE_OHMS ? Double.POSITIVE_INFINITY : found;
  }
}
