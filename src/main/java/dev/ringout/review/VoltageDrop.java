package dev.ringout.review;

import dev.ringout.harness.Load;
import dev.ringout.harness.Wire;
import dev.ringout.source.Severity;
import dev.ringout.standards.Tables.Entry;
import dev.ringout.units.Length;
import dev.ringout.units.Numbers;
import dev.ringout.units.Text;
import java.util.Optional;
import java.util.OptionalDouble;

/** Voltage drop by FAA AC 43.13-1B tables 11-6 and 11-9. */
final class VoltageDrop implements Check {
  /** The circular's own table 11-7 lets 0.504 V pass for 0.5 V. */
  private static final double ROUNDING = 1.01;

  @Override
  public String rule() {
    return "voltage-drop";
  }

  @Override
  public String about() {
    return "the drop over the way of a load is within what is allowed";
  }

  @Override
  public void run(Paper paper, Findings findings) {
    for (Load load : paper.harness().loads()) {
      if (!paper.joined(load.from(), load.to())
          || (load.volts().isEmpty() && load.allowedDropVolts().isEmpty())) {
        continue;
      }
      OptionalDouble ohms = ohms(paper, load);
      Optional<Entry> table =
          paper.rows("voltage-drop").stream()
              .filter(
                  row ->
                      load.volts().isPresent() && row.number("volts") == load.volts().getAsDouble())
              .findFirst();
      if (ohms.isEmpty() || (table.isEmpty() && load.allowedDropVolts().isEmpty())) {
        continue;
      }
      findings.looked();
      double allowedVolts =
          load.allowedDropVolts().orElseGet(() -> table.map(row -> allowed(row, load)).orElse(0.0));
      double dropVolts = ohms.getAsDouble() * load.amps();
      if (dropVolts > allowedVolts * ROUNDING) {
        say(load, dropVolts, allowedVolts, table, findings);
      }
    }
    findings.notRun(Lack.LOADS_WITH_VOLTS_AND_LENGTHS);
  }

  private static double allowed(Entry row, Load load) {
    return row.number(load.intermittent() ? "intermittent_volts" : "continuous_volts");
  }

  private static void say(
      Load load, double dropVolts, double allowedVolts, Optional<Entry> table, Findings findings) {
    findings.say(
        Severity.ERROR,
        load.from(),
        Text.of(
            "%s drops %s V from %s to %s (%s A); %s V are allowed%s",
            load.name().isEmpty() ? "the load" : load.name(),
            Numbers.rounded(dropVolts, 3),
            load.from(),
            load.to(),
            Numbers.plain(load.amps()),
            Numbers.plain(allowedVolts),
            load.allowedDropVolts().isPresent()
                ? " by the sheet"
                : Text.of(" in a %s V system", Numbers.plain(load.volts().orElse(0)))),
        load.allowedDropVolts().isPresent()
            ? "resistance: FAA AC 43.13-1B table 11-9"
            : table.map(Entry::citation).orElse(COMMON));
  }

  /** By the table's ohms per foot at 20 °C; absent where a wire lacks its gauge or length. */
  private static OptionalDouble ohms(Paper paper, Load load) {
    double ohms = 0;
    for (Wire wire : paper.path(load.from(), load.to())) {
      Optional<Entry> row =
          wire.gauge().flatMap(gauge -> paper.forGauge("aircraft-current", gauge));
      if (row.isEmpty() || wire.length().isEmpty()) {
        return OptionalDouble.empty();
      }
      ohms +=
          row.get().number("ohm_per_1000ft")
              / 1000
              * wire.length().get().metres()
              / Length.METRES_PER_FOOT;
    }
    return OptionalDouble.of(ohms);
  }
}
