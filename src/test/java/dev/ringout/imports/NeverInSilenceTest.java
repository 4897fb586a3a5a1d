package dev.ringout.imports;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.ringout.support.Run;
import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What looks like a wire and need not be one is asked, or said; common practice, no source. */
class NeverInSilenceTest {
  private static final String DRIVES =
      """
      De;Vers
      Drive X - PUL-, DIR-, ENA-;0 V
      Drive X - GND;0 V
      Drive Y - PUL-, DIR-, ENA-;0 V
      Drive Y - GND;0 V
      """;

  @TempDir Path folder;

  private Run imported(String text, String... options) throws IOException {
    return TypedList.imported(folder, text, options);
  }

  @Test
  void rows_of_other_columns_below_a_title_are_no_wires_of_the_table_above() throws IOException {
    Run run =
        imported(
            """
            Net,From,To,Gauge
            24V,Supply +,Drive VM,0.5 mm2
            24V,Supply +,Buck IN,0.5 mm2
            ,,,
            2.3 Signals of the board to the drive,,,
            ,,,
            Board,Drive,What,
            GPIO11,STEP,a step,
            GPIO12,DIR,the way,
            """);
    assertEquals(65, run.code(), run.out());
    assertTrue(run.err().contains("the rows fill other columns than above"), run.err());
  }

  /** As the cables of a competition robot are listed, see {@code RealListsTest}. */
  @Test
  void which_terminals_two_conductors_of_a_cable_go_to_is_said_to_be_open() throws IOException {
    Run run =
        imported(
            """
            ID,From,To,Type,Gauge
            1,Board,Drive K2,R+B,12
            2,Board,Drive K3,R+B,12
            3,Fuse 1-1,Lamp 1-2,R,14
            """);
    assertEquals(0, run.code(), run.err());
    assertTrue(
        run.err().contains("Board is named 4 times without a pin: each wire has a terminal"),
        run.err());
  }

  @Test
  void a_core_with_dashes_for_its_pins_that_a_remark_calls_spare_is_no_wire() throws IOException {
    Run run =
        imported(
            """
            Core,From,Term,To,Term,Remark
            1,JB4,1,MCP2,31,
            2,JB4,2,MCP2,32,
            3,JB4,-,MCP2,-,"spare, cut back"
            4,JB4,10,MCP2,n/c,spare at MCP2
            """);
    assertEquals(0, run.code(), run.err());
    assertTrue(run.out().contains("2 wires; 1 pin listed without a wire"), run.out());
    assertTrue(run.err().contains("wire 3 is spare at both ends"), run.err());
  }

  @Test
  void a_point_with_words_behind_it_is_asked() throws IOException {
    Run run =
        imported(
            """
            Colour,From,To
            RED,J28.1,M1.1
            BLK,J28.2,M1.2
            BARE,"J28.2, pod end only",cut back at the module
            """);
    assertEquals(65, run.code(), run.out());
    assertTrue(run.err().contains("\"J28.2, pod end only\" leaves open"), run.err());
  }

  @Test
  void what_is_called_by_its_supply_is_one_point_and_that_is_told() throws IOException {
    Run run =
        imported(
            """
            Wire,From,To,Color
            1,Supply +5V,TB1-1,RED
            2,Supply +5V,TB1-2,RED
            3,Top (+) rail,TB1-3,RED
            4,Top (+) rail,TB1-4,RED
            5,Motor unit,TB1-5,RED
            6,Motor unit,TB1-6,RED
            """);
    assertEquals(0, run.code(), run.err());
    assertTrue(run.err().contains("warning: unit.csv!B2: Supply +5V is named 2 times"), run.err());
    assertTrue(run.out().contains("rail-1"), run.out());
    assertTrue(run.out().contains("Motor unit-?1"), run.out());
    assertFalse(run.out().contains("rail-?"), run.out());
  }

  @Test
  void the_value_of_a_part_is_no_letter_that_looks_like_another() throws IOException {
    Run run =
        imported(
            """
            Wire,From,To,Color
            1,TB1-1,330\u03a9 resistor in,RED
            2,470\u00b5F cap + (long leg),TB1-2,RED
            3,TB1-3,Lamp,RED
            """);
    assertEquals(0, run.code(), run.err());
    assertTrue(run.out().contains("3 wires"), run.out());
  }

