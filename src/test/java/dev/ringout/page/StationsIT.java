package dev.ringout.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.ringout.support.SilentBench;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.Keys;

/** A unit that is left and gone on with, that two people read, and that was worked on. */
class StationsIT {
  @RegisterExtension static final InBrowser BROWSER = new InBrowser();

  @TempDir private Path folder;

  @Test
  void two_people_at_two_benches_see_each_others_readings() throws Exception {
    Path lamps = BenchWithPage.lamps(folder);
    try (BenchWithPage one = BenchWithPage.typed(folder, lamps);
        BenchWithPage other = BenchWithPage.another(folder, "Bench 2", lamps)) {
      Mechanic adeyemi = new Mechanic(BROWSER.open(one.ticket()));
      adeyemi.begins("0430", "R. Adeyemi");
      adeyemi.types("0.07");
      Mechanic novak = new Mechanic(BROWSER.open(other.ticket()));
      novak.goesOn("0430", "K. Novak");
      assertEquals(adeyemi.tab.front().text(".run h1"), novak.tab.front().text(".run h1"));
      novak.types("0.07");
      long since = System.nanoTime();
      adeyemi.tab.front().waitForText(".so-far", "2 of 7");
      long millis = (System.nanoTime() - since) / 1_000_000;
      assertTrue(millis < 3000, "seen after " + millis + " ms");
      adeyemi.tab.waitForText(".others", "Bench 2: K. Novak");
      adeyemi.readsAll(BuiltUnit.lamps());
      novak.tab.front().waitForText(".run", "All measured");
      adeyemi.tab.front();
      adeyemi.ends();
      adeyemi.tab.waitForText(".headline", "CONFORMS");
      String check = one.said("check", "unit:0430").out();
      assertTrue(check.contains("7 continuity"), check);
      assertEquals(0, one.said("store", "check").code());
    }
  }

  /** A bench fell asleep: whoever goes on says why, and the sleeper reads that nothing is kept. */
  @Test
  void a_test_of_a_bench_that_is_silent_is_taken_over_with_a_word() throws Exception {
    Path lamps = BenchWithPage.lamps(folder);
    try (BenchWithPage one = BenchWithPage.typed(folder, lamps);
        BenchWithPage other = BenchWithPage.another(folder, "Bench 2", lamps)) {
      Mechanic adeyemi = new Mechanic(BROWSER.open(one.ticket()));
      adeyemi.begins("0434", "R. Adeyemi");
      adeyemi.types("0.07");
      SilentBench.in(one.store(), "Bench 1");
      Mechanic novak = new Mechanic(BROWSER.open(other.ticket()));
      novak.tab.go("#/units");
      novak.tab.press("0434");
      novak.tab.waitForText(".leads", "Bench 1: R. Adeyemi led this test, and nothing is heard");
      novak.tab.press("Go on where it was left");
      novak.tab.fill("Who holds the probes", "K. Novak");
      novak.tab.waitForText("form", "nobody may hold probes at this unit");
      novak.tab.fill("Why you take the test over", "Bench 1 has no power");
      novak.tab.press("Go on");
      novak.tab.waitFor(".run");
      novak.types("0.07");
      adeyemi.tab.front().waitForText("#trouble", "K. Novak at Bench 2 took this test over");
      adeyemi.tab.keys("9");
      adeyemi.tab.keys(Keys.SPACE);
      adeyemi.tab.waitForText("#banners", "Nothing is kept here any more");
      adeyemi.tab.waitForText("#now", "9");
      String history = one.said("units", "0434").out().replaceAll("\\s+", " ");
      assertTrue(history.contains("Bench 1 has no power"), history);
      assertTrue(one.said("check", "unit:0434").out().contains("2 continuity"));
    }
  }

  @Test
  void a_second_tab_shows_the_same_step_and_a_value_counts_once() throws Exception {
    try (BenchWithPage bench = BenchWithPage.typed(folder, BenchWithPage.lamps(folder))) {
      Mechanic first = new Mechanic(BROWSER.open(bench.ticket()));
      first.begins("0432", "R. Adeyemi");
      Mechanic second = new Mechanic(BROWSER.open(bench.ticket()));
      second.tab.waitFor(".run");
      assertEquals(first.tab.front().text(".run h1"), second.tab.front().text(".run h1"));
      second.types("0.07");
      first.tab.front().waitForText(".so-far", "1 of 7");
      assertEquals(first.step(), second.step());
      assertTrue(bench.said("check", "unit:0432").out().contains("1 continuity"));
    }
  }

  @Test
  void a_reading_of_an_earlier_start_is_taken_back_on_the_page() throws Exception {
    try (BenchWithPage bench = BenchWithPage.typed(folder, BenchWithPage.lamps(folder))) {
      Mechanic mechanic = new Mechanic(BROWSER.open(bench.ticket()));
      mechanic.begins("0433", "R. Adeyemi");
      mechanic.types("0.07");
      mechanic.types("0.07");
      mechanic.tab.press("Unit");
      mechanic.tab.press("Readings");
      mechanic.tab.waitFor(".readings li");
      mechanic.tab.press("Take back");
      Tab.pause(Mechanic.LOOKING_MILLIS);
      mechanic.tab.press("The probe slipped");
      mechanic.tab.waitForText(".readings", "Taken back");
      mechanic.tab.press("Bench");
      mechanic.tab.waitForText(".so-far", "1 of 7");
      assertTrue(bench.said("units", "0433").out().contains("The probe slipped"));
    }
  }

  @Test
  void a_test_that_was_left_goes_on_at_the_same_step() throws Exception {
    try (BenchWithPage bench = BenchWithPage.typed(folder, BenchWithPage.lamps(folder))) {
      Mechanic mechanic = new Mechanic(BROWSER.open(bench.ticket()));
      mechanic.begins("0431", "R. Adeyemi");
      mechanic.types("0.07");
      mechanic.types("0.07");
      String step = mechanic.step();
      mechanic.tab.reload();
      assertEquals(step, mechanic.step());
      mechanic.tab.keys("+");
      mechanic.tab.press("Leave it for later");
      mechanic.tab.waitForText("dialog", "The test goes on at the same step");
      mechanic.tab.press("Leave it for later");
      mechanic.tab.waitForText("h1", "Unit 0431");
      mechanic.tab.press("Units");
      mechanic.goesOn("0431", "K. Novak");
      assertEquals(step, mechanic.step());
    }
  }

  @Test
  void after_a_rework_what_was_worked_on_is_asked_for_again_and_nothing_else() throws Exception {
    try (BenchWithPage bench = BenchWithPage.typed(folder, BenchWithPage.lamps(folder))) {
      Mechanic mechanic = new Mechanic(BROWSER.open(bench.ticket()));
      mechanic.begins("0432", "R. Adeyemi");
      mechanic.readsAll(BuiltUnit.lamps().without("J2-1", "P2-1"));
      mechanic.ends();
      Tab tab = mechanic.tab;
      tab.waitForText(".headline", "FAULTS");
      tab.press("Start a retest");
      tab.fill("Which wires were worked on?", "W4");
      tab.fill("What was done?", "crimped anew");
      tab.fill("Who holds the probes", "K. Novak");
      tab.press("Start");
      tab.waitFor(".run");
      var asked = mechanic.readsAll(BuiltUnit.lamps());
      assertTrue(asked.stream().allMatch(one -> one.contains("2-1")), asked.toString());
      mechanic.ends();
      tab.waitForText(".headline", "CONFORMS");
      String check = bench.said("check", "unit:0432").out();
      assertTrue(check.contains("touched W4, crimped anew"), check);
    }
  }
}
