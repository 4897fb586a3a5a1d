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
import java.util.regex.Pattern;

/**
 * What a metre of copper wire may have, by its gauge and type.
 *
 * <p>From the resistance of its copper alone (ρ over the conductor's area) to the highest that its
 * type or size allows: the type's own maximum where {@code wire-resistance.csv} has it, IEC 60228's
 * for metric sizes, and what stranding adds ({@code stranding.csv}) where the type says that the
 * wire is stranded. At another temperature both ends follow {@link CopperWire}.
 */
public final class WireOhms {
  /** {@code 19/32}, {@code 7x30}: so many strands of that gauge. */
  private static final Pattern STRANDS = Pattern.compile("(^|\\s)\\d{1,4}[/xX×]\\d{2}($|\\s)");

  private final CopperWire copper;
  private final List<Entry> ofTypes;
  private final double strandedShare;
  private final Map<Key, Optional<OhmsRange>> known = new HashMap<>();

  private record Key(Gauge gauge, String type, double celsius) {}

  private WireOhms(CopperWire copper, Tables tables) {
    this.copper = copper;
    this.ofTypes = tables.rows("wire-resistance");
    this.strandedShare =
        Double.parseDouble(
                PublishedTable.load(WireOhms.class, "stranding.csv")
                    .row("construction", "stranded")
                    .getOrDefault("added_percent", ""))
            / 100;
  }

  /** By the tables given. */
  public static WireOhms of(CopperWire copper, Tables tables) {
    return new WireOhms(copper, tables);
  }

  /** The resistance of copper by gauge alone, on which these stand. */
  public CopperWire copper() {
    return copper;
  }

  /** Ohms per metre; absent where the tables do not have the gauge. */
  public Optional<OhmsRange> perMetre(Gauge gauge, String type, double celsius) {
    return known.computeIfAbsent(new Key(gauge, type, celsius), this::find);
  }

  private Optional<OhmsRange> find(Key key) {
    Optional<Entry> ofType = ofType(ofTypes, key.type(), key.gauge());
    if (ofType.isPresent()) {
      double warmed = copper.timesAt(key.celsius());
      double most = ofType.get().number("max_ohm_per_1000ft") / 1000 / Length.METRES_PER_FOOT;
      double least = copper.ohmsPerMetreOfCircularMils(ofType.get().number("area_cmil"));
      return Optional.of(new OhmsRange(Math.min(least, most) * warmed, most * warmed));
    }
    OptionalDouble most = copper.ohmsPerMetre(key.gauge(), key.celsius());
    OptionalDouble least = copper.ohmsPerMetreOfCopper(key.gauge(), key.celsius());
    if (most.isEmpty() || least.isEmpty()) {
      return Optional.empty();
    }
    boolean lays = key.gauge().asAwg().isPresent() && isStranded(key.type());
    return Optional.of(
        new OhmsRange(least.getAsDouble(), most.getAsDouble() * (lays ? 1 + strandedShare : 1)));
  }

  private static boolean isStranded(String type) {
    return type.toLowerCase(Locale.ROOT).contains("strand") || STRANDS.matcher(type).find();
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
