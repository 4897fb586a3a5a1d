package dev.ringout.trade;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.ringout.check.CheckResult;
import dev.ringout.check.CheckResult.Verdict;
import dev.ringout.compare.Outcome;
import dev.ringout.diagnose.Certainty;
import dev.ringout.diagnose.Fault;
import dev.ringout.diagnose.Fault.LowInsulation;
import dev.ringout.diagnose.Fault.Miswire;
import dev.ringout.diagnose.Fault.Open;
import dev.ringout.diagnose.Fault.Pattern;
import dev.ringout.diagnose.NextReading;
import dev.ringout.diagnose.NextReading.Purpose;
import dev.ringout.source.Problem;
import dev.ringout.support.UnitUnderTest;
import dev.ringout.words.BlindSentences;
import dev.ringout.words.NotJudgedSentences;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Examples as people who ring out harnesses tell them; common practice, no source. Each is a list,
 * what the meter read, and the story that an experienced hand makes of it.
 */
class WorkedExamplesTest {
  @TempDir Path folder;

  private UnitUnderTest twoWires() {
    return new UnitUnderTest(folder).wire("W1,J1-A,P2-1").wire("W2,J1-B,P2-2");
  }

  @Test
  void two_opens_and_two_crosses_are_one_swap_and_ohms_cannot_tell_which_end() {
    CheckResult result =
        twoWires()
            .reads("J1-A", "P2-1", "OL")
            .reads("J1-B", "P2-2", "OL")
            .reads("J1-A", "P2-2", "0.3")
            .reads("J1-B", "P2-1", "0.3")
            .check();

    Miswire swap = assertInstanceOf(Miswire.class, OnlyFault.of(result));
    assertEquals(Pattern.SWAP, swap.pattern());
    assertEquals(Certainty.CERTAIN, swap.finding().certainty());
    assertEquals(4, swap.finding().readings().size());
    assertEquals(List.of("J1-A", "J1-B"), names(swap.points()));
    assertEquals(1, swap.equivalents().size());
    assertEquals("P2-1", swap.equivalents().get(0).get(0).from().toString());
    assertTrue(result.diagnosis().unexplained().isEmpty());
  }

  @Test
  void two_opens_without_their_crosses_are_a_swap_or_two_opens_and_the_cross_is_read_next() {
    CheckResult result = twoWires().reads("J1-A", "P2-1", "OL").reads("J1-B", "P2-2", "OL").check();

    Fault fault = OnlyFault.of(result);
    assertEquals(Pattern.SWAP, assertInstanceOf(Miswire.class, fault).pattern());
    assertEquals(Certainty.LIKELY, fault.finding().certainty());
    assertTrue(
        fault.finding().alternatives().stream().anyMatch(alternative -> isTwoOpens(alternative)),
        "two opens stand beside it");
    NextReading next = result.diagnosis().next().get(0);
    assertEquals(Purpose.TELL_APART, next.purpose());
    assertEquals("J1-A to P2-2", next.from() + " to " + next.to());
  }

  private static boolean isTwoOpens(Fault.Alternative alternative) {
    return alternative.slips().size() == 2
        && alternative.slips().stream().allMatch(slip -> slip.asOpened().isPresent());
  }

  @Test
  void a_low_cross_read_later_confirms_the_swap() {
    CheckResult result =
        twoWires()
            .reads("J1-A", "P2-1", "OL")
            .reads("J1-B", "P2-2", "OL")
            .reads("J1-A", "P2-2", "0.3")
            .check();

    assertEquals(Pattern.SWAP, assertInstanceOf(Miswire.class, OnlyFault.of(result)).pattern());
  }

  @Test
  void open_crosses_read_later_leave_two_opens() {
    CheckResult result =
        twoWires()
            .reads("J1-A", "P2-1", "OL")
            .reads("J1-B", "P2-2", "OL")
            .reads("J1-A", "P2-2", "OL")
            .reads("J1-B", "P2-1", "OL")
            .check();

    assertEquals(2, result.diagnosis().faults().size());
    result.diagnosis().faults().forEach(fault -> assertInstanceOf(Open.class, fault));
  }

  @Test
  void three_ends_in_a_ring_are_one_miswire_not_two_swaps() {
    CheckResult result =
        new UnitUnderTest(folder)
            .wire("W1,J1-1,P2-1")
            .wire("W2,J1-2,P2-2")
            .wire("W3,J1-3,P2-3")
            .reads("J1-1", "P2-1", "OL")
            .reads("J1-2", "P2-2", "OL")
            .reads("J1-3", "P2-3", "OL")
            .reads("J1-1", "P2-2", "0.2")
            .reads("J1-2", "P2-3", "0.2")
            .reads("J1-3", "P2-1", "0.2")
            .check();

    Miswire ring = assertInstanceOf(Miswire.class, OnlyFault.of(result));
    assertEquals(3, ring.moves().size());
    assertEquals(1, ring.equivalents().size(), "the same ring at the other end");
    assertEquals(6, ring.finding().readings().size());
  }

  @Test
  void a_long_run_one_cavity_out_is_one_shift() {
    UnitUnderTest unit = new UnitUnderTest(folder).pin("P2,21,");
    for (int pin = 1; pin <= 20; pin++) {
      unit.wire("W" + pin + ",J1-" + pin + ",P2-" + pin);
      unit.reads("J1-" + pin, "P2-" + pin, "OL");
      unit.reads("J1-" + pin, "P2-" + (pin + 1), "0.2");
    }
    CheckResult result = unit.check();

    Miswire shift = assertInstanceOf(Miswire.class, OnlyFault.of(result));
    assertEquals(Pattern.SHIFT, shift.pattern());
    assertEquals(20, shift.moves().size());
    assertEquals(40, shift.finding().readings().size());
  }

