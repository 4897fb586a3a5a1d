package dev.ringout.meter.practice;

import java.util.List;

/** Touches one pair after the other, as somebody at a bench, until it is closed. */
public final class PracticeHands implements AutoCloseable {
  private static final long HELD_MILLIS = 1500;
  private static final long LIFTED_MILLIS = 700;

  private final Thread thread;

  /** Begins to touch; what is between each pair is given in ohms. */
  public PracticeHands(PracticeProbes probes, List<Double> pairs) {
    this.thread = new Thread(() -> touch(probes, pairs), "practice-hands");
    thread.setDaemon(true);
    thread.start();
  }

  private static void touch(PracticeProbes probes, List<Double> pairs) {
    try {
      for (int i = 0; !probes.isLed(); i++) {
        probes.touchUnlessLed(Double.POSITIVE_INFINITY);
        Thread.sleep(LIFTED_MILLIS);
        probes.touchUnlessLed(pairs.get(i % pairs.size()));
        Thread.sleep(HELD_MILLIS);
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  @Override
  public void close() {
    thread.interrupt();
  }
}
