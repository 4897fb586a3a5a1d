package dev.ringout.compare;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.ringout.check.CheckResult;
import dev.ringout.compare.Coverage.Tally;
import dev.ringout.readings.Reading;
import dev.ringout.support.UnitUnderTest;
import dev.ringout.words.UnprovenSentences;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Which of several readings stands, which of them can't all be true, and what a switch needs. */
class StandingReadingsTest {
  @TempDir Path folder;

  private UnitUnderTest unit() {
    return new UnitUnderTest(folder).wire("W1,J1-A,P2-1").wire("W2,J1-B,P2-2").wire("W3,J1-C,P2-3");
  }

  private static List<String> standing(CheckResult result) {
    return result.comparison().inForce().stream().map(StandingReadingsTest::word).toList();
  }

  private static String word(Judged judged) {
    return judged.reading().subject() + " " + judged.outcome();
  }

  private static List<String> replaced(CheckResult result) {
    return result.comparison().replaced().stream()
        .map(
            one ->
                word(one.earlier()) + (one.changed() ? " now " + one.later().outcome() : " still"))
        .toList();
  }

  @Test
  void the_later_row_stands_and_says_whether_it_says_otherwise() {
    CheckResult result =
        unit()
            .reads("J1-A", "P2-1", "OL")
            .reads("J1-B", "P2-2", "0.1")
            .reads("P2-1", "J1-A", "0.1")
            .reads("J1-B", "P2-2", "0.2")
            .check();
    assertEquals(List.of("P2-1 to J1-A CONFORMS", "J1-B to P2-2 CONFORMS"), standing(result));
    assertEquals(
        List.of("J1-A to P2-1 OPEN now CONFORMS", "J1-B to P2-2 CONFORMS still"), replaced(result));
  }

  @Test
  void where_every_reading_has_a_time_the_latest_stands() {
    CheckResult timed =
        unit()
            .readsAt("2026-11-25 14:30", "J1-A", "P2-1", "0.1")
            .readsAt("2026-11-25 09:00", "J1-A", "P2-1", "OL")
            .check();
    assertEquals(List.of("J1-A to P2-1 CONFORMS"), standing(timed));
    assertEquals(List.of("J1-A to P2-1 OPEN now CONFORMS"), replaced(timed));
  }

  /** Past midnight, or past noon on a clock of twelve hours, the clock begins anew. */
  @Test
  void where_times_of_day_run_against_the_rows_the_failing_one_stands() {
    CheckResult result =
        unit()
            .readsAt("23:50", "J1-A", "P2-1", "0.1")
            .readsAt("0:10", "J1-A", "P2-1", "OL")
            .readsAt("11:50", "J1-B", "P2-2", "OL")
            .readsAt("1:10", "J1-B", "P2-2", "0.1")
            .check();
    assertEquals(List.of("J1-A to P2-1 OPEN", "J1-B to P2-2 OPEN"), standing(result));
  }

  @Test
  void where_one_has_no_time_the_order_of_the_rows_stands() {
    CheckResult some =
        unit()
            .readsAt("2026-11-25 14:30", "J1-A", "P2-1", "0.1")
            .reads("J1-A", "P2-1", "OL")
            .check();
    assertEquals(List.of("J1-A to P2-1 OPEN"), standing(some));
  }

  @Test
  void of_two_at_the_same_time_the_later_row_stands() {
    CheckResult same =
        unit()
            .readsAt("14:30", "J1-A", "P2-1", "0.1")
            .readsAt("14:30", "J1-A", "P2-1", "OL")
            .check();
    assertEquals(List.of("J1-A to P2-1 OPEN"), standing(same));
  }

  @Test
  void a_blank_replaces_nothing_and_a_step_never_made_is_named_once() {
    CheckResult result =
        unit()
            .reads("J1-A", "P2-1", "0.1")
            .reads("J1-A", "P2-1", "N/T")
            .reads("J1-B", "P2-2", "")
            .reads("P2-2", "J1-B", "N/T")
            .check();
    assertEquals(List.of("J1-A to P2-1 CONFORMS", "J1-B to P2-2 NOT_TESTED"), standing(result));
    assertEquals(List.of(), replaced(result));
  }

  @Test
  void kinds_states_groups_and_the_rest_are_subjects_of_their_own() {
    CheckResult result =
        unit()
            .wire("W4,J1-D,S1-1")
            .contact("S1,SHUT,1,2")
            .contact("S1,OPEN,3,4")
            .reads("J1-A", "J1-B", "OL")
            .readsIn("S1=OPEN", "J1-A", "J1-B", "OL")
            .reads("J1-A+J1-C", "J1-B", "OL")
            .reads("J1-C+J1-A", "J1-B", "OL")
            .reads("J1-A", "REST", "OL")
            .insulation("J1-A", "J1-B", "500")
            .check();
    assertEquals(5, standing(result).size());
    assertEquals(List.of("J1-A+J1-C to J1-B CONFORMS still"), replaced(result));
    assertEquals(4, result.comparison().made(Reading.Kind.CONTINUITY));
    assertEquals(1, result.comparison().made(Reading.Kind.INSULATION));
  }

  @Test
  void words_without_a_number_are_counted() {
    CheckResult result =
        unit()
            .reads("J1-A", "P2-1", "beep")
            .reads("J1-B", "P2-2", "0.1")
            .reads("J1-C", "P2-3", "PASS")
            .check();
    assertEquals(2, result.comparison().unquantified());
    assertEquals(3, result.comparison().with(Outcome.CONFORMS).size());
  }

  private static List<String> contradictions(CheckResult result) {
    return result.comparison().contradictions().stream()
        .map(
            one ->
                one.apart().reading().subject()
                    + " against "
                    + String.join(
                        ", ",
                        one.joins().stream()
                            .map(judged -> judged.reading().subject())
                            .sorted()
                            .toList()))
        .toList();
  }

