package dev.ringout.trade;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.ringout.check.CheckResult;
import dev.ringout.diagnose.Certainty;
import dev.ringout.diagnose.Fault;
import dev.ringout.diagnose.SlipFact;
import dev.ringout.support.UnitUnderTest;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Slips of the pen on the sheet: said first, and no wire is blamed for them. */
class SheetSlipsTest {
  @TempDir Path folder;

  private UnitUnderTest tenWires() {
    UnitUnderTest unit = new UnitUnderTest(folder);
    for (int pin = 1; pin <= 10; pin++) {
      unit.wire("W" + pin + ",J1-" + pin + ",P2-" + pin + ",20,9 m");
    }
    return unit.part("K1,1,2,winding,300 Ω,10,");
  }

  /** Nine metres of AWG 20 are 0.3 Ω. */
  private void reads(UnitUnderTest unit, int from, int to) {
    for (int pin = from; pin <= to; pin++) {
      unit.reads("J1-" + pin, "P2-" + pin, "0.31" + pin % 3);
    }
  }

  @Test
  void milliohms_written_as_ohms_over_the_whole_sheet_are_one_slip() {
    UnitUnderTest unit = tenWires();
    for (int pin = 1; pin <= 10; pin++) {
      unit.reads("J1-" + pin, "P2-" + pin, "31" + pin % 3);
    }
    Fault.Misscaled scale = assertInstanceOf(Fault.Misscaled.class, OnlyFault.of(unit.check()));
    assertTrue(scale.wholeSheet());
    assertEquals(1000, scale.times());
    assertEquals(10, scale.finding().readings().size());
  }

  /** 3 for 0.003 Ω is too coarse to be judged as it stands. */
  @Test
  void jumpers_on_a_sheet_in_milliohms_are_of_that_slip() {
    UnitUnderTest unit = tenWires();
    for (int pin = 1; pin <= 10; pin++) {
      unit.reads("J1-" + pin, "P2-" + pin, "31" + pin % 3);
    }
    unit.link("TB1,1,2").job("meter accuracy,0.5 % + 2 digits");
    Fault.Misscaled scale =
        assertInstanceOf(
            Fault.Misscaled.class, OnlyFault.of(unit.reads("TB1-1", "TB1-2", "3").check()));
    assertTrue(scale.wholeSheet());
  }

  @Test
  void one_value_a_hundred_or_a_thousand_times_too_high_is_the_point_and_no_poor_joint() {
    for (String written : new String[] {"31.4", "314"}) {
      UnitUnderTest unit = new UnitUnderTest(folder.resolve(written));
      for (int pin = 1; pin <= 10; pin++) {
        unit.wire("W" + pin + ",J1-" + pin + ",P2-" + pin + ",20,9 m");
      }
      reads(unit, 1, 9);
      CheckResult result = unit.reads("J1-10", "P2-10", written).check();
      Fault.Misscaled scale = assertInstanceOf(Fault.Misscaled.class, OnlyFault.of(result));
      assertTrue(!scale.wholeSheet());
      assertEquals(1, scale.finding().alternatives().size(), "a poor joint");
    }
  }

  @Test
  void a_value_measured_to_the_same_digit_as_the_rest_is_a_poor_joint() {
    UnitUnderTest unit = tenWires();
    reads(unit, 1, 9);
    CheckResult result = unit.reads("J1-10", "P2-10", "5.237").check();
    assertInstanceOf(Fault.HighResistance.class, OnlyFault.of(result));
  }

  @Test
  void two_rows_with_each_the_other_s_value_are_no_open_and_no_short() {
    UnitUnderTest unit = tenWires();
    reads(unit, 1, 9);
    unit.reads("J1-10", "P2-10", "301");
    CheckResult result = unit.reads("K1-1", "K1-2", "0.312").check();
    Fault.ExchangedRows rows = assertInstanceOf(Fault.ExchangedRows.class, OnlyFault.of(result));
    assertEquals("J1-10 to P2-10", rows.one().reading().subject());
    assertEquals("K1-1 to K1-2", rows.other().reading().subject());
  }

  @Test
  void positions_of_a_switch_written_in_each_other_s_rows_are_exchanged() {
    UnitUnderTest unit = tenWires();
    unit.contact("S1,FREE,COM,NC").contact("S1,MADE,COM,NO");
    reads(unit, 1, 10);
    unit.reads("S1-COM", "S1-NC", "0.031").readsIn("S1=MADE", "S1-COM", "S1-NC", "OL");
    unit.reads("S1-COM", "S1-NO", "0.045").readsIn("S1=MADE", "S1-COM", "S1-NO", "OL");
    assertInstanceOf(Fault.ExchangedRows.class, OnlyFault.of(unit.check()));
  }

  /** A beep to a whole ohm on a sheet of milliohms: 3 mΩ in the wrong column. */
  @Test
  void a_jumper_written_to_a_coarser_digit_than_all_others_is_the_point_though_it_may_be_good() {
    UnitUnderTest unit = tenWires();
    reads(unit, 1, 10);
    unit.link("TB1,1,2").job("meter accuracy,0.5 % + 2 digits");
    CheckResult result = unit.reads("TB1-1", "TB1-2", "3").check();
    assertInstanceOf(Fault.Misscaled.class, OnlyFault.of(result));
  }

