package dev.ringout.sample;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.networknt.schema.InputFormat;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import dev.ringout.sheet.Cell;
import dev.ringout.sheet.Row;
import dev.ringout.sheet.Sheet;
import dev.ringout.sheet.TabularFile;
import dev.ringout.source.Problems;
import dev.ringout.support.Run;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The sample is what its code makes, its workbook and folder are the same, its answers are known.
 */
class SwingBridgeTest {
  private static final Path SAMPLE = Path.of("harness-samples/swing-bridge");
  private static final String[] FILES = {
    "junction-box",
    "junction-box-c",
    "point-to-point",
    "point-to-point-clean",
    "point-to-point-values"
  };

  private static Run check(String readings, String... options) {
    List<String> words =
        new ArrayList<>(
            List.of(
                "check",
                SAMPLE.resolve("junction-box.xlsx").toString(),
                SAMPLE.resolve(readings).toString()));
    words.addAll(List.of(options));
    return Run.of(words.toArray());
  }

  private static Map<String, List<List<String>>> content(Path file) throws Exception {
    Map<String, List<List<String>>> sheets = new TreeMap<>();
    try (TabularFile table = TabularFile.open(file, "sample", new Problems())) {
      for (Sheet sheet : table.sheets()) {
        List<List<String>> rows = new ArrayList<>();
        sheet.forEachRow(row -> rows.add(texts(row)));
        sheets.put(sheet.name().toLowerCase(Locale.ROOT), rows);
      }
    }
    return sheets;
  }

  private static List<String> texts(Row row) {
    List<String> texts = new ArrayList<>(row.cells().stream().map(Cell::text).toList());
    while (!texts.isEmpty() && texts.get(texts.size() - 1).isEmpty()) {
      texts.remove(texts.size() - 1);
    }
    return texts;
  }

