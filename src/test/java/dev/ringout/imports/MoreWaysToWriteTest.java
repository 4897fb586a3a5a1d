package dev.ringout.imports;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.ringout.support.Run;
import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Ways in which shops write what the columns, the points and the items of a list are. */
class MoreWaysToWriteTest {
  /** Boards in the headings, pins in the cells, and nothing that says which goes where. */
  private static final String TWO_BOARDS =
      """
      CTRL32,Modul,Bemerkung
      GP4,Horn IN,Warnung vor der Bewegung
      GP21,Lampe IN,Leuchtet solange sie sich bewegt
      GP22,Riegel SENSE,Meldung vom Riegel der Bruecke
      GP34,Endlage SENSE,Meldung der Endlage am Pfeiler
      """;

  @TempDir Path folder;

  private Run imported(String text, String... options) throws IOException {
    return TypedList.imported(folder, text, options);
  }

  @Test
  void two_columns_that_may_be_ends_are_shown_and_never_taken() throws IOException {
    Run run = imported(TWO_BOARDS);
    assertEquals(65, run.code(), run.out());
    assertTrue(run.out().contains("CTRL32 terminal GP4 to Horn IN"), run.out());
    assertTrue(run.out().contains("--column 'A=From Pin' --column B=To"), run.out());
  }

  @Test
  void the_command_that_is_shown_for_two_columns_is_enough() throws IOException {
    Run run = imported(TWO_BOARDS, "--column", "A=From Pin", "--column", "B=To");
    assertEquals(0, run.code(), run.err());
    assertTrue(run.out().contains("4 wires"), run.out());
    assertTrue(run.out().matches("(?s).*CTRL32-GP22\\s+Riegel SENSE-\\?.*"), run.out());
  }

  @Test
  void a_title_over_the_headings_once_more_names_what_the_first_pins_below_are_of()
      throws IOException {
    Run headed =
        imported(
            """
            Display pin,Signal,Board pin
            1,VCC,1
            2,GND,6
            3,CS,24
            Lever,,
            Display pin,Signal,Board pin
            1,A,11
            2,B,12
            """,
            "--column",
            "A=From Pin",
            "--column",
            "C=To Pin (Board)");
    assertEquals(0, headed.code(), headed.err());
    assertTrue(headed.out().matches("(?s).*Display-1\\s+Board-1\\s.*"), headed.out());
    assertTrue(headed.out().matches("(?s).*Lever-1\\s+Board-11\\s.*"), headed.out());
  }

  @Test
  void a_text_lined_up_with_blanks_has_the_columns_of_its_headings() throws IOException {
    Run run =
        imported(
            """
            JUNCTION BOX 5   WIRING               page 1

            WIRE   FROM        TO          COLOUR
            ----   ----        --          ------
            1      TB1-1       P2-1        GREY
            2      TB1-2       P2-2
            3                  P2-3        PINK
            """);
    assertTrue(run.out().matches("(?s).*1\\s+TB1-1\\s+P2-1\\s+GREY.*"), run.out());
    assertTrue(run.out().matches("(?s).*2\\s+TB1-2\\s+P2-2\\s.*"), run.out());
    assertFalse(run.out().contains("P2-3                   PINK"), run.out());
    assertEquals(65, run.code(), "wire 3 has one end: " + run.err());
  }

  @Test
  void a_line_that_is_not_lined_up_is_one_cell_and_its_points_are_said() throws IOException {
    Run run =
        imported(
            """
            WIRE   FROM        TO          COLOUR
            1      TB1-1       P2-1        GREY
            2      TB1-2       P2-2        GREY
            3      TB1-3       P2-3        GREY
            4      TB1-4       P2-4        GREY
            5      TB1-5       P2-5        GREY
            6      TB1-6       P2-6        GREY
            7      TB1-7       P2-7        GREY
            8      TB1-8       P2-8        GREY
            9      TB1-9       P2-9        GREY
            10     TB1-10      P2-10       GREY
            11     TB1-11/LONG-NAME P2-11  GREY
            """);
    assertFalse(run.out().contains("11 wires"), run.out());
    assertTrue(run.code() == 65 || run.err().contains("A12"), run.out() + run.err());
  }

