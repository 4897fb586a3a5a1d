package dev.ringout.revision;

import static dev.ringout.revision.SmallLists.asNamed;
import static dev.ringout.revision.SmallLists.diff;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.ringout.harness.Harness;
import dev.ringout.harness.Point;
import dev.ringout.harness.Wire;
import dev.ringout.words.DiffWords;
import dev.ringout.words.RelabelWords;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What has to be done at the bench, in words and in order; worked out by hand. */
class ReworkTest {
  @TempDir Path folder;

  private SmallLists lists = new SmallLists(Path.of(""));

  @BeforeEach
  void useFolder() {
    lists = new SmallLists(folder);
  }

  private static List<String> steps(Difference difference) {
    return ReworkOrder.of(difference).steps().stream()
        .map(step -> step.number() + " " + DiffWords.sentence(step))
        .toList();
  }

  @Test
  void a_wire_of_a_cable_stays_in_it_and_a_loose_one_comes_out() {
    Harness a = lists.wiresWith("Cable", "W1,J1-A,P2-1,C5", "W2,J1-B,P2-2,", "W3,J1-C,P2-3,");
    Harness b = lists.wiresWith("Cable", "W3,J1-C,P2-3,");
    assertEquals(
        List.of(
            "1 take W1 off J1-A",
            "2 take W2 off J1-B",
            "3 take W1 off P2-1",
            "4 W1 stays in cable C5: cap and tie back both ends, tag them \"spare\"",
            "5 take W2 off P2-2",
            "6 draw out W2, or cut both its ends off so that nobody uses it again"),
        steps(asNamed(a, b)));
    assertEquals(
        List.of(
            "1 put the new W1 on J1-A",
            "2 put the new W2 on J1-B",
            "3 put the new W1 on P2-1",
            "4 put the new W2 on P2-2"),
        steps(asNamed(b, a)));
    assertEquals(
        List.of(ReworkStep.Do.STOW, ReworkStep.Do.PULL),
        ReworkOrder.of(asNamed(a, b)).steps().stream()
            .map(ReworkStep::what)
            .filter(what -> what == ReworkStep.Do.STOW || what == ReworkStep.Do.PULL)
            .toList());
  }

  @Test
  void an_end_that_gets_another_contact_comes_off_and_on_again() {
    Harness a = lists.wiresWith("From Contact,To Contact", "W1,J1-A,P2-1,20,22D");
    Harness b = lists.wiresWith("From Contact,To Contact", "W1,J1-A,P2-1,16,22D");
    assertEquals(
        List.of(
            "1 take W1 off J1-A; cap it and tag it \"for J1-A\"",
            "2 put W1, from J1-A, on J1-A, with a new contact 16"),
        steps(asNamed(a, b)));
    Harness moved = lists.wiresWith("From Contact,To Contact", "W1,J1-D,P2-1,16,22D");
    assertEquals(
        List.of(
            "1 take W1 off J1-A; cap it and tag it \"for J1-D\"",
            "2 put W1, from J1-A, on J1-D, with a new contact 16"),
        steps(asNamed(a, moved)));
    Harness unsaid = lists.wiresWith("From Contact,To Contact", "W1,J1-A,P2-1,,22D");
    assertEquals(List.of(), steps(asNamed(unsaid, a)), "what was not said is no other contact");
    Harness farEnd = lists.wiresWith("From Contact,To Contact", "W1,J1-A,P2-1,20,16");
    assertEquals(
        "2 put W1, from P2-1, on P2-1, with a new contact 16", steps(asNamed(a, farEnd)).get(1));
  }

