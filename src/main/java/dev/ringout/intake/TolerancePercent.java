package dev.ringout.intake;

import java.util.OptionalDouble;
import java.util.function.Consumer;

/** The bounds of a tolerance, of one part or of the whole list. */
final class TolerancePercent {
  private static final double MOST = 100;

  private TolerancePercent() {}

  /**
   * The tolerance where it can be one; what is wrong with it is reported.
   *
   * @param name as the report calls it
   */
  static OptionalDouble within(OptionalDouble percent, String name, Consumer<String> report) {
    if (percent.isPresent() && (percent.getAsDouble() < 0 || percent.getAsDouble() > MOST)) {
      report.accept(name + " must be from 0 to 100 %");
      return OptionalDouble.empty();
    }
    return percent;
  }
}
