package dev.ringout.json;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.jr.ob.JSON;
import dev.ringout.check.CheckResult;
import dev.ringout.compare.Outcome;
import dev.ringout.diagnose.Arrangement;
import dev.ringout.diagnose.Certainty;
import dev.ringout.diagnose.Fault;
import dev.ringout.imports.list.OddityKind;
import dev.ringout.jobs.AddJob;
import dev.ringout.lot.FaultSort;
import dev.ringout.meter.Exchange;
import dev.ringout.plan.Step;
import dev.ringout.readings.Reading;
import dev.ringout.revision.NetChange;
import dev.ringout.source.Severity;
import dev.ringout.store.StoreFinding;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** What is one of a few words in a document is one of the same few in its schema. */
class EveryWordTest {
  static Stream<Arguments> words() {
    return Stream.of(
        Arguments.of("check", "properties/verdict", CheckResult.Verdict.values()),
        Arguments.of("check", "judged/properties/outcome", Outcome.values()),
        Arguments.of("check", "judged/properties/kind", Reading.Kind.values()),
        Arguments.of("check", "fault/properties/certainty", Certainty.values()),
        Arguments.of("check", "fault/properties/pattern", Fault.Pattern.values()),
        Arguments.of("check", "fault/properties/arrangement", Arrangement.values()),
        Arguments.of("check", "$defs/severity", Severity.values()),
        Arguments.of("lot", "$defs/verdict", CheckResult.Verdict.values()),
        Arguments.of("lot", "$defs/kind", FaultSort.values()),
        Arguments.of("lot", "properties/suspect", FaultSort.Suspect.values()),
        Arguments.of("lot", "$defs/severity", Severity.values()),
        Arguments.of("store", "items/properties/state", AddJob.State.values()),
        Arguments.of("store", "findings/items/properties/kind", StoreFinding.Kind.values()),
        Arguments.of("meters", "items/properties/kind", Exchange.Kind.values()),
        Arguments.of("plan", "$defs/severity", Severity.values()),
        Arguments.of("plan", "step/properties/proves", Step.Purpose.values()),
        Arguments.of("review", "$defs/severity", Severity.values()),
        Arguments.of("diff", "net/properties/change", NetChange.Kind.values()),
        Arguments.of("diff", "items/properties/do", dev.ringout.revision.ReworkStep.Do.values()),
        Arguments.of("import", "problem/properties/kind", OddityKind.values()));
  }

  /** Every list of words in a schema that stands at the end of a path. */
  private static void find(Object part, String at, String path, List<Set<String>> found) {
    if (part instanceof Map<?, ?> map) {
      if (at.endsWith("/" + path) && map.get("enum") instanceof List<?> words) {
        found.add(words.stream().map(Object::toString).collect(Collectors.toSet()));
      }
      map.forEach((name, value) -> find(value, at + "/" + name, path, found));
    } else if (part instanceof Collection<?> list) {
      list.forEach(value -> find(value, at, path, found));
    }
  }

  @ParameterizedTest
  @MethodSource("words")
  void a_word_of_a_document_is_in_its_schema(String schema, String path, Enum<?>[] words)
      throws IOException {
    Set<String> expected = new TreeSet<>();
    for (Enum<?> word : words) {
      expected.add(word.name().toLowerCase(Locale.ROOT).replace('_', '-'));
    }
    List<Set<String>> found = new ArrayList<>();
    find(
        JSON.std.mapFrom(Files.readString(Path.of("docs/reference/" + schema + ".schema.json"))),
        "",
        path,
        found);
    assertTrue(!found.isEmpty(), "nothing at " + path);
    found.forEach(one -> assertEquals(expected, new TreeSet<>(one), path));
  }
}
