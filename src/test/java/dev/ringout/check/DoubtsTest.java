package dev.ringout.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.ringout.check.CheckResult.Verdict;
import dev.ringout.harness.Harness;
import dev.ringout.readings.Job;
import dev.ringout.readings.Reading;
import dev.ringout.readings.ReadingSet;
import dev.ringout.support.UnitUnderTest;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The facts that each doubt holds, and for which of them a verdict waits. */
class DoubtsTest {
  @TempDir Path folder;
  private UnitUnderTest unit = new UnitUnderTest(Path.of(""));

  @BeforeEach
  void a_good_unit() {
    unit =
        new UnitUnderTest(folder)
            .wire("W1,J1-A,P1-1,20,1 m")
            .wire("W2,J1-B,P1-2,20,1 m")
            .reads("J1-A", "P1-1", "0.04")
            .reads("J1-B", "P1-2", "0.04")
            .reads("J1-A", "REST", "OL")
            .insulation("J1-A", "REST", "2000 MΩ");
  }

  private static List<String> kinds(CheckResult result) {
    return result.doubts().stream()
        .map(one -> one.doubt().getClass().getSimpleName() + (one.withholds() ? "!" : ""))
        .toList();
  }

  private static <T extends Doubt> T only(CheckResult result, Class<T> kind) {
    List<T> found =
        result.doubts().stream()
            .map(Doubt.Raised::doubt)
            .filter(kind::isInstance)
            .map(kind::cast)
            .toList();
    assertEquals(1, found.size(), kinds(result).toString());
    return found.get(0);
  }

  @Test
  void a_sheet_that_says_nothing_leaves_unit_calibration_and_day_open() {
    CheckResult result = unit.check();
    assertEquals(
        List.of("SerialNumberNotStated", "CalibrationNotStated", "TestDayNotStated"),
        kinds(result));
    assertEquals(0, result.waitsFor());
    assertEquals(Verdict.CONFORMS, result.verdict());
  }

  @Test
  void those_that_the_verdict_waits_for_come_first() {
    CheckResult result = unit.limit("test day,required").check();
    assertEquals(
        List.of("TestDayNotStated!", "SerialNumberNotStated", "CalibrationNotStated"),
        kinds(result));
    assertEquals(1, result.waitsFor());
    assertTrue(result.isProven());
    assertEquals(Verdict.INCOMPLETE, result.verdict());
  }

  @Test
  void the_last_day_of_use_is_the_due_day_itself() {
    unit.job("serial number,7").job("calibration due,2027-03-31").job("date,2027-03-31");
    assertEquals(List.of(), unit.check().doubts());
    unit.readsAt("2027-04-01T07:00", "J1-A", "P1-1", "0.04");
    Doubt.CalibrationExpired expired = only(unit.check(), Doubt.CalibrationExpired.class);
    assertEquals(LocalDate.of(2027, 3, 31), expired.dueDay());
    assertEquals(LocalDate.of(2027, 4, 1), expired.testDay());
  }

  @Test
  void each_instrument_answers_for_its_own_readings() {
    unit.job("serial number,7")
        .job("date,2027-03-01")
        .job("instrument,ohmmeter")
        .job("calibration due,2027-03-31")
        .job("insulation instrument,tester")
        .job("insulation calibration due,2027-02-01");
    Doubt.CalibrationExpired expired = only(unit.check(), Doubt.CalibrationExpired.class);
    assertEquals("tester", expired.instrument().name());
    assertEquals("insulation", expired.instrument().use());
  }

  /** A word, or a value that is only known to be above the range, is not beyond it. */
  @Test
  void values_beyond_the_range_are_counted_by_their_test() {
    unit.job("insulation range,1,GΩ").insulation("J1-B", "REST", "3 GΩ");
    unit.insulation("P1-1", "REST", "OL");
    Doubt.BeyondRange beyond = only(unit.check(), Doubt.BeyondRange.class);
    assertEquals(Reading.Kind.INSULATION, beyond.kind());
    assertEquals(1e9, beyond.rangeOhms());
    assertEquals("readings/insulation.csv!E2", beyond.first().toString());
  }

  @Test
  void readings_without_any_job_sheet_are_of_one_that_says_nothing() {
    CheckResult with = unit.limit("independent inspector,required").check();
    Harness harness = with.harness();
    CheckResult without =
        CheckResult.of(harness, new ReadingSet(with.readings().readings(), List.of()), List.of());
    assertTrue(kinds(without).contains("NoInspector!"), kinds(without).toString());
    assertEquals(Verdict.INCOMPLETE, without.verdict());
  }

  @Test
  void a_unit_that_nobody_has_read_is_in_no_doubt_but_which_it_is() {
    CheckResult read = unit.check();
    CheckResult nothing =
        CheckResult.of(read.harness(), new ReadingSet(List.of(), List.of()), List.of());
    assertEquals(List.of("SerialNumberNotStated"), kinds(nothing));
  }

  @Test
  void a_fault_does_not_wait() {
    CheckResult result =
        unit.limit("test day,required").readsAt("14:30", "J1-A", "P1-1", "OL").check();
    assertEquals(Verdict.FAULTS, result.verdict());
    assertFalse(result.doubts().isEmpty());
  }

