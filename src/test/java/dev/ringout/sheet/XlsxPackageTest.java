package dev.ringout.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.ringout.source.Problems;
import dev.ringout.source.UnusableInput;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Workbooks by the standard and no further: where parts lie and what they are called is the
 * writer's business (ECMA-376, part 2, Open Packaging Conventions; from memory).
 */
class XlsxPackageTest {
  private static final String TRANSITIONAL =
      "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
  private static final String STRICT = "http://purl.oclc.org/ooxml/officeDocument/relationships";

  @TempDir Path folder;

  private static String references(String types, String... rows) {
    StringBuilder xml = new StringBuilder("<Relationships>");
    for (int i = 0; i < rows.length; i += 3) {
      xml.append(
          "<Relationship Id=\"%s\" Type=\"%s/%s\" Target=\"%s\"/>"
              .formatted(rows[i], types, rows[i + 1], rows[i + 2]));
    }
    return xml.append("</Relationships>").toString();
  }

  private static String book(String types, String id) {
    return "<workbook xmlns:r=\""
        + types
        + "\"><sheets><sheet name=\"Wires\" r:id=\""
        + id
        + "\"/></sheets></workbook>";
  }

  private static String sheet(String cell) {
    return "<worksheet><sheetData><row r=\"1\"><c r=\"A1\""
        + cell
        + "</c></row></sheetData></worksheet>";
  }

  private Path file(Map<String, String> parts) throws IOException {
    Path file = folder.resolve("list.xlsx");
    try (ZipOutputStream zip = new ZipOutputStream(Files.newOutputStream(file))) {
      for (Map.Entry<String, String> part : parts.entrySet()) {
        zip.putNextEntry(new ZipEntry(part.getKey()));
        zip.write(part.getValue().getBytes(StandardCharsets.UTF_8));
      }
    }
    return file;
  }

  private List<String> read(Map<String, String> parts) throws IOException, UnusableInput {
    List<String> texts = new ArrayList<>();
    try (TabularFile file = TabularFile.open(file(parts), "list.xlsx", new Problems())) {
      for (Sheet sheet : file.sheets()) {
        sheet.forEachRow(row -> texts.add(sheet.name() + ": " + row.cell(1).text()));
      }
    }
    return texts;
  }

  private static Map<String, String> plain() {
    Map<String, String> parts = new LinkedHashMap<>();
    parts.put("_rels/.rels", references(TRANSITIONAL, "a", "officeDocument", "xl/workbook.xml"));
    parts.put("xl/workbook.xml", book(TRANSITIONAL, "b"));
    parts.put(
        "xl/_rels/workbook.xml.rels",
        references(TRANSITIONAL, "b", "worksheet", "worksheets/sheet1.xml"));
    parts.put("xl/worksheets/sheet1.xml", sheet("><v>7</v>"));
    return parts;
  }

  @Test
  void a_sheet_is_found_by_its_reference() throws Exception {
    assertEquals(List.of("Wires: 7"), read(plain()));
  }

  @Test
  void parts_may_lie_anywhere_be_named_from_the_top_and_in_any_case() throws Exception {
    Map<String, String> parts = new LinkedHashMap<>();
    parts.put("_rels/.rels", references(STRICT, "a", "officeDocument", "/some/Place/book.xml"));
    parts.put("some/place/BOOK.xml", book(STRICT, "b"));
    parts.put(
        "some/Place/_rels/book.xml.rels",
        references(
            STRICT, "b", "worksheet", "../far/./one.xml", "c", "sharedStrings", "/texts.xml"));
    parts.put("some/far/one.xml", sheet(" t=\"s\"><v>1</v>"));
    parts.put("texts.xml", "<sst><si><t>no</t></si><si><t>yes</t></si></sst>");
    assertEquals(List.of("Wires: yes"), read(parts));
  }

  @Test
  void a_reference_to_the_outside_is_no_part() throws Exception {
    Map<String, String> parts = plain();
    parts.put(
        "xl/_rels/workbook.xml.rels",
        references(TRANSITIONAL, "b", "worksheet", "../../../../../etc/hostname"));
    UnusableInput refused = assertThrows(UnusableInput.class, () -> read(parts));
    assertEquals("is a damaged workbook: its part etc/hostname is not there", refused.text());
    parts.put(
        "xl/_rels/workbook.xml.rels",
        references(TRANSITIONAL, "b", "worksheet", "worksheets/sheet1.xml")
            .replace("Target", "TargetMode=\"External\" Target"));
    refused = assertThrows(UnusableInput.class, () -> read(parts));
    assertEquals("is a damaged workbook: its sheet \"Wires\" is not there", refused.text());
  }

  @Test
  void a_document_of_another_kind_is_no_workbook() throws Exception {
    Map<String, String> parts = new LinkedHashMap<>();
    parts.put("_rels/.rels", references(TRANSITIONAL, "a", "officeDocument", "word/document.xml"));
    parts.put("word/document.xml", "<document><body/></document>");
    UnusableInput refused = assertThrows(UnusableInput.class, () -> read(parts));
    assertTrue(refused.text().contains("no workbook but a document"), refused.text());
    refused = assertThrows(UnusableInput.class, () -> read(Map.of("readme.txt", "a zip")));
    assertEquals("is a damaged workbook: its part xl/workbook.xml is not there", refused.text());
  }

  @Test
  void a_hundred_times_its_packed_size_is_too_much_for_any_part() throws Exception {
    String blanks = " ".repeat(1_000_000);
    for (String part : List.of("xl/workbook.xml", "xl/worksheets/sheet1.xml", "_rels/.rels")) {
      Map<String, String> parts = plain();
      parts.merge(part, blanks, (xml, more) -> xml.replaceFirst(">", ">" + more));
      UnusableInput refused = assertThrows(UnusableInput.class, () -> read(parts), part);
      assertTrue(refused.text().startsWith("unpacks to far more"), refused.text());
    }
    Map<String, String> small = plain();
    small.merge(
        "xl/workbook.xml", " ".repeat(90_000), (xml, more) -> xml.replaceFirst(">", ">" + more));
    assertEquals(List.of("Wires: 7"), read(small), "a small part may be packed tightly");
  }

  @Test
  void a_comment_at_no_cell_is_damage() throws Exception {
    Map<String, String> parts = plain();
    parts.put(
        "xl/worksheets/_rels/sheet1.xml.rels",
        references(TRANSITIONAL, "c", "comments", "../comments1.xml"));
    parts.put(
        "xl/comments1.xml",
        "<comments><comment ref=\"?\"><text><t>x</t></text></comment></comments>");
    UnusableInput refused = assertThrows(UnusableInput.class, () -> read(parts));
    assertTrue(refused.text().startsWith("is a damaged workbook"), refused.text());
  }
}
