package dev.ringout.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.ringout.bench.BenchState.Tone;
import dev.ringout.readings.Jobs;
import dev.ringout.readings.Reading;
import dev.ringout.store.StoredUnit;
import dev.ringout.support.Run;
import dev.ringout.support.ScriptedMeter;
import dev.ringout.support.SilentBench;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A test that is led reading by reading: what is asked, what is kept, what is never believed. */
class BenchTest {
  private static final String GOOD = "0.07 ohm";

  @TempDir private Path folder;
  private BenchOfTest at;

  @BeforeEach
  void open() throws Exception {
    at = BenchOfTest.in(folder);
  }

  @AfterEach
  void close() {
    at.close();
    assertEquals(List.of(), at.defects);
  }

  private void start() throws Exception {
    at.bench.start(at.list(BenchOfTest.cable(folder)), "7", BenchOfTest.by("R. Adeyemi"));
  }

  private Run said(Object... words) {
    List<Object> all = new ArrayList<>(List.of(words));
    all.addAll(List.of("--store", at.store));
    return Run.of(all.toArray());
  }

  /** Values as a good unit has them, until nothing is asked. */
  private void allGood() throws Exception {
    for (int i = 0; i < 50 && at.bench.state().session().orElseThrow().step().isPresent(); i++) {
      at.type(at.step().asks() == BenchState.Asks.JOINED ? GOOD : "OL");
    }
  }

  @Test
  void a_unit_whose_every_step_is_good_has_nothing_left_and_no_fault() throws Exception {
    start();
    allGood();
    BenchState.SessionState session = at.explained();
    assertEquals(List.of(), session.found().faults());
    assertTrue(session.step().isEmpty());
    assertEquals(session.progress().of(), session.progress().made());
    assertTrue(at.tones.stream().allMatch(Tone.GOOD::equals));
    at.bench.finish();
    Run check = said("check", "unit:7", "--json");
    assertEquals(0, check.code(), check.out());
  }

  /** A tester that is set to 250 V shows nothing of what the insulation does at 500 V. */
  @Test
  void insulation_that_was_read_at_lower_volts_than_asked_for_is_not_proven() throws Exception {
    Path list = BenchOfTest.cable(folder);
    Files.delete(list.resolve("limits.csv"));
    at.bench.start(at.list(list), "7", BenchOfTest.by("R. Adeyemi"));
    assertThrows(Refused.class, () -> at.bench.typed(at.step().id(), GOOD, "250 V"));
    while (at.step().kind().equals("continuity")) {
      at.type(at.step().asks() == BenchState.Asks.JOINED ? GOOD : "OL");
    }
    at.bench.confirm(at.step().id());
    assertThrows(Refused.class, () -> at.bench.typed(at.step().id(), "200 MΩ", "some volts"));
    at.bench.typed(at.step().id(), "200 MΩ", "250 V");
    assertEquals(Tone.UNSURE, at.tones.get(at.tones.size() - 1));
    at.bench.leave();
    Run check = said("check", "unit:7");
    assertEquals(2, check.code());
    assertTrue(check.out().contains("250 V"), check.out());
  }

  /**
   * Found by an attacker: the volts of the step went into each row, whatever the sheet Job said.
   */
  @Test
  void insulation_volts_of_the_sheet_job_are_those_of_every_row() throws Exception {
    Path list = BenchOfTest.cable(folder);
    Files.delete(list.resolve("limits.csv"));
    at.bench.start(
        at.list(list),
        "7",
        new Bench.Start("R. Adeyemi", Map.of("insulation volts", "50 V"), Set.of(), Set.of(), ""));
    while (at.step().kind().equals("continuity")) {
      at.type(at.step().asks() == BenchState.Asks.JOINED ? GOOD : "OL");
    }
    at.bench.confirm(at.step().id());
    assertEquals(
        Tone.UNSURE, at.type("5 GΩ").session().orElseThrow().last().orElseThrow().outcome());
    assertTrue(said("check", "unit:7").out().contains("50 V"));
  }

