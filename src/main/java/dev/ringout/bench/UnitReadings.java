package dev.ringout.bench;

import dev.ringout.check.Checker;
import dev.ringout.compare.Judge;
import dev.ringout.compare.Judged;
import dev.ringout.jobs.LedTests.UnitAtBench;
import dev.ringout.readings.Job;
import dev.ringout.readings.Jobs;
import dev.ringout.readings.Reading;
import dev.ringout.readings.TimeOfReading;
import dev.ringout.standards.Tables;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;

/**
 * What was read of a unit, in all of its tests.
 *
 * @param rows the latest first
 * @param more how many there are besides
 */
public record UnitReadings(List<Row> rows, int more) {
  private static final int MOST_SHOWN = 100;

  /** What is given can't be changed afterwards. */
  public UnitReadings {
    rows = List.copyOf(rows);
  }

  /**
   * A reading.
   *
   * @param cell by which it is taken back
   * @param takenBack whether it counts no more
   */
  public record Row(
      String cell,
      String text,
      String value,
      BenchState.Tone outcome,
      String at,
      String who,
      boolean takenBack) {}

  /** Those whose points, cell, day or person hold some words; all where there are none. */
  public static UnitReadings of(UnitAtBench unit, String search) {
    String sought = search.strip().toLowerCase(Locale.ROOT);
    Checker checker = Checker.of(unit.list().harness(), Tables.published());
    Jobs jobs = new Jobs(unit.readings().jobs());
    Judge judge = Judge.of(checker.circuit(), checker.limits(), unit.readings().jobs());
    List<Reading> latestFirst = new ArrayList<>(unit.readings().readings());
    latestFirst.removeIf(one -> !one.measured().made());
    Collections.reverse(latestFirst);
    List<Row> rows = new ArrayList<>();
    int more = 0;
    for (Reading reading : latestFirst) {
      String who = reading.by().isBlank() ? jobs.operator(reading) : reading.by();
      String at = reading.time().map(TimeOfReading::text).orElse(day(jobs, reading));
      String all = String.join(" ", reading.subject(), reading.place().toString(), who, at);
      if (!all.toLowerCase(Locale.ROOT).contains(sought)) {
        continue;
      }
      if (rows.size() == MOST_SHOWN) {
        more++;
      } else {
        rows.add(row(judge.judge(reading), who, at));
      }
    }
    return new UnitReadings(rows, more);
  }

  private static String day(Jobs jobs, Reading reading) {
    return jobs.of(reading.place()).map(job -> job.value(Job.DATE)).orElse("");
  }

  private static Row row(Judged judged, String who, String at) {
    Reading reading = judged.reading();
    return new Row(
        reading.place().toString(),
        reading.subject(),
        reading.measured().text(),
        BenchWords.tone(judged),
        at,
        who,
        reading.measured().isTakenBack());
  }
}
