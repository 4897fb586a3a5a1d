package dev.ringout.imports;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.ringout.support.Run;
import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Whatever is not read names what can be said, and what is said is enough. */
class QuestionGoesOnTest {
  /** Three ends in a row, each with its pins: which two a wire joins nobody can tell. */
  private static final String THREE_ENDS =
      """
      Tag,Card,Ch,Cabinet TB,Term,Cable,Field device,Dev term
      ZSO-101,DI-1,0,TB10,1,C-101,ZS-101,1
      ZSO-101,DI-1,0,TB10,2,C-101,ZS-101,2
      FT-201,AI-1,0,TB11,1,C-201,FT-201,+
      FT-201,AI-1,0,TB11,2,C-201,FT-201,-
      """;

  /** Ends in words without pins, some of them named again. */
  private static final String IN_WORDS =
      """
      from,to,signal
      Charger negative,Common return,0V
      Charger negative,Converter input,0V
      Charger positive,Main fuse,V24
      """;

  @TempDir Path folder;

  private Run imported(String text, String... options) throws IOException {
    return TypedList.imported(folder, text, options);
  }

  @Test
  void of_three_ends_each_two_that_follow_one_another_are_shown() throws IOException {
    Run run = imported(THREE_ENDS);
    assertEquals(65, run.code(), run.out());
    assertTrue(run.out().contains("TB10 terminal 1 to ZS-101 terminal 1"), run.out());
    assertTrue(run.out().contains("--column D=From --column G=To"), run.out());
  }

  @Test
  void the_two_columns_that_are_shown_are_enough_for_their_pins_stand_beside_them()
      throws IOException {
    Run run = imported(THREE_ENDS, "--column", "D=From", "--column", "G=To");
    assertEquals(0, run.code(), run.err());
    assertTrue(run.out().matches("(?s).*TB11-1\\s+FT-201-\\+.*"), run.out());
    assertFalse(run.out().contains("DI-1-0"), run.out());
  }

  @Test
  void what_can_be_said_stands_below_also_where_no_way_is_shown() throws IOException {
    Run run =
        imported(
            """
            Connector J1 to connector P2
            1 - 1 red
            2 - 2 blue
            """);
    assertEquals(65, run.code(), run.out());
    assertTrue(run.out().contains("--column B=From"), run.out());
    assertTrue(run.out().contains("--heading-row 5"), run.out());
  }

  @Test
  void ways_with_other_wires_are_shown_before_those_with_the_same() throws IOException {
    Run run = imported(THREE_ENDS);
    int first = run.out().indexOf("DI-1 terminal 0 to TB10 terminal 1");
    int other = run.out().indexOf("TB10 terminal 1 to ZS-101 terminal 1");
    assertTrue(first > 0 && other > first, run.out());
  }

  @Test
  void every_item_without_a_pin_is_one_point_where_the_user_says_all() throws IOException {
    Run asked = imported(IN_WORDS);
    assertTrue(asked.err().contains("--one-point all"), asked.err());
    Run run = imported(IN_WORDS, "--one-point", "all");
    assertEquals(0, run.code(), run.err());
    assertFalse(run.out().contains("Charger negative-?"), run.out());
  }
}
