package dev.ringout.benchmarks.weaken;

import java.util.Optional;
import java.util.Random;

/** One way to take something from a set of readings, or to make it worth less. */
enum Weakening {
  DROP_ROW,
  DROP_HALF_OF_A_SHEET,
  DROP_COLUMN,
  BLANK_CELL,
  LOWER_VOLTS,
  LOW_INSULATION,
  HIGH_JOIN,
  PART_READS_LOW,
  WORD,
  WORDS_ALONE,
  VALUE_OF_ANOTHER_UNIT,
  STALE_ROW_LAST,
  DROP_SHEET,
  DROP_JOB_SHEET,
  OTHER_SERIAL_BESIDE,
  OTHER_SERIAL_INSTEAD,
  OTHER_LIST_INSTEAD,
  LOWER_RANGE,
  SERIAL_NUMBER,
  REVISION,
  DATE,
  CALIBRATION,
  DROP_JOB_ROW,
  INSPECTOR,
  TOUCHED_AFTER,
  OPENED_AFTER,
  REWORK_AND_RETEST,
  REWORK_IN_ONE_FILE;

  /** Changes a case; says what it did, or nothing where it does not apply. */
  Optional<String> apply(Case one, long seed) {
    Random random = new Random(seed);
    return switch (this) {
      case DROP_ROW -> WeakRows.dropRow(one, random);
      case DROP_HALF_OF_A_SHEET -> WeakRows.dropHalf(one, random);
      case DROP_COLUMN -> WeakRows.dropColumn(one, random);
      case BLANK_CELL -> WeakRows.blankCell(one, random);
      case LOWER_VOLTS -> WeakRows.lowerVolts(one, random);
      case LOW_INSULATION -> WeakRows.lowInsulation(one, random);
      case HIGH_JOIN -> WeakRows.highJoin(one, random);
      case PART_READS_LOW -> WeakRows.partReadsLow(one, random);
      case WORD -> WeakRows.word(one, random);
      case WORDS_ALONE -> WeakRows.wordsAlone(one, random);
      case VALUE_OF_ANOTHER_UNIT -> WeakRows.valueOfAnother(one, random);
      case STALE_ROW_LAST -> WeakRows.staleRowLast(one, random);
      case DROP_SHEET -> WeakFiles.dropSheet(one, random);
      case DROP_JOB_SHEET -> WeakFiles.dropJob(one, random);
      case OTHER_SERIAL_BESIDE -> WeakFiles.otherSerialBeside(one, random);
      case OTHER_SERIAL_INSTEAD -> WeakFiles.otherSerialInstead(one, random);
      case OTHER_LIST_INSTEAD -> WeakFiles.otherListInstead(one, random);
      case LOWER_RANGE -> WeakJob.lowerRange(one, random);
      case SERIAL_NUMBER -> WeakJob.serialNumber(one, random);
      case REVISION -> WeakJob.revision(one, random);
      case DATE -> WeakJob.date(one, random);
      case CALIBRATION -> WeakJob.calibration(one, random);
      case DROP_JOB_ROW -> WeakJob.dropRow(one, random);
      case INSPECTOR -> WeakJob.inspector(one, random);
      case TOUCHED_AFTER -> WeakByHand.touchedAfter(one, random);
      case OPENED_AFTER -> WeakByHand.openedAfter(one, random);
      case REWORK_AND_RETEST -> WeakByHand.reworkAndRetest(one, random);
      case REWORK_IN_ONE_FILE -> WeakByHand.reworkInOneFile(one, random);
    };
  }
}
