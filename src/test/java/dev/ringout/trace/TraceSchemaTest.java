package dev.ringout.trace;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import dev.ringout.circuit.JoinLimits.Basis;
import dev.ringout.support.Run;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What the command writes for other programs is what its schema says. */
class TraceSchemaTest {
  private static final Path SCHEMA = Path.of("docs/reference/trace.schema.json");
  private static final Path BOX = Path.of("harness-samples/swing-bridge/junction-box.xlsx");

  private static List<?> broken(String document) throws IOException {
    Schema schema =
        SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
            .getSchema(Files.readString(SCHEMA));
    return schema.validate(document, InputFormat.JSON);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "J1-A",
        "J1-A J2-13",
        "TB1-1 TB1-2",
        "P2-1 P2-2",
        "P2-1 P2-2 --state S1=MADE",
        "P2-7 P2-8",
        "J1-A J1-B",
        "24V"
      })
  void every_answer_follows_the_schema(String words) throws IOException {
    List<Object> arguments = new ArrayList<>(List.of("trace", BOX, "--json"));
    arguments.addAll(List.of(words.split(" ")));
    Run run = Run.of(arguments.toArray());
    assertEquals(0, run.code(), run.err());
    assertEquals(List.of(), broken(run.out()));
    assertTrue(run.out().contains("\"insulation\""));
  }

  @Test
  void so_does_what_is_said_of_a_file_that_can_t_be_understood(@TempDir Path folder)
      throws IOException {
    Path list = folder.resolve("list.csv");
    Files.writeString(list, "Wire,From,To,Gauge\nW1,J1-1,P1-1,2O\n");
    Run run = Run.of("trace", list, "J1-1", "--json");
    assertTrue(run.out().contains("\"problems\""), run.out() + run.err());
    assertEquals(List.of(), broken(run.out()));
  }

  @Test
  void the_schema_refuses_an_answer_without_its_facts() throws IOException {
    assertFalse(
        broken("{\"format\": \"ringout-trace/1\", \"point\": \"J1-A\", \"problems\": []}")
            .isEmpty());
    assertFalse(broken("{\"format\": \"ringout-trace/1\", \"problems\": [], \"x\": 1}").isEmpty());
  }

  @Test
  void the_schema_names_every_basis_of_a_limit_between_two_joined_points() throws IOException {
    String schema = Files.readString(SCHEMA);
    for (Basis basis :
        List.of(
            Basis.GIVEN, Basis.COMPUTED, Basis.NO_LENGTH, Basis.OTHER_METAL, Basis.LINKS_ALONE)) {
      String word = basis.name().toLowerCase(Locale.ROOT).replace('_', '-');
      assertTrue(schema.contains("\"" + word + "\""), word);
    }
  }
}
