package dev.ringout.intake;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.ringout.harness.Harness;
import dev.ringout.sheet.TabularFile;
import dev.ringout.source.Problem;
import dev.ringout.source.Problems;
import dev.ringout.source.Severity;
import dev.ringout.source.UnusableInput;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import org.apache.poi.hssf.usermodel.HSSFWorkbook;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.ss.usermodel.Workbook;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class FilesTest {
  @TempDir Path folder;

  private final Problems problems = new Problems();

  private Harness read(Path file) throws IOException, UnusableInput {
    String name = String.valueOf(file.getFileName());
    try (TabularFile table = TabularFile.open(file, name, problems)) {
      return HarnessReader.read(table, name, problems);
    }
  }

  private Harness readCsv(String text, Charset charset) throws IOException, UnusableInput {
    Path file = folder.resolve("wires.csv");
    Files.writeString(file, text, charset);
    return read(file);
  }

  private List<String> errors() {
    return problems.list().stream()
        .filter(problem -> problem.severity() == Severity.ERROR)
        .map(problem -> problem.place().cell() + ": " + problem.sentence())
        .toList();
  }

  @Test
  void every_problem_is_reported_with_its_cell_and_heading_not_only_the_first() throws Exception {
    readCsv(
        """
        Wire,From,To,Gauge,Length
        W1,J1-A,P2-1,2O,4 ft
        W2,J1-B,J1-B,20,4 ft
        W3,J1,P2-3,20,4
        W4,J1-D,,20,4 ft
        """,
        StandardCharsets.UTF_8);

    assertEquals(
        List.of(
            "D2: \"2O\" is not a gauge; write one such as 20, AWG 20, 4/0, 0.75 mm²; maybe 20",
            "C3: the wire goes from J1-B to itself",
            "B4: \"J1\" names no pin; write a point such as J1-A or a pin beside it",
            "E4: \"4\" has no unit; write it in the cell or in the heading: Length (ft)",
            "C5: a wire needs a point at each end; give a stowed or spare end a point of its own"),
        errors());
    assertEquals("Gauge", problems.list().get(0).heading());
  }

  @Test
  void columns_may_stand_in_any_order_and_unknown_ones_are_kept_as_notes() throws Exception {
    Harness harness =
        readCsv(
            "To Pin,TO,Reel no.,from,FROM PIN,wire\n1,P2,R-17,J1,a,W1\n", StandardCharsets.UTF_8);

    assertEquals("J1-a", harness.wires().get(0).from().toString());
    assertEquals("R-17", harness.wires().get(0).notes().get("Reel no."));
    assertTrue(problems.list().isEmpty(), problems.list().toString());
  }

  @Test
  void semicolons_tabs_and_every_usual_encoding_are_read() throws Exception {
    String text = "Wire;From;To;Gauge\nW1;J1-A;P2-1;0,75 mm²\n";
    for (Charset charset :
        List.of(StandardCharsets.UTF_8, StandardCharsets.UTF_16, Charset.forName("windows-1252"))) {
      Harness harness = readCsv(text, charset);
      assertEquals("0.75 mm²", harness.wires().get(0).gauge().orElseThrow().label());
    }
    assertEquals(1, readCsv("\uFEFF" + text, StandardCharsets.UTF_8).wires().size());
    assertEquals(1, readCsv(text.replace(';', '\t'), StandardCharsets.UTF_8).wires().size());
    assertTrue(
        problems.list().stream().anyMatch(one -> one.text().contains("Windows-1252")),
        "a guessed encoding is said");
  }

  @Test
  void blanks_that_cannot_be_seen_are_ignored_and_counted() throws Exception {
    Harness harness =
        readCsv("From,To\n\u00A0J1-A,P2-1\u200B\nJ1-A ,P2-2\n", StandardCharsets.UTF_8);

    assertEquals(harness.wires().get(0).from(), harness.wires().get(1).from());
    assertTrue(
        problems.list().stream()
            .map(Problem::text)
            .anyMatch("blanks around the text of 2 cells were ignored"::equals));
  }

  @Test
  void a_pin_that_a_spreadsheet_made_a_date_of_is_reported() throws Exception {
    Path file = folder.resolve("harness.xlsx");
    try (Workbook workbook = new XSSFWorkbook()) {
      Sheet sheet = workbook.createSheet("Wires");
      heading(sheet, "From", "From Pin", "To", "To Pin");
      Row row = sheet.createRow(1);
      row.createCell(0).setCellValue("J1");
      CellStyle date = workbook.createCellStyle();
      date.setDataFormat((short) 14);
      row.createCell(1).setCellValue(LocalDate.of(2026, 1, 2));
      row.getCell(1).setCellStyle(date);
      row.createCell(2).setCellValue("P2");
      row.createCell(3).setCellValue(7.0);
      write(workbook, file);
    }
    read(file);

    assertTrue(
        errors()
            .get(0)
            .startsWith("B2: the spreadsheet has changed this cell to a date (2026-01-02)"),
        errors().toString());
  }

  @Test
  void a_pin_stored_as_a_number_is_the_pin_7_never_7_point_0() throws Exception {
    for (boolean newer : new boolean[] {true, false}) {
      Path file = folder.resolve(newer ? "a.xlsx" : "a.xls");
      try (Workbook workbook = newer ? new XSSFWorkbook() : new HSSFWorkbook()) {
        Sheet sheet = workbook.createSheet("wires");
        heading(sheet, "From", "From Pin", "To", "To Pin", "Gauge");
        Row row = sheet.createRow(3);
        row.createCell(0).setCellValue("J1");
        row.createCell(1).setCellValue(7);
        row.createCell(2).setCellValue("P2");
        row.createCell(3).setCellFormula("3+5");
        row.createCell(4).setCellValue(20);
        workbook.getCreationHelper().createFormulaEvaluator().evaluateAll();
        write(workbook, file);
      }
      Harness harness = read(file);

      assertEquals(List.of(), errors());
      assertEquals("J1-7", harness.wires().get(0).from().toString());
      assertEquals("P2-8", harness.wires().get(0).to().toString());
      assertEquals("AWG 20", harness.wires().get(0).gauge().orElseThrow().label());
      assertEquals(4, harness.wires().get(0).place().row());
    }
  }

  @Test
  void a_formula_without_a_result_and_an_error_value_are_reported() throws Exception {
    Path file = folder.resolve("harness.xlsx");
    try (Workbook workbook = new XSSFWorkbook()) {
      Sheet sheet = workbook.createSheet("Wires");
      heading(sheet, "From", "To");
      Row row = sheet.createRow(1);
      row.createCell(0).setCellFormula("A1&\"-1\"");
      row.createCell(1).setCellErrorValue(org.apache.poi.ss.usermodel.FormulaError.REF.getCode());
      write(workbook, file);
    }
    read(file);

    assertTrue(
        errors().get(0).startsWith("A2: the cell holds a formula without"), errors().toString());
    assertTrue(
        errors().stream().anyMatch(one -> one.startsWith("B2: the cell holds the error #REF!")));
  }

  @Test
  void two_columns_of_one_name_are_reported_not_chosen_between() throws Exception {
    readCsv("From,To,from\nJ1-A,P2-1,J1-B\n", StandardCharsets.UTF_8);

    assertEquals(1, errors().size());
    assertTrue(
        errors().get(0).startsWith("C1: both \"From\" (A) and \"from\""), errors().toString());
  }

  @Test
  void limits_need_their_units_and_misspelt_ones_are_named() throws Exception {
    Files.writeString(folder.resolve("wires.csv"), "From,To\nJ1-A,P2-1\n");
    Files.writeString(
        folder.resolve("limits.csv"),
        "Name,Value,Unit\nclosed max,2,\ncontact,5 mΩ,\nisnulation min,10,MΩ\ntemperature,70,°F\n");
    Harness harness = read(folder);

    assertEquals(0.005, harness.limits().contactOhms());
    assertTrue(errors().get(0).contains("\"closed max\" needs its unit"), errors().toString());
    assertTrue(errors().get(1).contains("given in °C"), errors().toString());
    assertTrue(
        problems.list().stream().anyMatch(problem -> problem.maybe().equals("insulation min")));
  }

  @Test
  void switches_links_and_parts_are_read_from_a_folder() throws Exception {
    Files.writeString(folder.resolve("wires.csv"), "From,To\nS1-1,P2-1\n");
    Files.writeString(
        folder.resolve("switches.csv"), "Ref,State,Pin,To Pin\nS1,OFF,,\nS1,ON,1,2\nS1,on,3,4\n");
    Files.writeString(folder.resolve("links.csv"), "Ref,Pin,To Pin\nTB1,1,2\n,TB1-2,TB2-1\n");
    Files.writeString(
        folder.resolve("parts.csv"),
        "Ref,Pin,To Pin,Kind,Ohms\nDS1,1,2,Lamp,40\nR1,1,2,resistor,2k2\n");
    Harness harness = read(folder);

    assertEquals(List.of(), errors());
    assertEquals(List.of("OFF", "ON"), harness.switches().get(0).states());
    assertEquals(2, harness.switches().get(0).contacts().size());
    assertEquals("TB2-1", harness.links().get(1).to().toString());
    assertEquals(2200, harness.parts().get(1).ohms().orElseThrow());
  }

  private static void heading(Sheet sheet, String... names) {
    Row row = sheet.createRow(0);
    for (int column = 0; column < names.length; column++) {
      row.createCell(column).setCellValue(names[column]);
    }
  }

  private static void write(Workbook workbook, Path file) throws IOException {
    try (OutputStream out = Files.newOutputStream(file)) {
      workbook.write(out);
    }
  }
}
