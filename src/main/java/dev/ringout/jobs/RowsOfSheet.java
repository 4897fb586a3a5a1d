package dev.ringout.jobs;

import dev.ringout.readings.Concession;
import dev.ringout.readings.Job;
import dev.ringout.readings.Reading;
import dev.ringout.readings.ReadingSet;
import dev.ringout.readings.TimeOfReading;
import dev.ringout.source.Place;
import dev.ringout.store.Entry;
import dev.ringout.store.EntryKind;
import java.util.HashMap;
import java.util.Map;

/** What each row of a sheet is as an entry of the store. */
final class RowsOfSheet {
  private final Map<Place, Kept> byRow = new HashMap<>();

  private record Kept(EntryKind kind, String at, String who) {}

  private RowsOfSheet() {}

  static RowsOfSheet of(ReadingSet readings) {
    RowsOfSheet rows = new RowsOfSheet();
    for (Job job : readings.jobs()) {
      job.places().values().forEach(cell -> rows.put(cell, new Kept(EntryKind.CONDITIONS, "", "")));
    }
    for (Concession one : readings.concessions()) {
      rows.put(one.place(), new Kept(EntryKind.OVERRIDE, "", one.who()));
    }
    readings.readings().forEach(rows::put);
    return rows;
  }

  /** A row whose one value was read is a reading, though the other is blank. */
  private void put(Reading reading) {
    boolean made = reading.measured().made();
    if (made || !reading.note().isEmpty()) {
      String at = reading.time().map(TimeOfReading::at).map(Object::toString).orElse("");
      Kept kept = new Kept(made ? EntryKind.READING : EntryKind.SKIPPED, at, reading.by());
      byRow.merge(
          reading.place().wholeRow(),
          kept,
          (one, other) -> one.kind() == EntryKind.READING ? one : other);
    }
  }

  private void put(Place cell, Kept kept) {
    byRow.put(cell.wholeRow(), kept);
  }

  /** The entry of a row. */
  Entry.Draft draft(Place row, String body) {
    Kept kept = byRow.getOrDefault(row, new Kept(EntryKind.ROW, "", ""));
    return new Entry.Draft(kept.kind(), kept.at(), kept.who(), body);
  }
}
