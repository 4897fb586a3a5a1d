package dev.ringout.reference;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.ringout.check.CheckResult;
import dev.ringout.circuit.JoinLimits.Basis;
import dev.ringout.compare.Judged;
import dev.ringout.compare.ValueVerdict;
import dev.ringout.standards.CopperWire;
import dev.ringout.standards.Tables;
import dev.ringout.standards.WireOhms;
import dev.ringout.support.UnitUnderTest;
import dev.ringout.units.Gauge;
import dev.ringout.units.OhmsRange;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What is not copper is not judged as copper. */
class OtherMetalsTest {
  private static final WireOhms WIRES = WireOhms.of(CopperWire.published(), Tables.published());
  private static final double METRES_PER_DOUBLE_FOOT = 0.3048;

  @TempDir Path folder;

  private static OhmsRange perMetre(int awg, String type, double celsius) {
    return WIRES.perMetre(new Gauge.Awg(awg), type, celsius).orElseThrow();
  }

  private static void encloses(OhmsRange range, double ohms) {
    assertTrue(range.lowOhms() <= ohms && ohms <= range.highOhms(), ohms + " in " + range);
  }

  /**
   * Source: FAA AC 43.13-1B change 1 page 11-23: aluminium resists as copper two numbers finer
   * does; table 11-9: AWG 10, 6 and 4 of copper may have 1.26, 0.44 and 0.28 ohms per 1000 ft.
   */
  @ParameterizedTest
  @CsvSource({"8, 1.26", "4, 0.44", "2, 0.28"})
  void aluminium_resists_about_as_copper_two_numbers_finer(int awg, double ohmsPer1000Feet) {
    OhmsRange aluminium = perMetre(awg, "aluminium 600 V", 20);
    assertEquals(1, aluminium.highOhms() * 304.8 / ohmsPer1000Feet, 0.1);
    assertTrue(aluminium.lowOhms() > perMetre(awg, "", 20).highOhms() * 1.2, "not copper");
  }

  /** Source: the same page: R2/R1 = (238.1 + T2)/(238.1 + T1) for aluminium. */
  @ParameterizedTest
  @ValueSource(doubles = {-20, 0, 40, 80})
  void aluminium_changes_with_temperature_by_the_faa_s_constant(double celsius) {
    double ratio = perMetre(8, "AL", celsius).highOhms() / perMetre(8, "AL", 20).highOhms();
    assertEquals((238.1 + celsius) / 258.1, ratio, 1e-9);
  }

  /** Source: IEC 60228:2004 table 2, aluminium conductors in ohms per km. */
  @ParameterizedTest
  @CsvSource({"10, 3.08", "16, 1.91", "35, 0.868", "120, 0.253"})
  void metric_aluminium_may_have_what_iec_60228_allows(double size, double ohmsPerKilometre) {
    OhmsRange metre =
        WIRES.perMetre(new Gauge.SquareMillimetres(size), "aluminum", 20).orElseThrow();
    assertEquals(ohmsPerKilometre, metre.highOhms() * 1000, 1e-9);
    assertTrue(metre.lowOhms() < metre.highOhms());
  }

  /**
   * Source: nominal ohms per double foot of thermocouple and extension wire at 20 °C in a sensor
   * maker's catalogue: both legs of AWG 20 and 24.
   */
  @ParameterizedTest
  @CsvSource({
    "20, 0.589, chromel, alumel",
    "24, 1.490, chromel, alumel",
    "20, 0.709, chromel, constantan",
    "24, 1.795, chromel, constantan",
    "20, 0.304, copper, constantan"
  })
  void the_legs_of_a_thermocouple_add_up_to_what_is_printed(
      int awg, double ohmsPerDoubleFoot, String positive, String negative) {
    OhmsRange both = perMetre(awg, positive, 20).plus(perMetre(awg, negative, 20));
    encloses(both, ohmsPerDoubleFoot / METRES_PER_DOUBLE_FOOT);
    for (String leg : new String[] {positive, negative}) {
      assertTrue(
          !leg.equals("copper")
              == perMetre(awg, leg, 20).lowOhms() > perMetre(awg, "", 20).highOhms(),
          leg + " is not copper");
    }
  }

