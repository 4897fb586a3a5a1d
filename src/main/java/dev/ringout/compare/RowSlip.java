package dev.ringout.compare;

import dev.ringout.circuit.Circuit;
import dev.ringout.circuit.JoinLimits;
import dev.ringout.readings.Reading;
import dev.ringout.source.Place;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Rows of a test sheet whose values stand a row from where they belong: a line was skipped, or
 * written twice.
 *
 * @param rows the rows over which each value is what another row expects, in their order
 * @param step how many rows further each value belongs: 1 where the point of a row was skipped, -1
 *     where its line was
 * @param mended the failing readings that this explains
 * @param reversed what was read in the same rows with the leads exchanged: it slips with the rest
 * @param chance how likely it is that a slip of this sheet is this one, from 0 to 1: it may begin
 *     at any row, and end at any
 */
public record RowSlip(
    List<Judged> rows, int step, List<Judged> mended, List<Judged> reversed, double chance) {
  private static final int LEAST_MENDED = 2;

  /** The runs that explain the most, for each sheet at most one. */
  public static List<RowSlip> find(Circuit circuit, JoinLimits limits, Comparison comparison) {
    Judge judge = new Judge(circuit, limits, JobOfReading.NONE);
    Map<Judged, Set<Judged>> again = again(comparison);
    List<Judged> all = new ArrayList<>(comparison.inForce());
    comparison.replaced().forEach(one -> all.add(one.earlier()));
    List<RowSlip> slips = new ArrayList<>();
    for (List<Judged> sheet : TestSheets.each(all)) {
      if (failing(sheet).size() >= LEAST_MENDED) {
        best(sheet, again, judge).ifPresent(slips::add);
      }
    }
    return slips;
  }

  /** Failing readings, each with those of the same points that showed the same. */
  private static Map<Judged, Set<Judged>> again(Comparison comparison) {
    Map<Judged, Set<Judged>> byLater = new HashMap<>();
    for (Replaced replaced : comparison.replaced()) {
      if (!replaced.changed() && replaced.later().outcome().fails()) {
        byLater.computeIfAbsent(replaced.later(), later -> new HashSet<>()).add(replaced.earlier());
      }
    }
    Map<Judged, Set<Judged>> again = new HashMap<>();
    byLater.forEach(
        (later, same) -> {
          same.add(later);
          same.forEach(one -> again.put(one, same));
        });
    return again;
  }

  private static Optional<RowSlip> best(
      List<Judged> sheet, Map<Judged, Set<Judged>> again, Judge judge) {
    List<Judged> rows = firstOfEachRow(sheet);
    List<RowSlip> found = new ArrayList<>();
    for (int step : new int[] {1, -1}) {
      int end = 0;
      List<Range> pieces = new ArrayList<>();
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
          // The last rows of a run may stand where they belong.
          while (end > row + 1 && fitsBetterHere(rows, end - 1, end - 1 + step, judge)) {
            end--;
          }
          pieces.addAll(pieces(rows, new Range(start, end), again));
        }
      }
      for (Range piece : acrossOneMisfit(pieces, rows)) {
        Range run = step < 0 ? fromItsBlank(piece, rows, judge) : piece;
        slip(rows, run, step, again).ifPresent(found::add);
      }
    }
    return found.stream()
        .max(Comparator.comparingInt(slip -> slip.mended().size()))
        .map(slip -> slip.with(sheet));
  }

  /** What was read with the leads exchanged stands in the same row: it slips with the other. */
  private static List<Judged> firstOfEachRow(List<Judged> sheet) {
    List<Judged> sorted = new ArrayList<>(sheet);
    sorted.sort(Comparator.comparingInt(judged -> judged.reading().place().row()));
    List<Judged> rows = new ArrayList<>();
    int last = -1;
    for (Judged judged : sorted) {
      if (judged.reading().place().row() != last) {
        rows.add(judged);
      }
      last = judged.reading().place().row();
    }
    return rows;
  }

  /** Whether a row's value is what another row expects; the last has none beyond it. */
  private static boolean fits(List<Judged> rows, int row, int belongs, Judge judge) {
    Reading value = rows.get(row).reading();
    if (belongs < 0) {
      // No value was made before the first: what fails there is no other row's.
      return !rows.get(row).outcome().fails();
    }
    if (belongs >= rows.size() || !value.measured().made()) {
      return true;
    }
    return judge.judge(value.at(rows.get(belongs).reading())).outcome() == Outcome.CONFORMS;
  }

  /** Whether a value is as expected where it stands, and would be low in another row. */
  private static boolean fitsBetterHere(List<Judged> rows, int row, int belongs, Judge judge) {
    Judged here = rows.get(row);
    return here.value() == ValueVerdict.AS_EXPECTED
        && belongs < rows.size()
        && judge.judge(here.reading().at(rows.get(belongs).reading())).value() == ValueVerdict.LOW;
  }

  private static List<Judged> failing(List<Judged> rows) {
    return rows.stream().filter(judged -> judged.outcome().fails()).toList();
  }

  /** Rows by their places in the sheet, the last not among them. */
  private record Range(int start, int end) {
    List<Judged> of(List<Judged> rows) {
      return rows.subList(start, end);
    }
  }

  /**
   * A run, cut where a reading made outside it bears out one that fails in it: that value stands
   * where it belongs.
   */
  private static List<Range> pieces(List<Judged> rows, Range run, Map<Judged, Set<Judged>> again) {
    Set<Judged> failing = new HashSet<>(failing(run.of(rows)));
    List<Range> pieces = new ArrayList<>();
    int start = run.start();
    for (int row = start; row < run.end(); row++) {
      if (!failing.containsAll(again.getOrDefault(rows.get(row), Set.of()))) {
        pieces.add(new Range(start, row));
        start = row + 1;
      }
    }
    pieces.add(new Range(start, run.end()));
    return pieces;
  }

  /**
   * Two runs with a single row between them that fits nowhere are one: a real fault may lie in what
   * slipped. So is a run which but for one row goes on to the end of the sheet, as a slip does that
   * nobody noticed.
   */
  private static List<Range> acrossOneMisfit(List<Range> pieces, List<Judged> rows) {
    List<Range> joined = new ArrayList<>();
    for (Range piece : pieces) {
      Range last = joined.isEmpty() ? piece : joined.get(joined.size() - 1);
      boolean goesOn =
          !joined.isEmpty()
              && piece.start() - last.end() == 1
              && failing(last.of(rows)).size() >= LEAST_MENDED
              && (failing(piece.of(rows)).size() >= LEAST_MENDED || piece.end() == rows.size());
      if (goesOn) {
        joined.set(joined.size() - 1, new Range(last.start(), piece.end()));
      } else {
        joined.add(piece);
      }
    }
    joined.replaceAll(piece -> toTheEnd(piece, rows));
    return joined;
  }

  /** With the last row of the sheet, where it alone is left over and fails where it stands. */
  private static Range toTheEnd(Range piece, List<Judged> rows) {
    boolean goesOn =
        piece.end() == rows.size() - 1
            && rows.get(piece.end()).outcome().fails()
            && failing(piece.of(rows)).size() >= LEAST_MENDED;
    return goesOn ? new Range(piece.start(), rows.size()) : piece;
  }

  /**
   * From the row that was left blank on, where one stands above: there the values begin to stand a
   * row lower. One row on the way may fit nowhere, if it fails where it stands as well.
   */
  private static Range fromItsBlank(Range piece, List<Judged> rows, Judge judge) {
    List<Judged> failing = failing(piece.of(rows));
    if (failing.isEmpty() || blanks(rows) == 0) {
      return piece;
    }
    boolean isAcrossAMisfit = false;
    for (int row = rows.indexOf(failing.get(0)) - 1; row >= 0; row--) {
      if (isBlank(rows.get(row))) {
        return new Range(row, piece.end());
      }
      if (row < piece.start() && !fits(rows, row, row - 1, judge)) {
        if (isAcrossAMisfit || !rows.get(row).outcome().fails()) {
          return piece;
        }
        isAcrossAMisfit = true;
      }
    }
    return piece;
  }

  private static boolean isBlank(Judged judged) {
    return !judged.reading().measured().made();
  }

  private static long blanks(List<Judged> rows) {
    return rows.stream().filter(RowSlip::isBlank).count();
  }

  private RowSlip with(List<Judged> sheet) {
    Set<Integer> numbers = new HashSet<>();
    rows.forEach(judged -> numbers.add(judged.reading().place().row()));
    Set<Judged> own = new HashSet<>(rows);
    List<Judged> beside =
        sheet.stream()
            .filter(judged -> numbers.contains(judged.reading().place().row()))
            .filter(judged -> !own.contains(judged))
            .toList();
    return new RowSlip(rows, step, mended, beside, chance);
  }

  /** The failing readings of the rows. */
  public List<Judged> failing() {
    List<Judged> failing = new ArrayList<>(mended);
    failing.addAll(failing(reversed));
    return failing;
  }

  /** The readings with each value of the run in the row where it belongs. */
  public Comparison putRight(Circuit circuit, JoinLimits limits, Comparison comparison) {
    Map<Judged, Reading> moved = new HashMap<>();
    Set<Judged> without = new HashSet<>(rows);
    without.addAll(reversed);
    for (int row = 0; row < rows.size(); row++) {
      int belongs = row + step;
      if (belongs >= 0 && belongs < rows.size()) {
        Judged target = rows.get(belongs);
        moved.put(target, target.reading().saying(rows.get(row).reading().measured()));
        without.remove(target);
      }
    }
    return comparison.rewritten(circuit, limits, moved).without(without);
  }

  /**
   * The slip that a run shows. Points read twice within it may both have slipped, but where more
   * than half of what fails was read twice, it is the unit that shows it twice.
   */
  private static Optional<RowSlip> slip(
      List<Judged> rows, Range range, int step, Map<Judged, Set<Judged>> again) {
    List<Judged> run = range.of(rows);
    List<Judged> mended = failing(run);
    long twice = mended.stream().filter(again::containsKey).count();
    if (mended.size() < LEAST_MENDED || 2 * twice > mended.size()) {
      return Optional.empty();
    }
    boolean toTheEnd = range.end() == rows.size();
    // Of a sheet with a single blank it is known where the slip began.
    double begins =
        isBlank(run.get(0))
            ? (double) rows.size() / blanks(rows)
            : run.indexOf(mended.get(0)) + 1.0;
    double ends = run.size() - run.indexOf(mended.get(mended.size() - 1));
    double chance = begins / rows.size() * (toTheEnd ? 1 : ends / rows.size());
    return Optional.of(new RowSlip(List.copyOf(run), step, mended, List.of(), chance));
  }

  /**
   * Whether a reading stands in one of its rows, above them, or so many rows below. A slip may
   * begin at any row above that is as expected a row off as well.
   */
  public boolean mayHold(Judged judged, int rowsBelow) {
    Place place = judged.reading().place();
    Place end = rows.get(rows.size() - 1).reading().place();
    return place.file().equals(end.file())
        && place.sheet().equals(end.sheet())
        && place.row() <= end.row() + rowsBelow;
  }

  /** The row from which on, at the latest, the values stand where they do not belong. */
  public Judged first() {
    return mended.get(0);
  }
}
