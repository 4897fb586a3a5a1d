package dev.ringout.json;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.jr.ob.JSON;
import com.networknt.schema.InputFormat;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import dev.ringout.check.CheckResult;
import dev.ringout.circuit.Circuit;
import dev.ringout.circuit.Conductor;
import dev.ringout.circuit.Expected.Joined;
import dev.ringout.compare.Judged;
import dev.ringout.compare.Unproven;
import dev.ringout.diagnose.Arrangement;
import dev.ringout.diagnose.BlindSpot;
import dev.ringout.diagnose.Certainty;
import dev.ringout.diagnose.Fault;
import dev.ringout.diagnose.Fault.Alternative;
import dev.ringout.diagnose.Fault.Finding;
import dev.ringout.diagnose.Fault.RunnerUp;
import dev.ringout.diagnose.Move;
import dev.ringout.diagnose.NextReading;
import dev.ringout.diagnose.NextReason;
import dev.ringout.diagnose.PartFault;
import dev.ringout.diagnose.SlipFact;
import dev.ringout.diagnose.SwitchFault;
import dev.ringout.harness.Part;
import dev.ringout.harness.Point;
import dev.ringout.harness.Switch;
import dev.ringout.harness.SwitchState;
import dev.ringout.harness.Wire;
import dev.ringout.readings.Reading;
import dev.ringout.support.PlainLimits;
import dev.ringout.support.UnitUnderTest;
import dev.ringout.units.Gauge;
import dev.ringout.units.OhmsRange;
import dev.ringout.words.FaultSentences;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Every kind of fault, of slip, of blind spot and of reason for a reading has its sentence, its
 * code in the document, in the schema and in the reference, and no code is of no kind.
 */
class EveryFaultTest {
  @TempDir Path folder;

  private List<Fault> faults = List.of();
  private List<SlipFact> slips = List.of();
  private List<NextReason> reasons = List.of();
  private List<BlindSpot> spots = List.of();
  private Circuit circuit =
      Circuit.of(dev.ringout.harness.Harness.builder(PlainLimits.of()).build());

