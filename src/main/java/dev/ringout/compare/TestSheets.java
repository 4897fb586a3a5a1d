package dev.ringout.compare;

import dev.ringout.source.Place;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Readings as a hand wrote them down: by sheet. */
final class TestSheets {
  private TestSheets() {}

  /** The readings of each file, sheet and kind together, in the order in which they are given. */
  static Collection<List<Judged>> each(List<Judged> readings) {
    Map<List<String>, List<Judged>> sheets = new LinkedHashMap<>();
    List<Judged> rows = List.of();
    for (Judged judged : readings) {
      // Nearly every row stands on the sheet of the row above.
      if (rows.isEmpty() || !areOnOneSheet(rows.get(0), judged)) {
        rows = sheets.computeIfAbsent(sheet(judged), key -> new ArrayList<>());
      }
      rows.add(judged);
    }
    return sheets.values();
  }

  private static List<String> sheet(Judged judged) {
    Place place = judged.reading().place();
    return List.of(place.file(), place.sheet(), judged.reading().kind().name());
  }

  private static boolean areOnOneSheet(Judged one, Judged other) {
    Place place = one.reading().place();
    Place otherPlace = other.reading().place();
    return one.reading().kind() == other.reading().kind()
        && place.sheet().equals(otherPlace.sheet())
        && place.file().equals(otherPlace.file());
  }
}
