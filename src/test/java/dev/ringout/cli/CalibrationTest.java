package dev.ringout.cli;

import static dev.ringout.cli.SmallUnit.flat;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.ringout.support.Run;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Measuring equipment is in calibration on the day on which it is used, or its readings decide
 * nothing (ISO 9001:2015, 7.1.5.2: calibrated at specified intervals, its status shown).
 */
class CalibrationTest {
  private static final String WAITS = "The verdict waits for this.";
  private static final String JOINED = "1,J1-A,P1-1,0.04,Ω%s\n2,J1-B,P1-2,0.04,Ω\n";
  private static final String APART = "3,J1-A,REST,OL,\n";
  private static final String INSULATION = "4,J1-A,REST,500,60,2000,MΩ\n";

  @TempDir Path folder;
  private SmallUnit unit = new SmallUnit(Path.of(""));

  @BeforeEach
  void unit() {
    unit = new SmallUnit(folder);
  }

  private Path demands(String... limits) throws IOException {
    return unit.list(List.of(), List.of(limits));
  }

  private Run check(Path list, Path... sheets) {
    Object[] words = new Object[sheets.length + 2];
    words[0] = "check";
    words[1] = list;
    System.arraycopy(sheets, 0, words, 2, sheets.length);
    return Run.of(words);
  }

  private void conforms(Run run) {
    assertEquals(0, run.code(), run.out() + run.err());
    assertTrue(run.out().startsWith("CONFORMS."), run.out());
  }

  private void waits(Run run, String why) {
    assertEquals(2, run.code(), run.out() + run.err());
    assertTrue(run.out().startsWith("NOT COMPLETE. Every value is good;"), run.out());
    assertTrue(flat(run.out()).contains(why), run.out());
    assertTrue(flat(run.out()).contains(WAITS), run.out());
  }

  @Test
  void an_instrument_in_calibration_on_the_day_of_the_test_leaves_nothing_to_doubt()
      throws IOException {
    Path sheet =
        unit.sheet(
            "s",
            "serial number,7",
            "instrument,M1",
            "calibration due,2027-03-31",
            "date,2027-03-31");
    Run run = check(unit.list(), sheet);
    conforms(run);
    assertFalse(run.out().contains("WEAKENS THIS VERDICT"), run.out());
  }

  @Test
  void one_that_had_expired_does_not() throws IOException {
    Path sheet = unit.sheet("s", "instrument,M1", "calibration due,2027-03-31", "date,2027-04-01");
    waits(
        check(unit.list(), sheet),
        "Calibration of M1 expired on 2027-03-31; the test was on 2027-04-01. " + WAITS);
  }

  @Test
  void without_the_day_of_the_test_a_due_day_says_nothing() throws IOException {
    Path sheet = unit.sheet("s", "instrument,M1", "calibration due,2027-03-31");
    waits(check(unit.list(), sheet), "The date of the test is not stated in s, so nobody knows");
  }

  @Test
  void the_last_of_the_job_s_day_and_the_readings_times_is_the_day() throws IOException {
    Path late =
        unit.filled(
            "s",
            JOINED.replace("%s", ",2027-04-02 10:00") + APART,
            INSULATION,
            "instrument,M1",
            "calibration due,2027-03-31",
            "date,2027-03-01");
    waits(check(unit.list(), late), "the test was on 2027-04-02");
  }

  /** An operator who writes 14:30 has not written a day. */
  @Test
  void a_time_of_day_alone_is_no_day() throws IOException {
    Path sheet =
        unit.filled(
            "s",
            JOINED.replace("%s", ",14:30") + APART,
            INSULATION,
            "instrument,M1",
            "calibration due,2027-03-31");
    waits(check(unit.list(), sheet), "The date of the test is not stated");
    Path record = folder.resolve("r.html");
    Run.of("report", unit.list(), sheet, "-o", record);
    assertFalse(Files.readString(record).contains("1970"));
  }

  @Test
  void a_day_that_is_none_is_said_and_waited_for() throws IOException {
    Path due = unit.sheet("d", "instrument,M1", "calibration due,next March", "date,2027-03-01");
    waits(check(unit.list(), due), "\"next March\" of M1 is not a date");
    Path test = unit.sheet("t", "instrument,M1", "calibration due,2027-03-31", "date,31.3.2027");
    waits(check(unit.list(), test), "\"31.3.2027\" (t/job.csv!B5) is not a date");
  }

  @Test
  void once_one_job_names_a_due_day_every_instrument_must_have_one() throws IOException {
    Path first =
        unit.filled(
            "one",
            JOINED.replace("%s", "") + APART,
            "",
            "serial number,7",
            "instrument,M1",
            "calibration due,2027-03-31",
            "date,2027-03-01");
    Path second =
        unit.filled("two", "", INSULATION, "serial number,7", "instrument,M2", "date,2027-03-01");
    waits(check(unit.list(), first, second), "There is no calibration date for M2");
    Path own =
        unit.sheet(
            "own",
            "instrument,M1",
            "calibration due,2027-03-31",
            "insulation instrument,M3",
            "date,2027-03-01");
    waits(check(unit.list(), own), "There is no calibration date for M3");
  }

