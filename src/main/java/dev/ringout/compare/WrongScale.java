package dev.ringout.compare;

import dev.ringout.circuit.Circuit;
import dev.ringout.circuit.JoinLimits;
import dev.ringout.readings.Measured;
import dev.ringout.readings.Reading;
import dev.ringout.units.OhmsRange;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Values that stand a power of ten from where they should: milliohms written as ohms over a whole
 * sheet, or the point misplaced in one.
 *
 * @param times how many times too high they are written
 * @param mended the failing readings that are as expected once that is put right
 * @param likelihood how much likelier the digits of a single value are so than as a value measured
 * @param comparison the readings, put right
 */
public record WrongScale(
    double times, List<Judged> mended, double likelihood, Comparison comparison) {
  private static final double MILLI = 1000;
  private static final int LEAST_READINGS = 5;
  private static final double MOST_OF_THEM = 0.8;

  /** Beyond this a join is of no size that a wiring list has. */
  private static final double MOST_OF_A_JOIN_OHMS = 10;

  private static final double[] MISPLACED = {10, 100, 1000, 0.1, 0.01, 0.001};

  /**
   * A meter of one range shows all joins to one digit: another digit speaks for a slip of the pen.
   */
  private static final double DIGITS_SPEAK = 10;

  /** A range is ten times the next; a meter that changes it by itself shows just that. */
  private static final double RANGES = 10;

  /** Few joints are so poor that a meter changes its range twice (common practice, no source). */
  private static final double RANGES_SPEAK = 3;

  /** What a join of unknown length reads is within a power of ten or two. */
  private static final double WITHOUT_A_LENGTH = 3;

  /** Sheets on which nearly every value is a thousand times too high. */
  public static Optional<WrongScale> ofSheets(
      Circuit circuit, JoinLimits limits, Comparison comparison) {
    Judge judge = new Judge(circuit, limits, JobOfReading.NONE);
    Map<Judged, Reading> rewritten = new HashMap<>();
    List<Judged> mended = new ArrayList<>();
    for (List<Judged> sheet : sheets(comparison)) {
      List<Judged> joins = sheet.stream().filter(one -> one.expected().isJoined()).toList();
      List<Judged> high = joins.stream().filter(one -> one.outcome().fails()).toList();
      List<Judged> good =
          high.stream().filter(one -> conforms(judge.judge(scaled(one, MILLI)))).toList();
      if (high.size() >= LEAST_READINGS
          && high.size() >= joins.size() * MOST_OF_THEM
          && good.size() >= high.size() * MOST_OF_THEM) {
        for (Judged judged : sheet) {
          Judged anew = judge.judge(scaled(judged, MILLI));
          boolean isMended = judged.outcome().fails() && conforms(anew);
          if (isMended) {
            mended.add(judged);
          }
          if (isMended || (judged.outcome().fails() && judged.expected().isJoined())) {
            rewritten.put(judged, anew.reading());
          }
        }
      }
    }
    return mended.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new WrongScale(MILLI, mended, 1, comparison.rewritten(circuit, limits, rewritten)));
  }

  /** Single values that are as expected with the point elsewhere, and fail by themselves alone. */
  public static List<WrongScale> ofValues(
      Circuit circuit, JoinLimits limits, Comparison comparison) {
    Judge judge = new Judge(circuit, limits, JobOfReading.NONE);
    Set<Integer> highTwice = highTwice(circuit, comparison);
    List<WrongScale> found = new ArrayList<>();
    for (List<Judged> sheet : sheets(comparison)) {
      Display display = display(sheet);
      for (Judged judged : sheet) {
        if (mayBeMisplaced(judged)
            && !highTwice.contains(circuit.normal().of(judged.probing().from()[0]))) {
          misplaced(judged, display, judge).ifPresent(found::add);
        }
      }
    }
    return found;
  }

  private static boolean mayBeMisplaced(Judged judged) {
    return judged.probing().isPair()
        && (judged.outcome() == Outcome.PART_VALUE
            || ((judged.outcome() == Outcome.RESISTIVE || judged.outcome() == Outcome.OPEN)
                && judged.expected().isJoined()));
  }

  /** Nets of which more than one reading is high: what is wrong there is no slip of the pen. */
  private static Set<Integer> highTwice(Circuit circuit, Comparison comparison) {
    Set<Integer> once = new HashSet<>();
    Set<Integer> twice = new HashSet<>();
    for (Judged judged : comparison.failing()) {
      if (judged.expected().isJoined() && judged.reading().kind() == Reading.Kind.CONTINUITY) {
        int net = circuit.normal().of(judged.probing().from()[0]);
        if (!once.add(net)) {
          twice.add(net);
        }
      }
    }
    return twice;
  }

  /** The likeliest place of the point, where one makes the value as expected. */
  private static Optional<WrongScale> misplaced(Judged judged, Display display, Judge judge) {
    Measured.Value value = judged.reading().measured().value().orElseThrow();
    List<WrongScale> found = new ArrayList<>();
    for (double times : MISPLACED) {
      Judged anew = judge.judge(scaled(judged, times));
      if (conforms(anew)) {
        double likelihood = digitsSpeak(value, times, display) * chance(anew, judged);
        found.add(
            new WrongScale(times, List.of(judged), likelihood, Comparison.inForce(List.of(anew))));
      }
    }
    return found.stream().max(Comparator.comparingDouble(WrongScale::likelihood));
  }

  /**
   * What the digits of a value say of its having been misplaced: where the rest of the sheet does
   * not bear it out, a slip of the pen is not the first thing to think of. A meter that changes its
   * range by itself shows a coarser digit too, but never fewer steps than a tenth of a range.
   */
  private static double digitsSpeak(Measured.Value value, double times, Display display) {
    double half = value.halfDigitOhms();
    if (display.halfDigit() <= 0 || !isAbout(half / times, display.halfDigit())) {
      return 1 / DIGITS_SPEAK;
    }
    boolean ofAnotherRange =
        value.ohms() > display.mostSteps() * 2 * display.halfDigit()
            && value.ohms() / (2 * half) >= display.mostSteps() / RANGES;
    if (ofAnotherRange) {
      return Math.max(times, 1 / times) > RANGES ? RANGES_SPEAK : 1 / RANGES_SPEAK;
    }
    return DIGITS_SPEAK;
  }

  /**
   * A meter's display, by a sheet.
   *
   * @param halfDigit half of the digit to which most joins are written; 0 where there is no such
   * @param mostSteps the most steps of its digit that a value has
   */
  private record Display(double halfDigit, double mostSteps) {}

  private static Display display(List<Judged> sheet) {
    double most =
        sheet.stream()
            .filter(judged -> judged.outcome().passes())
            .flatMap(judged -> judged.reading().measured().value().stream())
            .mapToDouble(value -> value.ohms() / (2 * value.halfDigitOhms()))
            .max()
            .orElse(0);
    return new Display(usualHalfDigit(sheet), most);
  }

  /**
   * How much likelier a value is there by a slip of the pen than by chance: a poor joint, or
   * another part, has anything within four powers of ten.
   */
  private static double chance(Judged anew, Judged judged) {
    OhmsRange expected =
        anew.expected()
            .throughParts()
            .map(parts -> new OhmsRange(parts.lowOhms(), parts.highOhms()))
            .orElse(judged.limit().expected());
    if (!expected.isKnown() || expected.lowOhms() <= 0) {
      return WITHOUT_A_LENGTH;
    }
    return Math.log(1e4) / Math.log(expected.highOhms() / expected.lowOhms());
  }

  private static boolean isAbout(double one, double other) {
    return Math.abs(one - other) < other * 0.01;
  }

  /** Half of the digit to which most joins of a sheet are written; 0 where there is no such. */
  private static double usualHalfDigit(List<Judged> sheet) {
    Map<Double, Integer> counts = new LinkedHashMap<>();
    for (Judged judged : sheet) {
      if (judged.expected().isJoined() && judged.outcome().passes()) {
        judged
            .reading()
            .measured()
            .value()
            .filter(value -> value.ohms() < MOST_OF_A_JOIN_OHMS)
            .ifPresent(value -> counts.merge(value.halfDigitOhms(), 1, Integer::sum));
      }
    }
    return counts.entrySet().stream()
        .filter(entry -> entry.getValue() >= LEAST_READINGS)
        .max(Map.Entry.comparingByValue())
        .map(Map.Entry::getKey)
        .orElse(0.0);
  }

  /** The values of continuity, sheet by sheet. */
  private static List<List<Judged>> sheets(Comparison comparison) {
    Map<String, List<Judged>> sheets = new LinkedHashMap<>();
    for (Judged judged : comparison.inForce()) {
      if (judged.reading().kind() == Reading.Kind.CONTINUITY
          && judged.reading().measured().value().isPresent()) {
        sheets
            .computeIfAbsent(judged.reading().place().file(), file -> new ArrayList<>())
            .add(judged);
      }
    }
    return List.copyOf(sheets.values());
  }

  private static boolean conforms(Judged judged) {
    return judged.outcome() == Outcome.CONFORMS
        && judged.value() != ValueVerdict.LOW
        && judged.value() != ValueVerdict.CANT_TELL;
  }

  private static Reading scaled(Judged judged, double times) {
    return judged
        .reading()
        .measured()
        .value()
        .map(
            value ->
                judged
                    .reading()
                    .saying(
                        new Measured.Value(value.ohms() / times, value.halfDigitOhms() / times)))
        .orElse(judged.reading());
  }
}
