package dev.ringout.trade;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.ringout.check.CheckResult;
import dev.ringout.diagnose.Certainty;
import dev.ringout.diagnose.Fault;
import dev.ringout.diagnose.NextReading;
import dev.ringout.support.UnitUnderTest;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Where a slip of the pen and a fault of the unit both explain a value, both are said, neither is
 * certain, and the value is asked for once more; common practice, no source.
 */
class PenOrFaultTest {
  @TempDir Path folder;

  /** Four metres of AWG 20 are 0.13 Ω. */
  private UnitUnderTest sixWires(String... readings) {
    UnitUnderTest unit = new UnitUnderTest(folder);
    for (int pin = 1; pin <= 6; pin++) {
      unit.wire("W" + pin + ",J1-" + pin + ",P1-" + pin + ",20,4 m");
    }
    for (int pin = 1; pin <= 6; pin++) {
      unit.reads("J1-" + pin, "P1-" + pin, readings[pin - 1]);
    }
    return unit;
  }

  /** R1 of 1 kΩ reads 385 Ω three times and something else at its own points; a jumper is open. */
  private CheckResult besideAnOpenJumper(String readOfR1) {
    UnitUnderTest unit = sixWires("0.130", "0.124", "0.121", "0.130", "0.124", "0.122");
    unit.part("R1,1,2,resistor,1 kΩ,10,").link("TB1,1,2");
    unit.wire("W7,J1-7,R1-1,20,4 m").wire("W8,J1-8,R1-2,20,4 m").wire("W9,J1-9,TB1-1,20,4 m");
    unit.reads("J1-7", "R1-1", "0.124").reads("J1-8", "R1-2", "0.123");
    unit.reads("J1-9", "TB1-1", "0.124").reads("TB1-1", "TB1-2", "OL");
    unit.reads("R1-1", "R1-2", readOfR1).reads("J1-7", "REST", "385.1");
    unit.reads("J1-8", "REST", "385.1").reads("J1-7", "J1-8", "385.0");
    return unit.check();
  }

  private static double oddsOfOthers(Fault fault) {
    return fault.finding().alternatives().stream().mapToDouble(Fault.Alternative::odds).sum();
  }

  private static void isAskedForAgain(CheckResult result) {
    NextReading next = result.diagnosis().next().get(0);
    assertEquals(NextReading.Purpose.CONFIRM, next.purpose());
  }

  /** Read alike both ways: a failed diode, or another part; hardly 620 kΩ with the k forgotten. */
  @Test
  void a_diode_that_conducts_both_ways_is_bad_first_of_all() {
    UnitUnderTest unit = sixWires("0.13", "0.12", "0.12", "0.13", "0.12", "0.12");
    unit.part("D1,A,K,diode,").wire("W7,J1-7,D1-A,20,4 m").wire("W8,J1-8,D1-K,20,4 m");
    CheckResult result = unit.readsBothWays("J1-7", "J1-8", "0.62 kΩ", "0.62 kΩ").check();
    Fault.WrongPart part = assertInstanceOf(Fault.WrongPart.class, OnlyFault.of(result));
    assertEquals("D1", part.part().ref());
    assertEquals(Certainty.LIKELY, part.finding().certainty());
  }

  @Test
  void a_joint_ten_times_too_high_to_the_digit_of_the_others_is_poor_and_maybe_the_pen() {
    CheckResult result = sixWires("0.13", "0.12", "0.12", "0.13", "0.12", "1.24").check();
    Fault fault = OnlyFault.of(result);
    assertTrue(fault.asHighResistance().isPresent());
    assertEquals(Certainty.LIKELY, fault.finding().certainty());
    assertTrue(oddsOfOthers(fault) > 0.01);
    isAskedForAgain(result);
  }

  /** A spreadsheet makes 1.2 of 1.20: where no value ends in a zero, a digit less says little. */
  @Test
  void a_digit_less_says_less_where_zeros_at_the_end_are_dropped() {
    Fault dropped = OnlyFault.of(sixWires("0.13", "0.12", "0.12", "0.13", "0.12", "1.2").check());
    assertInstanceOf(Fault.Misscaled.class, dropped);
    assertTrue(oddsOfOthers(dropped) > 0.3, "the poor joint stands beside it");
    folder = folder.resolve("kept");
    Fault kept = OnlyFault.of(sixWires("0.13", "0.12", "0.10", "0.13", "0.12", "1.2").check());
    assertInstanceOf(Fault.Misscaled.class, kept);
    assertTrue(oddsOfOthers(kept) < 0.25);
    assertTrue(oddsOfOthers(kept) > 0.05);
  }

