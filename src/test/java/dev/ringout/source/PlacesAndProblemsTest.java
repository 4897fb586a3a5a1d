package dev.ringout.source;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Where something stands in a user's file, and what is wrong there. */
class PlacesAndProblemsTest {

  /** Source: ECMA-376 part 1, 18.3.1.4: cells are named by column letters and row. */
  @ParameterizedTest
  @CsvSource({"1, A", "26, Z", "27, AA", "52, AZ", "702, ZZ", "703, AAA", "16384, XFD"})
  void columns_are_lettered_as_spreadsheets_do(int column, String letters) {
    assertEquals(letters, Place.columnLetters(column));
  }

  @Test
  void a_place_is_named_as_far_as_it_is_known() {
    assertEquals("r.xlsx!Continuity!G14", new Place("r.xlsx", "Continuity", 14, 7).toString());
    assertEquals("r.csv!G14", new Place("r.csv", "", 14, 7).toString());
    assertEquals("r.xlsx!Continuity!14", new Place("r.xlsx", "Continuity", 14, 0).toString());
    assertEquals("r.xlsx!Continuity", Place.of("r.xlsx", "Continuity").toString());
    assertEquals("r.xlsx", Place.of("r.xlsx").toString());
  }

  @Test
  void a_suggestion_follows_the_finding() {
    Place cell = new Place("list.csv", "", 2, 1);
    assertEquals(
        "no pin G0; maybe GO",
        new Problem(cell, "Pin", Severity.ERROR, "no pin G0", "GO").sentence());
    assertEquals("no pin", new Problem(cell, "Pin", Severity.ERROR, "no pin", "").sentence());
  }

  @Test
  void reading_goes_on_after_a_problem_and_only_errors_stop_the_work() {
    Problems problems = new Problems();
    problems.warning(Place.of("a.csv"), "odd");
    assertFalse(problems.hasErrors());
    problems.error(Place.of("b.csv"), "unreadable");
    assertTrue(problems.hasErrors());
    assertEquals(
        List.of("odd", "unreadable"), problems.list().stream().map(Problem::text).toList());
  }
}
