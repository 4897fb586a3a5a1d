package dev.ringout.reference;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import dev.ringout.harness.Wire;
import dev.ringout.imports.list.ImportOptions;
import dev.ringout.imports.list.ImportResult.RowCounts;
import dev.ringout.imports.list.ImportResult.SheetReport;
import dev.ringout.imports.list.Layout;
import dev.ringout.imports.list.Said;
import dev.ringout.imports.list.Units;
import dev.ringout.support.ImportedList;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Wire lists that other people made for their own hardware, each with what a correct import shows,
 * worked out by hand. Sources: public repositories, named at each test with their licence; the
 * lists lie beside the project, not in it, and the tests are skipped where they are absent.
 */
class RealListsTest {
  private static final Path LISTS = Path.of("../shared/lists");

  /** Skipped tests alone would not be noticed: the run says so where its lines are read. */
  @BeforeAll
  @SuppressWarnings("SystemOut") // It is the summary of the run that this is for.
  static void say_where_the_lists_are_absent() {
    if (!Files.isDirectory(LISTS)) {
      System.out.println(
          "[NOT RUN] RealListsTest: the real lists are not beside the clone (" + LISTS + ")");
    }
  }

  private static ImportedList read(String file) throws Exception {
    return read(file, ImportOptions.none());
  }

  private static ImportedList read(String file, ImportOptions options) throws Exception {
    Path list = LISTS.resolve(file);
    assumeTrue(Files.exists(list), "the list " + file + " is not here");
    ImportedList imported = ImportedList.of(list, options);
    for (SheetReport sheet : imported.result().sheets()) {
      RowCounts rows = sheet.rows();
      assertEquals(
          rows.total(),
          rows.wire() + rows.spare() + rows.heading() + rows.note() + rows.blank() + rows.skipped(),
          "every row is accounted for");
      assertEquals(rows.skipped(), sheet.skipped().size());
    }
    return imported;
  }

  /** What a user says who was asked, in the words that the answer names. */
  private static ImportOptions as(Layout layout) {
    return of("", layout);
  }

  private static ImportOptions of(String where, Layout layout) {
    return new ImportOptions(
        Map.of(),
        Set.of(),
        Set.of(),
        Set.of(),
        Units.UNSAID,
        Map.of(),
        new ImportOptions.Shape(
            Set.of(),
            List.of(),
            List.of(),
            List.of(new Said<>(where, layout)),
            List.of(),
            List.of(),
            Set.of()),
        ImportOptions.Corrections.NONE);
  }

  private static Map<String, Long> count(Stream<String> texts) {
    return texts.collect(Collectors.groupingBy(text -> text, Collectors.counting()));
  }

  /** Source: HighlandersFRC/2014-electronics, MIT licence. */
  @Test
  void a_competition_robot_has_75_cables_of_six_types() throws Exception {
    ImportedList list = read("frc-robot-2014/wiring.xlsx");
    Map<String, Set<String>> cablesByType = new HashMap<>();
    for (Wire wire : list.wires()) {
      String cable = wire.cable().isEmpty() ? wire.name() : wire.cable();
      cablesByType.computeIfAbsent(wire.type(), type -> new java.util.HashSet<>()).add(cable);
    }
    assertEquals(
        Map.of("R+B", 47, "PWM", 16, "R", 4, "B", 4, "Ethernet", 3, "DB37", 1),
        cablesByType.entrySet().stream()
            .collect(Collectors.toMap(Map.Entry::getKey, entry -> entry.getValue().size())));
    assertEquals(75, list.rows().wire());
    assertEquals(75 + 47, list.wires().size(), "R+B is two conductors");

    Wire last = list.wires().get(list.wires().size() - 1);
    assertEquals(6 * 0.3048, last.length().orElseThrow().metres(), 1e-9, "6' is six feet");
    assertEquals(18 * 0.0254, list.wires().get(0).length().orElseThrow().metres(), 1e-9);

    Set<String> splice = list.net("Compressor - splice-1");
    assertTrue(splice.size() == 4, "the splice joins three wires: " + splice);
    long boards =
        list.wires().stream()
            .flatMap(wire -> Stream.of(wire.from(), wire.to()))
            .filter(point -> point.ref().equals("PD board 30AMP"))
            .distinct()
            .count();
    assertEquals(14, boards, "8 cables, 14 conductors, each on a terminal of its own");
    assertTrue(list.finds("\"PD BOARD 30AMP\" and \"PD board 30AMP\" are one item"));
  }