  /** Found by an attacker: OL of a meter that is set to 100 ohms passed for two points apart. */
  @Test
  void over_range_of_a_meter_that_is_set_to_a_low_range_shows_nothing_apart() throws Exception {
    at.close();
    try (ScriptedMeter meter = ScriptedMeter.sound("9.9E37")) {
      at = BenchOfTest.withMeter(folder, meter.address(), "scpi-low-ohms");
      for (int i = 0; i < 2000 && at.bench.state().meter().link() != BenchState.Link.READY; i++) {
        Thread.sleep(10);
      }
      at.bench.start(
          at.list(BenchOfTest.cable(folder)),
          "7",
          new Bench.Start(
              "R. Adeyemi", Map.of("continuity range", "100 MΩ"), Set.of(), Set.of(), ""));
      while (at.step().asks() != BenchState.Asks.APART) {
        at.type(GOOD);
      }
      BenchState.TakenState taken = at.type("OL").session().orElseThrow().last().orElseThrow();
      assertEquals(Tone.UNSURE, taken.outcome(), taken.says());
    }
  }

  @Test
  void what_was_done_to_a_unit_is_not_told_without_where() throws Exception {
    start();
    at.bench.leave();
    Refused refused =
        assertThrows(
            Refused.class,
            () ->
                at.bench.start(
                    at.list(BenchOfTest.cable(folder)),
                    "7",
                    new Bench.Start(
                        "R. Adeyemi", Map.of(), Set.of(), Set.of(), "a contact was changed")));
    assertTrue(refused.problems().get(0).text().contains("were touched"));
  }

  @Test
  void a_bench_whose_test_is_no_longer_the_last_says_so() throws Exception {
    start();
    at.type(GOOD);
    try (BenchOfTest other = BenchOfTest.in(folder, "bench 2")) {
      other.bench.start(
          other.list(BenchOfTest.cable(folder)),
          "7",
          BenchOfTest.after("M. Lind", Set.of("J1"), Set.of()));
      Refused refused = assertThrows(Refused.class, () -> at.type(GOOD));
      assertTrue(refused.problems().get(0).text().contains("at another bench"));
      other.type(GOOD);
    }
  }

  /** Found by an attacker: each value of a diode that conducts no way was good by itself. */
  @Test
  void a_diode_is_judged_by_what_is_read_both_ways() throws Exception {
    Path list = BenchOfTest.cable(folder);
    Files.writeString(list.resolve("parts.csv"), "Ref,Pin,To Pin,Kind\nCR1,A,K,diode\n");
    Files.writeString(
        list.resolve("wires.csv"),
        "Wire,From,To,Gauge,Length (m)\nW1,J1-1,CR1-A,20,2\nW2,J1-2,CR1-K,20,2\n");
    at.bench.start(at.list(list), "7", BenchOfTest.by("R. Adeyemi"));
    while (at.step().asks() != BenchState.Asks.PART) {
      at.type(at.step().asks() == BenchState.Asks.JOINED ? GOOD : "OL");
    }
    BenchState.TakenState first = at.type("OL").session().orElseThrow().last().orElseThrow();
    assertTrue(first.says().contains("other way"), first.says());
    while (at.step().asks() != BenchState.Asks.PART) {
      at.type(at.step().asks() == BenchState.Asks.JOINED ? GOOD : "OL");
    }
    BenchState.TakenState second = at.type("OL").session().orElseThrow().last().orElseThrow();
    assertTrue(second.outcome() != Tone.GOOD, second.says());
  }

  /** The wires have 84 mΩ at most; a meter of two digits can't tell that from 90 mΩ. */
  @Test
  void what_is_good_only_as_far_as_the_meter_can_tell_is_said_to_be_on_the_limit()
      throws Exception {
    start();
    BenchState state = at.type("0.09");
    BenchState.TakenState taken = state.session().orElseThrow().last().orElseThrow();
    assertEquals(Tone.UNSURE, taken.outcome(), taken.says() + at.step().expected());
    assertTrue(taken.says().startsWith("On the limit"), taken.says());
  }