  @Test
  void another_gauge_type_colour_or_a_longer_wire_is_a_new_wire_and_what_was_not_said_is_not() {
    String more = "Gauge,Wire Type,Color,Length";
    Harness a = lists.wiresWith(more, "W1,J1-A,P2-1,20,M22759/16,RED,1 m");
    for (String other :
        List.of(
            "18,M22759/16,RED,1 m",
            "20,M22759/32,RED,1 m",
            "20,M22759/16,BLU,1 m",
            "20,M22759/16,RED,1.1 m")) {
      ReworkOrder work = ReworkOrder.of(asNamed(a, lists.wiresWith(more, "W1,J1-A,P2-1," + other)));
      assertEquals(1, work.cut().size(), other);
      assertEquals(1, work.taken().size(), other);
      assertEquals(5, work.steps().size(), other);
    }
    Harness shorter = lists.wiresWith(more, "W1,J1-A,P2-1,20,M22759/16,RED,0.9 m");
    assertEquals(0, ReworkOrder.of(asNamed(a, shorter)).cut().size(), "longer than wanted will do");
    Harness unsaid = lists.wiresWith(more, "W1,J1-A,P2-1,,,,");
    assertEquals(0, ReworkOrder.of(asNamed(unsaid, a)).cut().size(), "it may be that wire already");
  }

  @Test
  void a_wire_that_is_another_and_goes_elsewhere_is_no_move_besides() {
    Harness a = lists.wiresWith("Gauge", "W1,J1-A,P2-1,20");
    Harness b = lists.wiresWith("Gauge", "W1,J1-A,P2-9,18");
    assertEquals(
        List.of(
            "1 take W1 off J1-A",
            "2 put the new W1 on J1-A",
            "3 take W1 off P2-1",
            "4 draw out W1, or cut both its ends off so that nobody uses it again",
            "5 put the new W1 on P2-9"),
        steps(asNamed(a, b)));
    Harness renumbered = lists.wiresWith("Gauge", "W7,J1-A,P2-1,18");
    assertEquals(
        List.of(), ReworkOrder.of(asNamed(a, renumbered)).relabels(), "a new wire, new sleeves");
  }

  @Test
  void jumpers_come_off_before_wires_and_go_on_after_them() {
    Harness a =
        lists.unit("wires", "Wire,From,To\nW1,TB1-1,P2-1\n", "links", "Ref,Pin,To Pin\nTB1,1,2\n");
    Harness b =
        lists.unit("wires", "Wire,From,To\nW1,TB1-5,P2-1\n", "links", "Ref,Pin,To Pin\nTB1,5,6\n");
    assertEquals(
        List.of(
            "1 take off the jumper from TB1-1 to TB1-2",
            "2 take W1 off TB1-1; cap it and tag it \"for TB1-5\"",
            "3 put W1, from TB1-1, on TB1-5",
            "4 fit the jumper from TB1-5 to TB1-6"),
        steps(asNamed(a, b)));
  }

  @Test
  void another_number_is_two_labels_and_another_name_of_an_item_is_one_for_all() {
    Harness a = lists.wires("W1,J1-A,P2-1");
    Harness b = lists.wires("W7,J1-A,P2-1");
    assertEquals(
        List.of(
            new Relabel.WireNumber(new Point("J1", "A"), "W1", "W7"),
            new Relabel.WireNumber(new Point("P2", "1"), "W1", "W7")),
        ReworkOrder.of(asNamed(a, b)).relabels());
    String[] old = new String[12];
    String[] now = new String[12];
    for (int pin = 1; pin <= 6; pin++) {
      old[pin - 1] = "W" + pin + ",J1-" + pin + ",P2-" + pin;
      old[pin + 5] = "K" + pin + ",P2-1" + pin + ",P3-" + pin;
      now[pin + 5] = old[pin + 5];
      now[pin - 1] = "W" + pin + ",J9-" + RandomUnit.letter(pin) + ",P2-" + pin;
    }
    ReworkOrder work = ReworkOrder.of(diff(lists.wires(old), lists.wires(now)));
    assertEquals(
        List.of(
            new RelabelWords.Said("J9 and every sleeve that names it", "J1", "J9"),
            new RelabelWords.Said("every sleeve that names a pin of J9", "1 … 6", "A … F")),
        work.relabels().stream().map(RelabelWords::of).toList());
    assertEquals(List.of(), work.steps());
  }