  /** Source: elcano/elcano, MIT licence. */
  @Test
  void codes_with_their_legend_below_name_the_items() throws Exception {
    ImportedList list = read("self-driving-trike/Wiring_C2Mega.xls");
    RowCounts rows = list.sheet("Internal").get(0).rows();
    assertEquals(80, rows.wire() + rows.spare() + rows.skipped());
    assertEquals(14, rows.spare(), "reserved rows hold no wire");
    Wire stop =
        list.wires().stream()
            .filter(wire -> wire.signal().equals("Stop Button"))
            .findFirst()
            .orElseThrow();
    assertEquals("Arduino", stop.from().ref());
    assertEquals("D20", stop.from().pin());
    assertEquals("Panel-Stop", stop.to().toString());
    assertEquals("White", stop.colour());
    List<String> unused =
        IntStream.rangeClosed(42, 53).mapToObj(number -> "Arduino-D" + number).toList();
    assertTrue(list.pins().containsAll(unused), "D42-D53 are twelve unused pins");
    assertTrue(list.finds("the code \"7 or 8\" does not name one item"));
  }

  /** Source: elcano/elcano, MIT licence. */
  @Test
  void a_power_list_of_end_1_and_end_2_has_21_nets() throws Exception {
    ImportedList list = read("self-driving-trike/Wiring_C2Mega.xls", of("Power", Layout.FROM_TO));
    assertEquals(42, list.sheet("Power").get(0).rows().wire());
    Map<String, Set<String>> nets = list.nets();
    Set<Set<String>> power =
        list.wires().stream()
            .filter(wire -> wire.place().sheet().equals("Power"))
            .map(wire -> nets.get(wire.from().toString()))
            .collect(Collectors.toSet());
    assertEquals(21, power.size());
    assertEquals(7 + 1, list.net("Post 1-1").size(), "seven ends, of which Relay: 1B, 2B is two");
    assertEquals(7, list.net("Post 10-1").size());
    assertEquals(5, list.net("Post 8-1").size());
  }

  /** Source: elcano/elcano, MIT licence. */
  @Test
  void one_connection_on_two_sheets_is_matched_or_the_difference_is_said() throws Exception {
    ImportedList list = read("self-driving-trike/Wiring_C6Mega.xls");
    assertEquals(
        1,
        list.ends().stream()
            .filter(wire -> wire.equals("C6-D16 > C4-J1:1") || wire.equals("C4-J1:1 > C6-D16"))
            .count(),
        "C4 D0 and C6 D16 agree");
    assertTrue(
        list.finds("C6-D17 goes to C4-J1:4, but C4-J1:4's own row says C3-2; maybe C4-J1:3"));
    assertTrue(
        list.net("C3-J3:2").containsAll(Set.of("C2-A9", "C6-A09")), "C2:A9, C6:A9 is two points");
    assertTrue(list.pins().contains("C7-A03"), "an empty row is an unused pin");
    assertTrue(list.pins().containsAll(List.of("C7-D22", "C7-D53")), "D22-D53");
  }

  /** Source: elcano/elcano, MIT licence. */
  @Test
  void several_names_of_a_pin_are_one_pin_and_nets_may_be_joined_by_name() throws Exception {
    ImportedList list =
        read(
            "self-driving-trike/Wiring_C6Trio.xls",
            new ImportOptions(Map.of(), Set.of("SGNL"), Set.of(), Set.of()));
    Set<String> c4 =
        Stream.concat(
                list.pins().stream(),
                list.nets().keySet().stream().filter(p -> p.startsWith("C4-")))
            .filter(point -> point.matches("C4-[LR]\\d\\d"))
            .collect(Collectors.toSet());
    assertEquals(30, c4.size(), "L01 to L15 and R01 to R15");
    Set<String> front = list.net("C6-A00");
    assertTrue(front.containsAll(Set.of("C4-R05", "C3-R05")), "the net F_RNG: " + front);
  }

