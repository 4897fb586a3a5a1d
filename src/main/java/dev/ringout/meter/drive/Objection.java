package dev.ringout.meter.drive;

import dev.ringout.meter.Failure;
import dev.ringout.meter.Shown;
import java.util.Optional;

/** What speaks against a meter of ohms in what it said. */
final class Objection {
  private Objection() {}

  /**
   * The failure that a line is; absent where it is a value, or none for the moment.
   *
   * @param asked what it answers, or empty
   */
  static Optional<Failure> to(String asked, String line, Shown shown) {
    if (!shown.isReadable()) {
      return Optional.of(new Failure.Garbage(asked, line));
    }
    if (shown.lacksVolts()) {
      return Optional.of(new Failure.NoVolts(line));
    }
    return shown.otherUnit().map(unit -> new Failure.OtherQuantity(line, unit));
  }
}
