package dev.ringout.benchmarks.weaken;

import dev.ringout.benchmarks.weaken.Evidence.Job;
import dev.ringout.benchmarks.weaken.Evidence.Reading;
import dev.ringout.benchmarks.weaken.Oracle.Open;
import dev.ringout.benchmarks.weaken.Unit.Demand;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.Stream;

/** Which unit, which revision, which instruments, on which day: what the job sheets must say. */
final class Conditions {
  private Conditions() {}

  static void check(Demand demand, Evidence evidence, List<Reading> standing, List<Open> open) {
    identity(demand, evidence.jobs(), open);
    calibration(demand, evidence.jobs(), standing, open);
    for (Job job : evidence.jobs()) {
      boolean other = !demand.revision().isEmpty() && !job.revision().isEmpty();
      if (other && !job.revision().equalsIgnoreCase(demand.revision())) {
        open.add(new Open("revision", "readings of revision " + job.revision()));
      }
      boolean named = !job.inspector().isEmpty() && !job.operator().isEmpty();
      if (demand.inspector() && (!named || job.inspector().equalsIgnoreCase(job.operator()))) {
        open.add(new Open("inspector", "no inspector who is not the tester"));
      }
    }
  }

  private static void identity(Demand demand, List<Job> jobs, List<Open> open) {
    TreeSet<String> serials = new TreeSet<>();
    jobs.forEach(job -> serials.add(job.serialNumber()));
    if (serials.size() != 1) {
      open.add(new Open("serial number", "several units: " + serials));
      return;
    }
    String serial = serials.first();
    boolean asked = demand.serialNumber() || !demand.effectivity().isEmpty();
    if (asked && serial.isEmpty()) {
      open.add(new Open("serial number", "none"));
    } else if (!demand.effectivity().isEmpty() && !covers(demand.effectivity(), serial)) {
      open.add(new Open("effectivity", serial + " is not of " + demand.effectivity()));
    }
  }

  /** {@code 0400 to 0499}. */
  private static boolean covers(String effectivity, String serial) {
    String[] ends = effectivity.split(" to ", -1);
    int number = Integer.parseInt(serial);
    return Integer.parseInt(ends[0]) <= number && number <= Integer.parseInt(ends[1]);
  }

  /** Once any job names a day on which an instrument is due, each one used must be in date. */
  private static void calibration(
      Demand demand, List<Job> jobs, List<Reading> standing, List<Open> open) {
    boolean named =
        jobs.stream().anyMatch(job -> job.due().isPresent() || job.testerDue().isPresent());
    if (!named && !demand.calibration()) {
      return;
    }
    for (Reading reading : standing) {
      Job job = jobs.get(reading.file());
      boolean tester = reading.probing().insulation() && job.ownTester();
      Optional<LocalDate> due = tester ? job.testerDue() : job.due();
      Optional<LocalDate> tested = lastDay(reading.file(), job, standing);
      if (due.isEmpty() || tested.isEmpty() || tested.get().isAfter(due.get())) {
        String who = tester ? "tester of file " : "instrument of file ";
        open.add(
            new Open("calibration", who + reading.file() + ": due " + due + ", tested " + tested));
        return;
      }
    }
  }

  /** The last day that the job sheet or a dated reading of a file gives. */
  private static Optional<LocalDate> lastDay(int file, Job job, List<Reading> readings) {
    return Stream.concat(
            job.date().stream(),
            readings.stream()
                .filter(reading -> reading.file() == file)
                .flatMap(reading -> reading.time().stream())
                .map(LocalDateTime::toLocalDate))
        .max(LocalDate::compareTo);
  }
}
