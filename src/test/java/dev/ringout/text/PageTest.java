package dev.ringout.text;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.ringout.text.Page.Style;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Lines for a terminal of 80 columns. */
class PageTest {
  private static List<String> lines(Page page) {
    return page.toString().lines().toList();
  }

  @Test
  void a_paragraph_is_broken_between_words_at_80_columns() {
    List<String> lines = lines(new Page(Look.PLAIN).paragraph("", "four ".repeat(40)));
    assertEquals(3, lines.size());
    assertTrue(lines.stream().allMatch(line -> line.length() <= 80), lines.toString());
    assertEquals("four ".repeat(16).strip(), lines.get(0));
  }

  @Test
  void a_line_of_80_columns_fits_and_one_of_81_does_not() {
    String forty = "x".repeat(40);
    assertEquals(1, lines(new Page(Look.PLAIN).paragraph("", forty + " " + "y".repeat(39))).size());
    assertEquals(2, lines(new Page(Look.PLAIN).paragraph("", forty + " " + "y".repeat(40))).size());
  }

  @Test
  void lines_after_the_first_hang_under_its_words() {
    List<String> lines = lines(new Page(Look.PLAIN).paragraph("  - ", "word ".repeat(20)));
    assertEquals("  - word word", lines.get(0).substring(0, 13));
    assertEquals("    word", lines.get(1).substring(0, 8));
  }

  @Test
  void a_word_longer_than_the_page_is_not_cut() {
    String path = "J1-" + "A".repeat(100);
    assertEquals(List.of("  - " + path), lines(new Page(Look.PLAIN).paragraph("  - ", path)));
  }

  @Test
  void an_unbroken_blank_is_a_blank_at_which_no_line_ends() {
    String cell = "Continuity" + Page.UNBROKEN + "E9";
    List<String> lines = lines(new Page(Look.PLAIN).paragraph("", "x".repeat(70) + " " + cell));
    assertEquals("Continuity E9", lines.get(1));
  }

  @Test
  void no_line_ends_in_a_blank() {
    assertEquals("J1-A\n", new Page(Look.PLAIN).line("J1-A   ").toString());
    assertEquals("  -\n", new Page(Look.PLAIN).paragraph("  - ", "").toString());
  }

  @Test
  void a_heading_is_told_by_capitals_with_or_without_colours() {
    assertEquals("\nWHAT IS WRONG\n", new Page(Look.PLAIN).heading("What is wrong").toString());
    assertTrue(
        new Page(new Look(true, 80)).heading("What is wrong").toString().contains("WHAT IS WRONG"));
  }

  @Test
  void colours_are_there_only_when_asked_for() {
    for (Style style : Style.values()) {
      assertEquals("OPEN", new Page(Look.PLAIN).styled(style, "OPEN"));
      assertTrue(
          new Page(new Look(true, 80))
              .styled(style, "OPEN")
              .matches("\u001B\\[[0-9;]+mOPEN\u001B\\[0m"));
    }
    assertFalse(new Page(Look.PLAIN).heading("Next").toString().contains("\u001B"));
  }
}