  /** A table that other tables speak against is asked about, not lost beside them. */
  @Test
  void a_table_of_from_and_to_is_never_left_out_beside_others() throws IOException {
    Run run =
        imported(
            """
            Net,GPIO,Drive pin,Colour,Note
            PWM,GP2,1,White,Motor
            DIR,GP4,2,Grey,High = changed; low = off
            Net,From,To,Colour,Note
            +3V3,Board 3V3,Drive 10,Red,
            +12V,Bench supply,Drive 9,Red,
            GND,Star ground,Drive 8,Black,
            """);
    assertTrue(run.code() == 65 || run.out().contains("Bench supply"), run.out());
  }

  @Test
  void the_pin_of_a_sheet_is_no_point() throws IOException {
    Run run =
        imported(
            """
            Net,GPIO,Sheet pin,U2 pin,Colour
            PWM,GP2,3,1,White
            DIR,GP4,5,2,Grey
            STBY,GP8,9,4,Orange
            """);
    assertFalse(run.out().contains("Sheet-3"), run.out());
  }

  @Test
  void pins_with_commas_between_are_never_one_pin_of_a_long_name() throws IOException {
    Run run = imported(DRIVES);
    assertEquals(65, run.code(), run.out());
    assertTrue(
        imported(DRIVES, "--layout", "from-to").err().contains("--read-as \"Drive X - PUL-"));
  }

  @Test
  void as_many_names_between_strokes_at_both_ends_are_asked() throws IOException {
    Run run =
        imported(
            """
            Module,Pin,ESP32
            LCD,SDA,GPIO21
            LCD,SCL,GPIO22
            LCD,3.3V / GND,3V3 / GND
            LCD,RST,GPIO4
            BME280,SDI,GPIO23
            BME280,SCK,GPIO18
            """);
    assertEquals(65, run.code(), run.out());
    assertTrue(run.err().contains("3.3V / GND"), run.err());
  }

  @Test
  void a_way_that_is_chosen_says_what_its_wires_look_like() throws IOException {
    Run run =
        imported(
            """
            Name,Where
            K1:1,X1:1
            K1:2,X1:1
            K1:3,X1:1
            K1:4,X1:1
            K1:5,K1:5
            """,
            "--column",
            "A=From",
            "--column",
            "B=To");
    assertTrue(
        run.err().contains("read as said, and yet 1 of 5 wires would run from a point to itself"),
        run.err());
  }

  @Test
  void headings_behind_a_gap_over_fewer_columns_begin_a_table_of_their_own() throws IOException {
    Run run =
        imported(
            """
            Wire,From,From pin,To,To pin
            W1,P1,1,J2,4
            W2,P1,2,J2,5
            W3,P1,3,J2,6
            ,,,,
            Board Pin,Display Connection,,,
            GPIO4,SDA,,,
            GPIO5,SCL,,,
            GPIO6,RST,,,
            """);
    assertEquals(0, run.code(), run.err());
    assertTrue(run.out().contains("6 wires") && run.out().contains("Display-SDA"), run.out());
  }

  /** Markings of the terminals of phases: IEC 60445, from memory. */
  @Test
  void the_terminal_of_a_phase_keeps_the_name_of_what_it_is_on() throws IOException {
    Run run =
        imported(
            """
            Cable,From,To,Gauge
            W1,Panel L1,Motor U1,2.5 mm2
            W2,Panel L2,Motor V1,2.5 mm2
            W3,Panel L3,Motor W1,2.5 mm2
            """);
    assertEquals(0, run.code(), run.err());
    assertTrue(run.out().contains("Panel-L1") && run.out().contains("Motor-U1"), run.out());
  }

  @Test
  void what_is_said_of_the_columns_of_one_table_leaves_the_table_above_as_it_is()
      throws IOException {
    String list =
        """
        Wire,From,From pin,To,To pin
        W1,P1,1,J2,4
        W2,P1,2,J2,5
        ,,,,
        ESP32 Pin,Display,,,
        GPIO4,SDA,,,
        GPIO5,SCL,,,
        """;
    Run asked = imported(list);
    assertEquals(65, asked.code(), asked.out());
    assertTrue(asked.out().contains("--column 'unit!A5!A=Pin'"), asked.out());
    Run run = imported(list, "--column", "unit!A5!A=From Pin", "--column", "unit!A5!B=To Pin");
    assertEquals(0, run.code(), run.err());
    assertTrue(run.out().contains("P1-1") && run.out().contains("ESP32-GPIO4"), run.out());
  }

