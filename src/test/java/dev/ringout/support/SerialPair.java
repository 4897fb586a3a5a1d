package dev.ringout.support;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;

/**
 * Two pseudo-terminals with a line between, made by {@code socat}: a meter's end and a reader's.
 */
public final class SerialPair implements AutoCloseable {
  private final Path reader;
  private final Path meter;
  private Process socat;

  /** Makes them in a folder. */
  public SerialPair(Path folder) throws IOException, InterruptedException {
    this.reader = folder.resolve("reader");
    this.meter = folder.resolve("meter");
    this.socat = start();
  }

  /** Whether the program that makes them is there. */
  public static boolean isThere() {
    return Installed.isThere("socat", "-V");
  }

  private Process start() throws IOException, InterruptedException {
    Process made =
        new ProcessBuilder("socat", "PTY,raw,echo=0,link=" + reader, "PTY,raw,echo=0,link=" + meter)
            .redirectErrorStream(true)
            .redirectOutput(ProcessBuilder.Redirect.DISCARD)
            .start();
    for (int i = 0; i < 200 && !(Files.exists(reader) && Files.exists(meter)); i++) {
      Thread.sleep(10);
    }
    return made;
  }

  /** The reader's end. */
  public String address() {
    return reader.toString();
  }

  /** Sends from the meter's end. */
  public void send(String text) throws IOException {
    try (OutputStream out = Files.newOutputStream(meter)) {
      out.write(text.getBytes(java.nio.charset.StandardCharsets.ISO_8859_1));
    }
  }

  /** Sends a line again and again, until it is interrupted or the pair is gone. */
  public Thread sendAlways(int periodMillis, java.util.function.Supplier<String> line) {
    Thread thread =
        new Thread(
            () -> {
              try (OutputStream out = Files.newOutputStream(meter)) {
                while (true) {
                  out.write(line.get().getBytes(java.nio.charset.StandardCharsets.ISO_8859_1));
                  Thread.sleep(periodMillis);
                }
              } catch (IOException e) {
                // The cable is pulled.
              } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
              }
            },
            "talking-meter");
    thread.setDaemon(true);
    thread.start();
    return thread;
  }

  /** The meter's end, to be read. */
  public InputStream toMeter() throws IOException {
    return Files.newInputStream(meter);
  }

  /** Pulls the cable: both ends vanish. */
  public void pull() throws InterruptedException {
    socat.destroy();
    if (!socat.waitFor(5, TimeUnit.SECONDS)) {
      socat.destroyForcibly().waitFor();
    }
  }

  /** Puts it in again, at the same place. */
  public void plugIn() throws IOException, InterruptedException {
    Files.deleteIfExists(reader);
    Files.deleteIfExists(meter);
    socat = start();
  }

  @Override
  public void close() throws IOException {
    socat.destroyForcibly().onExit().join();
    Files.deleteIfExists(reader);
    Files.deleteIfExists(meter);
  }
}
