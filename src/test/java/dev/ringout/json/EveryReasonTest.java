package dev.ringout.json;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.jr.ob.JSON;
import com.networknt.schema.InputFormat;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import dev.ringout.check.CheckResult;
import dev.ringout.check.InsulationNote;
import dev.ringout.circuit.Circuit;
import dev.ringout.circuit.Probing;
import dev.ringout.compare.Coverage;
import dev.ringout.compare.Coverage.Unprovable;
import dev.ringout.compare.IdleConcession;
import dev.ringout.compare.InsulationDemand.Level;
import dev.ringout.compare.MissingWire;
import dev.ringout.compare.NotJudged;
import dev.ringout.compare.Unproven;
import dev.ringout.harness.Part;
import dev.ringout.harness.SwitchState;
import dev.ringout.plan.LeftOut;
import dev.ringout.readings.Concession;
import dev.ringout.readings.Measured;
import dev.ringout.readings.Reading;
import dev.ringout.readings.Side;
import dev.ringout.source.Place;
import dev.ringout.support.UnitUnderTest;
import java.io.IOException;
import java.lang.reflect.RecordComponent;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Every kind of reason has its code in the schema and in the reference, and none besides. */
class EveryReasonTest {
  private static final Path CHECK = Path.of("docs/reference/check.schema.json");
  private static final Path PLAN = Path.of("docs/reference/plan.schema.json");
  private static final Measured OK = new Measured.Word(Measured.Meaning.PASS, "OK");

  private final CheckResult result;

  /** A unit with a switch and a part. */
  EveryReasonTest(@TempDir Path folder) {
    result =
        new UnitUnderTest(folder)
            .wire("W1,J1-A,S1-1")
            .wire("W2,J1-B,S1-2")
            .contact("S1,ON,1,2")
            .contact("S1,OFF,1,3")
            .part("R1,1,2,resistor,100,5,50")
            .wire("W3,R1-1,J1-C")
            .insulation("J1-A", "REST", "2000 MΩ")
            .check();
  }

  private Circuit circuit() {
    return result.circuit();
  }

  private int contact() {
    return circuit().conductors().size() - 1;
  }

  private static List<String> kinds(Class<?> family) {
    return Arrays.stream(family.getPermittedSubclasses())
        .map(Class::getSimpleName)
        .sorted()
        .toList();
  }

  private static List<String> kinds(List<?> some) {
    return some.stream().map(one -> one.getClass().getSimpleName()).distinct().sorted().toList();
  }

  /** {@code BeyondRange}: {@code beyond-range}. */
  private static String code(String kind) {
    return kind.replaceAll("(?<=.)([A-Z])", "-$1").toLowerCase(Locale.ROOT);
  }

  private static List<NotJudged> notJudged(List<Part> parts) {
    return List.of(
        new NotJudged.BeyondRange(OK, 1e9),
        new NotJudged.BelowZero(new Measured.BelowZero(-0.2, "-0.2 Ω")),
        new NotJudged.TakenBack(new Measured.TakenBack("taken back: 0.31")),
        new NotJudged.LessThanLeads(OK, 0.5),
        new NotJudged.WordForJoin(OK, 0.1),
        new NotJudged.MayBeAboveLimit(OK, 0.1),
        new NotJudged.MayBeWithinLimit(OK, 0.1),
        new NotJudged.TooCoarse(0, 500),
        new NotJudged.WordForValue(OK),
        new NotJudged.RangeNotStated(),
        new NotJudged.RangeTooLow(1e6, 1e8, Reading.Kind.INSULATION),
        new NotJudged.MoreThanTooLittle(OK, 1e8, Reading.Kind.CONTINUITY),
        new NotJudged.NoValueOfPart(OK, parts),
        new NotJudged.MayBeThePart(OK, parts),
        new NotJudged.NothingAboutPart(OK, parts),
        new NotJudged.OneNet(),
        new NotJudged.PartsBetween(parts),
        new NotJudged.VoltsNotStated(),
        new NotJudged.VoltsTooLow(250, 500),
        new NotJudged.InsulationMayBeEnough(OK),
        new NotJudged.BeepForInsulation(),
        new NotJudged.DiodeNotOpened());
  }

