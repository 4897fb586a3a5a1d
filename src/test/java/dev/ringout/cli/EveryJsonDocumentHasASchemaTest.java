package dev.ringout.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.networknt.schema.Error;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import dev.ringout.review.Lack;
import dev.ringout.support.Run;
import dev.ringout.words.LackWords;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What {@code --json} prints follows {@code docs/reference/COMMAND.schema.json}. */
class EveryJsonDocumentHasASchemaTest {
  private static final Path SAMPLE = Path.of("harness-samples/swing-bridge");
  private static final Path REFERENCE = Path.of("docs/reference");

  /**
   * Runs that print a document, one a line; {@code @} stands for the folder of the samples, {@code
   * #} for a store that holds one of them.
   */
  private static final String WHOLE =
      """
      check @/junction-box.xlsx @/point-to-point.xlsx
      check @/junction-box.xlsx @/point-to-point-clean.xlsx
      check @/junction-box.xlsx @/point-to-point-values.xlsx
      review @/junction-box.xlsx
      review @/junction-box-c.xlsx
      review @/paper-errors.xlsx
      review @/paper-errors.xlsx --waivers @/waivers.csv --today 2026-11-25
      meters --store #
      meters --try practice --seconds 1 --store #
      units --store #
      units 0418 --store #
      check unit:0418 --store #
      lot @/junction-box.xlsx --store #
      work @/junction-box.xlsx
      work @/junction-box --only J1 --sleeve both-ends
      work @/junction-box-c.xlsx
      asfound @/point-to-point.xlsx
      asfound @/point-to-point-clean.xlsx
      lot @/junction-box.xlsx @/point-to-point.xlsx @/point-to-point-clean.xlsx @/point-to-point-values.xlsx
      lot @/junction-box.xlsx @/point-to-point-clean
      plan @/junction-box.xlsx
      plan @/junction-box.xlsx --after @/point-to-point.xlsx
      plan @/junction-box.xlsx --touched W006 --after @/point-to-point-clean.xlsx
      plan @/junction-box.xlsx --apart neighbours --no-insulation
      diff @/junction-box.xlsx @/junction-box-c.xlsx
      diff @/junction-box-c.xlsx @/junction-box.xlsx
      diff @/junction-box.xlsx @/junction-box
      diff @/junction-box.xlsx @/junction-box-c.xlsx --as-built @/junction-box
      found @/junction-box.xlsx W006 on J2-1
      found @/junction-box.xlsx W001 on J1-A
      import @/as-received/connector-sheets.xlsx
      import @/as-received/net-table.csv
      import src/test/resources/kbl/swing-bridge.kbl
      import @/as-received/cable-schedule.ods
      trace @/junction-box.xlsx J1-A
      trace @/junction-box.xlsx J1-A J2-1
      trace @/junction-box.xlsx W006
      """;

  /** Runs that are refused, and print a document that says why. */
  private static final String REFUSED =
      """
      check @/nowhere.xlsx @/point-to-point.xlsx
      check @/junction-box.xlsx @/nowhere.xlsx
      review @/nowhere.xlsx
      work @/nowhere.xlsx
      lot @/nowhere.xlsx @/point-to-point.xlsx
      meters --try nowhere
      meters --try localhost:1
      units --store @/nowhere.db
      units 0500 --store #
      check unit:0500 --store #
      plan @/nowhere.xlsx
      plan @/junction-box.xlsx --after @/nowhere.xlsx
      diff @/junction-box.xlsx @/nowhere.xlsx
      found @/nowhere.xlsx W006 on J2-1
      import @/nowhere.xlsx
      trace @/nowhere.xlsx J1-A
      asfound @/nowhere.xlsx
      """;

  @TempDir static Path stores;

  @TempDir Path folder;

  @BeforeAll
  static void keepAUnit() {
    Run.of(
        "store",
        "add",
        SAMPLE.resolve("junction-box.xlsx"),
        SAMPLE.resolve("point-to-point.xlsx"),
        "--store",
        stores.resolve("bench.db"));
  }

  static Stream<String> whole() {
    return WHOLE.lines();
  }

  static Stream<String> refused() {
    return REFUSED.lines();
  }

  private static Schema schema(String command) throws IOException {
    return SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
        .getSchema(Files.readString(REFERENCE.resolve(command + ".schema.json")));
  }

