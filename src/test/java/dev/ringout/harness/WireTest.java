package dev.ringout.harness;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import dev.ringout.source.Place;
import dev.ringout.support.PlainLimits;
import dev.ringout.units.Gauge;
import dev.ringout.units.Length;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** A wire is where it goes, what it is and what it is for; a unit is what is listed of it. */
class WireTest {
  private static final Place ROW = new Place("list.csv", "", 2, 0);
  private static final Point J1_A = new Point("J1", "A");
  private static final Point TB1_1 = new Point("TB1", "1");

  private static final Wire LISTED =
      Wire.of("W1", J1_A, TB1_1, ROW)
          .madeOf(
              Wire.Make.UNSAID
                  .ofGauge(Optional.of(new Gauge.Awg(20)))
                  .ofType("AS22759/16")
                  .inColour("RED")
                  .ofLength(Optional.of(new Length(0.8))))
          .usedFor(Wire.Use.UNSAID.carrying("24V").inCable("C1").inGroup("PAIR 1"))
          .withContact(Wire.End.FROM, "M39029/58-363")
          .withContact(Wire.End.TO, "lug")
          .noted("sleeved")
          .withNotes(Map.of("Zone", "4"));

  @Test
  void each_part_is_where_it_was_put() {
    assertEquals("AWG 20", LISTED.gaugeLabel());
    assertEquals("AS22759/16", LISTED.type());
    assertEquals("RED", LISTED.colour());
    assertEquals(Optional.of(new Length(0.8)), LISTED.length());
    assertEquals("24V", LISTED.signal());
    assertEquals("C1", LISTED.cable());
    assertEquals("PAIR 1", LISTED.group());
    assertEquals("M39029/58-363", LISTED.contactAt(Wire.End.FROM));
    assertEquals("lug", LISTED.contactAt(Wire.End.TO));
    assertEquals("sleeved", LISTED.note());
    assertEquals(ROW, LISTED.place());
  }

  @Test
  void of_a_wire_that_is_only_listed_with_its_ends_nothing_else_is_said() {
    Wire bare = Wire.of("W1", J1_A, TB1_1, ROW);
    assertEquals(Optional.empty(), bare.gauge());
    assertEquals("", bare.gaugeLabel() + bare.type() + bare.colour() + bare.signal());
  }

  @Test
  void a_wire_that_is_moved_keeps_its_contacts_and_one_that_is_turned_exchanges_them() {
    Wire moved = LISTED.between(new Point("J9", "1"), TB1_1);
    assertEquals(LISTED.fromContact(), moved.fromContact());
    assertEquals(LISTED.make(), moved.make());
    Wire turned = LISTED.turned();
    assertEquals(TB1_1, turned.from());
    assertEquals("lug", turned.fromContact());
    assertEquals(LISTED, turned.turned());
  }

  @Test
  void the_same_wire_in_another_row_is_not_equal_since_messages_name_the_row() {
    assertNotEquals(LISTED, LISTED.listedAt(Place.of("other.csv")));
  }

  @Test
  void what_is_not_given_is_not_listed_and_what_is_changed_leaves_the_rest() {
    Harness unit = Harness.builder(PlainLimits.of()).wires(List.of(LISTED)).build();
    assertEquals(List.of(), unit.parts());
    assertEquals(List.of(J1_A, TB1_1), unit.points());
    Link jumper = new Link(TB1_1, new Point("TB1", "2"), "", ROW);
    Harness more = unit.withLinks(List.of(jumper));
    assertEquals(unit.wires(), more.wires());
    assertEquals(3, more.points().size());
    assertEquals(unit, more.withLinks(List.of()));
  }

  @Test
  void a_header_s_names_are_found_whatever_their_case_and_punctuation() {
    Harness unit =
        Harness.builder(PlainLimits.of()).header(Map.of("Drawing No.", "HSB-2210")).build();
    assertEquals("HSB-2210", unit.headerValue("drawing no"));
    assertEquals("", unit.headerValue("revision"));
  }
}