  private static List<MissingWire> missing() {
    return List.of(
        new MissingWire.NotRead(),
        new MissingWire.InParallel(1),
        new MissingWire.InLoop(),
        new MissingWire.EitherSide(
            1, OptionalInt.empty(), Probing.pair(0, 1, SwitchState.normal())));
  }

  private List<Unproven> unproven() {
    List<Unproven> every =
        new ArrayList<>(
            List.of(
                new Unproven.Join(0, 1),
                new Unproven.Isolation(0, 2, 3, true),
                new Unproven.Insulation(0, 2, 3, false, new Level(500, 1e8)),
                new Unproven.Contact(contact(), "ON", true),
                new Unproven.Contact(contact(), "OFF", false),
                new Unproven.PastContacts(0, 1, SwitchState.normal()),
                new Unproven.OfPart(0, true, SwitchState.normal())));
    missing().forEach(one -> every.add(new Unproven.OfWire(0, one)));
    return every;
  }

  private List<LeftOut> leftOut() {
    return List.of(
        new LeftOut.WithPartsInPlace(new Unprovable(true, List.of(0, 1), List.of(0))),
        new LeftOut.InsulationNotPlanned(),
        new LeftOut.NotShown(unproven().get(0)));
  }

  private List<InsulationNote> notes() {
    return List.of(
        new InsulationNote.Strained(
            result.comparison().inForce().get(0), 500, circuit().harness().parts()),
        new InsulationNote.Warmer(40, 30e6, 120e6));
  }

  @Test
  void no_kind_is_missing_here() {
    assertEquals(kinds(NotJudged.class), kinds(notJudged(List.of())));
    assertEquals(kinds(MissingWire.class), kinds(missing()));
    assertEquals(kinds(Unproven.class), kinds(unproven()));
    assertEquals(kinds(LeftOut.class), kinds(leftOut()));
    assertEquals(kinds(InsulationNote.class), kinds(notes()));
  }

  private static void agree(Path schema, String definition, List<Map<String, Object>> every)
      throws IOException {
    List<String> written = every.stream().map(one -> "" + one.get("code")).distinct().toList();
    assertEquals(new TreeSet<>(written), new TreeSet<>(codes(schema, definition)), definition);
    String page = Files.readString(Path.of(schema.toString().replace(".schema.json", ".md")));
    for (String code : written) {
      assertTrue(page.contains("`" + code + "`"), code);
    }
    for (Map<String, Object> one : every) {
      assertTrue(!("" + one.get("text")).isEmpty(), one.toString());
    }
  }

  private static List<String> codes(Path schema, String definition) throws IOException {
    Map<?, ?> properties = within(within(definitions(schema), definition), "properties");
    return within(properties, "code").get("enum") instanceof List<?> codes
        ? codes.stream().map(Object::toString).toList()
        : List.of();
  }

  private static Map<?, ?> definitions(Path schema) throws IOException {
    return within(JSON.std.mapFrom(Files.readString(schema)), "$defs");
  }

  private static Map<?, ?> within(Map<?, ?> document, String name) {
    return document.get(name) instanceof Map<?, ?> one ? one : Map.of();
  }

  @Test
  void the_codes_of_readings_not_judged_are_their_kinds() throws IOException {
    List<NotJudged> every = notJudged(circuit().harness().parts());
    agree(CHECK, "whyNotJudged", every.stream().map(NotJudgedJson::of).toList());
    for (NotJudged one : every) {
      assertEquals(code(one.getClass().getSimpleName()), NotJudgedJson.of(one).get("code"));
    }
  }

