package dev.ringout.cli;

import static dev.ringout.cli.SmallUnit.flat;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.ringout.support.Run;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.apache.poi.hssf.usermodel.HSSFWorkbook;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.ss.usermodel.Workbook;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Whatever a tester has put on a sheet is read as he meant it, or said to be unread: nothing that
 * speaks against a unit is dropped in silence (common practice, no source).
 */
class WhatTheTesterWroteTest {

  @TempDir Path folder;
  private SmallUnit unit = new SmallUnit(Path.of(""));

  @BeforeEach
  void unit() {
    unit = new SmallUnit(folder);
  }

  private Run check(Path sheet) throws IOException {
    return Run.of("check", unit.list(), sheet);
  }

  private static String said(Run run) {
    return flat(run.out() + run.err());
  }

  private static void assertRefused(Run run, String... sentences) {
    assertEquals(65, run.code(), run.out() + run.err());
    for (String sentence : sentences) {
      assertTrue(said(run).contains(sentence), run.err());
    }
  }

  private static void assertConforms(Run run) {
    assertEquals(0, run.code(), run.out() + run.err());
  }

  /** A good unit's workbook, in which one cell of numbers has a number format. */
  private Path formatted(boolean newer, String sheet, int column, double number, String format)
      throws IOException {
    Path file = folder.resolve(newer ? "r.xlsx" : "r.xls");
    try (Workbook book = newer ? new XSSFWorkbook() : new HSSFWorkbook();
        OutputStream out = Files.newOutputStream(file)) {
      rows(
          book.createSheet("Continuity"),
          List.of("From", "To", "Reading", "Reverse"),
          List.of("J1-A", "P1-1", 0.04, ""),
          List.of("J1-B", "P1-2", 0.04, ""),
          List.of("J1-A", "REST", "OL", ""));
      rows(
          book.createSheet("Insulation"),
          List.of("From", "To", "Volts", "Seconds", "Reading"),
          List.of("J1-A", "REST", 500, 60, 2000));
      CellStyle style = book.createCellStyle();
      style.setDataFormat(book.createDataFormat().getFormat(format));
      Cell cell = book.getSheet(sheet).getRow(1).createCell(column);
      cell.setCellValue(number);
      cell.setCellStyle(style);
      book.write(out);
    }
    return file;
  }

  private static void rows(Sheet sheet, List<?>... rows) {
    for (List<?> values : rows) {
      Row row = sheet.createRow(sheet.getPhysicalNumberOfRows());
      for (Object value : values) {
        Cell cell = row.createCell(Math.max(0, row.getLastCellNum()));
        if (value instanceof Number number) {
          cell.setCellValue(number.doubleValue());
        } else {
          cell.setCellValue(value.toString());
        }
      }
    }
  }

  /** Found as a mechanic would: a unit conformed while the sheet said "loose, does not hold". */
  @Test
  void what_is_written_beside_a_good_value_is_told_with_the_verdict() throws IOException {
    Path sheet = Files.createDirectories(folder.resolve("noted"));
    Files.writeString(
        sheet.resolve("continuity.csv"),
        """
        Step,From,To,Reading,Unit,Note
        1,J1-A,P1-1,0.04,Ω,W1 loose
        2,J1-B,P1-2,0.04,Ω,J1-A stays; W2
        3,J1-A,REST,OL,,open
        """);
    Files.writeString(
        sheet.resolve("insulation.csv"),
        "Step,From,To,Volts,Seconds,Reading,Unit\n4,J1-A,REST,500,60,2000,MΩ\n");
    Run run = check(sheet);
    assertConforms(run);
    assertTrue(said(run).contains("BEFORE YOU BELIEVE THE VERDICT"), run.out());
    assertTrue(said(run).contains("- J1-A to P1-1, 0.04 Ω: \"W1 loose\""), run.out());
    assertTrue(!run.out().contains("stays"), "what the sheet printed is not a note");
    Path record = folder.resolve("noted.html");
    assertEquals(0, Run.of("report", unit.list(), sheet, "-o", record).code());
    assertTrue(
        flat(Files.readString(record))
            .contains("The tester wrote something beside 1 reading: see the column Note."));
    assertTrue(
        flat(Run.of("check", unit.list(), sheet, "--json").out())
            .contains("\"text\" : \"W1 loose\""));
  }

