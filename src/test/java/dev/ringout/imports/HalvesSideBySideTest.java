package dev.ringout.imports;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.ringout.support.Run;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A table in two halves side by side, the second mirrored: no wire of it is lost in silence. */
class HalvesSideBySideTest {
  private static final String MIRRORED =
      """
      Desk Pin,Chip Pin,Chip Pin,Desk Pin
      34,1,40,35
      33,2,39,36
      32,3,38,37
      """;

  @TempDir Path folder;

  private Run rowNets(String text, String... options) throws IOException {
    List<String> words = new ArrayList<>(List.of("--layout", "row-nets"));
    words.addAll(List.of(options));
    return TypedList.imported(folder, text, words.toArray(String[]::new));
  }

  @Test
  void mirrored_halves_are_two_tables() throws IOException {
    Run run = rowNets(MIRRORED);
    assertEquals(0, run.code(), run.err());
    assertTrue(run.out().contains("6 wires"), run.out());
    assertTrue(run.out().matches("(?s).*Desk-34\\s+Chip-1\\s.*Chip-40\\s+Desk-35\\s.*"), run.out());
  }

  @Test
  void mirrored_halves_with_names_and_blank_columns_between_are_two_tables_too()
      throws IOException {
    Run run =
        rowNets(
            """
            Desk Name,Desk Pin,,Chip Pin,Chip Name,,Chip Name,Chip Pin,,Desk Pin,Desk Name
            PC3,34,,1,A11,,A10,40,,35,PC2
            PC4,33,,2,A12,,A9,39,,36,PC1
            PC5,32,,3,A13,,A8,38,,37,PC0
            """);
    assertEquals(0, run.code(), run.err());
    assertTrue(run.out().contains("6 wires"), run.out());
  }

  @Test
  void pins_of_an_item_on_both_sides_of_anothers_are_not_other_names_of_its_pins()
      throws IOException {
    Run run = rowNets(MIRRORED.replace("Desk Pin\n", "Desk Pin,Remark\n"));
    assertEquals(65, run.code(), run.out());
    assertTrue(run.out().contains("0 wires"), run.out());
    assertTrue(run.err().contains("--column C=Keep --column D=Keep"), run.err());
  }

  @Test
  void the_halves_are_read_one_at_a_time() throws IOException {
    Run left = rowNets(MIRRORED, "--column", "C=Keep", "--column", "D=Keep");
    assertEquals(0, left.code(), left.err());
    assertTrue(left.out().contains("3 wires"), left.out());
    Run right = rowNets(MIRRORED, "--column", "A=Keep", "--column", "B=Keep");
    assertEquals(0, right.code(), right.err());
    assertTrue(right.out().contains("Chip-40") && right.out().contains("Desk-35"), right.out());
  }

  @Test
  void a_half_that_is_repeated_and_not_mirrored_is_not_lost_either() throws IOException {
    assertEquals(
        65, rowNets(MIRRORED.replace("Chip Pin,Desk Pin\n", "Desk Pin,Chip Pin\n")).code());
  }

  @Test
  void a_second_column_beside_the_first_is_said_to_be_left_out() throws IOException {
    Run run =
        rowNets(
            """
            Desk Pin,Desk Pin,Chip Pin
            34,PC3,1
            33,PC4,2
            32,PC5,3
            """);
    assertEquals(0, run.code(), run.err());
    assertTrue(run.err().contains("column B is taken for other names of the pins of Desk"));
  }

  @Test
  void an_item_with_one_column_is_as_it_was() throws IOException {
    Run run =
        rowNets(
            """
            Desk Pin,Chip Pin,Lamp Pin
            34,1,A
            33,2,B
            32,3,C
            """);
    assertEquals(0, run.code(), run.err());
    assertFalse(run.err().contains("is not used"), run.err());
    assertTrue(run.out().contains("6 wires"), run.out());
  }
}
