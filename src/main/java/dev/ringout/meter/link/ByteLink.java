package dev.ringout.meter.link;

import java.io.IOException;

/** Bytes to and from a meter. */
interface ByteLink extends AutoCloseable {
  /** No read waits longer before it looks whether it is stopped. */
  int SLICE_MILLIS = 100;

  void write(byte[] bytes) throws IOException;

  /**
   * Reads what there is, after a short wait.
   *
   * @return how much; 0 where nothing came, -1 where nothing more will
   */
  int read(byte[] into, int waitMillis) throws IOException;

  @Override
  void close();
}
