package dev.ringout.page;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.ringout.page.PageForLists.Answered;
import dev.ringout.support.Run;
import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CompletableFuture;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A wire list of any layout comes in through the page: docs/reference/bench-api.md. */
class ListsOnPageTest {
  private static final Path SAMPLE = Path.of("harness-samples/swing-bridge");

  /** Its headings say nothing of ends: see docs/how-to/import-a-list.md. */
  private static final String LIFT =
      """
      Tag,Box side,Bridge side,Color,Len
      301,J1-1,P2-1,RED,12
      302,J1-2,P2-2,BLU,12
      303,J1-3,TB1-4,BLK,7
      304,TB1-5,P2-4,GRN,7
      """;

  /** Three wires of the lamps on the bridge. */
  private static final String LAMPS =
      """
      Wire,From,From Pin,To,To Pin,Gauge,Color
      W1,J1,1,P2,1,AWG 20,RED
      W2,J1,2,P2,2,AWG 20,BLU
      W3,J1,3,P2,3,AWG 20,WHT
      """;

  @TempDir private Path folder;
  private PageForLists bench;

  @BeforeEach
  void open() throws Exception {
    bench = new PageForLists(folder.resolve("data"));
  }

  @AfterEach
  void close() {
    bench.close();
    assertEquals(List.of(), bench.failures);
  }

  @ParameterizedTest
  @ValueSource(strings = {"connector-sheets.xlsx", "net-table.csv", "cable-schedule.ods"})
  void what_other_shops_send_is_taken_as_import_writes_it(String name) throws Exception {
    Path file = SAMPLE.resolve("as-received").resolve(name);
    Answered list = bench.handIn(file).isList();
    assertEquals("sure", list.text("state"));
    assertEquals("false", list.text("ours"));
    assertEquals(100, list.list("wires").size());
    assertFalse(list.list("remarks").isEmpty());

    Answered taken = bench.take(list).isList();
    assertEquals("true", taken.text("taken"));
    Path written = folder.resolve("written.xlsx");
    assertEquals(0, Run.of("import", file, "-o", written).code());
    assertArrayEquals(
        Files.readAllBytes(written),
        Files.readAllBytes(bench.takenFile(name.replaceFirst("\\..*", ".xlsx"))));
    assertTrue(bench.get("/api/units").each("lists", "id").contains(taken.text("list")));
  }

  @Test
  void what_was_understood_is_told_table_by_table_and_wire_by_wire() throws Exception {
    Answered list = bench.handIn("lamps.csv", LAMPS).isList();
    assertEquals(
        List.of(
            "lamps A:G: a row is a wire from one point to another (headings in row 1).",
            "lamps A:G: A Wire is Wire (certain), B From is From (certain), C From Pin is From Pin"
                + " (certain), D To is To (certain), E To Pin is To Pin (certain), F Gauge is Gauge"
                + " (certain), G Color is Color (certain).",
            "lamps A:G: 4 rows: 3 wire, 1 heading.",
            "In all 3 wires.",
            "lamps: 21 in wires, 7 in headings of 28 filled cells."),
        list.list("says"));
    assertEquals(
        "W1 runs from J1 terminal 1 to P2 terminal 1, AWG 20, RED",
        list.each("wires", "sentence").get(0));
    assertEquals("lamps.csv!2", list.each("wires", "place").get(0));
    assertEquals(list.text(), bench.get("/api/lists/" + list.text("id")).isList().text());
  }

  @Test
  void a_list_that_can_be_read_in_several_ways_is_settled_by_one_of_its_choices() throws Exception {
    Answered unsure = bench.handIn("lift.csv", LIFT).isList();
    assertEquals("unsure", unsure.text("state"));
    assertEquals(
        List.of(
            "301 runs from P2 terminal 1 to J1 terminal 1",
            "302 runs from P2 terminal 2 to J1 terminal 2",
            "303 runs from TB1 terminal 4 to J1 terminal 3"),
        ((Map<?, ?>) unsure.list("choices").get(1)).get("first"));
    assertTrue(bench.take(unsure).isRefused(400).text().contains("say first how it is meant"));

    Answered sure =
        bench.read(unsure, unsure.choice("a row is a wire from one point to another")).isList();
    assertEquals("sure", sure.text("state"));
    assertEquals(unsure.text("id"), sure.text("id"));
    assertEquals(
        "301 runs from P2 terminal 1 to J1 terminal 1, RED", sure.each("wires", "sentence").get(0));

    // Lengths without a unit are asked for as well, and nothing that was said before is forgotten.
    Answered lengths = bench.read(sure, sure.choice("are in ft")).isList();
    assertEquals(List.of("--layout", "from-to", "--length-unit", "ft"), lengths.list("options"));
    assertEquals(List.of(), lengths.list("problems"));
    assertEquals("true", bench.take(lengths).isList().text("taken"));
  }

