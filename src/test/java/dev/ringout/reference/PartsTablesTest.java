package dev.ringout.reference;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.ringout.standards.ContactSizes;
import dev.ringout.standards.CopperWire;
import dev.ringout.standards.Tables;
import dev.ringout.standards.Tables.Entry;
import dev.ringout.support.Run;
import dev.ringout.units.Gauge;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The parts tables against what was published, and the worked examples of AC 43.13-1B. */
class PartsTablesTest {
  private static final CopperWire COPPER = CopperWire.published();

  @TempDir Path folder;

  private static Entry row(String table, String column, String key) {
    return Tables.published().rows(table).stream()
        .filter(row -> row.get(column).equals(key))
        .findFirst()
        .orElseThrow();
  }

  /**
   * Source: SAE AS39029/56 and /58, wire ranges 22D 28-22, 20 24-20, 16 20-16, 12 14-12 (read in
   * public data sets); 22 26-22 and 22M 28-24 from memory. Every size with every even gauge.
   */
  @ParameterizedTest
  @CsvSource({
    "22M, 28 26 24",
    "22D, 28 26 24 22",
    "22, 26 24 22",
    "20, 24 22 20",
    "16, 20 18 16",
    "12, 14 12"
  })
  void every_contact_size_takes_the_published_gauges_and_no_other(String size, String takes) {
    ContactSizes sizes = ContactSizes.published(COPPER);
    List<String> taken = List.of(takes.split(" ", -1));
    for (int gauge = 12; gauge <= 28; gauge += 2) {
      boolean published = taken.contains(Integer.toString(gauge));
      assertEquals(
          published,
          sizes.takes(sizes.find(size).orElseThrow(), new Gauge.Awg(gauge)).orElseThrow(),
          size + " with AWG " + gauge);
    }
  }

  /** Source: FAA AC 43.13-1B change 1, table 11-9 (105, 150, 200 °C wire; ohms; circular mils). */
  @ParameterizedTest
  @CsvSource({
    "24, 2.5, 4, 5, 28.40, 475",
    "22, 3, 5, 6, 16.20, 755",
    "20, 4, 7, 9, 9.88, 1216",
    "16, 7, 11, 14, 4.81, 2426",
    "12, 13, 19, 25, 2.02, 5874",
    "10, 17, 26, 32, 1.26, 9354",
    "8, 38, 57, 71, 0.70, 16983",
    "4/0, 204, 310, 395, 0.06, 210900"
  })
  void currents_and_resistances_are_those_of_table_11_9(
      String awg, double at105, double at150, double at200, double ohms, double mils) {
    Entry row = row("aircraft-current", "awg", awg);
    assertEquals(at105, row.number("amps_105"));
    assertEquals(at150, row.number("amps_150"));
    assertEquals(at200, row.number("amps_200"));
    assertEquals(ohms, row.number("ohm_per_1000ft"));
    assertEquals(mils, row.number("cmil"));
  }

  /** Source: the resistivity of copper (NBS Handbook 100) over the areas of the same table. */
  @ParameterizedTest
  @ValueSource(strings = {"22", "20", "18", "16", "14", "12", "10", "8"})
  void the_resistances_are_the_copper_s_own_within_stranding_and_tin(String awg) {
    Entry row = row("aircraft-current", "awg", awg);
    double squareMillimetres = row.number("cmil") * 5.067075e-4;
    double ohmsPer1000Feet = 0.0172414 / squareMillimetres * 304.8;
    double ratio = row.number("ohm_per_1000ft") / ohmsPer1000Feet;
    assertTrue(ratio > 1.0 && ratio < 1.2, "ratio " + ratio);
  }

  /** Source: UL 486A and SAE AS7928 as terminal makers and, 8 to 4 AWG, a course reprint them. */
  @ParameterizedTest
  @CsvSource({
    "UL 486A, 22, 8, 35.6",
    "UL 486A, 20, 13, 57.8",
    "UL 486A, 16, 30, 133.4",
    "UL 486A, 10, 80, 355.9",
    "SAE AS7928, 22, 15, 66.7",
    "SAE AS7928, 18, 38, 169.0",
    "SAE AS7928, 10, 150, 667.2",
    "SAE AS7928, 8, 225, 1000.8",
    "SAE AS7928, 6, 300, 1334.5",
    "SAE AS7928, 4, 400, 1779.3"
  })
  void pulls_are_the_printed_ones_in_both_units(
      String standard, String awg, double pounds, double newtons) {
    Entry row =
        Tables.published().rows("crimp-pull").stream()
            .filter(one -> one.get("standard").equals(standard) && one.get("awg").equals(awg))
            .findFirst()
            .orElseThrow();
    assertEquals(pounds, row.number("lbf"));
    assertEquals(newtons, row.number("newtons"));
    assertEquals(pounds * 4.4482216, newtons, 0.06, "within the printed rounding");
  }

