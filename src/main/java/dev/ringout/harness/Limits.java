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

  /**
   * The limits of a list that says nothing of them.
   *
   * @param switchContactOhms what one closed contact of a new switch may have
   */
  public static Limits usual(double switchContactOhms) {
    return new Limits(
        OptionalDouble.empty(),
        FIXED_CLOSED_MAX_OHMS,
        OPEN_MIN_OHMS,
        0.005,
        switchContactOhms,
        0,
        10,
        20,
        100e6,
        500,
        new Length(0),
        new Length(0),
        Demands.USUAL);
  }

  /** These limits, to be changed one by one. */
  public Builder toBuilder() {
    return new Builder(this);
  }

  /** Changes limits, each by its name. */
  public static final class Builder {
    private OptionalDouble closedMaxOhms;
    private double fixedClosedMaxOhms;
    private double openMinOhms;
    private double contactOhms;
    private double switchContactOhms;
    private double meterOhms;
    private double tolerancePercent;
    private double celsius;
    private double insulationMinOhms;
    private double insulationVolts;
    private Length retermination;
    private Length serviceLoop;
    private Demands demands;

    private Builder(Limits from) {
      closedMaxOhms = from.closedMaxOhms;
      fixedClosedMaxOhms = from.fixedClosedMaxOhms;
      openMinOhms = from.openMinOhms;
      contactOhms = from.contactOhms;
      switchContactOhms = from.switchContactOhms;
      meterOhms = from.meterOhms;
      tolerancePercent = from.tolerancePercent;
      celsius = from.celsius;
      insulationMinOhms = from.insulationMinOhms;
      insulationVolts = from.insulationVolts;
      retermination = from.retermination;
      serviceLoop = from.serviceLoop;
      demands = from.demands;
    }

    /** The highest reading that still counts as joined; absent: computed. */
    public Builder closedMaxOhms(OptionalDouble other) {
      closedMaxOhms = other;
      return this;
    }

    /** What stands where nothing can be computed. */
    public Builder fixedClosedMaxOhms(double other) {
      fixedClosedMaxOhms = other;
      return this;
    }

    /** The lowest continuity reading that counts as not joined. */
    public Builder openMinOhms(double other) {
      openMinOhms = other;
      return this;
    }

    /** What one crimp and mated contact may have. */
    public Builder contactOhms(double other) {
      contactOhms = other;
      return this;
    }

    /** What one closed switch contact may have. */
    public Builder switchContactOhms(double other) {
      switchContactOhms = other;
      return this;
    }

    /** What the leads may still add to readings. */
    public Builder meterOhms(double other) {
      meterOhms = other;
      return this;
    }

    /** The tolerance on what is computed. */
    public Builder tolerancePercent(double other) {
      tolerancePercent = other;
      return this;
    }

    /** The temperature of the wire when measured. */
    public Builder celsius(double other) {
      celsius = other;
      return this;
    }

    /** The lowest insulation reading that passes. */
    public Builder insulationMinOhms(double other) {
      insulationMinOhms = other;
      return this;
    }

    /** The insulation test voltage. */
    public Builder insulationVolts(double other) {
      insulationVolts = other;
      return this;
    }

    /** What is left over at each end of a wire. */
    public Builder retermination(Length other) {
      retermination = other;
      return this;
    }

    /** What is left over in each wire besides. */
    public Builder serviceLoop(Length other) {
      serviceLoop = other;
      return this;
    }

    /** What the test must show besides. */
    public Builder demands(Demands other) {
      demands = other;
      return this;
    }

    /** The limits. */
    public Limits build() {
      return new Limits(
          closedMaxOhms,
          fixedClosedMaxOhms,
          openMinOhms,
          contactOhms,
          switchContactOhms,
          meterOhms,
          tolerancePercent,
          celsius,
          insulationMinOhms,
          insulationVolts,
          retermination,
          serviceLoop,
          demands);
    }
  }
}
