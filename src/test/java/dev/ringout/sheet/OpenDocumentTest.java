package dev.ringout.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.ringout.source.UnusableInput;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** OpenDocument spreadsheets as several programs write them. */
class OpenDocumentTest {
  private static final String ODF = "urn:oasis:names:tc:opendocument:xmlns:";

  @TempDir Path folder;

  /** A file of one sheet; no part of it is there that the standard does not demand. */
  private Book read(String styles, String sheet) throws Exception {
    Path file = folder.resolve("list.ods");
    try (ZipOutputStream zip = new ZipOutputStream(Files.newOutputStream(file))) {
      put(zip, "mimetype", "application/vnd.oasis.opendocument.spreadsheet");
      if (!styles.isEmpty()) {
        put(zip, "styles.xml", document("document-styles", "<office:styles>" + styles, "styles"));
      }
      put(
          zip,
          "content.xml",
          document(
              "document-content",
              "<office:body><office:spreadsheet><table:table table:name='List'>"
                  + sheet
                  + "</table:table></office:spreadsheet>",
              "body"));
    }
    return Book.read(file);
  }

  private static String document(String root, String inside, String end) {
    StringBuilder names = new StringBuilder();
    for (String name : List.of("office", "table", "text", "style")) {
      names.append(" xmlns:" + name + "='" + ODF + name + ":1.0'");
    }
    return "<office:"
        + root
        + names
        + " xmlns:draw='"
        + ODF
        + "drawing:1.0' xmlns:calcext='urn:org:documentfoundation:names:experimental:calc:"
        + "xmlns:calcext:1.0' xmlns:fo='"
        + ODF
        + "xsl-fo-compatible:1.0'>"
        + inside
        + "</office:"
        + end
        + "></office:"
        + root
        + ">";
  }

  private static void put(ZipOutputStream zip, String name, String text) throws Exception {
    zip.putNextEntry(new ZipEntry(name));
    zip.write(text.getBytes(StandardCharsets.UTF_8));
    zip.closeEntry();
  }

  private static String row(String cells) {
    return "<table:table-row>" + cells + "</table:table-row>";
  }

  private static String cell(String inside) {
    return "<table:table-cell office:value-type='string'>" + inside + "</table:table-cell>";
  }

  private static String text(String text) {
    return cell("<text:p>" + text + "</text:p>");
  }

  @Test
  void no_styles_are_needed() throws Exception {
    assertEquals("J1-A", read("", row(text("J1-A"))).cell(1, 1).text());
  }