  /** Source: MIL-DTL-38999 arrangements as a connector maker's catalogue prints them. */
  @ParameterizedTest
  @CsvSource({
    "9-35, 6, 6x22D",
    "11-99, 7, 7x20",
    "15-97, 12, 8x20+4x16",
    "17-26, 26, 26x20",
    "21-16, 16, 16x16",
    "25-35, 128, 128x22D",
    "25-61, 61, 61x20"
  })
  void insert_arrangements_have_the_printed_contacts(String name, String contacts, String layout) {
    Entry row = row("insert-arrangements", "arrangement", name);
    assertEquals(contacts, row.get("contacts"));
    assertEquals(layout, row.get("layout"));
  }

  private static List<Entry> inserts(String arrangement, String family) {
    return Tables.published().rows("insert-arrangements").stream()
        .filter(row -> row.get("arrangement").equals(arrangement))
        .filter(row -> row.get("family").equals(family))
        .toList();
  }

  /** Source: MIL-STD-1651B change 2 (22 September 2020), tables III to V: contacts by size. */
  @ParameterizedTest
  @CsvSource({
    "8S-1, 1, 1x16",
    "10SL-3, 3, 3x16",
    "16S-1, 7, 7x16",
    "18-1, 10, 10x16",
    "20-16, 9, 7x16+2x12",
    "20-29, 17, 17x16",
    "22-14, 19, 19x16",
    "24-28, 24, 24x16",
    "28-11, 22, 18x16+4x12",
    "28-21, 37, 37x16",
    "36-1, 22, 18x16+4x12",
    "36-10, 48, 48x16"
  })
  void inserts_of_mil_dtl_5015_have_the_contacts_of_mil_std_1651(
      String name, String contacts, String layout) {
    Entry row = inserts(name, "5015").get(0);
    assertEquals(contacts, row.get("contacts"));
    assertEquals(layout, row.get("layout"));
  }

  /** Source: MIL-STD-1651B change 2, which says of each that it is cancelled. */
  @ParameterizedTest
  @ValueSource(strings = {"18-19", "18-21"})
  void cancelled_inserts_are_no_longer_known(String name) {
    assertEquals(List.of(), inserts(name, "5015"));
  }

  /**
   * Source: MIL-STD-1560C (11 February 2015), table II and figures: the standard's own codes of
   * size 23, 9-7, 21-75 and, of series II, 18-96.
   */
  @ParameterizedTest
  @CsvSource({
    "9-7, 38999, 7, 7x22D",
    "9-23, 38999, 9, 9x23",
    "11-23, 38999, 19, 19x23",
    "13-23, 38999, 32, 32x23",
    "15-23, 38999, 55, 55x23",
    "17-23, 38999, 73, 73x23",
    "19-23, 38999, 88, 88x23",
    "21-23, 38999, 121, 121x23",
    "23-23, 38999, 151, 151x23",
    "25-23, 38999, 187, 187x23",
    "21-75, 38999, 4, 4x8 twinax",
    "18-96, 38999 series II, 9, 9x12"
  })
  void inserts_of_mil_dtl_38999_have_the_contacts_of_mil_std_1560(
      String name, String family, String contacts, String layout) {
    Entry row = inserts(name, family).get(0);
    assertEquals(contacts, row.get("contacts"));
    assertEquals(layout, row.get("layout"));
  }

  /** Source: MIL-STD-1651B (20-11 of MIL-DTL-5015) and MIL-STD-1560 (20-11 of series II). */
  @ParameterizedTest
  @CsvSource({"MS3106A20-11P, 13", "MS27467T20F11P, 11", "D38999/26, 11"})
  void an_insert_code_of_two_families_is_that_of_the_connector_s_part_number(
      String part, int contacts) throws IOException {
    Path unit = Files.createTempDirectory(folder, "unit");
    Files.writeString(
        unit.resolve("items.csv"),
        "Ref,Kind,Part,Arrangement\nJ1,connector," + part + ",20-11\nTB1,terminal board,,\n");
    Files.writeString(unit.resolve("wires.csv"), "Wire,From,To\nW1,J1-ZZ,TB1-1\n");
    Run run = Run.of("review", unit, "--json");
    assertTrue(run.out().contains("of " + contacts + " cavities"), run.out());
  }

  /** Source: SAE AS22759/16 (24 to 2/0) as wire makers' data give its sizes. */
  @Test
  void a_wire_type_has_the_sizes_of_its_sheet_and_no_other() {
    List<String> sizes =
        Tables.published().rows("wire-resistance").stream()
            .filter(row -> row.get("type").equals("AS22759/16"))
            .map(row -> row.get("awg"))
            .toList();
    assertEquals(
        List.of(
            "24", "22", "20", "18", "16", "14", "12", "10", "8", "6", "4", "2", "1", "1/0", "2/0"),
        sizes);
  }

