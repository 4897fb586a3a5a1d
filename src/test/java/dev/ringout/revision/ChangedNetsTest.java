package dev.ringout.revision;

import static dev.ringout.revision.SmallLists.asNamed;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.ringout.harness.Harness;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What becomes of nets, by the kind of change; worked out by hand. */
class ChangedNetsTest {
  private static final String SWITCH = "Ref,State,Pin,To Pin\nS1,OPEN,1,2\nS1,SHUT,1,3\n";
  private static final String S1_WIRES =
      "Wire,From,To\nW1,J1-A,S1-1\nW2,J1-B,S1-2\nW3,J1-C,S1-3\nW4,J1-A,J2-1\n";

  @TempDir Path folder;

  private SmallLists lists = new SmallLists(Path.of(""));

  @BeforeEach
  void useFolder() {
    lists = new SmallLists(folder);
  }

  private static String only(Difference difference) {
    assertEquals(1, difference.nets().size(), difference.nets().toString());
    NetChange change = difference.nets().get(0);
    return change.kind() + " " + change.before() + " " + change.after();
  }

  @Test
  void a_net_that_loses_its_wire_is_split() {
    Harness a = lists.wires("W1,J1-A,P2-1", "W2,P2-1,J3-4", "W3,J1-B,P2-2", "W4,J3-5,P2-3");
    Harness b = lists.wires("W1,J1-A,P2-1", "W3,J1-B,P2-2", "W4,J3-5,P2-3");
    assertEquals("SPLIT [[J1-A, J3-4, P2-1]] [[J1-A, P2-1], [J3-4]]", only(asNamed(a, b)));
    assertEquals("JOINED [[J1-A, P2-1], [J3-4]] [[J1-A, J3-4, P2-1]]", only(asNamed(b, a)));
  }

  @Test
  void crossed_wires_rearrange_two_nets() {
    Harness a = lists.wires("W1,J1-A,P2-1", "W2,J1-B,P2-2");
    Harness b = lists.wires("W1,J1-A,P2-2", "W2,J1-B,P2-1");
    assertEquals(
        "REARRANGED [[J1-A, P2-1], [J1-B, P2-2]] [[J1-A, P2-2], [J1-B, P2-1]]",
        only(asNamed(a, b)));
  }

  @Test
  void a_net_reaches_a_new_item_or_no_longer_an_old_one() {
    Harness a = lists.wires("W1,J1-A,P2-1", "W2,J1-B,P2-2");
    Harness b = lists.wires("W1,J1-A,P2-1", "W2,J1-B,P2-2", "W3,P2-2,J7-9");
    assertEquals("GAINED [[J1-B, P2-2]] [[J1-B, J7-9, P2-2]]", only(asNamed(a, b)));
    assertEquals("LOST [[J1-B, J7-9, P2-2]] [[J1-B, P2-2]]", only(asNamed(b, a)));
  }

  @Test
  void a_net_among_new_items_alone_is_added_and_a_point_that_nothing_joins_is_none() {
    Harness a = lists.wires("W1,J1-A,P2-1");
    Harness b =
        lists.unit(
            "wires", "Wire,From,To\nW1,J1-A,P2-1\nW2,J8-1,J9-1\n", "pins", "Ref,Pin\nJ7,1\nJ1,B\n");
    assertEquals("ADDED [] [[J8-1, J9-1]]", only(asNamed(a, b)));
    assertEquals("REMOVED [[J8-1, J9-1]] []", only(asNamed(b, a)));
  }

  @Test
  void nets_are_told_in_the_order_of_their_points() {
    Harness a = lists.wires("W1,J1-A,P2-1", "W2,J10-1,P2-2", "W3,J2-1,P2-3");
    Harness b = lists.wires("W1,J1-A,P2-4", "W2,J10-1,P2-5", "W3,J2-1,P2-6", "W9,J11-1,J12-1");
    List<String> firsts =
        asNamed(a, b).nets().stream()
            .map(net -> (net.before().isEmpty() ? net.after() : net.before()).get(0).get(0))
            .map(Object::toString)
            .toList();
    assertEquals(List.of("J1-A", "J2-1", "J10-1", "J11-1"), firsts);
  }

  @Test
  void a_splice_between_points_of_both_changes_nothing_and_one_that_leads_away_does() {
    Harness a = lists.wires("W1,J1-A,P2-1");
    assertTrue(asNamed(a, lists.wires("W1,J1-A,X1-1", "W2,X1-1,P2-1")).isElectricallySame());
    assertTrue(
        asNamed(lists.wires("W1,J1-A,X1-1", "W2,X1-1,P2-1"), a).isElectricallySame(), "and back");
    assertEquals(
        "GAINED [[J1-A, P2-1]] [[J1-A, P2-1, X1-1]]",
        only(asNamed(a, lists.wires("W1,J1-A,P2-1", "W2,P2-1,X1-1"))));
    // Two ends at the splice, but only one point of the net is in both lists.
    assertEquals(
        "ADDED [] [[J8-1, J9-1, X1-1]]",
        only(asNamed(a, lists.wires("W1,J1-A,P2-1", "W2,J8-1,X1-1", "W3,X1-1,J9-1"))));
  }

