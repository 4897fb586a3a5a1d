package dev.ringout.standards;

import dev.ringout.units.Gauge;
import dev.ringout.units.OhmsRange;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import java.util.regex.Pattern;

/**
 * What a metre of copper conductor may have at 20 °C, whoever made it.
 *
 * <ul>
 *   <li>Of a construction ({@code 19/32}): from the copper of its strands, whose area is exactly
 *       known, to the most of the conductor that is made so; of one that no table has, to as much
 *       over its copper as the worst of those.
 *   <li>Of an American gauge: from solid copper or the nominal area of its stranded conductors with
 *       their lay ({@code stranding.csv}), whichever is less, to the most that {@code
 *       stranded-conductors.csv} has of the gauge in any coating. One said to be stranded or solid
 *       is only that. A gauge that the table lacks may be as far off solid copper as the farthest
 *       there.
 *   <li>Of a metric size: from its nominal area to the most of IEC 60228 in any coating: of class 2
 *       where that is said, else of class 5, which is no less.
 * </ul>
 */
final class CopperConductors {
  private static final Pattern STRANDED = Pattern.compile("(?i)strand|\\blitz|\\bflexible\\b");
  private static final Pattern SOLID = Pattern.compile("(?i)\\bsolid\\b");
  private static final Pattern CLASS_2 = Pattern.compile("(?i)\\b(?:class|cl\\.?|kl\\.?)\\s?2\\b");

  /** Further off its gauge a construction is that of something else: the cores of a cable. */
  private static final double FARTHEST_OFF_ITS_GAUGE = 1.35;

  private final CopperWire copper;
  private final StrandedConductors stranded = StrandedConductors.published();
  private final double lay;

  CopperConductors(CopperWire copper) {
    this.copper = copper;
    this.lay =
        1
            + Double.parseDouble(
                    PublishedTable.load(CopperConductors.class, "stranding.csv")
                        .row("construction", "stranded")
                        .getOrDefault("added_percent", ""))
                / 100;
  }

  /** Ohms per metre of each make that the wire may be; none where the gauge is in no table. */
  List<OhmsRange> makes(Gauge gauge, String type) {
    Optional<Construction> construction = construction(gauge, type);
    if (construction.isPresent()) {
      return List.of(made(construction.get(), gauge, type));
    }
    OptionalDouble solid = copper.ohmsPerMetreOfCopper(gauge, 20);
    if (solid.isEmpty() || gauge.asAwg().isEmpty()) {
      return mostOfMetric(gauge, type)
          .map(most -> List.of(new OhmsRange(solid.orElse(0), most)))
          .orElse(List.of());
    }
    double alone = solid.getAsDouble();
    List<OhmsRange> makes = new ArrayList<>();
    if (!STRANDED.matcher(type).find()) {
      makes.add(new OhmsRange(alone, alone));
    }
    if (!SOLID.matcher(type).find()) {
      makes.addAll(strands(gauge, alone));
    }
    return List.copyOf(makes);
  }

  /**
   * The nominal areas of the makes that the wire may be; of a metric conductor, for which no area
   * is prescribed, that of its most ohms as well.
   */
  Optional<WireOhms.Areas> squareMillimetres(Gauge gauge, String type) {
    Optional<Construction> construction = construction(gauge, type);
    OptionalDouble solid =
        construction.isPresent()
            ? squareMillimetres(construction.get())
            : copper.squareMillimetres(gauge);
    if (solid.isEmpty()) {
      return Optional.empty();
    }
    double alone = solid.getAsDouble();
    List<Double> areas = new ArrayList<>();
    if (construction.isEmpty() && !SOLID.matcher(type).find()) {
      stranded.of(gauge).forEach(one -> areas.add(one.squareMillimetres()));
    }
    if (areas.isEmpty() || !STRANDED.matcher(type).find()) {
      areas.add(alone);
    }
    if (construction.isEmpty()) {
      mostOfMetric(gauge, type).ifPresent(ohms -> areas.add(copper.ohmsPerMetreOf(1) / ohms));
    }
    return Optional.of(new WireOhms.Areas(Collections.min(areas), Collections.max(areas)));
  }

  private Optional<Construction> construction(Gauge gauge, String type) {
    return Construction.of(type).filter(made -> isNear(gauge, squareMillimetres(made)));
  }

  private boolean isNear(Gauge gauge, OptionalDouble squareMillimetres) {
    double off =
        squareMillimetres.orElse(0)
            / copper.squareMillimetres(gauge).orElse(Double.POSITIVE_INFINITY);
    return off < FARTHEST_OFF_ITS_GAUGE && off > 1 / FARTHEST_OFF_ITS_GAUGE;
  }

  /** The area of all strands; absent where the tables do not have their gauge. */
  private OptionalDouble squareMillimetres(Construction construction) {
    OptionalDouble strand =
        construction.strandAwg() > 0
            ? copper.squareMillimetres(new Gauge.Awg(construction.strandAwg()))
            : OptionalDouble.of(0);
    return strand.isEmpty()
        ? strand
        : OptionalDouble.of(construction.squareMillimetres(strand.getAsDouble()));
  }

  private OhmsRange made(Construction construction, Gauge gauge, String type) {
    double alone = copper.ohmsPerMetreOf(squareMillimetres(construction).orElseThrow());
    double most =
        stranded
            .of(construction)
            .map(StrandedConductors.Conductor::mostOhmsPerMetre)
            .or(() -> mostOfMetric(gauge, type).map(ohms -> Math.max(ohms, alone * lay)))
            .orElseGet(() -> alone * most(stranded.all(), this::overItsCopper));
    return new OhmsRange(Math.min(alone, most), most);
  }

  /** The stranded conductors of a gauge, given what solid copper of it has. */
  private List<OhmsRange> strands(Gauge gauge, double solid) {
    List<StrandedConductors.Conductor> conductors = stranded.of(gauge);
    return conductors.isEmpty()
        ? List.of(
            new OhmsRange(
                solid * least(stranded.all(), one -> nominal(one) / solidOf(one)),
                solid * most(stranded.all(), one -> one.mostOhmsPerMetre() / solidOf(one))))
        : conductors.stream()
            .map(one -> new OhmsRange(nominal(one), one.mostOhmsPerMetre()))
            .toList();
  }

  private static double least(
      List<StrandedConductors.Conductor> of, ToDoubleFunction<StrandedConductors.Conductor> what) {
    return of.stream().mapToDouble(what).min().orElseThrow();
  }

  private static double most(
      List<StrandedConductors.Conductor> of, ToDoubleFunction<StrandedConductors.Conductor> what) {
    return of.stream().mapToDouble(what).max().orElseThrow();
  }

  private double nominal(StrandedConductors.Conductor conductor) {
    return lay * copper.ohmsPerMetreOf(conductor.squareMillimetres());
  }

  private double overItsCopper(StrandedConductors.Conductor conductor) {
    return conductor.mostOhmsPerMetre() / copper.ohmsPerMetreOf(conductor.squareMillimetres());
  }

  private double solidOf(StrandedConductors.Conductor conductor) {
    return copper.ohmsPerMetreOfCopper(conductor.gauge(), 20).orElseThrow();
  }

  private Optional<Double> mostOfMetric(Gauge gauge, String type) {
    return copper
        .metric(gauge)
        .map(
            size ->
                CLASS_2.matcher(type).find() ? size.class2().orElse(size.copper()) : size.copper());
  }
}