  /** Source: elcano/elcano, MIT licence. */
  @Test
  void a_row_through_several_connectors_keeps_pins_as_they_were_typed() throws Exception {
    ImportedList list = read("self-driving-trike/KellyConnections.xls", as(Layout.ROW_NETS));
    Set<String> points =
        Stream.concat(list.pins().stream(), list.nets().keySet().stream())
            .filter(point -> point.startsWith("KBS-"))
            .collect(Collectors.toSet());
    assertEquals(
        IntStream.rangeClosed(1, 22).mapToObj(pin -> "KBS-" + pin).collect(Collectors.toSet()),
        points);
  }

  /** Source: elcano/elcano, MIT licence. */
  @Test
  void nets_by_devices_have_every_pin_once_and_spare_rows_apart() throws Exception {
    ImportedList list = read("self-driving-trike/Signals_C6Trio.xls", as(Layout.ROW_NETS));
    Set<String> x1 =
        Stream.concat(list.pins().stream(), list.nets().keySet().stream())
            .filter(point -> point.startsWith("X1-"))
            .collect(Collectors.toSet());
    assertEquals(
        IntStream.rangeClosed(1, 25).mapToObj(pin -> "X1-" + pin).collect(Collectors.toSet()), x1);
    assertFalse(
        list.net("C6 Mega-A14").contains("C6 Mega-A15"), "two rows called Spare are two nets");
    assertTrue(list.finds("one row, but the names C2STAT and C4AVL"));
    assertFalse(list.net("C6 Mega-D17").contains("C3 Nano-L05"));
  }

  @ParameterizedTest
  @CsvSource({"HighLevel.xlsx, 52", "Signals_C6Dan.xlsx, 20"})
  void other_matrices_of_the_same_project_are_read_too(String file, int atLeast) throws Exception {
    ImportedList list = read("self-driving-trike/" + file, as(Layout.ROW_NETS));
    assertTrue(list.wires().size() >= atLeast, file + ": " + list.wires().size());
  }

  /** Source: elcano/elcano, MIT licence. */
  @Test
  void a_padded_text_file_of_pins_and_colours_is_eight_wires() throws Exception {
    ImportedList list =
        read("self-driving-trike/Steering pinout on cat5.csv", as(Layout.OPEN_ENDED));
    assertEquals(8, list.wires().size());
    Map<String, List<String>> pins =
        list.wires().stream()
            .collect(
                Collectors.groupingBy(
                    Wire::signal,
                    Collectors.mapping(wire -> wire.from().pin(), Collectors.toList())));
    assertEquals(List.of("1", "3", "5"), pins.get("GND"));
    assertEquals(List.of("7", "8"), pins.get("5v"));
  }

  /** Source: wsular/EasyFlux-DL-CR3000, Washington State University, MIT licence. */
  @Test
  void two_tables_side_by_side_have_twelve_devices_and_48_conductors() throws Exception {
    ImportedList list = read("flux-tower-logger/wiring.xlsx");
    assertEquals(
        List.of(25, 23),
        list.result().sheets().stream().map(sheet -> sheet.rows().wire()).toList());
    assertEquals(48, list.wires().size());
    assertEquals(12, list.wires().stream().map(wire -> wire.from().ref()).distinct().count());
    assertEquals(3, list.links().size(), "three conductors land on two terminals");
    long onEarth =
        list.wires().stream().filter(wire -> wire.to().pin().startsWith("earth")).count()
            + list.links().stream().filter(link -> link.to().pin().startsWith("earth")).count();
    assertEquals(14, onEarth);
  }

  /** Source: wsular/EasyFlux-DL-CR3000, CC-BY-4.0. */
  @Test
  void marks_that_may_be_alternatives_join_nothing_until_they_are_asked_for() throws Exception {
    ImportedList list = read("flux-tower-logger/wiring_schedule.xlsx");
    assertEquals(0, list.wires().size());
    assertTrue(list.finds("may be wires, alternatives or types: nothing was joined"));
    ImportedList asked =
        read(
            "flux-tower-logger/wiring_schedule.xlsx",
            new ImportOptions(Map.of(), Set.of(), Set.of("X"), Set.of()));
    assertEquals(82, asked.wires().size(), "82 marks X");
    assertTrue(asked.finds("terminals are marked by several devices"));
  }

