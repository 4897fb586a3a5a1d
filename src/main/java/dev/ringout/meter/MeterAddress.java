package dev.ringout.meter;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Where a meter is, as a resource string of VPP-4.3 ({@code TCPIP::192.0.2.7::5025::SOCKET}) or in
 * short ({@code 192.0.2.7:5025}, {@code /dev/ttyUSB0}, {@code COM3}).
 */
public sealed interface MeterAddress {

  /** What is made of it, by its kind. */
  <T> T match(Cases<T> cases);

  /** As a resource string, or the word that stands for it. */
  String text();

  /** Plain commands over TCP. */
  record Socket(String host, int port) implements MeterAddress {
    @Override
    public <T> T match(Cases<T> cases) {
      return cases.socket(this);
    }

    @Override
    public String text() {
      return "TCPIP::" + bracketed(host) + "::" + port + "::SOCKET";
    }
  }

  /**
   * HiSLIP over TCP.
   *
   * @param device the name of the device behind the server, as {@code hislip0}
   */
  record Hislip(String host, String device, int port) implements MeterAddress {
    /** The port that IVI-6.1 gives. */
    public static final int USUAL_PORT = 4880;

    @Override
    public <T> T match(Cases<T> cases) {
      return cases.hislip(this);
    }

    @Override
    public String text() {
      return "TCPIP::"
          + bracketed(host)
          + "::"
          + device
          + (port == USUAL_PORT ? "" : "," + port)
          + "::INSTR";
    }
  }

  /**
   * A serial port.
   *
   * @param port its name or path, as the system has it
   */
  record Serial(String port) implements MeterAddress {
    @Override
    public <T> T match(Cases<T> cases) {
      return cases.serial(this);
    }

    @Override
    public String text() {
      return "ASRL" + port + "::INSTR";
    }
  }

  /** No link: what it shows is typed. */
  record Typed() implements MeterAddress {
    @Override
    public <T> T match(Cases<T> cases) {
      return cases.typed(this);
    }

    @Override
    public String text() {
      return "none";
    }
  }

  /** The practice meter of this program. */
  record Practice() implements MeterAddress {
    @Override
    public <T> T match(Cases<T> cases) {
      return cases.practice(this);
    }

    @Override
    public String text() {
      return "practice";
    }
  }

  /** One answer for each kind. */
  interface Cases<T> {
    /** See {@link Socket}. */
    T socket(Socket address);

    /** See {@link Hislip}. */
    T hislip(Hislip address);

    /** See {@link Serial}. */
    T serial(Serial address);

    /** See {@link Typed}. */
    T typed(Typed address);

    /** See {@link Practice}. */
    T practice(Practice address);
  }

  /**
   * The address that a text is.
   *
   * @throws MeterTrouble where it is none
   */
  static MeterAddress of(String text) throws MeterTrouble {
    return Forms.of(text.strip())
        .orElseThrow(() -> new MeterTrouble(new Failure.NoAddress(text), List.of()));
  }

  private static String bracketed(String host) {
    return host.contains(":") ? "[" + host + "]" : host;
  }

  /** How addresses are written. */
  final class Forms {
    private static final String HOST = "(\\[[0-9A-Fa-f:.%]+\\]|[A-Za-z0-9._-]+)";
    private static final Pattern SOCKET =
        Pattern.compile("TCPIP\\d*::" + HOST + "::(\\d{1,5})::SOCKET", Pattern.CASE_INSENSITIVE);
    private static final Pattern HISLIP =
        Pattern.compile(
            "TCPIP\\d*::" + HOST + "::(hislip\\d+)(?:,(\\d{1,5}))?(?:::INSTR)?",
            Pattern.CASE_INSENSITIVE);
    private static final Pattern SERIAL =
        Pattern.compile("ASRL(.+?)(?:::INSTR)?", Pattern.CASE_INSENSITIVE);
    private static final Pattern SHORT = Pattern.compile(HOST + ":(\\d{1,5})");
    private static final Pattern PORT = Pattern.compile("/.+|COM\\d+", Pattern.CASE_INSENSITIVE);

    private Forms() {}

    static Optional<MeterAddress> of(String text) {
      String word = text.toLowerCase(Locale.ROOT);
      if (word.equals("none")) {
        return Optional.of(new Typed());
      }
      if (word.equals("practice")) {
        return Optional.of(new Practice());
      }
      Matcher socket = SOCKET.matcher(text);
      if (socket.matches()) {
        return port(socket.group(2)).map(port -> new Socket(bare(socket.group(1)), port));
      }
      Matcher hislip = HISLIP.matcher(text);
      if (hislip.matches()) {
        Optional<Integer> given =
            hislip.group(3) == null ? Optional.of(Hislip.USUAL_PORT) : port(hislip.group(3));
        return given.map(
            port ->
                new Hislip(bare(hislip.group(1)), hislip.group(2).toLowerCase(Locale.ROOT), port));
      }
      Matcher serial = SERIAL.matcher(text);
      if (serial.matches()) {
        return Optional.of(new Serial(serialName(serial.group(1))));
      }
      Matcher brief = SHORT.matcher(text);
      if (brief.matches()) {
        return port(brief.group(2)).map(port -> new Socket(bare(brief.group(1)), port));
      }
      return PORT.matcher(text).matches() ? Optional.of(new Serial(text)) : Optional.empty();
    }

    /** VPP-4.3 numbers the ports of a system whose ports have names: 3 is COM3 there. */
    private static String serialName(String name) {
      return name.matches("\\d+") ? "COM" + name : name;
    }

    private static String bare(String host) {
      return host.startsWith("[") ? host.substring(1, host.length() - 1) : host;
    }

    private static Optional<Integer> port(String digits) {
      int port = Integer.parseInt(digits);
      return port >= 1 && port <= 65535 ? Optional.of(port) : Optional.empty();
    }
  }
}
