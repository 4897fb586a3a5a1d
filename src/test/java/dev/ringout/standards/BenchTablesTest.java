package dev.ringout.standards;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.ringout.harness.Harness;
import dev.ringout.harness.Item;
import dev.ringout.source.Place;
import dev.ringout.support.PlainLimits;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What the bench knows without a part number: faces, designators, look-alikes, movements. */
class BenchTablesTest {

  /** Source: MIL-DTL-24308: contacts 326/3000 in apart, five over four, pin 1 top left. */
  @ParameterizedTest
  @CsvSource({"DE-9", "de9", "DE-9S", "DE-9P"})
  void a_nine_way_insert_is_known_by_the_spellings_in_use(String name) {
    FacePositions.Insert insert = FacePositions.of(Tables.published()).find(name).orElseThrow();
    assertEquals(9, insert.spots().size());
    FacePositions.Spot first = insert.spots().get(0);
    FacePositions.Spot second = insert.spots().get(1);
    assertEquals(0.326 / 3 * 25.4, second.xMillimetres() - first.xMillimetres(), 0.01);
    assertEquals(-first.xMillimetres(), first.mirrored().xMillimetres());
  }

  /** Source: class letters of IEEE 315 and ASME Y14.44. */
  @ParameterizedTest
  @CsvSource({"J1, true, false", "1A2TB3, false, true", "P11, true, false", "S1, false, false"})
  void an_item_that_is_not_listed_is_what_its_letters_say(
      String ref, boolean connector, boolean terminal) {
    ItemKinds kinds = ItemKinds.of(Harness.builder(PlainLimits.of()).build(), Tables.published());
    assertEquals(connector, kinds.isConnector(ref));
    assertEquals(terminal, kinds.isTerminal(ref));
  }

  @Test
  void what_the_list_says_of_an_item_comes_before_its_letters() {
    Item stud = new Item("J1", "Ground stud", "", "", "", "", "", Place.of("list"));
    Harness unit = Harness.builder(PlainLimits.of()).items(List.of(stud)).build();
    ItemKinds kinds = ItemKinds.of(unit, Tables.published());
    assertTrue(kinds.isTerminal("j1"));
    assertFalse(kinds.isConnector("J1"));
  }

  /** Common practice, no source. */
  @ParameterizedTest
  @CsvSource({
    "B, 8, true",
    "12, 21, true",
    "B1, 81, true",
    "12, 13, false",
    "12, 12, false",
    "12, 121, false"
  })
  void two_pins_look_alike_by_one_such_character_or_two_exchanged(
      String one, String other, boolean alike) {
    assertEquals(alike, LookAlikes.published().areAlike(one, other));
    assertEquals(alike, LookAlikes.published().areAlike(other, one));
  }

  /** Common practice, no source: only the ratios matter. */
  @Test
  void a_probe_at_an_item_that_is_open_already_costs_less_than_one_at_another() {
    HandMovements movements = new HandMovements(Tables.published());
    assertTrue(movements.probe(true) < movements.probe(false));
    assertTrue(movements.probe(false) < movements.allOthers());
    assertEquals(2 * movements.switches(1), movements.switches(2));
  }

  /** Sources: 29 CFR 1910.333(b)(2) and those named in each line. */
  @Test
  void insulation_has_cautions_of_its_own_and_every_caution_has_a_source() {
    int always = Cautions.published(false).size();
    List<Cautions.Caution> all = Cautions.published(true);
    assertTrue(always > 0 && all.size() > always);
    all.forEach(caution -> assertFalse(caution.source().isBlank(), caution.text()));
  }
}
