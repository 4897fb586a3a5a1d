package dev.ringout.imports.kbl;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.ringout.harness.Item;
import dev.ringout.harness.Wire;
import dev.ringout.imports.list.ImportResult;
import dev.ringout.imports.list.ImportResult.RowCounts;
import dev.ringout.imports.list.SkipReason;
import dev.ringout.source.Problem;
import dev.ringout.source.UnusableInput;
import dev.ringout.units.Length;
import dev.ringout.words.ImportWords;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Harness files in KBL: VDA 4964, Harness Description List, editions 2.3 SR-1 (2005), 2.4 (2014)
 * and 2.5 (2020). What elements there are, and how they refer to each other, is of their schemas.
 */
class KblImporterTest {
  private static final Path SWING_BRIDGE = Path.of("src/test/resources/kbl/swing-bridge.kbl");

  @TempDir Path folder;

  /** The swing bridge with texts replaced: old, new, old, new … */
  private static String with(String... replaced) throws IOException {
    String text = Files.readString(SWING_BRIDGE);
    for (int i = 0; i < replaced.length; i += 2) {
      assertTrue(text.contains(replaced[i]), replaced[i]);
      text = text.replace(replaced[i], replaced[i + 1]);
    }
    return text;
  }

  private ImportResult read(String text, String... modules) throws Exception {
    Path file = Files.writeString(folder.resolve("unit.kbl"), text);
    assertTrue(KblImporter.is(file));
    ImportResult result = KblImporter.read(file, "unit.kbl", Set.of(modules));
    RowCounts rows = result.sheets().get(0).rows();
    assertEquals(rows.total(), rows.wire() + rows.skipped(), "no connection is lost");
    assertEquals(rows.skipped(), result.sheets().get(0).skipped().size());
    long lostErrors =
        findings(result).stream().filter(finding -> finding.startsWith("error")).count();
    assertTrue(result.lostRows() == 0 || lostErrors > 0, "what is lost is said");
    return result;
  }

  private ImportResult readWith(String... replaced) throws Exception {
    return read(with(replaced));
  }

  private static List<String> findings(ImportResult result) {
    return result.findings().stream()
        .map(
            one ->
                one.severity().word()
                    + " "
                    + one.place().cell()
                    + ": "
                    + ImportWords.problem(one).text())
        .toList();
  }

  private static void assertSaid(ImportResult result, String... words) {
    assertTrue(
        findings(result).stream().anyMatch(said -> Arrays.stream(words).allMatch(said::contains)),
        List.of(words) + " in " + findings(result));
  }

  private static List<String> ends(ImportResult result) {
    return result.wiring().wires().stream()
        .map(wire -> wire.name() + " " + wire.from() + " > " + wire.to())
        .toList();
  }

  private static Wire wire(ImportResult result, String name) {
    return result.wiring().wires().stream()
        .filter(one -> one.name().equals(name))
        .findFirst()
        .orElseThrow();
  }

  private static List<SkipReason> reasons(ImportResult result) {
    return result.sheets().get(0).skipped().stream().map(ImportResult.SkippedRow::why).toList();
  }

  private static String lineOf(String text, String part) {
    return Long.toString(1 + text.substring(0, text.indexOf(part)).lines().count() - 1);
  }

  @Test
  void each_connection_is_a_wire_from_cavity_to_cavity() throws Exception {
    ImportResult result = readWith();
    assertEquals(
        List.of("101 J1-1 > SP1-1", "102 SP1-1 > P2-1", "103 J1-2 > P2-2", "104 E1-1 > P2-3"),
        ends(result));
    assertEquals(4, result.sheets().get(0).rows().total());
    assertEquals(0, result.lostRows());
    assertFalse(result.hasErrors());
  }

