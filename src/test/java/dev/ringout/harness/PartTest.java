package dev.ringout.harness;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.ringout.harness.Part.Kind;
import dev.ringout.source.Place;
import java.util.EnumSet;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Predicate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What an ohmmeter finds of parts (common practice, no source). */
class PartTest {
  private static Set<Kind> those(Predicate<Kind> are) {
    Set<Kind> those = EnumSet.noneOf(Kind.class);
    for (Kind kind : Kind.values()) {
      if (are.test(kind)) {
        those.add(kind);
      }
    }
    return those;
  }

  @Test
  void a_capacitor_once_charged_and_a_suppressor_carry_no_steady_current() {
    assertEquals(Set.of(Kind.CAPACITOR, Kind.SUPPRESSOR), those(Kind::isOpenToDirectCurrent));
  }

  @Test
  void a_winding_or_a_lamp_that_reads_open_is_no_good() {
    assertEquals(Set.of(Kind.WINDING, Kind.LAMP), those(Kind::alwaysConducts));
  }

  @Test
  void only_a_diode_and_a_suppressor_have_a_way_round() {
    assertEquals(
        EnumSet.complementOf(EnumSet.of(Kind.DIODE, Kind.SUPPRESSOR)),
        those(Kind::readsTheSameReversed));
  }

  private static Part part(Kind kind, String from, String to) {
    return new Part(
        "D1",
        new Point("D1", from),
        new Point("D1", to),
        kind,
        OptionalDouble.empty(),
        OptionalDouble.empty(),
        OptionalDouble.empty(),
        "",
        Place.of("list.csv"));
  }

  @ParameterizedTest
  @CsvSource({"A,K", "a,k", "+,-", "ANODE,CATHODE", "A,C", "+,−", "A,2", "1,K", "1,2", "1,C"})
  void a_diode_listed_from_its_anode_to_its_cathode_conducts_that_way(String from, String to) {
    Part diode = part(Kind.DIODE, from, to);
    assertEquals(from, diode.anode().pin());
    assertEquals(to, diode.cathode().pin());
  }

  @ParameterizedTest
  @CsvSource({"K,A", "k,a", "-,+", "cathode,anode", "K,2", "1,A", "C,A", "C,2"})
  void one_listed_the_other_way_round_by_its_pins_is_turned(String from, String to) {
    Part diode = part(Kind.DIODE, from, to);
    assertEquals(to, diode.anode().pin());
    assertEquals(from, diode.cathode().pin());
  }

  @Test
  void a_part_is_called_by_what_it_is() {
    assertEquals("lamp D1", part(Kind.LAMP, "1", "2").label());
    assertEquals("part D1", part(Kind.OTHER, "1", "2").label());
  }
}