  @Test
  void a_remark_on_the_sheet_job_is_told_with_the_verdict_and_in_the_record() throws IOException {
    Path sheet = unit.sheet("remarked", "remark,W2 broke off while the lid was closed");
    Run run = check(sheet);
    assertConforms(run);
    assertTrue(
        said(run).contains("- \"W2 broke off while the lid was closed\" (Job, remarked)"),
        run.out());
    Path record = folder.resolve("remarked.html");
    assertEquals(0, Run.of("report", unit.list(), sheet, "-o", record).code());
    assertTrue(
        flat(Files.readString(record)).contains("W2 broke off while the lid was closed"), "record");
  }

  @Test
  void a_comment_pinned_to_a_cell_of_readings_is_said() throws IOException {
    Path file = formatted(true, "Continuity", 2, 0.04, "General");
    try (XSSFWorkbook book = new XSSFWorkbook(Files.newInputStream(file))) {
      var sheet = book.getSheet("Continuity");
      var anchor = book.getCreationHelper().createClientAnchor();
      var comment = sheet.createDrawingPatriarch().createCellComment(anchor);
      comment.setString(book.getCreationHelper().createRichTextString("no, it was OL"));
      sheet.getRow(1).getCell(2).setCellComment(comment);
      try (OutputStream out = Files.newOutputStream(file)) {
        book.write(out);
      }
    }
    Run run = check(file);
    assertTrue(
        said(run)
            .contains("C2: a comment is pinned to this cell and is not read: \"no, it was OL\""),
        run.err());
  }

  /** ECMA-376 part 1, 18.8.31: a number format may hold texts of its own. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "true|Continuity|2|0.036|0.000\" kΩ\"|0.036 kΩ",
        "true|Continuity|2|0.036|\"OL\"|OL",
        "true|Continuity|2|0.036|0.000\\ \\M\\Ω|0.036 MΩ",
        "true|Continuity|2|0.036|[<1]\"OL\";0.0|OL",
        "true|Continuity|2|0.036|[$kΩ-409] 0.000|0.036",
        "true|Continuity|2|0.036|;;;|;;;",
        "true|Continuity|3|0.036|0.000\" V\"|0.036 V",
        "true|Insulation|4|2000|0\" kΩ\"|2000 kΩ",
        "true|Insulation|4|2000|#,##0\" Ω\"|2,000 Ω",
        "true|Insulation|4|2000|#,##0,|2",
        "true|Insulation|2|500|0.0 \"mV\"|500.0 mV",
        "true|Insulation|3|60|0\" min\"|60 min",
        "false|Insulation|4|2000|0\" kΩ\"|2000 kΩ",
        "false|Continuity|2|0.036|\"OL\"|OL"
      })
  void a_unit_that_only_the_number_format_shows_is_refused_at_its_cell(
      boolean newer, String sheet, int column, double number, String format, String shown)
      throws IOException {
    Run run = check(formatted(newer, sheet, column, number, format));
    assertRefused(
        run, shown, "by the cell's number format", sheet + "!" + (char) ('A' + column) + 2);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "General",
        "0.000",
        "#,##0.000",
        "0.00E+00",
        "##0.0E+0",
        "[Red]0.000",
        "0.000;[Red]-0.000",
        "_-* #,##0.000_-;-* #,##0.000_-;_-* \"-\"??_-;_-@_-",
        "#,##0.000 [$€-407]",
        "@",
        "0.000_);(0.000)"
      })
  void a_number_format_that_shows_the_number_alone_is_none_of_these(String format)
      throws IOException {
    assertConforms(check(formatted(true, "Continuity", 2, 0.036, format)));
    assertConforms(check(formatted(false, "Continuity", 2, 0.036, format)));
  }

  @Test
  void a_format_of_one_sign_says_nothing_of_the_others() throws IOException {
    String dashForNothing = "0.000;-0.000;\"-\"";
    assertConforms(check(formatted(true, "Continuity", 2, 0.036, dashForNothing)));
    assertRefused(check(formatted(true, "Continuity", 2, 0, dashForNothing)), "\"-\"");
  }

  @Test
  void a_limit_whose_unit_is_its_number_format_is_refused() throws IOException {
    Path file = folder.resolve("unit.xlsx");
    try (Workbook book = new XSSFWorkbook();
        OutputStream out = Files.newOutputStream(file)) {
      rows(
          book.createSheet("Wires"),
          List.of("Wire", "From", "To"),
          List.of("W1", "J1-A", "P1-1"),
          List.of("W2", "J1-B", "P1-2"));
      rows(book.createSheet("Limits"), List.of("Name", "Value"), List.of("insulation volts", 500));
      CellStyle style = book.createCellStyle();
      style.setDataFormat(book.createDataFormat().getFormat("0\" mV\""));
      book.getSheet("Limits").getRow(1).getCell(1).setCellStyle(style);
      book.write(out);
    }
    Run run = Run.of("check", file, unit.sheet("good"));
    assertRefused(run, "500 mV", "Limits!B2");
  }

  @ParameterizedTest
  @ValueSource(strings = {"retest", "continuity2", "Continuity (2)"})
  void a_sheet_of_readings_under_another_name_is_not_passed_over(String name) throws IOException {
    for (String headings : List.of("From,To,Reading", "Step,from,TO,Reading (mΩ)")) {
      Path sheet = unit.sheet("good");
      String step = headings.startsWith("Step") ? "9," : "";
      Files.writeString(sheet.resolve(name + ".csv"), headings + "\n" + step + "J1-A,P1-1,OL\n");
      assertRefused(
          check(sheet),
          "the sheet \"" + name + "\" holds readings and is not read",
          "good/" + name + ".csv");
    }
  }

  @Test
  void a_title_above_their_headings_hides_no_readings() throws IOException {
    Path sheet = unit.sheet("good");
    Files.writeString(
        sheet.resolve("retest.csv"), "Retest after repair\n\nFrom,To,Reading\nJ1-A,P1-1,OL\n");
    assertRefused(check(sheet), "\"retest\" holds readings and is not read");
  }

  @Test
  void a_sheet_of_something_else_is_named_in_a_note() throws IOException {
    Path sheet = unit.sheet("good");
    Files.writeString(sheet.resolve("tools.csv"), "Tool,From,To\ncrimper,store,bench\n");
    Run run = check(sheet);
    assertConforms(run);
    assertTrue(said(run).contains("the sheet \"tools\" is not read"), run.err());
  }

  /** A good unit's continuity sheet with a column of the tester's own at its right. */
  private Path withColumn(String heading, String cell) throws IOException {
    Path sheet = unit.sheet("good");
    Files.writeString(
        sheet.resolve("continuity.csv"),
        "From,To,Reading,Unit,"
            + heading
            + "\nJ1-A,P1-1,0.04,Ω,"
            + cell
            + "\nJ1-B,P1-2,0.04,Ω,\nJ1-A,REST,OL,,\n");
    return sheet;
  }