  @Test
  void a_wire_has_its_gauge_colours_length_signal_and_contact() throws Exception {
    Wire wire = wire(readWith(), "101");
    assertEquals("0.75 mm²", wire.gaugeLabel());
    assertEquals("rd/wh", wire.colour());
    assertEquals(Optional.of(new Length(1.2)), wire.length());
    assertEquals("RUN", wire.signal());
    assertEquals("CONTACT-20", wire.fromContact());
    assertEquals("", wire.toContact());
    assertEquals("FLRY-0.75-RD", wire.type());
    assertEquals("unit.kbl!53", wire.place().toString());
  }

  @Test
  void a_core_has_its_own_gauge_colour_and_length_and_the_name_of_its_cable() throws Exception {
    Wire core = wire(readWith(), "103");
    assertEquals("C7", core.cable());
    assertEquals("0.5 mm²", core.gaugeLabel());
    assertEquals("bn", core.colour());
    assertEquals(Optional.of(new Length(2.51)), core.length());
    assertEquals("CABLE-2", core.type());
    assertEquals("", core.signal(), "/NULL is none");
  }

  @Test
  void a_splice_is_one_point_and_a_cavity_without_a_wire_is_listed_beside() throws Exception {
    ImportResult result = readWith();
    assertEquals(
        List.of("J1 connector H-3", "SP1 splice H-1", "P2 connector H-3", "E1 ring terminal H-1"),
        result.wiring().items().stream()
            .map(item -> item.ref() + " " + item.kind() + " " + item.part())
            .toList());
    assertEquals(
        List.of("J1-3"),
        result.wiring().pins().stream().map(pin -> pin.point().toString()).toList());
  }

  @Test
  void a_splice_with_a_cavity_for_each_wire_is_one_point_all_the_same() throws Exception {
    ImportResult result =
        readWith(
            "<Slots id=\"sp1_slot\"><Part>slot_1</Part>",
            "<Slots id=\"sp1_slot\"><Part>slot_3</Part><Cavities id=\"sp1_c2\"><Part>cavity_3_2"
                + "</Part></Cavities>",
            "<Id>b</Id><Contacted_cavity>sp1_c1<",
            "<Id>b</Id><Contacted_cavity>sp1_c2<");
    assertTrue(ends(result).contains("102 SP1-1 > P2-1"), ends(result).toString());
    assertEquals(List.of(), result.wiring().links());
  }

  /** Housing_type tells a splice too, where Usage does not (KBLFRM-1025). */
  @Test
  void a_housing_says_that_it_is_a_splice() throws Exception {
    ImportResult result =
        readWith(
            "<Usage>splice</Usage>",
            "",
            "<Part_number>H-1</Part_number>",
            "<Part_number>H-1</Part_number><Housing_type>splice</Housing_type>",
            "<Contacted_cavity>sp1_c1</Contacted_cavity>",
            "<Contacted_cavity/>");
    assertTrue(ends(result).contains("101 J1-1 > SP1-1"), ends(result).toString());
  }

  @ParameterizedTest
  @CsvSource({
    "'kbl:KBL_container', 'KBL_container'",
    "'xmlns:kbl=\"http://www.prostep.org/Car_electric_container/KBL2.3/KBLSchema\"', 'xmlns:kbl=\"urn:other\"'",
    "'version_id=\"2.4\"', ''",
    "'version_id=\"2.4\"', 'version_id=\"2.3 SR-1\"'",
    "'version_id=\"2.4\"', 'version_id=\"2.5\"'",
  })
  void namespaces_prefixes_and_editions_are_taken_as_they_come(String old, String now)
      throws Exception {
    assertEquals(4, ends(readWith(old, now)).size());
  }

  @Test
  void every_element_may_stand_in_the_namespace_without_a_prefix() throws Exception {
    String text =
        with("kbl:KBL_container", "KBL_container", "xmlns:kbl=", "xmlns=", "kbl:", "")
            .replace("xsi:type=\"", "xsi:type=\"");
    assertEquals(4, ends(read(text)).size());
  }

  @Test
  void an_edition_that_is_not_known_is_said() throws Exception {
    assertSaid(readWith("version_id=\"2.4\"", "version_id=\"3.0\""), "edition \"3.0\"");
  }