  @Test
  void whatever_is_told_as_taken_is_in_the_store_already() throws Exception {
    start();
    at.type(GOOD);
    // Another program reads the same file while the bench is open.
    assertTrue(said("check", "unit:7").out().contains("1 continuity"), "kept at once");
    assertEquals(0, said("store", "check").code());
  }

  @Test
  void a_failing_value_is_kept_and_asked_for_once_more() throws Exception {
    start();
    String first = at.asked();
    assertEquals(Tone.BAD, at.type("OL").session().orElseThrow().last().orElseThrow().outcome());
    assertEquals(first, at.asked());
    assertTrue(at.step().again());
    at.type(GOOD);
    assertFalse(at.asked().equals(first));
    at.explained();
    Run check = said("check", "unit:7");
    assertTrue(check.out().contains("1 replaced by later ones"), check.out());
  }

  @Test
  void a_value_that_fails_twice_is_believed() throws Exception {
    start();
    String first = at.asked();
    at.type("OL");
    at.type("OL");
    assertFalse(at.asked().equals(first));
    assertEquals(1, at.explained().found().faults().size());
  }

  @Test
  void a_value_for_a_step_that_is_no_longer_asked_is_not_kept() throws Exception {
    start();
    String first = at.step().id();
    at.type(GOOD);
    Refused late = assertThrows(Refused.class, () -> at.bench.typed(first, "OL", ""));
    assertEquals(Refused.Reason.MEANWHILE, late.reason());
    assertTrue(said("check", "unit:7").out().contains("1 continuity"));
  }

  @Test
  void a_key_that_is_pressed_twice_answers_once() throws Exception {
    start();
    String first = at.step().id();
    at.bench.typed(first, "OL", "");
    // The same two points are asked for once more, and this is no answer to that.
    assertThrows(Refused.class, () -> at.bench.typed(first, "OL", ""));
    assertTrue(at.step().again());
  }

  /** Found by an attacker: every unit of a list has a first step, and all were called alike. */
  @Test
  void what_answers_a_step_of_one_unit_answers_none_of_another() throws Exception {
    start();
    String ofSeven = at.step().id();
    String reading = at.type(GOOD).session().orElseThrow().last().orElseThrow().id();
    at.bench.leave();
    at.bench.start(at.list(BenchOfTest.cable(folder)), "8", BenchOfTest.by("B. Two"));
    assertThrows(Refused.class, () -> at.bench.typed(ofSeven, GOOD, ""));
    at.type(GOOD);
    assertThrows(Refused.class, () -> at.bench.back(reading, "of another unit"));
  }

  @Test
  void what_is_no_value_is_not_kept() throws Exception {
    start();
    String first = at.asked();
    for (String none : List.of("", " ", "0.3?", "n/t", "taken back", "1,000", "0.2 V", "abc")) {
      assertThrows(Refused.class, () -> at.type(none), none);
    }
    assertEquals(first, at.asked());
  }

  @Test
  void nobody_measures_without_a_name_or_a_serial_number() throws Exception {
    var list = at.list(BenchOfTest.cable(folder));
    assertThrows(Refused.class, () -> at.bench.start(list, "7", BenchOfTest.by(" ")));
    assertThrows(Refused.class, () -> at.bench.start(list, "7", BenchOfTest.by("n/a")));
    assertThrows(Refused.class, () -> at.bench.start(list, " ", BenchOfTest.by("R. Adeyemi")));
  }

