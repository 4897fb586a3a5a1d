package dev.ringout.intake;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.ringout.harness.Harness;
import dev.ringout.readings.Job;
import dev.ringout.readings.Reading;
import dev.ringout.readings.ReadingSet;
import dev.ringout.sheet.TabularFile;
import dev.ringout.source.Problem;
import dev.ringout.source.Problems;
import dev.ringout.source.Severity;
import dev.ringout.source.UnusableInput;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Filled test sheets, with what people get wrong on them. */
class TestSheetsTest {
  @TempDir Path folder;

  private final Problems problems = new Problems();

  @BeforeEach
  void a_list_of_three_wires_and_a_switch() throws IOException {
    Files.createDirectories(folder.resolve("unit"));
    Files.createDirectories(folder.resolve("sheet"));
    Files.writeString(
        folder.resolve("unit/wires.csv"),
        "Wire,From,To\nW1,J1-A,P2-1\nW2,J1-B,P2-2\nW3,P2-3,S1-1\n");
    Files.writeString(
        folder.resolve("unit/switches.csv"), "Ref,State,Pin,To Pin\nS1,OFF,,\nS1,ON,1,2\n");
  }

  private void write(String sheet, String... lines) throws IOException {
    Files.write(folder.resolve("sheet/" + sheet + ".csv"), List.of(lines));
  }

  private ReadingSet read() throws IOException, UnusableInput {
    Harness harness = ReadUnit.of(folder.resolve("unit"));
    ReadingsReader reader = new ReadingsReader(harness, problems);
    try (TabularFile file = TabularFile.open(folder.resolve("sheet"), "sheet", problems)) {
      reader.read(file, "sheet");
    }
    return reader.readings();
  }

  private List<String> found(Severity severity) {
    return problems.list().stream()
        .filter(problem -> problem.severity() == severity)
        .map(problem -> problem.place().cell() + ": " + problem.sentence())
        .toList();
  }

  private static List<String> subjects(ReadingSet readings) {
    return readings.readings().stream().map(Reading::subject).toList();
  }

  @Test
  void a_problem_names_the_step_and_the_points_of_its_row() throws Exception {
    write(
        "continuity",
        "Step,From,From Pin,To,To Pin,State,Reading,Time",
        "1,J1,A,P2,1,,0.3?,",
        "2,J1,B,P2,9,,0.2,",
        ",J1-B,,P2-2,,,three,",
        "4,J1,B,P2,2,S1=UP,0.2,",
        "5,,,P2,2,,0.2,",
        "6,J1,A,P2,1,,0.2,noon");
    read();

    assertEquals(
        List.of(
            "G2: step 1, J1-A to P2-1: \"0.3?\" is in doubt; read it again, or write it without the"
                + " question mark; maybe 0.3",
            "D3: step 2, J1-B to P2-9: the harness has no point P2-9; a spare cavity is listed on"
                + " the sheet Pins; maybe P2-1",
            "G4: J1-B to P2-2: \"three\" is no reading; expected one such as 0.3, 300 mΩ, 2k2, OL,"
                + " >200 M, PASS",
            "F5: step 4, J1-B to P2-2: S1 has no position UP; it has OFF, ON",
            "B6: step 5, to P2-2: a reading needs a point on each side"),
        found(Severity.ERROR));
    assertEquals(
        List.of(
            "H7: step 6, J1-A to P2-1: \"noon\" is no time that is read here (2026-11-25 14:30, or"
                + " 14:30); the order of the rows stands instead"),
        found(Severity.WARNING));
  }

