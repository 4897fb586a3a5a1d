package dev.ringout.record;

import dev.ringout.readings.Reading;
import dev.ringout.readings.TimeOfReading;
import dev.ringout.record.RecordBlock.Heading;
import dev.ringout.words.ReadingPlace;
import java.util.ArrayList;
import java.util.List;

/** How readings came in at a bench, in the meter's own words, and why some were not made. */
final class LedReadings {
  private static final String NO_STATE = "";

  private LedReadings() {}

  static List<RecordBlock> of(TestRecord record) {
    ReadingPlace places = new ReadingPlace(record.result().readings());
    List<List<String>> cameIn = new ArrayList<>();
    List<List<String>> leftOut = new ArrayList<>();
    for (Reading reading : record.result().readings().readings()) {
      if (!reading.note().isEmpty() && record.history().isLed(reading.place())) {
        (reading.measured().made() ? cameIn : leftOut).add(row(reading, places));
      }
    }
    List<RecordBlock> blocks = new ArrayList<>();
    if (!leftOut.isEmpty()) {
      blocks.add(new Heading(3, "Left out at the bench"));
      blocks.add(
          FilledColumns.of(
              "Left out",
              List.of("Between", "Reading", "Why", "By", "When", "Cell"),
              leftOut,
              NO_STATE));
    }
    if (!cameIn.isEmpty()) {
      blocks.add(new Heading(3, "How the readings came in"));
      blocks.add(
          FilledColumns.of(
              "Came in",
              List.of("Between", "Reading", "How", "By", "When", "Cell"),
              cameIn,
              NO_STATE));
    }
    return blocks;
  }

  private static List<String> row(Reading reading, ReadingPlace places) {
    return List.of(
        reading.subject(),
        reading.measured().made() ? reading.measured().text() : "",
        reading.note(),
        reading.by(),
        reading.time().map(TimeOfReading::text).orElse(""),
        places.of(reading));
  }
}
