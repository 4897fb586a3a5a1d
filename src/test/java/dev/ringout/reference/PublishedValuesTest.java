package dev.ringout.reference;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.ringout.standards.ContactSizes;
import dev.ringout.standards.CopperWire;
import dev.ringout.standards.PublishedTable;
import dev.ringout.standards.Tables;
import dev.ringout.standards.WireOhms;
import dev.ringout.units.Gauge;
import dev.ringout.units.OhmsRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Our tables against the printed ones. */
class PublishedValuesTest {
  private static final double METRES_PER_1000_FT = 304.8;
  private final CopperWire copper = CopperWire.published();

  /**
   * Source: table of American Wire Gauge sizes, HyperPhysics (Georgia State University),
   * hyperphysics.phy-astr.gsu.edu/hbase/Tables/wirega.html: resistance of solid copper at 20 °C in
   * ohms per 1000 ft as printed.
   */
  @ParameterizedTest
  @CsvSource({
    "-3, 0.049",
    "0, 0.0983",
    "4, 0.2485",
    "8, 0.6282",
    "10, 0.9989",
    "12, 1.588",
    "14, 2.525",
    "16, 4.016",
    "18, 6.385",
    "20, 10.15",
    "22, 16.14",
    "24, 25.67",
    "26, 40.81",
    "28, 64.9",
    "30, 103.2",
    "36, 414.8",
    "40, 1049"
  })
  void resistance_by_gauge_agrees_with_the_printed_table(int gauge, double ohmsPer1000Feet) {
    double ohms = copper.ohmsPerMetre(new Gauge.Awg(gauge), 20).orElseThrow() * METRES_PER_1000_FT;
    assertEquals(ohmsPer1000Feet, ohms, ohmsPer1000Feet * 0.001);
  }

  /**
   * Source: the same table, diameters in mils: No. 4/0 is 460, No. 36 is 5; adjacent sizes differ
   * by the 39th root of 92 (ASTM B258).
   */
  @Test
  void diameters_follow_the_definition_of_the_gauge() {
    for (var row : PublishedTable.load(CopperWire.class, "awg.csv").rows()) {
      int number = Integer.parseInt(row.getOrDefault("n", ""));
      double millimetres = 0.127 * Math.pow(92, (36 - number) / 39.0);
      assertEquals(
          millimetres, Double.parseDouble(row.getOrDefault("diameter_mm", "")), millimetres * 1e-4);
    }
  }

  /**
   * Source: NEETS module 4, topic 1, table 1-2 (tpub.com/neets/book4/11c.htm): 10.4 ohms per 1000
   * ft of AWG 20 at 25 °C.
   */
  @Test
  void resistance_rises_with_temperature_as_the_navy_s_table_prints() {
    double ohms = copper.ohmsPerMetre(new Gauge.Awg(20), 25).orElseThrow() * METRES_PER_1000_FT;
    assertEquals(10.4, ohms, 0.05);
  }

  /** Source: FAA AC 43.13-1B CHG 1 page 11-22: R2/R1 = (234.5 + T2)/(234.5 + T1) for copper. */
  @ParameterizedTest
  @CsvSource({"0", "40", "60", "80"})
  void resistance_over_temperature_agrees_with_the_faa_s_constant(double celsius) {
    double ratio =
        copper.ohmsPerMetre(new Gauge.Awg(20), celsius).orElseThrow()
            / copper.ohmsPerMetre(new Gauge.Awg(20), 20).orElseThrow();
    assertEquals((234.5 + celsius) / (234.5 + 20), ratio, 0.001);
  }

  /**
   * Source: IEC 60228, factors that take a measured resistance to 20 °C, as reprinted at
   * uecables.com (product 471). They are 250/(230 + T) rounded, which differs from copper's own
   * 254.5/(234.5 + T) by up to 0.43 % (at 100 °C).
   */
  @ParameterizedTest
  @CsvSource({
    "5, 1.064", "10, 1.042", "15, 1.020", "20, 1.000", "25, 0.980", "30, 0.962", "35, 0.943",
    "40, 0.926", "50, 0.893", "60, 0.862", "70, 0.833", "80, 0.806", "90, 0.781", "100, 0.758"
  })
  void resistance_over_temperature_agrees_with_the_factors_of_iec_60228(
      double celsius, double factor) {
    assertEquals(factor, 1 / copper.timesAt(celsius), 0.005 * factor);
  }

  /**
   * Source: FAA AC 43.13-1B CHG 1 table 11-9, finished wire, ohms per 1000 ft at 20 °C. Stranded
   * wire differs from solid by its lay and its area; the default tolerance of 10 % must cover it.
   * (The table's AWG 24, 28.40, fits high-strength alloy and not copper: left out.)
   */
  @ParameterizedTest
  @CsvSource({"22,16.20", "20,9.88", "18,6.23", "14,3.06", "12,2.02"})
  void stranded_aircraft_wire_is_near_solid_copper_of_the_same_gauge(
      int gauge, double ohmsPer1000Feet) {
    double solid = copper.ohmsPerMetre(new Gauge.Awg(gauge), 20).orElseThrow() * METRES_PER_1000_FT;
    double allowed = gauge >= 18 ? 0.05 : 0.30;
    assertEquals(1, ohmsPer1000Feet / solid, allowed);
  }