  private static List<Error> errors(String command, String json) throws IOException {
    return schema(command).validate(json, InputFormat.JSON);
  }

  private static Run run(String line) {
    List<Object> words =
        new ArrayList<>(
            List.of(
                (Object[])
                    line.replace("@", SAMPLE.toString())
                        .replace("#", stores.resolve("bench.db").toString())
                        .split(" ", -1)));
    words.add("--json");
    return Run.of(words.toArray());
  }

  private static String command(String line) {
    return line.substring(0, line.indexOf(' '));
  }

  /** Every command whose help knows {@code --json}. */
  private static Set<String> commandsWithJson() {
    Set<String> commands = new TreeSet<>();
    for (String command : Run.of("--help").out().lines().toList()) {
      String name = command.strip().split(" ", 2)[0];
      if (name.matches("[a-z]+") && Run.of(name, "--help").out().contains("  --json")) {
        commands.add(name);
      }
    }
    return commands;
  }

  @ParameterizedTest
  @MethodSource("whole")
  void a_document_follows_the_schema_of_its_command(String line) throws IOException {
    Run run = run(line);
    assertTrue(run.code() <= ExitCode.INCOMPLETE, run.err());
    assertEquals(List.of(), errors(command(line), run.out()));
  }

  @ParameterizedTest
  @MethodSource("refused")
  void a_refused_input_gives_a_document_too(String line) throws IOException {
    Run run = run(line);
    assertTrue(run.code() > ExitCode.INCOMPLETE, "not refused");
    assertEquals(List.of(), errors(command(line), run.out()));
  }

  @ParameterizedTest
  @ValueSource(strings = {"check", "review", "work"})
  void a_cell_that_cant_be_read_stands_in_the_document(String command) throws IOException {
    Path unit = folder.resolve("wires.csv");
    Files.writeString(unit, "Wire,From,To,Gauge\nW1,J1-A,J2-A,as usual\n,,J3-B,20\n");
    Path readings = folder.resolve("continuity.csv");
    Files.writeString(readings, "From,To,Reading\nJ1-A,J2-A,0.2\n");
    List<Object> words = new ArrayList<>(List.of(command, unit, "--json"));
    if (command.equals("check")) {
      words.add(2, readings);
    }
    Run run = Run.of(words.toArray());
    assertTrue(run.out().contains("\"cell\" : \""), run.out());
    assertEquals(List.of(), errors(command, run.out()));
  }

  @Test
  void every_command_that_prints_json_is_run_here() throws IOException {
    Set<String> run = new TreeSet<>();
    whole().map(EveryJsonDocumentHasASchemaTest::command).forEach(run::add);
    assertEquals(commandsWithJson(), run);
    assertEquals(
        run,
        refused()
            .map(EveryJsonDocumentHasASchemaTest::command)
            .collect(Collectors.toCollection(TreeSet::new)),
        "each refuses a file that is not there");
    for (String command : run) {
      String page = Files.readString(REFERENCE.resolve(command + ".md"));
      assertTrue(
          page.contains("(" + command + ".schema.json)"),
          command + ".md does not lead to its schema");
    }
  }

  @Test
  void a_schema_can_fail() throws IOException {
    Set<String> commands = commandsWithJson();
    for (String command : commands) {
      assertFalse(errors(command, "{\"format\":\"ringout-" + command + "/1\"}").isEmpty(), command);
      assertFalse(
          errors(command, "{\"format\":\"ringout-" + command + "/1\",\"problems\":[],\"more\":1}")
              .isEmpty(),
          command);
    }
  }

  @Test
  void the_schema_of_the_review_knows_every_lack() throws IOException {
    for (Lack lack : Lack.values()) {
      String document =
          """
          {"format": "ringout-review/1", "remarks": [], "waived": [], "problems": [],
           "notRun": [{"rule": "a-rule", "why": {"code": "CODE", "text": "TEXT"}}]}
          """
              .replace("CODE", lack.code())
              .replace("TEXT", LackWords.of(lack).replace("\"", "\\\""));
      assertEquals(List.of(), errors("review", document));
    }
    long inSchema =
        Arrays.stream(Files.readString(REFERENCE.resolve("review.schema.json")).split("\"no-", -1))
            .count();
    assertEquals(Lack.values().length, inSchema - 1);
  }
}
