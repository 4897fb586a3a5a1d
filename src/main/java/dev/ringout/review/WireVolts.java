package dev.ringout.review;

import dev.ringout.harness.Load;
import dev.ringout.harness.Wire;
import dev.ringout.standards.Tables.Entry;
import dev.ringout.units.Numbers;
import dev.ringout.units.Text;
import java.util.Optional;

/** Rated volts of the wire type against the volts of the circuit. */
final class WireVolts implements Check {
  @Override
  public String rule() {
    return "wire-volts";
  }

  @Override
  public String about() {
    return "each wire's insulation is rated for its circuit";
  }

  @Override
  public void run(Paper paper, Findings findings) {
    for (Load load : paper.harness().loads()) {
      if (load.volts().isEmpty() || !paper.joined(load.from(), load.to())) {
        continue;
      }
      for (Wire wire : paper.path(load.from(), load.to())) {
        Optional<Entry> type = paper.wireType(wire);
        if (type.isEmpty()) {
          continue;
        }
        findings.looked();
        if (type.get().number("volts") < Math.abs(load.volts().getAsDouble())) {
          findings.say(
              Findings.breachOf(type.get()),
              wire,
              Text.of(
                  "%s, %s, is rated %s V; its circuit has %s V",
                  wire.name(),
                  type.get().get("type"),
                  type.get().get("volts"),
                  Numbers.plain(load.volts().getAsDouble())),
              type.get().citation());
        }
      }
    }
    findings.notRun(Lack.LOADS_WITH_VOLTS_AND_TYPES);
  }
}