  @BeforeEach
  void one_of_every_kind() {
    CheckResult result =
        new UnitUnderTest(folder)
            .wire("W1,J1-1,P1-1,20,2 m")
            .wire("W2,J1-2,P1-2,20,2 m")
            .part("R1,A,K,resistor,140")
            .contact("S1,CLEAR,1,2")
            .contact("S1,SET,1,3")
            .reads("J1-1", "P1-1", "OL")
            .check();
    circuit = result.circuit();
    Judged judged = result.comparison().inForce().get(0);
    Wire wire = result.harness().wires().get(0);
    Wire other = result.harness().wires().get(1);
    Part part = result.harness().parts().get(0);
    Switch one = result.harness().switches().get(0);
    Point from = wire.from();
    Point to = wire.to();
    List<Point> ends = List.of(from, to);
    Conductor conductor = new Conductor.OfWire(wire);
    List<Move> moves =
        List.of(new Move(wire, from, other.from()), new Move(other, other.from(), from));
    SlipFact.BadSwitch welded = new SlipFact.BadSwitch(one, SwitchFault.WELDED, "", ends);
    slips =
        List.of(
            new SlipFact.Opened(conductor),
            new SlipFact.Misplaced(moves),
            new SlipFact.Bridge(from, to),
            new SlipFact.Misread(judged, from, to),
            new SlipFact.ExchangedRows(judged, judged),
            new SlipFact.Misscaled(judged, 1000),
            new SlipFact.PoorJoint(conductor),
            new SlipFact.OtherLength(wire, 2.5),
            new SlipFact.OtherGauge(wire, new Gauge.Awg(24)),
            new SlipFact.BadPart(part, PartFault.OTHER_POINTS, from, to),
            welded);
    Finding finding =
        new Finding(
            Certainty.LIKELY,
            List.of(judged),
            slips.stream().map(slip -> new Alternative(0.1, List.of(slip))).toList(),
            1,
            Optional.of(new RunnerUp(slips, List.of(judged))));
    OhmsRange range = new OhmsRange(0.1, 0.2);
    Fault.Open open = new Fault.Open(finding, List.of(conductor), ends);
    faults =
        List.of(
            open,
            new Fault.Shorted(finding, ends, List.of(welded)),
            new Fault.Miswire(
                finding,
                Fault.Pattern.OTHER,
                Optional.of(Arrangement.PLUGS_CROSSED),
                moves,
                List.of(moves)),
            new Fault.HighResistance(
                finding, List.of(new Fault.Suspicion(conductor, 1, false)), ends, 0.2, 7),
            new Fault.HighWire(
                finding,
                wire,
                List.of(
                    new Alternative(0.6, List.of(new SlipFact.OtherGauge(wire, new Gauge.Awg(24)))),
                    new Alternative(0.4, List.of(new SlipFact.PoorJoint(conductor)))),
                range,
                7),
            new Fault.UnequalWire(finding, wire, 0.2, 0.15, 5, range),
            new Fault.WrongGauge(
                finding, List.of(wire), new Gauge.Awg(20), new Gauge.Awg(24), 0.9, range, range, 1),
            new Fault.LowInsulation(
                finding,
                ends,
                List.of("J1"),
                3,
                4,
                OptionalDouble.of(1e6),
                OptionalDouble.of(2e6),
                OptionalDouble.of(500)),
            new Fault.WrongPart(
                finding, part, PartFault.MISSING, ends, 126, Double.POSITIVE_INFINITY, "OL"),
            new Fault.WrongSwitch(finding, one, SwitchFault.STUCK, "SET", ends),
            new Fault.Misread(finding, judged, from, to),
            new Fault.SlippedRows(finding, 4, 1, judged),
            new Fault.Misscaled(finding, 1000, true),
            new Fault.ExchangedRows(finding, judged, judged),
            new Fault.LeadsNotNulled(finding, 0.4, false),
            new Fault.OnPaper(finding, open, List.of("second.xlsx")));
    reasons =
        List.of(
            new NextReason.TellsApart(),
            new NextReason.AcrossTheOpen(conductor),
            new NextReason.AtTheseVeryPoints(),
            new NextReason.RowOnceMore(judged.reading().place()),
            new NextReason.AloneShowsIt(),
            new NextReason.LeakOfTheTwo(),
            new NextReason.BesideThePart(part),
            new NextReason.NotMeasured(),
            new NextReason.NotJoined(),
            new NextReason.NotThrough(conductor),
            new NextReason.Owed(firstUnproven(result)));
    spots =
        List.of(
            new BlindSpot.SameNet(List.of(conductor, new Conductor.OfWire(other))),
            new BlindSpot.EqualWindings(List.of(part, part)),
            new BlindSpot.DiodesNotShown(List.of(part)),
            new BlindSpot.PartsWithoutOhms(List.of(part)),
            new BlindSpot.PartsBesideOthers(List.of(part, part)),
            new BlindSpot.TwistedGroups(List.of("PAIR 1")),
            new BlindSpot.BreaksNotRead("TB1", List.of("1", "2")),
            new BlindSpot.AcrossContacts(List.of("S1")));
  }

  private static Unproven firstUnproven(CheckResult result) {
    return result.coverage().unproven().get(0);
  }

  private static Stream<Class<?>> kindsOf(Class<?> family) {
    return family.isSealed()
        ? Stream.of(family.getPermittedSubclasses()).flatMap(EveryFaultTest::kindsOf)
        : Stream.of(family);
  }

  /** The codes that a family must have, by the names of its kinds. */
  private static Set<String> codesOf(Class<?> family) {
    return kindsOf(family)
        .map(kind -> kind.getSimpleName().replaceAll("(?<=.)([A-Z])", "-$1"))
        .map(name -> name.toLowerCase(Locale.ROOT))
        .collect(Collectors.toCollection(TreeSet::new));
  }

  private static void assertEachIsHere(Class<?> family, List<?> samples) {
    assertEquals(
        kindsOf(family).map(Class::getSimpleName).sorted().toList(),
        samples.stream().map(one -> one.getClass().getSimpleName()).sorted().toList());
  }

  @Test
  void none_is_missing_here() {
    assertEachIsHere(Fault.class, faults);
    assertEachIsHere(SlipFact.class, slips);
    assertEachIsHere(NextReason.class, reasons);
    assertEachIsHere(BlindSpot.class, spots);
  }

