package dev.ringout.meter;

import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * How a serial line is set: {@code 9600 8n1}.
 *
 * @param baud bits a second
 * @param dtr whether the line "terminal ready" is on; many optical links are fed by it
 * @param rts whether the line "request to send" is on
 */
public record LineSettings(
    int baud, int dataBits, Parity parity, int stopBits, boolean dtr, boolean rts) {
  private static final Pattern WRITTEN = Pattern.compile("(\\d{2,7})\\s+([78])([neo])([12])");

  /** The bit that makes the others even or odd. */
  public enum Parity {
    NONE,
    EVEN,
    ODD
  }

  /** A text such as {@code 2400 7o1}; absent where it is none. DTR is on and RTS off. */
  public static Optional<LineSettings> of(String text) {
    Matcher line = WRITTEN.matcher(text.strip().toLowerCase(Locale.ROOT));
    if (!line.matches()) {
      return Optional.empty();
    }
    Parity parity =
        switch (line.group(3)) {
          case "e" -> Parity.EVEN;
          case "o" -> Parity.ODD;
          default -> Parity.NONE;
        };
    return Optional.of(
        new LineSettings(
            Integer.parseInt(line.group(1)),
            Integer.parseInt(line.group(2)),
            parity,
            Integer.parseInt(line.group(4)),
            true,
            false));
  }

  /** The same with the two lines that are not data. */
  public LineSettings with(boolean otherDtr, boolean otherRts) {
    return new LineSettings(baud, dataBits, parity, stopBits, otherDtr, otherRts);
  }

  /** As written. */
  public String text() {
    char letter = parity.name().toLowerCase(Locale.ROOT).charAt(0);
    return baud + " " + dataBits + letter + stopBits;
  }
}
