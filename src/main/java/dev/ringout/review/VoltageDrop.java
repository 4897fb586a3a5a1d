package dev.ringout.review;

import dev.ringout.harness.Load;
import dev.ringout.harness.Wire;
import dev.ringout.source.Severity;
import dev.ringout.standards.Tables.Entry;
import dev.ringout.units.Gauge;
import dev.ringout.units.Length;
import dev.ringout.units.Numbers;
import dev.ringout.units.OhmsRange;
import dev.ringout.units.Text;
import java.util.Comparator;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Voltage drop by FAA AC 43.13-1B tables 11-6 and 11-9. A system of volts that table 11-6 does not
 * have is held to the percentage of the nearest that it has, which is no error.
 */
final class VoltageDrop implements Check {
  /** The circular's own table 11-7 lets 0.504 V pass for 0.5 V. */
  private static final double ROUNDING = 1.01;

  private static final double CELSIUS = 20;

  @Override
  public String rule() {
    return "voltage-drop";
  }

  @Override
  public String about() {
    return "the voltage drop to each load is allowed";
  }

  @Override
  public void run(Paper paper, Findings findings) {
    for (Load load : paper.harness().loads()) {
      if (!paper.joined(load.from(), load.to())
          || (load.volts().isEmpty() && load.allowedDropVolts().isEmpty())) {
        continue;
      }
      Optional<Allowed> allowed = allowed(paper, load);
      OptionalDouble ohms = ohms(paper, load);
      if (ohms.isEmpty() || allowed.isEmpty()) {
        continue;
      }
      findings.looked();
      double dropVolts = ohms.getAsDouble() * Math.abs(load.amps());
      if (dropVolts > allowed.get().volts() * ROUNDING) {
        say(load, dropVolts, allowed.get(), findings);
      }
    }
    findings.notRun(Lack.LOADS_WITH_VOLTS_AND_LENGTHS);
  }

  /**
   * What a load's way may drop.
   *
   * @param by who says so
   * @param severity of more
   */
  private record Allowed(double volts, String by, Severity severity, String source) {}

  /** By the sheet; else by the table's row of the system, or the percentage of the nearest row. */
  private static Optional<Allowed> allowed(Paper paper, Load load) {
    if (load.allowedDropVolts().isPresent()) {
      return Optional.of(
          new Allowed(
              load.allowedDropVolts().getAsDouble(),
              " by the sheet",
              Severity.ERROR,
              "resistance: FAA AC 43.13-1B table 11-9"));
    }
    double system = Math.abs(load.volts().orElse(0));
    Optional<Entry> nearest =
        paper.rows("voltage-drop").stream()
            .min(
                Comparator.comparingDouble(
                    row -> Math.abs(Math.log(row.number("volts") / system))));
    return system > 0 ? nearest.map(row -> allowed(load, row)) : Optional.empty();
  }

  private static Allowed allowed(Load load, Entry row) {
    double system = Math.abs(load.volts().orElse(0));
    double ofRow = row.number(load.intermittent() ? "intermittent_volts" : "continuous_volts");
    boolean itself = row.number("volts") == system;
    String by = Text.of(" in a %s V system", Numbers.plain(load.volts().orElse(0)));
    return new Allowed(
        ofRow / row.number("volts") * system,
        itself
            ? by
            : Text.of("%s, the percentage of one of %s V", by, Numbers.plain(row.number("volts"))),
        itself ? Findings.breachOf(row) : Severity.WARNING,
        row.citation());
  }

  private static void say(Load load, double dropVolts, Allowed allowed, Findings findings) {
    findings.say(
        allowed.severity(),
        load.from(),
        Text.of(
            "%s drops %s V from %s to %s (%s A); %s V are allowed%s",
            load.name().isEmpty() ? "the load" : load.name(),
            Numbers.rounded(dropVolts, 3),
            load.from(),
            load.to(),
            Numbers.plain(load.amps()),
            Numbers.rounded(allowed.volts(), 3),
            allowed.by()),
        allowed.source());
  }

  /**
   * Copper wire of the table's gauges by its ohms per foot at 20 °C, any other by the most that it
   * may have; absent where a wire lacks its gauge or length, or the tables its metal.
   */
  private static OptionalDouble ohms(Paper paper, Load load) {
    double ohms = 0;
    for (Wire wire : paper.path(load.from(), load.to())) {
      Optional<Double> perMetre = wire.gauge().flatMap(gauge -> perMetre(paper, wire, gauge));
      if (perMetre.isEmpty() || wire.length().isEmpty()) {
        return OptionalDouble.empty();
      }
      ohms += perMetre.get() * wire.length().get().metres();
    }
    return OptionalDouble.of(ohms);
  }

  private static Optional<Double> perMetre(Paper paper, Wire wire, Gauge gauge) {
    Optional<Entry> row =
        paper.wireOhms().isCopper(wire.making())
            ? paper.forGauge("aircraft-current", gauge)
            : Optional.empty();
    return row.isPresent()
        ? row.map(one -> one.number("ohm_per_1000ft") / 1000 / Length.METRES_PER_FOOT)
        : paper.wireOhms().perMetre(gauge, wire.making(), CELSIUS).map(OhmsRange::highOhms);
  }
}
