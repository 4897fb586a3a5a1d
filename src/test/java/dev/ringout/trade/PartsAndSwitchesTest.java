package dev.ringout.trade;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.ringout.check.CheckResult;
import dev.ringout.compare.Outcome;
import dev.ringout.diagnose.Certainty;
import dev.ringout.diagnose.Fault;
import dev.ringout.diagnose.Fault.Miswire;
import dev.ringout.diagnose.Fault.Open;
import dev.ringout.diagnose.Fault.Pattern;
import dev.ringout.diagnose.Fault.Shorted;
import dev.ringout.diagnose.Fault.WrongPart;
import dev.ringout.diagnose.Fault.WrongSwitch;
import dev.ringout.diagnose.NextReading;
import dev.ringout.diagnose.PartFault;
import dev.ringout.diagnose.SlipFact;
import dev.ringout.diagnose.SwitchFault;
import dev.ringout.harness.Part;
import dev.ringout.support.UnitUnderTest;
import dev.ringout.words.BlindSentences;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What lies in the circuit, and switches in two positions; common practice, no source. */
class PartsAndSwitchesTest {
  @TempDir Path folder;

  private static Fault theOnlyFault(CheckResult result) {
    assertEquals(List.of(), result.diagnosis().unexplained());
    return OnlyFault.of(result);
  }

  private UnitUnderTest diode() {
    return new UnitUnderTest(folder)
        .wire("W1,TB1-1,CR1-A")
        .wire("W2,CR1-K,TB1-2")
        .part("CR1,A,K,diode,")
        .reads("TB1-1", "CR1-A", "0.1")
        .reads("CR1-K", "TB1-2", "0.1");
  }

  @ParameterizedTest
  @CsvSource({"620,OL", "2.9 M,OL", "620,45 k", "0.7 k,>40 M"})
  void a_diode_that_reads_clearly_less_one_way_is_good(String forward, String reverse) {
    CheckResult result = diode().readsBothWays("TB1-1", "TB1-2", forward, reverse).check();
    assertEquals(List.of(), result.comparison().failing());
    assertEquals(List.of(), result.diagnosis().faults());
    assertTrue(
        result.diagnosis().blind().stream()
            .map(BlindSentences::of)
            .noneMatch(line -> line.contains("CR1")));
  }

  @ParameterizedTest
  @CsvSource({"OL,620", "OL,2.9 M", "45 k,620"})
  void a_diode_that_reads_clearly_less_the_other_way_is_reversed(String forward, String reverse) {
    CheckResult result = diode().readsBothWays("TB1-1", "TB1-2", forward, reverse).check();
    WrongPart wrong = assertInstanceOf(WrongPart.class, theOnlyFault(result));
    assertEquals("CR1", wrong.part().ref());
    boolean leaks = forward.equals("45 k");
    assertEquals(leaks ? PartFault.OTHER_VALUE : PartFault.REVERSED, wrong.how());
  }

  @Test
  void the_order_of_its_ends_in_the_list_does_not_matter_where_the_pins_are_named() {
    CheckResult result =
        new UnitUnderTest(folder)
            .wire("W1,TB1-1,CR1-A")
            .wire("W2,CR1-K,TB1-2")
            .part("CR1,K,A,diode,")
            .reads("TB1-1", "CR1-A", "0.1")
            .reads("CR1-K", "TB1-2", "0.1")
            .reads("TB1-1", "CR1-A", "0.1")
            .reads("CR1-K", "TB1-2", "0.1")
            .readsBothWays("TB1-1", "TB1-2", "OL", "620")
            .check();
    assertEquals(PartFault.REVERSED, assertInstanceOf(WrongPart.class, theOnlyFault(result)).how());
  }

  @ParameterizedTest
  @CsvSource({"620,610", "0.05,0.05", "5,20", "600,9.9 k"})
  void a_diode_that_reads_alike_both_ways_is_bad(String forward, String reverse) {
    CheckResult result = diode().readsBothWays("TB1-1", "TB1-2", forward, reverse).check();
    assertEquals(1, result.diagnosis().faults().size());
  }