  @Test
  void ranges_with_their_cores_counted_are_as_many_wires() throws IOException {
    String counted =
        """
        Cable,From,To,Cores
        W81,X8:1-4,X9:1-4,4
        W82,X8:5..7,X9:11..13,3
        W83,X8:10,X9:20,1
        """;
    Run run = imported(counted);
    assertEquals(0, run.code(), run.err());
    assertTrue(run.out().contains("8 wires"), run.out());
    assertTrue(run.out().matches("(?s).*X8-4\\s+X9-4.*"), run.out());
    Run other = imported(counted.replace("X9:1-4,4", "X9:1-4,2"));
    assertEquals(65, other.code(), other.out());
  }

  @Test
  void pins_of_which_the_user_does_not_say_the_item_are_no_items() throws IOException {
    Run run =
        imported(
            "Device pin,Signal,Connector pin\n1,VCC,1\n2,GND,6\n",
            "--column",
            "A=From Pin",
            "--column",
            "C=To Pin");
    assertEquals(65, run.code(), run.out());
    assertFalse(run.out().contains("1-?"), run.out());
  }

  @Test
  void running_numbers_between_both_ends_may_be_terminals() throws IOException {
    Run run =
        imported(
            """
            Equipment,Terminal,n.,Equipment,Terminal
            K2,14,1,YV1,1
            K2,24,2,YV2,1
            K3,14,3,YV1,2
            """);
    assertEquals(65, run.code(), run.out());
  }

  @Test
  void several_items_or_pins_in_a_name_are_not_one_point() throws IOException {
    for (String open : new String[] {"S1-S4 pin B", "J1-4 -", "Motor X, 2B \u00b7 2A"}) {
      Run run =
          imported("From,To,Color\nTB1-1,S9-1,RED\nTB1-2,\"" + open + "\",RED\nTB1-3,S9-3,RED\n");
      assertEquals(65, run.code(), run.out());
      assertTrue(run.err().contains("\"" + open + "\" leaves open"), run.err());
    }
  }

  @Test
  void an_item_and_its_pin_in_one_cell_are_the_point_that_the_list_has() throws IOException {
    Run run =
        imported(
            """
            Part,Pin,Connected to
            LAMP1,GND,TB1-1
            LAMP1,DATA,TB1-2
            LAMP2,GND,LAMP1 GND
            LAMP2,DATA,LAMP1 DATA
            """);
    assertEquals(0, run.code(), run.err());
    assertTrue(run.out().matches("(?s).*LAMP2-DATA\\s+LAMP1-DATA.*"), run.out());
    assertFalse(run.out().contains("LAMP1 GND"), run.out());
  }

  @Test
  void who_drew_and_checked_a_list_is_no_wire() throws IOException {
    Run run =
        imported(
            """
            Wire,From,Term,To,Term,Size,Colour
            101,JB1,1,PLC1,DI0,0.75 mm2,Blue
            102,JB1,2,PLC1,DI1,0.75 mm2,Blue
            ,,,,,,
            Drawn,P. Hale,,Checked,M. Orr,Date,14/03/19
            """);
    assertEquals(0, run.code(), run.err());
    assertTrue(run.out().contains("2 wires"), run.out());
    assertFalse(run.out().contains("Hale"), run.out());
  }

  @Test
  void an_input_with_a_dot_is_a_pin() throws IOException {
    Run run = imported("From,To\nTB5-21,K8-13\nTB5-23,PLC2-I1.3\nPLC2:Q0.1,H4-1\n");
    assertEquals(0, run.code(), run.err());
    assertTrue(run.out().contains("PLC2-I1.3 ") || run.out().contains("PLC2-I1.3\n"), run.out());
    assertFalse(run.out().contains("I1.3-?"), run.out());
  }

  @Test
  void a_pole_in_words_is_a_pin() throws IOException {
    Run run =
        imported("From,To\nSupply + terminal,TB1-1\nSupply - terminal,TB1-2\nBuck OUT+,TB1-3\n");
    assertEquals(0, run.code(), run.err());
    assertTrue(run.out().matches("(?s).*Supply-\\+\\s+TB1-1.*"), run.out());
    assertTrue(run.out().matches("(?s).*Supply--\\s+TB1-2.*"), run.out());
    assertTrue(run.out().matches("(?s).*Buck-OUT\\+\\s+TB1-3.*"), run.out());
  }

  @Test
  void a_table_of_a_text_with_bars_between_its_cells_is_read() throws IOException {
    Run run =
        imported(
            """
            ### Step 1: the lamps

            | Wire | From | To | Colour |
            |------|:-----|:--:|--------|
            | 1 | J1-1 | TB1-1 | red |
            | 2 | J1-2 | TB1-2 | black |
              3 | J1-3 | TB1-3 | blue

            > Check before power is on.
            """);
    assertEquals(0, run.code(), run.err());
    assertTrue(run.out().contains("3 wires"), run.out());
    assertTrue(run.out().matches("(?s).*J1-3\\s+TB1-3\\s+blue.*"), run.out());
  }