  /**
   * Source: MIL-DTL-29606A table III-A: silver-coated copper of 12 AWG has 19 strands and 1.81 ohms
   * for 1,000 ft; 1.90 is that of 37 strands. Tin-coated copper of 24 AWG has 26.2.
   */
  @ParameterizedTest
  @CsvSource({"AS22759/11, 12, 1.81", "AS22759/16, 24, 26.2", "AS22759/32, 24, 26.2"})
  void ohms_of_a_wire_type_are_those_of_its_conductor(String type, String awg, double ohms) {
    Entry found =
        Tables.published().rows("wire-resistance").stream()
            .filter(row -> row.get("type").equals(type) && row.get("awg").equals(awg))
            .findFirst()
            .orElseThrow();
    assertEquals(ohms, found.number("max_ohm_per_1000ft"));
    assertEquals("seen", found.get("confidence"));
  }

  /** Source: the counts are those of the arrangements; no capital I, O or Q on any drawing. */
  @Test
  void every_lettered_insert_has_as_many_names_as_contacts_and_skips_i_o_and_q() {
    for (Entry row : Tables.published().rows("insert-labels")) {
      List<String> labels = List.of(row.get("labels").split(" ", -1));
      int contacts =
          (int)
              row("insert-arrangements", "arrangement", row.get("arrangement")).number("contacts");
      assertEquals(contacts, labels.size(), row.get("arrangement"));
      assertEquals(contacts, labels.stream().distinct().count());
      assertTrue(labels.stream().noneMatch(label -> label.matches("[IOQlo]")), labels.toString());
    }
  }

  /** The sum of a layout's parts is its count of contacts: arithmetic on the printed figures. */
  @Test
  void every_layout_adds_up_to_its_contacts() {
    for (Entry row : Tables.published().rows("insert-arrangements")) {
      int sum = 0;
      for (String part : row.get("layout").split("\\+", -1)) {
        sum += Integer.parseInt(part.substring(0, part.indexOf('x')));
      }
      assertEquals(row.get("contacts"), Integer.toString(sum), row.get("arrangement"));
    }
  }

  /** Source: SAE AS7928 (MS25036) and trade marking: red 22-18, blue 16-14, yellow 12-10. */
  @ParameterizedTest
  @CsvSource({"red, 22, 18", "blue, 16, 14", "yellow, 12, 10"})
  void lug_colours_have_the_printed_ranges(String colour, String finest, String coarsest) {
    assertEquals(finest, row("lugs", "colour", colour).get("finest_awg"));
    assertEquals(coarsest, row("lugs", "colour", colour).get("coarsest_awg"));
  }

  /** Source: MIL-STD-681 and CASA AC 21-99 for the digits, IEC 60757 for the letters. */
  @ParameterizedTest
  @CsvSource({"0, black, BK", "2, red, RD", "5, green, GN", "7, violet, VT", "9, white, WH"})
  void colours_have_the_published_digits_and_letters(String digit, String colour, String code) {
    Entry row = row("colour-codes", "digit", digit);
    assertEquals(colour, row.get("colour"));
    assertTrue(List.of(row.get("words").split(" ", -1)).contains(code));
  }

  private Run review(String wires, String loads) throws IOException {
    Path unit = Files.createTempDirectory(folder, "unit");
    Files.writeString(unit.resolve("wires.csv"), "Wire,From,To,Gauge,Length (ft)\n" + wires);
    Files.writeString(unit.resolve("loads.csv"), "Name,From,To,Amps,Volts,Wire C\n" + loads);
    return Run.of("review", unit, "--json");
  }

  /**
   * Source: FAA AC 43.13-1B, example 1 page 11-26 (28 V, 50 ft, 20 A: No. 10 drops 1.26 V and is
   * too small, No. 8 0.70 V) and tables 11-7 and 11-8 page 11-22, where the printed drop is the
   * product of its own row (rows of No. 12 at 88 ft and of 14 V over 19.5 ft are misprinted).
   */
  @ParameterizedTest
  @CsvSource({
    "10, 50, 20, 28, 1.26",
    "8, 50, 20, 28, ''",
    "6, 107, 20, 28, ''",
    "8, 107, 20, 28, 1.5",
    "4, 90, 20, 14, ''",
    "4, 92, 20, 14, 0.515",
    "14, 100, 20, 200, ''",
    "14, 120, 20, 200, 7.34",
    "10, 39, 20, 28, ''",
    "10, 41, 20, 28, 1.03",
    "10, 156, 20, 115, ''",
    "10, 162, 20, 115, 4.08",
    "10, 273, 20, 200, ''",
    "10, 282, 20, 200, 7.11"
  })
  void the_worked_examples_of_the_advisory_circular_come_out_of_a_review(
      String awg, String feet, String amps, String volts, String drop) throws IOException {
    Run run =
        review(
            "W1,J1-1,TB1-1," + awg + "," + feet + "\n",
            "load,J1-1,TB1-1," + amps + "," + volts + ",200\n");
    assertEquals(
        !drop.isEmpty(), run.out().contains("\"voltage-drop\",\n    \"severity\""), run.out());
    if (!drop.isEmpty()) {
      assertTrue(run.out().contains("load drops " + drop + " V"), run.out());
    }
  }

