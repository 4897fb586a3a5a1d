package dev.ringout.json;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.jr.ob.JSON;
import com.networknt.schema.InputFormat;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import dev.ringout.revision.Reach;
import dev.ringout.revision.RetestReason;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Every reason of a revision's paper has its code and facts in the schema and in the reference. */
class EveryReasonOfDiffTest {
  private static final List<Reach.Why> REACHES =
      List.of(
          new Reach.StaysAtItem("P2"),
          new Reach.ListWantsLess(2, 1.5),
          new Reach.OthersThatWay(2, 2.1),
          new Reach.NoLength(),
          new Reach.NoOtherThatWay(2));

  private static final List<RetestReason> RETESTS =
      List.of(
          new RetestReason.WiresTouched(List.of("W1", "W2")),
          new RetestReason.ItemsOpened(List.of("J1"), true),
          new RetestReason.BesideTheWork(false));

  private static List<Map<String, Object>> reaches() {
    return REACHES.stream().map(why -> why.match(new ReachFacts()).said("said")).toList();
  }

  private static List<Map<String, Object>> retests() {
    return RETESTS.stream().map(why -> why.match(new RetestFacts()).said("said")).toList();
  }

  private static List<String> names(Stream<? extends Class<?>> classes) {
    return classes.map(Class::getSimpleName).sorted().toList();
  }

  @Test
  void none_is_missing_here() {
    assertEquals(
        names(Stream.of(Reach.Why.class.getPermittedSubclasses())),
        names(REACHES.stream().map(Object::getClass)));
    assertEquals(
        names(Stream.of(RetestReason.class.getPermittedSubclasses())),
        names(RETESTS.stream().map(Object::getClass)));
  }

  @Test
  void each_follows_its_part_of_the_schema_and_no_other_does() throws IOException {
    for (Map<String, Object> why : reaches()) {
      assertTrue(follows("whyReach", why), why.toString());
      assertTrue(!follows("whyRetest", why), why.toString());
    }
    for (Map<String, Object> why : retests()) {
      assertTrue(follows("whyRetest", why), why.toString());
      assertTrue(!follows("whyReach", why), why.toString());
    }
  }

  private static boolean follows(String part, Map<String, Object> why) throws IOException {
    Map<String, Object> whole =
        JSON.std.mapFrom(Files.readString(Path.of("docs/reference/diff.schema.json")));
    Map<String, Object> alone = new LinkedHashMap<>();
    alone.put("$schema", whole.get("$schema"));
    alone.put("$ref", "#/$defs/" + part);
    alone.put("$defs", whole.get("$defs"));
    return SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
        .getSchema(JSON.std.asString(alone))
        .validate(Json.text(why), InputFormat.JSON)
        .isEmpty();
  }

  @Test
  void each_has_its_line_in_the_reference_with_its_facts() throws IOException {
    List<String> page = Files.readAllLines(Path.of("docs/reference/diff.md"));
    for (Map<String, Object> why : Stream.concat(reaches().stream(), retests().stream()).toList()) {
      List<String> lines =
          page.stream().filter(line -> line.contains("| `" + why.get("code") + "` |")).toList();
      assertEquals(1, lines.size(), why.toString());
      for (String fact : why.keySet()) {
        assertTrue(
            List.of("code", "text").contains(fact) || lines.get(0).contains("`" + fact + "`"),
            lines + " lacks " + fact);
      }
    }
  }
}
