package dev.ringout.harness;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.ringout.source.Place;
import java.util.List;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

/** How a unit stands while it is read. */
class SwitchStateTest {
  private static final Place ROW = new Place("list.csv", "", 2, 0);
  private static final Switch S1 = new Switch("S1", List.of("OFF", "AHEAD", "ASTERN"), List.of());
  private static final Switch S2 = new Switch("S2", List.of("OPEN", "SHUT"), List.of());
  private static final Wire W1 = Wire.of("W1", new Point("J1", "A"), new Point("J2", "A"), ROW);
  private static final Wire W2 = Wire.of("W2", new Point("J1", "B"), new Point("J2", "B"), ROW);

  @Test
  void at_first_every_switch_is_in_the_first_position_that_is_listed() {
    SwitchState normal = SwitchState.normal();
    assertTrue(normal.isNormal());
    assertEquals("OFF", normal.positionOf(S1));
    assertEquals("OPEN", normal.positionOf(S2));
    assertEquals("", normal.toString());
    assertFalse(normal.liftsAny());
  }

  @Test
  void a_switch_that_is_moved_leaves_the_others_and_moved_back_all_is_normal_again() {
    SwitchState ahead = SwitchState.normal().with(S1, "AHEAD");
    assertFalse(ahead.isNormal());
    assertEquals("AHEAD", ahead.positionOf(S1));
    assertEquals("OPEN", ahead.positionOf(S2));
    assertEquals("S1=AHEAD; S2=SHUT", ahead.with(S2, "SHUT").toString());
    assertEquals(SwitchState.normal(), ahead.with(S1, "OFF"));
  }

  @Test
  void a_wire_that_is_lifted_is_part_of_the_state_and_the_others_are_not() {
    SwitchState lifted = SwitchState.normal().withLifted(W1);
    assertTrue(lifted.isLifted(W1));
    assertFalse(lifted.isLifted(W2));
    assertTrue(lifted.liftsAny());
    assertFalse(lifted.isNormal());
    assertFalse(SwitchState.normal().with(S1, "AHEAD").liftsAny());
    assertEquals("W1=LIFTED", lifted.toString());
  }

  @Test
  void two_states_are_one_where_everything_stands_alike_however_it_came_to_stand_so() {
    SwitchState one = SwitchState.normal().with(S1, "AHEAD").with(S2, "SHUT");
    SwitchState other = SwitchState.normal().with(S2, "SHUT").with(S1, "AHEAD");
    assertEquals(one, other);
    assertEquals(one.hashCode(), other.hashCode());
    assertNotEquals(one, SwitchState.normal().with(S1, "ASTERN").with(S2, "SHUT"));
    assertNotEquals(one, SwitchState.normal());
    assertNotEquals(SwitchState.normal(), one);
    assertNotEquals(one, (Object) one.toString());
  }

  @Test
  void what_is_handed_in_can_change_nothing_afterwards() {
    TreeMap<String, String> positions = new TreeMap<>();
    positions.put("S1", "AHEAD");
    SwitchState ahead = new SwitchState(positions);
    positions.put("S1", "ASTERN");
    assertEquals("AHEAD", ahead.positionOf(S1));
  }

  @Test
  void two_contacts_join_the_same_points_whichever_is_named_first() {
    Point com = new Point("S1", "1");
    Point no = new Point("S1", "2");
    Point nc = new Point("S1", "3");
    Switch.Contact contact = new Switch.Contact("S1", "AHEAD", com, no, ROW);
    assertTrue(contact.hasSamePointsAs(new Switch.Contact("S1", "ASTERN", com, no, ROW)));
    assertTrue(contact.hasSamePointsAs(new Switch.Contact("S1", "ASTERN", no, com, ROW)));
    assertFalse(contact.hasSamePointsAs(new Switch.Contact("S1", "AHEAD", com, nc, ROW)));
    assertFalse(contact.hasSamePointsAs(new Switch.Contact("S1", "AHEAD", nc, no, ROW)));
    assertFalse(contact.hasSamePointsAs(new Switch.Contact("S1", "AHEAD", no, nc, ROW)));
    assertFalse(contact.hasSamePointsAs(new Switch.Contact("S1", "AHEAD", nc, com, ROW)));
  }
}
