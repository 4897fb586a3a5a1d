package dev.ringout.intake;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.ringout.harness.Harness;
import dev.ringout.readings.Concession;
import dev.ringout.readings.Job;
import dev.ringout.readings.Reading;
import dev.ringout.readings.ReadingSet;
import dev.ringout.readings.Rework;
import dev.ringout.sheet.TabularFile;
import dev.ringout.source.Problem;
import dev.ringout.source.Problems;
import dev.ringout.source.Severity;
import dev.ringout.source.UnusableInput;
import dev.ringout.support.ReadUnit;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Map;
import java.util.Set;
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
            "G4: J1-B to P2-2: \"three\" is not a reading; write one such as 0.3, 300 mΩ, 2k2, OL,"
                + " >200 M, PASS",
            "F5: step 4, J1-B to P2-2: S1 has no position UP; it has OFF, ON",
            "B6: step 5, to P2-2: a reading needs a point on each side",
            "H7: step 6, J1-A to P2-1: \"noon\" is not a time that can be read (2026-11-25 14:30, or"
                + " 14:30)"),
        found(Severity.ERROR));
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
        "7,J1-B,REST,500,3-");
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
            "A3: \"leads\" is not a name that the sheet Job knows; maybe lead null",
            "A4: \"calibration du\" is not a name that the sheet Job knows; maybe calibration"
                + " due",
            "A5: \"colour of the bench\" is not a name that the sheet Job knows"),
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

  @Test
  void a_rework_opens_the_items_at_both_ends_of_each_wire_touched() throws Exception {
    write(
        "rework",
        "Time,Items,Wires,Note",
        "2026-11-25 14:30,s1,,new contact",
        ",,w1 + W3,",
        ",J1; P2,,",
        ",,,");
    ReadingSet readings = read();

    assertEquals(List.of(), problems.list());
    assertEquals(3, readings.reworks().size());
    Rework first = readings.reworks().get(0);
    assertEquals("2026-11-25 14:30", first.timeText());
    assertEquals(LocalDateTime.of(2026, 11, 25, 14, 30), first.time().orElseThrow().at());
    assertEquals(Set.of("S1"), first.items());
    assertEquals("new contact", first.note());
    assertEquals(2, first.place().row());
    assertEquals(Set.of("W1", "W3"), readings.reworks().get(1).wires());
    assertEquals(List.of("J1", "P2", "S1"), List.copyOf(readings.reworks().get(1).items()));
    assertEquals(Set.of("J1", "P2"), readings.reworks().get(2).items());
    assertTrue(readings.reworks().get(2).time().isEmpty());
    assertEquals(List.of(), readings.jobs(), "it holds no readings of a unit");
  }

  /** The order of readings and rework is the tester's to say; a program would guess. */
  @Test
  void readings_are_after_a_rework_only_where_its_row_says_so() throws Exception {
    write(
        "rework",
        "No,Time,Items,Wires,Readings,Note",
        "1,,S1,,After,new contact",
        ",,S1,,before,",
        ",,S1,,,",
        "2,,S1,,aftre,",
        ",,S1,,after,");
    ReadingSet readings = read();

    assertEquals(
        List.of(true, false, false), readings.reworks().stream().map(Rework::readAfter).toList());
    assertTrue(readings.reworks().get(1).isToldBy(readings.reworks().get(0)));
    assertFalse(readings.reworks().get(0).isToldBy(readings.reworks().get(1)));
    assertEquals(
        List.of(
            "E5: \"aftre\" is not what Readings may be: after, or blank for before; maybe after",
            "B6: readings taken after a rework name its Time, or its No"),
        found(Severity.ERROR));
  }

  /** A rework that is not understood would leave readings standing that prove nothing any more. */
  @Test
  void a_rework_that_is_not_understood_is_an_error() throws Exception {
    write(
        "rework",
        "Time,Items,Wires,Note",
        "after lunch,J1,,",
        ",J1-A,,",
        ",J2,W9,",
        ",,,looked at it");
    ReadingSet readings = read();

    assertEquals(
        List.of(
            "A2: \"after lunch\" is not a time that can be read (2026-11-25 14:30, or 14:30)",
            "B3: the harness has no item J1-A; maybe J1",
            "B4: the harness has no item J2; maybe J1",
            "C4: the harness has no wire W9; maybe W1",
            "B5: a rework names the items opened, or the wires touched"),
        found(Severity.ERROR));
    assertEquals(List.of(), readings.reworks());
    assertEquals(List.of(), readings.unread());
  }

  @Test
  void a_rework_sheet_under_other_headings_is_not_passed_over() throws Exception {
    write("rework", "When,What", "14:30,J1");
    read();

    assertEquals(
        List.of(": the headings must be in the first row; missing: Items or Wires"),
        found(Severity.ERROR));
  }

  @Test
  void a_waiver_says_which_reading_is_accepted_up_to_what_by_whom_and_why() throws Exception {
    write(
        "waivers",
        "Kind,From,From Pin,To,To Pin,State,Accepted,Unit,Who,Why,Until,Serial Numbers",
        "Continuity,J1,A,P2,1,,1.2,Ω,M. Lindqvist,spare wire,2027-03-31,0100 to 0500",
        "insulation,J1-B,,REST,,S1=ON,20 MΩ,,M. Lindqvist,damp day,,");
    ReadingSet readings = read();

    assertEquals(List.of(), problems.list());
    assertEquals(List.of(), readings.jobs());
    Concession join = readings.concessions().get(0);
    assertEquals(Reading.Kind.CONTINUITY, join.kind());
    assertEquals("J1-A to P2-1", join.from() + " to " + join.to());
    assertEquals(1.2, join.acceptedOhms());
    assertEquals("M. Lindqvist", join.who());
    assertEquals("spare wire", join.why());
    assertEquals(LocalDate.of(2027, 3, 31), join.untilDay().orElseThrow());
    assertTrue(join.serials().orElseThrow().covers("418"));
    Concession leak = readings.concessions().get(1);
    assertEquals(Reading.Kind.INSULATION, leak.kind());
    assertEquals("J1-B to REST", leak.from() + " to " + leak.to());
    assertEquals("S1=ON", leak.state().toString());
    assertEquals(20e6, leak.acceptedOhms());
    assertTrue(leak.untilDay().isEmpty());
    assertTrue(leak.serials().isEmpty());
  }

  @Test
  void a_waiver_in_which_anything_is_missing_or_in_doubt_waives_nothing() throws Exception {
    write(
        "waivers",
        "Kind,From,To,Accepted,Who,Why,Until,Serial Numbers",
        "continuty,J1-A,P2-1,1 Ω,M. Lindqvist,spare,,",
        "continuity,J1-A,P2-9,1 Ω,M. Lindqvist,spare,,",
        "continuity,J1-A,P2-1,,,,,",
        "continuity,J1-A,P2-1,300,M. Lindqvist,spare,,",
        "continuity,J1-A,P2-1,-1 Ω,M. Lindqvist,spare,,",
        "continuity,J1-A,P2-1,1 Ω,M. Lindqvist,spare,next year,",
        "continuity,J1-A,P2-1,1 Ω,M. Lindqvist,spare,,before mod 12");
    ReadingSet readings = read();

    assertEquals(List.of(), readings.concessions());
    String points = "J1-A to P2-1: ";
    assertEquals(
        List.of(
            "A2: "
                + points
                + "\"continuty\" is not a kind of reading; write continuity or insulation; maybe"
                + " continuity",
            "C3: J1-A to P2-9: the harness has no point P2-9; a spare cavity is listed on the sheet"
                + " Pins; maybe P2-1",
            "D4: " + points + "a waiver must say up to which value the reading is accepted",
            "E4: " + points + "a waiver must say who accepts the reading",
            "F4: " + points + "a waiver must say why the reading is accepted",
            "D5: " + points + "the value accepted needs its unit, such as mΩ, Ω, kΩ, MΩ",
            "D6: " + points + "the value accepted can't be negative",
            "G7: " + points + "\"next year\" is not a date; write one such as 2027-03-31",
            "H8: "
                + points
                + "\"before mod 12\" does not say which serial numbers; write, for example, 0418, 0100"
                + " to 0200, or 0300 and on"),
        found(Severity.ERROR));
  }

  @Test
  void a_job_beside_a_rework_is_read_where_it_says_anything() throws Exception {
    write("rework", "Items", "J1");
    write("job", "Name,Value", "serial number,0418");
    assertEquals("0418", read().jobs().get(0).serialNumber());
  }

  @Test
  void a_file_without_any_of_these_sheets_holds_nothing_to_read() throws Exception {
    write("job", "Name,Value", "serial number,0418");
    read();

    assertEquals(
        List.of(": there is no sheet Continuity or Insulation; found: job"), found(Severity.ERROR));
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
