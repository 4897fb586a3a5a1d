package dev.ringout.meter;

import java.util.List;

/** A meter that can't be spoken to, or whose answer can't be believed. */
public final class MeterTrouble extends Exception {
  private static final long serialVersionUID = 1L;

  // Exceptions can be stored; nobody stores these.
  private final transient Failure failure;
  private final transient List<Exchange> talk;

  /**
   * A failure.
   *
   * @param talk what was sent and received last
   */
  public MeterTrouble(Failure failure, List<Exchange> talk) {
    super(failure.toString());
    this.failure = failure;
    this.talk = List.copyOf(talk);
  }

  /** What went wrong. */
  public Failure failure() {
    return failure;
  }

  /** What was sent and received last. */
  public List<Exchange> talk() {
    return talk;
  }
}
