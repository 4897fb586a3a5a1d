package dev.ringout.compare;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.ringout.check.CheckResult;
import dev.ringout.check.CheckResult.Verdict;
import dev.ringout.check.InsulationNote;
import dev.ringout.harness.Part;
import dev.ringout.support.UnitUnderTest;
import dev.ringout.words.InsulationNoteSentences;
import dev.ringout.words.UnprovenSentences;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class JudgingTest {
  @TempDir Path folder;

  private UnitUnderTest unit() {
    return new UnitUnderTest(folder).wire("W1,J1-A,P2-1").wire("W2,J1-B,P2-2");
  }

  private static Outcome outcome(CheckResult result) {
    return result.comparison().inForce().get(0).outcome();
  }

  @ParameterizedTest
  @CsvSource({
    "0.3,CONFORMS",
    "1,CONFORMS",
    "1.6,RESISTIVE",
    "5k,RESISTIVE",
    "100k,OPEN",
    "OL,OPEN",
    ">5,RESISTIVE",
    ">1M,OPEN",
    "<0.5,CONFORMS",
    "<5,NOT_JUDGED",
    "beep,CONFORMS",
    "PASS,CONFORMS",
    "FAIL,OPEN",
    "N/T,NOT_TESTED",
    "-0.02,NOT_JUDGED",
    "-1e9,NOT_JUDGED",
    "<-0.1,NOT_JUDGED",
    "<0,NOT_JUDGED",
    ">-5,NOT_JUDGED",
    "-0,CONFORMS"
  })
  void a_wire_s_reading_is_judged_by_the_fixed_limit_where_nothing_can_be_computed(
      String reading, Outcome outcome) {
    assertEquals(outcome, outcome(unit().reads("J1-A", "P2-1", reading).check()));
  }

  @ParameterizedTest
  @CsvSource({
    "OL,CONFORMS",
    "100k,CONFORMS",
    "99k,RESISTIVE",
    "0.3,UNEXPECTED_JOIN",
    "beep,UNEXPECTED_JOIN",
    "PASS,NOT_JUDGED",
    "FAIL,UNEXPECTED_JOIN",
    ">50k,NOT_JUDGED",
    ">200k,CONFORMS",
    "-0.02,NOT_JUDGED",
    "-200 MΩ,NOT_JUDGED",
    "<-1,NOT_JUDGED"
  })
  void a_reading_between_two_nets_is_judged_by_open_min(String reading, Outcome outcome) {
    assertEquals(outcome, outcome(unit().reads("J1-A", "P2-2", reading).check()));
  }

  @ParameterizedTest
  @CsvSource({
    "150 MΩ,CONFORMS",
    "150,CONFORMS",
    "100,CONFORMS",
    "99,LOW_INSULATION",
    "<50,LOW_INSULATION",
    ">200,CONFORMS",
    ">20,NOT_JUDGED",
    "OL,NOT_JUDGED",
    "PASS,NOT_JUDGED",
    "FAIL,LOW_INSULATION",
    "beep,NOT_JUDGED"
  })
  void insulation_is_judged_by_its_limit_and_a_bare_number_is_megohms(
      String reading, Outcome outcome) {
    assertEquals(outcome, outcome(unit().insulation("J1-A", "REST", reading).check()));
  }

  @Test
  void over_range_of_an_insulation_tester_counts_where_its_range_is_given() {
    CheckResult result =
        unit().job("insulation range,2,GΩ").insulation("J1-A", "REST", "OL").check();
    assertEquals(Outcome.CONFORMS, outcome(result));
  }

  @Test
  void over_range_of_a_beeper_that_ends_at_600_ohms_shows_an_open_but_no_isolation() {
    CheckResult result =
        unit()
            .job("continuity range,600,Ω")
            .reads("J1-A", "P2-1", "OL")
            .reads("J1-A", "P2-2", "OL")
            .check();
    assertEquals(Outcome.OPEN, result.comparison().inForce().get(0).outcome());
    assertEquals(Outcome.NOT_JUDGED, result.comparison().inForce().get(1).outcome());
  }

  /**
   * Four feet of AWG 20 at 10.15 ohms per 1000 ft (printed tables) is 0.0406 Ω; with two contacts
   * of 5 mΩ and 10 % the limit is 0.0557 Ω. A display of which nothing is said may be a digit off
   * besides what it rounds.
   */
  @ParameterizedTest
  @CsvSource({
    "0.055,CONFORMS",
    "0.057,CONFORMS",
    "0.058,RESISTIVE",
    "0.84,RESISTIVE",
    "0.1,CONFORMS",
    "0.2,CONFORMS",
    "0.3,RESISTIVE"
  })
  void a_wire_of_known_gauge_and_length_has_a_computed_limit(String reading, Outcome outcome) {
    CheckResult result =
        new UnitUnderTest(folder)
            .wire("W1,J1-A,P2-1,20,4 ft")
            .reads("J1-A", "P2-1", reading)
            .check();
    assertEquals(outcome, outcome(result));
    assertEquals(0.0557, result.comparison().inForce().get(0).limit().ohms(), 1e-4);
  }

  @Test
  void a_limit_in_the_file_wins_over_the_computed_one() {
    CheckResult result =
        new UnitUnderTest(folder)
            .wire("W1,J1-A,P2-1,20,4 ft")
            .limit("closed max,2,Ω")
            .reads("J1-A", "P2-1", "1.9")
            .check();
    assertEquals(Outcome.CONFORMS, outcome(result));
  }

  @Test
  void a_lamp_between_two_nets_is_no_short_and_is_judged_by_its_own_value() {
    UnitUnderTest unit =
        unit()
            .part("DS1,1,2,lamp,40,15")
            .wire("W3,DS1-1,P2-3")
            .wire("W4,DS1-2,P2-4")
            .reads("P2-3", "P2-4", "41")
            .reads("P2-3", "DS1-2", "70")
            .reads("P2-4", "DS1-1", "0.2");
    List<Outcome> outcomes =
        unit.check().comparison().inForce().stream().map(Judged::outcome).toList();
    assertEquals(List.of(Outcome.CONFORMS, Outcome.PART_VALUE, Outcome.UNEXPECTED_JOIN), outcomes);
  }

  @Test
  void an_insulation_test_across_a_part_is_not_judged_unless_it_passes() {
    CheckResult result =
        unit()
            .part("K1,1,2,winding,120")
            .wire("W3,K1-1,P2-3")
            .wire("W4,K1-2,P2-4")
            .insulation("P2-3", "REST", "0.0001")
            .insulation("P2-3+P2-4", "REST", "500")
            .check();
    assertEquals(Outcome.NOT_JUDGED, result.comparison().inForce().get(0).outcome());
    NotJudged.PartsBetween why =
        assertInstanceOf(
            NotJudged.PartsBetween.class, result.comparison().inForce().get(0).why().orElseThrow());
    assertEquals(List.of("winding K1"), why.parts().stream().map(Part::label).toList());
    assertEquals(Outcome.CONFORMS, result.comparison().inForce().get(1).outcome());
  }

  @Test
  void a_diode_read_both_ways_is_two_readings_and_neither_replaces_the_other() {
    CheckResult result =
        unit()
            .part("CR1,A,K,diode,")
            .reads("CR1-A", "CR1-K", "3 M")
            .reads("CR1-K", "CR1-A", "OL")
            .check();
    assertEquals(2, result.comparison().inForce().size());
    assertTrue(result.comparison().failing().isEmpty());
  }

  @Test
  void a_reading_taken_with_its_probes_exchanged_replaces_the_first() {
    CheckResult result = unit().reads("J1-A", "P2-1", "OL").reads("P2-1", "J1-A", "0.2").check();
    assertEquals(1, result.comparison().inForce().size());
    assertEquals(1, result.comparison().replaced().size());
    assertTrue(result.comparison().replaced().get(0).changed());
  }

  @Test
  void a_blank_is_no_reading_and_replaces_none() {
    CheckResult result = unit().reads("J1-A", "P2-1", "0.2").reads("J1-A", "P2-1", "").check();
    assertEquals(
        List.of(Outcome.CONFORMS),
        result.comparison().inForce().stream().map(Judged::outcome).toList());
  }

  @Test
  void readings_that_cannot_all_be_true_are_reported_and_explained_by_no_fault() {
    CheckResult result =
        new UnitUnderTest(folder)
            .wire("W1,J1-A,TB1-1")
            .wire("W2,TB1-1,P2-1")
            .reads("J1-A", "TB1-1", "0.2")
            .reads("TB1-1", "P2-1", "0.2")
            .reads("J1-A", "P2-1", "OL")
            .check();
    assertEquals(Verdict.FAULTS, result.verdict());
    assertEquals(1, result.comparison().contradictions().size());
    assertEquals(2, result.comparison().contradictions().get(0).joins().size());
    assertEquals(1, result.diagnosis().unexplained().size());
  }

  @Test
  void switch_contacts_join_in_their_position_only() {
    UnitUnderTest unit =
        new UnitUnderTest(folder)
            .wire("W1,P1-1,S1-COM")
            .wire("W2,P1-2,S1-NO")
            .wire("W3,P1-3,S1-NC")
            .contact("S1,FREE,COM,NC")
            .contact("S1,MADE,COM,NO")
            .reads("P1-1", "P1-3", "0.2")
            .reads("P1-1", "P1-2", "OL")
            .readsIn("S1=MADE", "P1-1", "P1-2", "0.2")
            .readsIn("s1 = made", "P1-1", "P1-3", "OL");
    CheckResult result = unit.check();
    assertEquals(4, result.comparison().with(Outcome.CONFORMS).size());
    assertEquals(new Coverage.Tally(4, 4), result.coverage().switches());
  }

  @Test
  void a_contact_never_read_in_its_position_is_not_proven() {
    CheckResult result =
        new UnitUnderTest(folder)
            .wire("W1,P1-1,S1-COM")
            .wire("W2,P1-2,S1-NO")
            .contact("S1,FREE,,")
            .contact("S1,MADE,COM,NO")
            .reads("P1-1", "S1-COM", "0.2")
            .reads("P1-2", "S1-NO", "0.2")
            .reads("P1-1", "P1-2", "OL")
            .check();
    assertEquals(new Coverage.Tally(2, 1), result.coverage().switches());
    assertEquals(Verdict.INCOMPLETE, result.verdict());
  }

  @Test
  void a_switch_in_two_positions_at_once_is_refused() {
    assertTrue(
        new UnitUnderTest(folder)
                .wire("W1,P1-1,S1-COM")
                .contact("S1,FREE,,")
                .contact("S1,MADE,COM,NO")
                .readsIn("S1=MADE; S1=FREE", "P1-1", "S1-COM", "0.2")
                .problems()
                .stream()
                .anyMatch(problem -> problem.text().contains("two positions at once")));
  }

  @Test
  void parallel_wires_are_not_proven_by_a_beep() {
    CheckResult result =
        new UnitUnderTest(folder)
            .wire("W77,J1-A,E1-1")
            .wire("W78,J1-A,E1-1")
            .reads("J1-A", "E1-1", "0.2")
            .check();
    assertEquals(new Coverage.Tally(1, 1), result.coverage().joins());
    assertEquals(new Coverage.Tally(2, 0), result.coverage().wires());
    assertEquals(
        "wire W77: in parallel with W78: continuity can't tell them apart",
        UnprovenSentences.said(result.circuit(), result.coverage().unproven().get(0)));
    assertEquals(Verdict.INCOMPLETE, result.verdict());
  }

  /**
   * 10 m of AWG 20 is 0.333 Ω (printed tables): two side by side 0.167, one alone 0.30 at least.
   */
  @ParameterizedTest
  @CsvSource({"0.170,2", "0.2,2", "0.4,0", "beep,0"})
  void parallel_wires_are_proven_by_a_value_that_one_alone_could_not_have(
      String reading, long proven) {
    CheckResult result =
        new UnitUnderTest(folder)
            .wire("W77,J1-A,E1-1,20,10 m")
            .wire("W78,J1-A,E1-1,20,10 m")
            .reads("J1-A", "E1-1", reading)
            .check();
    assertEquals(new Coverage.Tally(2, proven), result.coverage().wires());
  }

  @Test
  void nets_tied_together_against_the_rest_are_not_apart_from_each_other() {
    CheckResult result =
        new UnitUnderTest(folder)
            .wire("W1,J1-A,P2-1")
            .wire("W2,J1-B,P2-2")
            .wire("W3,J1-C,P2-3")
            .reads("J1-A", "P2-1", "0.2")
            .reads("J1-B", "P2-2", "0.2")
            .reads("J1-C", "P2-3", "0.2")
            .insulation("J1-A+J1-B", "REST", "500")
            .check();
    assertEquals(new Coverage.Tally(3, 2), result.coverage().isolation());
  }

  @Test
  void a_reading_below_zero_is_no_gauge_and_no_value() {
    CheckResult result =
        new UnitUnderTest(folder)
            .wire("W1,J1-A,P2-1,20,40 ft")
            .reads("J1-A", "P2-1", "-0.02")
            .check();
    assertEquals(List.of(), result.diagnosis().faults());
    assertEquals(0, result.values().unlike().size());
    assertEquals(Outcome.NOT_JUDGED, outcome(result));
  }

  @Test
  void one_high_reading_among_many_good_ones_puts_no_leads_in_doubt() {
    UnitUnderTest unit = new UnitUnderTest(folder);
    for (int pin = 1; pin <= 10; pin++) {
      unit.wire("W" + pin + ",J1-" + pin + ",P2-" + pin + ",20,4 ft");
      unit.reads("J1-" + pin, "P2-" + pin, pin == 3 ? "0.84" : "0.05");
    }
    assertTrue(unit.check().leadDoubt().isEmpty());
  }

  private UnitUnderTest sensitive() {
    return new UnitUnderTest(folder)
        .wire("W1,J1-1,U1-1")
        .wire("W2,J1-2,U1-2")
        .part("U1,1,2,suppressor,,,50")
        .netLimit("insulation min,20,MΩ,J1-2");
  }

  @Test
  void a_part_that_bears_less_lets_its_net_be_tested_at_less() {
    assertEquals(
        Outcome.CONFORMS, outcome(sensitive().insulationAt("50", "J1-1", "REST", "150").check()));
    assertEquals(
        Outcome.NOT_JUDGED, outcome(sensitive().insulationAt("25", "J1-1", "REST", "150").check()));
  }

  @Test
  void a_part_that_was_tested_beyond_what_it_bears_is_to_be_proven_again() {
    CheckResult result = sensitive().insulationAt("500", "J1-1", "REST", "150").check();
    assertEquals(
        List.of(
            "J1-1 to REST was tested at 500 V; suppressor U1 stands only 50 V: if it was not"
                + " disconnected, prove it again."),
        InsulationNoteSentences.of(result.insulationNotes()));
  }

  @Test
  void a_net_has_an_insulation_limit_of_its_own() {
    CheckResult result = sensitive().insulationAt("500", "J1-2+J1-1", "REST", "30").check();
    assertEquals(Outcome.CONFORMS, outcome(result));
    assertEquals(List.of(), result.insulationNotes(), "both ends of the part are tied together");
  }

  /** IEEE 43 gives half for each 10 °C for windings; for wiring a rule of thumb, no source. */
  @Test
  void the_temperature_of_a_low_reading_is_shown_and_never_applied() {
    CheckResult result = unit().job("temperature,40 °C,").insulation("J1-A", "REST", "30").check();
    assertEquals(Outcome.LOW_INSULATION, outcome(result));
    assertEquals(List.of(new InsulationNote.Warmer(40, 30e6, 120e6)), result.insulationNotes());
  }
}