  @Test
  void parts_contacts_and_items_that_are_others_are_exchanged_and_new_words_are_not() {
    String wires = "Wire,From,To\nW1,J1-A,P2-1\n";
    Harness a =
        lists.unit(
            "wires", wires, "items", "Ref,Kind,Part,Arrangement,Location\nJ1,plug,A,15-35,door\n");
    for (String other : List.of("plug,B,15-35,door", "plug,A,17-35,door", "header,A,15-35,door")) {
      ReworkOrder work =
          ReworkOrder.of(
              asNamed(
                  a,
                  lists.unit(
                      "wires",
                      wires,
                      "items",
                      "Ref,Kind,Part,Arrangement,Location\nJ1," + other + "\n")));
      assertEquals(1, work.exchanges().size(), other);
      assertTrue(work.opened().contains("J1"), other);
    }
    ReworkOrder words =
        ReworkOrder.of(
            asNamed(
                a,
                lists.unit(
                    "wires",
                    wires,
                    "items",
                    "Ref,Kind,Part,Arrangement,Location\nJ1,plug,A,15-35,roof\n")));
    assertEquals(List.of(), words.exchanges());
    assertEquals(0, words.opened().size());
  }

  private String reach(String lengthBefore, String to, String lengthAfter, String... others) {
    String[] a = new String[others.length + 1];
    String[] b = new String[others.length + 1];
    a[0] = "W1,J1-A,P2-1," + lengthBefore;
    b[0] = "W1,J1-A," + to + "," + lengthAfter;
    System.arraycopy(others, 0, a, 1, others.length);
    System.arraycopy(others, 0, b, 1, others.length);
    Reach reach =
        ReworkOrder.of(asNamed(lists.wiresWith("Length", a), lists.wiresWith("Length", b)))
            .reaches()
            .get(0);
    assertEquals("W1", reach.wire().name());
    return reach.verdict() + ": " + DiffWords.why(reach);
  }

  @Test
  void whether_a_moved_end_gets_there_is_told_by_what_the_lists_say_of_lengths() {
    assertEquals("REACHES: it stays at one item", reach("1 m", "P2-9", "1 m"));
    assertEquals(
        "REACHES: of its 2 m the list wants 1.5 m",
        reach("2 m", "P3-1", "1.5 m", "W2,J1-B,P3-2,9 m"));
    assertEquals(
        "REACHES: it is 2 m, the shortest other wire that way 2 m",
        reach("2 m", "P3-1", "2 m", "W2,P3-2,J1-B,2 m", "W3,J1-C,P3-3,3 m"));
    assertEquals(
        "TOO_SHORT: it is 2 m, the shortest other wire that way 2.1 m",
        reach("2 m", "P3-1", "2 m", "W2,J1-B,P3-2,2.1 m", "W3,J1-C,P3-3,2.2 m"));
    assertEquals(
        "UNKNOWN: no other wire goes that way: try it before anything is cut",
        reach("2 m", "P3-1", "2 m", "W2,J1-B,P4-2,1 m"));
    assertEquals(
        "UNKNOWN: no length is listed: try it before anything is cut",
        reach("", "P3-1", "", "W2,J1-B,P3-2,1 m"));
  }

  @Test
  void the_wires_to_cut_are_those_of_the_later_list() {
    Harness a = lists.wiresWith("Gauge", "W1,J1-A,P2-1,20");
    Harness b = lists.wiresWith("Gauge", "W1,J1-A,P2-1,18", "W2,J1-B,P2-2,22");
    assertEquals(
        List.of("W1 AWG 18", "W2 AWG 22"),
        ReworkOrder.of(asNamed(a, b)).cut().stream()
            .map((Wire wire) -> wire.name() + " " + wire.gaugeLabel())
            .toList());
  }
}