  @Test
  void one_bad_cell_leaves_its_row_out_and_stops_no_other() throws Exception {
    write(
        "continuity",
        "Step,From,To,Reading,Reverse",
        "1,J1-A,P2-1,0.3x,",
        "2,J1-B,P2-2,0.2,",
        "3,J1-A,P2-1,0.2,l.2");
    write(
        "insulation",
        "Step,From,To,Volts,Reading",
        "4,J1-A,REST,5oo,900",
        "5,J1-B,REST,500,900",
        "6,REST,REST,500,900",
        "7,J1-B,REST,500,-3");
    ReadingSet readings = read();

    assertEquals(List.of("J1-B to P2-2", "J1-B to REST"), subjects(readings));
    assertEquals(
        List.of("D2", "E4", "D2", "C4", "E5"),
        readings.unread().stream().map(problem -> problem.place().cell()).toList());
    for (Problem unread : readings.unread()) {
      assertTrue(
          problems.list().stream().anyMatch(unread::equals),
          "it stays an error among the problems: " + unread);
    }
  }

  @Test
  void a_job_row_that_nobody_knows_is_a_warning_with_what_was_meant() throws Exception {
    write("continuity", "From,To,Reading", "J1-A,P2-1,0.3");
    write(
        "job",
        "Name,Value",
        "Serial Number:,0418",
        "leads,0.2 Ω",
        "calibration du,2027-03-31",
        "colour of the bench,grey");
    read();

    assertEquals(
        List.of(
            "A3: \"leads\" is no name that is read on the sheet Job; maybe lead null",
            "A4: \"calibration du\" is no name that is read on the sheet Job; maybe calibration"
                + " due",
            "A5: \"colour of the bench\" is no name that is read on the sheet Job"),
        found(Severity.WARNING));
    assertEquals(List.of(), found(Severity.ERROR));
  }

  @Test
  void a_job_row_has_one_name_however_it_is_called() throws Exception {
    write("continuity", "From,To,Reading", "J1-A,P2-1,0.3");
    write(
        "job",
        "Name,Value",
        "S/N,0418",
        "Tester,R. Adeyemi",
        "operator,",
        "Date of Test,2026-11-25",
        "INSPECTOR:,M. Lindqvist",
        "calibration due date,2027-03-31");
    Job job = read().jobs().get(0);

    assertEquals(List.of(), problems.list());
    assertEquals("0418", job.serialNumber());
    assertEquals("R. Adeyemi", job.value("operator"));
    assertEquals("2026-11-25", job.value("date"));
    assertEquals("M. Lindqvist", job.value("inspector"));
    assertEquals("2027-03-31", job.value("calibration due"));
    assertEquals("B3", job.place("operator").cell());
  }

  @Test
  void two_values_under_two_names_of_one_job_row_are_given_twice() throws Exception {
    write("continuity", "From,To,Reading", "J1-A,P2-1,0.3");
    write("job", "Name,Value", "operator,R. Adeyemi", "tester,M. Lindqvist");
    read();

    assertEquals(
        List.of("B3: operator is given twice: \"R. Adeyemi\" and \"M. Lindqvist\""),
        found(Severity.ERROR));
  }

  @Test
  void the_reference_page_lists_the_job_rows_that_are_read() throws IOException {
    Map<String, List<String>> documented = new TreeMap<>();
    String page = Files.readString(Path.of("docs/reference/files.md"));
    page.substring(page.indexOf("Rows of `Job`;"), page.indexOf("One side may be"))
        .lines()
        .filter(line -> line.startsWith("| `"))
        .map(line -> line.split("\\|", -1))
        .forEach(cells -> names(cells[1]).forEach(name -> documented.put(name, names(cells[2]))));

    assertEquals(new TreeMap<>(JobRows.KNOWN), documented);
  }

  private static List<String> names(String cell) {
    return Pattern.compile("`([^`]+)`").matcher(cell).results().map(one -> one.group(1)).toList();
  }

  /** What is wrong with the headings makes every row of the sheet unread; nothing can go on. */
  @Test
  void a_bad_heading_is_no_bad_cell() throws Exception {
    write("continuity", "From,To,Readng", "J1-A,P2-1,0.3");
    ReadingSet readings = read();

    assertEquals(1, found(Severity.ERROR).size());
    assertEquals(List.of(), readings.unread());
  }
}