  @Test
  void utf_16_is_read_by_its_declaration() throws Exception {
    String text = with("encoding=\"UTF-8\"", "encoding=\"UTF-16\"", "Panel", "Schaltpult ü");
    Path file = folder.resolve("unit.xml");
    Files.write(file, text.getBytes(StandardCharsets.UTF_16));
    assertTrue(KblImporter.is(file));
    Item panel = KblImporter.read(file, "unit.xml", Set.of()).wiring().items().get(0);
    assertEquals("Schaltpult ü", panel.note());
  }

  /** Edition 2.4 has component boxes; 2.5 names terminals, spare cores and wiring of assemblies. */
  @Test
  void a_box_has_its_connectors_cavities() throws Exception {
    ImportResult result =
        readWith(
            "<Connector_occurrence id=\"e1\">",
            """
            <Component_box_occurrence id="box">
              <Id>A5</Id>
              <Part>box_part</Part>
              <Component_box_connectors id="box_x">
                <Part>box_part_x</Part>
                <Slots id="box_x_slot" xsi:type="kbl:Slot_occurrence"><Part>box_x_s</Part><Cavities id="box_x_1"><Part>box_x_c1</Part></Cavities></Slots>
              </Component_box_connectors>
              <Component_box_connectors id="box_y">
                <Part>box_part_y</Part>
                <Slots id="box_y_slot" xsi:type="kbl:Slot_occurrence"><Part>box_y_s</Part><Cavities id="box_y_1"><Part>box_y_c1</Part></Cavities></Slots>
              </Component_box_connectors>
              <Contact_points id="box_cp"><Id>b</Id><Contacted_cavity>box_y_1</Contacted_cavity></Contact_points>
            </Component_box_occurrence>
            <Connector_occurrence id="e1">""",
            "<General_terminal id",
            """
            <Component_box id="box_part">
              <Component_box_connectors id="box_part_x"><Id>X</Id><Integrated_slots id="box_x_s"><Id>X</Id><Cavities id="box_x_c1"><Cavity_number>1</Cavity_number></Cavities></Integrated_slots></Component_box_connectors>
              <Component_box_connectors id="box_part_y"><Id>Y</Id><Integrated_slots id="box_y_s"><Id>Y</Id><Cavities id="box_y_c1"><Cavity_number>1</Cavity_number></Cavities></Integrated_slots></Component_box_connectors>
            </Component_box>
            <General_terminal id""",
            "<Contact_point>e1_1<",
            "<Contact_point>box_cp<");
    assertTrue(ends(result).contains("104 A5-Y.1 > P2-3"), ends(result).toString());
    assertSaid(result, "note", "1 component box and 0 components");
  }

  @Test
  void a_spare_core_that_says_so_is_not_missed_and_one_that_does_not_is() throws Exception {
    String spare =
        "<Core_occurrence id=\"core_3\"><Wire_number>105</Wire_number>%<Part>core_b</Part>"
            + "</Core_occurrence><Core_occurrence id=\"core_2\">";
    ImportResult said =
        readWith(
            "<Core_occurrence id=\"core_2\">",
            spare.replace("%", "<Unconnected>true</Unconnected>"));
    assertTrue(findings(said).stream().noneMatch(one -> one.contains("in no connection")));
    ImportResult silent = readWith("<Core_occurrence id=\"core_2\">", spare.replace("%", ""));
    assertSaid(silent, "warning", "1 wire in no connection", "105");
  }

