package dev.ringout.benchmarks.weaken;

import java.util.List;
import java.util.Optional;
import java.util.Random;

/** Weakenings of the job sheet. */
final class WeakJob {
  private WeakJob() {}

  private static Optional<Table> anyJob(Case one, Random random) {
    return WeakRows.any(
        one.files.stream()
            .map(file -> file.sheet(Folder.JOB))
            .filter(job -> !job.rows.isEmpty())
            .toList(),
        random);
  }

  private static Optional<String> put(Case one, Random random, String name, String value) {
    Optional<Table> job = anyJob(one, random);
    job.ifPresent(table -> table.put(name, value));
    return job.map(table -> "job: " + name + " = " + value);
  }

  static Optional<String> lowerRange(Case one, Random random) {
    return random.nextBoolean()
        ? put(one, random, "insulation range", random.nextBoolean() ? "10 MΩ" : "")
        : put(one, random, "continuity range", random.nextBoolean() ? "20 kΩ" : "");
  }

  static Optional<String> serialNumber(Case one, Random random) {
    List<String> serials = List.of("0777", "", "0419", "0600");
    return put(one, random, "serial number", WeakRows.any(serials, random).orElse(""));
  }

  static Optional<String> revision(Case one, Random random) {
    return put(one, random, "revision", random.nextBoolean() ? "C" : "");
  }

  static Optional<String> date(Case one, Random random) {
    return put(
        one,
        random,
        "date",
        WeakRows.any(List.of("2027-06-01", "", "2027-02-01"), random).orElse(""));
  }

  static Optional<String> calibration(Case one, Random random) {
    String name = random.nextBoolean() ? "calibration due" : "insulation calibration due";
    return put(one, random, name, random.nextBoolean() ? "2026-10-31" : "");
  }

  static Optional<String> dropRow(Case one, Random random) {
    return anyJob(one, random)
        .map(
            job -> {
              List<String> row = job.rows.remove(random.nextInt(job.rows.size()));
              return "job without " + String.join(" ", row);
            });
  }

  static Optional<String> inspector(Case one, Random random) {
    return put(one, random, "inspector", random.nextBoolean() ? "R. Adeyemi" : "");
  }
}