  /** Found by an attacker: an expired meter under a name of one's own, and a verdict beside it. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "result,FAIL",
        "verdict,rejected",
        "calibrated until,2020-01-01",
        "next calibration,2020-01-01",
        "calibration expired,yes",
        "insulation tester calibration due,2020-01-01"
      })
  void what_would_keep_a_unit_from_conforming_is_refused_under_a_name_that_is_not_read(String row)
      throws IOException {
    assertRefused(
        check(unit.sheet("r", "date,2026-11-30", row)),
        "job.csv!A4",
        "is not a name that the sheet Job knows");
  }

  @ParameterizedTest
  @ValueSource(strings = {"calibration certificate,4711", "calibrated by,the lab", "bench,3"})
  void what_else_stands_on_the_sheet_job_under_a_name_of_one_s_own_is_told(String row)
      throws IOException {
    Run run = check(unit.sheet("r", "date,2026-11-30", row));
    assertConforms(run);
    assertTrue(said(run).contains("is not a name that the sheet Job knows"), run.err());
  }

  /** Found by an attacker: wires of a second sheet were asked for by nobody. */
  @ParameterizedTest
  @ValueSource(strings = {"wires (2)", "Wires2", "cable 2", "old"})
  void wires_on_a_sheet_of_another_name_are_not_passed_over(String name) throws IOException {
    Path list = unit.list();
    Files.writeString(
        list.resolve(name + ".csv"), "Wire,From,To,Gauge,Length\nW3,J1-C,P1-3,20,1 m\n");
    assertRefused(
        Run.of("check", list, unit.sheet("r")),
        "the sheet \"" + name + "\" holds wires and is not read; put them on the sheet Wires");
  }