  @ParameterizedTest
  @CsvSource({
    "<Wire>wire_1</Wire>, <Wire>wire_9</Wire>, Connection connection_1: Wire refers to wire_9",
    "<Wire>wire_1</Wire>, <Wire/>, Connection connection_1: Wire is empty or absent",
    "<Wire>wire_1</Wire>, <Wire>  </Wire>, Connection connection_1: Wire is empty or absent",
    "<Wire>wire_1</Wire>, '', Connection connection_1: Wire is empty or absent",
    "<Wire>wire_1</Wire>, <Wire>mm</Wire>, 'Wire refers to mm, a Unit, which'",
    "<Wire>wire_1</Wire>, <Wire>node</Wire>, 'Wire refers to node, a Node, which'",
    "<Contact_point>j1_1<, <Contact_point>j1_9<, Extremities end_1a: Contact_point refers to j1_9",
    "<Contact_point>j1_1<, <Contact_point><, Extremities end_1a: Contact_point is empty",
    "<Contacted_cavity>j1_c1<, <Contacted_cavity>j1_c9<, Contact_points j1_1: Contacted_cavity refers to j1_c9",
    "<Contacted_cavity>j1_c1<, <Contacted_cavity><, Contact_points j1_1: Contacted_cavity is empty",
    "<Contacted_cavity>j1_c1<, <Contacted_cavity>cavity_3_1<, 'refers to cavity_3_1, a Slots, which'",
    "'\"j1_c1\"><Part>cavity_3_1<', '\"j1_c1\"><Part>cavity_9<', Cavities j1_c1: Part refers to cavity_9",
    "'\"j1_c1\"><Part>cavity_3_1<', '\"j1_c1\"><Part><', Cavities j1_c1: Part is empty",
    "<Id>J1</Id>, <Id></Id>, Connector_occurrence j1: Id is empty",
    "<Id>J1</Id>, <Id>/NULL</Id>, Connector_occurrence j1: Id is empty",
  })
  void a_reference_that_leads_nowhere_is_said_and_its_wire_is_not_made_up(
      String old, String now, String words) throws Exception {
    ImportResult result = readWith(old, now);
    assertTrue(result.lostRows() > 0);
    assertFalse(ends(result).contains("101 J1-1 > SP1-1"));
    assertTrue(ends(result).contains("104 E1-1 > P2-3"), "the others are read");
    assertSaid(result, "error", words);
  }

  @Test
  void a_trouble_stands_with_the_line_of_its_element() throws Exception {
    String text = with("<Contact_point>j1_1<", "<Contact_point>j1_9<");
    ImportResult result = read(text);
    assertSaid(result, "error " + lineOf(text, "id=\"end_1a\"") + ": ", "end_1a");
    ImportResult.SkippedRow row = result.sheets().get(0).skipped().get(0);
    assertEquals(lineOf(text, "id=\"connection_1\""), Integer.toString(row.row()));
    assertEquals(List.of("connection_1", "c1", "RUN", "wire_1"), row.cells());
  }

  @Test
  void a_contact_of_one_item_in_a_cavity_of_another_is_a_contradiction() throws Exception {
    ImportResult result = readWith("<Contacted_cavity>j1_c1<", "<Contacted_cavity>p2_c1<");
    assertEquals(List.of(SkipReason.POINT_NOT_CLEAR), reasons(result));
    assertSaid(result, "error", "Contact_points j1_1 is one of J1", "p2_c1 of P2");
  }

  @Test
  void a_cavity_without_a_number_is_no_point() throws Exception {
    ImportResult result =
        readWith("<Cavity_number>2</Cavity_number>", "<Cavity_number></Cavity_number>");
    assertEquals(List.of(SkipReason.POINT_NOT_CLEAR), reasons(result));
    assertSaid(result, "error", "Cavities cavity_3_2: Cavity_number is empty");
  }

  @Test
  void cavities_without_numbers_do_not_rename_the_others() throws Exception {
    ImportResult result =
        readWith(
            "<Cavity_number>2</Cavity_number>",
            "<Cavity_number></Cavity_number>",
            "<Cavity_number>3</Cavity_number>",
            "<Cavity_number></Cavity_number>");
    assertTrue(ends(result).contains("101 J1-1 > SP1-1"), ends(result).toString());
  }