  /** From the third row on each value stands a row lower, to the last: K2's own is lost. */
  @Test
  void a_part_that_is_missing_in_the_last_rows_of_a_slip_is_told_beside_it() {
    UnitUnderTest unit = new UnitUnderTest(folder);
    for (int pin = 1; pin <= 6; pin++) {
      unit.wire("W" + pin + ",J1-" + pin + ",P2-" + pin + ",20," + (pin % 2 == 0 ? 9 : 3) + " m");
    }
    unit.part("K1,1,2,winding,300 Ω,10,").part("K2,1,2,winding,120 Ω,10,");
    unit.reads("J1-1", "P2-1", "0.101").reads("J1-2", "P2-2", "0.310").reads("J1-3", "P2-3", "");
    unit.reads("J1-4", "P2-4", "0.102").reads("J1-5", "P2-5", "0.311");
    unit.reads("J1-6", "P2-6", "0.103").reads("K1-1", "K1-2", "0.312");
    CheckResult result = unit.reads("K2-1", "K2-2", "OL").check();
    assertEquals(
        List.of("SlippedRows", "WrongPart"),
        result.diagnosis().faults().stream().map(one -> one.getClass().getSimpleName()).toList());
    Fault.WrongPart part = (Fault.WrongPart) result.diagnosis().faults().get(1);
    assertEquals("K1", part.part().ref());
  }

  /**
   * The third row was left blank, and from there on each value stands a row lower: the open of W5
   * too, among rows that all read alike.
   */
  @Test
  void a_slip_begins_at_the_row_left_blank_though_an_open_lies_between() {
    UnitUnderTest unit = new UnitUnderTest(folder);
    for (int pin = 1; pin <= 10; pin++) {
      unit.wire("W" + pin + ",J1-" + pin + ",P2-" + pin + ",,");
      String value = pin == 3 ? "" : pin == 6 ? "OL" : "0.31" + pin % 3;
      unit.reads("J1-" + pin, "P2-" + pin, value);
    }
    unit.part("K1,1,2,winding,300 Ω,10,").part("K2,1,2,winding,120 Ω,10,");
    unit.reads("K1-1", "K1-2", "0.312");
    List<Fault> faults = unit.reads("K2-1", "K2-2", "301").check().diagnosis().faults();
    assertInstanceOf(Fault.SlippedRows.class, faults.get(0));
    Fault.Open open = assertInstanceOf(Fault.Open.class, faults.get(1));
    assertEquals(2, faults.size(), "the slip and the open");
    assertEquals(List.of("W5"), open.suspects().stream().map(one -> one.label()).toList());
  }

  /** Four rows slipped; the next, of a short wire, stands where it belongs. */
  @Test
  void a_value_that_is_as_expected_where_it_stands_is_no_row_of_a_slip_that_would_make_it_low() {
    UnitUnderTest unit = new UnitUnderTest(folder);
    unit.wire("W1,J1-1,P2-1,20,9 m").wire("W2,J1-2,P2-2,20,9 m");
    unit.wire("W3,J1-3,P2-3,20,3 m").wire("W4,J1-4,P2-4,20,9 m");
    unit.part("K1,1,2,winding,300 Ω,10,").part("K2,1,2,winding,120 Ω,10,");
    unit.reads("J1-1", "P2-1", "").reads("K1-1", "K1-2", "0.310").reads("K2-1", "K2-2", "301");
    unit.reads("J1-2", "P2-2", "121").reads("J1-3", "P2-3", "0.103");
    CheckResult result = unit.reads("J1-4", "P2-4", "0.312").check();
    assertInstanceOf(Fault.SlippedRows.class, OnlyFault.of(result));
  }

  /** W2 is open, and the rows of W1 and W2 are exchanged: 0.12 Ω is what W1 has. */
  @Test
  void a_poor_joint_is_not_certain_where_an_open_row_beside_it_expects_just_its_value() {
    UnitUnderTest unit = new UnitUnderTest(folder);
    unit.wire("W1,J1-1,P1-1,22,2.4 m").wire("W2,J1-2,P1-2,22,0.4 m").wire("W3,J1-3,P1-3,22,1 m");
    unit.reads("J1-1", "P1-1", "OL").reads("J1-2", "P1-2", "0.124");
    CheckResult result = unit.reads("J1-3", "P1-3", "0.052").check();
    Fault.HighWire high =
        result.diagnosis().faults().stream()
            .flatMap(fault -> fault.asHighWire().stream())
            .findFirst()
            .orElseThrow();
    assertTrue(
        high.finding().alternatives().stream()
            .flatMap(one -> one.slips().stream())
            .anyMatch(SlipFact.ExchangedRows.class::isInstance));
    assertEquals(Certainty.LIKELY, high.finding().certainty());
  }

  /**
   * A line skipped at the third row, and a joint of W5 that is poor: in which row its value belongs
   * hangs on where the slip began and ended.
   */
  @Test
  void nothing_is_certain_that_rows_which_slipped_show() {
    UnitUnderTest unit = new UnitUnderTest(folder).job("lead null,nulled");
    List<String> values = new ArrayList<>();
    List<String[]> rows = new ArrayList<>();
    for (int pin = 1; pin <= 9; pin++) {
      unit.wire("W" + pin + ",J1-" + pin + ",P2-" + pin + ",20,9 m");
      unit.part("K" + pin + ",1,2,winding,300 Ω,10,");
      rows.add(new String[] {"J1-" + pin, "P2-" + pin});
      rows.add(new String[] {"K" + pin + "-1", "K" + pin + "-2"});
      values.add(pin == 5 ? "4.311" : "0.31" + pin);
      values.add("30" + pin);
    }
    values.add(2, "");
    for (int row = 0; row < rows.size(); row++) {
      unit.reads(rows.get(row)[0], rows.get(row)[1], values.get(row));
    }
    List<Fault> faults = unit.check().diagnosis().faults();
    assertInstanceOf(Fault.SlippedRows.class, faults.get(0));
    assertEquals(2, faults.size(), "the slip and the poor joint");
    assertTrue(
        faults.stream().noneMatch(fault -> fault.finding().certainty() == Certainty.CERTAIN));
  }
}
