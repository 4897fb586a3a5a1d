package dev.ringout.meter.link;

import com.fazecast.jSerialComm.SerialPort;
import com.fazecast.jSerialComm.SerialPortInvalidPortException;
import dev.ringout.meter.Failure;
import dev.ringout.meter.LineSettings;
import dev.ringout.meter.MeterTrouble;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeoutException;

/** A serial port, for this program alone while it is open. */
final class SerialLink implements ByteLink {
  /** A port of a radio link may take its time; one that hangs is given up. */
  private static final long OPEN_MILLIS = 5000;

  private static final int SHORT_MILLIS = 5;

  private final SerialPort port;

  private SerialLink(SerialPort port) {
    this.port = port;
  }

  static SerialLink open(String name, LineSettings line, String shown, Transcript transcript)
      throws MeterTrouble {
    try {
      return Bounded.call(
          () -> opened(name, line, shown, transcript), OPEN_MILLIS, SerialLink::close);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw transcript.trouble(new Failure.Interrupted());
    } catch (TimeoutException e) {
      throw transcript.trouble(
          new Failure.NotFound(shown, "it did not open in " + OPEN_MILLIS + " ms"));
    } catch (ExecutionException e) {
      if (e.getCause() instanceof MeterTrouble trouble) {
        throw trouble;
      }
      throw transcript.trouble(
          e.getCause() instanceof SerialPortInvalidPortException
              ? new Failure.NotFound(shown, "there is no such port")
              : SerialPorts.noSerial());
    }
  }

  private static SerialLink opened(
      String name, LineSettings line, String shown, Transcript transcript) throws MeterTrouble {
    SerialPort port = SerialPort.getCommPort(name);
    port.setComPortParameters(line.baud(), line.dataBits(), stopBits(line), parity(line));
    port.setFlowControl(SerialPort.FLOW_CONTROL_DISABLED);
    port.setComPortTimeouts(SerialPort.TIMEOUT_READ_SEMI_BLOCKING, SLICE_MILLIS, 0);
    // Before it is opened, so that an optical link is fed from its first moment.
    setLines(port, line);
    if (!port.openPort(0)) {
      boolean isThere = Files.exists(Path.of(port.getSystemPortPath()));
      throw transcript.trouble(SystemErrors.failure(shown, port.getLastErrorCode(), isThere));
    }
    setLines(port, line);
    return new SerialLink(port);
  }

  private static void setLines(SerialPort port, LineSettings line) {
    boolean ignored = line.dtr() ? port.setDTR() : port.clearDTR();
    ignored |= line.rts() ? port.setRTS() : port.clearRTS();
    // A pseudo-terminal has no such lines, and is none the worse for it.
  }

  private static int parity(LineSettings line) {
    return switch (line.parity()) {
      case NONE -> SerialPort.NO_PARITY;
      case EVEN -> SerialPort.EVEN_PARITY;
      case ODD -> SerialPort.ODD_PARITY;
    };
  }

  private static int stopBits(LineSettings line) {
    return line.stopBits() == 2 ? SerialPort.TWO_STOP_BITS : SerialPort.ONE_STOP_BIT;
  }

  @Override
  public void write(byte[] bytes) throws IOException {
    if (port.writeBytes(bytes, bytes.length) != bytes.length) {
      throw new IOException("not written");
    }
  }

  @Override
  public int read(byte[] into, int waitMillis) throws IOException {
    // The port's own wait is set once: to set it anew each time would cost a call of the system.
    if (waitMillis < SLICE_MILLIS) {
      int available = port.bytesAvailable();
      if (available <= 0) {
        pause(waitMillis);
        return available;
      }
    }
    return port.readBytes(into, into.length);
  }

  private static void pause(int millis) {
    try {
      Thread.sleep(Math.min(millis, SHORT_MILLIS));
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  @Override
  public void close() {
    port.closePort();
  }
}