  /**
   * Source: NBS Handbook 100 (1966), copper wire at 20 °C, ohms per 1000 ft of the rounded
   * diameters of ASTM B258: figures read second-hand for AWG 20, 22 and 26 in a table at
   * gradllc.com/wire.htm, the others computed from rounded diameters that are from memory. Rounding
   * a diameter to a tenth of a mil moves the resistance of fine wire by up to 0.7 %.
   */
  @ParameterizedTest
  @CsvSource({
    "20,10.13",
    "22,16.20",
    "26,41.02",
    "24,25.67",
    "18,6.386",
    "16,4.019",
    "14,2.524",
    "12,1.589",
    "10,0.9988"
  })
  void resistance_by_gauge_agrees_with_the_copper_wire_tables(int gauge, double ohmsPer1000Feet) {
    double ohms = copper.ohmsPerMetre(new Gauge.Awg(gauge), 20).orElseThrow() * METRES_PER_1000_FT;
    assertEquals(ohmsPer1000Feet, ohms, ohmsPer1000Feet * 0.007);
  }

  /**
   * Source: FAA AC 43.13-1B CHG 1 table 11-9, ohms per 1000 ft of finished tin-coated wire at 20
   * °C: the most that a wire of its type may have; the copper alone has less.
   */
  @ParameterizedTest
  @CsvSource({
    "22,16.20", "20,9.88", "18,6.23", "16,4.81", "14,3.06", "12,2.02", "10,1.26", "8,0.70",
    "6,0.44", "4,0.28", "2,0.18", "1,0.15", "0,0.12", "-1,0.09", "-2,0.07", "-3,0.06"
  })
  void the_most_that_a_wire_type_may_have_is_the_faa_s(int gauge, double ohmsPer1000Feet) {
    WireOhms wires = WireOhms.of(copper, Tables.published());
    OhmsRange metre =
        wires.perMetre(new Gauge.Awg(gauge), "M22759/16-" + gauge + "-9", 20).orElseThrow();
    assertEquals(ohmsPer1000Feet, metre.highOhms() * METRES_PER_1000_FT, gauge > 9 ? 1e-9 : 0.0051);
    assertTrue(metre.lowOhms() < metre.highOhms());
    assertTrue(metre.lowOhms() > metre.highOhms() * 0.8, "its copper is most of it");
  }

  /**
   * Source: ASTM B496-04, the standard increment of mass and resistance for stranding is 2 %;
   * MIL-DTL-29606A table III-A: 19 strands of AWG 30 have 0.9627 mm² and at most 20.4 ohms per km.
   */
  @Test
  void a_stranded_wire_has_its_nominal_area_with_two_percent_for_its_lay_or_more() {
    WireOhms wires = WireOhms.of(copper, Tables.published());
    OhmsRange metre = wires.perMetre(new Gauge.Awg(18), "stranded hook-up", 20).orElseThrow();
    assertEquals(1.02 * 0.0172414 / 0.9627, metre.lowOhms(), 1e-7);
    assertEquals(0.0204, metre.highOhms(), 1e-12);
  }

  /** Source: IEC 60228 table 3: 20.0 ohms per km for 1 mm² of class 5, coated. */
  @Test
  void a_metric_wire_may_have_what_its_class_allows() {
    OhmsRange metric =
        WireOhms.of(copper, Tables.published())
            .perMetre(new Gauge.SquareMillimetres(1), "H05V-K", 20)
            .orElseThrow();
    assertEquals(0.0200, metric.highOhms(), 1e-9);
    assertEquals(0.01724, metric.lowOhms(), 1e-5);
  }

  /**
   * Source: SAE AS39029/56 and /58 as tabulated for MIL-DTL-38999 series III (standard contact
   * tables, pages 17 and 18 of a catalogue, read second-hand in public data sets): size 22D takes
   * AWG 28 to 22, size 20 takes 24 to 20, size 16 takes 20 to 16, size 12 takes 14 to 12.
   */
  @ParameterizedTest
  @CsvSource({"22D,28,22", "20,24,20", "16,20,16", "12,14,12"})
  void a_contact_takes_its_range_of_gauges_and_no_other(String size, int finest, int coarsest) {
    ContactSizes sizes = ContactSizes.published(copper);
    var contact = sizes.find(size).orElseThrow();
    for (int gauge = 10; gauge <= 30; gauge++) {
      assertEquals(
          gauge >= coarsest && gauge <= finest,
          sizes.takes(contact, new Gauge.Awg(gauge)).orElseThrow(),
          size + " with AWG " + gauge);
    }
  }

  /** Source: the same tables: pin /58-363 and socket /56-351 are size 20. */
  @Test
  void a_contact_is_known_by_its_part_number_in_either_spelling() {
    ContactSizes sizes = ContactSizes.published(copper);
    assertEquals("20", sizes.find("M39029/58-363").orElseThrow().size());
    assertEquals("20", sizes.find("AS39029/56-351").orElseThrow().size());
    assertTrue(sizes.find("22").orElseThrow().size().equals("22"), "22 is not 22D");
  }

  @Test
  void every_published_table_names_its_source() {
    for (String table :
        new String[] {
          "awg.csv",
          "copper.csv",
          "metric-conductors.csv",
          "contact-sizes.csv",
          "cautions.csv",
          "wire-resistance.csv",
          "stranding.csv",
          "stranded-conductors.csv",
          "conductor-metals.csv",
          "switch-contacts.csv"
        }) {
      assertTrue(PublishedTable.load(CopperWire.class, table).citation().length() > 20, table);
    }
  }
}
