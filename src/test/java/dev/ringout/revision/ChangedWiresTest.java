package dev.ringout.revision;

import static dev.ringout.revision.SmallLists.asNamed;
import static dev.ringout.revision.SmallLists.said;
import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.ringout.harness.Harness;
import dev.ringout.words.DiffWords;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Which wire of the later list is which of the earlier, and what of a unit differs. */
class ChangedWiresTest {
  private static final String MORE = "Gauge,Color,Signal,Cable,Length,From Contact,To Contact";

  @TempDir Path folder;

  private SmallLists lists = new SmallLists(Path.of(""));

  @BeforeEach
  void useFolder() {
    lists = new SmallLists(folder);
  }

  private List<String> changes(String[] before, String[] after) {
    return said(asNamed(lists.wiresWith(MORE, before), lists.wiresWith(MORE, after)));
  }

  private static String[] rows(String... rows) {
    return rows;
  }

  @Test
  void a_wire_is_known_by_its_number_wherever_its_ends_go() {
    assertEquals(
        List.of("moved W1 [MovedEnd[from=P2-1, to=P2-9]]"),
        changes(rows("W1,J1-A,P2-1,20,RED,,,,,"), rows("W1,P2-9,J1-A,20,RED,,,,,")));
    assertEquals(
        List.of("moved W1 [MovedEnd[from=J1-A, to=J1-D], MovedEnd[from=P2-1, to=P2-9]]"),
        changes(rows("W1,J1-A,P2-1,20,RED,,,,,"), rows("W1,J1-D,P2-9,20,RED,,,,,")));
  }

  @Test
  void without_its_number_it_is_known_by_one_end_and_the_same_signal_colour_and_gauge() {
    String[] old = rows("W1,J1-A,P2-1,20,RED,LAMP,,,,");
    assertEquals(
        List.of("moved W1 [MovedEnd[from=P2-1, to=P2-9]]", "renumbered W1 W7"),
        changes(old, rows("W7,J1-A,P2-9,20,red,Lamp,,,,")));
    for (String other :
        List.of(
            "W7,J1-A,P2-9,18,RED,LAMP,,,,",
            "W7,J1-A,P2-9,20,BLU,LAMP,,,,",
            "W7,J1-A,P2-9,20,RED,HORN,,,,",
            "W7,J1-D,P2-9,20,RED,LAMP,,,,")) {
      assertEquals(List.of("added W7", "removed W1"), changes(old, rows(other)), other);
    }
    assertEquals(
        List.of("added W7", "removed W1"),
        changes(rows("W1,J1-A,P2-1,20,RED,,,,,"), rows("W7,J1-A,P2-9,20,RED,,,,,")),
        "no signal is no sign");
  }

  @Test
  void between_the_same_points_another_number_is_another_label() {
    assertEquals(
        List.of("renumbered W1 W7"),
        changes(rows("W1,J1-A,P2-1,20,RED,,,,,"), rows("W7,P2-1,J1-A,20,RED,,,,,")));
  }

  @Test
  void what_a_wire_is_and_what_is_said_of_it_are_told_field_by_field() {
    assertEquals(
        List.of(
            "cable of W1: C1 > C2",
            "color of W1: RED > BLU",
            "from contact of W1: M39029/56-351 > M39029/58-363",
            "gauge of W1: AWG 20 > AWG 18",
            "length of W1: 1 m > 2.5 m",
            "signal of W1: LAMP > HORN"),
        changes(
            rows("W1,J1-A,P2-1,20,RED,LAMP,C1,1 m,M39029/56-351,"),
            rows("W1,J1-A,P2-1,18,BLU,HORN,C2,2.5 m,M39029/58-363,")));
  }

  @Test
  void contacts_belong_to_their_ends_whichever_is_listed_first() {
    assertEquals(
        List.of(),
        changes(rows("W1,J1-A,P2-1,20,RED,,,,20,22D"), rows("W1,P2-1,J1-A,20,RED,,,,22D,20")));
    assertEquals(
        List.of("to contact of W1: 22D > 16"),
        changes(rows("W1,J1-A,P2-1,20,RED,,,,20,22D"), rows("W1,P2-1,J1-A,20,RED,,,,16,20")));
    assertEquals(
        List.of("from contact of W1: 20 > 16"),
        changes(rows("W1,J1-A,P2-1,20,RED,,,,20,22D"), rows("W1,P2-1,J1-A,20,RED,,,,22D,16")));
  }

  @Test
  void two_of_one_number_are_told_apart_by_what_differs_least() {
    // One of two parallel wires got another colour: it is that one, not both.
    assertEquals(
        List.of("color of W1: RED > WHT"),
        changes(
                rows(",J1-A,P2-1,20,RED,,,,,", ",J1-A,P2-1,20,BLU,,,,,"),
                rows(",J1-A,P2-1,20,BLU,,,,,", ",J1-A,P2-1,20,WHT,,,,,"))
            .stream()
            .map(text -> text.replaceAll("of [^:]*:", "of W1:"))
            .toList());
  }