  @Test
  void a_strip_whose_terminals_are_linked_within_a_net_changes_nothing() {
    Harness a = lists.wires("W1,J1-A,P2-1");
    Harness b =
        lists.unit(
            "wires",
            "Wire,From,To\nW1,J1-A,TB1-1\nW2,TB1-2,P2-1\n",
            "links",
            "Ref,Pin,To Pin\nTB1,1,2\n");
    assertTrue(asNamed(a, b).isElectricallySame());
  }

  @Test
  void a_switch_contact_that_lies_between_other_nets_is_a_change() {
    Harness a = lists.unit("wires", S1_WIRES, "switches", SWITCH);
    assertTrue(asNamed(a, a).sameContactsAndParts());
    Harness crossed =
        lists.unit(
            "wires", S1_WIRES, "switches", "Ref,State,Pin,To Pin\nS1,OPEN,1,3\nS1,SHUT,1,2\n");
    assertFalse(asNamed(a, crossed).sameContactsAndParts());
    assertFalse(asNamed(a, crossed).isElectricallySame());
    Harness turned =
        lists.unit(
            "wires", S1_WIRES, "switches", "Ref,State,Pin,To Pin\nS1,OPEN,2,1\nS1,SHUT,3,1\n");
    assertTrue(asNamed(a, turned).sameContactsAndParts(), "either way round is one contact");
    Harness otherNormal =
        lists.unit(
            "wires", S1_WIRES, "switches", "Ref,State,Pin,To Pin\nS1,SHUT,1,3\nS1,OPEN,1,2\n");
    assertFalse(asNamed(a, otherNormal).sameContactsAndParts(), "the first is the normal one");
    Harness twice =
        lists.unit(
            "wires",
            S1_WIRES,
            "switches",
            "Ref,State,Pin,To Pin\nS1,OPEN,1,2\nS1,SHUT,1,3\nS1,SHUT,4,3\n",
            "links",
            "Ref,Pin,To Pin\nS1,1,4\n");
    assertFalse(asNamed(a, twice).sameContactsAndParts(), "one contact more");
  }

  @Test
  void a_contact_at_another_point_of_the_same_net_is_none() {
    Harness a = lists.unit("wires", S1_WIRES, "switches", SWITCH);
    Harness b =
        lists.unit(
            "wires",
            S1_WIRES,
            "switches",
            "Ref,State,Pin,To Pin\nS1,OPEN,4,2\nS1,SHUT,1,3\n",
            "links",
            "Ref,Pin,To Pin\nS1,1,4\n");
    assertTrue(asNamed(a, b).sameContactsAndParts());
  }

  @Test
  void parts_count_by_their_kind_their_ohms_and_their_nets_and_diodes_by_their_way() {
    String wires = "Wire,From,To\nW1,J1-A,K1-1\nW2,J1-B,K1-2\nW3,J1-C,K1-3\n";
    String heading = "Ref,Pin,To Pin,Kind,Ohms\n";
    Harness coil = lists.unit("wires", wires, "parts", heading + "K1,1,2,coil,400\n");
    assertTrue(
        asNamed(coil, lists.unit("wires", wires, "parts", heading + "K1,2,1,coil,400\n"))
            .sameContactsAndParts());
    assertFalse(
        asNamed(coil, lists.unit("wires", wires, "parts", heading + "K1,1,2,coil,300\n"))
            .sameContactsAndParts());
    assertFalse(
        asNamed(coil, lists.unit("wires", wires, "parts", heading + "K1,1,3,coil,400\n"))
            .sameContactsAndParts());
    assertFalse(
        asNamed(coil, lists.unit("wires", wires, "parts", heading + "K1,1,2,lamp,400\n"))
            .sameContactsAndParts());
    Harness diode = lists.unit("wires", wires, "parts", heading + "K1,1,2,diode,\n");
    Harness turned = lists.unit("wires", wires, "parts", heading + "K1,2,1,diode,\n");
    assertTrue(asNamed(diode, diode).sameContactsAndParts());
    assertFalse(asNamed(diode, turned).sameContactsAndParts());
    assertEquals(
        List.of("no part K1 DIODE", "part K1 DIODE"), SmallLists.said(asNamed(diode, turned)));
  }

  @Test
  void two_units_of_one_part_are_two() {
    String wires = "Wire,From,To\nW1,J1-A,K1-1\nW2,J1-B,K1-2\n";
    String heading = "Ref,Pin,To Pin,Kind,Ohms\n";
    Harness one = lists.unit("wires", wires, "parts", heading + "K1,1,2,lamp,400\n");
    Harness two =
        lists.unit("wires", wires, "parts", heading + "K1,1,2,lamp,400\nK1,1,2,lamp,400\n");
    assertFalse(asNamed(one, two).sameContactsAndParts());
    assertEquals(List.of("part K1 LAMP"), SmallLists.said(asNamed(one, two)));
    assertEquals(List.of("no part K1 LAMP"), SmallLists.said(asNamed(two, one)));
  }
}
