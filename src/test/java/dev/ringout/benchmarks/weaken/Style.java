package dev.ringout.benchmarks.weaken;

import java.util.List;
import java.util.Random;

/**
 * How a mechanic fills a sheet.
 *
 * @param twoColumns item and pin in a cell each
 * @param times every row has its time
 * @param reverse both ways of a diode in one row
 * @param units where they stand
 * @param jobVolts the volts stand on the job sheet, for all rows
 * @param overRange insulation is beyond the tester's range, mostly
 * @param ownTester the insulation tester has rows of its own on the job sheet
 * @param calibration the day on which the instruments are due is stated
 */
record Style(
    boolean twoColumns,
    boolean times,
    boolean reverse,
    Units units,
    boolean jobVolts,
    boolean overRange,
    boolean ownTester,
    boolean calibration,
    String serialNumber) {

  enum Units {
    COLUMN,
    HEADING,
    CELL,
    NOWHERE
  }

  static Style of(Random random, String serialNumber) {
    return new Style(
        random.nextBoolean(),
        random.nextBoolean(),
        random.nextBoolean(),
        List.of(Units.values()).get(random.nextInt(4)),
        random.nextInt(4) == 0,
        random.nextBoolean(),
        random.nextBoolean(),
        random.nextInt(5) > 0,
        serialNumber);
  }
}
