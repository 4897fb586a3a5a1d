package dev.ringout.words;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import dev.ringout.harness.Item;
import dev.ringout.harness.Link;
import dev.ringout.harness.Part;
import dev.ringout.harness.Point;
import dev.ringout.harness.Switch;
import dev.ringout.harness.Wire;
import dev.ringout.revision.Change;
import dev.ringout.revision.Field;
import dev.ringout.revision.ItemField;
import dev.ringout.revision.Relabel;
import dev.ringout.revision.ReworkStep;
import dev.ringout.revision.Unsure;
import dev.ringout.source.Place;
import dev.ringout.support.PlainWires;
import dev.ringout.units.Gauge;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** What two revisions differ in, what is to be done and what is not sure: each kind in words. */
class EveryKindOfRevisionTest {
  private static final Point HERE = new Point("J1", "A");
  private static final Point THERE = new Point("P2", "1");
  private static final Place CELL = new Place("b.xlsx", "Wires", 4, 2);
  private static final Wire WIRE = PlainWires.of("W1", HERE, THERE, new Gauge.Awg(20), 1, CELL);
  private static final Link JUMPER =
      new Link(new Point("TB1", "1"), new Point("TB1", "2"), "", CELL);

  private static Map<ReworkStep, String> steps() {
    Map<ReworkStep, String> steps = new LinkedHashMap<>();
    steps.put(new ReworkStep.Disconnect(1, 0, "W1", HERE, Optional.empty()), "take W1 off J1-A");
    steps.put(
        new ReworkStep.Connect(2, 0, "W1", THERE, Optional.of(HERE), "16"),
        "put W1, from J1-A, on P2-1, with a new contact 16");
    steps.put(
        new ReworkStep.Pull(3, 0, "W1", HERE),
        "draw out W1, or cut both its ends off so that nobody uses it again");
    steps.put(
        new ReworkStep.Stow(4, 0, "W1", HERE, "C5"),
        "W1 stays in cable C5: cap and tie back both ends, tag them \"spare\"");
    steps.put(new ReworkStep.TakeJumperOff(5, JUMPER), "take off the jumper from TB1-1 to TB1-2");
    steps.put(new ReworkStep.FitJumper(6, JUMPER), "fit the jumper from TB1-1 to TB1-2");
    return steps;
  }

  private static Map<Unsure, String> unsure() {
    Map<Unsure, String> unsure = new LinkedHashMap<>();
    unsure.put(new Unsure.TwoDrawings("D1", "D2"), "these are two drawings: D1 and D2");
    unsure.put(new Unsure.OneLetterTwice("B"), "both say revision B, and differ");
    unsure.put(
        new Unsure.EitherOfTwo(WIRE, WIRE.named("W2")),
        "W1 and W2: which of the two is which in the later revision, the lists do not tell");
    unsure.put(
        new Unsure.MatchedOneByOne(90, 91, WIRE),
        "90 and 91 wires from W1 on could be each other: they were matched one by one");
    return unsure;
  }

  private static Map<Relabel, String> relabels() {
    Map<Relabel, String> labels = new LinkedHashMap<>();
    labels.put(new Relabel.WireNumber(HERE, "W1", "W7"), "at J1-A: \"W1\" becomes \"W7\"");
    labels.put(
        new Relabel.ItemName("J1", "J9"),
        "at J9 and every sleeve that names it: \"J1\" becomes \"J9\"");
    labels.put(
        new Relabel.PinNames("J9", new Relabel.Run("1", "6"), new Relabel.Run("A", "F")),
        "at every sleeve that names a pin of J9: \"1 … 6\" becomes \"A … F\"");
    return labels;
  }

  private static Map<Change, String> changes() {
    Map<Change, String> changes = new LinkedHashMap<>();
    Wire later = WIRE.named("W7");
    changes.put(
        new Change.Removed(WIRE), "removed: W1 runs from J1-A to P2-1, AWG 20, 1 m; removed");
    changes.put(new Change.Added(WIRE), "added: W1 is new, from J1-A to P2-1, AWG 20, 1 m");
    changes.put(
        new Change.Moved(WIRE, WIRE, List.of(new Change.MovedEnd(THERE, new Point("P2", "9")))),
        "moved: W1 moves from P2-1 to P2-9");
    changes.put(new Change.Renumbered(WIRE, later), "renumbered: W1, J1-A to P2-1, is W7 now");
    changes.put(
        new Change.Altered(WIRE, WIRE, Field.COLOR, "", "RED"),
        "altered: W1: color not given, now RED");
    changes.put(new Change.ItemAdded("J9"), "new item: J9 is new");
    changes.put(new Change.ItemDropped("J9"), "dropped item: J9 is not in the new list");
    changes.put(
        new Change.ItemAltered(
            new Item("J1", "plug", "B", "", "", "", "", CELL), ItemField.PART, "A", "B"),
        "item: J1: part A, now B");
    changes.put(
        new Change.Jumper(JUMPER, true), "jumper added: the jumper from TB1-1 to TB1-2 is new");
    changes.put(
        new Change.SwitchContact(new Switch.Contact("S1", "SHUT", HERE, THERE, CELL), false),
        "contact removed: the contact of S1 from J1-A to P2-1, closed in SHUT, is not in the new list");
    changes.put(
        new Change.NormalPosition("S1", "SHUT", "OPEN"),
        "normal position: S1: normal position SHUT, now OPEN");
    Part part =
        new Part(
            "K4",
            HERE,
            THERE,
            Part.Kind.WINDING,
            OptionalDouble.of(300),
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            "",
            CELL);
    changes.put(
        new Change.OfPart(part, true),
        "part added: the winding K4, 300 Ω, from J1-A to P2-1 is new");
    return changes;
  }

  private static List<String> kinds(Class<?> family) {
    return Stream.of(family.getPermittedSubclasses())
        .flatMap(one -> one.isSealed() ? kinds(one).stream() : Stream.of(one.getSimpleName()))
        .sorted()
        .toList();
  }

  private static List<String> kinds(Map<?, String> said) {
    return said.keySet().stream().map(one -> one.getClass().getSimpleName()).sorted().toList();
  }

  @Test
  void none_is_missing_here() {
    assertEquals(kinds(ReworkStep.class), kinds(steps()));
    assertEquals(kinds(Unsure.class), kinds(unsure()));
    assertEquals(kinds(Relabel.class), kinds(relabels()));
    assertEquals(kinds(Change.class), kinds(changes()));
  }

  @Test
  void each_is_said_in_the_words_of_the_bench() {
    steps().forEach((step, said) -> assertEquals(said, DiffWords.sentence(step)));
    unsure().forEach((one, said) -> assertEquals(said, DiffWords.sentence(one)));
    relabels().forEach((label, said) -> assertEquals(said, RelabelWords.of(label).sentence()));
    changes()
        .forEach(
            (change, said) -> {
              ChangeWords.Said words = ChangeWords.of(change);
              assertEquals(said, words.kind() + ": " + words.sentence());
              assertFalse(words.subject().isEmpty(), said);
            });
  }
}
