package dev.ringout.readings;

import java.time.LocalDateTime;

/** When a reading was taken, by the operator's clock. */
public record TimeOfReading(LocalDateTime at) implements Comparable<TimeOfReading> {
  @Override
  public int compareTo(TimeOfReading other) {
    return at.compareTo(other.at);
  }
}