  @Test
  void a_reading_that_is_taken_back_stays_and_is_asked_for_again() throws Exception {
    start();
    String first = at.asked();
    String reading = at.type(GOOD).session().orElseThrow().last().orElseThrow().id();
    assertThrows(Refused.class, () -> at.bench.back(reading, " "));
    at.bench.back(reading, "probe on the wrong pin");
    assertEquals(first, at.asked());
    assertThrows(Refused.class, () -> at.bench.back(reading, "twice"));
    assertTrue(said("units", "7").out().contains("probe on the wrong pin"));
    at.type(GOOD);
    assertFalse(at.asked().equals(first));
    assertEquals(0, said("store", "check").code());
  }

  @Test
  void a_step_that_is_left_out_needs_a_reason_and_never_passes() throws Exception {
    start();
    String first = at.step().id();
    String points = at.asked();
    assertThrows(Refused.class, () -> at.bench.skip(first, ""));
    at.bench.skip(first, "terminal not in reach");
    assertFalse(at.asked().equals(points));
    allGood();
    BenchState.SessionState session = at.explained();
    assertTrue(
        session.open().sentences().stream().anyMatch(one -> one.contains("terminal not in reach")),
        session.open().toString());
    at.bench.finish();
    Run check = said("check", "unit:7");
    assertEquals(2, check.code());
    assertTrue(check.out().startsWith("NOT COMPLETE"), check.out());
  }

  @Test
  void after_a_crash_it_goes_on_at_the_same_step() throws Exception {
    start();
    at.type(GOOD);
    at.type(GOOD);
    at.type("OL");
    String asked = at.asked();
    assertTrue(at.step().again());
    // Nothing is closed: the machine went off.
    try (BenchOfTest later = BenchOfTest.in(folder)) {
      var unit =
          later
              .bench
              .tests()
              .find("7", later.list(BenchOfTest.cable(folder)).file().digest())
              .orElseThrow();
      later.bench.start(unit, BenchOfTest.by("K. Novak"));
      assertEquals(asked, later.asked());
      assertTrue(later.step().again());
      assertEquals(2, later.bench.state().session().orElseThrow().progress().made());
    }
    assertEquals(0, said("store", "check").code());
  }

  private StoredUnit seven(BenchOfTest bench) throws Exception {
    String list = bench.list(BenchOfTest.cable(folder)).file().digest();
    return bench.bench.tests().find("7", list).orElseThrow();
  }

  /** A laptop falls asleep with the probes on a unit, and wakes up when others went on with it. */
  @Test
  void a_bench_that_was_taken_over_keeps_nothing_more_and_says_who_did_and_why() throws Exception {
    start();
    at.type(GOOD);
    try (BenchOfTest other = BenchOfTest.in(folder, "bench 2")) {
      SilentBench.in(at.store, "bench 1");
      Refused noWord =
          assertThrows(
              Refused.class, () -> other.bench.start(seven(other), BenchOfTest.by("K. Novak")));
      assertTrue(noWord.problems().get(0).text().contains("bench 1 (R. Adeyemi)"));
      other.bench.start(
          seven(other),
          new Bench.Start("K. Novak", Map.of(), Set.of(), Set.of(), "", "bench 1 has no power"));
      other.type(GOOD);
      String asked = at.step().id();
      Refused late = assertThrows(Refused.class, () -> at.bench.typed(asked, "OL", ""));
      assertTrue(late.problems().get(0).text().contains("K. Novak at bench 2"), "" + late);
      assertEquals(
          late.problems().get(0).text(), at.bench.state().session().orElseThrow().trouble());
      Run check = said("check", "unit:7");
      assertTrue(check.out().contains("2 continuity"), check.out());
      Run history = said("units", "7");
      assertTrue(
          history
              .out()
              .replaceAll("\\s+", " ")
              .contains("bench 1 (R. Adeyemi): bench 1 has no power"),
          history.out());
    }
    assertEquals(0, said("store", "check").code());
  }

