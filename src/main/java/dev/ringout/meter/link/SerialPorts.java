package dev.ringout.meter.link;

import com.fazecast.jSerialComm.SerialPort;
import dev.ringout.meter.Failure;
import dev.ringout.meter.MeterTrouble;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/** The serial ports of this machine. */
public final class SerialPorts {
  private SerialPorts() {}

  /**
   * One port.
   *
   * @param path by which it is opened
   * @param about as the system describes it
   */
  public record Port(String path, String about) {}

  /**
   * All of them.
   *
   * @throws MeterTrouble where the library's part for this system can't be loaded
   */
  public static List<Port> all() throws MeterTrouble {
    try {
      return Stream.of(SerialPort.getCommPorts())
          .map(port -> new Port(port.getSystemPortPath(), port.getPortDescription()))
          .sorted(Comparator.comparing(Port::path))
          .toList();
    } catch (LinkageError e) {
      throw new MeterTrouble(noSerial(), List.of());
    }
  }

  /** The library tells of every processor that it tried; where it unpacked is what helps. */
  static Failure noSerial() {
    return new Failure.NoSerial(
        "the library's part for this system can't be loaded from "
            + System.getProperty("java.io.tmpdir"));
  }
}
