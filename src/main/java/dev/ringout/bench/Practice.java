package dev.ringout.bench;

import dev.ringout.harness.Harness;
import dev.ringout.meter.MeterAddress;
import dev.ringout.meter.Ticks;
import dev.ringout.meter.link.Channels;
import dev.ringout.meter.practice.PracticeChannel;
import dev.ringout.meter.practice.PracticeInstrument;
import dev.ringout.meter.practice.PracticeProbes;
import dev.ringout.meter.practice.PracticeUnit;
import dev.ringout.standards.Tables;
import java.util.List;
import java.util.Optional;

/** Hands that put the probes of a practice meter where the step asks for. */
final class Practice {
  private final PracticeProbes probes;
  private final int slips;
  private final long seed;
  private Optional<PracticeUnit> unit = Optional.empty();
  private Optional<String> at = Optional.empty();

  Practice(Ticks ticks, int slips, long seed) {
    this.probes = new PracticeProbes(ticks, seed);
    this.probes.lead();
    this.slips = slips;
    this.seed = seed;
  }

  /** Links to real meters, and to this one. */
  Channels channels() {
    Channels real = Channels.real();
    return (address, profile, transcript) ->
        address.equals(new MeterAddress.Practice())
            ? new PracticeChannel(
                new PracticeInstrument(probes, (from, to) -> Optional.empty()),
                transcript,
                () -> {})
            : real.open(address, profile, transcript);
  }

  /** Another unit lies on the bench, with slips of its own. */
  void unit(Harness harness, String serial) {
    unit =
        Optional.of(PracticeUnit.of(harness, Tables.published(), seed + serial.hashCode(), slips));
    at = Optional.empty();
  }

  /** What was done to the unit, for who asks afterwards. */
  List<String> slips() {
    return unit.map(PracticeUnit::slips).orElse(List.of());
  }

  /** Puts the probes where a step asks for; they stay where they are while it is the same. */
  void probe(Optional<AskedStep> step, String asked) {
    Optional<String> now = step.map(one -> asked);
    if (now.equals(at)) {
      return;
    }
    at = now;
    if (step.isEmpty() || unit.isEmpty()) {
      probes.lift();
      return;
    }
    AskedStep one = step.get();
    probes.moveTo(unit.get().ohms(one.from(), one.to(), one.state()));
  }

  /** Holds the two probes together. */
  void together() {
    at = Optional.empty();
    probes.moveTo(0);
  }
}
