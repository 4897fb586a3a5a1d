package dev.ringout.standards;

import dev.ringout.units.Gauge;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Resistance of copper wire by its gauge.
 *
 * <p>American gauges: R = ρ·L/A with the area of ASTM B258 and the resistivity of annealed copper
 * (NBS Handbook 100); metric sizes: the maximum of IEC 60228. Both at another temperature T: R·(1 +
 * α·(T − 20 °C)).
 */
public final class CopperWire {
  private static final double REFERENCE_CELSIUS = 20;

  /** π/4 of a thousandth of an inch squared. */
  public static final double SQUARE_MILLIMETRES_PER_CIRCULAR_MIL = Math.PI / 4 * 0.0254 * 0.0254;

  private final Map<Integer, Double> squareMillimetresOfAwg = new HashMap<>();
  private final Map<Double, Metric> metricSizes = new HashMap<>();
  private final double resistivityOhmSquareMillimetresPerMetre;
  private final double temperatureCoefficientPerKelvin;

  private CopperWire(PublishedTable awg, PublishedTable metric, PublishedTable constants) {
    for (Map<String, String> row : awg.rows()) {
      squareMillimetresOfAwg.put(
          Integer.valueOf(value(row, "n")), Double.valueOf(value(row, "area_mm2")));
    }
    for (Map<String, String> row : metric.rows()) {
      metricSizes.put(Double.valueOf(value(row, "size_mm2")), Metric.of(row));
    }
    resistivityOhmSquareMillimetresPerMetre = constant(constants, "resistivity at 20 C");
    temperatureCoefficientPerKelvin = constant(constants, "temperature coefficient at 20 C");
  }

  /**
   * What a metric size may have at most, in ohms per metre at 20 °C.
   *
   * @param class2 a stranded conductor of copper, coated or not
   * @param class5 a flexible one
   * @param aluminium a conductor of aluminium
   */
  record Metric(OptionalDouble class2, OptionalDouble class5, OptionalDouble aluminium) {
    private static Metric of(Map<String, String> row) {
      return new Metric(
          most(row, "class2_coated"), most(row, "class5_coated"), most(row, "aluminium"));
    }

    private static OptionalDouble most(Map<String, String> row, String column) {
      String ohms = value(row, column);
      return ohms.isEmpty()
          ? OptionalDouble.empty()
          : OptionalDouble.of(Double.parseDouble(ohms) / 1000);
    }

    /** The most of any copper conductor of the size. */
    double copper() {
      return Math.max(class2.orElse(0), class5.orElse(0));
    }
  }

  private static double constant(PublishedTable constants, String name) {
    return Double.parseDouble(value(constants.row("name", name), "value"));
  }

  private static String value(Map<String, String> row, String column) {
    return row.getOrDefault(column, "");
  }

  /** The published tables. */
  public static CopperWire published() {
    return new CopperWire(
        PublishedTable.load(CopperWire.class, "awg.csv"),
        PublishedTable.load(CopperWire.class, "metric-conductors.csv"),
        PublishedTable.load(CopperWire.class, "copper.csv"));
  }

  /**
   * Ohms per metre of one conductor: of a metric size the highest that is allowed; absent where the
   * tables do not have the gauge.
   */
  public OptionalDouble ohmsPerMetre(Gauge gauge, double celsius) {
    return gauge.match(
        new Gauge.Cases<OptionalDouble>() {
          @Override
          public OptionalDouble awg(Gauge.Awg awg) {
            return ohmsPerMetreOfCopper(awg, celsius);
          }

          @Override
          public OptionalDouble squareMillimetres(Gauge.SquareMillimetres metric) {
            Metric most = metricSizes.get(metric.squareMillimetres());
            return most == null
                ? OptionalDouble.empty()
                : OptionalDouble.of(most.copper() * timesAt(celsius));
          }
        });
  }

  private static <K> OptionalDouble known(Map<K, Double> values, K key) {
    Double value = values.get(key);
    return value == null ? OptionalDouble.empty() : OptionalDouble.of(value);
  }

  /** Ohms per metre of solid copper of a gauge's area; absent where the tables do not have it. */
  public OptionalDouble ohmsPerMetreOfCopper(Gauge gauge, double celsius) {
    OptionalDouble area = squareMillimetres(gauge);
    return area.isEmpty()
        ? area
        : OptionalDouble.of(
            resistivityOhmSquareMillimetresPerMetre / area.getAsDouble() * timesAt(celsius));
  }

  /** Ohms per metre of solid copper of an area, at 20 °C. */
  double ohmsPerMetreOf(double squareMillimetres) {
    return resistivityOhmSquareMillimetresPerMetre / squareMillimetres;
  }

  /** What a metric size may have at most; absent where the tables do not have it. */
  Optional<Metric> metric(Gauge gauge) {
    return gauge.asSquareMillimetres().flatMap(size -> Optional.ofNullable(metricSizes.get(size)));
  }

  /** How many times its resistance at 20 °C copper has at another temperature. */
  public double timesAt(double celsius) {
    return 1 + temperatureCoefficientPerKelvin * (celsius - REFERENCE_CELSIUS);
  }

  /** The standard sizes of the tables, American or metric, finest first. */
  public List<Gauge> sizesLike(Gauge gauge) {
    return gauge.match(
        new Gauge.Cases<List<Gauge>>() {
          @Override
          public List<Gauge> awg(Gauge.Awg awg) {
            return squareMillimetresOfAwg.keySet().stream()
                .sorted(Comparator.reverseOrder())
                .map(number -> (Gauge) new Gauge.Awg(number))
                .toList();
          }

          @Override
          public List<Gauge> squareMillimetres(Gauge.SquareMillimetres metric) {
            return metricSizes.keySet().stream()
                .sorted()
                .map(size -> (Gauge) new Gauge.SquareMillimetres(size))
                .toList();
          }
        });
  }

  /**
   * Whether a wire's cross-section is within a range of gauges; absent where the tables do not have
   * the wire's gauge. A hundredth beyond either end is within: metric and American sizes never meet
   * exactly.
   *
   * @throws java.util.NoSuchElementException where the tables do not have an end of the range
   */
  public Optional<Boolean> isWithin(Gauge gauge, Gauge finest, Gauge coarsest) {
    OptionalDouble area = squareMillimetres(gauge);
    if (area.isEmpty()) {
      return Optional.empty();
    }
    double least = squareMillimetres(finest).orElseThrow();
    double most = squareMillimetres(coarsest).orElseThrow();
    return Optional.of(area.getAsDouble() >= least * 0.99 && area.getAsDouble() <= most * 1.01);
  }

  /** The cross-section; absent where the tables do not have the gauge. */
  public OptionalDouble squareMillimetres(Gauge gauge) {
    return gauge.match(
        new Gauge.Cases<OptionalDouble>() {
          @Override
          public OptionalDouble awg(Gauge.Awg awg) {
            return known(squareMillimetresOfAwg, awg.number());
          }

          @Override
          public OptionalDouble squareMillimetres(Gauge.SquareMillimetres metric) {
            return OptionalDouble.of(metric.squareMillimetres());
          }
        });
  }
}