  @Test
  void a_vocabulary_is_known_by_its_name_and_not_by_its_prefix() throws Exception {
    Path file = folder.resolve("other.ods");
    try (ZipOutputStream zip = new ZipOutputStream(Files.newOutputStream(file))) {
      put(zip, "mimetype", "application/vnd.oasis.opendocument.spreadsheet");
      put(
          zip,
          "content.xml",
          document(
                  "document-content",
                  "<office:body><office:spreadsheet><table:table table:name='List'>"
                      + row(text("J1-A"))
                      + "</table:table></office:spreadsheet>",
                  "body")
              .replace("table:", "t:")
              .replace("xmlns:table=", "xmlns:t=")
              .replace("xmlns:t:1.0", "xmlns:table:1.0")
              .replace("text:", "x:")
              .replace("xmlns:text=", "xmlns:x=")
              .replace("xmlns:x:1.0", "xmlns:text:1.0"));
    }
    assertEquals("J1-A", Book.read(file).cell(1, 1).text());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          J1<text:s/>A | J1 A
          J1<text:s text:c='3'/>A | J1   A
          <text:span>J1</text:span>-<text:a>A</text:a> | J1-A
          <text:span>J<text:span>1</text:span>-A</text:span> | J1-A
          J1  A | J1 A
          """)
  void blanks_and_runs_are_read_as_the_standard_says(String inside, String expected)
      throws Exception {
    assertEquals(expected, read("", row(text(inside))).cell(1, 1).text());
  }

  @Test
  void paragraphs_and_breaks_are_lines() throws Exception {
    String cell = cell("<text:p>J1</text:p><text:p>A<text:line-break/>B<text:tab/>C</text:p>");
    assertEquals("J1\nA\nB\tC", read("", row(cell)).cell(1, 1).text());
  }

  @Test
  void what_hangs_on_a_cell_is_no_text_of_it() throws Exception {
    String cell =
        cell(
            "<office:annotation><text:p>see note</text:p></office:annotation>"
                + "<draw:frame><draw:text-box><text:p>arrow</text:p></draw:text-box></draw:frame>"
                + "<text:p>J1<office:annotation><text:p>4</text:p></office:annotation>-A</text:p>");
    Book book = read("", row(text("") + cell));
    assertEquals("J1-A", book.cell(1, 2).text());
    assertEquals(Map.of(new Surroundings.Spot(1, 2), "4"), book.around().comments());
  }

  @Test
  void what_a_style_says_holds_for_those_that_are_made_from_it() throws Exception {
    String styles =
        """
        <style:style style:name='Gone' style:family='table-cell'>\
        <style:text-properties style:text-line-through-style='solid' fo:color='#ff0000'/>\
        </style:style>\
        <style:style style:name='ce1' style:family='table-cell' style:parent-style-name='Gone'/>\
        <style:style style:name='T1' style:family='text'>\
        <style:text-properties style:text-line-through-style='none'/></style:style>\
        """;
    String cell =
        "<table:table-cell table:style-name='ce1' office:value-type='string'>"
            + "<text:p>J1<text:span text:style-name='T1'>J2</text:span></text:p></table:table-cell>";
    assertEquals(new Cell.Ink(true, "J2", true), read(styles, row(cell)).cell(1, 1).ink());
  }

  @Test
  void a_merge_holds_its_text_once() throws Exception {
    Book book =
        read(
            "",
            row(
                    "<table:table-cell table:number-rows-spanned='2' office:value-type='string'>"
                        + "<text:p>J1</text:p></table:table-cell>"
                        + text("A"))
                + row(
                    "<table:covered-table-cell office:value-type='string'><text:p>J1</text:p>"
                        + "</table:covered-table-cell>"
                        + text("B"))
                + row(text("J2")));
    assertEquals(List.of(new Surroundings.Merge(1, 1, 2, 1)), book.around().merges());
    assertEquals("", book.cell(2, 1).text());
    assertEquals("B", book.cell(2, 2).text());
    assertEquals("J2", book.cell(3, 1).text());
  }

  @Test
  void one_element_may_stand_for_many_cells_and_rows() throws Exception {
    Book book =
        read(
            "",
            "<table:table-column table:number-columns-repeated='2'/>"
                + "<table:table-column table:visibility='collapse'/>"
                + "<table:table-row table:number-rows-repeated='2'>"
                + "<table:table-cell table:number-columns-repeated='2'/>"
                + text("J1").replace("office:", "table:number-columns-repeated='2' office:")
                + "</table:table-row>"
                + "<table:table-row table:number-rows-repeated='1048000'/>"
                + "<table:table-row table:visibility='filter'>"
                + text("J2")
                + "</table:table-row>");
    assertEquals("J1", book.cell(2, 4).text());
    assertEquals("J2", book.cell(1_048_003, 1).text());
    assertEquals(Set.of(1_048_003), book.around().hiddenRows());
    assertEquals(Set.of(3), book.around().hiddenColumns());
    assertTrue(book.around().filtered());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "office:value-type='string' calcext:value-type='error'|Err:502",
        "office:value-type='string' table:formula='of:=#REF!'|#N/A",
        "office:value-type='string' office:string-value='J1-B'|J1-A"
      })
  void an_error_is_no_text_and_neither_is_what_is_shown_otherwise(String cell) throws Exception {
    String[] parts = cell.split("\\|", -1);
    Book book =
        read(
            "",
            row(
                "<table:table-cell "
                    + parts[0]
                    + "><text:p>"
                    + parts[1]
                    + "</text:p></table:table-cell>"));
    assertEquals(new Cell(Cell.Stored.ERROR, parts[1]), book.cell(1, 1));
  }

  @Test
  void a_formula_that_nobody_has_calculated_is_no_value() throws Exception {
    Book book = read("", row("<table:table-cell table:formula='of:=1+1'/>"));
    assertEquals(new Cell(Cell.Stored.UNCALCULATED, ""), book.cell(1, 1));
  }

  /** Each would fill the memory, or hide what stands behind it. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "<text:p>J1<text:s text:c='2000000000'/>A</text:p>",
        "<text:p>J1<text:s text:c='-1'/>A</text:p>",
        "<text:p>J1</text:p></table:table-cell>"
            + "<table:table-cell table:number-columns-repeated='2147483647'/>"
            + "<table:table-cell office:value-type='string'><text:p>J2</text:p>",
        "<text:p>J1</text:p></table:table-cell>"
            + "<table:table-cell table:number-columns-repeated='16384'/>"
            + "<table:table-cell office:value-type='string'><text:p>J2</text:p>",
        "<text:p>J1</text:p></table:table-cell></table:table-row>"
            + "<table:table-row table:number-rows-repeated='2147483647'/>"
            + "<table:table-row><table:table-cell><text:p>J2</text:p>",
        "<table:table><table:table-row/></table:table>",
        "<table:table-cell/>",
        "<text:p>J1</text:p></table:table-cell>"
            + "<table:table-cell table:number-columns-repeated='two'><text:p>J1</text:p>"
      })
  void what_no_spreadsheet_writes_is_damage(String inside) {
    UnusableInput refused = assertThrows(UnusableInput.class, () -> read("", row(cell(inside))));
    assertTrue(refused.text().startsWith("is a damaged workbook"), refused.text());
  }

  @Test
  void what_is_repeated_in_rows_and_columns_at_once_is_too_much() {
    String wide =
        text("J1").replace("office:", "table:number-columns-repeated='1000' office:").repeat(10);
    String many =
        row(wide)
            .replace("<table:table-row>", "<table:table-row table:number-rows-repeated='1000'>");
    UnusableInput refused = assertThrows(UnusableInput.class, () -> read("", many));
    assertTrue(refused.text().contains("over and over"), refused.text());
  }
}
