package dev.ringout.meter.link;

import dev.ringout.meter.MeterTrouble;

/** Lines to and from a meter. One thread at a time. */
public interface Channel extends AutoCloseable {
  /**
   * Sends a line.
   *
   * @throws MeterTrouble where the link is gone
   */
  void send(String line) throws MeterTrouble;

  /**
   * The next line that is not empty.
   *
   * @throws MeterTrouble where none ends in time, it is too long, or the link is gone
   */
  String receive(long millis) throws MeterTrouble;

  /**
   * Drops what has come and was not read, which answers nothing that will be asked.
   *
   * @return it, each line with its end; or empty
   */
  String dropPending() throws MeterTrouble;

  /**
   * Makes the meter forget what it was asked, where the link can.
   *
   * @return whether it can, and did
   */
  boolean clear() throws MeterTrouble;

  @Override
  void close();
}
