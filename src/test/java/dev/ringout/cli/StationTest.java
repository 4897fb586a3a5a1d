package dev.ringout.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.ringout.support.Run;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What a station carries into every test is typed once. */
class StationTest {
  private static final Path BOX = Path.of("harness-samples/swing-bridge/junction-box.xlsx");
  private static final Path CLEAN =
      Path.of("harness-samples/swing-bridge/point-to-point-clean.xlsx");
  private static final String ROWS =
      """
      Name,Value,Unit
      procedure,HSB-TP-07,
      operator,R. Adeyemi,
      instrument,milliohm meter,
      instrument number,T-118,
      cal due,2027-03-31,
      meter resolution,1,mΩ
      insulation instrument,insulation tester,
      insulation calibration due,2027-01-15,
      temperature,20 °C,
      station,bench 1,
      crimp tool,CT-7,
      """;

  @TempDir private Path folder;

  private Path job(String rows) throws IOException {
    return Files.writeString(folder.resolve("bench-1.csv"), rows);
  }

  private List<String> planned(Object... options) throws IOException {
    Path sheet = folder.resolve("sheet");
    Object[] words = new Object[options.length + 5];
    System.arraycopy(new Object[] {"plan", BOX, "-o", sheet + "/", "--force"}, 0, words, 0, 5);
    System.arraycopy(options, 0, words, 5, options.length);
    Run run = Run.of(words);
    assertEquals(0, run.code(), run.err());
    return Files.readAllLines(sheet.resolve("job.csv"));
  }

  @Test
  void it_stands_in_every_sheet_that_is_planned() throws IOException {
    List<String> rows = planned("--job", job(ROWS));
    assertTrue(rows.stream().anyMatch(row -> row.startsWith("procedure,HSB-TP-07")), "" + rows);
    assertTrue(rows.stream().anyMatch(row -> row.startsWith("calibration due,2027-03-31,")));
    assertTrue(rows.stream().anyMatch(row -> row.startsWith("meter resolution,1 mΩ,")));
    assertTrue(rows.stream().anyMatch(row -> row.startsWith("insulation calibration due,2027-01")));
    assertTrue(rows.contains("crimp tool,CT-7,"), "a row that the sheet has not by itself");
    assertTrue(rows.stream().anyMatch(row -> row.startsWith("serial number,,")), "still to write");
    assertTrue(rows.stream().anyMatch(row -> row.startsWith("revision,B,")), "the list's own");
  }

  @Test
  void it_stands_in_every_retest_too() throws IOException {
    List<String> rows = planned("--job", job(ROWS), "--touched", "W006", "--after", CLEAN);
    assertTrue(rows.stream().anyMatch(row -> row.startsWith("instrument number,T-118,")));
  }

  @Test
  void what_stands_there_is_read_again_as_it_was_meant() throws IOException {
    planned("--job", job(ROWS));
    Run check = Run.of("check", BOX, folder.resolve("sheet"), "--json");
    assertEquals("", check.err());
    assertTrue(check.out().contains("\"calibrationDue\" : \"2027-03-31\""), check.out());
  }

  @Test
  void the_store_keeps_it_and_what_it_was_before() throws IOException {
    Path store = folder.resolve("bench.db");
    Run kept = Run.of("store", "station", "bench 1", job(ROWS), "--store", store);
    assertEquals(0, kept.code(), kept.err());
    assertTrue(kept.out().startsWith("Station bench 1 carries 11 rows; kept."), kept.out());
    assertTrue(
        Run.of("store", "station", "bench 1", job(ROWS), "--store", store)
            .out()
            .contains("as before; nothing added"));
    Run.of("store", "station", "bench 1", job(ROWS.replace("T-118", "T-119")), "--store", store);
    List<String> rows = planned("--job", "station:bench 1", "--store", store);
    assertTrue(rows.stream().anyMatch(row -> row.startsWith("instrument number,T-119,")));
    Path copy = folder.resolve("copy.db");
    assertEquals(0, Run.of("store", "copy", store, copy).code(), "stations are copied as well");
    assertTrue(
        planned("--job", "station:bench 1", "--store", copy).stream()
            .anyMatch(row -> row.startsWith("instrument number,T-119,")));
    Run none = Run.of("plan", BOX, "--job", "station:bench 2", "--store", store);
    assertEquals(66, none.code());
    assertTrue(none.err().contains("station:bench 2: there is no such station in"), none.err());
  }

  /** What was not done at this test can't be vouched for beforehand. */
  @ParameterizedTest
  @ValueSource(
      strings = {"serial number,0418", "date,2026-11-30", "lead null,nulled", "revision,B"})
  void what_is_of_one_unit_or_one_test_is_refused(String row) throws IOException {
    Run run = Run.of("plan", BOX, "--job", job(ROWS + row + ",\n"));
    assertEquals(65, run.code());
    assertTrue(run.err().contains("bench-1.csv!A13"), run.err());
  }

  @Test
  void what_can_t_be_understood_is_told_before_it_stands_in_a_hundred_sheets() throws IOException {
    Run run =
        Run.of("plan", BOX, "--job", job("Name,Value\nmeter accuracy,good\ncalibration du,2027\n"));
    assertEquals(65, run.code());
    assertTrue(run.err().contains("\"good\" is not an accuracy"), run.err());
    assertTrue(run.err().contains("maybe calibration due"), run.err());
    assertEquals(66, Run.of("plan", BOX, "--job", folder.resolve("nowhere.csv")).code());
    Run store =
        Run.of(
            "store",
            "station",
            "bench 1",
            job("Name,Value\nmeter accuracy,good\n"),
            "--store",
            folder.resolve("b.db"));
    assertEquals(65, store.code());
    assertFalse(Files.exists(folder.resolve("b.db")));
  }
}
