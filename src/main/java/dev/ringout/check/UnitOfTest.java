package dev.ringout.check;

import dev.ringout.harness.Harness;
import dev.ringout.readings.Job;
import dev.ringout.readings.ReadingSet;
import dev.ringout.seal.TestedUnit;
import java.util.stream.Collectors;

/** Which unit was tested: the one place that puts its names together. */
public final class UnitOfTest {
  private UnitOfTest() {}

  /** The unit by the job sheets and the list; serial numbers that differ are all named. */
  public static TestedUnit of(Harness harness, ReadingSet readings) {
    return new TestedUnit(
        readings.jobs().stream()
            .map(Job::serialNumber)
            .filter(serial -> !serial.isEmpty())
            .distinct()
            .collect(Collectors.joining(", ")),
        harness.headerValue("title"),
        harness.headerValue("drawing"),
        harness.headerValue("revision"));
  }
}