  @Test
  void a_diode_that_conducts_neither_way_is_missing_if_the_meter_opens_others() {
    CheckResult alone = diode().readsBothWays("TB1-1", "TB1-2", "OL", "OL").check();
    assertEquals(1, alone.comparison().with(Outcome.NOT_JUDGED).size());
    UnitUnderTest two = new UnitUnderTest(folder.resolve("two"));
    two.part("CR1,A,K,diode,").part("CR2,A,K,diode,").wire("W1,TB1-1,TB1-2");
    CheckResult result =
        two.readsBothWays("CR1-A", "CR1-K", "OL", "OL")
            .readsBothWays("CR2-A", "CR2-K", "600", "OL")
            .check();
    WrongPart wrong = assertInstanceOf(WrongPart.class, theOnlyFault(result));
    assertEquals("CR1", wrong.part().ref());
    assertEquals(PartFault.MISSING, wrong.how());
  }

  /** Kinds of diodes and ranges of meters make some sixty times, not a hundred. */
  @ParameterizedTest
  @CsvSource({"62 k,1", "20 k,0", "2 k,0"})
  void a_diode_that_reads_a_hundred_times_more_than_another_is_none(String forward, int faults) {
    UnitUnderTest two = new UnitUnderTest(folder);
    two.part("CR1,A,K,diode,").part("CR2,A,K,diode,").wire("W1,TB1-1,TB1-2");
    CheckResult result =
        two.readsBothWays("CR1-A", "CR1-K", forward, "OL")
            .readsBothWays("CR2-A", "CR2-K", "600", "OL")
            .check();
    List<Fault> found = result.diagnosis().faults();
    assertEquals(faults, found.size());
    for (Fault fault : found) {
      WrongPart wrong = assertInstanceOf(WrongPart.class, fault);
      assertEquals("CR1", wrong.part().ref());
      assertEquals(PartFault.OTHER_VALUE, wrong.how());
      assertEquals(Certainty.LIKELY, wrong.finding().certainty());
    }
    assertEquals(List.of(), result.diagnosis().unexplained());
  }

  @Test
  void a_diode_read_one_way_only_is_said_to_be_unseen() {
    CheckResult result = diode().reads("TB1-1", "TB1-2", "620").check();
    assertTrue(
        result.diagnosis().blind().stream()
            .map(BlindSentences::of)
            .anyMatch(line -> line.contains("CR1: if it is reversed")),
        result.diagnosis().blind().toString());
  }

  private UnitUnderTest lamp() {
    return new UnitUnderTest(folder)
        .wire("W1,P1-1,DS1-1")
        .wire("W2,P1-2,DS1-2")
        .wire("W3,P1-3,TB1-1")
        .part("DS1,1,2,lamp,96 Ω,15")
        .reads("P1-1", "DS1-1", "0.2")
        .reads("P1-2", "DS1-2", "0.2")
        .reads("P1-3", "TB1-1", "0.2");
  }

  @Test
  void a_lamp_that_is_missing_reads_open() {
    WrongPart wrong =
        assertInstanceOf(WrongPart.class, theOnlyFault(lamp().reads("P1-1", "P1-2", "OL").check()));
    assertEquals(PartFault.MISSING, wrong.how());
    assertEquals("lamp DS1", wrong.part().label());
  }

  @Test
  void a_lamp_of_another_wattage_reads_another_value() {
    WrongPart wrong =
        assertInstanceOf(WrongPart.class, theOnlyFault(lamp().reads("P1-1", "P1-2", "31").check()));
    assertEquals(PartFault.OTHER_VALUE, wrong.how());
  }