  @Test
  void gauges_without_a_unit_are_asked_for() throws Exception {
    Answered asked = bench.handIn("lamps.csv", LAMPS.replace("AWG 20", "0.75")).isList();
    assertEquals("sure", asked.text("state"));
    Answered said = bench.read(asked, asked.choice("Gauges without a unit are in mm2")).isList();
    assertEquals(List.of("--gauge-unit", "mm2"), said.list("options"));
    assertEquals(
        "W1 runs from J1 terminal 1 to P2 terminal 1, 0.75 mm², RED",
        said.each("wires", "sentence").get(0));
    assertEquals(List.of(), said.list("choices"));
  }

  @Test
  void columns_can_be_said_by_the_names_that_the_list_is_answered_with() throws Exception {
    Answered unsure = bench.handIn("lift.csv", LIFT).isList();
    List<String> names = unsure.each("columns", "name");
    assertEquals(List.of("lift!A", "lift!B", "lift!C", "lift!D", "lift!E"), names);
    assertTrue(unsure.list("roles").containsAll(List.of("From", "To", "Keep")));
    Answered said =
        bench
            .read(
                unsure,
                List.of("--column", names.get(1) + "=From", "--column", names.get(2) + "=To"))
            .isList();
    assertEquals("sure", said.text("state"));
    assertEquals(
        "301 runs from J1 terminal 1 to P2 terminal 1, RED", said.each("wires", "sentence").get(0));
    assertEquals(
        List.of("certain", "said", "said", "certain", "certain"),
        said.each("columns", "certainty"));
  }

  @Test
  void a_column_that_may_change_the_wires_is_settled_on_the_page() throws Exception {
    Answered asked =
        bench.handIn(
            "strip.csv",
            """
            Wire,From,From Pin,To,To Pin,Bridge
            W1,J1,1,X1,1,2
            W2,J1,2,X1,3,
            """);
    Answered chosen =
        bench.read(asked, asked.isList().choice("a row is a wire from one point to another"));
    assertEquals("refused", chosen.isList().text("state"));
    assertEquals(List.of("strip.csv!F1"), chosen.each("problems", "place"));

    List<Object> options = new ArrayList<>(chosen.list("options"));
    options.addAll(List.of("--column", chosen.each("columns", "name").get(5) + "=Keep"));
    assertEquals("sure", bench.read(chosen, options).isList().text("state"));
  }

  @Test
  void options_that_say_nothing_right_change_nothing() throws Exception {
    Answered list = bench.handIn("lift.csv", LIFT).isList();
    for (List<String> wrong :
        List.of(
            List.of("--profile", "/etc/hostname"),
            List.of("--words", "/etc/hostname"),
            List.of("-o", "/tmp/x.xlsx"),
            List.of("--layout"),
            List.of("--layout", "sideways"),
            List.of("--column", "E=Nonsense"),
            List.of("--heading-row", "99999999999"),
            List.of("--separator", ""),
            List.of("layout", "from-to"))) {
      bench.read(list, wrong).isRefused(400);
    }
    bench.read(list, List.of(1)).isRefused(400);
    Answered nothing = bench.read(list, List.of("--sheet", "Other")).isList();
    assertEquals("refused", nothing.text("state"));
    assertEquals("unsure", bench.read(list, List.of()).isList().text("state"));
  }