  @Test
  void of_a_thermocouple_of_which_only_the_type_is_said_either_leg_may_be_meant() {
    OhmsRange either = perMetre(20, "thermocouple extension type K", 20);
    encloses(either, perMetre(20, "solid chromel", 20).highOhms());
    encloses(either, perMetre(20, "solid alumel", 20).lowOhms());
    assertTrue(either.lowOhms() > perMetre(20, "", 20).highOhms());
  }

  /** Source: ASTM B624: at least 85 percent of the conductivity of annealed copper. */
  @Test
  void a_high_strength_copper_alloy_may_have_more_than_copper() {
    OhmsRange alloy = perMetre(24, "silver-coated high-strength copper alloy", 20);
    OhmsRange copper = perMetre(24, "silver-coated copper", 20);
    assertEquals(copper.lowOhms(), alloy.lowOhms(), 1e-12);
    assertEquals(copper.highOhms() / 0.85, alloy.highOhms(), 1e-6);
    // FAA AC 43.13-1B table 11-9 prints 28.40 ohms per 1000 ft for AWG 24, which fits the alloy.
    encloses(alloy, 28.40 / 304.8);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "nickel-plated copper",
        "silver plated",
        "tin coated",
        "NICKEL COATED COPPER 27%",
        "Cu with aluminium foil",
        "PVC, steel wire armoured",
        "LiYCY Al/PET",
        "M16878/4 (type E)",
        "EPR type K",
        "Ex i blue"
      })
  void a_coating_a_shield_or_an_armour_is_no_metal_of_the_conductor(String type) {
    assertEquals(perMetre(20, "", 20), perMetre(20, type, 20));
  }

  @ParameterizedTest
  @CsvSource({
    "nickel, 0.0699",
    "solid nickel 201, 0.0699",
    "nichrome 80, 1.08",
    "constantan, 0.49",
    "stainless steel, 0.69",
    "brass, 0.0608",
    "manganin, 0.482"
  })
  void a_metal_with_a_published_resistivity_is_computed_from_it(String type, double resistivity) {
    encloses(perMetre(20, type, 20), resistivity / 0.51762);
  }

  @ParameterizedTest
  @CsvSource({
    "CCA, copper-clad metal",
    "copper clad steel, copper-clad metal",
    "thermocouple extension, thermocouple",
    "phosphor bronze, bronze",
    "tungsten, another metal"
  })
  void a_metal_without_a_published_value_is_not_computed(String type, String metal) {
    assertEquals(Optional.empty(), WIRES.perMetre(new Gauge.Awg(20), type, 20));
    assertEquals(Optional.of(metal), WIRES.metalWithoutValue(type));
  }

  private static Judged first(CheckResult result) {
    return result.comparison().inForce().get(0);
  }

  @Test
  void such_a_join_is_held_against_the_fixed_limit_and_that_is_said() {
    CheckResult result =
        new UnitUnderTest(folder)
            .wireOfType("W1,J1-A,P2-1,20,4 m", "copper-clad steel")
            .reads("J1-A", "P2-1", "0.6")
            .check();
    assertEquals(Basis.OTHER_METAL, first(result).limit().basis());
    assertEquals(1, first(result).limit().ohms());
    assertEquals(1, result.values().otherMetal());
    assertEquals(1, result.values().fixedLimit());
  }

  @Test
  void an_aluminium_wire_and_a_chromel_one_raise_nothing() {
    CheckResult result =
        new UnitUnderTest(folder)
            .withoutInsulationTest()
            .wireOfType("W1,J1-A,P2-1,8,30 m", "aluminum")
            .wireOfType("W2,J1-B,P2-2,20,4 m", "chromel")
            .reads("J1-A", "P2-1", "0.104")
            .reads("J1-B", "P2-2", "5.45")
            .check();
    assertEquals(2, result.values().count(ValueVerdict.AS_EXPECTED), result.values().toString());
    assertTrue(result.diagnosis().faults().isEmpty());
  }
}
