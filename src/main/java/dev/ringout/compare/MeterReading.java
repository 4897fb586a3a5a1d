package dev.ringout.compare;

import dev.ringout.circuit.JoinLimits.JoinLimit;
import dev.ringout.circuit.ShownByOhms;
import dev.ringout.harness.Limits;
import dev.ringout.readings.Measured.Value;
import dev.ringout.readings.Meter;
import dev.ringout.units.OhmsRange;
import java.util.function.Supplier;

/**
 * One reading as its meter leaves it open: a value written 0.1 was anything from 0.05 on.
 *
 * @param limit the highest value that counts as joined between its two sides
 * @param seen the resistances between the two sides that it leaves possible
 * @param stray what an unlisted join may read; seldom asked for
 */
record MeterReading(
    Meter meter, JoinLimit limit, OhmsRange seen, Limits limits, Supplier<StrayJoin> stray) {
  /** What a value shows of the two sides: a coarse meter is no fault of the joint. */
  Observed observe(Value value) {
    return switch (ShownByOhms.of(value, meter, limit.ohms(), limits.openMinOhms())) {
      case JOINED -> Observed.JOINED;
      case BETWEEN -> Observed.RESISTIVE;
      case APART -> Observed.APART;
    };
  }

  /**
   * What a value shows of two sides that nothing listed joins: a stray join has ohms of its own.
   */
  Observed observeUnlisted(Value value) {
    Observed observed = observe(value);
    return observed == Observed.RESISTIVE && stray.get().mayBe(seen) ? Observed.JOINED : observed;
  }

  /**
   * Whether a value may be off by more than a limit, and by more than that of a meter that shows
   * whole ohms: {@code 0 kΩ} was anything below 500 Ω.
   */
  boolean isTooCoarse(Value value, double limitOhms) {
    return ShownByOhms.isTooCoarse(value, meter, limitOhms);
  }

  /**
   * Whether a value is less than half of what the leads alone have: with them taken off it would be
   * below zero, however they were held. What wires account for decides where that is known.
   */
  boolean isLessThanLeads(Value value) {
    return !limit.expected().isKnown()
        && value.ohms() + meter.uncertaintyOhms(value) < limit.leads().lowOhms() / 2;
  }

  Verdict tooCoarse(Value value) {
    return Verdict.notJudged(
        new NotJudged.TooCoarse(value.ohms(), value.ohms() + meter.uncertaintyOhms(value)));
  }
}
