package dev.ringout.imports;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.ringout.support.Run;
import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Lists whose headings stand below each other: each column is a wire. */
class OnItsSideTest {
  @TempDir Path folder;

  private Run imported(String text, String... options) throws IOException {
    return TypedList.imported(folder, text, options);
  }

  @Test
  void each_column_is_a_wire_and_that_is_said() throws IOException {
    Run run =
        imported(
            """
            Wire,W1,W2,W3
            From item,J1,J1,J1
            From pin,1,2,3
            To item,P2,P2,K1
            To pin,1,2,A1
            """);
    assertEquals(0, run.code(), run.err());
    assertTrue(run.out().contains("3 wires"), run.out());
    assertTrue(run.out().matches("(?s).*W3\\s+J1-3\\s+K1-A1.*"), run.out());
    assertTrue(run.err().contains("stand below each other"), run.err());
  }

  @Test
  void what_is_found_is_told_where_it_stands_in_the_file() throws IOException {
    Run run =
        imported(
            """
            Wire,101,102,103
            From,J1-1,J1-2,J1-3
            To,P2-1,P2-2?,P2-3
            """);
    assertEquals(65, run.code(), run.out());
    assertTrue(run.err().contains("unit.csv!C3"), run.err());
  }

  @Test
  void a_letter_means_the_row_that_stands_for_the_column() throws IOException {
    Run run =
        imported(
            """
            Wire,101,102,103
            From,J1-1,J1-2,J1-3
            To,P2-1,P2-2,P2-3
            Was,P9-1,P9-2,P9-3
            """,
            "--column",
            "C=Keep",
            "--column",
            "D=To");
    assertEquals(0, run.code(), run.err());
    assertTrue(run.out().contains("P9-2") && !run.out().contains("P2-2 "), run.out());
  }

  @Test
  void a_list_that_stands_upright_is_not_turned_for_words_in_its_first_column() throws IOException {
    Run run =
        imported(
            """
            Tag,From,To
            Source,J1-1,P2-1
            Destination,J1-2,P2-2
            From,J1-3,P2-3
            """);
    assertFalse(run.err().contains("stand below each other"), run.err());
  }

  @Test
  void a_page_that_explains_headings_tells_no_wires() throws IOException {
    Run run =
        imported(
            """
            From,where the wire begins,see page 2
            To,where the wire ends,see page 3
            Colour,of the insulation,see page 4
            """);
    assertEquals(65, run.code(), run.out());
    assertFalse(run.out().contains("FIRST WIRES"), run.out());
  }
}
