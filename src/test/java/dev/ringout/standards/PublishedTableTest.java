package dev.ringout.standards;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.ringout.standards.Tables.Confidence;
import dev.ringout.standards.Tables.Entry;
import dev.ringout.standards.Tables.Origin;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** A published value is worth as much as the source beside it. */
class PublishedTableTest {
  private static final Path FILES = Path.of("src/main/resources/dev/ringout/standards");

  /** Constants and lists of the program's own: no company has others. */
  private static final Set<String> NO_TABLES =
      Set.of(
          "awg",
          "cautions",
          "copper",
          "look-alikes",
          "mad-factors",
          "metric-conductors",
          "stranded-conductors",
          "stranding",
          "switch-contacts");

  @TempDir private Path folder;

  static Stream<String> files() throws IOException {
    try (Stream<Path> files = Files.list(FILES)) {
      return files.map(file -> "" + file.getFileName()).sorted().toList().stream();
    }
  }

  static List<String> tables() {
    return Tables.names();
  }

  @ParameterizedTest
  @MethodSource("files")
  void every_file_loads_and_names_its_source(String file) {
    PublishedTable table = PublishedTable.load(Tables.class, file);
    assertFalse(table.citation().isBlank());
    assertFalse(table.rows().isEmpty());
  }

  @ParameterizedTest
  @MethodSource("files")
  void a_row_that_says_how_sure_it_is_was_seen_or_is_from_memory(String file) {
    for (Map<String, String> row : PublishedTable.load(Tables.class, file).rows()) {
      String said = row.getOrDefault("confidence", "seen");
      assertTrue(Set.of("seen", "memory").contains(said), file + ": " + row);
    }
  }

  @ParameterizedTest
  @MethodSource("tables")
  void every_row_has_a_source_and_says_where_it_is_from_memory(String table) {
    for (Entry row : Tables.published().rows(table)) {
      assertFalse(row.source().isBlank(), row.toString());
      assertEquals(Origin.PUBLISHED, row.origin());
      assertEquals(
          row.confidence() == Confidence.MEMORY,
          row.citation().endsWith(" (this row from memory)"),
          row.toString());
    }
  }

  @ParameterizedTest
  @MethodSource("tables")
  void no_row_stands_twice(String table) {
    List<List<String>> keys =
        Tables.published().rows(table).stream()
            .map(row -> Tables.key(table, row.values()))
            .toList();
    assertEquals(keys.size(), new HashSet<>(keys).size());
    assertTrue(keys.stream().noneMatch(key -> key.stream().allMatch(String::isEmpty)), table);
  }

  @Test
  void every_file_is_a_table_that_a_user_can_lay_his_own_over_or_is_none_on_purpose()
      throws IOException {
    Set<String> expected = new TreeSet<>(NO_TABLES);
    expected.addAll(Tables.names());
    assertEquals(
        expected,
        files()
            .map(file -> file.replace(".csv", ""))
            .collect(Collectors.toCollection(TreeSet::new)));
  }

  @Test
  void every_file_is_read_by_the_program() throws IOException {
    StringBuilder code = new StringBuilder();
    try (Stream<Path> sources = Files.walk(Path.of("src/main/java"))) {
      for (Path source : sources.filter(one -> ("" + one).endsWith(".java")).sorted().toList()) {
        if (!source.endsWith("Tables.java")) {
          code.append(Files.readString(source));
        }
      }
    }
    for (String file : files().toList()) {
      assertTrue(
          code.indexOf("\"" + file + "\"") >= 0
              || code.indexOf("\"" + file.replace(".csv", "") + "\"") >= 0,
          "nothing reads " + file);
    }
  }

  @Test
  void every_table_is_named_in_the_reference() throws IOException {
    String page = Files.readString(Path.of("docs/reference/review.md"));
    for (String table : Tables.names()) {
      assertTrue(page.contains("`" + table + "`"), table);
    }
  }

  @Test
  void a_constant_is_found_by_its_name_in_whatever_row_it_stands() {
    PublishedTable table = PublishedTable.of("# source: a test\nname,value\nsecond,2\nfirst,1\n");
    assertEquals("1", table.row("name", "first").get("value"));
    assertThrows(IllegalStateException.class, () -> table.row("name", "third"));
  }

  @Test
  void a_row_of_one_s_own_stands_in_place_of_the_published_one_and_is_known_by_its_origin()
      throws Exception {
    Files.writeString(
        folder.resolve("strip-lengths.csv"),
        """
        # source: our specification PS-7
        contact,strip_min_mm,strip_max_mm,confidence
        20,4.5,5,memory
        """);
    List<Entry> rows =
        Tables.with(folder).rows("strip-lengths").stream()
            .filter(row -> row.get("contact").equals("20"))
            .toList();
    assertEquals(1, rows.size());
    assertEquals(Origin.OWN, rows.get(0).origin());
    assertEquals(4.5, rows.get(0).number("strip_min_mm"));
    assertEquals(
        "own table strip-lengths.csv: our specification PS-7",
        rows.get(0).citation(),
        "how sure a user is of a row is the user's affair");
  }

  @Test
  void a_word_where_the_published_table_has_numbers_is_refused() throws IOException {
    Files.writeString(
        folder.resolve("strip-lengths.csv"), "contact,strip_min_mm,strip_max_mm\n20,four,5\n");
    Tables.Unusable refused = assertThrows(Tables.Unusable.class, () -> Tables.with(folder));
    assertEquals(
        "strip-lengths.csv, row 1 of its data: strip_min_mm needs a number, not \"four\"",
        refused.getMessage());
  }
}