  @Test
  void a_part_whose_lead_is_at_the_neighbouring_terminal_lies_across_the_wrong_points() {
    CheckResult result =
        new UnitUnderTest(folder)
            .wire("W1,P1-1,TB1-1")
            .wire("W2,P1-2,TB1-2")
            .wire("W3,P1-3,TB1-3")
            .part("TB1,1,2,resistor,470 Ω,5")
            .reads("P1-1", "TB1-1", "0.2")
            .reads("P1-2", "TB1-2", "0.2")
            .reads("P1-3", "TB1-3", "0.2")
            .reads("P1-1", "P1-2", "OL")
            .reads("P1-1", "P1-3", "468")
            .check();
    WrongPart wrong = assertInstanceOf(WrongPart.class, theOnlyFault(result));
    assertEquals(PartFault.OTHER_POINTS, wrong.how());
    assertEquals("[TB1-1, TB1-3]", wrong.points().toString());
  }

  /** Windings of 4.8 Ω in delta read 2/3 of one; with one open, 4.8 · (1, 1, 2). */
  @Test
  void an_open_winding_of_a_delta_shows_in_all_three_readings() {
    CheckResult result =
        new UnitUnderTest(folder)
            .wire("W1,P3-1,M1-U")
            .part("M1,U,V,winding,4.8 Ω,10")
            .part("M1,V,W,winding,4.8 Ω,10")
            .part("M1,W,U,winding,4.8 Ω,10")
            .reads("P3-1", "M1-U", "0.2")
            .reads("M1-U", "M1-V", "4.81")
            .reads("M1-V", "M1-W", "4.79")
            .reads("M1-W", "M1-U", "9.62")
            .check();
    WrongPart wrong = assertInstanceOf(WrongPart.class, theOnlyFault(result));
    assertEquals(PartFault.MISSING, wrong.how());
    assertEquals("[M1-W, M1-U]", wrong.points().toString());
    assertEquals(3, wrong.finding().readings().size());
  }

  /** Three windings in star read two at a time; an open one spoils two of the three readings. */
  @Test
  void an_open_winding_of_a_star_leaves_one_good_reading() {
    CheckResult result =
        new UnitUnderTest(folder)
            .wire("W1,P3-1,M1-U")
            .part("M1,U,N,winding,2.4 Ω,10")
            .part("M1,V,N,winding,2.4 Ω,10")
            .part("M1,W,N,winding,2.4 Ω,10")
            .reads("P3-1", "M1-U", "0.2")
            .reads("M1-U", "M1-V", "4.81")
            .reads("M1-V", "M1-W", "OL")
            .reads("M1-W", "M1-U", "OL")
            .check();
    WrongPart wrong = assertInstanceOf(WrongPart.class, theOnlyFault(result));
    assertEquals("[M1-W, M1-N]", wrong.points().toString());
    assertTrue(
        result.diagnosis().blind().stream()
            .map(BlindSentences::of)
            .anyMatch(line -> line.contains("read alike")));
  }

  private UnitUnderTest limitSwitch() {
    return new UnitUnderTest(folder)
        .wire("W1,P2-1,S1-COM")
        .wire("W2,P2-2,S1-NO")
        .wire("W3,P2-3,S1-NC")
        .contact("S1,FREE,COM,NC")
        .contact("S1,MADE,COM,NO");
  }

  @Test
  void a_limit_switch_wired_to_its_other_contact_is_one_fault_of_four_readings() {
    CheckResult result =
        limitSwitch()
            .reads("P2-1", "P2-3", "OL")
            .reads("P2-1", "P2-2", "0.3")
            .readsIn("S1=MADE", "P2-1", "P2-2", "OL")
            .readsIn("S1=MADE", "P2-1", "P2-3", "0.3")
            .check();
    Fault fault = theOnlyFault(result);
    assertEquals(4, fault.finding().readings().size());
    boolean isCrossed =
        fault instanceof Miswire miswire
            && miswire.pattern() == Pattern.SWAP
            && fault.finding().alternatives().stream()
                .flatMap(alternative -> alternative.slips().stream())
                .anyMatch(PartsAndSwitchesTest::isOtherWay);
    boolean isOtherWay = fault instanceof WrongSwitch wrong && wrong.how() == SwitchFault.OTHER_WAY;
    assertTrue(isCrossed || isOtherWay, fault.toString());
  }