  @Test
  void a_bench_that_is_left_needs_no_word_to_be_gone_on_with() throws Exception {
    start();
    at.type(GOOD);
    assertTrue(said("units").out().contains("bench 1 (R. Adeyemi) leads"));
    Path away = folder.resolve("away.db");
    assertEquals(0, said("store", "backup", away).code());
    assertTrue(
        Run.of("units", "--store", away).out().contains("bench 1 (R. Adeyemi) leads"),
        "on a copy that is taken along it has to be known");
    at.bench.leave();
    SilentBench.in(at.store, "bench 1");
    assertTrue(said("units").out().contains("under way, no verdict yet"));
    try (BenchOfTest other = BenchOfTest.in(folder, "bench 2")) {
      other.bench.start(seven(other), BenchOfTest.by("K. Novak"));
      other.type(GOOD);
    }
  }

  /** Two programs by one name: the one that was started last is the bench. */
  @Test
  void of_two_starts_of_one_bench_the_earlier_keeps_nothing_more() throws Exception {
    start();
    at.type(GOOD);
    try (BenchOfTest again = BenchOfTest.in(folder)) {
      again.bench.start(seven(again), BenchOfTest.by("R. Adeyemi"));
      again.type(GOOD);
      Refused refused = assertThrows(Refused.class, () -> at.type(GOOD));
      assertTrue(refused.problems().get(0).text().contains("another start of bench 1"));
      again.type(GOOD);
    }
    assertTrue(said("check", "unit:7").out().contains("3 continuity"));
  }

  @Test
  void two_benches_on_one_unit_see_each_others_readings_and_lose_none() throws Exception {
    start();
    try (BenchOfTest other = BenchOfTest.in(folder, "bench 2")) {
      var unit =
          other
              .bench
              .tests()
              .find("7", other.list(BenchOfTest.cable(folder)).file().digest())
              .orElseThrow();
      other.bench.start(unit, BenchOfTest.by("K. Novak"));
      at.type(GOOD);
      for (int i = 0;
          i < 300 && other.bench.state().session().orElseThrow().others().isEmpty();
          i++) {
        Thread.sleep(10);
      }
      assertEquals(
          "bench 1", other.bench.state().session().orElseThrow().others().get(0).station());
      assertEquals(1, other.bench.state().session().orElseThrow().progress().made());
      other.type(GOOD);
      at.type(GOOD);
      other.type(GOOD);
      assertEquals(List.of(), other.defects);
      // Each row stands on the sheets of who read it, with his meter and his conditions.
      List<String> by = new ArrayList<>();
      var unitThen =
          other
              .bench
              .tests()
              .unit(unit)
              .match(
                  given -> given.value(),
                  refused -> {
                    throw new AssertionError(refused.problems());
                  });
      Jobs jobs = new Jobs(unitThen.readings().jobs());
      for (Reading reading : unitThen.readings().readings()) {
        by.add(reading.by());
        assertEquals(
            reading.by(), jobs.of(reading.place()).orElseThrow().value("operator"), "" + reading);
      }
      assertEquals(
          List.of("K. Novak", "K. Novak", "R. Adeyemi", "R. Adeyemi"),
          by.stream().sorted().toList());
    }
    String check = said("check", "unit:7").out();
    assertTrue(
        check.matches("(?s).*Readings (4 continuity|3 continuity, 0 insulation, 1 rep).*"), check);
    assertEquals(0, said("store", "check").code());
  }

  /** Found by an attacker: an hour change made an old good value stand over a new bad one. */
  @Test
  void a_later_value_stands_though_the_clock_was_set_back() throws Exception {
    start();
    String first = at.asked();
    allGood();
    at.explained();
    at.bench.jump(first.split(" ", -1)[0]);
    assertEquals(first, at.asked());
    at.setClock(Duration.ofHours(-2));
    at.type("OL");
    at.type("OL");
    assertEquals(1, at.explained().found().faults().size());
    at.bench.finish();
    assertEquals(1, said("check", "unit:7").code());
  }