  @Test
  void the_files_in_the_repository_are_what_the_code_makes(@TempDir Path folder) throws Exception {
    WriteSamples.write(folder);
    for (String name : FILES) {
      assertEquals(content(folder.resolve(name)), content(SAMPLE.resolve(name)), name);
      assertEquals(
          content(folder.resolve(name + ".xlsx")), content(SAMPLE.resolve(name + ".xlsx")), name);
    }
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "paper-errors.xlsx",
        "as-received/connector-sheets.xlsx",
        "as-received/cable-schedule.ods",
        "as-received/net-table.csv"
      })
  void the_other_samples_are_what_the_code_makes_too(String name, @TempDir Path folder)
      throws Exception {
    WriteSamples.write(folder);
    assertEquals(content(folder.resolve(name)), content(SAMPLE.resolve(name)), name);
  }

  @Test
  void workbook_and_folder_hold_the_same() throws Exception {
    for (String name : FILES) {
      assertEquals(content(SAMPLE.resolve(name)), content(SAMPLE.resolve(name + ".xlsx")), name);
    }
  }

  @Test
  void the_faulty_unit_s_page_is_as_it_was_read_and_agreed() throws IOException {
    Run ran = check("point-to-point.xlsx");
    assertEquals(1, ran.code());
    assertEquals("", ran.err());
    Golden.assertMatches("swing-bridge.txt", ran.out());
  }

  @Test
  void the_faulty_unit_s_json_is_as_it_was_read_and_agreed() throws IOException {
    Golden.assertMatches("swing-bridge.json", check("point-to-point.xlsx", "--json").out());
  }

  @Test
  void each_value_that_is_not_as_listed_is_named_and_nothing_else_is() throws IOException {
    Run ran = check("point-to-point-values.xlsx");
    assertEquals(1, ran.code());
    assertEquals("", ran.err());
    Golden.assertMatches("swing-bridge-values.txt", ran.out());
    assertTrue(ran.out().startsWith("FAULTS: 5."));
  }

  /**
   * Read as the shop would: a rename, a new number, a ring of three, an earth, a splice, a horn.
   */
  @Test
  void the_next_revision_s_work_is_as_it_was_read_and_agreed() throws IOException {
    Run ran =
        Run.of("diff", SAMPLE.resolve("junction-box.xlsx"), SAMPLE.resolve("junction-box-c.xlsx"));
    assertEquals(1, ran.code());
    assertEquals("", ran.err());
    Golden.assertMatches("swing-bridge-diff.txt", ran.out());
  }

  @Test
  void the_good_unit_conforms_and_everything_is_proven() throws IOException {
    Run ran = check("point-to-point-clean.xlsx");
    assertEquals(0, ran.code(), ran.out());
    assertEquals("", ran.err());
    Golden.assertMatches("swing-bridge-clean.txt", ran.out());
  }

  @Test
  void folders_give_the_same_answer_as_workbooks() {
    Run folders =
        Run.of(
            "check",
            SAMPLE.resolve("junction-box").toString(),
            SAMPLE.resolve("point-to-point").toString());
    assertEquals(
        withoutCommand(check("point-to-point.xlsx").out()),
        withoutCommand(folders.out())
            .replace("continuity.csv ", "Continuity ")
            .replace("insulation.csv ", "Insulation "),
        "but for how cells and files are named");
  }

  private static String withoutCommand(String page) {
    return page.replaceFirst("(?s)\n  ringout .*", "");
  }

  @Test
  void everything_that_a_review_looks_for_is_wrong_once_in_the_paper_with_errors()
      throws Exception {
    Run run = Run.of("review", SAMPLE.resolve("paper-errors.xlsx"), "--today", "2026-11-25");
    assertEquals(1, run.code());
    assertEquals("", run.err());
    Golden.assertMatches("paper-errors.txt", run.out());
    assertEquals(List.of(), run.out().lines().filter(line -> line.length() > 80).toList());
    Run json = Run.of("review", SAMPLE.resolve("paper-errors.xlsx"), "--json");
    Run help = Run.of("review", SAMPLE.resolve("junction-box.xlsx"), "--json");
    assertEquals(0, help.code());
    for (String page : new java.io.File("docs/reference/checks").list()) {
      String rule = page.substring(0, page.length() - ".md".length());
      assertTrue(json.out().contains("\"rule\" : \"" + rule + "\""), rule);
    }
  }

  @Test
  void what_was_accepted_is_shown_apart_and_no_longer_fails() {
    Run run =
        Run.of(
            "review",
            SAMPLE.resolve("paper-errors.xlsx"),
            "--waivers",
            SAMPLE.resolve("waivers.csv"),
            "--today",
            "2026-11-25");
    String page = run.out().replaceAll("\\s+", " ");
    assertTrue(page.contains("2 remarks waived"), page);
    assertTrue(page.contains("Accepted by M. Osei"), page);
    assertTrue(page.contains("expired on 2026-06-30"), page);
  }

  @ParameterizedTest
  @ValueSource(strings = {"tr", "de", "ar-EG"})
  void the_answer_is_the_same_in_every_locale(String language) {
    Locale before = Locale.getDefault();
    try {
      Locale.setDefault(Locale.ENGLISH);
      String json = check("point-to-point.xlsx", "--json").out();
      String page = check("point-to-point.xlsx").out();
      Locale.setDefault(Locale.forLanguageTag(language));
      assertEquals(json, check("point-to-point.xlsx", "--json").out());
      assertEquals(page, check("point-to-point.xlsx").out());
    } finally {
      Locale.setDefault(before);
    }
  }

  @Test
  void no_line_is_wider_than_80_columns() {
    for (String readings :
        new String[] {
          "point-to-point.xlsx", "point-to-point-clean.xlsx", "point-to-point-values.xlsx"
        }) {
      assertEquals(
          List.of(), check(readings).out().lines().filter(line -> line.length() > 80).toList());
    }
  }

  @Test
  void json_follows_its_schema() throws IOException {
    var schema =
        SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
            .getSchema(Files.readString(Path.of("docs/reference/check.schema.json")));
    for (String json :
        List.of(
            check("point-to-point.xlsx", "--json").out(),
            check("point-to-point-clean.xlsx", "--json").out(),
            check("point-to-point-values.xlsx", "--json").out(),
            check("nowhere.xlsx", "--json").out())) {
      assertEquals(List.of(), schema.validate(json, InputFormat.JSON));
    }
    assertTrue(
        !schema.validate("{\"format\":\"ringout-check/1\"}", InputFormat.JSON).isEmpty(),
        "the schema can fail");
  }
}