  @Test
  void two_cavities_of_one_number_are_not_taken_for_one() throws Exception {
    ImportResult result =
        readWith("<Cavity_number>2</Cavity_number>", "<Cavity_number>01</Cavity_number>");
    assertTrue(reasons(result).contains(SkipReason.POINT_NOT_CLEAR));
    assertSaid(result, "error", "J1 has more than one cavity");
  }

  @Test
  void cavities_of_two_slots_with_the_same_numbers_have_their_slot_before_them() throws Exception {
    ImportResult result =
        readWith(
            "<Cavities id=\"j1_c2\">",
            "</Slots><Slots id=\"j1_slot_b\"><Part>slot_b</Part><Cavities id=\"j1_c2\">",
            "<Part>cavity_3_2</Part></Cavities>\n        <Cavities id=\"j1_c3\">",
            "<Part>cavity_b_1</Part></Cavities>\n        <Cavities id=\"j1_c3\">",
            "<General_terminal id",
            "<Connector_housing id=\"more\"><Slots id=\"slot_b\"><Id>B</Id><Cavities"
                + " id=\"cavity_b_1\"><Cavity_number>1</Cavity_number></Cavities></Slots>"
                + "</Connector_housing><General_terminal id");
    assertTrue(
        ends(result).containsAll(List.of("101 J1-1.1 > SP1-1", "103 J1-B.1 > P2-2")),
        ends(result).toString());
  }

  @Test
  void an_id_that_two_elements_have_leads_nowhere() throws Exception {
    ImportResult result = readWith("id=\"wire_2\"", "id=\"wire_1\"");
    assertTrue(result.lostRows() >= 2, ends(result).toString());
    assertSaid(result, "error", "has the same id");
  }

  @Test
  void two_items_of_one_name_are_not_taken_for_one() throws Exception {
    ImportResult result = readWith("<Id>P2</Id>", "<Id>j1</Id>");
    assertEquals(List.of(), ends(result).stream().filter(end -> end.contains("J1")).toList());
    assertSaid(result, "error", "two items are called", "j1");
    assertEquals(4, result.lostRows());
  }

  @Test
  void items_of_one_name_that_no_unit_has_together_are_variants() throws Exception {
    String text =
        with(
            "<Id>E1</Id>\n      <Usage>",
            "<Id>SP1</Id>\n      <Usage>",
            "<Usage>ring terminal</Usage>",
            "<Usage>splice</Usage>");
    ImportResult result = read(text);
    assertSaid(result, "warning", "two items of different modules are called SP1");
    assertEquals(4, ends(result).size());
    assertEquals(
        1, result.wiring().items().stream().filter(one -> one.ref().equals("SP1")).count());
    ImportResult both = read(text, "BASE", "HEATER");
    assertSaid(both, "error", "two items are called SP1");
    assertEquals(2, ends(read(text, "BASE")).size());
  }

  @Test
  void a_connection_with_one_end_is_no_wire() throws Exception {
    ImportResult result =
        readWith(
            "<Extremities id=\"end_1b\"><Position_on_wire>1</Position_on_wire><Contact_point>sp1_a"
                + "</Contact_point></Extremities>",
            "");
    assertEquals(List.of(SkipReason.NO_OTHER_END), reasons(result));
    assertSaid(result, "error", "Connection connection_1 has 1 end");
  }

  @Test
  void a_connection_from_a_point_to_itself_is_no_wire() throws Exception {
    ImportResult result = readWith("<Contact_point>sp1_a<", "<Contact_point>j1_1<");
    assertEquals(List.of(SkipReason.TO_ITSELF), reasons(result));
    assertTrue(result.hasErrors());
  }