  /** Found by an attacker: the retest with its open wire was put into the folder of the test. */
  @ParameterizedTest
  @ValueSource(strings = {"retest.xlsx", "Continuity.tsv", "old.xls", "more.ods"})
  void a_table_of_another_kind_in_a_folder_is_said_to_be_unread(String name) throws IOException {
    Path sheet = unit.sheet("r");
    Files.writeString(sheet.resolve(name), "From\tTo\tReading\nJ1-A\tP1-1\tOL\n");
    Files.writeString(sheet.resolve("~$" + name), "");
    Run run = check(sheet);
    assertConforms(run);
    assertTrue(said(run).contains("warning: r/" + name + ": is not read"), run.err());
    assertTrue(!run.err().contains("~$"), run.err());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "Result|FAIL",
        "Result|Failed",
        "Pass/Fail|reject",
        "Pass/Fail|NG",
        "Retest|OL",
        "Retest|open",
        "Verdict|✗",
        "Inspector|not ok",
        "QA|UNSAT",
        "Remark|short",
        "Remark|fail: flashed over",
        "Pass/Fail|F",
        "OK?|N",
        "OK|no",
        "Judgement|n.i.O.",
        "Void|x",
        "P/F|F",
        "Fail|x",
        "Failed|TRUE",
        "Good|No",
        "Passed|FALSE",
        "QA|refused",
        "Pr\u00fcfergebnis|n.i.O.",
        "i.O.|nein",
        "Deleted|yes",
        "''|BAD"
      })
  void a_word_of_failing_in_a_column_that_is_not_read_is_refused_at_its_cell(
      String heading, String word) throws IOException {
    assertRefused(
        check(withColumn(heading, word)),
        "continuity.csv!E2",
        "\"" + word + "\" is in a column that is not read",
        "write it in Reading");
  }

  @Test
  void so_it_is_on_the_insulation_sheet() throws IOException {
    Path sheet = unit.sheet("good");
    Files.writeString(
        sheet.resolve("insulation.csv"),
        "From,To,Volts,Reading,Result\nJ1-A,REST,500,2000,\"FAIL, flashed over at 300 V\"\n");
    assertRefused(check(sheet), "insulation.csv!E2", "flashed over at 300 V");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {"Note|open", "Expected|OL", "Most (Ω)|OL", "Switch|OPEN", "Wire|W1"})
  void what_should_be_read_is_no_word_of_failing(String heading, String word) throws IOException {
    assertConforms(check(withColumn(heading, word)));
  }

  @ParameterizedTest
  @ValueSource(strings = {"Result", "Pass/Fail", "Status", "Retest", "Remarks", "Comment"})
  void a_column_of_results_is_said_to_be_unread(String heading) throws IOException {
    Run run = check(withColumn(heading, "looked at it"));
    assertConforms(run);
    assertTrue(said(run).contains("the column \"" + heading + "\" is not read: 1 cell"), run.err());
  }

  @Test
  void an_insulation_reading_has_no_reverse() throws IOException {
    Path sheet = unit.sheet("good");
    Files.writeString(
        sheet.resolve("insulation.csv"), "From,To,Volts,Reading,Reverse\nJ1-A,REST,500,2000,0.1\n");
    assertRefused(check(sheet), "insulation.csv!E2", "has no reverse");
  }

  /** A good unit whose insulation row says its volts and seconds so. */
  private Path insulated(String heading, String volts, String seconds) throws IOException {
    Path sheet = unit.sheet("good");
    Files.writeString(
        sheet.resolve("insulation.csv"),
        "From,To," + heading + ",Seconds,Reading\nJ1-A,REST," + volts + "," + seconds + ",2000\n");
    return sheet;
  }

  @ParameterizedTest
  @CsvSource({
    "Volts,500 V",
    "Volts,500V",
    "Volts,500 Vdc",
    "Volts,500 V DC",
    "Volts,0.5 kV",
    "Volts,0.5kV",
    "Volts (V),500",
    "Volts DC,500",
    "Volts (kV),0.5",
    "Volts (kV),500 V"
  })
  void volts_are_understood_with_their_unit(String heading, String volts) throws IOException {
    assertConforms(check(insulated(heading, volts, "60 s")));
  }

  /** Insulation is tested with direct current; 500 mV tests nothing (common practice). */
  @ParameterizedTest
  @CsvSource({
    "Volts,500 mV",
    "Volts,500 VAC",
    "Volts,500 V ac",
    "Volts (mV),500",
    "Volts (mV),500 mV",
    "Volts AC,500",
    "Volts,0",
    "Volts,-500",
    "Volts,500 M"
  })
  void other_volts_are_refused_at_their_cell(String heading, String volts) throws IOException {
    assertRefused(check(insulated(heading, volts, "60")), "insulation.csv!C2");
  }

  @ParameterizedTest
  @CsvSource({"0.5 kV,0", "500 V DC,0", "500,0", "500 mV,65", "500 VAC,65", "0,65", "-500 V,65"})
  void so_are_the_volts_of_the_whole_sheet(String volts, int code) throws IOException {
    Path sheet = unit.sheet("good", "insulation volts," + volts);
    Files.writeString(sheet.resolve("insulation.csv"), "From,To,Reading\nJ1-A,REST,2000\n");
    Run run = check(sheet);
    assertEquals(code, run.code(), run.out() + run.err());
  }

  @Test
  void volts_in_kilovolts_are_a_limit_as_well() throws IOException {
    Path list = unit.list(List.of(), List.of());
    Files.writeString(list.resolve("limits.csv"), "Name,Value,Unit\ninsulation volts,0.5,kV\n");
    assertConforms(Run.of("check", list, unit.sheet("good")));
    Files.writeString(list.resolve("limits.csv"), "Name,Value,Unit\ninsulation volts,1,kV\n");
    assertEquals(2, Run.of("check", list, unit.sheet("good")).code());
  }

  @Test
  void nothing_is_applied_for_less_than_no_time() throws IOException {
    assertRefused(check(insulated("Volts", "500", "-60")), "insulation.csv!D2", "below 0");
  }

  @ParameterizedTest
  @CsvSource({
    "insulation volts,0 V,above 0",
    "insulation volts,-5 V,above 0",
    "insulation min,0 Ω,above 0",
    "open min,0 kΩ,above 0",
    "closed max,0 Ω,above 0",
    "tolerance,99999 %,from 0 to 100",
    "tolerance,-1 %,from 0 to 100"
  })
  void a_limit_that_anything_passes_is_none(String name, String value, String why)
      throws IOException {
    Path list = unit.list();
    Files.writeString(list.resolve("limits.csv"), "Name,Value\n" + name + "," + value + "\n");
    assertRefused(Run.of("check", list, unit.sheet("good")), "limits.csv!B2", why);
    if (name.startsWith("insulation")) {
      Files.writeString(
          list.resolve("limits.csv"), "Name,Value,Net\n" + name + "," + value + ",J1-A\n");
      assertRefused(Run.of("check", list, unit.sheet("good")), "limits.csv!B2", why);
    }
  }

  @ParameterizedTest
  @CsvSource({
    "insulation min,1 kΩ,100 MΩ",
    "insulation min,100 MΩ,1 kΩ",
    "insulation volts,50 V,500 V"
  })
  void two_limits_of_one_net_are_not_both_right(String name, String one, String other)
      throws IOException {
    Path list = unit.list();
    Files.writeString(
        list.resolve("limits.csv"),
        "Name,Value,Net\n" + name + "," + one + ",J1-A\n" + name + "," + other + ",J1-A\n");
    assertRefused(
        Run.of("check", list, unit.sheet("good")),
        "limits.csv!B3",
        name + " of J1-A is given twice: \"" + one + "\" (B2) and \"" + other + "\" (B3)");
  }

  @Test
  void one_limit_written_twice_is_one() throws IOException {
    Path list = unit.list();
    Files.writeString(
        list.resolve("limits.csv"),
        "Name,Value,Net\ninsulation min,100 MΩ,J1-A\ninsulation min,0.1 GΩ,J1-A\n");
    assertConforms(Run.of("check", list, unit.sheet("good")));
  }

  @ParameterizedTest
  @CsvSource({
    "-48,10,50,E2",
    "0,10,50,E2",
    "48,-10,50,F2",
    "48,110,50,F2",
    "48,10,0,G2",
    "48,10,-10,G2",
    "48,10,50 mV,G2"
  })
  void a_part_that_no_part_is_like_is_refused(
      String ohms, String tolerance, String volts, String cell) throws IOException {
    Path list = unit.list();
    Files.writeString(
        list.resolve("parts.csv"),
        "Ref,Pin,To Pin,Kind,Ohms,Tolerance %,Max Test Volts\n,J1-A,J1-B,winding,"
            + String.join(",", ohms, tolerance, volts)
            + "\n");
    assertRefused(Run.of("check", list, unit.sheet("good")), "parts.csv!" + cell);
  }

  /** The coarser a meter is said to be, the more it lets pass (common practice, no source). */
  @ParameterizedTest
  @CsvSource({
    "meter accuracy,100 % + 10 Ω",
    "meter accuracy,10 Ω",
    "meter accuracy,99 %",
    "meter accuracy,1000 digits",
    "meter accuracy,-5 Ω",
    "meter accuracy,0.5 % + -2 digits",
    "meter resolution,1 kΩ"
  })
  void a_meter_that_can_not_tell_joints_is_refused(String name, String value) throws IOException {
    assertRefused(
        check(unit.sheet("good", name + "," + value)),
        "job.csv!B3",
        "that is too much; at most 20 %");
  }

  @ParameterizedTest
  @CsvSource({
    "meter accuracy,±0.5 % + 2 digits",
    "meter accuracy,1 % + 3 mΩ",
    "meter resolution,1 mΩ",
    "meter resolution,0.1 Ω"
  })
  void a_meter_of_the_trade_is_not(String name, String value) throws IOException {
    assertTrue(check(unit.sheet("good", name + "," + value)).code() <= 2);
  }

  /** A unit that was open at one time and good at another, in rows the other way round. */
  private Path readTwice(String openAt, String goodAt) throws IOException {
    return unit.filled(
        "twice",
        "1,J1-A,P1-1,0.04,Ω,"
            + goodAt
            + ",\n2,J1-B,P1-2,0.04,Ω,,\n3,J1-A,REST,OL,,,\n4,J1-A,P1-1,OL,Ω,"
            + openAt
            + ",\n",
        "4,J1-A,REST,500,60,2000,MΩ\n");
  }

  @ParameterizedTest
  @CsvSource({
    "2026-11-20 9:00,2026-11-20 10:00",
    "2026-11-20 10:00 am,2026-11-20 1:00 p.m.",
    "2026-11-20 12:30 AM,2026-11-20 0:45",
    "2026-11-20 10:00 AM,2026-11-20 10:00 PM",
    "20.11.2026 10:00,21.11.2026 9:00",
    "20.11.2026,2026-11-21",
    "2026-11-20T10:00:00,2026-11-20T10:00:01"
  })
  void times_are_read_as_people_write_them(String earlier, String later) throws IOException {
    Run good = check(readTwice(earlier, later));
    assertEquals(0, good.code(), good.out() + good.err());
    assertEquals(1, check(readTwice(later, earlier)).code());
  }

  /** 3/11 is one day here and another there. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "20/11/2026 10:00",
        "11/20/2026",
        "2026-11-20 25:00",
        "13:00 PM",
        "31.2.2026",
        "2026-11-2010:00",
        "after lunch",
        "2026-11-20T10:00Z"
      })
  void a_time_that_can_not_be_read_leaves_no_reading_to_guess_by(String time) throws IOException {
    assertRefused(check(readTwice("2026-11-20 9:00", time)), "continuity.csv!F2", "is not a time");
  }

  @Test
  void a_dash_is_no_time() throws IOException {
    assertEquals(1, check(readTwice("-", "-")).code());
  }

  @Test
  void readings_that_the_spreadsheet_hides_are_named() throws IOException {
    for (boolean newer : List.of(true, false)) {
      Path file = folder.resolve(newer ? "hidden.xlsx" : "hidden.xls");
      try (Workbook book = newer ? new XSSFWorkbook() : new HSSFWorkbook();
          OutputStream out = Files.newOutputStream(file)) {
        Sheet continuity = book.createSheet("Continuity");
        rows(
            continuity,
            List.of("From", "To", "Reading"),
            List.of("J1-A", "P1-1", 0.04),
            List.of("J1-B", "P1-2", 0.04),
            List.of("J1-A", "REST", "OL"),
            List.of("J1-B", "REST", ""));
        for (int row : List.of(1, 3, 4)) {
          continuity.getRow(row).setZeroHeight(true);
        }
        Sheet insulation = book.createSheet("Insulation");
        rows(
            insulation,
            List.of("From", "To", "Volts", "Reading"),
            List.of("J1-A", "REST", 500, 2000));
        insulation.setColumnHidden(3, true);
        book.setSheetHidden(1, true);
        book.write(out);
      }
      Run run = check(file);
      assertEquals(2, run.code(), "the blank row is not tested");
      assertTrue(said(run).contains("rows 2, 4 are hidden in the spreadsheet"), run.err());
      assertTrue(said(run).contains("the sheet is hidden in the spreadsheet"), run.err());
      assertTrue(said(run).contains("column D (Reading) is hidden in the spreadsheet"), run.err());
    }
  }
}
