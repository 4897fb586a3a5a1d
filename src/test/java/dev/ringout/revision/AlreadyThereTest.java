package dev.ringout.revision;

import static dev.ringout.revision.SmallLists.asNamed;
import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.ringout.harness.Harness;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What of a new revision a unit that was changed in the field has already. */
class AlreadyThereTest {
  @TempDir Path folder;

  private SmallLists lists = new SmallLists(Path.of(""));

  @BeforeEach
  void useFolder() {
    lists = new SmallLists(folder);
  }

  private static List<String> there(Harness earlier, Harness unit, Harness later) {
    return SmallLists.said(AlreadyThere.of(asNamed(earlier, later), asNamed(unit, later)));
  }

  @Test
  void nothing_is_there_in_a_unit_that_is_as_the_earlier_revision_lists_it() {
    Harness earlier = lists.wires("W1,J1-A,P2-1", "W2,J1-B,P2-2", "W3,J1-C,P2-3");
    Harness later = lists.wires("W1,J1-A,P2-9", "W7,J1-B,P2-2", "W4,J1-D,P2-4");
    assertEquals(List.of(), there(earlier, earlier, later));
    assertEquals(
        SmallLists.said(asNamed(earlier, later)),
        there(earlier, later, later),
        "and all of it in one that is as the later lists it");
  }

  @Test
  void of_a_wire_with_one_end_where_it_is_to_be_that_end_is_there() {
    Harness earlier = lists.wires("W1,J1-A,P2-1");
    Harness later = lists.wires("W1,J1-B,P2-9");
    assertEquals(
        List.of("moved W1 [MovedEnd[from=J1-A, to=J1-B]]"),
        there(earlier, lists.wires("W1,J1-B,P2-4"), later));
    assertEquals(List.of(), there(earlier, lists.wires("W1,J1-C,P2-4"), later));
  }

  @Test
  void a_wire_that_the_field_took_out_is_not_where_it_is_to_be() {
    Harness earlier = lists.wiresWith("Gauge", "W1,J1-A,P2-1,20", "W2,J1-B,P2-2,20");
    Harness unit = lists.wiresWith("Gauge", "W2,J1-B,P2-2,20");
    Harness later = lists.wiresWith("Gauge", "W1,J1-A,P2-9,18", "W2,J1-B,P2-2,20");
    assertEquals(List.of(), there(earlier, unit, later));
  }

  @Test
  void a_wire_to_take_out_that_the_field_moved_is_still_there() {
    Harness earlier = lists.wires("W1,J1-A,P2-1", "W2,J1-B,P2-2", "W3,J1-C,P2-3");
    Harness later = lists.wires("W1,J1-A,P2-1");
    Harness unit = lists.wires("W1,J1-A,P2-1", "W3,J1-C,P2-8");
    assertEquals(List.of("removed W2"), there(earlier, unit, later));
  }

  @Test
  void a_new_wire_is_there_when_its_ends_and_its_making_are() {
    Harness earlier = lists.wiresWith("Gauge,Note", "W1,J1-A,P2-1,20,");
    Harness later = lists.wiresWith("Gauge,Note", "W1,J1-A,P2-1,20,", "W5,J1-E,P2-5,20,");
    assertEquals(
        List.of("added W5"),
        there(
            earlier,
            lists.wiresWith("Gauge,Note", "W1,J1-A,P2-1,20,", "W5,J1-E,P2-5,20,tied"),
            later));
    for (String other : List.of("W5,J1-E,P2-5,16,", "W5,J1-E,P2-6,20,", "W6,J1-E,P2-5,20,")) {
      assertEquals(
          List.of(),
          there(earlier, lists.wiresWith("Gauge,Note", "W1,J1-A,P2-1,20,", other), later),
          other);
    }
  }

  @Test
  void another_gauge_or_number_or_part_than_either_revision_s_is_not_what_is_wanted() {
    String items = "Ref,Kind,Part\nJ1,plug,";
    Harness earlier =
        lists.unit("wires", "Wire,From,To,Gauge\nW1,J1-A,P2-1,20\n", "items", items + "A");
    Harness unit =
        lists.unit("wires", "Wire,From,To,Gauge\nW8,J1-A,P2-1,16\n", "items", items + "B");
    Harness later =
        lists.unit("wires", "Wire,From,To,Gauge\nW9,J1-A,P2-1,18\n", "items", items + "C");
    assertEquals(3, asNamed(earlier, later).changes().size());
    assertEquals(List.of(), there(earlier, unit, later));
  }
}
