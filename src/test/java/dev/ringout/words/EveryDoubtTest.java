package dev.ringout.words;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.networknt.schema.InputFormat;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import dev.ringout.check.Doubt;
import dev.ringout.compare.LeadResistance;
import dev.ringout.json.CheckJson;
import dev.ringout.json.DoubtJson;
import dev.ringout.json.Json;
import dev.ringout.readings.Instrument;
import dev.ringout.readings.Reading;
import dev.ringout.source.Place;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Every kind of doubt has its sentence, its facts in the schema and its line in the reference. */
class EveryDoubtTest {
  private static final Instrument METER =
      new Instrument("continuity", "meter", "T-1", "2027-03-31");
  private static final Instrument UNNAMED = new Instrument("insulation", "", "", "");
  private static final Place CELL = new Place("s.xlsx", "Job", 4, 2);

  private static final List<Doubt> EVERY =
      List.of(
          new Doubt.LeadsNotNulled(new LeadResistance.AllOff(CELL, true, 9, 10, 0.3)),
          new Doubt.CalibrationExpired(METER, LocalDate.of(2027, 3, 31), LocalDate.of(2027, 4, 1)),
          new Doubt.CalibrationNotStated("s.xlsx", UNNAMED),
          new Doubt.CalibrationNotADay(METER, "soon"),
          new Doubt.TestDayNotStated("s.xlsx", Optional.of(METER)),
          new Doubt.TestDayNotADay(CELL, "today"),
          new Doubt.SerialNumberNotStated(),
          new Doubt.NotEffective("0501", "0100 to 0200"),
          new Doubt.EffectivityNotUnderstood("see sheet 2"),
          new Doubt.TesterIsInspector("A. Ruiz"),
          new Doubt.NoInspector("s.xlsx"),
          new Doubt.NoTester("s.xlsx"),
          new Doubt.BeyondRange(Reading.Kind.INSULATION, 2, CELL, 1e9),
          new Doubt.WithinADigit(2, CELL));

  private static List<Doubt.Raised> raised() {
    return EVERY.stream().map(one -> new Doubt.Raised(one, true)).toList();
  }

  @Test
  void none_is_missing_here() {
    assertEquals(
        List.of(Doubt.class.getPermittedSubclasses()).stream()
            .map(Class::getSimpleName)
            .sorted()
            .toList(),
        EVERY.stream().map(one -> one.getClass().getSimpleName()).sorted().toList());
  }

  @Test
  void each_is_a_sentence_and_says_in_words_that_the_verdict_waits() {
    for (Doubt doubt : EVERY) {
      String shown = Sentences.doubt(new Doubt.Raised(doubt, false));
      assertTrue(shown.endsWith("."), shown);
      // "lead null" is a row of the sheet Job.
      assertFalse(shown.replace("lead null", "").matches(".*(\\[|\\bnull\\b).*"), shown);
      assertEquals(
          shown + " The verdict waits for this.", Sentences.doubt(new Doubt.Raised(doubt, true)));
    }
  }

  @Test
  void each_follows_the_schema_and_has_its_line_in_the_reference() throws IOException {
    Map<String, Object> document = new LinkedHashMap<>();
    document.put("format", CheckJson.FORMAT);
    document.put("problems", List.of());
    document.put("doubts", DoubtJson.of(raised()));
    var schema =
        SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
            .getSchema(Files.readString(Path.of("docs/reference/check.schema.json")));
    assertEquals(List.of(), schema.validate(Json.text(document), InputFormat.JSON));
    String page = Files.readString(Path.of("docs/reference/check.md"));
    for (Map<String, Object> one : DoubtJson.of(raised())) {
      assertTrue(page.contains("`" + one.get("kind") + "`"), one.toString());
    }
  }
}