  private static boolean isOtherWay(SlipFact slip) {
    return slip instanceof SlipFact.BadSwitch bad && bad.how() == SwitchFault.OTHER_WAY;
  }

  @Test
  void with_its_wires_read_by_themselves_the_switch_alone_is_left() {
    CheckResult result =
        limitSwitch()
            .reads("P2-2", "S1-NO", "0.2")
            .reads("P2-3", "S1-NC", "0.2")
            .reads("P2-1", "P2-3", "OL")
            .reads("P2-1", "P2-2", "0.3")
            .readsIn("S1=MADE", "P2-1", "P2-2", "OL")
            .readsIn("S1=MADE", "P2-1", "P2-3", "0.3")
            .check();
    WrongSwitch wrong = assertInstanceOf(WrongSwitch.class, theOnlyFault(result));
    assertEquals(SwitchFault.OTHER_WAY, wrong.how());
    assertEquals("S1", wrong.which().ref());
  }

  @Test
  void a_limit_switch_that_is_never_reached_stays_as_it_is() {
    CheckResult result =
        limitSwitch()
            .reads("P2-1", "P2-3", "0.3")
            .reads("P2-1", "P2-2", "OL")
            .readsIn("S1=MADE", "P2-1", "P2-2", "OL")
            .readsIn("S1=MADE", "P2-1", "P2-3", "0.3")
            .check();
    WrongSwitch wrong = assertInstanceOf(WrongSwitch.class, theOnlyFault(result));
    assertEquals(SwitchFault.STUCK, wrong.how());
    assertEquals("FREE", wrong.position());
  }

  @Test
  void a_contact_that_never_makes_is_open_in_its_position_alone() {
    CheckResult result =
        limitSwitch()
            .readsIn("S1=MADE", "P2-1", "S1-COM", "0.2")
            .reads("P2-2", "S1-NO", "0.2")
            .readsIn("S1=MADE", "P2-3", "S1-NC", "0.2")
            .reads("P2-1", "P2-3", "0.3")
            .reads("P2-1", "P2-2", "OL")
            .readsIn("S1=MADE", "P2-1", "P2-2", "OL")
            .readsIn("S1=MADE", "P2-1", "P2-3", "OL")
            .check();
    Open open = assertInstanceOf(Open.class, theOnlyFault(result));
    assertEquals("the contact S1-COM/NO of S1", open.suspects().get(0).label());
  }

  @Test
  void a_welded_contact_stays_closed_in_the_other_position() {
    CheckResult result =
        limitSwitch()
            .reads("P2-1", "S1-COM", "0.2")
            .reads("P2-2", "S1-NO", "0.2")
            .reads("P2-3", "S1-NC", "0.2")
            .reads("P2-1", "P2-3", "0.3")
            .reads("P2-1", "P2-2", "OL")
            .readsIn("S1=MADE", "P2-1", "P2-2", "0.3")
            .readsIn("S1=MADE", "P2-1", "P2-3", "0.3")
            .check();
    // A wire on the common terminal would read just the same: both are said.
    Shorted shorted = assertInstanceOf(Shorted.class, theOnlyFault(result));
    assertEquals("[S1-COM, S1-NC]", shorted.points().toString());
    assertEquals(SwitchFault.WELDED, shorted.equivalents().get(0).how());
    assertEquals("[S1-COM, S1-NC]", shorted.equivalents().get(0).contact().toString());
    assertInstanceOf(
        SlipFact.Misplaced.class, shorted.finding().alternatives().get(0).slips().get(0));
  }

