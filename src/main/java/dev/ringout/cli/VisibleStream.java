package dev.ringout.cli;

import dev.ringout.units.Text;
import java.io.ByteArrayOutputStream;
import java.io.FilterOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;

/**
 * Messages repeat what the user's files, names and words say; none of it may steer the terminal. A
 * line is passed on once it is whole, as {@link Text#visible} shows it.
 */
final class VisibleStream extends FilterOutputStream {
  private final ByteArrayOutputStream line = new ByteArrayOutputStream();

  VisibleStream(OutputStream out) {
    super(out);
  }

  @Override
  public void write(int b) throws IOException {
    line.write(b);
    if (b == '\n') {
      passOn();
    }
  }

  @Override
  public void write(byte[] bytes, int offset, int length) throws IOException {
    for (int i = offset; i < offset + length; i++) {
      write(bytes[i]);
    }
  }

  private void passOn() throws IOException {
    String text = Text.visible(line.toString(StandardCharsets.UTF_8));
    out.write(text.getBytes(StandardCharsets.UTF_8));
    line.reset();
  }

  /** What was said last, line or not; the stream beneath stays open, it is the process's own. */
  @Override
  public void close() throws IOException {
    passOn();
    out.flush();
  }
}
