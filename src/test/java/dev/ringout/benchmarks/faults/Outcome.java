package dev.ringout.benchmarks.faults;

/** One unit diagnosed. */
record Outcome(
    boolean exact,
    boolean among,
    boolean missed,
    boolean falseAlarm,
    boolean unseen,
    double seconds,
    int readingsToCertainty,
    boolean exactAtLast) {
  boolean wrong() {
    return !among && !unseen;
  }
}
