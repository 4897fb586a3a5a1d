package dev.ringout.words;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.ringout.compare.NotJudged;
import dev.ringout.harness.Part;
import dev.ringout.harness.Point;
import dev.ringout.readings.Measured;
import dev.ringout.readings.Reading;
import dev.ringout.source.Place;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** Why a reading proves nothing, as a mechanic reads it: what was read, and what was asked. */
class NotJudgedSentencesTest {
  private static final Measured OK = new Measured.Word(Measured.Meaning.PASS, "OK");
  private static final List<Part> PARTS =
      List.of(part("R1", Part.Kind.RESISTOR), part("K1", Part.Kind.WINDING));

  private static Part part(String ref, Part.Kind kind) {
    return new Part(
        ref,
        new Point(ref, "1"),
        new Point(ref, "2"),
        kind,
        OptionalDouble.of(120),
        OptionalDouble.empty(),
        OptionalDouble.empty(),
        "",
        new Place("box.xlsx", "Parts", 2, 1));
  }

  private static final Map<NotJudged, String> SAID = said();

  private static Map<NotJudged, String> said() {
    Map<NotJudged, String> said = new LinkedHashMap<>();
    said.put(
        new NotJudged.BeyondRange(new Measured.Value(3e9, 5e7), 1e9),
        "3 GΩ is beyond the range of 1 GΩ that the sheet Job gives");
    said.put(
        new NotJudged.BelowZero(new Measured.BelowZero(-2e8, "-200 MΩ")),
        "-200 MΩ is below zero, which no resistance can be: there may be voltage on the circuit;"
            + " treat it as live until you have proved it dead; or the leads were nulled too far");
    said.put(
        new NotJudged.TakenBack(new Measured.TakenBack("taken back: 0.31")),
        "\"taken back: 0.31\": it does not count, and earlier readings of the same points do not"
            + " either; read it again");
    said.put(
        new NotJudged.LessThanLeads(new Measured.Value(0.02, 0.005), 0.5),
        "0.02 Ω is less than the leads alone read, 0.5 Ω: were they nulled, or is there voltage on"
            + " the circuit?");
    said.put(
        new NotJudged.WordForJoin(OK, 0.2),
        "\"OK\" is not a value; the limit is 0.2 Ω (\"words\" on the sheet Limits says where a word is"
            + " enough)");
    said.put(
        new NotJudged.MayBeAboveLimit(new Measured.LessThan(1), 0.2),
        "\"< 1 Ω\" may still be above the limit of 0.2 Ω");
    said.put(
        new NotJudged.MayBeWithinLimit(new Measured.MoreThan(0.1), 0.2),
        "\"> 0.1 Ω\" says nothing about the limit of 0.2 Ω");
    said.put(new NotJudged.TooCoarse(0, 500), "0 Ω may be up to 500 Ω: too coarse to tell");
    said.put(
        new NotJudged.WordForValue(OK),
        "\"OK\" is not a value (\"words\" on the sheet Limits says where a word is enough)");
    said.put(
        new NotJudged.RangeNotStated(),
        "OL says only \"above the range\", and the job sheet gives no \"insulation range\"");
    said.put(
        new NotJudged.RangeTooLow(20e6, 100e6, Reading.Kind.INSULATION),
        "OL on a 20 MΩ range proves nothing about a 100 MΩ limit");
    said.put(
        new NotJudged.RangeTooLow(10e3, 1e6, Reading.Kind.CONTINUITY),
        "OL on a 10 kΩ range proves nothing about a 1 MΩ limit for \"not joined\"");
    said.put(
        new NotJudged.MoreThanTooLittle(
            new Measured.MoreThan(20e6), 100e6, Reading.Kind.INSULATION),
        "> 20 MΩ proves nothing about a 100 MΩ limit");
    said.put(
        new NotJudged.NoValueOfPart(OK, PARTS),
        "\"OK\" is not a value of the resistor R1, winding K1");
    said.put(
        new NotJudged.MayBeThePart(new Measured.Value(0.4, 0.05), PARTS),
        "the resistor R1, winding K1 alone may read as little: this shows no wire; lift one end of"
            + " it and read again");
    said.put(
        new NotJudged.NothingAboutPart(new Measured.MoreThan(100), PARTS),
        "> 100 Ω says nothing about the resistor R1, winding K1");
    said.put(new NotJudged.OneNet(), "both sides are one net: no insulation lies between them");
    said.put(
        new NotJudged.PartsBetween(PARTS),
        "the resistor R1, winding K1 lies between the two sides: disconnect it, or tie both its ends"
            + " to one side");
    said.put(
        new NotJudged.VoltsNotStated(),
        "the test volts are not given, in its row or as \"insulation volts\" on the sheet Job");
    said.put(new NotJudged.VoltsTooLow(250, 500), "taken at 250 V; the limit asks for 500 V");
    said.put(
        new NotJudged.InsulationMayBeEnough(new Measured.LessThan(200e6)),
        "\"< 200 MΩ\" may be above the limit");
    said.put(new NotJudged.BeepForInsulation(), "a beep is not an insulation reading");
    said.put(
        new NotJudged.DiodeNotOpened(),
        "neither way conducts: the diode is missing, or this meter does not open a diode; use its"
            + " diode range");
    return said;
  }

  @Test
  void every_kind_is_here() {
    assertEquals(
        List.of(NotJudged.class.getPermittedSubclasses()).stream()
            .map(Class::getSimpleName)
            .sorted()
            .toList(),
        SAID.keySet().stream()
            .map(one -> one.getClass().getSimpleName())
            .distinct()
            .sorted()
            .toList());
  }

  @Test
  void each_says_what_was_read_and_what_was_asked() {
    SAID.forEach((reason, said) -> assertEquals(said, reason.match(new NotJudgedSentences())));
  }
}
