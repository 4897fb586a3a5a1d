package dev.ringout.imports.kbl;

import dev.ringout.imports.list.Oddity;
import dev.ringout.imports.list.SkipReason;

/** Why no wire can be made of a connection. */
final class NotRead extends Exception {
  private static final long serialVersionUID = 1L;

  private final SkipReason reason;
  private final int line;
  private final transient Oddity oddity;

  /**
   * Because of an element.
   *
   * @param line where that element stands
   */
  NotRead(SkipReason reason, int line, Oddity oddity) {
    super(reason.word(), null, false, false);
    this.reason = reason;
    this.line = line;
    this.oddity = oddity;
  }

  SkipReason reason() {
    return reason;
  }

  int line() {
    return line;
  }

  Oddity oddity() {
    return oddity;
  }
}
