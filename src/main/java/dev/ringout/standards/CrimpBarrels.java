package dev.ringout.standards;

import dev.ringout.units.Gauge;
import java.util.List;
import java.util.stream.Stream;

/**
 * Which wires go into the same crimp barrel, of a contact or of a lug: one taken for the other is
 * not noticed when it is crimped.
 */
public final class CrimpBarrels {
  private final List<Barrel> barrels;
  private final CopperWire copper;

  private record Barrel(Gauge.Awg finest, Gauge.Awg coarsest) {
    static Barrel of(Tables.Entry row) {
      return new Barrel(
          new Gauge.Awg(Integer.parseInt(row.get("finest_awg"))),
          new Gauge.Awg(Integer.parseInt(row.get("coarsest_awg"))));
    }
  }

  private CrimpBarrels(List<Barrel> barrels, CopperWire copper) {
    this.barrels = barrels;
    this.copper = copper;
  }

  /** The contact sizes and lugs of the tables. */
  public static CrimpBarrels of(Tables tables, CopperWire copper) {
    return new CrimpBarrels(
        Stream.of("contact-sizes", "lugs")
            .flatMap(table -> tables.rows(table).stream())
            .map(Barrel::of)
            .toList(),
        copper);
  }

  /** Whether some barrel takes either wire. */
  public boolean takeBoth(Gauge one, Gauge other) {
    return barrels.stream().anyMatch(barrel -> takes(barrel, one) && takes(barrel, other));
  }

  private boolean takes(Barrel barrel, Gauge gauge) {
    return copper.isWithin(gauge, barrel.finest(), barrel.coarsest()).orElse(false);
  }
}
