package dev.ringout.harness;

import dev.ringout.source.Place;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;

/**
 * A part between two points. Parts do not join nets.
 *
 * @param ohms its listed resistance; absent where the list gives none
 * @param tolerancePercent on its resistance; absent: the harness's own tolerance
 */
public record Part(
    String ref,
    Point from,
    Point to,
    Kind kind,
    OptionalDouble ohms,
    OptionalDouble tolerancePercent,
    OptionalDouble maxTestVolts,
    String note,
    Place place) {

  /** What the part is. */
  public enum Kind {
    RESISTOR,
    WINDING,
    LAMP,
    DIODE,
    CAPACITOR,
    SUPPRESSOR,
    OTHER;

    /** The word used in every output. */
    public String word() {
      return this == OTHER ? "part" : name().toLowerCase(Locale.ROOT);
    }

    /**
     * Whether no steady current flows through it at a meter's volts: a capacitor once it is
     * charged, a suppressor below the volts at which it clamps (common practice, no source).
     */
    public boolean isOpenToDirectCurrent() {
      return this == CAPACITOR || this == SUPPRESSOR;
    }

    /**
     * Whether it is no good where it reads open, whatever its ohms (common practice, no source).
     */
    public boolean alwaysConducts() {
      return this == WINDING || this == LAMP;
    }

    /** Whether an ohmmeter reads the same with its leads reversed. */
    public boolean readsTheSameReversed() {
      return this != DIODE && this != SUPPRESSOR;
    }
  }

  /**
   * The point into which a diode's current flows: by the names of its pins ({@code A} and {@code
   * K}, {@code +} and {@code -}), else the first listed.
   */
  public Point anode() {
    return isCathode(from.pin()) || isAnode(to.pin()) ? to : from;
  }

  /** The point out of which a diode's current flows. */
  public Point cathode() {
    return anode().equals(from) ? to : from;
  }

  private static boolean isAnode(String pin) {
    return List.of("A", "+", "ANODE").contains(pin.toUpperCase(Locale.ROOT));
  }

  private static boolean isCathode(String pin) {
    return List.of("K", "C", "-", "−", "CATHODE").contains(pin.toUpperCase(Locale.ROOT));
  }

  /** The part as a mechanic says it: {@code lamp DS1}. */
  public String label() {
    return kind.word() + " " + ref;
  }
}
