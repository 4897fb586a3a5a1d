package dev.ringout.compare;

import dev.ringout.circuit.Circuit;
import dev.ringout.circuit.Expected;
import dev.ringout.circuit.JoinLimits;
import dev.ringout.readings.Measured;
import dev.ringout.readings.Reading;
import dev.ringout.units.OhmsRange;
import java.util.ArrayList;
import java.util.Arrays;
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
 * @param digits how much likelier the digits of a single value are so than as a value measured
 * @param expected what a single value should be; {@link OhmsRange#ANY} where that is not known
 * @param comparison the readings, put right
 */
public record WrongScale(
    double times, List<Judged> mended, double digits, OhmsRange expected, Comparison comparison) {
  private static final double MILLI = 1000;
  private static final int LEAST_READINGS = 5;
  private static final double MOST_OF_THEM = 0.8;

  /** Beyond this a join is of no size that a wiring list has. */
  private static final double MOST_OF_A_JOIN_OHMS = 10;

  private static final double[] MISPLACED = {10, 100, 1000, 0.1, 0.01, 0.001};

  /** So many places the point may be misplaced to; no source says which is the commoner. */
  public static final int PLACES = MISPLACED.length;

  /** Who writes down a meter's value leaves out a digit so seldom, and two still more seldom. */
  private static final double LEAVES_ONE_OUT = 1 / 30.0;

  private static final double LEAVES_TWO_OUT = 1 / 90.0;

  /** A spreadsheet that drops zeros at the end shows one value in ten with a digit less. */
  private static final double ENDS_IN_ZERO = 0.1;

  /** Within so many times a meter stays in its range. */
  private static final double OF_THE_SAME_RANGE = 3;

  /** So seldom a value is written to more digits than the others of its sheet. */
  private static final double ONE_MORE = 0.1;

  /** The steps that the ranges of digital meters have (common practice), each as likely. */
  private static final double[] STEPS = {1999, 3999, 5999, 19_999, 49_999};

  /** What reads alike differs by no more. */
  private static final double ALIKE = 0.1;

  private static final int LEAST_OTHERS = 2;

  /** So much likelier than by chance a value is just a power of ten from what others read. */
  private static final double AGAINST_OTHERS = 100;

  private static final double A_HAIR = 1e-6;

  /** A range is ten times the next. */
  private static final double RANGES = 10;

  /** Sheets on which nearly every value is a thousand times too high. */
  public static Optional<WrongScale> ofSheets(
      Circuit circuit, JoinLimits limits, Comparison comparison) {
    Judge judge = new Judge(circuit, limits, JobOfReading.NONE);
    Map<Judged, Reading> rewritten = new HashMap<>();
    List<Judged> mended = new ArrayList<>();
    for (List<Judged> sheet : sheets(comparison)) {
      List<Judged> joins = sheet.stream().filter(one -> one.expected().isJoined()).toList();
      List<Judged> high = joins.stream().filter(one -> one.outcome().fails()).toList();
      // Links and contacts have so few milliohms that as ohms their digit is too coarse.
      long coarse =
          joins.stream()
              .filter(WrongScale::isUnjudgedJoin)
              .filter(one -> conforms(judge.judge(scaled(one, MILLI))))
              .count();
      // Parts that fail would be mended as well: else other rows' values stand there.
      List<Judged> failing = sheet.stream().filter(one -> one.outcome().fails()).toList();
      long good = failing.stream().filter(one -> conforms(judge.judge(scaled(one, MILLI)))).count();
      if (high.size() >= LEAST_READINGS
          && high.size() + coarse >= joins.size() * MOST_OF_THEM
          && good >= failing.size() * MOST_OF_THEM) {
        for (Judged judged : sheet) {
          Judged anew = judge.judge(scaled(judged, MILLI));
          boolean isMended = (judged.outcome().fails() || isUnjudgedJoin(judged)) && conforms(anew);
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
            new WrongScale(
                MILLI, mended, 1, OhmsRange.ANY, comparison.rewritten(circuit, limits, rewritten)));
  }

  /** Single values that are as expected with the point elsewhere, and fail by themselves alone. */
  public static List<WrongScale> ofValues(
      Circuit circuit, JoinLimits limits, Comparison comparison) {
    Judge judge = new Judge(circuit, limits, JobOfReading.NONE);
    Set<Object> shownTwice = shownTwice(circuit, comparison);
    Set<Judged> readTwice = comparison.readTwiceAlike();
    List<WrongScale> found = new ArrayList<>();
    for (List<Judged> sheet : sheets(comparison)) {
      Display display = display(sheet);
      for (Judged judged : sheet) {
        if ((mayBeMisplaced(judged) || isOfACoarseDigit(judged, display))
            && !readTwice.contains(judged)
            && !shownTwice.contains(subject(circuit, judged))) {
          misplaced(judged, display, judge).ifPresent(found::add);
        } else if (judged.outcome() == Outcome.PART_VALUE) {
          againstOthers(judged, sheet, judge).ifPresent(found::add);
        }
      }
    }
    return found;
  }

  /** A value a power of ten from what others through the same parts read alike. */
  private static Optional<WrongScale> againstOthers(
      Judged judged, List<Judged> sheet, Judge judge) {
    double[] others =
        sheet.stream()
            .filter(other -> !other.equals(judged) && other.outcome() == Outcome.PART_VALUE)
            .filter(other -> other.reading().state().equals(judged.reading().state()))
            .filter(other -> parts(other).equals(parts(judged)))
            .mapToDouble(other -> other.seen().middleOhms())
            .sorted()
            .toArray();
    if (others.length < LEAST_OTHERS || others[others.length - 1] > others[0] * (1 + ALIKE)) {
      return Optional.empty();
    }
    return Arrays.stream(MISPLACED)
        .filter(times -> isLike(judged.seen().middleOhms() / times, others))
        .mapToObj(
            times ->
                new WrongScale(
                    times,
                    List.of(judged),
                    AGAINST_OTHERS,
                    OhmsRange.ANY,
                    Comparison.inForce(List.of(judge.judge(scaled(judged, times))))))
        .findFirst();
  }

  private static boolean isLike(double ohms, double[] others) {
    return ohms > others[0] * (1 - ALIKE) && ohms < others[others.length - 1] * (1 + ALIKE);
  }

  private static List<Integer> parts(Judged judged) {
    return judged.expected().throughParts().map(Expected.ThroughParts::parts).orElse(List.of());
  }

  private static boolean mayBeMisplaced(Judged judged) {
    return judged.probing().isPair()
        && (judged.outcome() == Outcome.PART_VALUE
            || isJoinedAcrossParts(judged)
            || isLowJoin(judged)
            || ((judged.outcome() == Outcome.RESISTIVE || judged.outcome() == Outcome.OPEN)
                && judged.expected().isJoined()));
  }

  /** Kilohms written as ohms read like a short across the part. */
  private static boolean isJoinedAcrossParts(Judged judged) {
    return judged.outcome() == Outcome.UNEXPECTED_JOIN
        && judged.expected().throughParts().isPresent();
  }

  private static boolean isLowJoin(Judged judged) {
    return judged.outcome() == Outcome.CONFORMS && judged.value() == ValueVerdict.LOW;
  }

  /** Whether a join is not judged, for by its digit it may be more than its limit. */
  private static boolean isUnjudgedJoin(Judged judged) {
    return judged.outcome() == Outcome.NOT_JUDGED
        && judged.probing().isPair()
        && judged.expected().isJoined()
        && judged.seen().highOhms() > judged.limit().ohms();
  }

  /** Whether a join is not judged for its digit, and the others of its sheet have a finer one. */
  private static boolean isOfACoarseDigit(Judged judged, Display display) {
    return isUnjudgedJoin(judged)
        && display.halfDigit() > 0
        && judged
            .reading()
            .measured()
            .value()
            .filter(value -> value.halfDigitOhms() > display.halfDigit() * RANGES / 2)
            .isPresent();
  }

  /** What more than one reading shows is no slip of the pen: nets, or parts between. */
  private static Set<Object> shownTwice(Circuit circuit, Comparison comparison) {
    Set<Object> once = new HashSet<>();
    Set<Object> twice = new HashSet<>();
    for (Judged judged : comparison.failing()) {
      if (judged.reading().kind() == Reading.Kind.CONTINUITY
          && !judged.expected().isApart()
          && !once.add(subject(circuit, judged))) {
        twice.add(subject(circuit, judged));
      }
    }
    return twice;
  }

  private static Object subject(Circuit circuit, Judged judged) {
    return judged
        .expected()
        .throughParts()
        .<Object>map(Expected.ThroughParts::parts)
        .orElseGet(() -> circuit.normal().of(judged.probing().from()[0]));
  }

  /** The likeliest place of the point, where one makes the value as expected. */
  private static Optional<WrongScale> misplaced(Judged judged, Display display, Judge judge) {
    Measured.Value value = judged.reading().measured().value().orElseThrow();
    List<WrongScale> found = new ArrayList<>();
    for (double times : MISPLACED) {
      Judged anew = judge.judge(scaled(judged, times));
      if (conforms(anew)) {
        found.add(
            new WrongScale(
                times,
                List.of(judged),
                digitsSpeak(value, times, display),
                expected(anew, judged),
                Comparison.inForce(List.of(anew))));
      }
    }
    return found.stream().max(Comparator.comparingDouble(WrongScale::digits));
  }

  /**
   * What the digits of a value say of its having been misplaced. With the point where it belongs it
   * must have no more digits than the rest of the sheet, and as it stands fewer than the meter
   * would show of it: a meter shows a coarser digit only where a range has no room for a finer one.
   */
  private static double digitsSpeak(Measured.Value value, double times, Display display) {
    double usual = 2 * display.halfDigit();
    if (usual <= 0) {
      return 1;
    }
    double steps = value.ohms() / times / usual;
    if (Math.abs(steps - Math.rint(steps)) > A_HAIR) {
      return ONE_MORE;
    }
    double digit = 2 * value.halfDigitOhms();
    if (isAbout(digit, usual)) {
      return ONE_MORE;
    }
    return display.writesSo(value) ? 1 : 1 / asMeasured(value.ohms(), digit, display);
  }

  /** How likely a value that was measured so is written to such a digit, by whatever meter. */
  private static double asMeasured(double ohms, double digit, Display display) {
    double usual = 2 * display.halfDigit();
    return Arrays.stream(STEPS)
        .map(steps -> Math.max(steps, display.mostSteps()))
        .map(steps -> finest(ohms, usual, steps))
        .map(finest -> asWritten(digit, finest, display))
        .average()
        .orElse(1);
  }

  /** The digit that a meter shows of a value. */
  private static double finest(double ohms, double usual, double steps) {
    double finest = usual;
    while (ohms > steps * finest) {
      finest *= RANGES;
    }
    return finest;
  }

  private static double asWritten(double digit, double finest, Display display) {
    double left = digit / finest;
    if (left < 1 - A_HAIR) {
      return ONE_MORE;
    }
    if (left < RANGES / 2) {
      return 1;
    }
    double zero = display.keepsZeros() ? 0 : ENDS_IN_ZERO;
    return left < RANGES * RANGES / 2 ? LEAVES_ONE_OUT + zero : LEAVES_TWO_OUT + zero * zero;
  }

  /**
   * A meter's display, by a sheet.
   *
   * @param halfDigit half of the digit to which most joins are written; 0 where there is no such
   * @param mostSteps the most steps of its digit that a value has
   * @param keepsZeros whether any value is written with a zero at its end
   * @param values all values of the sheet
   */
  private record Display(
      double halfDigit, double mostSteps, boolean keepsZeros, List<Measured.Value> values) {
    /** Whether more values than this one have about its size and are written to its digit. */
    boolean writesSo(Measured.Value value) {
      long alike =
          values.stream()
              .filter(other -> isAbout(other.halfDigitOhms(), value.halfDigitOhms()))
              .filter(other -> other.ohms() < value.ohms() * OF_THE_SAME_RANGE)
              .filter(other -> value.ohms() < other.ohms() * OF_THE_SAME_RANGE)
              .count();
      return alike > 1;
    }
  }

  private static boolean endsInZero(Measured.Value value) {
    return value.halfDigitOhms() > 0
        && Math.rint(value.ohms() / (2 * value.halfDigitOhms())) % RANGES == 0;
  }

  private static Display display(List<Judged> sheet) {
    double most =
        sheet.stream()
            .filter(judged -> judged.outcome().passes())
            .flatMap(judged -> judged.reading().measured().value().stream())
            .mapToDouble(value -> value.ohms() / (2 * value.halfDigitOhms()))
            .max()
            .orElse(0);
    List<Measured.Value> values =
        sheet.stream().flatMap(judged -> judged.reading().measured().value().stream()).toList();
    double half = usualHalfDigit(sheet);
    boolean keepsZeros =
        values.stream().anyMatch(one -> isAbout(one.halfDigitOhms(), half) && endsInZero(one));
    return new Display(half, most, keepsZeros, values);
  }

  /** What a value should be, by the parts between or by the wires. */
  private static OhmsRange expected(Judged anew, Judged judged) {
    OhmsRange expected =
        anew.expected()
            .throughParts()
            .map(parts -> new OhmsRange(parts.lowOhms(), parts.highOhms()))
            .orElse(judged.limit().expected());
    return expected.isKnown() && expected.lowOhms() > 0 ? expected : OhmsRange.ANY;
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
