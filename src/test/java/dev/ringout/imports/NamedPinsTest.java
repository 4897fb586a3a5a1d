package dev.ringout.imports;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.ringout.support.Run;
import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Pins with a name beside each: nobody can tell whether it is what the pin goes to. */
class NamedPinsTest {
  private static final String LAMPS =
      """
      Name,Pin,Mode,Kind
      Lock lamp,2,OUT,24 V
      Gate lamp,3,OUT,24 V
      Horn,4,OUT,24 V
      """;

  @TempDir Path folder;

  private Run imported(String text, String... options) throws IOException {
    return TypedList.imported(folder, text, options);
  }

  @Test
  void names_beside_pins_are_never_taken_for_far_ends() throws IOException {
    Run run = imported(LAMPS);
    assertEquals(65, run.code(), run.out());
    assertTrue(run.out().contains("terminal 2 to Lock lamp"), run.out());
    assertTrue(run.out().contains("--column B=Pin"), run.out());
    assertTrue(run.out().contains("--column 'A=Far End'"), run.out());
  }

  @Test
  void the_command_that_is_shown_takes_them() throws IOException {
    Run run = imported(LAMPS, "--column", "B=Pin", "--column", "A=Far End", "--item", "X1");
    assertEquals(0, run.code(), run.err());
    assertTrue(run.out().contains("X1-4") && run.out().contains("Horn-?"), run.out());
  }

  @Test
  void functions_before_a_boards_pins_are_those_of_the_item_in_the_title() throws IOException {
    Run run =
        imported(
            """
            Lock panel,,
            Function,Pin,Notes
            RAISE,D4,to the desk
            LOWER,D5,to the desk
            STOP,D6,to the desk
            """);
    assertEquals(65, run.code(), run.out());
    assertTrue(run.out().contains("Lock panel terminal RAISE to D4"), run.out());
  }

  @Test
  void a_table_of_named_pins_beside_a_list_of_wires_asks_nothing() throws IOException {
    Run run =
        imported(
            """
            Wire,From,To,Colour
            101,J1-1,TB1-1,WHT
            102,J1-2,TB1-2,BLK
            103,J1-3,TB1-3,RED

            Name,Pin,Mode,Kind
            Lock lamp,2,OUT,24 V
            Gate lamp,3,OUT,24 V
            Horn,4,OUT,24 V
            """);
    assertEquals(0, run.code(), run.err());
    assertFalse(run.out().contains("Lock lamp-?"), run.out());
  }
}
