package dev.ringout.benchmarks.exam;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.stream.IntStream;

/** What a hand does wrong on the sheet. */
final class Hand {
  /** The slip of a hand. */
  enum Slip {
    NONE,
    MILLIOHMS_FOR_OHMS,
    ROW_SKIPPED,
    ROWS_EXCHANGED,
    DECIMAL
  }

  /**
   * A sheet with a slip on it.
   *
   * @param rows as written
   * @param cells which rows are not as they were read
   * @param lost of which rows the value stands nowhere
   */
  record Spoilt(List<Row> rows, Set<Integer> cells, Set<Integer> lost) {
    Spoilt(List<Row> rows, Set<Integer> cells) {
      this(rows, cells, Set.of());
    }

    /** The rows as they were read of which the value stands somewhere. */
    List<Row> left(List<Row> read) {
      return IntStream.range(0, read.size())
          .filter(at -> !lost.contains(at))
          .mapToObj(read::get)
          .toList();
    }
  }

  private final List<Row> rows;
  private final Random random;

  private Hand(List<Row> rows, Random random) {
    this.rows = rows;
    this.random = random;
  }

  /** The sheet as that hand wrote it, or nothing where no such slip would show. */
  static Optional<Spoilt> writes(Slip slip, List<Row> rows, Random random) {
    Hand hand = new Hand(rows, random);
    return switch (slip) {
      case NONE -> Optional.of(new Spoilt(rows, Set.of()));
      case MILLIOHMS_FOR_OHMS -> hand.thousandfold();
      case ROW_SKIPPED -> hand.skipped();
      case ROWS_EXCHANGED -> hand.exchanged();
      case DECIMAL -> hand.decimal();
    };
  }

  private Optional<Spoilt> thousandfold() {
    List<Row> written = new ArrayList<>(rows);
    Set<Integer> cells = new LinkedHashSet<>();
    for (int at = 0; at < rows.size(); at++) {
      Row row = rows.get(at);
      if (!row.insulation() && isNumber(row.reading())) {
        written.set(
            at,
            row.showing(
                times(row.reading(), 3),
                isNumber(row.reverse()) ? times(row.reverse(), 3) : row.reverse()));
        cells.add(at);
      }
    }
    return Optional.of(new Spoilt(written, cells));
  }

  private static boolean isNumber(String reading) {
    return !reading.isEmpty() && reading.chars().allMatch(c -> c == '.' || (c >= '0' && c <= '9'));
  }

  private static String times(String reading, int power) {
    return new BigDecimal(reading).scaleByPowerOfTen(power).toPlainString();
  }

  /** How a value is heard: open, joined, or so many ohms. */
  private static double heard(String reading) {
    if (isNumber(reading)) {
      double ohms = Double.parseDouble(reading);
      return ohms < 3 ? 0 : ohms;
    }
    return 1e9;
  }

  private static boolean differ(String one, String other) {
    double a = heard(one);
    double b = heard(other);
    return Math.abs(a - b) > 0.4 * Math.max(a, b);
  }

  private int continuity() {
    return (int) rows.stream().filter(row -> !row.insulation()).count();
  }

  /** From a row on, for some rows, each value stands a row lower. */
  private Optional<Spoilt> skipped() {
    int count = continuity();
    for (int tries = 0; tries < 30; tries++) {
      int first = random.nextInt(count);
      int last = Math.min(count - 1, first + 6 + random.nextInt(30));
      List<Row> written = new ArrayList<>(rows);
      Set<Integer> cells = new LinkedHashSet<>();
      int shown = 0;
      for (int at = first; at <= last; at++) {
        String value = at == first ? "" : rows.get(at - 1).reading();
        String turned = at == first ? "" : rows.get(at - 1).reverse();
        written.set(at, rows.get(at).showing(value, turned));
        cells.add(at);
        shown += at > first && differ(value, rows.get(at).reading()) ? 1 : 0;
      }
      if (shown >= 3) {
        return Optional.of(new Spoilt(written, cells, Set.of(last)));
      }
    }
    return Optional.empty();
  }

  private Optional<Spoilt> exchanged() {
    int count = continuity();
    for (int tries = 0; tries < 200; tries++) {
      int one = random.nextInt(count);
      int other = one + 1 + random.nextInt(2);
      if (other < count && differ(rows.get(one).reading(), rows.get(other).reading())) {
        List<Row> written = new ArrayList<>(rows);
        written.set(one, rows.get(one).showing(rows.get(other).reading()));
        written.set(other, rows.get(other).showing(rows.get(one).reading()));
        return Optional.of(new Spoilt(written, Set.of(one, other)));
      }
    }
    return Optional.empty();
  }

  private Optional<Spoilt> decimal() {
    int count = continuity();
    for (int tries = 0; tries < 100; tries++) {
      int at = random.nextInt(count);
      String reading = rows.get(at).reading();
      int power = List.of(1, 2, 3, 3).get(random.nextInt(4));
      if (isNumber(reading)
          && new BigDecimal(reading).signum() > 0
          && Double.parseDouble(reading) * Math.pow(10, power) > 2) {
        List<Row> written = new ArrayList<>(rows);
        written.set(at, rows.get(at).showing(times(reading, power)));
        return Optional.of(new Spoilt(written, Set.of(at)));
      }
    }
    return Optional.empty();
  }
}
