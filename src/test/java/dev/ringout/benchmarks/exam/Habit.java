package dev.ringout.benchmarks.exam;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;

/**
 * How a hand takes and writes its readings.
 *
 * @param otherSideFirst whether the probes are now and then the other way round
 * @param otherOrder whether the rows stand in no order
 * @param repeats whether some points are read again later
 * @param blanks whether some rows that are good anyhow stay blank
 * @param over how a meter's overload is written
 * @param milliohms whether the column is in mΩ
 * @param notes whether something is written beside some rows
 */
record Habit(
    boolean otherSideFirst,
    boolean otherOrder,
    boolean repeats,
    boolean blanks,
    String over,
    boolean milliohms,
    boolean notes) {
  static final Habit PLAIN = new Habit(false, false, false, false, Meter.OVER, false, false);

  private static final List<String> OVERS =
      List.of("OL", "O.L", "OVLD", "∞", "OPEN", "inf", "OVER RANGE", ">40 MΩ");
  private static final List<String> NOTES =
      List.of("looks good", "tight", "2nd probe on the back", "ask Kim", "new lug");

  /** Nobody writes milliohms from a meter that shows none. */
  static Habit of(Meter meter, Random random) {
    return new Habit(
        random.nextBoolean(),
        random.nextInt(3) == 0,
        random.nextInt(3) == 0,
        random.nextInt(3) == 0,
        OVERS.get(random.nextInt(OVERS.size())),
        random.nextInt(4) == 0 && meter.step() <= 0.001,
        random.nextInt(3) == 0);
  }

  /** The rows in the order and with the sides in which they are read. */
  List<Row> ordered(Box box, List<Row> rows, Random random) {
    List<Row> ordered = new ArrayList<>();
    for (Row row : rows) {
      boolean turns =
          otherSideFirst
              && row.minus().length == 1
              && row.plus().length == 1
              && !isAtDiode(box, row)
              && random.nextInt(4) == 0;
      ordered.add(turns ? row.turned() : row);
      if (repeats && !row.insulation() && random.nextInt(15) == 0) {
        ordered.add(row);
      }
    }
    if (otherOrder) {
      Collections.shuffle(ordered, random);
    }
    return ordered;
  }

  private static boolean isAtDiode(Box box, Row row) {
    return box.parts.stream()
        .filter(part -> part.sort() == Box.PartSort.DIODE)
        .anyMatch(
            part ->
                (part.a() == row.plus()[0] && part.k() == row.minus()[0])
                    || (part.k() == row.plus()[0] && part.a() == row.minus()[0]));
  }

  /** The rows with what is left out: nothing of a unit that has a fault. */
  List<Row> written(List<Row> rows, List<Edit> planted, Random random) {
    if (!blanks || !planted.isEmpty()) {
      return rows;
    }
    return rows.stream().map(row -> random.nextInt(12) == 0 ? row.showing("", "") : row).toList();
  }

  String unit() {
    return milliohms ? "mΩ" : "Ω";
  }

  /** A reading as it is written in that column. */
  String asWritten(String reading) {
    if (reading.equals(Meter.OVER)) {
      return over;
    }
    boolean plain =
        !reading.isEmpty() && reading.chars().allMatch(c -> c == '.' || (c >= '0' && c <= '9'));
    return milliohms && plain
        ? new BigDecimal(reading).scaleByPowerOfTen(3).toPlainString()
        : reading;
  }

  String note(int step) {
    return notes && step % 9 == 0 ? NOTES.get(step / 9 % NOTES.size()) : "";
  }
}
