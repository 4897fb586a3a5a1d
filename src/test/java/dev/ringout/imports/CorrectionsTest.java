package dev.ringout.imports;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.ringout.support.Run;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a list leaves open in single cells and rows is settled without a change of the list. */
class CorrectionsTest {
  private static final String OPEN_CELLS =
      """
      Wire,From,To,Color
      101,J1-1,P2-1,RED
      102,J1-2,P2-2 or P2-3,BLU
      103,J1-3,P2-?,BLK
      104,TB1-4,P2-?,BLK
      checked,by,hand,
      105,J1-5,2025-03-01,GRN
      """;

  private static final String NET =
      """
      Net,Connections,Remark
      24V,J1.1 ; F1.1 ; K1.?(coil),
      0V,J1.2 ; K1.A2 ; H1.2,
      LAMP,K1.14 ; H1.1,
      """;

  @TempDir Path folder;

  private Run imported(String text, String... options) throws IOException {
    return TypedList.imported(folder, text, options);
  }

  @Test
  void an_open_cell_names_the_option_that_says_what_it_means() throws IOException {
    Run run = imported(OPEN_CELLS);
    assertEquals(65, run.code(), run.out());
    assertTrue(run.err().contains("--read-as \"P2-2 or P2-3=POINT\""), run.err());
    assertTrue(run.out().contains("--leave-out"), run.out());
  }

  @Test
  void a_cell_is_read_as_the_user_says_wherever_it_stands_and_that_is_told() throws IOException {
    Run run =
        imported(
            OPEN_CELLS,
            "--read-as",
            "P2-2 or P2-3=P2-2",
            "--read-as",
            "P2-?=P2-9",
            "--read-as",
            "2025-03-01=P2-5",
            "--leave-out",
            "6");
    assertEquals(0, run.code(), run.err());
    assertTrue(run.out().matches("(?s).*102\\s+J1-2\\s+P2-2 .*"), run.out());
    assertTrue(run.out().matches("(?s).*103\\s+J1-3\\s+P2-9 .*"), run.out());
    assertTrue(run.out().matches("(?s).*104\\s+TB1-4\\s+P2-9 .*"), run.out());
    assertTrue(run.out().matches("(?s).*105\\s+J1-5\\s+P2-5 .*"), run.out());
    assertTrue(
        run.err().contains("2 cells with \"P2-?\" read as \"P2-9\", as you said"), run.err());
  }

  @Test
  void every_open_point_of_a_cell_with_several_is_read_as_the_user_says() throws IOException {
    Run run =
        imported(NET.replace("F1.1", "F1.?"), "--read-as", "F1.?=F1.1", "--read-as", "K1.?=K1.A1");
    assertEquals(0, run.code(), run.err());
    assertTrue(run.err().contains("\"F1.?\" read as \"F1.1\""), run.err());
    assertTrue(run.err().contains("\"K1.?\" read as \"K1.A1\""), run.err());
  }

  @Test
  void rows_that_are_left_out_are_counted_as_skipped_and_their_cells_as_not_used()
      throws IOException {
    Run run = imported(OPEN_CELLS, "--leave-out", "3-5,6", "--leave-out", "7");
    assertEquals(0, run.code(), run.err());
    assertTrue(run.out().contains("1 wire"), run.out());
    assertTrue(run.out().contains("not used (A3:D3, A4:D4"), run.out());
    Run between = imported(OPEN_CELLS, "--leave-out", "3,4,5,6", "--read-as", "2025-03-01=P2-5");
    assertTrue(between.out().contains("7 rows: 2 wire, 1 heading, 4 skipped"), between.out());
  }

  @Test
  void dashes_and_blanks_of_other_kinds_do_not_matter() throws IOException {
    Run run =
        imported(
            "From,To\nTB1-1,S1\u2013S4 pin B\nTB1-2,S5 pin A\nTB1-3,S6 pin A\n",
            "--read-as",
            "S1-S4  pin B=S1 pin B, S2 pin B");
    assertEquals(0, run.code(), run.err());
    assertTrue(run.out().contains("S2-B"), run.out());
  }

  @Test
  void one_of_several_points_in_a_cell_is_read_as_the_user_says() throws IOException {
    Run asked = imported(NET);
    assertEquals(65, asked.code(), asked.out());
    Run run = imported(NET, "--read-as", "K1.?=K1.A1");
    assertEquals(0, run.code(), run.err());
    assertTrue(run.out().contains("5 links"), run.out());
  }

