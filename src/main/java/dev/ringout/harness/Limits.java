package dev.ringout.harness;

import dev.ringout.units.Length;
import java.util.OptionalDouble;

/**
 * What counts as joined, as apart and as good insulation.
 *
 * @param closedMaxOhms the highest reading that still counts as joined; absent: computed
 * @param fixedClosedMaxOhms used where nothing can be computed
 * @param openMinOhms the lowest continuity reading that counts as not joined
 * @param contactOhms allowance for one crimp and mated contact
 * @param switchContactOhms allowance for one closed switch contact
 * @param meterOhms lead resistance that is still in the readings
 * @param tolerancePercent on the computed resistance of a path
 * @param celsius temperature of the wire when measured
 * @param insulationMinOhms the lowest insulation reading that passes
 * @param insulationVolts the insulation test voltage, direct current
 * @param retermination left over at each end of a wire, so that it may be made off anew
 * @param serviceLoop left over in each wire besides
 * @param demands what the test must show besides
 */
public record Limits(
    OptionalDouble closedMaxOhms,
    double fixedClosedMaxOhms,
    double openMinOhms,
    double contactOhms,
    double switchContactOhms,
    double meterOhms,
    double tolerancePercent,
    double celsius,
    double insulationMinOhms,
    double insulationVolts,
    Length retermination,
    Length serviceLoop,
    Demands demands) {
  /** What counts as joined where nothing is given and nothing can be computed: common practice. */
  public static final double FIXED_CLOSED_MAX_OHMS = 1;

  /** What counts as not joined where nothing is given: common practice, no source. */
  public static final double OPEN_MIN_OHMS = 100e3;
}
