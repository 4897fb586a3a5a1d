package dev.ringout.imports.kbl;

import dev.ringout.cells.GaugeCell;
import dev.ringout.cells.LengthCell;
import dev.ringout.cells.Understood;
import dev.ringout.units.Gauge;
import dev.ringout.units.Length;
import dev.ringout.units.Numbers;
import java.math.BigDecimal;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;

/** Numbers with their unit: of SI by the schema's own words, or by a name. */
final class Values {
  /** The powers of ten of the schema's SI_prefix. */
  private static final Map<String, Integer> PREFIXES =
      Map.of("", 0, "micro", -6, "milli", -3, "centi", -2, "kilo", 3);

  /** Names of units as files write them, for those that read cells. */
  private static final Map<String, String> NAMES =
      Map.of(
          "millimetre",
          "mm",
          "millimeter",
          "mm",
          "centimetre",
          "cm",
          "centimeter",
          "cm",
          "squaremillimetre",
          "mm2",
          "squaremillimeter",
          "mm2",
          "sqmm",
          "mm2",
          "mm²",
          "mm2",
          "mm^2",
          "mm2",
          "qmm",
          "mm2");

  private final References references;

  Values(References references) {
    this.references = references;
  }

  /** A length. */
  Understood<Length> length(Element value) throws NotRead {
    Unit unit = unit(value);
    String text = value.said("Value_component");
    OptionalDouble number = number(text);
    if (number.isEmpty() || number.getAsDouble() < 0) {
      return Understood.not("\"" + text + "\" is not a length");
    }
    if (unit.isMetres() && unit.dimension().isEmpty()) {
      return Understood.as(new Length(scaled(number.getAsDouble(), unit.power())));
    }
    return unit.name().isEmpty()
        ? Understood.not("\"" + text + "\" is not a length: its unit is " + unit.said())
        : LengthCell.length(Numbers.plain(number.getAsDouble()), unit.name());
  }

  /** A cross-section. */
  Understood<Gauge> gauge(Element value) throws NotRead {
    Unit unit = unit(value);
    String text = value.said("Value_component");
    OptionalDouble number = number(text);
    if (number.isEmpty() || number.getAsDouble() <= 0) {
      return Understood.not("\"" + text + "\" is not a cross-section");
    }
    if (unit.isMetres() && unit.dimension().equals("square")) {
      double area = scaled(number.getAsDouble(), 2 * (unit.power() + 3));
      return Understood.as(new Gauge.SquareMillimetres(area));
    }
    boolean named = unit.name().equals("mm2") || unit.name().equalsIgnoreCase("AWG");
    return named
        ? GaugeCell.gauge(Numbers.plain(number.getAsDouble()), unit.name())
        : Understood.not("\"" + text + "\" is not a cross-section: its unit is " + unit.said());
  }

  /** In decimals, so that 2510 mm are 2.51 m and not a little more. */
  private static double scaled(double number, int powerOfTen) {
    return BigDecimal.valueOf(number).scaleByPowerOfTen(powerOfTen).doubleValue();
  }

  private static OptionalDouble number(String text) {
    try {
      double number = Double.parseDouble(text);
      return Double.isFinite(number) ? OptionalDouble.of(number) : OptionalDouble.empty();
    } catch (NumberFormatException e) {
      return OptionalDouble.empty();
    }
  }

  /**
   * A unit.
   *
   * @param name its own name, where it has one, as cells write it
   * @param base of SI, or empty
   */
  private record Unit(String name, String base, String prefix, String dimension) {
    boolean isMetres() {
      return base.equals("metre") && PREFIXES.containsKey(prefix);
    }

    int power() {
      return PREFIXES.getOrDefault(prefix, 0);
    }

    String said() {
      String said = String.join(" ", dimension, prefix + base, name).strip();
      return said.isEmpty() ? "not said" : "\"" + said + "\"";
    }
  }

  private Unit unit(Element value) throws NotRead {
    Element unit = references.one(value, "Unit_component", "Unit");
    String name = unit.said("Unit_name");
    String key = name.toLowerCase(Locale.ROOT).replaceAll("[\\s_.-]", "");
    return new Unit(
        NAMES.getOrDefault(key, name),
        unit.said("Si_unit_name").toLowerCase(Locale.ROOT),
        unit.said("Si_prefix").toLowerCase(Locale.ROOT),
        unit.said("Si_dimension").toLowerCase(Locale.ROOT));
  }
}
