package dev.ringout.benchmarks.weaken;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * What the files of one check say.
 *
 * @param unread what can't be read
 */
record Evidence(List<Reading> readings, List<Job> jobs, List<Rework> reworks, List<String> unread) {

  /**
   * One reading.
   *
   * @param file the number of its file
   * @param volts its own
   * @param day the day of the test on its job sheet
   */
  record Reading(
      int file,
      Probing probing,
      Values.Value value,
      OptionalDouble volts,
      Optional<LocalDateTime> time,
      Optional<LocalDate> day) {}

  /**
   * One job sheet; what it does not say is empty.
   *
   * @param ownTester whether the insulation tester has rows of its own
   */
  record Job(
      String serialNumber,
      String revision,
      String operator,
      String inspector,
      Optional<LocalDate> date,
      Optional<LocalDate> due,
      Optional<LocalDate> testerDue,
      boolean ownTester,
      OptionalDouble continuityRange,
      OptionalDouble insulationRange,
      OptionalDouble insulationVolts) {}

  /**
   * What was opened.
   *
   * @param files those that carry it: their readings were taken after it
   * @param items opened, the ends of the wires among them
   * @param afterAll it came after every reading
   */
  record Rework(
      Set<Integer> files,
      Optional<LocalDateTime> time,
      Set<String> items,
      Set<String> wires,
      boolean afterAll) {
    /** Whether a reading was certainly taken after it: by its file, its time, or its day. */
    boolean isBefore(Reading reading) {
      return !afterAll && (files.contains(reading.file()) || isDatedAfter(reading));
    }

    private boolean isDatedAfter(Reading reading) {
      if (time.isEmpty()) {
        return false;
      }
      return reading.time().isPresent()
          ? reading.time().get().isAfter(time.get())
          : reading.day().isPresent() && reading.day().get().isAfter(time.get().toLocalDate());
    }
  }
}