  @Test
  void what_the_lists_do_not_tell_is_said() {
    Difference difference =
        asNamed(
            lists.wiresWith(MORE, ",J1-A,P2-1,20,RED,S,,,,", ",J1-A,P2-2,20,RED,S,,,,"),
            lists.wiresWith(MORE, ",J1-A,P2-3,20,RED,S,,,,", ",J1-A,P2-4,20,RED,S,,,,"));
    assertEquals(2, difference.changes(Change.Moved.class).size());
    assertEquals(
        List.of(
            "J1-A>P2-1 and J1-A>P2-2: which of the two is which in the later revision, the lists"
                + " do not tell"),
        difference.ties().stream().map(DiffWords::sentence).toList());
    Difference one =
        asNamed(
            lists.wiresWith(MORE, ",J1-A,P2-1,20,RED,S,,,,", ",J1-A,P2-2,20,RED,S,,,,"),
            lists.wiresWith(MORE, ",J1-A,P2-3,20,RED,S,,,,"));
    assertEquals(1, one.ties().size(), "one of two is gone, and which?");
    assertEquals(
        List.of(),
        asNamed(
                lists.wires("W1,J1-A,P2-1", "W2,J1-B,P2-2"),
                lists.wires("W1,J1-A,P2-3", "W2,J1-B,P2-4"))
            .ties(),
        "numbers tell");
  }

  @Test
  void too_many_that_could_be_each_other_are_matched_one_by_one_and_that_is_said() {
    List<String> old = new ArrayList<>();
    List<String> now = new ArrayList<>();
    for (int i = 0; i < 90; i++) {
      old.add("W" + i + ",TB1-1,P2-" + (i + 1));
      now.add("W" + i + ",TB1-1,P2-" + (i + 2));
    }
    Difference difference =
        asNamed(lists.wires(old.toArray(String[]::new)), lists.wires(now.toArray(String[]::new)));
    assertEquals(
        List.of("90 and 90 wires from W0 on could be each other: they were matched one by one"),
        difference.ties().stream().map(DiffWords::sentence).toList());
    // Another number is less work than a moved end: the least of all is taken first.
    assertEquals(89, difference.changes(Change.Renumbered.class).size());
    assertEquals(1, difference.changes(Change.Removed.class).size());
    assertEquals(1, difference.changes(Change.Added.class).size());
  }

  @Test
  void rows_written_twice_count_once_with_a_number_and_each_without() {
    Harness a = lists.wires("W1,J1-A,P2-1", "W1,P2-1,J1-A", "W1,J1-A,P2-2");
    assertEquals(2, asNamed(a, a).before().wires().size());
    assertEquals(1, asNamed(a, a).doubledBefore().size());
    assertEquals(1, asNamed(a, a).doubledAfter().size());
    Harness unnamed = lists.wires(",J1-A,P2-1", ",J1-A,P2-1");
    assertEquals(2, asNamed(unnamed, unnamed).before().wires().size());
    assertEquals(
        List.of("removed J1-A>P2-1"),
        said(asNamed(unnamed, lists.wires(",J1-A,P2-1"))).stream()
            .map(text -> text.replace(" > ", ">"))
            .toList());
  }

  @Test
  void items_jumpers_contacts_and_parts_are_told_in_the_order_people_read() {
    String wires = "Wire,From,To\nW1,J1-A,P2-1\n";
    Harness a =
        lists.unit(
            "wires",
            wires,
            "items",
            "Ref,Kind,Part,Arrangement,Location,Mates\nJ1,connector,A,15-35,door,P1\nK3,relay,,,,\n",
            "links",
            "Ref,Pin,To Pin\nTB1,1,2\nTB1,2,3\n",
            "switches",
            "Ref,State,Pin,To Pin\nS1,OPEN,1,2\nS1,SHUT,1,3\n",
            "parts",
            "Ref,Pin,To Pin,Kind,Ohms\nK4,1,2,winding,400\n");
    Harness b =
        lists.unit(
            "wires",
            wires,
            "items",
            "Ref,Kind,Part,Arrangement,Location,Mates\nJ1,header,B,17-35,roof,P3\nJ9,plug,,,,\n",
            "links",
            "Ref,Pin,To Pin\nTB1,2,1\nTB1,3,4\n",
            "switches",
            "Ref,State,Pin,To Pin\nS1,OPEN,1,2\nS1,SHUT,1,4\n",
            "parts",
            "Ref,Pin,To Pin,Kind,Ohms\nK4,1,2,winding,300\n");
    assertEquals(
        List.of(
            "arrangement of J1: 15-35 > 17-35",
            "contact S1 SHUT S1-1 S1-4",
            "item added J9",
            "item dropped K3",
            "jumper TB1-3 TB1-4",
            "kind of J1: connector > header",
            "location of J1: door > roof",
            "mates of J1: P1 > P3",
            "no contact S1 SHUT S1-1 S1-3",
            "no jumper TB1-2 TB1-3",
            "no part K4 WINDING",
            "part K4 WINDING",
            "part of J1: A > B"),
        said(asNamed(a, b)));
    List<String> order =
        asNamed(lists.wires("W1,J10-1,J2-1"), lists.wires("W1,J30-1,J4-1"))
            .changes(Change.ItemAdded.class)
            .stream()
            .map(Change.ItemAdded::ref)
            .toList();
    assertEquals(List.of("J4", "J30"), order);
  }

  /** A blank State on a sheet means another position then. */
  @Test
  void a_switch_whose_positions_stand_in_another_order_has_another_normal_position() {
    String wires = "Wire,From,To\nW1,J1-1,S1-1\nW2,J1-2,S1-2\n";
    Harness shut =
        lists.unit("wires", wires, "switches", "Ref,State,Pin,To Pin\nS1,SHUT,1,2\nS1,OPEN,,\n");
    Harness open =
        lists.unit("wires", wires, "switches", "Ref,State,Pin,To Pin\nS1,OPEN,,\nS1,SHUT,1,2\n");
    assertEquals(List.of("normal position S1 SHUT OPEN"), said(asNamed(shut, open)));
  }
}