  @Test
  void a_net_in_two_sound_islands_lacks_the_link_between_them() {
    CheckResult result =
        new UnitUnderTest(folder)
            .wire("W1,J1-G,TB1-4")
            .wire("W2,TB1-5,P2-9")
            .link("TB1,4,5")
            .reads("J1-G", "TB1-4", "0.2")
            .reads("TB1-5", "P2-9", "0.2")
            .reads("J1-G", "P2-9", "OL")
            .check();

    Open open = assertInstanceOf(Open.class, OnlyFault.of(result));
    assertEquals(List.of("the link TB1-4/5"), labels(open));
    NextReading next = result.diagnosis().next().get(0);
    assertEquals("TB1-4 to TB1-5", next.from() + " to " + next.to());
  }

  @Test
  void two_wires_to_one_stud_could_be_swapped_without_any_reading_showing_it() {
    CheckResult result =
        new UnitUnderTest(folder)
            .wire("W1,J1-G,E1-1")
            .wire("W2,J1-H,E1-1")
            .reads("J1-G", "E1-1", "0.2")
            .reads("J1-H", "E1-1", "0.2")
            .check();

    assertEquals(Verdict.CONFORMS, result.verdict());
    assertEquals(1, result.diagnosis().blind().size());
    assertTrue(
        BlindSentences.of(result.diagnosis().blind().get(0))
            .startsWith("W1 and W2 join the same net"));
  }

  @Test
  void fourteen_of_nineteen_low_pins_are_moisture_at_one_connector_not_fourteen_damaged_wires() {
    UnitUnderTest unit = new UnitUnderTest(folder);
    for (int pin = 1; pin <= 19; pin++) {
      unit.wire("W" + pin + ",TB1-" + pin + ",P3-" + pin);
    }
    for (int pin = 20; pin <= 40; pin++) {
      unit.wire("W" + pin + ",TB1-" + pin + ",P4-" + pin);
    }
    for (int pin = 1; pin <= 40; pin++) {
      String from = (pin < 20 ? "P3-" : "P4-") + pin;
      unit.insulation(from, "REST", pin <= 14 ? 2 + pin / 2.0 + " MΩ" : "1.4 GΩ");
    }
    CheckResult result = unit.check();

    LowInsulation wet = assertInstanceOf(LowInsulation.class, OnlyFault.of(result));
    assertEquals(List.of("P3"), wet.places());
    assertEquals(14, wet.points().size());
    assertEquals(19, wet.netsRead());
    assertEquals(14, wet.finding().readings().size());
  }

  @Test
  void a_pin_that_lost_its_case_stops_the_check_because_the_file_cannot_tell_which() {
    List<Problem> problems =
        new UnitUnderTest(folder)
            .wire("W1,J2-A,P3-1")
            .wire("W2,J2-a,P3-2")
            .reads("J2-A", "P3-1", "0.2")
            .reads("J2-A", "P3-2", "0.2")
            .problems();

    assertEquals(1, problems.size());
    assertTrue(
        problems.get(0).text().contains("a capital and a small letter were mixed up"),
        problems.toString());
    assertEquals("D3", problems.get(0).place().cell());
  }

  @Test
  void over_range_on_a_20_megohm_range_cannot_be_judged_against_100_megohms() {
    CheckResult result =
        twoWires()
            .job("insulation range,20,MΩ")
            .insulation("J1-A", "REST", "OL")
            .insulation("J1-B", "REST", ">20M")
            .check();

    assertEquals(2, result.comparison().with(Outcome.NOT_JUDGED).size());
    assertEquals(
        "OL on a 20 MΩ range proves nothing about a 100 MΩ limit",
        NotJudgedSentences.why(result.comparison().with(Outcome.NOT_JUDGED).get(0)));
    assertEquals(Verdict.INCOMPLETE, result.verdict());
  }

  @Test
  void three_blanks_of_sixty_are_not_complete_and_are_named() {
    UnitUnderTest unit = new UnitUnderTest(folder);
    for (int pin = 1; pin <= 60; pin++) {
      unit.wire("W" + pin + ",J1-" + pin + ",P2-" + pin);
      boolean blank = pin == 7 || pin == 31 || pin == 60;
      unit.reads("J1-" + pin, "P2-" + pin, blank ? "" : "0.2");
      unit.insulation("J1-" + pin, "REST", "2 GΩ");
    }
    CheckResult result = unit.check();

    assertEquals(Verdict.INCOMPLETE, result.verdict());
    assertEquals(117, result.comparison().with(Outcome.CONFORMS).size());
    assertEquals(0, result.comparison().failing().size());
    assertEquals(
        List.of("J1-7 to P2-7", "J1-31 to P2-31", "J1-60 to P2-60"),
        result.comparison().with(Outcome.NOT_TESTED).stream()
            .map(judged -> judged.reading().subject())
            .toList());
  }

  private static List<String> names(List<?> points) {
    return points.stream().map(Object::toString).toList();
  }

  private static List<String> labels(Open open) {
    return open.suspects().stream().map(one -> one.label()).toList();
  }
}
