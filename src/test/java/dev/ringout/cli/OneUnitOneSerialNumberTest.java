package dev.ringout.cli;

import static dev.ringout.cli.SmallUnit.flat;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.ringout.support.Run;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * A test record is of one unit, which its serial number names (common practice, no source): good
 * readings of one unit must never stand in for the bad ones of another.
 */
class OneUnitOneSerialNumberTest {
  private static final String OPEN = "1,J1-A,P1-1,OL,Ω\n2,J1-B,P1-2,0.04,Ω\n3,J1-A,REST,OL,\n";
  private static final String RETEST = "1,J1-A,P1-1,0.04,Ω\n";

  @TempDir Path folder;
  private SmallUnit unit = new SmallUnit(Path.of(""));

  @BeforeEach
  void unit() {
    unit = new SmallUnit(folder);
  }

  private Run run(String command, Path list, Object... words) {
    List<Object> all = new ArrayList<>(List.of(command, list));
    boolean plans = command.equals("plan");
    for (Object word : words) {
      if (plans && word instanceof Path) {
        all.add("--after");
      }
      all.add(word);
    }
    if (command.equals("report")) {
      all.addAll(List.of("-o", folder.resolve("record.html"), "--force"));
    }
    return Run.of(all.toArray());
  }

  @ParameterizedTest
  @ValueSource(strings = {"check", "report", "plan"})
  void readings_of_two_units_are_refused_with_both_numbers_and_both_cells(String command)
      throws IOException {
    Path bad = unit.filled("bad", OPEN, "", "serial number,0418");
    Path good = unit.sheet("good", "serial number,0417");
    Run run = run(command, unit.list(), bad, good);
    assertEquals(65, run.code(), run.out() + run.err());
    String said = flat(run.err());
    assertTrue(said.contains("of unit 0418, those of good/job.csv!B3 are of unit 0417"), said);
    assertTrue(said.contains("of unit 0417, those of bad/job.csv!B3 are of unit 0418"), said);
    assertFalse(Files.exists(folder.resolve("record.html")));
  }

  @ParameterizedTest
  @CsvSource({"0418,418", "hs 0418,HS0418", "A-7,a-7"})
  void case_blanks_and_leading_zeros_make_no_other_unit(String one, String other)
      throws IOException {
    Path first = unit.filled("first", OPEN, "", "serial number," + one);
    Path second = unit.sheet("second", "serial number," + other);
    Run run = run("check", unit.list(), first, second);
    assertEquals(0, run.code(), run.out() + run.err());
  }

  @ParameterizedTest
  @CsvSource({"418,4180", "HS-0418,0418", "A-7,A7-1"})
  void any_other_difference_does(String one, String other) throws IOException {
    Path first = unit.filled("first", OPEN, "", "serial number," + one);
    Path second = unit.sheet("second", "serial number," + other);
    assertEquals(65, run("check", unit.list(), first, second).code());
  }

  /** Names on a sheet are the same whatever their case, blanks and punctuation. */
  @Test
  void a_serial_number_is_found_however_its_name_is_written() throws IOException {
    Path first = unit.filled("first", OPEN, "", "Serial-Number,0418");
    Path second = unit.sheet("second", "SERIALNUMBER,0417");
    assertEquals(65, run("check", unit.list(), first, second).code());
  }

  @ParameterizedTest
  @ValueSource(strings = {"check", "report", "plan"})
  void a_file_without_a_number_beside_one_with_it_is_asked_for_it(String command)
      throws IOException {
    Path first = unit.filled("first", OPEN, "", "serial number,0418");
    Path second = unit.filled("second", RETEST, "");
    Run run = run(command, unit.list(), first, second);
    assertEquals(65, run.code(), run.out());
    String said = flat(run.err());
    assertTrue(
        said.contains(
            "gives no serial number, first/job.csv!B3 gives 0418: write it on its sheet Job, or say"
                + " --serial 0418 if it is of that unit"),
        said);
    Run vouched = run(command, unit.list(), first, second, "--serial", "0418");
    assertTrue(vouched.code() <= 2, vouched.err());
  }