  @Test
  void a_later_value_stands_though_the_clock_of_its_bench_goes_otherwise() throws Exception {
    start();
    String first = at.asked();
    allGood();
    try (BenchOfTest other = BenchOfTest.in(folder, "bench 2")) {
      other.setClock(Duration.ofHours(-5));
      var unit =
          other
              .bench
              .tests()
              .find("7", other.list(BenchOfTest.cable(folder)).file().digest())
              .orElseThrow();
      other.bench.start(unit, BenchOfTest.by("K. Novak"));
      other.bench.jump(first.split(" ", -1)[0]);
      other.type("OL");
      other.type("OL");
      other.bench.finish();
    }
    Run check = said("check", "unit:7");
    assertEquals(1, check.code(), check.out());
  }

  @Test
  void after_a_rework_what_was_opened_is_asked_for_again_and_nothing_else() throws Exception {
    start();
    allGood();
    at.explained();
    at.bench.finish();
    var unit =
        at.bench
            .tests()
            .find("7", at.list(BenchOfTest.cable(folder)).file().digest())
            .orElseThrow();
    at.bench.start(unit, BenchOfTest.after("R. Adeyemi", Set.of(), Set.of("w2")));
    BenchState.SessionState session = at.bench.state().session().orElseThrow();
    assertEquals(2, session.number());
    assertTrue(
        at.bench
            .state()
            .session()
            .orElseThrow()
            .step()
            .orElseThrow()
            .from()
            .text()
            .matches("[JP]1-.*"));
    allGood();
    assertEquals(List.of(), at.explained().found().faults());
    at.bench.finish();
    Run check = said("check", "unit:7");
    assertTrue(check.out().contains("touched W2, a contact was changed"), check.out());
    assertTrue(check.out().startsWith("CONFORMS"), check.out());
    assertEquals(0, said("store", "check").code());
  }

  /** Found by an attacker: after an interruption nothing counted as read after the rework. */
  @Test
  void a_retest_that_was_interrupted_goes_on_and_is_finished() throws Exception {
    start();
    allGood();
    at.explained();
    at.bench.finish();
    var unit =
        at.bench
            .tests()
            .find("7", at.list(BenchOfTest.cable(folder)).file().digest())
            .orElseThrow();
    at.bench.start(unit, BenchOfTest.after("R. Adeyemi", Set.of(), Set.of("W2")));
    at.type(GOOD);
    at.bench.conditions(Map.of("humidity", "46 %"));
    at.bench.leave();
    at.bench.start(unit, BenchOfTest.by("K. Novak"));
    allGood();
    BenchState.SessionState session = at.explained();
    assertTrue(session.step().isEmpty(), session.open().toString());
    at.bench.finish();
    assertEquals(0, said("check", "unit:7").code(), said("check", "unit:7").out());
    // And what fails then is seen.
    at.bench.start(unit, BenchOfTest.by("K. Novak"));
    at.bench.jump("W2");
    at.type("OL");
    at.type("OL");
    at.bench.finish();
    assertEquals(1, said("check", "unit:7").code());
  }

  @Test
  void a_led_test_is_judged_as_the_same_sheet_filled_in_by_hand() throws Exception {
    start();
    Path sheet = Files.createDirectories(folder.resolve("sheet"));
    StringBuilder rows = new StringBuilder("From,To,Reading\n");
    int i = 0;
    while (at.bench.state().session().orElseThrow().step().isPresent()) {
      BenchState.StepState step = at.step();
      String value = i++ == 2 || step.again() ? "3.3 ohm" : "0.07 ohm";
      if (step.asks() != BenchState.Asks.JOINED) {
        value = "OL";
      }
      rows.append(step.from().text()).append(',').append(step.to().text()).append(',');
      rows.append(value).append('\n');
      at.type(value);
    }
    BenchState.SessionState session = at.explained();
    Files.writeString(sheet.resolve("continuity.csv"), rows.toString());
    Files.writeString(
        sheet.resolve("job.csv"),
        "Name,Value\nserial number,7\ndate,2026-11-30\nrevision,A\noperator,R. Adeyemi\nstation,bench 1\n");
    Run byHand = Run.of("check", BenchOfTest.cable(folder), sheet);
    Run led = said("check", "unit:7");
    assertEquals(byHand.out().lines().limit(3).toList(), led.out().lines().limit(3).toList());
    assertEquals(1, session.found().faults().size());
  }

