package dev.ringout.record;

import dev.ringout.harness.Effectivity;
import dev.ringout.harness.Harness;
import dev.ringout.readings.Instrument;
import dev.ringout.readings.Job;
import dev.ringout.words.Sentences;
import java.time.LocalDate;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Which unit was tested, with what, by whom and when, as the paper and the sheets state it. */
final class UnitFacts {
  private static final String NOT_STATED = "not stated";

  private final List<Job> jobs;

  private UnitFacts(List<Job> jobs) {
    this.jobs = jobs;
  }

  static List<List<String>> of(TestRecord record) {
    return new UnitFacts(record.result().readings().jobs()).rows(record);
  }

  private List<List<String>> rows(TestRecord record) {
    Harness harness = record.result().harness();
    return List.of(
        stated("Unit", harness.headerValue("title")),
        stated("Serial number", value("serial number")),
        stated(
            "Drawing, revision",
            Sentences.named(harness.headerValue("drawing"), harness.headerValue("revision"))),
        stated("Effectivity", Effectivity.of(harness)),
        stated("Procedure", value("procedure")),
        stated("Instruments", instruments()),
        stated("Ranges", Sentences.named(range("continuity"), range("insulation"))),
        stated("Ambient", Sentences.named(value("temperature"), value("humidity"))),
        stated("Date of the test", record.date().map(LocalDate::toString).orElse("")),
        stated("Tester, inspector", Sentences.named(value("operator"), value("inspector"))),
        List.of("Proven", Sentences.coverage(record.result().coverage())));
  }

  private static List<String> stated(String name, String value) {
    return List.of(name, value.isEmpty() ? NOT_STATED : value);
  }

  private String range(String kind) {
    String range = value(kind + " range");
    return range.isEmpty() ? "" : kind + " " + range;
  }

  private String value(String name) {
    return each(job -> Stream.of(job.value(name)));
  }

  /** Each instrument by itself: the due day of one says nothing of another. */
  private String instruments() {
    return each(job -> job.instruments().stream().map(UnitFacts::instrument));
  }

  private static String instrument(Instrument instrument) {
    String due = instrument.calibrationDue();
    return Sentences.named(
        instrument.name(), instrument.number(), due.isEmpty() ? "" : "calibration due " + due);
  }

  private String each(Function<Job, Stream<String>> stated) {
    return jobs.stream()
        .flatMap(stated)
        .filter(one -> !one.isEmpty())
        .distinct()
        .collect(Collectors.joining("; "));
  }
}
