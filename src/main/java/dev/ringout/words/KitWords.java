package dev.ringout.words;

import dev.ringout.units.Numbers;
import dev.ringout.units.Text;
import dev.ringout.work.WorkPapers;
import dev.ringout.work.WorkPapers.Total;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** What has to be at hand, in words. */
public final class KitWords {
  private KitWords() {}

  /** So much wire of one kind. */
  public static String total(Total total) {
    String kind = total.kind();
    return Text.of(
        "%s m of %s, %s%s",
        WorkPapers.metres(total.metres()),
        kind.isEmpty() ? "wire of no gauge, type or colour listed" : kind,
        Numbers.count(total.wires(), "wire"),
        total.withoutLength().isEmpty()
            ? ""
            : ", without " + String.join(", ", total.withoutLength()) + " (no length listed)");
  }

  /** Wire by kind, then the rest. */
  static List<String> all(WorkPapers papers) {
    List<String> lines = new ArrayList<>(totals(papers));
    lines.addAll(counted(papers.kit()));
    return lines;
  }

  static List<String> totals(WorkPapers papers) {
    return papers.totals().stream().map(KitWords::total).toList();
  }

  static List<String> counted(Map<String, Integer> kit) {
    List<String> lines = new ArrayList<>();
    kit.forEach((what, count) -> lines.add(count + " × " + what));
    return lines;
  }
}