  @Test
  void points_read_apart_that_others_join_contradict_those_on_the_way() {
    CheckResult result =
        unit()
            .reads("J1-A", "J1-B", "0.1")
            .reads("J1-B", "J1-C", "0.1")
            .reads("P2-1", "P2-2", "0.1")
            .reads("J1-A", "J1-C", "OL")
            .check();
    assertEquals(
        List.of("J1-A to J1-C against J1-A to J1-B, J1-B to J1-C"), contradictions(result));
  }

  @Test
  void apart_from_the_rest_contradicts_a_join_with_any_of_it_and_none_within_its_own_net() {
    assertEquals(
        List.of("J1-A to REST against J1-B to P2-1, P2-1 to J1-A"),
        contradictions(
            unit()
                .reads("P2-1", "J1-A", "0.1")
                .reads("J1-B", "P2-1", "0.1")
                .reads("J1-A", "REST", "OL")
                .check()));
  }

  @Test
  void a_join_of_the_own_net_is_no_contradiction_nor_is_one_in_another_state() {
    assertEquals(
        List.of(),
        contradictions(
            unit()
                .wire("W4,J1-D,S1-1")
                .contact("S1,SHUT,1,2")
                .contact("S1,OPEN,3,4")
                .reads("J1-A", "P2-1", "0.1")
                .reads("J1-A", "REST", "OL")
                .readsIn("S1=OPEN", "J1-B", "J1-C", "0.1")
                .reads("J1-B", "J1-C", "OL")
                .check()));
  }

  private static List<String> contacts(CheckResult result) {
    return result.coverage().unproven().stream()
        .filter(Unproven.Contact.class::isInstance)
        .map(Unproven.Contact.class::cast)
        .map(
            one ->
                result.circuit().conductors().get(one.conductor()).from()
                    + "/"
                    + result.circuit().conductors().get(one.conductor()).to().pin()
                    + " "
                    + UnprovenSentences.why(result.circuit(), one))
        .toList();
  }

  private UnitUnderTest selector() {
    return new UnitUnderTest(folder)
        .wire("W1,J1-A,S1-1")
        .wire("W2,J1-B,S1-2")
        .wire("W3,J1-C,S1-3")
        .contact("S1,ONE,1,2")
        .contact("S1,TWO,1,3")
        .contact("S1,BOTH,1,2")
        .contact("S1,BOTH,3,1");
  }

  @Test
  void a_contact_is_to_be_seen_closed_in_its_position_and_open_in_the_others() {
    CheckResult nothing = selector().reads("J1-A", "S1-1", "0.1").check();
    assertEquals(
        List.of(
            "S1-1/2 no reading shows it closed at ONE",
            "S1-1/2 no reading shows it open at TWO",
            "S1-1/3 no reading shows it closed at TWO",
            "S1-1/3 no reading shows it open at ONE",
            "S1-1/2 no reading shows it closed at BOTH",
            "S1-1/2 no reading shows it open at TWO",
            "S1-3/1 no reading shows it closed at BOTH",
            "S1-3/1 no reading shows it open at ONE"),
        contacts(nothing));
    assertEquals(new Tally(8, 0), nothing.coverage().switches());
  }

  @Test
  void readings_in_each_position_show_it_point_to_point_and_against_the_rest() {
    CheckResult all =
        selector()
            .reads("J1-A", "J1-B", "0.1")
            .reads("J1-C", "REST", "OL")
            .readsIn("S1=TWO", "J1-A", "J1-C", "0.1")
            .readsIn("S1=TWO", "J1-B", "J1-A", "OL")
            .readsIn("S1=BOTH", "J1-A", "J1-B", "0.1")
            .readsIn("S1=BOTH", "J1-A", "J1-C", "0.1")
            .check();
    assertEquals(List.of(), contacts(all));
    assertEquals(new Tally(8, 8), all.coverage().switches());
  }

  @Test
  void a_reading_between_other_nets_shows_no_contact_open() {
    CheckResult beside =
        selector()
            .wire("W4,J1-D,J2-4")
            .readsIn("S1=TWO", "J1-D", "REST", "OL")
            .readsIn("S1=TWO", "J1-D", "J1-B", "OL")
            .check();
    assertEquals(new Tally(8, 0), beside.coverage().switches());
  }

  /** What was read before is no better known than what was taken back. */
  @Test
  void what_was_taken_back_proves_nothing_and_nor_does_what_was_read_there_before() {
    CheckResult result =
        unit()
            .reads("J1-A", "P2-1", "0.1")
            .reads("P2-1", "J1-A", "taken back: 0.3")
            .reads("J1-B", "P2-2", "OL")
            .reads("J1-B", "P2-2", "Taken back")
            .check();
    assertEquals(List.of("P2-1 to J1-A NOT_JUDGED", "J1-B to P2-2 NOT_JUDGED"), standing(result));
    assertEquals(
        List.of("J1-A to P2-1 CONFORMS now NOT_JUDGED", "J1-B to P2-2 OPEN now NOT_JUDGED"),
        replaced(result));
    assertEquals(CheckResult.Verdict.INCOMPLETE, result.verdict());
  }

  @Test
  void what_is_read_again_after_it_was_taken_back_counts() {
    CheckResult result =
        unit().reads("J1-A", "P2-1", "taken back: 0.3").reads("J1-A", "P2-1", "0.1").check();
    assertEquals(List.of("J1-A to P2-1 CONFORMS"), standing(result));
    assertEquals(List.of("J1-A to P2-1 NOT_JUDGED now CONFORMS"), replaced(result));
  }
}
