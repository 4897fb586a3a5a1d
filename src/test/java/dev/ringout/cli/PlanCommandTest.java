package dev.ringout.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.jr.ob.JSON;
import com.networknt.schema.InputFormat;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import dev.ringout.support.Run;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.ss.usermodel.Workbook;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PlanCommandTest {
  private static final Path BRIDGE = Path.of("harness-samples/swing-bridge/junction-box.xlsx");
  private static final double OPEN_OHMS = 100_000;

  @TempDir Path folder;

  private Path planned() {
    Path sheet = folder.resolve("sheet.xlsx");
    Run run = Run.of("plan", BRIDGE, "-o", sheet);
    assertEquals(0, run.code(), run.err());
    return sheet;
  }

  /** Every step read as it should be on a good unit. */
  private Path filled(Path sheet, int leaveBlank) throws IOException {
    Path filled = folder.resolve("filled.xlsx");
    try (InputStream in = Files.newInputStream(sheet);
        Workbook workbook = new XSSFWorkbook(in)) {
      fill(workbook.getSheet("Continuity"), leaveBlank);
      fill(workbook.getSheet("Insulation"), 0);
      try (OutputStream out = Files.newOutputStream(filled)) {
        workbook.write(out);
      }
    }
    return filled;
  }

  private static void fill(Sheet sheet, int leaveBlank) {
    boolean volts = column(sheet, "Volts") >= 0;
    int left = leaveBlank;
    for (Row row : sheet) {
      boolean isStep = row.getCell(0).getCellType() == CellType.NUMERIC;
      if (!isStep || left-- > 0) {
        continue;
      }
      Cell into = row.getCell(column(sheet, "Reading"));
      double from = number(row.getCell(column(sheet, volts ? "Least (MΩ)" : "Least (Ω)")));
      double to = volts ? Double.NaN : number(row.getCell(column(sheet, "Most (Ω)")));
      if (!Double.isNaN(to)) {
        into.setCellValue(((Double.isNaN(from) ? 0 : from) + to) / 2);
      } else if (!volts && from >= OPEN_OHMS) {
        into.setCellValue("OL");
      } else {
        into.setCellValue(2 * from);
      }
    }
  }

  private static int column(Sheet sheet, String heading) {
    for (Cell cell : sheet.getRow(0)) {
      if (cell.getStringCellValue().equals(heading)) {
        return cell.getColumnIndex();
      }
    }
    return -1;
  }

  private static double number(Cell cell) {
    return cell.getCellType() == CellType.NUMERIC ? cell.getNumericCellValue() : Double.NaN;
  }

  @Test
  void the_sheet_filled_in_on_a_good_unit_conforms_and_proves_everything() throws IOException {
    Run run = Run.of("check", BRIDGE, filled(planned(), 0));
    assertEquals("", run.err());
    assertTrue(run.out().startsWith("CONFORMS."), run.out());
    assertEquals(0, run.code());
  }

  @Test
  void what_was_left_blank_is_planned_by_itself_and_completes_the_proof() throws IOException {
    Path half = filled(planned(), 40);
    assertEquals(2, Run.of("check", BRIDGE, half).code());
    Path rest = folder.resolve("rest.xlsx");
    Run run = Run.of("plan", BRIDGE, "--after", half, "-o", rest);
    assertEquals(0, run.code(), run.err());
    assertEquals("Written: " + rest + ", 40 steps\n", run.out(), "and not the kit again");
    try (InputStream in = Files.newInputStream(rest);
        Workbook workbook = new XSSFWorkbook(in)) {
      int steps = workbook.getSheet("Continuity").getLastRowNum();
      assertTrue(steps > 0 && steps <= 42, steps + " steps");
    }
  }

  @Test
  void the_same_unit_gives_the_same_bytes() throws IOException {
    for (String name : List.of("sheet.xlsx", "sheet.pdf", "sheet.html")) {
      Path one = folder.resolve("one-" + name);
      Path other = folder.resolve("other-" + name);
      assertEquals(0, Run.of("plan", BRIDGE, "-o", one).code());
      assertEquals(0, Run.of("plan", BRIDGE, "-o", other).code());
      assertArrayEquals(Files.readAllBytes(one), Files.readAllBytes(other), name);
    }
  }

  @Test
  void paper_has_the_cautions_the_revision_and_the_unit_s_name() throws IOException {
    Path page = folder.resolve("sheet.html");
    assertEquals(0, Run.of("plan", BRIDGE, "-o", page).code());
    String html = Files.readString(page);
    assertTrue(html.contains("No insulation test near fuel vapour"), "cautions");
    assertTrue(html.contains("HSB-2210, revision B"), "revision");
    assertTrue(html.contains("does not replace your approved procedure"), "deferral");
    Path pdf = folder.resolve("sheet.pdf");
    assertEquals(0, Run.of("plan", BRIDGE, "-o", pdf).code());
    byte[] bytes = Files.readAllBytes(pdf);
    assertEquals("%PDF", new String(bytes, 0, 4, StandardCharsets.US_ASCII));
  }

  @Test
  void a_filled_sheet_is_never_written_over() throws IOException {
    Path sheet = planned();
    byte[] before = Files.readAllBytes(sheet);
    Run run = Run.of("plan", BRIDGE, "--no-insulation", "-o", sheet);
    assertEquals(73, run.code());
    assertArrayEquals(before, Files.readAllBytes(sheet));
    assertEquals(0, Run.of("plan", BRIDGE, "--no-insulation", "-o", sheet, "--force").code());
  }

  @Test
  void an_item_or_a_wire_that_is_not_there_is_refused_with_the_nearest() {
    Run item = Run.of("plan", BRIDGE, "--only", "J11");
    assertEquals(64, item.code());
    assertTrue(item.err().contains("the harness has no item J11"), item.err());
    Run wire = Run.of("plan", BRIDGE, "--touched", "W0I2");
    assertEquals(64, wire.code());
    assertTrue(wire.err().contains("maybe W012"), wire.err());
    assertEquals(64, Run.of("plan", BRIDGE, "-o", "sheet.ods").code());
  }

  @Test
  void json_has_every_step_and_the_coverage() throws IOException {
    Run run = Run.of("plan", BRIDGE, "--json");
    Map<String, Object> document = JSON.std.mapFrom(run.out());
    assertEquals("ringout-plan/1", document.get("format"));
    assertTrue(
        document.get("steps") instanceof List<?> steps
            && steps.size() > 200
            && steps.get(0) instanceof Map<?, ?> first
            && Integer.valueOf(1).equals(first.get("step"))
            && first.get("from") instanceof List<?> from
            && !from.isEmpty(),
        run.out().substring(0, 400));
    assertTrue(document.get("coverage") instanceof Map<?, ?>, "coverage");
  }

  @Test
  void json_follows_its_schema() throws IOException {
    var schema =
        SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
            .getSchema(Files.readString(Path.of("docs/reference/plan.schema.json")));
    for (Run run :
        List.of(
            Run.of("plan", BRIDGE, "--json"),
            Run.of("plan", BRIDGE, "--json", "--no-insulation", "--apart", "NEIGHBOURS"),
            Run.of("plan", BRIDGE, "--json", "--touched", "W012"),
            Run.of("plan", Path.of("README.md"), "--json"))) {
      assertEquals(List.of(), schema.validate(run.out(), InputFormat.JSON), run.out());
    }
    assertFalse(
        schema.validate("{\"format\":\"ringout-plan/1\"}", InputFormat.JSON).isEmpty(),
        "the schema can fail");
  }

  private List<String> plannedJobRows(String... more) throws IOException {
    Path sheets = folder.resolve("job-" + more.length);
    List<Object> words = new ArrayList<>(List.of("plan", BRIDGE, "-o", sheets + "/"));
    words.addAll(List.of(more));
    assertEquals(0, Run.of(words.toArray()).code());
    Run read = Run.of("check", BRIDGE, sheets);
    assertEquals("", read.err(), "a name that check does not know would be a warning");
    return Files.readAllLines(sheets.resolve("job.csv")).stream()
        .skip(1)
        .map(line -> line.split(",", -1))
        .map(cells -> cells[0] + "," + cells[1])
        .toList();
  }

  @Test
  void the_job_is_printed_with_each_instrument_by_itself_and_every_name_is_read_again()
      throws IOException {
    assertEquals(
        List.of(
            "serial number,",
            "date,",
            "revision,B",
            "drawing,HSB-2210",
            "procedure,",
            "operator,",
            "inspector,",
            "temperature,",
            "humidity,",
            "instrument,",
            "instrument number,",
            "calibration due,",
            "continuity range,",
            "meter accuracy,",
            "meter resolution,",
            "lead null,",
            "insulation instrument,",
            "insulation instrument number,",
            "insulation calibration due,",
            "insulation range,"),
        plannedJobRows());
  }

  @Test
  void without_insulation_steps_no_insulation_tester_is_asked_for() throws IOException {
    assertTrue(
        plannedJobRows("--no-insulation").stream().noneMatch(row -> row.contains("insulation")));
  }

  /** 0418 typed into a cell for numbers becomes 418, another serial number. */
  @Test
  void what_is_typed_beside_a_job_row_stays_as_typed() throws IOException {
    try (InputStream in = Files.newInputStream(planned());
        Workbook workbook = new XSSFWorkbook(in)) {
      Row serial = workbook.getSheet("Job").getRow(1);
      assertEquals("serial number", serial.getCell(0).getStringCellValue());
      assertEquals("@", serial.getCell(1).getCellStyle().getDataFormatString());
    }
  }

  @Test
  void paper_has_the_job_with_room_to_write() throws IOException {
    Path page = folder.resolve("job.html");
    assertEquals(0, Run.of("plan", BRIDGE, "-o", page).code());
    String html = Files.readString(page);
    assertTrue(
        html.contains(
            "insulation calibration due</td><td class=\"fill words\" style=\"height: 9mm\"></td>"),
        "room to write");
    assertTrue(
        html.contains("revision</td><td class=\"fill words\" style=\"height: 9mm\">B</td>"),
        "revision");
    assertTrue(html.contains("on the sheet Job as lead null"), "the name that is read");
  }

  @Test
  void a_folder_of_csv_is_a_readings_file_too() {
    Path sheets = folder.resolve("sheets");
    assertEquals(0, Run.of("plan", BRIDGE, "-o", sheets + "/").code());
    Run run = Run.of("check", BRIDGE, sheets);
    assertEquals(2, run.code(), run.err());
    assertTrue(run.out().contains("0 conform, 0 fail"), run.out());
  }

  /** The table of docs/how-to/retest-after-rework.md, counted. */
  @Test
  void what_a_retest_takes_is_as_its_page_says() throws IOException {
    Path good = Path.of("harness-samples/swing-bridge/point-to-point-clean.xlsx");
    Path list = Path.of("harness-samples/swing-bridge/junction-box.xlsx");
    Path first = folder.resolve("first");
    Path again = folder.resolve("again");
    assertEquals(0, Run.of("plan", list, "-o", first + "/").code());
    assertEquals(
        0, Run.of("plan", list, "--touched", "W043", "--after", good, "-o", again + "/").code());
    String page = Files.readString(Path.of("docs/how-to/retest-after-rework.md"));
    assertTrue(
        page.contains("| readings to write down | " + steps(first) + " | " + steps(again) + " |"),
        steps(first) + " " + steps(again));
    assertTrue(
        page.contains(
            "| cells of the sheet Job to fill in | "
                + toFill(first)
                + " | "
                + toFill(again)
                + " |"),
        toFill(first) + " " + toFill(again));
  }

  private static int steps(Path sheet) throws IOException {
    return Files.readAllLines(sheet.resolve("continuity.csv")).size()
        + Files.readAllLines(sheet.resolve("insulation.csv")).size()
        - 2;
  }

  /** The rows of the sheet Job that the good unit's tester filled in, and that are still blank. */
  private static long toFill(Path sheet) throws IOException {
    Set<String> written =
        Set.of(
            "serial number",
            "date",
            "procedure",
            "operator",
            "inspector",
            "temperature",
            "humidity",
            "instrument",
            "instrument number",
            "calibration due",
            "continuity range",
            "meter accuracy",
            "meter resolution",
            "lead null",
            "insulation range");
    return Files.readAllLines(sheet.resolve("job.csv")).stream()
        .filter(row -> written.contains(row.split(",", -1)[0]) && row.split(",", -1)[1].isEmpty())
        .count();
  }
}
