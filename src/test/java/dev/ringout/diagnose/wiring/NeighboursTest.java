package dev.ringout.diagnose.wiring;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.ringout.circuit.Circuit;
import dev.ringout.diagnose.wiring.Neighbours.WireEnd;
import dev.ringout.harness.Wire;
import dev.ringout.support.ReadUnit;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A connector J1 with two rows of three pins 3 mm apart, its shell, and a strip TB1 of which no
 * places are given; worked out by hand.
 */
class NeighboursTest {
  private final SlippedUnit unit;
  private final Neighbours neighbours;

  NeighboursTest(@TempDir Path folder) throws IOException {
    Files.writeString(
        folder.resolve("Wires.csv"),
        """
        Wire,From,To
        W1,J1-A,TB1-1
        W2,J1-E,TB1-4
        W3,TB1-1,TB1-3
        """);
    Files.writeString(
        folder.resolve("Pins.csv"),
        """
        Ref,Pin,X mm,Y mm
        J1,A,0,3
        J1,B,3,3
        J1,C,6,3
        J1,D,0,0
        J1,E,3,0
        J1,F,6,0
        J1,SHELL,,
        TB1,2,,
        TB2,1,0,0
        TB2,2,,
        TB2,3,1,0
        TB3,1,5,5
        """);
    unit = new SlippedUnit(Circuit.of(ReadUnit.of(folder)));
    neighbours = new Neighbours(unit.circuit());
  }

  private int distance(String one, String other) {
    return neighbours.distance(unit.point(one), unit.point(other));
  }

  private boolean areNext(String one, String other) {
    return neighbours.areNext(unit.point(one), unit.point(other));
  }

  @Test
  void on_a_face_the_pins_above_beside_and_across_the_corner_are_next() {
    assertTrue(areNext("J1-A", "J1-B"));
    assertTrue(areNext("J1-A", "J1-D"));
    assertTrue(areNext("J1-A", "J1-E"), "4.24 mm is a square's diagonal");
    assertFalse(areNext("J1-A", "J1-C"), "6 mm is two pitches");
    assertFalse(areNext("J1-C", "J1-D"), "next by the alphabet alone");
  }

  @Test
  void distance_on_a_face_is_in_steps_of_one_and_a_half_pitches() {
    assertEquals(1, distance("J1-A", "J1-E"));
    assertEquals(2, distance("J1-A", "J1-C"));
    assertEquals(2, distance("J1-A", "J1-F"), "6.7 mm");
  }

  @Test
  void without_places_the_order_of_the_pins_counts() {
    assertTrue(areNext("TB1-1", "TB1-2"));
    assertFalse(areNext("TB1-1", "TB1-3"));
    assertEquals(3, distance("TB1-1", "TB1-4"));
    assertEquals(3, neighbours.rank(unit.point("TB1-4")));
  }

  @Test
  void a_face_counts_only_where_every_pin_has_its_place() {
    assertEquals(2, distance("TB2-1", "TB2-3"), "TB2-2 has none: by their order");
    assertTrue(neighbours.facesOf("TB2").isEmpty());
    assertTrue(neighbours.facesOf("TB3").isEmpty(), "one pin is no face");
    assertEquals(6, neighbours.facesOf("J1").size(), "the shell is no pin");
  }

  @Test
  void a_shell_is_as_far_as_its_place_in_the_order() {
    assertEquals(1, distance("J1-F", "J1-SHELL"));
    assertEquals(6, distance("J1-SHELL", "J1-A"));
    assertEquals(
        List.of("J1-A", "J1-B", "J1-C", "J1-D", "J1-E", "J1-F"),
        unit.names(neighbours.pinsOf("J1")));
  }

  @Test
  void points_of_two_items_are_never_next() {
    assertFalse(areNext("TB1-1", "TB2-2"));
    assertTrue(neighbours.sameItem(unit.point("TB1-1"), unit.point("TB1-4")));
    assertFalse(neighbours.sameItem(unit.point("TB1-1"), unit.point("TB2-1")));
  }

  @Test
  void wire_ends_are_known_by_their_items() {
    assertEquals(
        List.of(
            new WireEnd(unit.conductor("W1"), Wire.End.TO),
            new WireEnd(unit.conductor("W2"), Wire.End.TO),
            new WireEnd(unit.conductor("W3"), Wire.End.FROM),
            new WireEnd(unit.conductor("W3"), Wire.End.TO)),
        neighbours.endsAt("TB1"));
    assertEquals(neighbours.endsAt("TB1"), neighbours.endsAtItemOf(unit.point("TB1-2")));
    assertEquals(List.of(), neighbours.endsAt("TB2"));
    assertEquals(
        List.of("TB1-1", "TB1-2", "TB1-3", "TB1-4"),
        unit.names(neighbours.itemOf(unit.point("TB1-3"))));
  }
}
