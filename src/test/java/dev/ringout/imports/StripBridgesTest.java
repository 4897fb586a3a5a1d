package dev.ringout.imports;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.ringout.support.Run;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The column of bridges of a terminal strip is read once, whatever stands in it. */
class StripBridgesTest {
  @TempDir Path folder;

  private Path list(String text) throws Exception {
    return Files.writeString(folder.resolve("strip.csv"), text);
  }

  private Run asStrip(String text) throws Exception {
    return Run.of("import", list(text), "--layout", "terminals", "--column", "C=Bridge");
  }

  @Test
  void a_chain_behind_an_arrow_bridges_its_terminals_and_makes_none_of_them_spare()
      throws Exception {
    String page =
        asStrip(
                """
                Internal,Terminal TB3,Bridge,External
                K1-13,4,,S1-1
                ,5,→5-6-7,
                K1-14,6,→5-6-7,S1-2
                ,7,→5-6-7,
                K2-14,8,,S2-2
                """)
            .out();
    assertTrue(page.matches("(?s).*TB3-5 +TB3-6.*TB3-6 +TB3-7.*"), page);
    assertTrue(page.contains("6 rows: 5 wire, 1 heading\n"), page);
  }

  @Test
  void a_cell_of_bridges_that_a_spreadsheet_made_a_date_is_said_once() throws Exception {
    Run run =
        asStrip(
            """
            Internal,Terminal TB3,Bridge,External
            K1-13,1,2025-01-02,S1-1
            K1-14,2,,S1-2
            K2-13,3,4,S2-1
            K2-14,4,,S2-2
            """);
    assertTrue(run.err().contains("strip.csv!C2") && !run.err().contains("in all"), run.err());
  }

  @Test
  void a_bridge_to_what_is_no_terminal_is_in_doubt_and_joins_nothing() throws Exception {
    Run run =
        asStrip(
            """
            Internal,Terminal TB3,Bridge,External
            K1-13,1,see drawing,S1-1
            K1-14,2,,S1-2
            K2-13,3,TB3-4,S2-1
            K2-14,4,,S2-2
            """);
    assertTrue(run.err().contains("strip.csv!C2") && run.err().contains("see drawing"), run.err());
    assertTrue(run.out().contains("9 wires"), run.out());
  }

  @Test
  void a_list_of_bridges_is_read_where_the_user_says_which_column_they_are() throws Exception {
    Path list =
        list(
            """
            Strip,Joined,Kind
            X1,1-2-3,comb
            X1,"5, 6",comb
            X2,1-4,wire
            """);
    Run run = Run.of("import", list, "--column", "B=Bridge");
    assertTrue(run.out().matches("(?s).*X1-1 +X1-2.*X1-2 +X1-3.*X1-5 +X1-6.*3 wires.*"), run.out());
    assertTrue(run.err().contains("strip.csv!B4") && run.err().contains("\"1-4\""), run.err());
  }

  @Test
  void a_drawn_mark_of_a_bridge_is_no_mark_for_as_above() throws Exception {
    Run run =
        asStrip(
            """
            Internal,Terminal TB3,Bridge,External
            K1-13,5,|,S1-1
            K1-14,6,|,S2-1
            K2-13,7,*,S2-3
            K2-14,8,*,S2-2
            """);
    assertEquals("", run.err().replaceAll("(?m)^warning: .*\\R?", ""), run.out());
  }
}
