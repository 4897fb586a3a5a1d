package dev.ringout.standards;

import dev.ringout.units.Gauge;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** Stranded copper conductors of American gauges as their specification lets them be made. */
final class StrandedConductors {
  private final List<Conductor> conductors;

  /**
   * One conductor.
   *
   * @param gauge its size
   * @param squareMillimetres its nominal area
   * @param mostOhmsPerMetre the most that it may have at 20 °C, in any coating
   */
  record Conductor(
      Gauge.Awg gauge,
      int strands,
      int strandAwg,
      double squareMillimetres,
      double mostOhmsPerMetre) {
    boolean isMadeOf(Construction construction) {
      return construction.strands() == strands && construction.strandAwg() == strandAwg;
    }
  }

  private StrandedConductors(List<Conductor> conductors) {
    this.conductors = conductors;
  }

  /** The published conductors. */
  static StrandedConductors published() {
    return new StrandedConductors(
        PublishedTable.load(StrandedConductors.class, "stranded-conductors.csv").rows().stream()
            .map(StrandedConductors::conductor)
            .toList());
  }

  private static Conductor conductor(Map<String, String> row) {
    double most =
        Stream.of("silver", "nickel", "tin")
            .map(coating -> row.getOrDefault(coating, ""))
            .filter(ohms -> !ohms.isEmpty())
            .mapToDouble(Double::parseDouble)
            .max()
            .orElseThrow();
    return new Conductor(
        gauge(row.getOrDefault("awg", "")),
        Integer.parseInt(row.getOrDefault("strands", "")),
        Integer.parseInt(row.getOrDefault("strand_awg", "")),
        Double.parseDouble(row.getOrDefault("area_mm2", "")),
        most / 1000);
  }

  /** {@code 20}, {@code 4/0}. */
  private static Gauge.Awg gauge(String size) {
    int slash = size.indexOf('/');
    return new Gauge.Awg(
        slash < 0 ? Integer.parseInt(size) : 1 - Integer.parseInt(size.substring(0, slash)));
  }

  /** Every conductor. */
  List<Conductor> all() {
    return conductors;
  }

  /** Those of a gauge: one, or several constructions, or none. */
  List<Conductor> of(Gauge gauge) {
    return conductors.stream().filter(one -> one.gauge().equals(gauge)).toList();
  }

  /** The one made so. */
  Optional<Conductor> of(Construction construction) {
    return conductors.stream().filter(one -> one.isMadeOf(construction)).findFirst();
  }
}
