package dev.ringout.print;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.ringout.sheet.OutSheet;
import dev.ringout.sheet.OutSheet.Look;
import dev.ringout.sheet.PrintForm;
import dev.ringout.sheet.PrintForm.PaperSize;
import java.util.List;
import java.util.function.Supplier;
import org.junit.jupiter.api.Test;

/** Sheets as a page to print. */
class SheetsHtmlTest {
  private static String page(PaperSize paper, OutSheet... sheets) {
    return SheetsHtml.write(PrintForm.wired("Span lock box", paper), List.of(sheets));
  }

  private static OutSheet sheet(String name, String... cells) {
    return new OutSheet(
        name, List.of("Pin", "Wire"), List.of(List.of(cells)), Look.printed("Span lock box"));
  }

  @Test
  void the_paper_is_the_one_that_is_asked_for() {
    assertTrue(page(PaperSize.A4).contains("@page { size: A4 landscape;"));
    assertTrue(page(PaperSize.LETTER).contains("@page { size: letter landscape;"));
  }

  @Test
  void every_printed_page_says_which_unit_and_has_a_place_to_sign() {
    String page = page(PaperSize.A4);
    assertTrue(page.contains("@top-left { content: \"Span lock box\";"));
    assertTrue(page.contains("@top-right { content: \"serial number ____"));
    assertTrue(page.contains("@bottom-right { content: \"made by ____"));
  }

  @Test
  void a_long_sheet_is_set_in_parts_each_with_its_headings() {
    List<List<String>> rows = new java.util.ArrayList<>();
    for (int i = 1; i <= 2 * PaperParts.MOST_ROWS; i++) {
      rows.add(List.of("J1-" + i, "W" + i));
    }
    OutSheet sheet =
        new OutSheet("Steps", List.of("Pin", "Wire"), rows, Look.printed("Span lock box"));
    PrintForm form = PrintForm.wired("Span lock box", PaperSize.A4);
    List<String> parts =
        SheetsHtml.forPaper(form, List.of(sheet)).pages().stream().map(Supplier::get).toList();
    assertEquals(2, parts.size());
    for (String part : parts) {
      assertTrue(part.contains("<th>Pin</th>"));
      assertFalse(part.contains("counter(page)"), "numbered when all are set");
    }
    assertTrue(parts.get(0).contains("J1-" + PaperParts.MOST_ROWS + "<"));
    assertTrue(parts.get(1).contains("J1-" + (PaperParts.MOST_ROWS + 1) + "<"));
    assertEquals(1, String.join("", parts).split("<h1>", -1).length - 1);
  }

  @Test
  void a_screen_has_what_paper_does_not_need() {
    OutSheet sheet = sheet("Steps", "1", "2");
    PrintForm form = PrintForm.wired("Span lock box", PaperSize.A4);
    String paper = SheetsHtml.forPaper(form, List.of(sheet)).pages().get(0).get();
    String screen = page(PaperSize.A4, sheet);
    for (String part :
        List.of("<nav ", "prefers-color-scheme: dark", "max-width: max(100%, 180mm)")) {
      assertTrue(screen.contains(part), part);
      assertFalse(paper.contains(part), part);
    }
    assertTrue(screen.contains("name=\"viewport\""));
    assertEquals(
        screen.split("<div class=\"scroll\"", -1).length,
        screen.split("<table", -1).length,
        "a table that is wider than a phone moves by itself");
  }

  @Test
  void what_a_cell_says_is_words_and_no_mark_of_the_page() {
    String page = page(PaperSize.A4, sheet("J1", "A", "<b>W1 & \"W2\"</b>"));
    assertTrue(page.contains("&lt;b&gt;W1 &amp; &quot;W2&quot;&lt;/b&gt;"));
    assertFalse(page.contains("<b>W1"));
  }

  @Test
  void a_row_that_is_shorter_than_its_headings_is_filled_with_empty_cells() {
    String page = page(PaperSize.A4, sheet("J1", "A"));
    assertTrue(page.contains("<td class=\"short\">A</td><td class=\"short\"></td></tr>"), page);
  }

  @Test
  void a_sheet_that_is_not_for_print_is_left_out() {
    OutSheet plain = new OutSheet("Wires", List.of("Wire"), List.of(List.of("W1")));
    assertFalse(page(PaperSize.A4, plain).contains("<section"));
  }

  @Test
  void a_column_to_write_in_is_a_box() {
    OutSheet toFill =
        new OutSheet(
            "Job",
            List.of("Name", "Value"),
            List.of(List.of("date", "")),
            Look.printed("Box").withToFill(1));
    assertTrue(page(PaperSize.A4, toFill).contains("<td class=\"fill\"></td>"));
  }

  @Test
  void the_same_sheets_give_the_same_page() {
    assertEquals(
        page(PaperSize.A4, sheet("J1", "A", "W1")), page(PaperSize.A4, sheet("J1", "A", "W1")));
  }
}