  /**
   * At rest the common terminal is joined to NC: a whisker from either to NO reads the same there,
   * and so does a contact that never opens. Actuated, NC is apart from the common terminal.
   */
  @Test
  void a_short_at_a_closed_contact_may_be_on_either_side_until_it_is_read_open() {
    UnitUnderTest unit =
        new UnitUnderTest(folder)
            .contact("S1,FREE,COM,NC")
            .contact("S1,MADE,COM,NO")
            .wire("W1,J1-1,S1-COM,22,1 m")
            .wire("W2,J2-1,S1-NC,22,1 m")
            .wire("W3,J3-1,S1-NO,22,1 m")
            .reads("J1-1", "S1-COM", "0.05")
            .reads("J2-1", "S1-NC", "0.05")
            .reads("J3-1", "S1-NO", "0.05")
            .reads("S1-COM", "S1-NC", "0.01")
            .reads("S1-COM", "S1-NO", "0.05")
            .insulation("J2-1", "J3-1", "0");
    Fault atRest = theOnlyFault(unit.check());
    assertEquals(Certainty.LIKELY, atRest.finding().certainty());
    assertEquals("[S1-NC, S1-NO]", atRest.points().toString());
    assertTrue(
        atRest.finding().alternatives().stream()
            .flatMap(alternative -> alternative.slips().stream())
            .anyMatch(
                slip ->
                    slip instanceof SlipFact.BadSwitch bad
                        && bad.how() == SwitchFault.WELDED
                        && bad.contact().toString().equals("[S1-COM, S1-NO]")),
        atRest.toString());
  }

  /** A relay with two poles that is not energised: one fault however many contacts it has. */
  @Test
  void a_relay_that_does_not_pull_in_is_one_fault() {
    CheckResult result =
        new UnitUnderTest(folder)
            .contact("K1,REST,11,12")
            .contact("K1,REST,21,22")
            .contact("K1,PULLED,11,14")
            .contact("K1,PULLED,21,24")
            .wire("W1,P1-1,K1-11")
            .wire("W2,P1-2,K1-14")
            .wire("W3,P1-3,K1-21")
            .wire("W4,P1-4,K1-24")
            .reads("P1-1", "K1-11", "0.2")
            .reads("P1-2", "K1-14", "0.2")
            .reads("P1-3", "K1-21", "0.2")
            .reads("P1-4", "K1-24", "0.2")
            .reads("P1-1", "P1-2", "OL")
            .reads("P1-3", "P1-4", "OL")
            .readsIn("K1=PULLED", "P1-1", "P1-2", "OL")
            .readsIn("K1=PULLED", "P1-3", "P1-4", "OL")
            .check();
    WrongSwitch wrong = assertInstanceOf(WrongSwitch.class, theOnlyFault(result));
    assertEquals(SwitchFault.STUCK, wrong.how());
    assertEquals("REST", wrong.position());
  }

  /** Sixty metres of AWG 26 have 6.2 to 9.2 Ω; 7.55 Ω and 10 Ω side by side read 4.30. */
  @Test
  void a_resistor_beside_a_wire_makes_it_read_less_and_that_is_no_fault() {
    UnitUnderTest unit = new UnitUnderTest(folder).part(",J1-1,P2-1,resistor,10 Ω,5,");
    CheckResult result = unit.wire("W1,J1-1,P2-1,26,60 m").reads("J1-1", "P2-1", "4.30").check();
    assertEquals(List.of(), result.diagnosis().faults());
  }

  /** By way of another net: two of 10 Ω in a row beside 7.55 Ω read 5.48. */
  @Test
  void so_do_two_that_lead_back_over_another_net() {
    UnitUnderTest unit = new UnitUnderTest(folder);
    unit.part(",J1-1,R1-1,resistor,10 Ω,5,").part(",P2-1,R1-1,resistor,10 Ω,5,");
    CheckResult result = unit.wire("W1,J1-1,P2-1,26,60 m").reads("J1-1", "P2-1", "5.48").check();
    assertEquals(List.of(), result.diagnosis().faults());
  }

  @Test
  void one_that_leads_elsewhere_lets_no_wire_read_less() {
    UnitUnderTest unit = new UnitUnderTest(folder).part(",J1-1,R1-1,resistor,10 Ω,5,");
    CheckResult result = unit.wire("W1,J1-1,P2-1,26,60 m").reads("J1-1", "P2-1", "4.30").check();
    assertInstanceOf(Fault.WrongGauge.class, OnlyFault.of(result));
  }

