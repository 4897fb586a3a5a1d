package dev.ringout.record;

import dev.ringout.check.CheckResult;
import dev.ringout.compare.Judged;
import dev.ringout.readings.Job;
import dev.ringout.readings.Jobs;
import dev.ringout.readings.Reading;
import dev.ringout.readings.TimeOfReading;
import dev.ringout.record.RecordBlock.Heading;
import dev.ringout.record.RecordBlock.Table;
import dev.ringout.record.RecordBlock.Words;
import dev.ringout.units.Numbers;
import dev.ringout.words.ReadingPlace;
import dev.ringout.words.RecordLimits;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.Set;

/** Readings with their limits, the source of each limit, and the cell where each was written. */
final class ReadingTable {
  private static final String NO_STATE = "";
  private static final String VERDICT = "Verdict";
  private static final int SIGNIFICANT = 6;
  private static final List<String> WHOLE =
      List.of(
          "Step",
          "Kind",
          "From",
          "To",
          "Wire",
          "State",
          "Volts (V)",
          "Seconds (s)",
          "Reading",
          "Limit",
          "Expected",
          "Limit from",
          VERDICT,
          "By",
          "Time",
          "Meter",
          "Cell",
          "Note",
          "Reading (Ω)",
          "Least (Ω)",
          "Most (Ω)");
  private static final Set<Integer> NUMBERS = Set.of(6, 7, 18, 19, 20);
  private static final int RECKONED = 3;

  private static final List<String> SHORT =
      List.of("Step", "Kind", "From", "To", "Wire", "State", "Reading", "Limit", VERDICT, "Cell");

  private final Jobs jobs;
  private final RecordLimits limits;
  private final ReadingPlace places;
  private final WireBetween wires;

  ReadingTable(CheckResult result) {
    this.jobs = new Jobs(result.readings().jobs());
    this.limits = new RecordLimits(result);
    this.places = new ReadingPlace(result.readings());
    this.wires = new WireBetween(result.circuit());
  }

  /** All readings that stand. */
  static List<RecordBlock> all(TestRecord record) {
    return List.of(
        new Heading(2, "Readings"),
        new Words(RecordLimits.LEGEND, false),
        new ReadingTable(record.result()).whole(record.result().comparison().inForce()));
  }

  /** Some of the readings, with what tells them apart and what is wrong with them. */
  Table of(String name, List<Judged> readings) {
    List<List<String>> rows = new ArrayList<>();
    for (Judged judged : readings) {
      List<String> whole = row(judged);
      rows.add(SHORT.stream().map(heading -> whole.get(WHOLE.indexOf(heading))).toList());
    }
    return FilledColumns.of(name, SHORT, rows, NO_STATE);
  }

  private Table whole(List<Judged> readings) {
    List<List<String>> rows = new ArrayList<>();
    readings.forEach(judged -> rows.add(row(judged)));
    return FilledColumns.of(
        new Table("Readings", WHOLE, rows, WHOLE.indexOf(VERDICT), NUMBERS, RECKONED));
  }

  private List<String> row(Judged judged) {
    Reading reading = judged.reading();
    RecordLimits.Limit limit = limits.of(judged);
    RecordLimits.Bounds bounds = limits.bounds(judged);
    return List.of(
        reading.step(),
        kind(judged),
        reading.from().toString(),
        reading.to().toString(),
        wires.of(judged.probing()),
        reading.state().toString(),
        number(reading.volts()),
        number(reading.seconds()),
        reading.measured().text(),
        limit.words(),
        limit.expected().replace(" to ", "–"),
        limit.from(),
        RecordLimits.words(judged.outcome()),
        reading.by(),
        reading.time().map(TimeOfReading::text).orElse(""),
        meter(reading),
        places.cell(reading.place()),
        reading.note(),
        reading.measured().value().map(value -> Numbers.plain(value.ohms())).orElse(""),
        number(bounds.minOhms()),
        number(bounds.maxOhms()));
  }

  private static String number(OptionalDouble value) {
    return value.isEmpty() || Double.isInfinite(value.getAsDouble())
        ? ""
        : Numbers.rounded(value.getAsDouble(), SIGNIFICANT);
  }

  /** The number of the instrument that the sheet of a reading names, or else its name. */
  private String meter(Reading reading) {
    return jobs.of(reading.place())
        .map(Job::instruments)
        .map(all -> all.get(reading.kind() == Reading.Kind.INSULATION ? all.size() - 1 : 0))
        .map(one -> one.number().isEmpty() ? one.name() : one.number())
        .orElse("");
  }

  /** What kind of reading it is, as a record says it and as its seal does. */
  static String kind(Judged judged) {
    return judged.reading().kind().name().toLowerCase(Locale.ROOT);
  }
}