  /** Another value of that size is written to the same coarse digit: so does this meter. */
  @Test
  void a_coarse_digit_says_nothing_where_the_meter_shows_such_values_so() {
    UnitUnderTest unit = sixWires("0.13", "0.12", "0.12", "0.13", "0.10", "12");
    unit.part("R1,1,2,resistor,15 Ω,10,");
    Fault fault = OnlyFault.of(unit.reads("R1-1", "R1-2", "15").check());
    assertTrue(fault.asHighResistance().isPresent());
    assertEquals(Certainty.LIKELY, fault.finding().certainty());
  }

  /** 0.074 in a column headed mΩ, where the others stand as 120: no wire is that thick. */
  @Test
  void a_join_a_thousand_times_too_low_is_the_pen_and_no_other_gauge() {
    CheckResult result = sixWires("0.130", "0.124", "0.121", "0.130", "0.124", "0.000122").check();
    Fault.Misscaled scale = assertInstanceOf(Fault.Misscaled.class, OnlyFault.of(result));
    assertEquals(0.001, scale.times(), 1e-9);
    assertEquals(Certainty.LIKELY, scale.finding().certainty());
  }

  /**
   * R1 reads ten times too high, and the rows of its reading and of a gap are exchanged: neither
   * that a probe was elsewhere nor that the gap leaks is certain.
   */
  @Test
  void no_slip_of_the_test_and_no_leak_that_one_reading_shows_is_certain() {
    UnitUnderTest unit = sixWires("0.130", "0.124", "0.121", "0.130", "0.124", "0.122");
    unit.part("R1,1,2,resistor,1 kΩ,10,");
    unit.wire("W7,J1-7,R1-1,20,4 m").wire("W8,J1-8,R1-2,20,4 m");
    unit.reads("J1-7", "R1-1", "0.124").reads("J1-8", "R1-2", "0.123");
    unit.reads("R1-1", "R1-2", "10.345 kΩ").reads("J1-7", "REST", "10.345 kΩ");
    unit.reads("J1-7", "J1-8", "OL");
    List<Fault> faults = unit.reads("J1-7", "J1-1", "10.345 kΩ").check().diagnosis().faults();
    assertTrue(faults.size() > 1);
    for (Fault fault : faults) {
      boolean isCertain = fault.finding().certainty() == Certainty.CERTAIN;
      assertTrue(!isCertain || fault.asWrongPart().isPresent(), fault.toString());
    }
  }

  /**
   * R1 of 1 kΩ reads 385 Ω three times, and 385 kΩ once. Beside it a jumper is open: whatever is
   * made of R1, that is told.
   */
  @Test
  void a_value_a_power_of_ten_from_what_others_read_is_the_pen_and_hides_no_other_fault() {
    CheckResult result = besideAnOpenJumper("385000");
    assertEquals(List.of(), result.diagnosis().unexplained());
    assertEquals(
        List.of("Misscaled", "Open", "WrongPart"),
        result.diagnosis().faults().stream()
            .map(one -> one.getClass().getSimpleName())
            .sorted()
            .toList());
  }

  /**
   * A reading that can't be true with two others: the open jumper beside it is told all the same.
   */
  @Test
  void what_nothing_explains_hides_no_fault_beside_it() {
    CheckResult result = besideAnOpenJumper("271000");
    assertTrue(result.diagnosis().faults().stream().anyMatch(Fault.Open.class::isInstance));
  }

  /**
   * W2 of 8 m reads what W3 of 2.5 m should, and the other way round: no thick wire and no joint.
   */
  @Test
  void a_low_join_beside_a_high_one_that_fit_each_other_are_two_rows_exchanged() {
    UnitUnderTest unit = new UnitUnderTest(folder);
    unit.wire("W1,J1-1,P1-1,20,4 m").wire("W2,J1-2,P1-2,20,8 m").wire("W3,J1-3,P1-3,20,2.5 m");
    unit.wire("W4,J1-4,P1-4,20,4 m").wire("W5,J1-5,P1-5,20,4 m").reads("J1-1", "P1-1", "0.134");
    unit.reads("J1-2", "P1-2", "0.084").reads("J1-3", "P1-3", "0.275");
    CheckResult result = unit.reads("J1-4", "P1-4", "0.133").reads("J1-5", "P1-5", "0.131").check();
    assertInstanceOf(Fault.ExchangedRows.class, OnlyFault.of(result));
  }
}
