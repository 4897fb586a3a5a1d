package dev.ringout.review;

import dev.ringout.harness.Wire;
import dev.ringout.standards.Tables.Entry;
import dev.ringout.units.Gauge;
import dev.ringout.units.Text;
import java.util.Optional;

/** The range of an insulated lug, by its colour, against the gauge. */
final class LugGauge implements Check {
  @Override
  public String rule() {
    return "lug-gauge";
  }

  @Override
  public String about() {
    return "a lug of this colour takes this wire";
  }

  @Override
  public void run(Paper paper, Findings findings) {
    for (Wire wire : paper.harness().wires()) {
      for (Wire.End end : Wire.End.values()) {
        Optional<Lug> lug = Lug.of(wire.contactAt(end));
        Optional<Gauge> gauge = wire.gauge();
        if (lug.isEmpty() || gauge.isEmpty()) {
          continue;
        }
        Optional<Entry> row = paper.lugRow(lug.get());
        Optional<Boolean> takes =
            row.flatMap(
                range ->
                    paper
                        .copper()
                        .isWithin(
                            gauge.get(), awg(range, "finest_awg"), awg(range, "coarsest_awg")));
        if (row.isEmpty() || takes.isEmpty()) {
          continue;
        }
        findings.looked();
        if (!takes.get()) {
          findings.say(
              Findings.breachOf(row.get()),
              wire.at(end),
              wire,
              Text.of(
                  "%s is %s; a %s lug takes AWG %s to %s",
                  wire.name(),
                  gauge.get().label(),
                  lug.get().colour(),
                  row.get().get("finest_awg"),
                  row.get().get("coarsest_awg")),
              row.get().citation());
        }
      }
    }
    findings.notRun(Lack.COLOURED_LUGS);
  }

  private static Gauge awg(Entry row, String column) {
    return new Gauge.Awg(Integer.parseInt(row.get(column)));
  }
}