  /** Position_on_wire is for contacts that pierce the insulation between the ends. */
  @Test
  void a_wire_with_a_contact_between_its_ends_is_a_wire_for_each_piece() throws Exception {
    String third =
        "<Extremities id=\"end_1c\"><Position_on_wire>%</Position_on_wire><Contact_point>e1_1"
            + "</Contact_point></Extremities></Connection>\n    <Connection id=\"connection_2\">";
    String second = "</Connection>\n    <Connection id=\"connection_2\">";
    ImportResult result = readWith(second, third.replace("%", "0.25"));
    assertTrue(
        ends(result).containsAll(List.of("101 J1-1 > E1-1", "101/2 E1-1 > SP1-1")),
        ends(result).toString());
    assertEquals(0.3, wire(result, "101").length().orElseThrow().metres(), 1e-9);
    assertEquals(0.9, wire(result, "101/2").length().orElseThrow().metres(), 1e-9);
    assertEquals(4, result.sheets().get(0).rows().wire(), "it is one connection");
    assertSaid(result, "note", "J1-1 > E1-1 > SP1-1");
    assertSaid(readWith(second, third.replace("%", "")), "warning", "their order in the file");
  }

  @Test
  void one_contact_in_two_cavities_links_them() throws Exception {
    ImportResult result = readWith("<Contacted_cavity>j1_c1<", "<Contacted_cavity>j1_c1 j1_c3<");
    assertEquals(
        List.of("J1-1 J1-3"),
        result.wiring().links().stream().map(link -> link.from() + " " + link.to()).toList());
    assertSaid(result, "note", "J1-1, J1-3");
    assertTrue(result.wiring().pins().isEmpty(), "J1-3 is no unused cavity");
  }

  @ParameterizedTest
  @CsvSource({
    "<Part>wire_part</Part>, <Part>wire_9</Part>, General_wire_occurrence wire_1: Part refers to wire_9",
    "<Part>terminal_part</Part>, <Part>t_9</Part>, Terminal_occurrence contact: Part refers to t_9",
    "<Associated_parts>contact seal<, <Associated_parts>contact_9<, Associated_parts refers to contact_9",
    "'\"area_1\"><Unit_component>mm2<', '\"area_1\"><Unit_component>u_9<', Unit_component refers to u_9",
    "'\"l1\"><Unit_component>mm<', '\"l1\"><Unit_component><', Unit_component is empty",
    "'\"l1\"><Unit_component>mm<', '\"l1\"><Unit_component>furlong<', furlong",
    "'\"l1\"><Unit_component>mm<', '\"l1\"><Unit_component>mm2<', not a length",
    "'\"area_1\"><Unit_component>mm2<', '\"area_1\"><Unit_component>mm<', not a cross-section",
    "<Value_component>1200<, <Value_component>NaN<, not a length",
    "<Value_component>0.75<, <Value_component>0<, not a cross-section",
    "<Value_component>1200<, <Value_component>0.0<, 1 wire with the length 0",
  })
  void what_a_wire_is_made_of_may_be_wrong_and_the_wire_is_still_there(
      String old, String now, String words) throws Exception {
    ImportResult result = readWith(old, now);
    assertEquals(4, ends(result).size());
    assertSaid(result, "warning", words);
  }

  @Test
  void what_is_no_value_goes_along_as_a_note() throws Exception {
    ImportResult result = readWith("\"l1\"><Unit_component>mm<", "\"l1\"><Unit_component>furlong<");
    assertEquals("1200", wire(result, "101").notes().get("Length as listed"));
    assertEquals(Optional.empty(), wire(result, "101").length());
  }

