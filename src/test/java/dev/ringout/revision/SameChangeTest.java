package dev.ringout.revision;

import static dev.ringout.revision.SmallLists.asNamed;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import dev.ringout.harness.Harness;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** When a change between two lists is the change between two others. */
class SameChangeTest {
  private static final String MORE = "Gauge,Color,Signal,Note";

  @TempDir Path folder;

  private SmallLists lists = new SmallLists(Path.of(""));

  @BeforeEach
  void useFolder() {
    lists = new SmallLists(folder);
  }

  private static Set<ChangeIdentity> changes(Harness before, Harness after) {
    List<Change> changes = asNamed(before, after).changes();
    return changes.stream().map(ChangeIdentity::of).collect(Collectors.toSet());
  }

  @Test
  void it_is_the_same_in_another_row_and_whatever_else_is_noted_of_the_wire() {
    Set<ChangeIdentity> one =
        changes(
            lists.wiresWith(MORE, "W1,J1-A,P2-1,20,RED,LAMP,", "W2,J1-B,P2-2,20,RED,,"),
            lists.wiresWith(MORE, "W1,J1-A,P2-9,20,RED,LAMP,"));
    assertEquals(
        one,
        changes(
            lists.wiresWith(MORE, "W2,J1-B,P2-2,20,RED,,tied", "W1,J1-A,P2-1,20,RED,LAMP,tied"),
            lists.wiresWith(MORE, "W1,J1-A,P2-9,20,RED,LAMP,tied")));
    assertEquals(2, one.size());
  }

  @Test
  void another_point_or_another_wire_to_take_out_is_another_change() {
    Harness before = lists.wiresWith(MORE, "W1,J1-A,P2-1,20,RED,LAMP,");
    Set<ChangeIdentity> moved = changes(before, lists.wiresWith(MORE, "W1,J1-A,P2-9,20,RED,,"));
    assertNotEquals(moved, changes(before, lists.wiresWith(MORE, "W1,J1-A,P2-8,20,RED,,")));
    Harness none = lists.wiresWith(MORE, "W9,J1-Z,P2-7,20,RED,,");
    Harness thicker = lists.wiresWith(MORE, "W1,J1-A,P2-1,18,RED,LAMP,");
    assertNotEquals(changes(before, none), changes(thicker, none));
    assertNotEquals(changes(before, none), changes(none, before));
  }

  @Test
  void items_jumpers_contacts_and_parts_are_known_by_what_they_are_and_not_by_their_cells() {
    String wires = "Wire,From,To\nW1,J1-A,P2-1\n";
    String[] sheets = {
      "items", "Ref,Kind,Part\nJ1,plug,A\n",
      "links", "Ref,Pin,To Pin\nTB1,1,2\n",
      "switches", "Ref,State,Pin,To Pin\nS1,OPEN,1,2\nS1,SHUT,1,3\n",
      "parts", "Ref,Pin,To Pin,Kind,Ohms\nK4,1,2,winding,400\n"
    };
    String[] later = {
      "items", "Ref,Kind,Part\nX9,relay,\nJ1,plug,A\n",
      "links", "Ref,Pin,To Pin\nTB7,1,2\nTB1,1,2\n",
      "switches", "Ref,State,Pin,To Pin\nS0,OPEN,1,2\nS1,OPEN,1,2\nS1,SHUT,1,3\n",
      "parts", "Ref,Pin,To Pin,Kind,Ohms\nK0,1,2,winding,1\nK4,1,2,winding,400\n"
    };
    Harness nothing = lists.unit("wires", wires);
    Set<ChangeIdentity> here = changes(nothing, unit(wires, sheets));
    Set<ChangeIdentity> inOtherRows = changes(nothing, unit(wires, later));
    Set<ChangeIdentity> missing =
        here.stream().filter(one -> !inOtherRows.contains(one)).collect(Collectors.toSet());
    assertEquals(Set.of(), missing);
    assertNotEquals(here, changes(unit(wires, sheets), nothing));
  }

  private Harness unit(String wires, String... sheets) {
    String[] all = new String[sheets.length + 2];
    all[0] = "wires";
    all[1] = wires;
    System.arraycopy(sheets, 0, all, 2, sheets.length);
    return lists.unit(all);
  }
}