  @Test
  void the_codes_of_what_is_unproven_agree() throws IOException {
    agree(
        CHECK,
        "whyUnproven",
        unproven().stream().map(one -> UnprovenJson.why(circuit(), one)).toList());
  }

  @Test
  void every_sort_that_is_counted_is_in_the_document() {
    Map<String, Object> document = CoverageJson.of(result.coverage(), circuit());
    assertEquals(
        Arrays.stream(Coverage.class.getRecordComponents())
            .map(RecordComponent::getName)
            .collect(Collectors.toCollection(TreeSet::new)),
        new TreeSet<>(document.keySet()));
  }

  @Test
  void the_codes_of_notes_on_insulation_agree() throws IOException {
    agree(CHECK, "insulationNote", notes().stream().map(InsulationNoteJson::of).toList());
  }

  @Test
  void the_codes_of_what_a_plan_leaves_out_are_its_kinds() throws IOException {
    LeftOutJson json = new LeftOutJson(circuit());
    agree(PLAN, "leftOut", leftOut().stream().map(json::of).toList());
    leftOut()
        .forEach(
            one -> assertEquals(code(one.getClass().getSimpleName()), json.of(one).get("code")));
  }

  @Test
  @SuppressWarnings("unchecked")
  void the_codes_of_idle_waivers_agree() throws IOException {
    List<Map<String, Object>> every = new ArrayList<>();
    for (IdleConcession.Why why : IdleConcession.Why.values()) {
      every.add(
          (Map<String, Object>) ReworkJson.of(new IdleConcession(concession(), why)).get("why"));
    }
    agree(CHECK, "whyIdle", every);
  }

  private static Concession concession() {
    return new Concession(
        Reading.Kind.CONTINUITY,
        new Side.Rest(),
        new Side.Rest(),
        SwitchState.normal(),
        0.5,
        "B. Weir",
        "spare circuit",
        Optional.empty(),
        Optional.empty(),
        new Place("s.xlsx", "Waivers", 2, 1));
  }

  @Test
  void each_follows_the_schema_with_its_facts() throws IOException {
    Map<String, Object> document = new LinkedHashMap<>();
    document.put("format", CheckJson.FORMAT);
    document.put("problems", List.of());
    document.put(
        "notJudged",
        notJudged(circuit().harness().parts()).stream()
            .map(one -> Map.of("reading", "s.csv!E2", "why", NotJudgedJson.of(one)))
            .toList());
    document.put("insulationNotes", notes().stream().map(InsulationNoteJson::of).toList());
    Map<String, Object> coverage = CoverageJson.of(result.coverage(), circuit());
    coverage.put(
        "unproven", unproven().stream().map(one -> UnprovenJson.of(circuit(), one)).toList());
    document.put("coverage", coverage);
    document.put(
        "idleWaivers",
        Arrays.stream(IdleConcession.Why.values())
            .map(why -> ReworkJson.of(new IdleConcession(concession(), why)))
            .toList());
    follows(CHECK, document);

    Map<String, Object> plan = new LinkedHashMap<>();
    plan.put("format", "ringout-plan/1");
    plan.put("problems", List.of());
    plan.put("leftOut", leftOut().stream().map(new LeftOutJson(circuit())::of).toList());
    follows(PLAN, plan);
  }

  private static void follows(Path schema, Map<String, Object> document) throws IOException {
    assertEquals(
        List.of(),
        SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
            .getSchema(Files.readString(schema))
            .validate(Json.text(document), InputFormat.JSON));
  }

  /** A program that reads one document reads the same parts of the other. */
  @Test
  void what_both_schemas_define_is_defined_alike() throws IOException {
    Map<?, ?> check = definitions(CHECK);
    Map<?, ?> plan = definitions(PLAN);
    plan.forEach(
        (name, definition) -> {
          if (check.containsKey(name)) {
            assertEquals(check.get(name), definition, "" + name);
          }
        });
    assertTrue(plan.containsKey("whyUnproven") && check.containsKey("whyUnproven"));
  }
}
