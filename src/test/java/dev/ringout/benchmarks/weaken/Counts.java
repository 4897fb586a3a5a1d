package dev.ringout.benchmarks.weaken;

import dev.ringout.benchmarks.weaken.Bench.Outcome;
import dev.ringout.units.Text;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** How many cases of each kind of weakening came out how. */
final class Counts {
  private static final List<String> COLUMNS =
      List.of("cases", "0 shown", "0 FALSE", "faults 1", "incompl. 2", "refused 65", "other");

  private final Map<Weakening, int[]> byKind = new EnumMap<>(Weakening.class);
  private final int[] all = new int[COLUMNS.size()];

  /** False passes by the kinds of what is not shown. */
  private final Map<String, Integer> notShown = new TreeMap<>();

  /** How many had nothing open, so that exit 0 was allowed. */
  private int allowed;

  synchronized void add(Outcome outcome) {
    count(all, outcome);
    allowed += outcome.open().isEmpty() ? 1 : 0;
    if (outcome.isFalsePass()) {
      notShown.merge(String.join(", ", Oracle.kinds(outcome.open())), 1, Integer::sum);
    }
    outcome.steps().stream()
        .map(Bench.Step::weakening)
        .distinct()
        .forEach(kind -> count(byKind.computeIfAbsent(kind, one -> new int[all.length]), outcome));
  }

  private static void count(int[] counts, Outcome outcome) {
    int column =
        switch (outcome.code()) {
          case Ran.CONFORMS -> outcome.isFalsePass() ? 2 : 1;
          case Ran.FAULTS -> 3;
          case Ran.INCOMPLETE -> 4;
          case Ran.REFUSED -> 5;
          default -> 6;
        };
    counts[0]++;
    counts[column]++;
  }

  int cases() {
    return all[0];
  }

  int conforming() {
    return all[1];
  }

  /** A table; a case with several weakenings counts in the line of each. */
  String text() {
    List<String> lines = new ArrayList<>();
    lines.add(line("weakening", COLUMNS));
    byKind.forEach((kind, counts) -> lines.add(line(kind.name(), texts(counts))));
    lines.add(line("all", texts(all)));
    lines.add("of these, everything still shown: " + allowed);
    notShown.forEach((kinds, count) -> lines.add(count + " false passes, not shown: " + kinds));
    return String.join("\n", lines);
  }

  private static List<String> texts(int[] counts) {
    List<String> texts = new ArrayList<>();
    for (int count : counts) {
      texts.add("" + count);
    }
    return texts;
  }

  private static String line(String name, List<String> cells) {
    StringBuilder line = new StringBuilder(Text.of("%-24s", name));
    cells.forEach(cell -> line.append(Text.of("%11s", cell)));
    return line.toString();
  }
}
