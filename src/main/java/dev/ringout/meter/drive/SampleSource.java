package dev.ringout.meter.drive;

import dev.ringout.meter.HowEntered;
import dev.ringout.meter.MeterIdentity;
import dev.ringout.meter.MeterTrouble;
import dev.ringout.meter.Sample;

/** Values of one meter, one after the other. One thread at a time. */
interface SampleSource {
  /**
   * Opens the link and makes the meter ready.
   *
   * @throws MeterTrouble where it can't be opened, or is no meter
   */
  void open() throws MeterTrouble;

  /** Until when the meter is asked anything: what was asked by then may still be answered. */
  default void endAt(long millis) {}

  /** Which meter it is. */
  MeterIdentity identity();

  /** What was said before now is of the points before. */
  void forget() throws MeterTrouble;

  /**
   * The next value.
   *
   * @throws MeterTrouble where none comes in time, or it can't be believed
   */
  Sample next(long millis) throws MeterTrouble;

  /**
   * Looks whether the meter itself has something against its last value.
   *
   * @throws MeterTrouble where it has
   */
  void confirm() throws MeterTrouble;

  /**
   * Brings the link back after a failure, and makes sure that the same meter answers.
   *
   * @throws MeterTrouble where it does not come back now
   */
  void recover() throws MeterTrouble;

  /** Whether one line is a whole reading, sent by the meter's own key. */
  boolean isByItsKey();

  /** How a value comes in that is taken so. */
  default HowEntered entered(boolean byKey) {
    if (isByItsKey()) {
      return HowEntered.METER_KEY;
    }
    return byKey ? HowEntered.KEY : HowEntered.SETTLED;
  }

  void close();
}
