package dev.ringout.words;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.jr.ob.JSON;
import com.networknt.schema.InputFormat;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import dev.ringout.harness.Wiring;
import dev.ringout.imports.list.ColumnCertainty;
import dev.ringout.imports.list.Evidence;
import dev.ringout.imports.list.Grid;
import dev.ringout.imports.list.Hypothesis;
import dev.ringout.imports.list.ImportResult;
import dev.ringout.imports.list.Layout;
import dev.ringout.imports.list.ListColumn;
import dev.ringout.imports.list.ListTable;
import dev.ringout.imports.list.Role;
import dev.ringout.imports.list.Weighed;
import dev.ringout.json.ImportJson;
import dev.ringout.sheet.Sheet;
import dev.ringout.sheet.TabularFile;
import dev.ringout.source.Problems;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** All that speaks for or against a way to read a table has its sentence, code and line. */
class EveryEvidenceTest {
  private static final Path SCHEMA = Path.of("docs/reference/import.schema.json");
  private static final Path PAGE = Path.of("docs/reference/import.md");

  private static Map<?, ?> map(@Nullable Object part) {
    return part instanceof Map<?, ?> map ? map : Map.of();
  }

  private static Set<String> inSchema(String def, String property) throws IOException {
    Map<String, Object> schema = JSON.std.mapFrom(Files.readString(SCHEMA));
    Object one = map(map(schema.get("$defs")).get(def));
    Object values =
        property.isEmpty()
            ? map(one).get("enum")
            : map(map(map(one).get("properties")).get(property)).get("enum");
    Set<String> words = new TreeSet<>();
    if (values instanceof List<?> list) {
      list.forEach(value -> words.add(String.valueOf(value)));
    }
    return words;
  }

  private static Set<String> words() {
    Set<String> words = new TreeSet<>();
    Arrays.stream(Evidence.Kind.values()).map(Evidence.Kind::word).forEach(words::add);
    return words;
  }

  @Test
  void each_has_a_sentence_of_its_own() {
    Set<String> sentences = new HashSet<>();
    for (Evidence.Kind kind : Evidence.Kind.values()) {
      String sentence = HypothesisWords.evidence(new Evidence(kind, 10, 3, 4, "Ref"));
      assertFalse(sentence.isBlank(), kind.word());
      assertTrue(sentences.add(sentence), kind.word() + ": " + sentence);
    }
  }

  @Test
  void each_has_its_code_in_the_schema_and_the_schema_has_no_other() throws IOException {
    assertEquals(words(), inSchema("evidence", "code"));
  }

  @Test
  void each_layout_role_and_certainty_is_in_the_schema_and_no_other() throws IOException {
    Set<String> layouts = new TreeSet<>();
    Arrays.stream(Layout.values()).map(Layout::word).forEach(layouts::add);
    assertEquals(layouts, inSchema("layout", ""));
    Set<String> roles = new TreeSet<>();
    Arrays.stream(Role.values()).map(Role::title).forEach(roles::add);
    assertEquals(roles, inSchema("column", "as"));
    Set<String> certainties = new TreeSet<>();
    Arrays.stream(ColumnCertainty.values()).map(ColumnCertainty::word).forEach(certainties::add);
    assertEquals(certainties, inSchema("column", "certainty"));
  }

  /** The table under "What speaks for and against". */
  @Test
  void each_has_its_line_in_the_page_and_the_page_has_no_other() throws IOException {
    String page = Files.readString(PAGE);
    int start = page.indexOf("| evidence | points |");
    assertTrue(start > 0, "no table of evidence");
    Set<String> told = new TreeSet<>();
    Matcher line =
        Pattern.compile("(?m)^\\| `([a-z-]+)` \\|")
            .matcher(page.substring(start).split("\n\n", 2)[0]);
    while (line.find()) {
      told.add(line.group(1));
    }
    assertEquals(words(), told);
  }

  @Test
  void each_layout_and_role_is_explained_in_the_page() throws IOException {
    String page = Files.readString(PAGE);
    for (Layout layout : Layout.values()) {
      assertTrue(page.contains("| `" + layout.word() + "` |"), layout.word());
    }
    for (Role role : Role.values()) {
      assertTrue(page.contains("| `" + role.title() + "` |"), role.title());
    }
  }

  @ParameterizedTest
  @EnumSource(Evidence.Kind.class)
  void a_way_with_it_follows_the_schema(Evidence.Kind kind, @TempDir Path folder) throws Exception {
    Path file = Files.writeString(folder.resolve("list.csv"), "From,To\nJ1-A,P2-1\n");
    try (TabularFile table = TabularFile.open(file, "list.csv", new Problems())) {
      Sheet sheet = table.sheets().get(0);
      Grid grid = Grid.read(sheet);
      ListColumn from = new ListColumn(1, "From", Role.FROM, "", "", true, ColumnCertainty.CERTAIN);
      ListTable read = new ListTable(grid, 1, 1, 2, List.of(from), Layout.FROM_TO, "", grid.rows());
      List<Evidence> found = new ArrayList<>();
      found.add(new Evidence(kind, -20, 1, 4, ""));
      found.add(new Evidence(kind, 20, 0, 0, "Ref"));
      Hypothesis way = new Hypothesis(read, 0, found, 1, List.of(), List.of("--layout", "from-to"));
      Weighed weighed = new Weighed("list", "A1", List.of(way), Weighed.Standing.OPEN);
      ImportResult result =
          new ImportResult(
              List.of(),
              Wiring.NONE,
              List.of(),
              ImportResult.EndsFound.NONE,
              List.of(),
              List.of(weighed),
              List.of());
      assertEquals(
          List.of(),
          SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
              .getSchema(Files.readString(SCHEMA))
              .validate(ImportJson.write(result), InputFormat.JSON));
    }
  }
}