  @Test
  void many_values_of_an_unknown_unit_are_each_found_and_printed_as_one_with_their_number()
      throws Exception {
    String text = with("\"l1\"><Unit_component>mm<", "\"l1\"><Unit_component>furlong<");
    String connection =
        text.substring(
            text.indexOf("<Connection id=\"connection_1\""),
            text.indexOf("<Connection id=\"connection_2\""));
    String wire =
        text.substring(
            text.indexOf("<General_wire_occurrence xsi:type=\"kbl:Wire_occurrence\" id=\"wire_1\""),
            text.indexOf(
                "<General_wire_occurrence xsi:type=\"kbl:Wire_occurrence\" id=\"wire_2\""));
    StringBuilder more = new StringBuilder();
    for (int i = 0; i < 30; i++) {
      String again = connection + wire;
      more.append(
          again
              .replaceAll("id=\"(\\w+)\"", "id=\"$1_" + i + "\"")
              .replace("<Wire>wire_1<", "<Wire>wire_1_" + i + "<"));
    }
    ImportResult result =
        read(
            text.replace(
                "<Connector_occurrence id=\"j1\">", more + "<Connector_occurrence id=\"j1\">"));
    assertEquals(34, ends(result).size());
    assertEquals(31, findings(result).stream().filter(one -> one.contains("furlong")).count());
    List<String> printed =
        ImportWords.grouped(result.findings()).stream()
            .map(Problem::text)
            .filter(one -> one.contains("furlong"))
            .toList();
    assertEquals(1, printed.size(), printed.toString());
    assertTrue(printed.get(0).contains("31 in all"), printed.get(0));
  }

  @ParameterizedTest
  @CsvSource({
    "<Si_unit_name>metre</Si_unit_name>, 1200",
    "<Si_unit_name>metre</Si_unit_name><Si_prefix>centi</Si_prefix>, 12",
    "<Unit_name>mm</Unit_name>, 1.2",
    "<Unit_name>Millimetre</Unit_name>, 1.2",
    "<Unit_name>inch</Unit_name>, 30.48",
  })
  void a_length_is_read_in_its_unit(String unit, double metres) throws Exception {
    ImportResult result =
        readWith(
            "<Unit id=\"mm\"><Si_unit_name>metre</Si_unit_name><Si_prefix>milli</Si_prefix></Unit>",
            "<Unit id=\"mm\">" + unit + "</Unit>");
    assertEquals(metres, wire(result, "101").length().orElseThrow().metres(), 1e-9);
  }

  @ParameterizedTest
  @CsvSource({
    "<Unit_name>mm2</Unit_name>, 0.75, 0.75 mm²",
    "<Unit_name>square millimetre</Unit_name>, 0.75, 0.75 mm²",
    "<Unit_name>AWG</Unit_name>, 20, AWG 20",
  })
  void a_gauge_is_read_in_its_unit(String unit, String value, String gauge) throws Exception {
    ImportResult result =
        readWith(
            "<Unit id=\"furlong\"><Unit_name>furlong</Unit_name>",
            "<Unit id=\"furlong\">" + unit,
            "\"area_1\"><Unit_component>mm2</Unit_component><Value_component>0.75<",
            "\"area_1\"><Unit_component>furlong</Unit_component><Value_component>" + value + "<");
    assertEquals(gauge, wire(result, "101").gaugeLabel());
  }

  @Test
  void of_several_lengths_that_for_production_is_taken_and_said() throws Exception {
    ImportResult result =
        readWith(
            "<Wire_number>101</Wire_number>",
            "<Length_information id=\"more\"><Length_type>Production</Length_type><Length_value"
                + " id=\"more_v\"><Unit_component>mm</Unit_component><Value_component>1250"
                + "</Value_component></Length_value></Length_information>"
                + "<Wire_number>101</Wire_number>");
    assertEquals(1.25, wire(result, "101").length().orElseThrow().metres(), 1e-9);
    assertSaid(result, "note", "1 wire with several lengths", "Production");
  }

  /** Wire_colour_type of edition 2.5. */
  @Test
  void the_base_colour_comes_first_and_a_label_s_colour_is_none_of_the_wire() throws Exception {
    ImportResult result =
        readWith(
            "<Colour_type>base colour</Colour_type><Colour_value>rd<",
            "<Colour_type>first identification</Colour_type><Colour_value>rd<",
            "<Colour_type>second</Colour_type>",
            "<Colour_type>base colour</Colour_type>");
    assertEquals("wh/rd", wire(result, "101").colour());
    ImportResult label =
        readWith(
            "<Colour_type>second</Colour_type>", "<Colour_type>label identification</Colour_type>");
    assertEquals("rd", wire(label, "101").colour());
  }

