package dev.ringout.serve;

import java.io.Serial;

/** Ends the work on a request that is not answered. */
final class Refused extends Exception {
  @Serial private static final long serialVersionUID = 1;

  private final Refusal why;

  Refused(Refusal why) {
    super(why.name(), null, false, false);
    this.why = why;
  }

  Refusal why() {
    return why;
  }
}
