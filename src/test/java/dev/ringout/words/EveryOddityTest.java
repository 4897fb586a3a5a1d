package dev.ringout.words;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.jr.ob.JSON;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import dev.ringout.harness.Wiring;
import dev.ringout.imports.list.Evidence;
import dev.ringout.imports.list.Finding;
import dev.ringout.imports.list.ImportResult;
import dev.ringout.imports.list.ImportResult.RowCounts;
import dev.ringout.imports.list.ImportResult.SheetReport;
import dev.ringout.imports.list.ImportResult.SkippedRow;
import dev.ringout.imports.list.Layout;
import dev.ringout.imports.list.Oddity;
import dev.ringout.imports.list.OddityKind;
import dev.ringout.imports.list.Role;
import dev.ringout.imports.list.RowOddity;
import dev.ringout.imports.list.SkipReason;
import dev.ringout.imports.list.WiringOddity;
import dev.ringout.json.ImportJson;
import dev.ringout.source.Place;
import dev.ringout.source.Severity;
import dev.ringout.support.Run;
import java.io.IOException;
import java.lang.reflect.Constructor;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Everything odd in a list has its sentence, its facts in the schema and its sort in the page. */
class EveryOddityTest {
  private static final Path AS_RECEIVED = Path.of("harness-samples/swing-bridge/as-received");

  private static Schema schema() throws IOException {
    return SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
        .getSchema(Files.readString(Path.of("docs/reference/import.schema.json")));
  }

  /** One of every kind, with a fact of every name. */
  private static List<Oddity> every() throws ReflectiveOperationException {
    List<Oddity> every = new ArrayList<>();
    for (Class<?> family : Oddity.class.getPermittedSubclasses()) {
      for (Class<?> kind : family.getPermittedSubclasses()) {
        RecordComponent[] facts = kind.getRecordComponents();
        Constructor<?> constructor =
            kind.getDeclaredConstructor(
                Stream.of(facts).map(RecordComponent::getType).toArray(Class<?>[]::new));
        constructor.setAccessible(true);
        every.add(
            (Oddity)
                constructor.newInstance(
                    Stream.of(facts).map(fact -> some(fact.getGenericType())).toArray()));
      }
    }
    return every;
  }

  private static Object some(Type type) {
    if (type instanceof ParameterizedType list && list.getRawType() == List.class) {
      return List.of(some(list.getActualTypeArguments()[0]));
    }
    Map<Type, Object> samples =
        Map.of(
            String.class,
            "J1-A",
            int.class,
            3,
            Integer.class,
            3,
            boolean.class,
            true,
            Role.class,
            Role.GAUGE,
            Layout.class,
            Layout.NET_LIST,
            RowOddity.Mark.class,
            new RowOddity.Mark("X", 2),
            Evidence.class,
            new Evidence(Evidence.Kind.SELF, -40, 3, 20, ""),
            WiringOddity.Run.class,
            new WiringOddity.Run("J1-A", "P2-1"));
    Object sample = samples.get(type);
    return sample == null ? Optional.of("Signal") : sample;
  }

  private static Finding finding(Oddity oddity) {
    return new Finding(Severity.WARNING, new Place("list.xlsx", "List", 4, 2), "From", oddity);
  }

  private static ImportResult result(List<Finding> findings, List<SkippedRow> skipped) {
    SheetReport sheet =
        new SheetReport(
            "List",
            "A:D",
            1,
            Layout.FROM_TO,
            List.of(),
            new RowCounts(20, 0, 0, 1, 0, 0, 19),
            0,
            skipped);
    Wiring none = new Wiring(List.of(), List.of(), List.of(), List.of());
    return new ImportResult(
        List.of(sheet),
        none,
        findings,
        ImportResult.EndsFound.NONE,
        List.of(),
        List.of(),
        List.of());
  }

  private static Map<?, ?> map(@Nullable Object part) {
    return part instanceof Map<?, ?> map ? map : Map.of();
  }

  private static List<?> list(@Nullable Object part) {
    return part instanceof List<?> list ? list : List.of();
  }

