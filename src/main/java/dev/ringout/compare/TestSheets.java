package dev.ringout.compare;

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
    for (Judged judged : readings) {
      List<String> sheet =
          List.of(
              judged.reading().place().file(),
              judged.reading().place().sheet(),
              judged.reading().kind().name());
      sheets.computeIfAbsent(sheet, key -> new ArrayList<>()).add(judged);
    }
    return sheets.values();
  }
}
