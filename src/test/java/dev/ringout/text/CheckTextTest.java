package dev.ringout.text;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.ringout.check.CheckResult;
import dev.ringout.support.UnitUnderTest;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The page of a check: what a mechanic reads first, and what stands where. */
class CheckTextTest {

  @TempDir Path folder;

  private UnitUnderTest unit;

  @BeforeEach
  void a_box_of_two_wires() {
    unit =
        new UnitUnderTest(folder)
            .header("title,Span lock box")
            .withoutInsulationTest()
            .wire("W1,J1-A,P2-1,20,4 ft")
            .wire("W2,J1-B,P2-2,20,4 ft");
  }

  private UnitUnderTest good() {
    return unit.reads("J1-A", "P2-1", "0.05")
        .reads("J1-B", "P2-2", "0.05")
        .reads("J1-A", "REST", "OL");
  }

  private static String page(CheckResult result) {
    return CheckText.write(result, Look.PLAIN, NowDo.NOTHING);
  }

  private static String firstLine(CheckResult result) {
    return page(result).lines().findFirst().orElseThrow();
  }

  @Test
  void a_good_unit_conforms_in_the_first_line() {
    String first = firstLine(good().check());
    assertTrue(first.startsWith("CONFORMS"), first);
  }

  @Test
  void a_unit_with_a_fault_says_so_in_the_first_line() {
    String first =
        firstLine(
            unit.reads("J1-A", "P2-1", "OL")
                .reads("J1-B", "P2-2", "0.05")
                .reads("J1-A", "REST", "OL")
                .check());
    assertTrue(first.startsWith("FAULT"), first);
  }

  @Test
  void a_unit_of_which_something_is_owed_is_incomplete_in_the_first_line() {
    String first = firstLine(unit.reads("J1-A", "P2-1", "0.05").check());
    assertTrue(first.startsWith("NOT COMPLETE"), first);
  }

  @Test
  void the_counts_stand_under_the_verdict() {
    assertEquals(
        "3 conform, 0 fail, 0 not tested, 0 not judged.",
        page(good().check()).lines().dropWhile(line -> !line.matches("\\d.*")).findFirst().get());
  }

  @Test
  void a_fault_says_what_shows_it_with_its_cell_and_what_to_do() {
    String page =
        page(
            unit.reads("J1-A", "P2-1", "OL")
                .reads("J1-B", "P2-2", "0.05")
                .reads("J1-A", "REST", "OL")
                .check());
    assertTrue(page.contains(" 1  OPEN  ("), page);
    assertTrue(page.contains("W1 is open: J1-A and P2-1 are not joined."), page);
    assertTrue(page.contains("shown  J1-A to P2-1"), page);
    assertTrue(page.contains("continuity.csv D2"), page);
    assertTrue(page.contains("    do     "), page);
  }

  @Test
  void what_is_wrong_stands_before_what_to_measure_and_what_is_owed() {
    String page = page(unit.reads("J1-A", "P2-1", "OL").check());
    List<Integer> order =
        List.of(
            page.indexOf("WHAT IS WRONG"),
            page.indexOf("WHAT TO MEASURE NEXT"),
            page.indexOf("WHAT IS NOT YET PROVEN"),
            page.indexOf("BEFORE YOU TOUCH THE UNIT"));
    assertEquals(order.stream().sorted().toList(), order, page);
    assertFalse(order.contains(-1), page);
  }

  @Test
  void a_unit_that_conforms_needs_no_cautions() {
    assertFalse(page(good().check()).contains("BEFORE YOU TOUCH THE UNIT"));
  }

  @Test
  void over_range_without_a_range_is_said_to_count_as_open() {
    String flat = page(good().check()).replaceAll("\\s+", " ");
    assertTrue(flat.contains("OL counts as open, since no \"continuity range\" is given"), flat);
  }

  @Test
  void the_plan_of_the_rest_is_one_command_in_lines_that_a_shell_takes() {
    String command =
        "ringout plan \"/units of the bridge/span-lock-box\" --after '/units/it'\\''s monday' --after"
            + " /units/readings-of-tuesday-afternoon /units/more --any-revision -o rest.xlsx";
    NowDo nowDo = new NowDo(command, "", "");
    String page = CheckText.write(unit.reads("J1-A", "P2-1", "0.05").check(), Look.PLAIN, nowDo);
    String typed =
        page.substring(page.indexOf("  ringout plan"))
            .lines()
            .takeWhile(line -> line.startsWith("  "))
            .map(String::strip)
            .collect(Collectors.joining("\n"));
    assertTrue(typed.contains("\\\n"), typed);
    assertEquals(command, typed.replaceAll(" \\\\\n", " "));
  }

  @Test
  void the_page_ends_with_the_verdict_and_the_command_to_go_on_with() {
    NowDo nowDo = new NowDo("plan the rest", "plan the retest", "write the record");
    assertTrue(CheckText.write(good().check(), Look.PLAIN, nowDo).endsWith("write the record\n"));
    CheckResult faulty = unit.reads("J1-A", "P2-2", "0.05").check();
    String page = CheckText.write(faulty, Look.PLAIN, nowDo);
    String end = page.substring(page.lastIndexOf("\n\n")).replaceAll("\\s+", " ").strip();
    assertTrue(end.startsWith(page.lines().findFirst().orElseThrow() + " Mend;"), end);
    assertTrue(end.endsWith("plan the retest"), end);
  }

  @Test
  void a_page_is_as_wide_as_the_terminal_between_the_least_and_the_most() {
    CheckResult faulty = unit.reads("J1-A", "P2-2", "0.05").check();
    for (int width : new int[] {20, 60, 97, 120, 400}) {
      int most = Math.max(60, Math.min(120, width));
      String page = CheckText.write(faulty, new Look(false, width), NowDo.NOTHING);
      int widest = page.lines().mapToInt(String::length).max().orElseThrow();
      assertTrue(widest <= most && widest > most - 20, width + ": " + widest);
    }
  }

  @Test
  void no_line_is_wider_than_the_terminal() {
    String page = page(unit.reads("J1-A", "P2-2", "0.05").check());
    assertTrue(page.lines().allMatch(line -> line.length() <= Look.PLAIN.width()), page);
  }

  /** The last paragraph of a page that has commands to go on with. */
  private static String last(CheckResult result) {
    String page =
        CheckText.write(
            result, Look.PLAIN, new NowDo("ringout rest", "ringout retest", "ringout record"));
    return page.substring(page.lastIndexOf("\n\n") + 2).strip();
  }

  @Test
  void a_row_that_was_not_read_is_to_be_read_again_and_no_doubt_is_spoken_of() {
    CheckResult result =
        unit.reads("J1-A", "P2-1", "0.05")
            .reads("J1-B", "P2-2", "0.05")
            .reads("J1-A", "REST", "OL")
            .reads("J1-B", "REST", "")
            .check();
    assertTrue(result.coverage().isComplete(), last(result));
    String last = last(result).replaceAll("\\s+", " ");
    assertTrue(
        last.endsWith("Read again what is not tested or not judged, above, then check again."),
        last);
  }
}
