package dev.ringout.revision;

import static dev.ringout.revision.SmallLists.diff;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.ringout.harness.Harness;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is an item of another name, and what is another item: the edges, worked out by hand. */
class RenamesTest {
  @TempDir Path folder;

  private SmallLists lists = new SmallLists(Path.of(""));

  @BeforeEach
  void useFolder() {
    lists = new SmallLists(folder);
  }

  /** Wires from an item to P2, pin by pin, beside others that hold P2 and P3 where they are. */
  private static List<String> wires(String item, int ends, int firstFar) {
    List<String> rows = new ArrayList<>();
    for (int pin = 1; pin <= 12; pin++) {
      rows.add("K" + pin + ",P2-1" + pin + ",P3-" + pin);
    }
    for (int pin = 1; pin <= ends; pin++) {
      rows.add("W" + (firstFar + pin) + "," + item + "-" + pin + ",P2-" + (firstFar + pin));
    }
    return rows;
  }

  private Harness unit(List<String> rows, String... items) {
    return lists.unit(
        "wires",
        "Wire,From,To\n" + String.join("\n", rows) + "\n",
        "items",
        "Ref,Kind\n" + String.join("\n", items) + "\n");
  }

  private static List<String> said(Difference difference) {
    List<String> said = new ArrayList<>();
    difference.renames().forEach(one -> said.add(word(one)));
    difference.possible().forEach(one -> said.add("perhaps " + word(one)));
    return said;
  }

  private static String word(Rename one) {
    return one.oldRef() + " " + one.newRef() + " " + one.agreeing() + " of " + one.ends();
  }

  @Test
  void three_ends_make_a_rename_two_only_a_question() {
    assertEquals(
        List.of("J1 J9 3 of 3"), said(diff(unit(wires("J1", 3, 0)), unit(wires("J9", 3, 0)))));
    assertEquals(
        List.of("perhaps J1 J9 2 of 2"),
        said(diff(unit(wires("J1", 2, 0)), unit(wires("J9", 2, 0)))));
  }

  @Test
  void six_of_ten_ends_make_a_rename_five_do_not() {
    List<String> sixOfTen = new ArrayList<>(wires("J9", 6, 0));
    List<String> fiveOfTen = new ArrayList<>(wires("J9", 5, 0));
    for (int pin = 7; pin <= 10; pin++) {
      sixOfTen.add("N" + pin + ",J9-" + pin + ",P3-9" + pin);
    }
    for (int pin = 6; pin <= 10; pin++) {
      fiveOfTen.add("N" + pin + ",J9-" + pin + ",P3-9" + pin);
    }
    Harness before = unit(wires("J1", 10, 0));
    assertEquals(List.of("J1 J9 6 of 10"), said(diff(before, unit(sixOfTen))));
    assertEquals(List.of(), said(diff(before, unit(fiveOfTen))));
  }

  @Test
  void another_kind_of_item_is_never_the_same_item() {
    Harness before = unit(wires("J1", 4, 0), "J1,connector");
    assertEquals(List.of(), said(diff(before, unit(wires("J9", 4, 0), "J9,relay"))));
    assertEquals(
        List.of("J1 J9 4 of 4"), said(diff(before, unit(wires("J9", 4, 0), "J9,Connector"))));
    assertEquals(
        List.of("J1 J9 4 of 4"),
        said(diff(before, unit(wires("J9", 4, 0)))),
        "what is not said speaks for nothing");
  }

  @Test
  void two_that_agree_alike_are_told_apart_by_nobody() {
    // J1's ten ends are now at J8 and J9, as many at each.
    List<String> halved = new ArrayList<>(wires("J8", 6, 0));
    for (int pin = 7; pin <= 10; pin++) {
      halved.add("W" + pin + ",J9-" + pin + ",P2-" + pin);
    }
    Harness before = unit(wires("J1", 10, 0));
    assertEquals(
        List.of(), said(diff(before, unit(halved))), "four of six are more than half: a rival");
    List<String> most = new ArrayList<>(wires("J8", 7, 0));
    for (int pin = 8; pin <= 10; pin++) {
      most.add("W" + pin + ",J9-" + pin + ",P2-" + pin);
    }
    assertEquals(List.of("J1 J8 7 of 10"), said(diff(before, unit(most))));
  }

