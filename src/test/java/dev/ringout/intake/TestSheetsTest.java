package dev.ringout.intake;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.ringout.harness.Harness;
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

  /** What is wrong with the headings makes every row of the sheet unread; nothing can go on. */
  @Test
  void a_bad_heading_is_no_bad_cell() throws Exception {
    write("continuity", "From,To,Readng", "J1-A,P2-1,0.3");
    ReadingSet readings = read();

    assertEquals(1, found(Severity.ERROR).size());
    assertEquals(List.of(), readings.unread());
  }
}
