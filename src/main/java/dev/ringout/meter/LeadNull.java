package dev.ringout.meter;

import dev.ringout.readings.Measured;
import dev.ringout.units.Numbers;
import java.time.Duration;
import java.time.Instant;

/**
 * What a meter reads with its probes held together: the {@code lead null} of the job.
 *
 * @param reading the value as it was taken
 */
public record LeadNull(MeterReading reading) {
  /** Leads of more are broken, or were not held together (common practice, no source). */
  public static final double MOST_OHMS = 5;

  /** Whether the probes were together at all, and the meter not nulled too far. */
  public boolean isSound() {
    return reading.measured().value().map(value -> value.ohms() <= MOST_OHMS).orElse(false);
  }

  /** Whether they are to be measured again. */
  public boolean isDue(Instant now, Duration after) {
    Instant at = reading.at();
    return now.isBefore(at) || now.isAfter(at.plus(after));
  }

  /** Whether it is of the meter that is in use now. */
  public boolean isOf(MeterIdentity meter) {
    return reading.meter().equals(meter);
  }

  /** As the job's sheet has it in its row {@code lead null}. */
  public String text() {
    return reading.measured().value().map(Measured.Value::ohms).map(LeadNull::ohms).orElse("");
  }

  private static String ohms(double ohms) {
    return Numbers.rounded(ohms, 4) + " ohm";
  }
}
