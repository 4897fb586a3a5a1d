package dev.ringout.record;

import dev.ringout.check.CheckResult;
import dev.ringout.compare.Judged;
import dev.ringout.readings.Reading;
import dev.ringout.record.RecordBlock.Heading;
import dev.ringout.record.RecordBlock.Table;
import dev.ringout.record.RecordBlock.Words;
import dev.ringout.words.ReadingPlace;
import dev.ringout.words.RecordLimits;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Readings with their limits, the source of each limit, and the cell where each was written. */
final class ReadingTable {
  private static final String NO_STATE = "";
  private static final String VERDICT = "Verdict";
  private static final List<String> HEADINGS =
      List.of(
          "Step",
          "Kind",
          "From",
          "To",
          "State",
          "Reading",
          "Limit",
          "Expected",
          "Limit from",
          VERDICT,
          "By",
          "Cell");

  private final RecordLimits limits;
  private final ReadingPlace places;

  ReadingTable(CheckResult result) {
    this.limits = new RecordLimits(result);
    this.places = new ReadingPlace(result.readings());
  }

  /** All readings that stand. */
  static List<RecordBlock> all(TestRecord record) {
    return List.of(
        new Heading(2, "Readings"),
        new Words(RecordLimits.LEGEND, false),
        new ReadingTable(record.result())
            .of("Readings", record.result().comparison().inForce(), VERDICT));
  }

  /** Some of the readings. */
  Table of(String name, List<Judged> readings) {
    return of(name, readings, NO_STATE);
  }

  private Table of(String name, List<Judged> readings, String stateColumn) {
    List<List<String>> rows = new ArrayList<>();
    readings.forEach(judged -> rows.add(row(judged)));
    return FilledColumns.of(name, HEADINGS, rows, stateColumn);
  }

  private List<String> row(Judged judged) {
    Reading reading = judged.reading();
    RecordLimits.Limit limit = limits.of(judged);
    return List.of(
        reading.step(),
        kind(judged),
        reading.from().toString(),
        reading.to().toString(),
        reading.state().toString(),
        reading.measured().text(),
        limit.words(),
        limit.expected().replace(" to ", "–"),
        limit.from(),
        RecordLimits.words(judged.outcome()),
        reading.by(),
        places.cellOfKind(reading));
  }

  /** What kind of reading it is, as a record says it and as its seal does. */
  static String kind(Judged judged) {
    return judged.reading().kind().name().toLowerCase(Locale.ROOT);
  }
}
