package dev.ringout.jobs;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.ringout.harness.Harness;
import dev.ringout.readings.ReadingSet;
import dev.ringout.seal.Digest;
import dev.ringout.seal.Seal;
import dev.ringout.sheet.TabularFile;
import dev.ringout.source.Problems;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is judged is what is sealed: whatever becomes of a file while it is worked on. */
class ReadOnceTest {
  private static final String FAILING = "From,To,Reading\nJ1-A,P2-1,OL\n";
  private static final String PASSING = "From,To,Reading\nJ1-A,P2-1,0.2\n";

  @TempDir Path folder;

  private Path file(String name, String text) throws IOException {
    return Files.writeString(folder.resolve(name), text);
  }

  @Test
  void the_digest_is_of_the_bytes_that_were_judged_and_not_of_what_lies_there_later()
      throws IOException {
    Path list = file("list.csv", "Wire,From,To\nW1,J1-A,P2-1\n");
    Path sheet = file("sheet.csv", PASSING);
    FileInputs inputs = new FileInputs(List.of(list, sheet));
    Harness harness = inputs.harness(list).orElseThrow();
    ReadingSet readings = inputs.readings(List.of(sheet), harness);
    Files.writeString(sheet, FAILING);
    Files.writeString(list, "Wire,From,To\nW1,J1-A,P2-2\n");
    assertEquals("0.2 Ω", readings.readings().get(0).measured().text());
    assertEquals(
        List.of(
            new Seal.Named("list.csv", Digest.of("Wire,From,To\nW1,J1-A,P2-1\n")),
            new Seal.Named("sheet.csv", Digest.of(PASSING))),
        inputs.sealed(List.of(list, sheet), folder).files());
  }

  @Test
  void a_file_that_changes_between_two_readings_of_one_run_is_refused() throws IOException {
    Path list = file("list.csv", "Wire,From,To\nW1,J1-A,P2-1\n");
    Path sheet = file("sheet.csv", PASSING);
    FileInputs inputs = new FileInputs(List.of(list, sheet));
    Harness harness = inputs.harness(list).orElseThrow();
    inputs.readings(List.of(sheet), harness);
    Files.writeString(sheet, FAILING);
    inputs.readings(List.of(sheet), harness);
    assertTrue(
        inputs.problems().list().stream()
            .anyMatch(one -> one.text().contains("it was changed while it was read")));
  }

  @Test
  void a_sheet_is_read_from_what_was_opened_in_every_format() throws Exception {
    List<List<String>> rows = List.of(List.of("From", "To"), List.of("J1-A", "P2-1"));
    Path text = file("list.csv", "From,To\nJ1-A,P2-1\n");
    for (Path path :
        List.of(
            text,
            Path.of("src/test/resources/formats/list.xlsx"),
            Path.of("src/test/resources/formats/list.xls"),
            Path.of("src/test/resources/formats/list.ods"))) {
      Path copy = folder.resolve("copy-" + path.getFileName());
      Files.copy(path, copy);
      List<String> first = new ArrayList<>();
      List<String> second = new ArrayList<>();
      try (TabularFile table = TabularFile.open(copy, "list", new Problems())) {
        table.sheets().get(0).forEachRow(row -> first.add(row.toString()));
        Files.write(copy, new byte[0]);
        table.sheets().get(0).forEachRow(row -> second.add(row.toString()));
      }
      assertTrue(first.size() >= rows.size(), copy.toString());
      assertEquals(first, second, copy.toString());
    }
  }

  @Test
  void own_tables_are_digested_as_they_were_read() throws Exception {
    Path tables = Files.createDirectory(folder.resolve("tables"));
    String own = "contact,strip_min_mm,strip_max_mm\n20,4.5,5\n";
    Files.writeString(tables.resolve("strip-lengths.csv"), own);
    FileInputs inputs = new FileInputs(List.of());
    inputs.tables(tables);
    Files.writeString(tables.resolve("strip-lengths.csv"), own.replace("4.5", "4.6"));
    Inputs.Sealed sealed = inputs.sealed(List.of(tables), folder);
    assertEquals(
        List.of(new Seal.Named("tables/strip-lengths.csv", Digest.of(own))), sealed.files());
    assertEquals(List.of("tables"), sealed.folders());
  }
}