  /**
   * Source: FAA AC 43.13-1B change 1, page 11-22: table 11-7 (107 ft of No. 6 drop 0.942 V, 90 ft
   * of No. 4 0.504 V, 100 ft of No. 14 6.12 V, each at 20 A) and table 11-8 (39, 156 and 273 ft of
   * No. 10 drop .98, 3.93 and 6.88 V). The row of No. 12 in table 11-7 and that of 19.5 ft in table
   * 11-8 are no products of their own figures: misprints.
   */
  @ParameterizedTest
  @CsvSource({
    "6, 107, 0.942", "4, 90, 0.504", "14, 100, 6.12",
    "10, 39, 0.983", "10, 156, 3.93", "10, 273, 6.88"
  })
  void the_drops_of_tables_11_7_and_11_8_are_as_printed(String awg, String feet, String drop)
      throws IOException {
    Path unit = Files.createTempDirectory(folder, "unit");
    Files.writeString(
        unit.resolve("wires.csv"),
        "Wire,From,To,Gauge,Length (ft)\nW1,J1-1,TB1-1," + awg + "," + feet + "\n");
    Files.writeString(
        unit.resolve("loads.csv"),
        "Name,From,To,Amps,Allowed Drop V,Wire C\nload,J1-1,TB1-1,20,0.001,200\n");
    Run run = Run.of("review", unit, "--json");
    assertTrue(run.out().contains("load drops " + drop + " V"), run.out());
  }

  /** Source: FAA AC 43.13-1B table 11-9: No. 20 takes 4, 7 and 9 A as 105, 150 and 200 °C wire. */
  @ParameterizedTest
  @CsvSource({"4, 105, 0", "4.1, 105, 1", "7, 150, 0", "7.1, 150, 1", "9, 200, 0", "9.1, 200, 1"})
  void the_current_of_a_size_20_wire_is_held_against_its_rating(
      String amps, String celsius, int code) throws IOException {
    Run run = review("W1,J1-1,TB1-1,20,1\n", "load,J1-1,TB1-1," + amps + ",," + celsius + "\n");
    assertEquals(code, run.code(), run.out());
  }

  /**
   * Source: US Army TM 55-1520-240-23-3 paragraph 4-11.3: size 20 0.157 to 0.186 in, printed as 4
   * to 5 mm; size 16 0.250 to 0.284 in, printed as 6 to 7 mm. Size 22D, 0.115 to 0.141 in: from
   * memory.
   */
  @ParameterizedTest
  @CsvSource({"20, 0.157, 0.186", "16, 0.250, 0.284", "22D, 0.115, 0.141"})
  void strip_lengths_are_those_of_the_manual(String contact, double least, double most) {
    Entry row = row("strip-lengths", "contact", contact);
    assertEquals(least * 25.4, row.number("strip_min_mm"), 0.4, "printed in whole millimetres");
    assertEquals(most * 25.4, row.number("strip_max_mm"), 0.3, "printed in whole millimetres");
  }

  @Test
  void a_table_of_one_s_own_speaks_before_the_published_one_and_says_so() throws IOException {
    Path own = Files.createDirectory(folder.resolve("own"));
    Files.writeString(
        own.resolve("contact-sizes.csv"),
        "# source: our specification PS-7\n"
            + "size,finest_awg,coarsest_awg,pin_part,socket_part,confidence,"
            + "wire_od_min_in,wire_od_max_in,sealing_plug\n12,16,12,,,,,,\n");
    Path list = folder.resolve("list.csv");
    Files.writeString(list, "Wire,From,To,Gauge,From Contact\nW1,J1-1,TB1-1,16,12\n");
    assertEquals(1, Run.of("review", list).code(), "AWG 16 in a size 12 contact");
    assertEquals(0, Run.of("review", list, "--tables", own).code());
    Files.writeString(list, "Wire,From,To,Gauge,From Contact\nW1,J1-1,TB1-1,18,12\n");
    Run run = Run.of("review", list, "--tables", own);
    assertTrue(
        run.out()
            .replaceAll("\\s+", " ")
            .contains("own table contact-sizes.csv: our specification PS-7"),
        run.out());
    Files.writeString(own.resolve("nonsense.csv"), "a\n");
    assertEquals(64, Run.of("review", list, "--tables", own).code());
  }
}
