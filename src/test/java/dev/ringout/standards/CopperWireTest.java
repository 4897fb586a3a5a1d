package dev.ringout.standards;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.ringout.units.Gauge;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** What copper has of resistance, by gauge and temperature. */
class CopperWireTest {
  private static final Gauge AWG_20 = new Gauge.Awg(20);

  private final CopperWire copper = CopperWire.published();

  /** Source: International Annealed Copper Standard, 1/58 Ω·mm²/m at 20 °C (NBS Handbook 100). */
  @Test
  void a_metre_of_one_square_millimetre_has_a_fifty_eighth_of_an_ohm() {
    Gauge one = new Gauge.SquareMillimetres(1);
    assertEquals(1 / 58.0, copper.ohmsPerMetreOfCopper(one, 20).orElseThrow(), 1e-7);
  }

  /** Source: NBS Circular 31: α at 20 °C is 0.00393 for each kelvin. */
  @Test
  void a_hundred_kelvin_more_make_thirty_nine_percent_more_resistance() {
    assertEquals(1.393, copper.timesAt(120), 1e-12);
    assertEquals(1, copper.timesAt(20), 0);
  }

  /** Source: ASTM B258: AWG 20 has 1020 circular mils, 0.518 mm². */
  @Test
  void a_gauge_has_the_area_of_its_definition() {
    assertEquals(0.5176, copper.squareMillimetres(AWG_20).orElseThrow(), 5e-4);
  }

  /** Source: IEC 60228:2004 table 3, class 5, metal-coated: 1 mm² has at most 20.0 Ω/km. */
  @Test
  void a_metric_size_has_the_most_that_its_class_allows() {
    Gauge one = new Gauge.SquareMillimetres(1);
    assertEquals(0.0200, copper.ohmsPerMetre(one, 20).orElseThrow(), 1e-9);
  }

  @Test
  void nothing_is_said_of_a_size_that_no_table_has() {
    assertEquals(OptionalDouble.empty(), copper.ohmsPerMetre(new Gauge.Awg(77), 20));
    Gauge odd = new Gauge.SquareMillimetres(1.23);
    assertEquals(OptionalDouble.empty(), copper.ohmsPerMetre(odd, 20));
    assertEquals(Optional.empty(), copper.isWithin(new Gauge.Awg(77), new Gauge.Awg(24), AWG_20));
  }

  /** Source: ASTM B258 and IEC 60228: 0.5 mm² lies between AWG 22 (0.326) and AWG 20 (0.518). */
  @Test
  void a_metric_wire_is_held_against_american_gauges_by_its_area() {
    Gauge half = new Gauge.SquareMillimetres(0.5);
    assertEquals(Optional.of(true), copper.isWithin(half, new Gauge.Awg(22), AWG_20));
    assertEquals(Optional.of(false), copper.isWithin(half, new Gauge.Awg(26), new Gauge.Awg(22)));
  }

  @Test
  void sizes_are_listed_from_the_finest_and_of_the_wire_s_own_kind() {
    assertEquals(new Gauge.Awg(-3), last(AWG_20));
    assertTrue(
        copper
            .sizesLike(new Gauge.SquareMillimetres(1))
            .contains(new Gauge.SquareMillimetres(0.75)));
  }

  private Gauge last(Gauge like) {
    var sizes = copper.sizesLike(like);
    return sizes.get(sizes.size() - 1);
  }
}