  @Test
  void several_of_the_points_in_a_cell_are_each_read_as_the_user_says() throws IOException {
    String net =
        """
        Net,Connections,Remark
        24V,J1.1 ; F1.? ; K1.?(coil),
        0V,J1.2 ; K1.A2 ; H1.2,
        LAMP,K1.14 ; H1.1,
        """;
    Run run = imported(net, "--read-as", "K1.?=K1.A1", "--read-as", "F1.?=F1.1");
    assertEquals(0, run.code(), run.err());
    assertTrue(run.out().contains("5 links"), run.out());
    assertTrue(run.err().contains("\"K1.?\" read as \"K1.A1\""), run.err());
    assertTrue(run.err().contains("\"F1.?\" read as \"F1.1\""), run.err());
  }

  @Test
  void points_in_words_with_a_plus_between_are_asked_and_the_command_that_parts_them_is_printed()
      throws IOException {
    String list =
        """
        From;To;Color
        Battery plus;VIN board + COM relay;RED
        D5 + D6 board (joined);IN relay;BLU
        """;
    Run asked = imported(list);
    assertEquals(65, asked.code(), asked.out());
    String first = "VIN board + COM relay=VIN board ; COM relay";
    String second = "D5 + D6 board (joined)=D5 board (joined) ; D6 board (joined)";
    assertTrue(asked.err().contains("--read-as \"" + first + "\""), asked.err());
    assertTrue(asked.err().contains("--read-as \"" + second + "\""), asked.err());
    Run run = imported(list, "--read-as", first, "--read-as", second);
    assertEquals(0, run.code(), run.err());
    assertTrue(run.out().contains("4 wires"), run.out());
    assertTrue(run.out().contains("D6 board"), run.out());
  }

  @Test
  void names_with_a_semicolon_between_are_asked_where_the_user_says_nothing_of_them()
      throws IOException {
    Run asked = imported("From\tTo\tColor\nTB1-1\tHorn ; Bell\tRED\nTB1-2\tLamp\tBLU\n");
    assertEquals(65, asked.code(), asked.out());
    assertTrue(asked.err().contains("\"Horn ; Bell\" leaves open"), asked.err());
  }

  @Test
  void a_cell_that_the_user_says_is_a_name_is_not_asked_again() throws IOException {
    String list = "From,To,Color\nTB1-1,Lamp 2 via relay,RED\nTB1-2,Horn,BLU\n";
    Run asked = imported(list);
    String stands = "Lamp 2 via relay=Lamp 2 via relay";
    assertEquals(65, asked.code(), asked.out());
    assertTrue(asked.err().contains("as it stands: --read-as \"" + stands + "\""), asked.err());
    Run run = imported(list, "--read-as", stands);
    assertEquals(0, run.code(), run.err());
    assertTrue(run.out().contains("2 wires"), run.out());
  }

  @Test
  void what_the_list_does_not_have_is_an_error_and_nothing_is_written() throws IOException {
    Path out = folder.resolve("out.xlsx");
    for (String[] option : new String[][] {{"--read-as", "P9-?=P9-1"}, {"--leave-out", "40"}}) {
      Run run = imported(OPEN_CELLS, option[0], option[1], "-o", out.toString());
      assertEquals(65, run.code(), run.out());
      assertTrue(run.err().contains("names, is not in the list"), run.err());
      assertFalse(Files.exists(out), "written all the same");
    }
  }

  @Test
  void what_is_said_of_cells_and_rows_goes_into_a_profile() throws IOException {
    Path profile = folder.resolve("shop.txt");
    imported(
        OPEN_CELLS,
        "--read-as",
        "P2-?=P2-9",
        "--leave-out",
        "3,6-7",
        "--save-profile",
        profile.toString());
    Run run = imported(OPEN_CELLS, "--profile", profile.toString());
    assertEquals(0, run.code(), run.err());
    assertTrue(run.out().contains("3 wires"), run.out());
  }

  @Test
  void an_option_without_what_it_means_is_refused() throws IOException {
    assertEquals(64, imported(OPEN_CELLS, "--read-as", "P2-?").code());
    assertEquals(64, imported(OPEN_CELLS, "--leave-out", "six").code());
  }
}