  @Test
  void a_sheet_that_nobody_has_filled_in_needs_no_number() throws IOException {
    Path first = unit.sheet("first", "serial number,0418");
    Path blank = unit.filled("blank", "1,J1-A,P1-1,,Ω\n", "");
    Run run = run("check", unit.list(), first, blank);
    assertEquals(0, run.code(), run.out() + run.err());
  }

  @Test
  void a_number_on_the_command_line_vouches_only_for_files_that_give_none() throws IOException {
    Path other = unit.sheet("other", "serial number,0417");
    Run refused = run("check", unit.list(), other, "--serial", "0418");
    assertEquals(65, refused.code());
    String said = flat(refused.err());
    assertTrue(said.contains("of unit 0417, --serial says 0418"), said);
    assertTrue(said.contains("other/job.csv"), said);
    Run shown = run("check", unit.list(), unit.sheet("none"), "--serial", "0418");
    assertEquals(0, shown.code(), shown.err());
    assertTrue(shown.out().contains("serial 0418"), shown.out());
    assertEquals(64, run("check", unit.list(), unit.sheet("none"), "--serial", " ").code());
  }

  @Test
  void one_sheet_is_not_of_two_units() throws IOException {
    for (String both : List.of("0418; 0419", "0418 and 0419", "\"0418, 0419\"")) {
      Run run = run("check", unit.list(), unit.sheet("both", "serial number," + both));
      assertEquals(65, run.code(), both);
      assertTrue(flat(run.err()).contains("names more than one unit"), run.err());
    }
    Run twice =
        run("check", unit.list(), unit.sheet("both", "serial number,0418", "serial number,0419"));
    assertEquals(65, twice.code());
    assertTrue(twice.err().contains("given twice"), twice.err());
  }

  @ParameterizedTest
  @ValueSource(strings = {"check", "report", "plan"})
  void readings_against_another_drawing_are_refused_with_both_named(String command)
      throws IOException {
    Path list = unit.list(List.of("drawing,HSB-2210"), List.of());
    Run run = run(command, list, unit.sheet("sheet", "drawing,HSB-2211"));
    assertEquals(65, run.code(), run.out());
    String said = flat(run.err());
    assertTrue(
        said.contains("against drawing HSB-2211, the harness file is drawing HSB-2210"), said);
    assertTrue(said.contains("sheet/job.csv"), said);
    assertTrue(run(command, list, unit.sheet("sheet", "drawing,hsb - 2210")).code() <= 2);
  }

  /** Two units with the same fault blame the paper; one unit read twice blames nothing. */
  @Test
  void a_unit_is_not_held_against_readings_of_itself() throws IOException {
    Path own = unit.filled("own", OPEN, "", "serial number,0418");
    Path again = unit.filled("again", OPEN, "", "serial number,418");
    Run refused = run("check", unit.list(), own, "--also", again);
    assertEquals(65, refused.code(), refused.out());
    String said = flat(refused.err());
    assertTrue(said.contains("again/job.csv"), said);
    assertTrue(said.contains("unit 418, which is the unit of own/job.csv!B3"), said);
    Path other = unit.filled("other", OPEN, "", "serial number,0419");
    Run paper = run("check", unit.list(), own, "--also", other);
    assertEquals(1, paper.code(), paper.err());
    assertTrue(paper.out().contains("PAPER"), paper.out());
    assertFalse(paper.out().contains("0419"), "its readings and number are not this unit's");
  }

  @Test
  void the_record_names_the_number_that_was_vouched_for() throws IOException {
    Run run = run("report", unit.list(), unit.sheet("none"), "--serial", "0418");
    assertTrue(run.code() <= 2, run.err());
    assertTrue(Files.readString(folder.resolve("record.html")).contains("0418"));
  }
}