  @Test
  void pins_and_the_connection_of_an_item_are_the_pins_of_two_items() throws IOException {
    Run run =
        imported(
            """
            Sensor Pin,Board Connection,Notes
            VCC,5V,
            GND,GND,
            OUT,D2,
            """);
    assertEquals(0, run.code(), run.err());
    assertTrue(run.out().matches("(?s).*Sensor-OUT +Board-D2.*"), run.out());
  }

  @Test
  void a_connection_beside_the_pins_of_an_item_is_what_they_go_to() throws IOException {
    Run run = imported("ESP32 Pin,Connection\nGPIO4,J2-1\nGPIO5,J2-2\nGND,J2-3\n");
    assertEquals(0, run.code(), run.err());
    assertTrue(run.out().matches("(?s).*ESP32-GPIO4 +J2-1.*"), run.out());
  }

  @Test
  void pins_with_blanks_between_are_as_many_as_the_cores_or_asked() throws IOException {
    String list =
        """
        Cable,From,Terminal,To,Terminal,Cores
        C001,MCC1,"1,2",JB1,"1,2",2
        C003,JB1,U V W PE,M1,U V W PE,4
        """;
    Run run = imported(list);
    assertEquals(0, run.code(), run.err());
    assertTrue(run.out().matches("(?s).*JB1-W +M1-W.*"), run.out());
    assertTrue(run.out().contains("6 wires"), run.out());
    assertEquals(65, imported(list.replace("PE,4", "PE,5")).code());
    assertEquals(65, imported(list.replace("Cores", "Note")).code());
  }

  @Test
  void two_pins_joined_by_a_word_are_asked() throws IOException {
    Run run =
        imported(
            """
            De,Vers,Couleur,Longueur
            Contrôleur A1,Sonde T1 fil rouge,rouge,2 m
            Contrôleur A2,Sonde T1 fil blanc,blanc,2 m
            Contrôleur B1 et B2,Relais R1 bobine,noir,1 m
            Contrôleur A3,LDR patte 2 et R1 patte 1,noir,1 m
            """);
    assertEquals(65, run.code(), run.out());
    assertTrue(run.err().contains("B1 et B2"), run.err());
    assertTrue(run.err().contains("patte 2 et R1 patte 1"), run.err());
  }

  @Test
  void pins_of_a_third_item_in_a_row_are_no_other_name() throws IOException {
    Run run =
        imported(
            """
            From (Board),Signal,Dial pin,Lamp pin
            IO5,SCL,SCL,SCL
            IO4,SDA,SDA,SDA
            """);
    assertEquals(65, run.code(), run.out());
  }

  @Test
  void a_name_with_a_remark_beside_the_same_without_is_said() throws IOException {
    Run run =
        imported(
            """
            From,To,Wire colour
            Board GND pin,GND rail (-),Black
            Board VIN pin,5V rail (+),Red
            Gauge VCC,5V rail,Red
            Gauge GND,GND rail,Black
            """);
    assertTrue(run.err().contains("GND rail (-)"), run.err());
  }

  @Test
  void what_stands_beside_the_pins_of_an_item_that_others_are_wired_to_is_asked()
      throws IOException {
    Run run =
        imported(
            """
            Use,Board Pin
            Signal,D9
            VCC,5V
            GND,GND
            ,
            Sensor Pin,Board Pin
            Trig,D10
            Echo,D11
            VCC,5V
            """);
    assertEquals(65, run.code(), run.out());
    assertTrue(run.err().contains("A1: it is not certain"), run.err());
  }

  @Test
  void signs_alone_are_the_name_of_nothing() throws IOException {
    Run run = imported("From,Pin,To,Pin\nK1,13,X1,1\nK1,14,X1,2\n\",,\",,X1,3\nK2,A1,X1,4\n");
    assertEquals(65, run.code(), run.out());
    assertTrue(run.err().contains("A4"), run.err());
  }

  @Test
  void a_pin_that_begins_with_another_item_of_the_list_is_said() throws IOException {
    Run run =
        imported(
            """
            From,Pin,To,Pin
            PSU,+5V,ESP32,5V
            FAN,1,ESP32,PSU GND
            FAN,3,ESP32,GPIO2
            """);
    assertTrue(run.err().contains("\"PSU GND\" leaves open"), run.err());
  }

  @Test
  void a_part_among_arrows_between_both_ends_is_said() throws IOException {
    Run run =
        imported(
            """
            From,Pin,,To,Pin
            A1,1,---->,B1,1
            A1,2,---->,B1,2
            A1,3,--|>-- Schottky,B1,3
            A1,4,---->,B1,4
            """);
    assertTrue(run.err().contains("Schottky"), run.err());
  }
}
