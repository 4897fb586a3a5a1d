package dev.ringout.trade;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.ringout.check.CheckResult;
import dev.ringout.compare.Outcome;
import dev.ringout.diagnose.Certainty;
import dev.ringout.diagnose.Fault;
import dev.ringout.support.UnitUnderTest;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What units thought up by hand showed; what a practitioner says is common practice, no source. */
class HandUnitsTest {
  @TempDir Path folder;

  private static final int PINS = 10;

  /** Ten wires from an item to another, 2 m of AWG 22 each. */
  private static void cable(UnitUnderTest unit, String from, String to) {
    for (int pin = 1; pin <= PINS; pin++) {
      unit.wire("W" + from + pin + "," + from + "-" + pin + "," + to + "-" + pin + ",22,2 m");
    }
  }

  private static void isGood(UnitUnderTest unit, String from, String to, List<Integer> but) {
    for (int pin = 1; pin <= PINS; pin++) {
      if (!but.contains(pin)) {
        unit.reads(from + "-" + pin, to + "-" + pin, "0.107");
        unit.reads(from + "-" + pin, "REST", "OL");
      }
    }
  }

  private static List<String> kinds(CheckResult result) {
    return result.diagnosis().faults().stream().map(one -> one.getClass().getSimpleName()).toList();
  }

  @Test
  void kilohms_written_as_ohms_are_the_pen_where_another_reading_shows_the_part_good() {
    UnitUnderTest unit = new UnitUnderTest(folder);
    cable(unit, "J1", "P1");
    isGood(unit, "J1", "P1", List.of());
    unit.wire("WR,J2-1,R1-1,22,2 m").part("R1,1,2,resistor,470 Ω,5,");
    unit.reads("J2-1", "R1-1", "0.107").reads("J2-1", "REST", "468.1");
    CheckResult result = unit.reads("R1-1", "R1-2", "0.468").check();
    Fault.Misscaled pen = assertInstanceOf(Fault.Misscaled.class, OnlyFault.of(result));
    assertEquals(0.001, pen.times());
    assertTrue(result.diagnosis().unexplained().isEmpty());
  }

  @Test
  void a_short_across_a_resistor_that_the_rest_shows_too_is_no_slip_of_the_pen() {
    UnitUnderTest unit = new UnitUnderTest(folder);
    cable(unit, "J1", "P1");
    isGood(unit, "J1", "P1", List.of());
    unit.wire("WR,J2-1,R1-1,22,2 m").part("R1,1,2,resistor,470 Ω,5,");
    unit.reads("J2-1", "R1-1", "0.107").reads("J2-1", "REST", "0.575");
    CheckResult result = unit.reads("R1-1", "R1-2", "0.468").check();
    assertEquals(List.of("Shorted"), kinds(result));
  }

  /** Leads are in every row: they do not make one wire of ten differ from the others. */
  @Test
  void one_wire_that_reads_more_than_its_nine_fellows_is_told_once_and_not_as_the_leads() {
    UnitUnderTest unit = new UnitUnderTest(folder);
    cable(unit, "J1", "P1");
    isGood(unit, "J1", "P1", List.of(5));
    unit.job("lead null,nulled").job("meter accuracy,0.5 % + 2 digits");
    CheckResult result = unit.reads("J1-5", "P1-5", "0.141").check();
    assertInstanceOf(Fault.HighWire.class, OnlyFault.of(result));
  }

  @Test
  void the_whole_sheet_is_in_milliohms_though_a_fifth_of_its_joins_are_jumpers_of_a_few() {
    UnitUnderTest unit = new UnitUnderTest(folder);
    cable(unit, "J1", "P1");
    for (int pin = 1; pin <= PINS; pin++) {
      unit.reads("J1-" + pin, "P1-" + pin, "10" + (5 + pin % 3));
    }
    unit.job("meter accuracy,0.5 % + 2 digits");
    for (int jumper = 1; jumper <= 4; jumper++) {
      unit.link("TB1," + jumper + "," + (jumper + 1));
      unit.reads("TB1-" + jumper, "TB1-" + (jumper + 1), Integer.toString(1 + jumper % 3));
    }
    Fault.Misscaled pen = assertInstanceOf(Fault.Misscaled.class, OnlyFault.of(unit.check()));
    assertTrue(pen.wholeSheet());
  }

  /** Two rows of an insert, each counted from the wrong end; where all answer was read. */
  @Test
  void four_crosses_at_one_connector_whose_places_were_read_are_told_as_these_four() {
    UnitUnderTest unit = new UnitUnderTest(folder);
    cable(unit, "J1", "P1");
    for (int pin = 1; pin <= PINS; pin++) {
      int at = pin <= 5 ? 6 - pin : 16 - pin;
      unit.reads("J1-" + pin, "P1-" + pin, at == pin ? "0.107" : "OL");
      unit.reads("J1-" + pin, "REST", at == pin ? "OL" : "0.107");
      if (at != pin) {
        unit.reads("J1-" + pin, "P1-" + at, "0.107");
      }
    }
    CheckResult result = unit.check();
    assertEquals(List.of("Miswire", "Miswire", "Miswire", "Miswire"), kinds(result));
    assertTrue(
        result.diagnosis().faults().stream()
            .allMatch(fault -> ((Fault.Miswire) fault).moves().size() == 2));
  }

