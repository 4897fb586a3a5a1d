package dev.ringout.imports.list;

import java.util.Arrays;
import java.util.Optional;

/**
 * The units of numbers that a list gives without one, neither in the cell nor in the heading.
 *
 * @param length of lengths
 * @param gauge of gauges
 */
public record Units(Optional<OfLength> length, Optional<OfGauge> gauge) {
  /** Nothing said. */
  public static final Units UNSAID = new Units(Optional.empty(), Optional.empty());

  /** Units of length. */
  public enum OfLength {
    MILLIMETRE("mm"),
    CENTIMETRE("cm"),
    METRE("m"),
    INCH("in"),
    FOOT("ft");

    private final String word;

    OfLength(String word) {
      this.word = word;
    }

    /** As lists and the command line write it. */
    public String word() {
      return word;
    }

    /** A unit by its word. */
    public static Optional<OfLength> of(String word) {
      return Arrays.stream(values()).filter(unit -> unit.word.equalsIgnoreCase(word)).findFirst();
    }
  }

  /** Units of gauge. */
  public enum OfGauge {
    AWG("AWG"),
    SQUARE_MILLIMETRE("mm2");

    private final String word;

    OfGauge(String word) {
      this.word = word;
    }

    /** As lists and the command line write it. */
    public String word() {
      return word;
    }

    /** A unit by its word. */
    public static Optional<OfGauge> of(String word) {
      String plain = word.replace('²', '2');
      return Arrays.stream(values()).filter(unit -> unit.word.equalsIgnoreCase(plain)).findFirst();
    }
  }
}
