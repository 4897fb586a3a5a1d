package dev.ringout.compare;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.ringout.check.CheckResult;
import dev.ringout.circuit.JoinLimits.Basis;
import dev.ringout.support.UnitUnderTest;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The value of a join against its wires. Forty feet of AWG 20: solid at 10.15 ohms per 1000 ft
 * (printed tables) 0.406 Ω, stranded at least 0.348 Ω (0.6162 mm², MIL-DTL-29606A table III-A, and
 * its lay): 0.313 to 0.458 Ω with two contacts of 5 mΩ and 10 %.
 */
class ValueTest {
  @TempDir Path folder;

  private UnitUnderTest unit() {
    return new UnitUnderTest(folder).wire("W1,J1-A,P2-1,20,40 ft").limit("open min,1,MΩ");
  }

  private static Judged first(CheckResult result) {
    return result.comparison().inForce().get(0);
  }

  private Judged read(UnitUnderTest unit, String reading) {
    return first(unit.reads("J1-A", "P2-1", reading).check());
  }

  @ParameterizedTest
  @CsvSource({
    "0.41,AS_EXPECTED",
    "0.314,AS_EXPECTED",
    "0.307,LOW",
    "0.29,LOW",
    "0.05,LOW",
    "0.457,AS_EXPECTED",
    "0.46,AS_EXPECTED",
    "0.47,AS_EXPECTED",
    "0.48,HIGH",
    "0.4,AS_EXPECTED",
    "0,CANT_TELL",
    "1,CANT_TELL",
    "beep,NOT_COMPARED",
    "<1,NOT_COMPARED",
    "OL,NOT_COMPARED"
  })
  void a_value_is_held_against_an_interval(String reading, ValueVerdict verdict) {
    assertEquals(verdict, read(unit(), reading).value());
  }

  @Test
  void what_is_low_still_joins_but_the_unit_does_not_conform() {
    CheckResult result = unit().reads("J1-A", "P2-1", "0.29").reads("J1-A", "REST", "OL").check();
    assertEquals(Outcome.CONFORMS, first(result).outcome());
    assertEquals(new Coverage.Tally(1, 1), result.coverage().joins());
    assertEquals(CheckResult.Verdict.INCOMPLETE, result.verdict());
  }

  @Test
  void what_is_within_a_given_limit_and_above_the_wires_is_still_said_to_be_high() {
    Judged judged = read(unit().limit("closed max,2,Ω"), "0.9");
    assertEquals(Outcome.CONFORMS, judged.outcome());
    assertEquals(Basis.GIVEN, judged.limit().basis());
    assertEquals(ValueVerdict.HIGH, judged.value());
  }

  @Test
  void a_limit_in_the_file_wins_and_what_it_lets_pass_is_no_fault() {
    CheckResult result =
        unit()
            .limit("closed max,2,Ω")
            .reads("J1-A", "P2-1", "0.9")
            .reads("J1-A", "REST", "OL")
            .check();
    assertEquals(CheckResult.Verdict.CONFORMS, result.verdict());
    assertEquals(1, result.values().unlike().size());
  }

  @Test
  void copper_grows_by_four_tenths_of_a_percent_a_degree() {
    assertEquals(ValueVerdict.HIGH, read(unit().job("temperature,20 °C,"), "0.49").value());
    assertEquals(ValueVerdict.AS_EXPECTED, read(unit().job("temperature,60,°C"), "0.49").value());
  }

  @Test
  void fahrenheit_is_understood_and_what_is_no_temperature_is_said() {
    assertEquals(ValueVerdict.AS_EXPECTED, read(unit().job("temperature,140 °F,"), "0.49").value());
    UnitUnderTest vague = new UnitUnderTest(folder).wire("W1,J1-A,P2-1").job("temperature,warm,");
    assertTrue(
        vague.reads("J1-A", "P2-1", "0.2").problems().stream()
            .anyMatch(problem -> problem.text().contains("\"warm\" is not a temperature")));
  }

  @Test
  void what_the_leads_read_together_is_taken_off() {
    assertEquals(ValueVerdict.HIGH, read(unit(), "0.62").value());
    assertEquals(ValueVerdict.AS_EXPECTED, read(unit().job("lead null,0.21,Ω"), "0.62").value());
    UnitUnderTest nulled = new UnitUnderTest(folder.resolve("nulled"));
    nulled.wire("W1,J1-A,P2-1,20,40 ft").limit("meter,0.2,Ω").job("lead null,nulled,");
    assertEquals(ValueVerdict.HIGH, read(nulled, "0.62").value());
  }

  @ParameterizedTest
  @CsvSource({
    "0.1 %,HIGH",
    "5 %,AS_EXPECTED",
    "3 % + 5 digits,AS_EXPECTED",
    "±(0.5 % rdg + 20 dgt),AS_EXPECTED",
    "0.1 % + 30 mΩ,AS_EXPECTED",
    "500 mΩ,CANT_TELL"
  })
  void the_meter_s_accuracy_widens_what_may_be(String accuracy, ValueVerdict verdict) {
    assertEquals(verdict, read(unit().job("meter accuracy," + accuracy + ","), "0.475").value());
  }

  @Test
  void a_coarse_meter_can_tell_nothing_of_a_short_wire_and_says_so() {
    UnitUnderTest unit =
        new UnitUnderTest(folder).wire("W1,J1-A,P2-1,20,1 ft").job("meter resolution,0.1,Ω");
    assertEquals(ValueVerdict.CANT_TELL, read(unit, "0.00").value());
  }

  /** A spreadsheet drops the noughts at the end. */
  @Test
  void the_resolution_that_is_said_is_the_digit_however_few_are_written() {
    UnitUnderTest unit = new UnitUnderTest(folder).wire("W1,J1-A,P2-1").limit("closed max,50 mΩ");
    assertEquals(Outcome.CONFORMS, read(unit, "0.2").outcome());
    assertEquals(Outcome.RESISTIVE, read(unit.job("meter resolution,1,mΩ"), "0.2").outcome());
  }

  @Test
  void without_a_length_the_fixed_limit_stands_and_the_reading_says_so() {
    Judged judged = read(new UnitUnderTest(folder).wire("W1,J1-A,P2-1,20,"), "0.9");
    assertEquals(Basis.NO_LENGTH, judged.limit().basis());
    assertEquals(1, judged.limit().ohms());
  }

  @Test
  void a_closed_switch_contact_adds_its_own_allowance() {
    CheckResult result =
        new UnitUnderTest(folder)
            .wire("W1,P1-1,S1-COM,20,40 ft")
            .wire("W2,P1-2,S1-NC,20,40 ft")
            .contact("S1,FREE,COM,NC")
            .contact("S1,MADE,COM,NO")
            .limit("switch contact,50,mΩ")
            .reads("P1-1", "P1-2", "0.95")
            .check();
    assertEquals(ValueVerdict.AS_EXPECTED, first(result).value());
    assertEquals(2 * 0.4576 + 0.05, first(result).limit().ohms(), 1e-3);
  }

  /** Two equal wires side by side: half of one; Kirchhoff. */
  @Test
  void parallel_wires_read_half_of_one() {
    CheckResult result =
        new UnitUnderTest(folder)
            .wire("W1,J1-A,E1-1,20,40 ft")
            .wire("W2,J1-A,E1-1,20,40 ft")
            .reads("J1-A", "E1-1", "0.206")
            .check();
    assertEquals(0.2288, first(result).limit().ohms(), 1e-4);
    assertEquals(ValueVerdict.AS_EXPECTED, first(result).value());
  }
}
