package dev.ringout.words;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.ringout.source.Place;
import dev.ringout.source.Problem;
import dev.ringout.source.Severity;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What is wrong in the files, as it is printed. */
class ProblemTextTest {
  private static final Problem NO_ITEM =
      new Problem(
          new Place("box.xlsx", "Wires", 4, 2),
          "From",
          Severity.ERROR,
          "there is no item J11",
          "J1");
  private static final Problem ODD =
      new Problem(
          new Place("box.xlsx", "Wires", 2, 3), "Gauge", Severity.WARNING, "no gauge is given", "");

  @Test
  void a_line_says_how_bad_where_under_which_heading_what_and_what_was_probably_meant() {
    assertEquals(
        "error: box.xlsx!Wires!B4 (From): there is no item J11; maybe J1\n",
        ProblemText.lines(List.of(NO_ITEM)));
  }

  @Test
  void problems_are_sorted_by_how_bad_they_are() {
    assertEquals(
        ProblemText.lines(List.of(NO_ITEM)) + ProblemText.lines(List.of(ODD)),
        ProblemText.lines(List.of(ODD, NO_ITEM)));
  }

  @Test
  void errors_that_stop_the_work_are_counted_at_the_end() {
    String text = ProblemText.write(List.of(ODD, NO_ITEM));
    assertTrue(text.endsWith("\nringout: 1 error in the files; nothing was done.\n"), text);
    assertEquals(ProblemText.lines(List.of(ODD)), ProblemText.write(List.of(ODD)));
  }

  @Test
  void cells_that_were_left_out_keep_the_verdict_back() {
    assertTrue(
        ProblemText.withoutRows(List.of(NO_ITEM), 1)
            .endsWith("\nringout: no verdict before this cell is mended; the rest was judged.\n"));
    assertTrue(
        ProblemText.withoutRows(List.of(NO_ITEM), 3).contains("before these 3 cells are mended"));
    assertEquals(ProblemText.lines(List.of(ODD)), ProblemText.withoutRows(List.of(ODD), 0));
  }
}