  /** Source: lowobservable/channel, ISC-style licence. */
  @Test
  void an_open_document_list_has_42_signals_39_of_them_with_a_full_chain() throws Exception {
    ImportedList list = read("mainframe-channel/adapter1_pinout.ods", of("Pins", Layout.ROW_NETS));
    assertEquals(42, list.sheet("Pins").get(0).rows().wire());
    Map<String, Long> wiresOfSignal =
        count(
            list.wires().stream()
                .filter(wire -> wire.place().sheet().equals("Pins"))
                .map(Wire::signal));
    assertEquals(42, wiresOfSignal.size());
    assertEquals(39, wiresOfSignal.values().stream().filter(wires -> wires == 3).count());
    Set<String> busIn7 = list.net("Zynq-G19");
    assertTrue(busIn7.containsAll(Set.of("J3-24", "J1-5", "Bus Out-G12")), busIn7.toString());
  }

  /** Source: lowobservable/channel, ISC-style licence. */
  @Test
  void pins_that_share_the_name_shield_are_joined_only_by_choice() throws Exception {
    ImportedList list = read("mainframe-channel/pinout.ods");
    assertEquals(0, list.wires().size());
    assertEquals(48, list.pins().size());
    ImportedList joined =
        read(
            "mainframe-channel/pinout.ods",
            new ImportOptions(Map.of(), Set.of("Signal Bus"), Set.of(), Set.of()));
    long shields = joined.links().stream().filter(link -> link.note().endsWith("Shield")).count();
    assertTrue(shields > 10, "shields joined: " + shields);
  }

  /** Source: SpikeInterface/probeinterface, MIT licence. */
  @ParameterizedTest
  @CsvSource({
    "ASSY-116_RHD2132.xlsx, 32",
    "ASSY-156_RHD2164.xlsx, 64",
    "ASSY-77_Adpt.A64-Om32_2x-sm-NN_RHD2164.xlsx, 64",
    "ASSY-77_Adpt.A64-Om32_2x-sm-NN_two-RHD2132.xlsx, 64",
    "ASSY-77_Adpt.A64-Om32_2x-sm-cambridgeneurotech_RHD2164.xlsx, 64",
    "ASSY-77_Adpt.A64-Om32_2x_sm-cambridgeneurotech_two-RHD2132.xlsx, 64",
    "H32_RHD2132.xlsx, 32"
  })
  void maps_of_probe_contacts_are_one_to_one(String file, int nets) throws Exception {
    ImportedList list = read("ephys-probe-wiring/" + file, as(Layout.ROW_NETS));
    assertEquals(nets, list.netCount());
    for (Set<String> net : list.nets().values()) {
      Set<String> items =
          net.stream()
              .map(point -> point.substring(0, point.lastIndexOf('-')))
              .collect(Collectors.toSet());
      assertEquals(net.size(), items.size(), "one pin of each item: " + net);
    }
  }

  @Test
  void the_map_of_assy_116_goes_from_1_to_24_and_from_32_to_8() throws Exception {
    ImportedList list = read("ephys-probe-wiring/ASSY-116_RHD2132.xlsx", as(Layout.ROW_NETS));
    assertTrue(list.ends().contains("contact_id-1 > intan-24"));
    assertTrue(list.ends().contains("contact_id-32 > intan-8"));
  }

  /** Source: pkoning2/dtcyber-cyber1, public-domain manuals, zlib-style transcription. */
  @ParameterizedTest
  @CsvSource({
    "chassis1.wlist, 5359, C38-2, A35-1, C38-4, A35-3",
    "chassis12.wlist, 2320, A25-14, B13-22, E27-19, E39-18"
  })
  void a_backplane_of_1965_is_matched_end_for_end_but_for_two_rows(
      String file, int wires, String one, String otherEnd, String two, String otherEndOfTwo)
      throws Exception {
    ImportedList list = read("cdc6600-backplane/" + file);
    assertEquals(wires, list.result().found().bothEnds());
    assertEquals(2, list.result().found().oneSided());
    assertTrue(list.finds(one + " goes to " + otherEnd + ", but"));
    assertTrue(list.finds(two + " goes to " + otherEndOfTwo + ", but"));
  }

  /** Source: elcano/elcano, MIT licence. */
  @ParameterizedTest
  @CsvSource({"Power.xls", "PowerOn.xlsx"})
  void a_sheet_called_power_that_holds_no_wires_is_said_to_hold_none(String file) throws Exception {
    ImportedList list = read("not-a-wire-list/" + file);
    assertEquals(0, list.wires().size());
    assertEquals(0, list.pins().size());
    assertTrue(list.finds("no wires were found in this file; none were made up"));
  }
}