  @Test
  void each_fault_is_told_and_says_what_to_do() {
    for (Fault fault : faults) {
      for (String said : List.of(FaultSentences.summary(fault), FaultSentences.advice(fault))) {
        assertTrue(said.endsWith("."), said);
        assertFalse(said.contains("[") || said.contains("@"), said);
      }
    }
  }

  private Map<String, Object> document() {
    Map<String, Object> document = new LinkedHashMap<>();
    document.put("format", CheckJson.FORMAT);
    document.put("problems", List.of());
    document.put("faults", faults.stream().map(FaultJson::of).toList());
    document.put("blind", BlindJson.of(spots));
    document.put(
        "next",
        reasons.stream().map(EveryFaultTest::next).map(one -> NextJson.of(circuit, one)).toList());
    return document;
  }

  private static NextReading next(NextReason why) {
    return new NextReading(
        Reading.Kind.CONTINUITY,
        "J1-1",
        "P1-1",
        SwitchState.normal(),
        NextReading.Purpose.CONFIRM,
        why,
        List.of(new NextReading.Answer(new Joined(), false, 1, List.of())));
  }

  @Test
  void each_follows_the_schema() throws IOException {
    var schema =
        SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
            .getSchema(Files.readString(Path.of("docs/reference/check.schema.json")));
    assertEquals(List.of(), schema.validate(Json.text(document()), InputFormat.JSON));
  }

  private static Object at(Object from, List<String> names) {
    Object found = from;
    for (String name : names) {
      found = Objects.requireNonNull(((Map<?, ?>) found).get(name), name);
    }
    return found;
  }

  private static Set<String> listed(String... names) throws IOException {
    Map<String, Object> schema =
        JSON.std.mapFrom(Files.readString(Path.of("docs/reference/check.schema.json")));
    Set<String> listed = new TreeSet<>();
    List<String> path = new ArrayList<>(List.of("$defs"));
    path.addAll(List.of(names));
    path.add("enum");
    ((List<?>) at(schema, path)).forEach(one -> listed.add(one.toString()));
    return listed;
  }

  @Test
  void codes_are_the_names_of_the_kinds_in_the_document_and_in_the_schema() throws IOException {
    Map<String, Object> document = document();
    assertEquals(codesOf(Fault.class), codes(at(document, List.of("faults")), "code"));
    assertEquals(codesOf(Fault.class), listed("fault", "properties", "code"));
    assertEquals(
        codesOf(SlipFact.class),
        codes(at(FaultJson.of(faults.get(0)), List.of("runnerUp", "slips")), "code"));
    assertEquals(codesOf(SlipFact.class), listed("slips", "items", "properties", "code"));
    assertEquals(codesOf(NextReason.class), codes(at(document, List.of("next")), "why", "code"));
    assertEquals(codesOf(NextReason.class), listed("nextWhy", "properties", "code"));
    assertEquals(codesOf(BlindSpot.class), codes(at(document, List.of("blind")), "code"));
    assertEquals(codesOf(BlindSpot.class), listed("blindSpot", "properties", "code"));
  }

  private static Set<String> codes(Object list, String... names) {
    return ((List<?>) list)
        .stream()
            .map(one -> at(one, List.of(names)).toString())
            .collect(Collectors.toCollection(TreeSet::new));
  }

  @Test
  void kinds_of_the_document_are_those_of_the_schema() throws IOException {
    assertEquals(
        faults.stream().map(FaultSentences::kind).collect(Collectors.toCollection(TreeSet::new)),
        listed("fault", "properties", "kind"));
  }

  @Test
  void each_code_stands_in_the_reference_and_each_code_of_a_fault_beside_its_kind()
      throws IOException {
    String page = Files.readString(Path.of("docs/reference/check.md"));
    for (Class<?> family :
        List.<Class<?>>of(Fault.class, SlipFact.class, NextReason.class, BlindSpot.class)) {
      for (String code : codesOf(family)) {
        assertTrue(page.contains("`" + code + "`"), code);
      }
    }
    for (Fault fault : faults) {
      String row =
          "| `" + at(FaultJson.of(fault), List.of("code")) + "` | `" + FaultSentences.kind(fault);
      assertTrue(page.contains(row + "` |"), row);
    }
  }
}