  /** A coil of 300 Ω with a suppressor at its terminals, which reads 120 Ω from the plug. */
  private UnitUnderTest coilAndSuppressor() {
    return new UnitUnderTest(folder)
        .wire("W1,J1-1,K1-A,20,4 m")
        .wire("W2,J1-2,K1-B,20,4 m")
        .part("K1,A,B,winding,300 Ω")
        .part("K1,A,B,suppressor,")
        .reads("J1-1", "J1-2", "120");
  }

  @Test
  void of_two_parts_side_by_side_one_is_lifted_and_the_other_read_by_itself() {
    NextReading next = coilAndSuppressor().check().diagnosis().next().get(0);
    assertEquals("winding K1=LIFTED", next.state().toString());
    assertEquals(2, next.answers().size(), "what it reads tells which of the two it is");
  }

  /** With the winding's lead off its point 120 Ω are the suppressor's; nothing is the winding's. */
  @ParameterizedTest
  @CsvSource({"120,SUPPRESSOR", "OL,WINDING"})
  void what_is_read_with_the_winding_lifted_tells_which_is_bad(String reading, Part.Kind kind) {
    CheckResult result =
        coilAndSuppressor().readsIn("winding K1=LIFTED", "K1-A", "K1-B", reading).check();
    assertEquals(kind, ((WrongPart) theOnlyFault(result)).part().kind());
    boolean isShownTwice = kind == Part.Kind.SUPPRESSOR;
    assertEquals(
        isShownTwice ? Certainty.CERTAIN : Certainty.LIKELY,
        theOnlyFault(result).finding().certainty());
  }

  /** A part that no other of the list has the reference of is known by that alone. */
  @Test
  void two_coils_side_by_side_are_told_apart_by_lifting_one() {
    UnitUnderTest unit = new UnitUnderTest(folder);
    unit.wire("W1,K1-A,K2-A,20,1 m").wire("W2,K1-B,K2-B,20,1 m");
    unit.part("K1,A,B,winding,300 Ω").part("K2,A,B,winding,300 Ω");
    unit.reads("K1-A", "K1-B", "100").readsIn("K2=LIFTED", "K1-A", "K1-B", "150");
    WrongPart wrong = (WrongPart) theOnlyFault(unit.check());
    assertEquals("K1", wrong.part().ref());
    assertEquals(Certainty.CERTAIN, wrong.finding().certainty());
  }

  /** A capacitor that leaks and a leak between its wires read the same: 76 kΩ. */
  private UnitUnderTest leakingCapacitor() {
    return new UnitUnderTest(folder)
        .wire("W1,J1-1,C6-1,20,4 m")
        .wire("W2,J1-2,C6-2,20,4 m")
        .part("C6,1,2,capacitor,")
        .reads("J1-1", "J1-2", "76.0 kΩ")
        .reads("J1-1", "C6-2", "76.1 kΩ");
  }

  @Test
  void a_part_that_reads_too_little_is_not_certain_while_a_leak_beside_it_may_be_all() {
    CheckResult result = leakingCapacitor().check();
    assertEquals(Certainty.LIKELY, theOnlyFault(result).finding().certainty());
    NextReading next = result.diagnosis().next().get(0);
    assertEquals("capacitor C6=LIFTED", next.state().toString());
  }

  @Test
  void with_its_lead_off_and_nothing_beside_it_the_part_is_bad_for_certain() {
    CheckResult result =
        leakingCapacitor().readsIn("capacitor C6=LIFTED", "C6-1", "C6-2", "OL").check();
    WrongPart wrong = (WrongPart) theOnlyFault(result);
    assertEquals(Certainty.CERTAIN, wrong.finding().certainty());
  }

  @Test
  void with_its_lead_off_and_the_same_ohms_the_leak_is_the_only_fault() {
    CheckResult result = leakingCapacitor().readsIn("C6=LIFTED", "C6-1", "C6-2", "76.2 kΩ").check();
    Fault.LowInsulation leak = assertInstanceOf(Fault.LowInsulation.class, theOnlyFault(result));
    assertEquals(3, leak.finding().readings().size());
  }
}
