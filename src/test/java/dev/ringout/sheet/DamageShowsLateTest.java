package dev.ringout.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.ringout.source.Problems;
import dev.ringout.source.UnusableInput;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Damage that shows only while rows are read is damage too, and no defect of the program. */
class DamageShowsLateTest {
  private static final Path SAVED = Path.of("src/test/resources/formats");

  @TempDir Path folder;

  private Path with(String file, String part, String from, String to) throws IOException {
    Map<String, byte[]> parts = new LinkedHashMap<>();
    try (ZipFile zip = new ZipFile(SAVED.resolve(file).toFile())) {
      for (ZipEntry entry : java.util.Collections.list(zip.entries())) {
        parts.put(entry.getName(), zip.getInputStream(entry).readAllBytes());
      }
    }
    String text = new String(parts.get(part), StandardCharsets.UTF_8);
    assertTrue(text.contains(from), "the file has no " + from);
    parts.put(part, text.replace(from, to).getBytes(StandardCharsets.UTF_8));
    Path damaged = folder.resolve(file);
    try (ZipOutputStream zip = new ZipOutputStream(Files.newOutputStream(damaged))) {
      for (Map.Entry<String, byte[]> one : parts.entrySet()) {
        zip.putNextEntry(new ZipEntry(one.getKey()));
        zip.write(one.getValue());
        zip.closeEntry();
      }
    }
    return damaged;
  }

  @ParameterizedTest
  @CsvSource({
    "list.xlsx, xl/styles.xml, formatCode=, other=",
    "list.xlsx, xl/styles.xml, numFmtId=, other=",
    "list.xlsx, xl/worksheets/sheet1.xml, ' s=\"', ' s=\"x'",
    "list.ods, content.xml, number-columns-repeated=\", number-columns-repeated=\"-"
  })
  void it_is_told_as_damage(String file, String part, String from, String to) throws IOException {
    Path damaged = with(file, part, from, to);
    UnusableInput refused = assertThrows(UnusableInput.class, () -> Book.read(damaged));
    assertEquals(UnusableInput.Reason.NOT_UNDERSTOOD, refused.reason());
    assertTrue(refused.text().startsWith("is a damaged workbook"), refused.text());
  }

  @ParameterizedTest
  @CsvSource({"list.xlsx", "list.ods"})
  void what_goes_wrong_with_who_reads_the_rows_is_no_damage(String file) throws Exception {
    IllegalStateException own = new IllegalStateException("a defect");
    try (TabularFile table = TabularFile.open(SAVED.resolve(file), file, new Problems())) {
      IllegalStateException thrown =
          assertThrows(
              IllegalStateException.class,
              () ->
                  table
                      .sheets()
                      .get(0)
                      .forEachRow(
                          row -> {
                            throw own;
                          }));
      assertSame(own, thrown);
    }
  }
}
