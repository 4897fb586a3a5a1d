package dev.ringout.readings;

import dev.ringout.source.Place;
import dev.ringout.source.Problem;
import java.util.ArrayList;
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

  /** The same readings, of which something was opened after all of them. */
  public ReadingSet before(Rework rework) {
    List<Rework> all = new ArrayList<>(reworks);
    all.add(rework);
    return new ReadingSet(readings, jobs, List.copyOf(all), concessions, unread);
  }

  /** The reworks as a sheet tells of them that is filled in after all, each once and numbered. */
  public List<Rework> reworksBefore() {
    List<Rework> told = new ArrayList<>();
    int last = 0;
    for (Rework rework : reworks) {
      last =
          Math.max(
              last, rework.number().matches("\\d{1,6}") ? Integer.parseInt(rework.number()) : 0);
    }
    for (Rework one : reworks) {
      boolean isTold = told.stream().anyMatch(row -> isElsewhere(one, row) && one.isToldBy(row));
      if (!isTold) {
        last += one.number().isEmpty() ? 1 : 0;
        told.add(one.numbered(one.number().isEmpty() ? "" + last : one.number()));
      }
    }
    return List.copyOf(told);
  }

  /** The reworks as people count them: what each later sheet tells again is told once. */
  public List<Rework> reworksOnce() {
    List<Rework> told = new ArrayList<>();
    for (Rework rework : reworks) {
      if (told.stream().noneMatch(one -> isElsewhere(one, rework) && one.isToldBy(rework))) {
        told.add(rework);
      }
    }
    return List.copyOf(told);
  }

  private static boolean isElsewhere(Rework one, Rework other) {
    return !one.place().file().equals(other.place().file());
  }

  /** Readings and job sheets alone. */
  public ReadingSet(List<Reading> readings, List<Job> jobs) {
    this(readings, jobs, List.of(), List.of(), List.of());
  }

  /** The unit's serial number, by the first job sheet that gives one; empty where none does. */
  public String serialNumber() {
    return jobs.stream()
        .map(Job::serialNumber)
        .filter(serial -> !serial.isEmpty())
        .findFirst()
        .orElse("");
  }

  /** Those of some of the files alone. */
  public ReadingSet ofJobs(List<Job> some) {
    return new ReadingSet(
        readings.stream().filter(one -> holds(some, one.place())).toList(),
        List.copyOf(some),
        reworks.stream().filter(one -> holds(some, one.place())).toList(),
        concessions,
        unread);
  }

  private static boolean holds(List<Job> jobs, Place place) {
    return jobs.stream().anyMatch(job -> job.holds(place));
  }

  /** The same with other job sheets. */
  public ReadingSet withJobs(List<Job> others) {
    return new ReadingSet(readings, others, reworks, concessions, unread);
  }
}