  @Test
  void a_row_that_may_be_a_wire_and_is_not_read_keeps_the_list_out() throws Exception {
    Answered list = bench.handIn("lamps.csv", LAMPS.replace("W3,J1,3", "W3,J1,3?")).isList();
    assertEquals("refused", list.text("state"));
    assertTrue(list.each("problems", "place").contains("lamps.csv!C4"), list.text());
    assertTrue(
        list.list("says").stream()
            .anyMatch(said -> ("" + said).startsWith("1 row could not be read and may be wires")),
        list.text());
    Answered refused = bench.take(list).isRefused(400);
    assertEquals(List.of("lamps.csv", "lamps.csv!C4"), refused.each("problems", "place"));
    assertEquals(List.of(), bench.get("/api/units").list("lists"));
  }

  @Test
  void a_harness_file_in_kbl_comes_in_as_well() throws Exception {
    Answered list = bench.handIn(Path.of("src/test/resources/kbl/swing-bridge.kbl")).isList();
    assertEquals(
        List.of(
            "SB-100 Swing bridge: a connection is a wire between contacts of two items.",
            "SB-100 Swing bridge: 4 connections: 4 wire.",
            "In all 4 wires; 1 pin listed without a wire."),
        list.list("says"));
    assertEquals("true", bench.take(list).isList().text("taken"));
  }

  @Test
  void our_own_file_is_taken_as_it_is() throws Exception {
    Path box = SAMPLE.resolve("junction-box.xlsx");
    Answered list = bench.handIn(box).isList();
    assertEquals("true", list.text("ours"));
    assertEquals("sure", list.text("state"));
    assertEquals("HSB-2210", list.text("drawing"));
    assertEquals("B", list.text("revision"));
    bench.read(list, List.of("--layout", "from-to")).isRefused(400);

    Answered taken = bench.take(list).isList();
    assertArrayEquals(
        Files.readAllBytes(box), Files.readAllBytes(bench.takenFile("junction-box.xlsx")));
    assertEquals(taken.text("list"), bench.take(bench.handIn(box)).text("list"));
    assertEquals(1, bench.files("taken").size());
  }

  @Test
  void a_unit_is_begun_on_a_taken_list_and_outlives_the_bench() throws Exception {
    Answered taken = bench.take(bench.handIn("lamps.csv", LAMPS)).isList();
    Answered state =
        bench.post(
            "/api/session/start",
            Map.of("list", taken.text("list"), "serial", "L-1", "tester", "M. Osei"));
    assertEquals(200, state.status(), state.text());
    Object step = state.inside("session", "step", "id");
    Answered read = bench.post("/api/session/take", Map.of("step", step, "typed", "0.02 Ω"));
    assertTrue(read.text().contains("\"raw\":\"0.02 Ω\""), read.text());

    bench.close();
    bench = new PageForLists(folder.resolve("data"));
    Answered units = bench.get("/api/units");
    assertEquals(List.of("L-1"), units.each("units", "serial"));
    assertEquals(List.of(taken.text("list")), units.each("lists", "id"));
    bench.get("/api/lists/" + taken.text("id")).isRefused(404);
  }

  @Test
  void what_changes_towards_the_next_revision_is_told_as_diff_tells_it() throws Exception {
    Path before = SAMPLE.resolve("junction-box.xlsx");
    Path after = SAMPLE.resolve("junction-box-c.xlsx");
    String list = bench.take(bench.handIn(before)).text("list");
    String next = bench.take(bench.handIn(after)).text("list");
    bench.post("/api/session/start", Map.of("list", list, "serial", "0418", "tester", "M. Osei"));
    String unit = bench.get("/api/units").each("units", "id").get(0);
    Answered diff = bench.post("/api/units/" + unit + "/diff", Map.of("list", next));
    assertEquals(200, diff.status());
    assertEquals(Run.of("diff", before, after, "--json").out(), diff.text());
    bench.post("/api/units/" + unit + "/diff", Map.of("list", "none")).isRefused(404);
    bench.post("/api/units/none/diff", Map.of("list", next)).isRefused(404);
  }

  @Test
  void a_taken_list_that_was_changed_behind_the_bench_is_not_compared_with() throws Exception {
    String list = bench.take(bench.handIn("lamps.csv", LAMPS)).text("list");
    bench.post("/api/session/start", Map.of("list", list, "serial", "L-1", "tester", "M. Osei"));
    String unit = bench.get("/api/units").each("units", "id").get(0);
    Files.copy(
        SAMPLE.resolve("junction-box.xlsx"),
        bench.takenFile("lamps.xlsx"),
        StandardCopyOption.REPLACE_EXISTING);
    bench.post("/api/units/" + unit + "/diff", Map.of("list", list)).isRefused(409);
  }

