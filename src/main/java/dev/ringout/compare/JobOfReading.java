package dev.ringout.compare;

import dev.ringout.readings.Job;
import dev.ringout.readings.Reading;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The job sheet that goes with a reading, by the file in which it stands. All readings of a file
 * name it by the same text, so it is looked up once.
 */
final class JobOfReading {
  /** For readings that stand in no file with a job sheet. */
  static final JobOfReading NONE = new JobOfReading(List.of());

  private final List<Job> jobs;
  private final Map<String, Optional<Job>> byFile = new HashMap<>();

  JobOfReading(List<Job> jobs) {
    this.jobs = jobs;
  }

  Optional<Job> of(Reading reading) {
    if (jobs.isEmpty()) {
      return Optional.empty();
    }
    return byFile.computeIfAbsent(
        reading.place().file(),
        file -> jobs.stream().filter(job -> job.holds(reading.place())).findFirst());
  }

  /** The top of the range of the meter that it was taken with; absent where none is given. */
  OptionalDouble rangeOhms(Reading reading) {
    return of(reading)
        .map(
            job ->
                reading.kind() == Reading.Kind.INSULATION
                    ? job.insulationRangeOhms()
                    : job.continuityRangeOhms())
        .orElse(OptionalDouble.empty());
  }

  /** An insulation reading with the volts of its sheet, where it gives none of its own. */
  Reading withVolts(Reading reading) {
    if (reading.kind() != Reading.Kind.INSULATION || reading.volts().isPresent()) {
      return reading;
    }
    OptionalDouble volts = of(reading).map(Job::insulationVolts).orElse(OptionalDouble.empty());
    return volts.isPresent() ? reading.at(volts) : reading;
  }
}
