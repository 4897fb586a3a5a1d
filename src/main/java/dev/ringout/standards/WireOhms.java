package dev.ringout.standards;

import dev.ringout.standards.Tables.Entry;
import dev.ringout.units.Gauge;
import dev.ringout.units.Length;
import dev.ringout.units.OhmsRange;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What a metre of wire may have, by its gauge and what the list says of it.
 *
 * <ul>
 *   <li>A type that {@code wire-resistance.csv} has: from its copper alone to the most that it
 *       allows.
 *   <li>Any other copper: as {@link CopperConductors} has it.
 *   <li>Another metal ({@code conductor-metals.csv}): the same times its resistivity over that of
 *       copper; of aluminium in metric sizes no more than IEC 60228 has. Nothing where no value of
 *       the metal is published.
 * </ul>
 *
 * At another temperature both ends follow the metal.
 */
public final class WireOhms {
  private static final OptionalDouble NONE = OptionalDouble.empty();

  private final CopperWire copper;
  private final CopperConductors conductors;
  private final ConductorMetals metals;
  private final List<Entry> ofTypes;
  private final Map<Key, List<OhmsRange>> known = new HashMap<>();

  private record Key(Gauge gauge, String type, double celsius) {}

  private WireOhms(CopperWire copper, Tables tables) {
    this.copper = copper;
    this.conductors = new CopperConductors(copper);
    this.metals = ConductorMetals.of(tables);
    this.ofTypes = tables.rows("wire-resistance");
  }

  /** By the tables given. */
  public static WireOhms of(CopperWire copper, Tables tables) {
    return new WireOhms(copper, tables);
  }

  /** The resistance of copper by gauge alone, on which these stand. */
  public CopperWire copper() {
    return copper;
  }

  /**
   * Ohms per metre; absent where the tables do not have the gauge or the metal.
   *
   * @param type what the list says of what the wire is made of
   */
  public Optional<OhmsRange> perMetre(Gauge gauge, String type, double celsius) {
    return makes(gauge, type, celsius).stream().reduce(OhmsRange::or);
  }

  /** Ohms per metre of each make that such a wire may be: solid, or of so many strands. */
  public List<OhmsRange> makes(Gauge gauge, String type, double celsius) {
    return known.computeIfAbsent(new Key(gauge, type, celsius), this::find);
  }

  /** Whether a wire is of copper, of which the tables of currents and drops are. */
  public boolean isCopper(String type) {
    return metals.of(type).isCopper();
  }

  /**
   * From the least to the most cross-section, in mm², that a wire may have by its nominal
   * construction: solid, or of so many strands; absent where the tables do not have the gauge.
   */
  public Optional<Areas> squareMillimetres(Gauge gauge, String type) {
    Optional<Entry> ofType = ofType(ofTypes, type, gauge);
    if (ofType.isPresent()) {
      double area =
          ofType.get().number("area_cmil") * CopperWire.SQUARE_MILLIMETRES_PER_CIRCULAR_MIL;
      return Optional.of(new Areas(area, area));
    }
    return conductors.squareMillimetres(gauge, type);
  }

  /** From the least to the most square millimetres. */
  public record Areas(double least, double most) {}

  /** The metal of a wire of which the tables have no value; absent where they have one. */
  public Optional<String> metalWithoutValue(String type) {
    ConductorMetals.Metal metal = metals.of(type);
    return metal.values().isPresent() ? Optional.empty() : Optional.of(metal.name());
  }

  private List<OhmsRange> find(Key key) {
    Optional<Entry> ofType = ofType(ofTypes, key.type(), key.gauge());
    if (ofType.isPresent()) {
      return List.of(times(ofType(ofType.get()), copper.timesAt(key.celsius())));
    }
    ConductorMetals.Metal metal = metals.of(key.type());
    List<OhmsRange> asCopper = conductors.makes(key.gauge(), key.type());
    if (metal.isCopper()) {
      return asCopper.stream().map(range -> times(range, copper.timesAt(key.celsius()))).toList();
    }
    return metal.values().isEmpty()
        ? List.of()
        : asCopper.stream()
            .map(range -> ofMetal(range, metal, metal.values().get(), key.gauge()))
            .map(range -> times(range, metal.values().get().timesAt(key.celsius())))
            .toList();
  }

  private OhmsRange ofMetal(
      OhmsRange asCopper, ConductorMetals.Metal metal, ConductorMetals.Values values, Gauge gauge) {
    double one = copper.ohmsPerMetreOf(1);
    OptionalDouble aluminium =
        metal.isAluminium()
            ? copper.metric(gauge).map(CopperWire.Metric::aluminium).orElse(NONE)
            : NONE;
    return new OhmsRange(
        asCopper.lowOhms() * values.leastOhms() / one,
        aluminium.orElse(asCopper.highOhms() * values.mostOhms() / one));
  }

  private static OhmsRange times(OhmsRange range, double factor) {
    return new OhmsRange(range.lowOhms() * factor, range.highOhms() * factor);
  }

  private OhmsRange ofType(Entry row) {
    double most = row.number("max_ohm_per_1000ft") / 1000 / Length.METRES_PER_FOOT;
    double least =
        copper.ohmsPerMetreOf(
            row.number("area_cmil") * CopperWire.SQUARE_MILLIMETRES_PER_CIRCULAR_MIL);
    return new OhmsRange(Math.min(least, most), most);
  }

  /** A wire type's row for a gauge, by its specification's name within the type. */
  public static Optional<Entry> ofType(List<Entry> rows, String type, Gauge gauge) {
    if (type.isEmpty()) {
      return Optional.empty();
    }
    String name = type.toUpperCase(Locale.ROOT).replace("M22759", "AS22759");
    return gauge
        .asAwg()
        .map(Gauge.Awg::size)
        .flatMap(
            size ->
                rows.stream()
                    .filter(row -> row.get("awg").equals(size) && isType(name, row.get("type")))
                    .findFirst());
  }

  /** Whether a type is this specification: {@code AS22759/16-20-9} is AS22759/16, /160 is not. */
  static boolean isType(String type, String specification) {
    int at = type.indexOf(specification.toUpperCase(Locale.ROOT));
    int end = at + specification.length();
    return at >= 0 && (end == type.length() || !Character.isDigit(type.charAt(end)));
  }
}