  @Test
  void wires_twisted_together_have_a_group() throws Exception {
    ImportResult result =
        readWith(
            "<Module id=\"module_base\">",
            "<Wiring_group id=\"group\"><Id>TW1</Id><Type>twisted</Type><Assigned_wire>wire_1"
                + " wire_2</Assigned_wire></Wiring_group><Module id=\"module_base\">");
    assertEquals("TW1", wire(result, "101").group());
    assertEquals("", wire(result, "103").group());
  }

  @Test
  void a_wire_number_that_is_used_again_is_said() throws Exception {
    assertSaid(readWith("<Wire_number>102<", "<Wire_number>101<"), "warning", "101");
  }

  @Test
  void without_a_choice_all_modules_are_read_and_said() throws Exception {
    assertSaid(readWith(), "warning", "the file holds 2 modules, and all were read together");
  }

  @ParameterizedTest
  @ValueSource(strings = {"SB-100-BASE", "sb-100-base", "module_base", "BASE"})
  void a_module_is_asked_for_by_its_part_number_id_or_code(String name) throws Exception {
    ImportResult result = read(with(), name);
    assertEquals(List.of("101 J1-1 > SP1-1", "102 SP1-1 > P2-1"), ends(result));
    assertEquals(4, result.sheets().get(0).rows().total());
    assertEquals(
        List.of(SkipReason.MODULE_NOT_CHOSEN, SkipReason.MODULE_NOT_CHOSEN), reasons(result));
    assertEquals(0, result.lostRows());
    assertSaid(result, "note", "2 connections of SB-100-BASE read; 2 connections");
    assertTrue(result.wiring().items().stream().noneMatch(item -> item.ref().equals("E1")));
  }

  @Test
  void a_module_that_controls_a_cable_has_the_connections_of_its_cores() throws Exception {
    assertEquals(
        List.of("103 J1-2 > P2-2", "104 E1-1 > P2-3"), ends(read(with(), "SB-100-HEATER")));
    assertEquals(4, ends(read(with(), "SB-100-HEATER", "SB-100-BASE")).size());
  }

  @Test
  void a_connection_of_no_module_is_left_out_with_a_word() throws Exception {
    ImportResult result =
        read(with(">connection_1 connection_2 wire_1 wire_2 sp1<", "><"), "HEATER");
    assertEquals(2, ends(result).size());
    assertSaid(result, "warning", "2 connections belong to no module");
  }

  @Test
  void what_a_module_controls_and_is_not_there_is_said() throws Exception {
    assertSaid(
        readWith("connection_1 connection_2 wire_1", "connection_1 connection_2 connection_9"),
        "warning",
        "Controlled_components refers to 1 element that the file does not have: connection_9");
  }

  @Test
  void a_module_that_is_not_there_is_refused_with_those_that_are() throws Exception {
    String text = with();
    UnusableInput refused = assertThrows(UnusableInput.class, () -> read(text, "SB-100-X"));
    assertTrue(refused.text().contains("SB-100-BASE, SB-100-HEATER"), refused.text());
  }

  @Test
  void a_connection_of_an_assembly_part_is_not_lost_in_silence() throws Exception {
    ImportResult result =
        readWith(
            "<General_terminal id",
            "<Assembly_part id=\"lead\"><Connection id=\"inner\"><Wire>wire_1</Wire></Connection>"
                + "</Assembly_part><General_terminal id");
    assertEquals(List.of(SkipReason.OF_ASSEMBLY_PART), reasons(result));
    assertEquals(5, result.sheets().get(0).rows().total());
    assertSaid(result, "error", "Connection inner", "lead");
  }

  @Test
  void a_file_without_connections_makes_no_wires_up() throws Exception {
    ImportResult result = read("<KBL_container id=\"x\"><Harness id=\"h\"/></KBL_container>");
    assertEquals(0, result.sheets().get(0).rows().total());
    assertSaid(result, "warning", "no wires");
  }
}
