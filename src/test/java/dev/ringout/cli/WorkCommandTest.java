package dev.ringout.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.jr.ob.JSON;
import dev.ringout.support.Run;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.FormulaEvaluator;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class WorkCommandTest {
  private static final Path BRIDGE = Path.of("harness-samples/swing-bridge/junction-box.xlsx");

  @TempDir Path folder;

  private Path unit() throws IOException {
    Path unit = Files.createDirectories(folder.resolve("unit"));
    Files.writeString(
        unit.resolve("wires.csv"),
        """
        Wire,From,To,Gauge,Color,Length,Wire Type,Signal
        W1,J1-A,TB1-1,20,RED,1 m,M1,LIFT
        W2,J1-b,TB1-2,20,RED,2.5 m,M1,
        W3,J1-B,TB1-3,16,BLK,,M1,
        """);
    Files.writeString(
        unit.resolve("pins.csv"), "Ref,Pin,Size\nJ1,A,20\nJ1,B,16\nJ1,C,22D\nJ1,b,20\n");
    Files.writeString(unit.resolve("links.csv"), "Ref,Pin,To Pin\nTB1,1,2\n");
    Files.writeString(
        unit.resolve("limits.csv"), "Name,Value,Unit\nre-termination,50,mm\nservice loop,0.2,m\n");
    return unit;
  }

  @Test
  void each_item_shows_its_wires_from_its_own_end_in_the_order_of_its_cavities()
      throws IOException {
    Run run = Run.of("work", unit());
    assertEquals(0, run.code(), run.err());
    String sheet = run.out().substring(run.out().indexOf("\nJ1\n"), run.out().indexOf("\nTB1\n"));
    assertEquals(
        """

        J1
          A      W1, RED, AWG 20, to TB1-1, contact 20, M22520/1-01, selector 4, strip
                 4–5 mm
          B      W3, BLK, AWG 16, to TB1-3, contact 16, M22520/1-01, selector 6, strip
                 6–7.2 mm
          C      empty: sealing plug MS27488-22 black
          b      W2, RED, AWG 20, to TB1-2, contact 20, M22520/1-01, selector 4, strip
                 4–5 mm
        """,
        sheet);
    assertTrue(run.out().contains("  1      jumper to TB1-2\n"), run.out());
  }

  /** 1 m + 2.5 m, and for each of the two 0.2 m of loop and 50 mm at either end. */
  @Test
  void the_kit_adds_up_the_cut_lengths_and_names_what_has_none() throws IOException {
    Run run = Run.of("work", unit());
    assertTrue(run.out().contains("4.1 m of M1 AWG 20 RED, 2 wires\n"), run.out());
    assertTrue(
        run.out().contains("0 m of M1 AWG 16 BLK, 1 wire, without W3 (no length listed)"),
        run.out());
    assertTrue(run.out().contains("2 × contact 20\n"), run.out());
    assertTrue(run.out().contains("1 × sealing plug MS27488-22 black\n"), run.out());
    assertTrue(run.out().contains("6 × marker sleeve\n"), run.out());
  }

  @Test
  void sleeves_say_what_the_shop_wants_at_either_end() throws IOException {
    Path papers = folder.resolve("papers");
    Run run = Run.of("work", unit(), "--sleeve", "{wire}/{here}-{signal}", "-o", papers + "/");
    assertEquals(0, run.code(), run.err());
    String markers = Files.readString(papers.resolve("markers.csv"));
    assertTrue(markers.contains("W1/J1-A-LIFT,W1,J1-A"), markers);
    assertTrue(markers.contains("W1/TB1-1-LIFT,W1,TB1-1"), markers);
    String asFound = Files.readString(papers.resolve("as found.csv"));
    assertTrue(asFound.contains("T1,J1-A,W1,RED"), asFound);
    assertTrue(asFound.contains(",J1-C,empty"), asFound);
  }

  @Test
  void the_sample_is_written_in_every_form_and_the_same_each_time() throws IOException {
    for (String name : new String[] {"work.xlsx", "work.pdf", "work.html"}) {
      Path one = folder.resolve("one-" + name);
      Path other = folder.resolve("other-" + name);
      assertEquals(0, Run.of("work", BRIDGE, "-o", one).code());
      assertEquals(0, Run.of("work", BRIDGE, "-o", other).code());
      assertArrayEquals(Files.readAllBytes(one), Files.readAllBytes(other), name);
    }
    assertEquals(73, Run.of("work", BRIDGE, "-o", folder.resolve("one-work.pdf")).code());
    assertEquals(64, Run.of("work", BRIDGE, "--only", "J99").code());
    assertTrue(Run.of("work", BRIDGE, "--json").out().contains("\"ringout-work/1\""));
  }

  @Test
  void an_allowance_without_a_unit_is_refused_with_its_cell() throws IOException {
    Path unit = unit();
    Files.writeString(unit.resolve("limits.csv"), "Name,Value,Unit\nservice loop,0.2,\n");
    Run run = Run.of("work", unit);
    assertEquals(65, run.code());
    assertTrue(run.err().contains("has no unit"), run.err());
  }

  /** The order of work: common practice, no source. */
  @Test
  void connectors_come_first_then_splices_then_ends_that_are_cut_in_place() throws IOException {
    Path unit = Files.createDirectories(folder.resolve("order"));
    Files.writeString(
        unit.resolve("wires.csv"),
        "Wire,From,To,Gauge,Length\nW1,TB1-1,SP1-1,20,1 m\nW2,SP1-1,J1-A,22,1 m\nW3,E1-1,J1-B,16,1 m\n");
    Files.writeString(unit.resolve("items.csv"), "Ref,Kind\nSP1,splice\n");
    assertEquals(List.of("J1", "SP1", "E1", "TB1"), items(Run.of("work", unit)));
    assertEquals(
        List.of("TB1", "J1"), items(Run.of("work", unit, "--only", "TB1,J1")), "as one asks");
    String kit = Run.of("work", unit).out();
    assertTrue(kit.contains("1 × splice for AWG 20 + AWG 22\n"), kit);
    assertTrue(
        kit.contains("1 × end at a terminal, AWG 16, no lug listed: a ring lug would be blue\n"),
        kit);
  }

  private static List<String> items(Run run) {
    return run.out().lines().filter(line -> line.matches("[A-Z]+[0-9]+")).toList();
  }

  /** MIL-DTL-22520 data plates, as in crimp-tools.csv: most positions from memory. */
  @Test
  void each_end_names_the_tool_its_locator_and_the_selector_for_its_wire() throws IOException {
    Path unit = unit();
    Files.writeString(
        unit.resolve("wires.csv"),
        """
        Wire,From,To,Gauge,From Contact
        W1,J1-A,TB1-1,22,M39029/58-360
        W2,J1-b,TB1-2,20,
        W3,J1-B,TB1-3,16,
        """);
    Path papers = folder.resolve("tools");
    assertEquals(0, Run.of("work", unit, "-o", papers + "/").code());
    String sheet = Files.readString(papers.resolve("j1.csv"));
    assertTrue(sheet.contains("\"M22520/2-01, positioner M22520/2-09, selector 4 *\""), sheet);
    assertTrue(sheet.contains("\"M22520/1-01, selector 4 *\""), sheet);
    assertTrue(sheet.contains("\"M22520/1-01, selector 6 *\""), sheet);
    assertTrue(sheet.contains("C,empty,,,,,,sealing plug MS27488-22 black"), sheet);
  }

  /** The terminals scheme: the example of NEETS module 4 (NAVEDTRA 14176). */
  @Test
  void sleeves_follow_the_common_schemes() throws IOException {
    Path unit = Files.createDirectories(folder.resolve("sleeves"));
    Files.writeString(unit.resolve("wires.csv"), "Wire,From,To\nW1,TB101-2A,TB401-7B\n");
    assertEquals(
        List.of("2A-401-7B", "7B-101-2A"), markers(unit, "terminals"), "differs at the two ends");
    assertEquals(List.of("W1", "W1"), markers(unit, "wire"));
    assertEquals(List.of("TB401-7B", "TB101-2A"), markers(unit, "far-end"));
    Run wrong = Run.of("work", unit, "--sleeve", "terminal");
    assertEquals(64, wrong.code());
    assertTrue(wrong.err().contains("these are: wire, wire-end, both-ends"), wrong.err());
  }

  private List<String> markers(Path unit, String scheme) throws IOException {
    Path papers = folder.resolve("papers-" + scheme);
    assertEquals(0, Run.of("work", unit, "--sleeve", scheme, "-o", papers + "/").code());
    return Files.readAllLines(papers.resolve("markers.csv")).stream()
        .skip(1)
        .map(line -> line.substring(0, line.indexOf(',')))
        .toList();
  }

  @Test
  void every_page_names_revision_and_effectivity_and_fits_the_paper_asked_for() throws IOException {
    Path unit = unit();
    Files.writeString(
        unit.resolve("header.csv"),
        "Name,Value\ntitle,Box\nrevision,C\neffectivity,serials 4 to 9\n");
    Path page = folder.resolve("letter.html");
    assertEquals(0, Run.of("work", unit, "--paper", "letter", "-o", page).code());
    String html = Files.readString(page);
    assertTrue(html.contains("size: letter landscape"), html);
    assertTrue(html.contains("@top-left { content: \"Box, revision C, for serials 4 to 9\""), html);
    assertTrue(html.contains("@bottom-left { content: \"go on at __________\""), html);
  }

  /** A reference library's SUMIFS and COUNTIFS over the cut list, on the sample with allowances. */
  @Test
  void the_kit_is_what_a_spreadsheet_s_own_sums_over_the_cut_list_give() throws IOException {
    Path papers = folder.resolve("sums.xlsx");
    assertEquals(0, Run.of("work", BRIDGE, "-o", papers).code());
    Run json = Run.of("work", BRIDGE, "--json");
    List<Map<String, Object>> totals = totals(json.out());
    assertEquals(31, totals.size());
    try (XSSFWorkbook workbook = new XSSFWorkbook(Files.newInputStream(papers))) {
      Cell cell = workbook.createSheet("Sums").createRow(0).createCell(0);
      FormulaEvaluator evaluator = workbook.getCreationHelper().createFormulaEvaluator();
      for (Map<String, Object> total : totals) {
        String where =
            "'Cut list'!C2:C999,\"%s\",'Cut list'!D2:D999,\"%s\")"
                .replaceFirst("%s", "" + total.get("gauge"))
                .replaceFirst("%s", "" + total.get("color"));
        for (String[] sum :
            new String[][] {
              {"SUMIFS('Cut list'!H2:H999," + where, "metres"}, {"COUNTIFS(" + where, "wires"}
            }) {
          cell.setCellFormula(sum[0]);
          evaluator.notifyUpdateCell(cell);
          assertEquals(
              evaluator.evaluate(cell).getNumberValue(),
              Double.parseDouble("" + total.get(sum[1])),
              1e-9,
              where);
        }
      }
    }
  }

  private static List<Map<String, Object>> totals(String json) throws IOException {
    List<Map<String, Object>> totals = new ArrayList<>();
    Object listed = Optional.ofNullable(JSON.std.mapFrom(json).get("totals")).orElseThrow();
    for (Object total : (List<?>) listed) {
      totals.add(JSON.std.mapFrom(JSON.std.asString(total)));
    }
    return totals;
  }
}