  @Test
  void no_name_leads_out_of_the_folder_of_lists() throws Exception {
    for (String name :
        List.of(
            "../../../ringout.db",
            "..\\..\\lamps.csv",
            "/etc/passwd",
            "..",
            "",
            "CON.csv",
            "nul",
            "<script>alert(1)</script>.csv",
            "unit:0418",
            "unit=0418",
            "-o.csv",
            "harness",
            ".harness",
            "W\u00fcrfel \ud83d\ude00.csv",
            "lamps.csv.")) {
      Answered list = bench.handIn(name, LAMPS).isList();
      assertEquals("sure", list.text("state"), list.text());
      assertFalse(list.text("file").matches(".*[<>:\"/\\\\|?*].*|(CON|nul).*"), list.text("file"));
    }
    for (String file : bench.files("")) {
      assertTrue(file.matches("received/[^/]+/(\\.harness/)?[^/]+"), file);
    }
    assertEquals(30, bench.files("").size());
    assertEquals(
        30, bench.filesOfBench().stream().filter(file -> !file.startsWith("ringout.db")).count());
  }

  @Test
  void a_long_name_is_cut_in_its_middle() throws Exception {
    Answered list = bench.handIn("l".repeat(5000) + ".csv", LAMPS).isList();
    assertEquals("l".repeat(60) + ".csv", list.text("file"));
  }

  @Test
  void what_is_no_list_is_refused_with_its_reason() throws Exception {
    for (byte[] content :
        List.of(
            new byte[0],
            "%PDF-1.7\n%\u00e2\u00e3\n".getBytes(StandardCharsets.ISO_8859_1),
            new byte[100_000],
            "just some words".getBytes(StandardCharsets.UTF_8),
            zip("xl/workbook.xml", 64))) {
      Answered list = bench.handIn("lamps.xlsx", content).isList();
      assertEquals("refused", list.text("state"), list.text());
      bench.take(list).isRefused(400);
    }
    assertEquals("refused", bench.handIn(SAMPLE.resolve("point-to-point.xlsx")).text("state"));
  }

  /** A part of so many MiB of nothing. */
  private static byte[] zip(String part, int mib) throws Exception {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ZipOutputStream zip = new ZipOutputStream(bytes)) {
      zip.putNextEntry(new ZipEntry(part));
      for (int i = 0; i < mib; i++) {
        zip.write(new byte[1024 * 1024]);
      }
    }
    return bytes.toByteArray();
  }

  @Test
  void two_of_one_name_at_once_stay_two() throws Exception {
    List<CompletableFuture<Answered>> both = new ArrayList<>();
    for (String colour : List.of("RED", "YEL")) {
      both.add(
          CompletableFuture.supplyAsync(
              () -> {
                try {
                  return bench.handIn("lamps.csv", LAMPS.replace("RED", colour));
                } catch (Exception e) {
                  throw new IllegalStateException(e);
                }
              }));
    }
    Answered one = both.get(0).get().isList();
    Answered other = both.get(1).get().isList();
    assertNotEquals(one.text("id"), other.text("id"));
    assertTrue(one.each("wires", "sentence").get(0).endsWith("RED"));
    assertTrue(other.each("wires", "sentence").get(0).endsWith("YEL"));
    assertNotEquals(bench.take(one).text("list"), bench.take(other).text("list"));
  }

  @Test
  void the_newest_twenty_are_kept_and_what_was_taken_stays() throws Exception {
    Answered first = bench.handIn("first.csv", LAMPS).isList();
    String taken = bench.take(first).text("list");
    for (int i = 0; i < 20; i++) {
      bench.handIn("none.csv", "nothing");
    }
    bench.get("/api/lists/" + first.text("id")).isRefused(404);
    assertEquals(20, bench.files("received").size());
    assertEquals(List.of(taken), bench.get("/api/units").each("lists", "id"));
    for (String stranger : List.of("1", "..", "received", "0".repeat(36))) {
      bench.post("/api/lists/" + stranger + "/take", Map.of());
    }
  }
}