  @Test
  void conditions_that_can_not_be_understood_are_refused_before_they_spoil_the_unit()
      throws Exception {
    start();
    at.type(GOOD);
    assertThrows(
        Refused.class, () -> at.bench.conditions(Map.of("meter resolution", "about a milliohm")));
    assertThrows(Refused.class, () -> at.bench.conditions(Map.of("s/n", "8")));
    at.bench.conditions(Map.of("temperature", "31 °C"));
    at.type(GOOD);
    Run check = said("check", "unit:7");
    assertTrue(check.out().contains("2 continuity"), check.out());
  }

  /** Found by an attacker: a list that leaves a wire out proved the unit of another. */
  @Test
  void a_unit_is_not_begun_anew_by_another_file_of_its_list() throws Exception {
    start();
    at.type("OL");
    at.bench.leave();
    Path other = BenchOfTest.cable(folder.resolve("other"));
    Files.writeString(other.resolve("wires.csv"), "Wire,From,To\nW1,J1-1,P1-1\n");
    assertThrows(
        Refused.class, () -> at.bench.start(at.list(other), "7", BenchOfTest.by("R. Adeyemi")));
  }

  /** Found by an attacker: after a restart nobody was told to put a switch back. */
  @Test
  void the_first_step_of_each_start_says_how_every_switch_stands() throws Exception {
    var box = at.list(Path.of("harness-samples/swing-bridge/junction-box.xlsx"));
    at.bench.start(box, "0418", BenchOfTest.by("R. Adeyemi"));
    assertEquals(
        List.of(new BenchState.Position("put every switch to normal", true)), at.step().state());
    at.bench.jump("S2");
    String number = at.step().id();
    while (at.step().state().isEmpty()) {
      at.bench.skip(at.step().id(), "looking for a switch that is moved");
    }
    assertFalse(at.step().id().equals(number));
    assertTrue(at.step().state().get(0).changed());
    // Asked for, put, and not read: it stands so all the same.
    at.bench.jump("J1-A");
    assertTrue(at.step().state().get(0).text().endsWith("back to normal"), "" + at.step().state());
  }

  /** Found by an attacker: another meter inherited the number and the calibration of the first. */
  @Test
  void what_was_typed_of_a_meter_is_not_said_of_another() {
    for (String row :
        List.of("instrument number", "calibration due", "Cal Due", "meter accuracy", "lead null")) {
      assertTrue(BenchMeters.isOfMeter(row, false), row);
    }
    for (String row : List.of("procedure", "temperature", "insulation calibration due")) {
      assertFalse(BenchMeters.isOfMeter(row, false), row);
    }
    assertTrue(BenchMeters.isOfMeter("insulation instrument number", true));
  }

  @Test
  void a_real_unit_and_a_practice_unit_are_never_of_one_bench() throws Exception {
    var list = at.list(BenchOfTest.cable(folder));
    assertThrows(
        Refused.class, () -> at.bench.start(list, "PRACTICE 1", BenchOfTest.by("R. Adeyemi")));
  }

  @Test
  void a_word_that_names_a_wire_an_item_or_a_point_leads_there() throws Exception {
    start();
    at.bench.jump("w3");
    assertTrue(at.asked().contains("J1-3"), at.asked());
    at.bench.jump("P1-2");
    assertTrue(at.asked().contains("P1-2"), at.asked());
    assertThrows(Refused.class, () -> at.bench.jump("W99"));
  }
}
