package dev.ringout.intake;

import dev.ringout.harness.Harness;
import dev.ringout.readings.Job;
import dev.ringout.readings.Jobs;
import dev.ringout.readings.Reading;
import dev.ringout.readings.ReadingSet;
import dev.ringout.source.OptionNames;
import dev.ringout.source.Place;
import dev.ringout.source.Problems;
import dev.ringout.units.Text;
import java.text.Normalizer;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * One unit, one serial number: readings of several units, or of another drawing's, are never put
 * together.
 */
public final class OneUnit {
  private static final String SERIAL = "serial number";
  private static final String DRAWING = "drawing";
  private static final Pattern BLANKS = Pattern.compile("[\\s\\p{Z}\\p{Cf}]+");
  private static final Pattern SEVERAL =
      Pattern.compile("[;,]|\\s(?:and|&|\\+|/)\\s", Pattern.CASE_INSENSITIVE);

  private OneUnit() {}

  /**
   * The readings with the serial number that somebody vouches for in each file that gives none. A
   * file that gives another is reported.
   */
  public static ReadingSet vouchedFor(ReadingSet readings, String serial, Problems problems) {
    for (Job job : readings.jobs()) {
      if (!job.serialNumber().isEmpty() && !isSame(job.serialNumber(), serial)) {
        problems.error(
            job.place(SERIAL),
            Text.of(
                "the readings are of unit %s, %s says %s",
                job.serialNumber(), OptionNames.SERIAL, serial));
      }
    }
    return readings.withJobs(
        readings.jobs().stream()
            .map(job -> job.serialNumber().isEmpty() ? job.with(SERIAL, serial) : job)
            .toList());
  }

  /** Reports every file whose readings are not of one unit, or not of this drawing's. */
  public static void report(Harness harness, ReadingSet readings, Problems problems) {
    List<Job> named = readings.jobs().stream().filter(job -> !isBlank(job)).toList();
    for (Job job : named) {
      if (SEVERAL.matcher(job.serialNumber()).find()) {
        problems.error(
            job.place(SERIAL),
            Text.of(
                "\"%s\" names more than one unit: one test sheet is of one unit",
                job.serialNumber()));
        continue;
      }
      named.stream()
          .filter(other -> !isSame(other.serialNumber(), job.serialNumber()))
          .findFirst()
          .ifPresent(
              other ->
                  problems.error(
                      job.place(SERIAL),
                      Text.of(
                          "the readings are of unit %s, those of %s are of unit %s: readings of"
                              + " two units are not put together",
                          job.serialNumber(), other.place(SERIAL), other.serialNumber())));
    }
    if (!named.isEmpty()) {
      reportUnnamed(named.get(0), readings, problems);
    }
    reportOtherDrawing(harness, readings, problems);
  }

  private static void reportUnnamed(Job named, ReadingSet readings, Problems problems) {
    List<Job> unnamed = readings.jobs().stream().filter(OneUnit::isBlank).toList();
    Jobs jobs = new Jobs(unnamed);
    Set<String> filledIn = new LinkedHashSet<>();
    for (Reading reading : unnamed.isEmpty() ? List.<Reading>of() : readings.readings()) {
      if (reading.measured().made()) {
        jobs.of(reading.place()).ifPresent(job -> filledIn.add(job.file()));
      }
    }
    unnamed.stream()
        .filter(job -> filledIn.contains(job.file()))
        .forEach(
            job ->
                problems.error(
                    Place.of(job.file()),
                    Text.of(
                        "gives no serial number, %s gives %s: write it on its sheet Job, or say"
                            + " %s %s if it is of that unit",
                        named.place(SERIAL),
                        named.serialNumber(),
                        OptionNames.SERIAL,
                        named.serialNumber())));
  }

  private static void reportOtherDrawing(Harness harness, ReadingSet readings, Problems problems) {
    String own = harness.headerValue(DRAWING);
    for (Job job : readings.jobs()) {
      String drawing = job.value(DRAWING);
      if (!drawing.isEmpty() && !own.isBlank() && !key(drawing).equals(key(own))) {
        problems.error(
            job.place(DRAWING),
            Text.of(
                "the readings were taken against drawing %s, the harness file is drawing %s",
                drawing, own.strip()));
      }
    }
  }

  /** Reports every file whose readings were taken against another revision than this one. */
  public static void reportOtherRevision(Harness harness, ReadingSet readings, Problems problems) {
    String own = harness.headerValue("revision");
    for (Job job : readings.jobs()) {
      if (!job.revision().isEmpty() && !own.isEmpty() && !job.revision().equalsIgnoreCase(own)) {
        problems.error(
            job.revisionPlace(),
            Text.of(
                "the readings were taken against revision %s, the harness file is revision %s; to compare them anyway, give %s",
                job.revision(), own, OptionNames.ANY_REVISION));
      }
    }
  }

  /** Reports readings that are said to be of another unit, and are of this one. */
  public static void reportSame(ReadingSet own, ReadingSet other, Problems problems) {
    for (Job job : other.jobs()) {
      own.jobs().stream()
          .filter(mine -> !isBlank(job) && !isBlank(mine))
          .filter(mine -> isSame(mine.serialNumber(), job.serialNumber()))
          .findFirst()
          .ifPresent(
              mine ->
                  problems.error(
                      job.place(SERIAL),
                      Text.of(
                          "the readings are of unit %s, which is the unit of %s: %s is for"
                              + " another one",
                          job.serialNumber(), mine.place(SERIAL), OptionNames.ALSO)));
    }
  }

  private static boolean isBlank(Job job) {
    return job.serialNumber().isEmpty();
  }

  /** Case, blanks and leading zeros, which spreadsheets take away, make no other unit. */
  private static boolean isSame(String one, String other) {
    return withoutZeros(one).equals(withoutZeros(other));
  }

  /** What two ways to write one serial number have in common. */
  public static String keyOf(String serial) {
    return withoutZeros(serial);
  }

  private static String withoutZeros(String serial) {
    return key(serial).replaceFirst("^0+(?=.)", "");
  }

  private static String key(String text) {
    // One letter may be written as one sign or as two, and in a wide form (UAX #15, NFKC).
    String plain = Normalizer.normalize(text, Normalizer.Form.NFKC);
    return BLANKS.matcher(plain).replaceAll("").toLowerCase(Locale.ROOT);
  }
}