  @Test
  void what_a_page_sets_in_bold_or_as_code_is_named_without_its_signs() throws IOException {
    Run run =
        imported(
            """
            Wire,From,To,Colour
            1,`J1-1`,**TB1-1**,red
            2,J1 `2`,<span class="pin">TB1-2</span>,black
            3,J1-3,TB1-3,blue
            """);
    assertEquals(0, run.code(), run.err());
    assertTrue(run.out().matches("(?s).*J1-1\\s+TB1-1\\s+red.*"), run.out());
    assertTrue(run.out().matches("(?s).*J1-2\\s+TB1-2\\s+black.*"), run.out());
  }

  @Test
  void pins_of_another_item_below_a_title_are_a_table_of_their_own() throws IOException {
    Run run =
        imported(
            """
            Lever to board,,
            Lever Pin,Board Pin,Notes
            GND,GND,
            VRx,A0,to and fro
            SW,D2,button
            ,,
            Dial to board,,
            Dial Pin,Connection,Notes
            Left leg,Board GND,
            Wiper,Board A2,
            """,
            "--layout",
            "row-nets");
    assertFalse(run.out().contains("Lever-Dial Pin"), run.out());
    assertFalse(run.out().contains("Board-Connection"), run.out());
  }

  @Test
  void as_many_cores_as_pins_from_and_to_are_as_many_wires() throws IOException {
    String list =
        """
        Cable,Core,From,Terminal,To,Terminal
        W101,1,X1,1,M1,U1
        W101,2,X1,2,M1,V1
        W103,1-4,X2,1-4,K1,5-8
        """;
    Run run = imported(list);
    assertEquals(0, run.code(), run.err());
    assertTrue(run.out().contains("6 wires"), run.out());
    assertTrue(run.out().matches("(?s).*\\n +3 +X2-3 +K1-7.*"), run.out());
    assertEquals(65, imported(list.replace("1-4,X2", "1-3,X2")).code());
  }

  @Test
  void what_drives_a_motor_is_no_motor() throws IOException {
    Run run = imported("Motor Driver Pin,Board Pin\nIN1,D5\nIN2,D6\nENA,D9\n");
    assertTrue(run.out().contains("Motor Driver-IN1"), run.out());
  }

  @Test
  void a_net_and_its_nodes_are_headings_of_nets() throws IOException {
    Run run = imported("Net,Nodes\n24V,\"PS1-1, K1-A1, S1-3\"\n0V,\"PS1-2, K1-A2\"\n");
    assertEquals(0, run.code(), run.err());
    assertTrue(run.out().contains("3 links"), run.out());
  }

  @Test
  void the_leads_of_what_is_wired_to_a_board_are_its_pins() throws IOException {
    Run run = imported("Servo Wire,Board Pin\nSignal,D9\nVCC,5V\nGND,GND\n");
    assertEquals(0, run.code(), run.err());
    assertTrue(run.out().contains("Servo-Signal"), run.out());
  }

  @Test
  void the_a_end_and_the_b_end_are_the_ends_of_a_wire() throws IOException {
    Run run =
        imported(
            """
            Wire,A end,,B end,
            ,Conn,Pin,Conn,Pin
            1,P101,A,J12,1
            2,P101,B,J12,2
            """);
    assertEquals(0, run.code(), run.err());
    assertTrue(run.out().matches("(?s).*P101-B +J12-2.*"), run.out());
  }

  @Test
  void a_strip_within_an_item_is_a_part_of_the_pin() throws IOException {
    Run run =
        imported(
            """
            Origine,Destinazione,Cavo
            QE1 / X1 / 3,M12 / U,W12
            QE1 / X1 / 4,M12 / V,W12
            QE1 / X1 / 5,M12 / W,W12
            """);
    assertEquals(0, run.code(), run.err());
    assertTrue(run.out().matches("(?s).*QE1-X1 / 3 +M12-U.*"), run.out());
  }

  @Test
  void pins_under_the_designators_of_two_connectors_are_wired() throws IOException {
    Run run = imported("P5 pin,J7 pin,Function\n1,1,TX\n2,2,RX\n3,5,CTS\n4,6,RTS\n");
    assertEquals(0, run.code(), run.err());
    assertTrue(run.out().matches("(?s).*P5-3 +J7-5.*"), run.out());
  }
}
