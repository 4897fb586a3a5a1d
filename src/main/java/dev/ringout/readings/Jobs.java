package dev.ringout.readings;

import dev.ringout.source.Place;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Finds the job sheet that a reading belongs to; readings are many and files few. */
public final class Jobs {
  private final List<Job> jobs;
  private final Map<String, Optional<Job>> byFile = new HashMap<>();

  /** Of these job sheets. */
  public Jobs(List<Job> jobs) {
    this.jobs = jobs;
  }

  /** The job sheet of the readings file in which a cell stands. */
  public Optional<Job> of(Place place) {
    return byFile.computeIfAbsent(
        place.file(),
        file ->
            jobs.stream()
                .filter(job -> job.holds(place))
                // A file may stand in a folder that is given too: the nearer one is meant.
                .max(Comparator.comparingInt(job -> job.file().length())));
  }

  /** Who reads by the job sheet of a reading; empty where it names nobody. */
  public String operator(Reading reading) {
    return of(reading.place()).map(job -> job.value("operator")).orElse("");
  }
}
