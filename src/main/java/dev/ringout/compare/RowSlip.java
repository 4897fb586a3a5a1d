package dev.ringout.compare;

import dev.ringout.circuit.Circuit;
import dev.ringout.circuit.JoinLimits;
import dev.ringout.readings.Reading;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Rows of a test sheet whose values stand a row from where they belong: a line was skipped, or
 * written twice.
 *
 * @param rows the rows over which each value is what another row expects, in their order
 * @param step how many rows further each value belongs: 1 where the point of a row was skipped, -1
 *     where its line was
 * @param mended the failing readings that this explains
 * @param chance how likely it is that a slip of this sheet is this one, from 0 to 1: it may begin
 *     at any row, and end at any
 */
public record RowSlip(List<Judged> rows, int step, List<Judged> mended, double chance) {
  private static final int LEAST_MENDED = 2;

  /** The runs that explain the most, for each sheet at most one. */
  public static List<RowSlip> find(Circuit circuit, JoinLimits limits, Comparison comparison) {
    Judge judge = new Judge(circuit, limits);
    Map<List<String>, List<Judged>> sheets = new LinkedHashMap<>();
    List<Judged> all = new ArrayList<>(comparison.inForce());
    comparison.replaced().forEach(one -> all.add(one.earlier()));
    for (Judged judged : all) {
      List<String> sheet =
          List.of(
              judged.reading().place().file(),
              judged.reading().place().sheet(),
              judged.reading().kind().name());
      sheets.computeIfAbsent(sheet, key -> new ArrayList<>()).add(judged);
    }
    List<RowSlip> slips = new ArrayList<>();
    for (List<Judged> sheet : sheets.values()) {
      if (sheet.stream().filter(judged -> judged.outcome().fails()).count() >= LEAST_MENDED) {
        best(sheet, judge).ifPresent(slips::add);
      }
    }
    return slips;
  }

  private static Optional<RowSlip> best(List<Judged> sheet, Judge judge) {
    List<Judged> rows = new ArrayList<>(sheet);
    rows.sort(Comparator.comparingInt(judged -> judged.reading().place().row()));
    List<RowSlip> found = new ArrayList<>();
    for (int step : new int[] {1, -1}) {
      int end = 0;
      for (int row = 0; row < rows.size(); row++) {
        // A run is about the failing readings in it: it is followed from them both ways.
        if (row >= end && rows.get(row).outcome().fails() && fits(rows, row, row + step, judge)) {
          int start = row;
          while (start > end && fits(rows, start - 1, start - 1 + step, judge)) {
            start--;
          }
          end = row + 1;
          while (end < rows.size() && fits(rows, end, end + step, judge)) {
            end++;
          }
          add(rows.subList(start, end), step, end == rows.size(), rows.size(), found);
        }
      }
    }
    return found.stream().max(Comparator.comparingInt(slip -> slip.mended().size()));
  }

  /** Whether a row's value is what another row expects; the last has none beyond it. */
  private static boolean fits(List<Judged> rows, int row, int belongs, Judge judge) {
    Reading value = rows.get(row).reading();
    if (belongs < 0 || belongs >= rows.size() || !value.measured().made()) {
      return true;
    }
    return judge.judge(value.at(rows.get(belongs).reading())).outcome() == Outcome.CONFORMS;
  }

  private static void add(
      List<Judged> run, int step, boolean toTheEnd, int rowsOfSheet, List<RowSlip> found) {
    List<Judged> mended = run.stream().filter(judged -> judged.outcome().fails()).toList();
    if (mended.size() < LEAST_MENDED) {
      return;
    }
    double begins = run.indexOf(mended.get(0)) + 1.0;
    double ends = run.size() - run.indexOf(mended.get(mended.size() - 1));
    double chance = begins / rowsOfSheet * (toTheEnd ? 1 : ends / rowsOfSheet);
    found.add(new RowSlip(List.copyOf(run), step, mended, chance));
  }

  /** The row from which on, at the latest, the values stand where they do not belong. */
  public Judged first() {
    return mended.get(0);
  }
}
