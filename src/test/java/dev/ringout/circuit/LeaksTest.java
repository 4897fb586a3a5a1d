package dev.ringout.circuit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.ringout.circuit.Leaks.Pair;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** Leaks worked out by hand: resistances in series add up, conductances in parallel do. */
class LeaksTest {
  private static String leaks(
      Map<Pair, Double> pairs, Map<Integer, Double> toRest, Set<Pair> apart) {
    Leaks leaks = new Leaks(pairs, toRest, apart);
    return leaks.all().stream()
            .map(
                leak ->
                    leak.between().one()
                        + "-"
                        + leak.between().other()
                        + " "
                        + Math.round(leak.ohms())
                        + (leak.read() ? " read" : ""))
            .sorted()
            .collect(Collectors.joining(", "))
        + (leaks.loose().isEmpty() ? "" : " loose " + leaks.loose());
  }

  @Test
  void a_pair_that_reads_two_leaks_in_series_has_none_of_its_own() {
    assertEquals(
        "1-2 100 read, 2-3 100 read",
        leaks(
            Map.of(Pair.of(1, 2), 100.0, Pair.of(2, 3), 100.0, Pair.of(3, 1), 200.0),
            Map.of(),
            Set.of()));
    assertEquals(
        "1-2 100 read, 1-3 159 read, 2-3 100 read",
        leaks(
            Map.of(Pair.of(1, 2), 100.0, Pair.of(2, 3), 100.0, Pair.of(3, 1), 159.0),
            Map.of(),
            Set.of()),
        "a fifth less than both in series is a leak more");
    assertEquals(
        "1-2 100 read, 2-3 100 read",
        leaks(
            Map.of(Pair.of(1, 2), 100.0, Pair.of(2, 3), 100.0, Pair.of(3, 1), 160.0),
            Map.of(),
            Set.of()));
  }

  @Test
  void a_net_that_reads_low_against_the_rest_by_a_leak_that_is_known_has_no_other() {
    assertEquals(
        "1-2 100 read", leaks(Map.of(Pair.of(1, 2), 100.0), Map.of(1, 100.0, 2, 90.0), Set.of()));
    assertEquals(
        "1-2 100 read loose [2]",
        leaks(Map.of(Pair.of(1, 2), 100.0), Map.of(1, 100.0, 2, 50.0), Set.of()),
        "half of what the leak accounts for: there is one more");
  }

  @Test
  void two_that_read_alike_against_the_rest_are_the_ends_of_one_leak() {
    assertEquals("4-7 100", leaks(Map.of(), Map.of(4, 100.0, 7, 105.0), Set.of()));
    assertEquals(
        " loose [4, 7]", leaks(Map.of(), Map.of(4, 100.0, 7, 120.0), Set.of()), "not alike");
    assertEquals(
        " loose [4, 7]",
        leaks(Map.of(), Map.of(4, 100.0, 7, 100.0), Set.of(Pair.of(7, 4))),
        "read apart");
    assertEquals(
        "4-7 100, 8-9 500",
        leaks(Map.of(), Map.of(4, 100.0, 7, 100.0, 8, 500.0, 9, 500.0), Set.of()));
  }

  @Test
  void a_net_that_leaks_to_several_reads_what_they_read_together() {
    assertEquals(
        "1-5 200, 2-5 200", leaks(Map.of(), Map.of(5, 100.0, 1, 200.0, 2, 200.0), Set.of()));
    assertEquals(
        "1-2 200 loose [5]",
        leaks(Map.of(), Map.of(5, 100.0, 1, 200.0, 2, 200.0), Set.of(Pair.of(1, 5))),
        "but not where it was read apart from one of them");
    assertEquals(" loose [5]", leaks(Map.of(), Map.of(5, 100.0), Set.of()));
  }

  @Test
  void a_pair_has_its_two_nets_whichever_is_named_first() {
    assertEquals(Pair.of(2, 9), Pair.of(9, 2));
    assertTrue(Pair.of(2, 9).has(2) && Pair.of(2, 9).has(9));
    assertFalse(Pair.of(2, 9).has(5));
  }
}
