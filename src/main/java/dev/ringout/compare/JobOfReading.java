package dev.ringout.compare;

import dev.ringout.readings.Day;
import dev.ringout.readings.Job;
import dev.ringout.readings.Jobs;
import dev.ringout.readings.Reading;
import dev.ringout.readings.TimeOfReading;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** What the job sheet that goes with a reading says of it. */
final class JobOfReading {
  /** For readings that stand in no file with a job sheet. */
  static final JobOfReading NONE = new JobOfReading(List.of());

  private final Jobs jobs;
  private final boolean none;

  JobOfReading(List<Job> jobs) {
    this.jobs = new Jobs(jobs);
    this.none = jobs.isEmpty();
  }

  Optional<Job> of(Reading reading) {
    return none ? Optional.empty() : jobs.of(reading.place());
  }

  /** The top of the range of the meter that it was taken with; absent where none is given. */
  OptionalDouble rangeOhms(Reading reading) {
    return of(reading).map(job -> job.rangeOhms(reading.kind())).orElse(OptionalDouble.empty());
  }

  /** The day on which it was taken: its own, else its sheet's; absent where neither says one. */
  Optional<LocalDate> day(Reading reading) {
    Optional<LocalDate> own = reading.time().flatMap(TimeOfReading::day);
    return own.isPresent() ? own : of(reading).flatMap(Day::ofTest);
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
