package dev.ringout.imports;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.ringout.harness.Wire;
import dev.ringout.support.ImportedList;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The same list in every format gives the same import. */
class FormatsTest {
  private static final Path SAVED = Path.of("src/test/resources/formats");

  @TempDir Path folder;

  private static List<String> told(ImportedList list) {
    return list.wires().stream()
        .map(
            wire ->
                String.join(
                    " ",
                    wire.name(),
                    wire.from().toString(),
                    wire.to().toString(),
                    wire.gauge().toString(),
                    wire.colour(),
                    wire.length().toString(),
                    wire.notes().toString()))
        .toList();
  }

  @ParameterizedTest
  @ValueSource(strings = {"list.xlsx", "list.xls", "list.ods"})
  void what_libreoffice_saves_gives_the_same_import_in_each_of_its_formats(String file)
      throws Exception {
    Path written = folder.resolve("list.xlsx");
    MessyList.read(SAVED.resolve("list.txt")).write(written);
    ImportedList expected = ImportedList.of(written);
    ImportedList saved = ImportedList.of(SAVED.resolve(file));

    assertEquals(told(expected), told(saved));
    assertEquals(expected.pins(), saved.pins());
    assertEquals(expected.rows(), saved.rows());
    assertEquals(String.join("\n", expected.findings()), String.join("\n", saved.findings()), file);
  }

  @Test
  void the_list_has_what_is_written_beside_its_rows() throws Exception {
    ImportedList saved = ImportedList.of(SAVED.resolve("list.ods"));
    assertEquals(
        List.of("J1-A > P2-1", "J1-B > P2-2", "J1-7 > P2-5", "J1-G > P2-7", "J1-H > P2-8"),
        saved.ends());
    assertEquals(3, saved.result().lostRows());
    for (String kind : List.of("struck", "red", "comment", "hidden", "filtered", "merged")) {
      assertTrue(
          saved.result().findings().stream().anyMatch(one -> one.kind().word().equals(kind)),
          kind + " among " + saved.findings());
    }
  }

  private static final String TEXT =
      "Wire;From;To;Cross section mm²;Length (m)\nW1;J1-A;P2-1;0,75;1,5\nW2;J1-B;P2–2;1;2\n";

  @ParameterizedTest
  @CsvSource({
    "UTF-8, ''",
    "UTF-8, \uFEFF",
    "UTF-16LE, \uFEFF",
    "UTF-16BE, \uFEFF",
    "UTF-16LE, ''",
    "windows-1252, ''"
  })
  void text_files_are_read_in_every_usual_encoding(String encoding, String mark) throws Exception {
    for (Map.Entry<String, String> separator :
        Map.of(".csv", ";", ".tsv", "\t", ".txt", "\t").entrySet()) {
      Path file = folder.resolve("list" + separator.getKey());
      String text = mark + TEXT.replace(";", separator.getValue());
      Files.write(file, text.getBytes(Charset.forName(encoding)));
      ImportedList list = ImportedList.of(file);
      assertEquals(List.of("J1-A > P2-1", "J1-B > P2-2"), list.ends(), file.toString());
      Wire first = list.wires().get(0);
      assertEquals("0.75 mm²", first.gauge().orElseThrow().label());
      assertEquals(1.5, first.length().orElseThrow().metres());
    }
  }

  @Test
  void commas_part_columns_where_there_are_more_of_them() throws Exception {
    Path file = folder.resolve("list.csv");
    Files.writeString(
        file, "Wire,From,To,Note\nW1,J1-A,P2-1,\"a; b; c; d\"\n", StandardCharsets.UTF_8);
    assertEquals(List.of("J1-A > P2-1"), ImportedList.of(file).ends());
  }

  @Test
  void a_bare_quotation_mark_in_a_tabbed_text_is_as_above_not_a_quote() throws Exception {
    Path file = folder.resolve("list.txt");
    Files.writeString(
        file,
        "Wire\tConnector\tPin\tTo\nW1\tJ1\tA\tP2-1\nW2\t\"\tB\tP2-2\n",
        StandardCharsets.UTF_8);
    assertEquals(List.of("J1-A > P2-1", "J1-B > P2-2"), ImportedList.of(file).ends());
  }
}