  /** That each is joined to the rest says nothing of which is joined to which. */
  @Test
  void of_two_shorts_between_four_items_it_is_not_certain_which_nets_they_join() {
    UnitUnderTest unit = new UnitUnderTest(folder);
    for (String item : List.of("1", "2", "3", "4")) {
      cable(unit, "J" + item, "P" + item);
    }
    isGood(unit, "J1", "P1", List.of(3));
    isGood(unit, "J2", "P2", List.of(4));
    isGood(unit, "J3", "P3", List.of(5));
    isGood(unit, "J4", "P4", List.of(6));
    for (String net : List.of("1-3", "2-4", "3-5", "4-6")) {
      unit.reads("J" + net, "P" + net, "0.107").reads("J" + net, "REST", "0.05");
    }
    CheckResult result = unit.check();
    assertEquals(List.of("Shorted", "Shorted"), kinds(result));
    assertEquals(2, result.diagnosis().faults().get(0).finding().alternatives().size());
    assertEquals(
        List.of(),
        result.diagnosis().faults().stream()
            .filter(fault -> fault.finding().certainty() == Certainty.CERTAIN)
            .toList());
  }

  /** Of more the pairs are not counted, and none is certain. */
  @Test
  void of_three_shorts_between_six_items_none_is_certain() {
    UnitUnderTest unit = new UnitUnderTest(folder);
    for (int item = 1; item <= 6; item++) {
      cable(unit, "J" + item, "P" + item);
      isGood(unit, "J" + item, "P" + item, List.of(item));
      unit.reads("J" + item + "-" + item, "P" + item + "-" + item, "0.107");
      unit.reads("J" + item + "-" + item, "REST", "0.05");
    }
    CheckResult result = unit.check();
    assertEquals(List.of("Shorted", "Shorted", "Shorted"), kinds(result));
    assertTrue(
        result.diagnosis().faults().stream()
            .noneMatch(fault -> fault.finding().certainty() == Certainty.CERTAIN));
  }

  /** The two are tied together for the coil between them: a leak between them would not show. */
  @Test
  void a_leak_of_two_tied_nets_is_of_one_or_the_other_and_not_read_between_them() {
    UnitUnderTest unit = new UnitUnderTest(folder);
    cable(unit, "J1", "P1");
    unit.part("K1,1,2,winding,300 Ω,10,").wire("WA,J2-1,K1-1,22,2 m").wire("WB,J2-2,K1-2,22,2 m");
    CheckResult result = unit.insulation("J2-1+J2-2", "REST", "0.69").check();
    Fault leak = OnlyFault.of(result);
    assertTrue(assertInstanceOf(Fault.LowInsulation.class, leak).isOfOneSide());
    assertEquals(
        List.of(),
        result.diagnosis().next().stream()
            .filter(one -> one.from().equals("J2-1") && one.to().equals("J2-2"))
            .filter(one -> one.kind() == dev.ringout.readings.Reading.Kind.INSULATION)
            .toList());
  }

  /** Without gauges and lengths only a cable of like wires has an odd one. */
  @Test
  void wires_without_gauges_that_differ_fourfold_among_themselves_make_no_other_unequal() {
    UnitUnderTest unit = new UnitUnderTest(folder);
    String[] read = {"0.20", "0.03", "0.02", "0.03", "0.03", "0.22", "0.08", "0.08", "0.03"};
    for (int pin = 1; pin <= read.length; pin++) {
      unit.wire("W" + pin + ",J1-" + pin + ",P1-" + pin);
      unit.reads("J1-" + pin, "P1-" + pin, read[pin - 1]);
    }
    assertEquals(List.of(), unit.check().diagnosis().faults());
  }

  /** ASTM E230 letters, from memory: KPX and KNX are the legs of extension wire of type K. */
  @Test
  void the_legs_of_thermocouple_extension_wire_are_not_judged_as_copper() {
    UnitUnderTest unit = new UnitUnderTest(folder);
    cable(unit, "J1", "P1");
    isGood(unit, "J1", "P1", List.of());
    unit.wireOfType("TCP,TC1-1,J2-1,20,8 m", "KPX").wireOfType("TCN,TC1-2,J2-2,20,8 m", "KNX");
    CheckResult result = unit.reads("TC1-1", "J2-1", "11.1").reads("TC1-2", "J2-2", "4.6").check();
    assertEquals(
        "",
        result.comparison().with(Outcome.RESISTIVE).stream()
            .map(one -> one.reading().subject())
            .collect(Collectors.joining(", ")));
  }
}
