package dev.ringout.circuit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.ringout.circuit.JoinLimits.Basis;
import dev.ringout.circuit.JoinLimits.JoinLimit;
import dev.ringout.harness.Point;
import dev.ringout.harness.SwitchState;
import dev.ringout.readings.Meter;
import dev.ringout.support.PublishedLimits;
import dev.ringout.support.UnitUnderTest;
import java.nio.file.Path;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Where the highest reading that counts as joined comes from, and what the leads add to it. */
class LimitsOfJoinsTest {
  @TempDir Path folder;

  private static final Meter NULLED =
      new Meter(
          OptionalDouble.of(0.25), 0, OptionalDouble.empty(), 0, 0, 0, OptionalDouble.empty());

  private UnitUnderTest unit() {
    return new UnitUnderTest(folder)
        .wire("W1,J1-A,P2-1,20,1 m")
        .wire("W2,J1-B,TB1-1,,")
        .wire("W3,J1-C,S1-1,20,1 m")
        .link("TB1,1,2")
        .contact("S1,SHUT,1,2");
  }

  private static JoinLimit of(Circuit circuit, String from, String to, Meter meter) {
    return PublishedLimits.of(circuit)
        .of(Probing.pair(index(circuit, from), index(circuit, to), SwitchState.normal()), meter);
  }

  private static int index(Circuit circuit, String point) {
    int dash = point.indexOf('-');
    return circuit.index(new Point(point.substring(0, dash), point.substring(dash + 1)));
  }

  @Test
  void by_gauge_and_length_else_fixed_and_why() {
    Circuit circuit = Circuit.of(unit().harness());
    assertEquals(Basis.COMPUTED, of(circuit, "J1-A", "P2-1", Meter.UNKNOWN).basis());
    assertEquals(Basis.NO_LENGTH, of(circuit, "J1-B", "TB1-2", Meter.UNKNOWN).basis());
    assertEquals(Basis.LINKS_ALONE, of(circuit, "TB1-1", "TB1-2", Meter.UNKNOWN).basis());
    assertEquals(Basis.APART, of(circuit, "J1-A", "J1-B", Meter.UNKNOWN).basis());
    for (Basis basis : Basis.values()) {
      assertEquals(basis != Basis.GIVEN && basis != Basis.COMPUTED, basis.isFixed(), basis::name);
    }
  }

  @Test
  void what_the_leads_read_together_is_in_every_limit() {
    Circuit circuit = Circuit.of(unit().harness());
    JoinLimit fixed = of(circuit, "TB1-1", "TB1-2", Meter.UNKNOWN);
    assertEquals(fixed.ohms() + 0.25, of(circuit, "TB1-1", "TB1-2", NULLED).ohms(), 1e-12);
    JoinLimit computed = of(circuit, "J1-A", "P2-1", NULLED);
    assertEquals(computed.expected().highOhms() + 0.25, computed.ohms(), 1e-12);
    assertEquals(0.25, computed.leads().lowOhms());
    Circuit given =
        Circuit.of(
            new UnitUnderTest(folder.resolve("given"))
                .wire("W1,J1-A,P2-1,20,1 m")
                .limit("closed max,0.8,Ω")
                .harness());
    assertEquals(0.8, of(given, "J1-A", "P2-1", Meter.UNKNOWN).ohms(), 1e-12);
    assertEquals(0.8 + 0.25, of(given, "J1-A", "P2-1", NULLED).ohms(), 1e-12);
    assertEquals(Basis.GIVEN, of(given, "J1-A", "P2-1", NULLED).basis());
  }

  /**
   * A loop of two wires and 249 links: at the least the links have nothing, and the two wires are
   * side by side. Kirchhoff.
   */
  @Test
  void links_without_resistance_add_nothing_however_many() {
    UnitUnderTest unit = new UnitUnderTest(folder.resolve("ring")).limit("tolerance,1,%");
    for (int i = 1; i < 250; i++) {
      unit.link("TB1," + i + "," + (i + 1));
    }
    unit.wireOfType("W1,TB1-1,E1-1,20,1 m", "solid").wireOfType("W2,TB1-250,E1-1,20,1 m", "solid");
    Circuit circuit = Circuit.of(unit.harness());
    Resistances ohms = PublishedLimits.of(circuit).resistances();
    double wire = ohms.of(0).lowOhms();
    double half = wire / 2;
    assertEquals(
        half,
        ohms.between(index(circuit, "TB1-1"), index(circuit, "E1-1"), SwitchState.normal())
            .lowOhms(),
        1e-9 * half);
    assertEquals(
        0,
        ohms.between(index(circuit, "TB1-1"), index(circuit, "TB1-250"), SwitchState.normal())
            .lowOhms());
    for (int conductor : new int[] {0, 1}) {
      assertEquals(
          wire,
          ohms.leastWithout(
                  conductor, index(circuit, "TB1-1"), index(circuit, "E1-1"), SwitchState.normal())
              .orElseThrow(),
          1e-9 * wire);
    }
  }

  /** One of two ways has no resistance at the least: without it the other is read. */
  @Test
  void without_a_link_that_has_no_resistance_the_wire_beside_it_is_read() {
    Circuit circuit =
        Circuit.of(
            new UnitUnderTest(folder.resolve("beside"))
                .wireOfType("W1,TB1-1,TB1-2,20,1 m", "solid")
                .link("TB1,1,2")
                .harness());
    Resistances ohms = PublishedLimits.of(circuit).resistances();
    int link = circuit.conductors().get(0).isWire() ? 1 : 0;
    int from = index(circuit, "TB1-1");
    int to = index(circuit, "TB1-2");
    assertEquals(0, ohms.between(from, to, SwitchState.normal()).lowOhms());
    assertEquals(
        ohms.of(1 - link).lowOhms(),
        ohms.leastWithout(link, from, to, SwitchState.normal()).orElseThrow(),
        1e-12);
  }

  /** A contact of a switch adds up to its limit, a link up to two contacts and the tolerance. */
  @Test
  void a_link_may_add_two_contacts_and_a_switch_contact_its_own_limit() {
    Circuit circuit =
        Circuit.of(
            new UnitUnderTest(folder.resolve("limits"))
                .wire("W1,J1-A,TB1-1,20,1 m")
                .link("TB1,1,2")
                .wire("W3,J1-C,S1-1,20,1 m")
                .contact("S1,SHUT,1,2")
                .limit("contact,10,mΩ")
                .limit("switch contact,50,mΩ")
                .limit("tolerance,10,%")
                .harness());
    Resistances ohms = PublishedLimits.of(circuit).resistances();
    List<Conductor> conductors = circuit.conductors();
    for (int i = 0; i < conductors.size(); i++) {
      if (conductors.get(i) instanceof Conductor.OfLink) {
        assertEquals(2 * 0.010 * 1.1, ohms.of(i).highOhms(), 1e-12);
        assertEquals(0, ohms.of(i).lowOhms());
      } else if (conductors.get(i) instanceof Conductor.OfContact) {
        assertEquals(0.050, ohms.of(i).highOhms(), 1e-12);
      } else {
        assertTrue(ohms.of(i).highOhms() > ohms.of(i).lowOhms());
        assertFalse(ohms.of(i).lowOhms() <= 0);
      }
    }
  }
}