  @Test
  void spellings_of_one_name_are_one_item() {
    Harness before = unit(wires("J01", 4, 0));
    assertEquals(List.of(), diff(before, unit(wires("j1", 4, 0))).changes());
    assertEquals(List.of(), said(diff(before, unit(wires("J1", 4, 0)))));
    assertEquals(1, said(diff(before, unit(wires("J10", 4, 0)))).size(), "J10 is another name");
  }

  @Test
  void a_name_that_another_item_has_now_is_doubted() {
    // The connector J1 is J5 now, and a new J1 with other wires has its name.
    List<String> after = new ArrayList<>(wires("J5", 5, 0));
    for (int pin = 1; pin <= 5; pin++) {
      after.add("N" + pin + ",J1-" + pin + ",P3-9" + pin);
    }
    Difference difference = diff(unit(wires("J1", 5, 0)), unit(after));
    assertEquals(List.of("J1 J5 5 of 5"), said(difference));
    assertEquals(5, difference.changes(Change.Added.class).size());
    assertEquals(0, difference.changes(Change.Removed.class).size());
  }

  @Test
  void what_the_user_says_stands_even_against_the_wires() {
    List<String> after = new ArrayList<>(wires("J9", 4, 0));
    for (int pin = 1; pin <= 4; pin++) {
      after.add("N" + pin + ",J7-" + pin + ",P3-9" + pin);
    }
    Difference told =
        Difference.of(
            unit(wires("J1", 4, 0)),
            unit(after),
            new Difference.Options(Map.of("J1", "J7"), true, ref -> false, false));
    assertEquals(List.of("J1 J7 0 of 4"), said(told));
    assertTrue(told.renames().get(0).asTold());
  }

  @Test
  void without_numbers_signals_tell_and_pins_that_were_lettered_are_found_by_them() {
    List<String> before = new ArrayList<>();
    List<String> after = new ArrayList<>();
    for (int pin = 1; pin <= 10; pin++) {
      before.add(",J1-" + pin + ",P2-" + pin + ",SIG" + pin);
      after.add(",J1-" + RandomUnit.letter(pin) + ",P2-" + pin + ",SIG" + pin);
      before.add(",P2-2" + pin + ",P3-" + pin + ",S" + pin);
      after.add(",P2-2" + pin + ",P3-" + pin + ",S" + pin);
    }
    Difference difference =
        diff(
            lists.wiresWith("Signal", before.toArray(String[]::new)),
            lists.wiresWith("Signal", after.toArray(String[]::new)));
    assertEquals(1, difference.renames().size());
    assertEquals("A", difference.renames().get(0).pins().get("1"));
    assertEquals("J", difference.renames().get(0).pins().get("10"));
    assertEquals(List.of(), difference.changes());
  }

  @Test
  void a_scheme_of_pins_is_not_looked_for_where_some_pins_have_their_names_still() {
    List<String> before = wires("J1", 6, 0);
    List<String> after = new ArrayList<>(wires("J1", 0, 0));
    for (int pin = 1; pin <= 6; pin++) {
      // Turned round: every pin has its old name, only its wire is another.
      after.add("W" + pin + ",J1-" + (7 - pin) + ",P2-" + pin);
    }
    Difference difference = diff(unit(before), unit(after));
    assertEquals(List.of(), said(difference));
    assertEquals(6, difference.changes(Change.Moved.class).size());
  }

  @Test
  void the_shell_is_no_pin_of_a_scheme() {
    List<String> before = new ArrayList<>(wires("J1", 5, 0));
    before.add("G1,J1-SHELL,P3-99");
    List<String> after = new ArrayList<>(wires("J1", 0, 0));
    for (int pin = 1; pin <= 5; pin++) {
      after.add("W" + pin + ",J1-" + RandomUnit.letter(pin) + ",P2-" + pin);
    }
    after.add("G1,J1-SHELL,P3-99");
    Difference difference = diff(unit(before), unit(after));
    assertEquals(1, difference.renames().size());
    assertEquals(5, difference.renames().get(0).pins().size());
    assertEquals(List.of(), difference.changes());
  }
}
