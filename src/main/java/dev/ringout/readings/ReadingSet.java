package dev.ringout.readings;

import dev.ringout.source.Problem;
import java.util.List;

/**
 * Every reading of every file, in the order given.
 *
 * @param jobs the job sheets, one for each file that holds readings
 * @param reworks what was opened between readings
 * @param concessions what an inspector accepts out of limits
 * @param unread the cells of readings that can't be understood: errors, whose rows are left out
 */
public record ReadingSet(
    List<Reading> readings,
    List<Job> jobs,
    List<Rework> reworks,
    List<Concession> concessions,
    List<Problem> unread) {

  /** Readings and job sheets alone. */
  public ReadingSet(List<Reading> readings, List<Job> jobs) {
    this(readings, jobs, List.of(), List.of(), List.of());
  }

  /** The same with other job sheets. */
  public ReadingSet withJobs(List<Job> others) {
    return new ReadingSet(readings, others, reworks, concessions, unread);
  }
}
