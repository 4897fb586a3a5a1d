package dev.ringout.review;

import dev.ringout.harness.Load;
import dev.ringout.harness.Wire;
import dev.ringout.source.Severity;
import dev.ringout.standards.Tables.Entry;
import dev.ringout.units.Numbers;
import dev.ringout.units.Text;
import java.util.Optional;

/**
 * Continuous current of copper wire against gauge, FAA AC 43.13-1B table 11-9, on its conditions.
 */
final class WireCurrent implements Check {
  private static final double LEAST_CELSIUS = 105;

  @Override
  public String rule() {
    return "wire-current";
  }

  @Override
  public String about() {
    return "each wire to a load can carry its current";
  }

  @Override
  public void run(Paper paper, Findings findings) {
    for (Load load : paper.harness().loads()) {
      if (!paper.joined(load.from(), load.to())) {
        findings.say(
            Severity.ERROR,
            load.from(),
            Text.of(
                "the load %s flows from %s to %s, which are not joined",
                load.name(), load.from(), load.to()),
            COMMON);
        continue;
      }
      for (Wire wire : paper.path(load.from(), load.to())) {
        Optional<Entry> row =
            wire.gauge().flatMap(gauge -> paper.forGauge("aircraft-current", gauge));
        if (row.isEmpty() || !paper.wireOhms().isCopper(wire.making())) {
          continue;
        }
        findings.looked();
        carries(load, wire, celsius(paper, load, wire), row.get(), findings);
      }
    }
    findings.notRun(Lack.LOADS_WITH_GAUGES);
  }

  private static double celsius(Paper paper, Load load, Wire wire) {
    return load.wireCelsius()
        .orElseGet(
            () -> paper.wireType(wire).map(type -> type.number("celsius")).orElse(LEAST_CELSIUS));
  }

  private static void carries(Load load, Wire wire, double celsius, Entry row, Findings findings) {
    String column = celsius >= 200 ? "amps_200" : celsius >= 150 ? "amps_150" : "amps_105";
    double most = row.number(column);
    if (Math.abs(load.amps()) > most) {
      findings.say(
          Findings.breachOf(row),
          wire,
          Text.of(
              "%s, AWG %s rated %s °C, carries %s A of %s; in a bundle it takes %s A",
              wire.name(),
              row.get("awg"),
              Numbers.plain(celsius),
              Numbers.plain(load.amps()),
              load.name().isEmpty() ? "the load" : load.name(),
              Numbers.plain(most)),
          row.citation());
    }
  }
}