  @Test
  void each_has_a_sentence_of_its_own() throws Exception {
    Map<String, List<Oddity>> bySentence =
        every().stream()
            .collect(Collectors.groupingBy(one -> ImportWords.problem(finding(one)).text()));
    bySentence.forEach(
        (sentence, oddities) -> {
          assertFalse(sentence.isBlank(), oddities.toString());
          // One thing of a gauge and of a length, and of either order of two words, is said alike.
          assertTrue(oddities.size() <= 2, sentence + " " + oddities);
        });
    assertTrue(bySentence.size() >= 90, () -> bySentence.size() + " sentences");
  }

  @Test
  void no_fact_is_named_like_the_code_or_the_sentence() throws Exception {
    for (Oddity one : every()) {
      for (RecordComponent fact : one.getClass().getRecordComponents()) {
        assertFalse(List.of("code", "text").contains(fact.getName()), one.toString());
      }
    }
  }

  @Test
  void each_sort_of_mess_is_one_that_can_be_found() throws Exception {
    Set<OddityKind> found = EnumSet.noneOf(OddityKind.class);
    every().forEach(one -> found.add(one.kind()));
    assertEquals(EnumSet.allOf(OddityKind.class), found);
  }

  @Test
  void each_has_its_code_and_facts_in_the_schema_and_the_schema_has_no_other() throws Exception {
    List<Oddity> every = every();
    String json =
        ImportJson.write(result(every.stream().map(EveryOddityTest::finding).toList(), List.of()));
    assertEquals(List.of(), schema().validate(json, InputFormat.JSON));

    Set<String> codes = new TreeSet<>();
    Map<String, Object> schema =
        JSON.std.mapFrom(Files.readString(Path.of("docs/reference/import.schema.json")));
    for (Object one : list(map(map(schema.get("$defs")).get("why")).get("oneOf"))) {
      codes.add(String.valueOf(map(map(map(one).get("properties")).get("code")).get("const")));
    }
    Set<String> names = new TreeSet<>();
    for (Oddity one : every) {
      names.add(
          one.getClass()
              .getSimpleName()
              .replaceAll("(?<!^)([A-Z])", "-$1")
              .toLowerCase(Locale.ROOT));
    }
    assertEquals(names, codes);
  }

  @Test
  void each_reason_to_skip_a_row_is_in_the_schema() throws IOException {
    List<SkippedRow> skipped = new ArrayList<>();
    for (SkipReason reason : SkipReason.values()) {
      skipped.add(new SkippedRow(2 + skipped.size(), reason, List.of("W1")));
    }
    String json = ImportJson.write(result(List.of(), skipped));
    assertEquals(List.of(), schema().validate(json, InputFormat.JSON));
    assertEquals(
        skipped.size(),
        skipped.stream().map(row -> ImportWords.skipped(row.why())).distinct().count());
  }

  @Test
  void what_import_writes_follows_the_schema(@TempDir Path folder) throws IOException {
    Path notes = Files.writeString(folder.resolve("notes.txt"), "no list at all\n");
    Path half = Files.writeString(folder.resolve("half.csv"), "Wire,From,To,Gauge\nW1,J1-A,,20\n");
    for (Object list :
        List.of(
            AS_RECEIVED.resolve("net-table.csv"),
            AS_RECEIVED.resolve("cable-schedule.ods"),
            half,
            notes)) {
      String json = Run.of("import", list, "--json").out();
      assertEquals(List.of(), schema().validate(json, InputFormat.JSON), json);
    }
    assertFalse(
        schema().validate("{\"format\":\"ringout-import/1\"}", InputFormat.JSON).isEmpty(),
        "the schema can fail");
  }

  @Test
  void a_refused_file_follows_the_schema_too() throws IOException {
    for (String refused :
        List.of("nowhere.xlsx", "harness-samples/swing-bridge/junction-box.xlsx")) {
      Run run = Run.of("import", refused, "--json");
      assertTrue(run.code() != 0, refused);
      assertEquals(List.of(), schema().validate(run.out(), InputFormat.JSON), run.out());
    }
  }
}