  @Test
  void an_instrument_that_took_no_reading_that_stands_needs_none() throws IOException {
    Path own =
        unit.filled(
            "own",
            JOINED.replace("%s", "") + APART,
            "",
            "instrument,M1",
            "calibration due,2027-03-31",
            "insulation instrument,M3",
            "date,2027-03-01");
    Run run = check(demands("insulation test,none"), own);
    assertFalse(run.out().contains("M3"), run.out());
    Path expired =
        unit.sheet(
            "old",
            "serial number,7",
            "instrument,M0",
            "calibration due,2020-01-01",
            "date,2027-03-01");
    Path again =
        unit.sheet(
            "new",
            "serial number,7",
            "instrument,M1",
            "calibration due,2027-03-31",
            "date,2027-03-02");
    conforms(check(unit.list(), expired, again));
  }

  @Test
  void where_no_job_names_a_due_day_that_is_shown_and_not_waited_for() throws IOException {
    Run run = check(unit.list(), unit.sheet("s", "instrument,M1", "serial number,7"));
    conforms(run);
    assertTrue(flat(run.out()).contains("There is no calibration date for M1"), run.out());
    assertFalse(run.out().contains(WAITS), run.out());
  }

  @Test
  void a_list_may_demand_it_always_or_never() throws IOException {
    Path silent = unit.sheet("silent");
    waits(
        check(demands("calibration,required"), silent),
        "There is no calibration date for the instrument for continuity and insulation");
    Path expired =
        unit.sheet("s", "instrument,M1", "calibration due,2027-03-31", "date,2027-04-01");
    Run run = check(demands("calibration,not required"), expired);
    conforms(run);
    assertTrue(run.out().contains("expired on 2027-03-31"), run.out());
  }

  @ParameterizedTest
  @ValueSource(strings = {"serial number", "test day", "independent inspector"})
  void what_the_list_demands_besides_is_waited_for(String demand) throws IOException {
    Run run = check(demands(demand + ",required"), unit.sheet("s"));
    assertEquals(2, run.code(), run.out());
    assertTrue(run.out().contains("waits for 1 answer"), run.out());
    Path full =
        unit.sheet("full", "serial number,7", "date,2027-03-01", "operator,A", "inspector,B");
    conforms(check(demands(demand + ",required"), full));
  }

  /** A second pair of eyes is another person's, however the name is written. */
  @Test
  void tester_and_inspector_are_two_people() throws IOException {
    Path same = unit.sheet("same", "operator,A. Ruiz", "inspector,a ruiz");
    conforms(check(unit.list(), same));
    waits(
        check(demands("independent inspector,required"), same),
        "Tester and inspector are the same person, a ruiz");
    Path byRow =
        unit.filled(
            "row",
            JOINED.replace("%s", ",,B. Okoye") + APART,
            INSULATION,
            "operator,A. Ruiz",
            "inspector,B. Okoye");
    waits(check(demands("independent inspector,required"), byRow), "same person, B. Okoye");
    waits(
        check(demands("independent inspector,required"), unit.sheet("one", "inspector,B")),
        "No operator is named in one");
  }

  @Test
  void a_value_that_the_instrument_can_t_show_is_said() throws IOException {
    Path sheet = unit.sheet("s", "insulation range,1 GΩ");
    assertTrue(
        flat(check(unit.list(), sheet).out())
            .contains("1 reading is beyond the range that the job sheet gives"));
  }

  @Test
  void the_record_s_own_day_counts_as_the_day_of_the_test() throws IOException {
    Path sheet = unit.sheet("s", "instrument,M1", "calibration due,2027-03-31");
    Path record = folder.resolve("r.html");
    assertEquals(
        0, Run.of("report", unit.list(), sheet, "-o", record, "--date", "2027-03-31").code());
    Run late =
        Run.of("report", unit.list(), sheet, "-o", record, "--date", "2027-04-01", "--force");
    assertEquals(2, late.code(), late.err());
    assertTrue(Files.readString(record).contains("expired on 2027-03-31"));
    assertTrue(Files.readString(record).contains(WAITS));
    assertFalse(Files.readString(record).contains("CONFORMS"));
  }

  @Test
  void the_record_names_each_instrument_with_its_own_due_day() throws IOException {
    Path sheet =
        unit.sheet(
            "s",
            "instrument,M1",
            "calibration due,2027-03-31",
            "insulation instrument,M2",
            "insulation calibration due,2027-05-31",
            "date,2027-03-01");
    Path record = folder.resolve("r.html");
    assertEquals(0, Run.of("report", unit.list(), sheet, "-o", record).code());
    assertTrue(
        Files.readString(record)
            .contains("M1, calibration due 2027-03-31; M2, calibration due 2027-05-31"));
    assertTrue(Files.readString(record).contains("2027-03-01"), "the job sheet's day");
  }

  @Test
  void json_says_what_the_verdict_waits_for() throws IOException {
    Path sheet = unit.sheet("s", "instrument,M1", "calibration due,2027-03-31", "date,2027-04-01");
    Run run = Run.of("check", unit.list(), sheet, "--json");
    String json = flat(run.out());
    assertEquals(2, run.code());
    assertTrue(json.contains("\"verdict\" : \"incomplete\""), json);
    assertTrue(json.contains("\"kind\" : \"calibration-expired\", \"withholds\" : true"), json);
    assertTrue(json.contains("\"due\" : \"2027-03-31\", \"testDay\" : \"2027-04-01\""), json);
    assertTrue(json.contains("\"kind\" : \"serial-number-not-stated\", \"withholds\" : false"));
  }
}