  @Test
  void the_day_of_the_test_is_the_last_that_anything_gives() {
    ReadingSet readings =
        unit.job("date,2027-03-02")
            .readsAt("2027-03-04 08:00", "J1-A", "P1-1", "0.04")
            .check()
            .readings();
    LocalDate early = LocalDate.of(2027, 3, 3);
    LocalDate late = LocalDate.of(2027, 3, 5);
    assertEquals(Optional.of(LocalDate.of(2027, 3, 4)), TestDay.of(readings, Optional.empty()));
    assertEquals(Optional.of(LocalDate.of(2027, 3, 4)), TestDay.of(readings, Optional.of(early)));
    assertEquals(Optional.of(late), TestDay.of(readings, Optional.of(late)));
  }

  /** A display may be a digit off before anything is blamed for it: common practice, no source. */
  @Test
  void joins_above_their_limit_by_less_than_a_digit_are_told() {
    UnitUnderTest unit =
        new UnitUnderTest(folder)
            .wire("W1,J1-1,P1-1")
            .limit("closed max,50 mΩ")
            .reads("J1-1", "P1-1", "0.2");
    Doubt.WithinADigit within = only(unit.check(), Doubt.WithinADigit.class);
    assertEquals(1, within.count());
    assertTrue(
        new UnitUnderTest(folder)
                .wire("W1,J1-1,P1-1")
                .limit("closed max,50 mΩ")
                .reads("J1-1", "P1-1", "0.05")
                .check()
                .doubts()
                .stream()
                .noneMatch(one -> one.doubt() instanceof Doubt.WithinADigit));
  }

  @Test
  void all_values_beyond_the_range_are_told_at_once() {
    unit.job("insulation range,1,GΩ").insulation("J1-B", "REST", "3 GΩ");
    unit.insulation("P1-2", "REST", "4 GΩ");
    assertEquals(3, only(unit.check(), Doubt.BeyondRange.class).count());
  }

  @Test
  void an_instrument_that_took_no_reading_need_not_be_in_calibration() {
    UnitUnderTest heldToOhmsAlone =
        new UnitUnderTest(folder.resolve("joins"))
            .wire("W1,J1-A,P1-1,20,1 m")
            .withoutInsulationTest()
            .reads("J1-A", "P1-1", "0.04")
            .job("serial number,7")
            .job("date,2027-03-01")
            .job("calibration due,2027-03-31")
            .job("insulation instrument,tester")
            .job("insulation calibration due,2027-02-01");
    assertEquals(List.of(), kinds(heldToOhmsAlone.check()));
  }

  /** Whether the last good day had passed is not known without it. */
  @Test
  void a_calibration_that_ends_asks_for_the_day_of_the_test() {
    CheckResult result = unit.job("serial number,7").job("calibration due,2027-03-31").check();
    assertEquals(List.of("TestDayNotStated!"), kinds(result));
    assertEquals(
        Optional.of("2027-03-31"),
        only(result, Doubt.TestDayNotStated.class)
            .instrument()
            .map(instrument -> instrument.calibrationDue()));
  }

  @Test
  void a_list_may_ask_for_the_day_of_the_test_and_for_no_calibration() {
    unit.job("serial number,7").job("calibration due,2027-03-31");
    assertEquals(
        List.of("TestDayNotStated"), kinds(unit.limit("calibration,not required").check()));
    assertEquals(List.of("TestDayNotStated!"), kinds(unit.limit("test day,required").check()));
  }

  @Test
  void a_day_that_nobody_understands_is_told_once_and_waited_for_where_calibration_ends() {
    unit.job("serial number,7").job("date,Tuesday");
    assertEquals(List.of("CalibrationNotStated", "TestDayNotADay"), sorted(unit.check()));
    assertEquals(List.of("TestDayNotADay!"), kinds(unit.job("calibration due,2027-03-31").check()));
  }

  private static List<String> sorted(CheckResult result) {
    return kinds(result).stream().sorted().toList();
  }

  /** Which of them it is decides whether the list is of it at all. */
  @Test
  void a_list_for_some_units_waits_for_the_number_and_one_for_all_does_not() {
    unit.job("date,2027-03-02").job("calibration due,2027-03-31");
    assertEquals(List.of("SerialNumberNotStated"), kinds(unit.header("effectivity,all").check()));
    UnitUnderTest some =
        new UnitUnderTest(folder.resolve("some"))
            .wire("W1,J1-A,P1-1,20,1 m")
            .reads("J1-A", "P1-1", "0.04")
            .header("effectivity,0100 to 0200")
            .job("date,2027-03-02")
            .job("calibration due,2027-03-31");
    assertEquals(List.of("SerialNumberNotStated!"), kinds(some.check()));
  }

  /** The second sheet may be of another unit. */
  @Test
  void every_sheet_says_which_unit_it_was_taken_of() {
    CheckResult result =
        unit.limit("serial number,required")
            .job("serial number,7")
            .job("date,2027-03-02")
            .job("calibration due,2027-03-31")
            .check();
    assertEquals(List.of(), kinds(result));
    ReadingSet sheet = result.readings();
    Job job = sheet.jobs().get(0);
    Job elsewhere =
        new Job(
            "second",
            job.entries(),
            job.places(),
            job.continuityRangeOhms(),
            job.insulationRangeOhms(),
            job.insulationVolts(),
            job.meter(),
            job.revision(),
            job.revisionPlace());
    CheckResult silent =
        CheckResult.of(
            result.harness(), new ReadingSet(sheet.readings(), List.of(elsewhere)), List.of());
    assertTrue(kinds(silent).contains("SerialNumberNotStated!"), kinds(silent).toString());
    assertEquals(Verdict.INCOMPLETE, silent.verdict());
  }
}
