package dev.ringout.diagnose.wiring;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.ringout.circuit.Circuit;
import dev.ringout.diagnose.Arrangement;
import dev.ringout.diagnose.PartFault;
import dev.ringout.diagnose.SwitchFault;
import dev.ringout.harness.Wire;
import dev.ringout.standards.Tables;
import dev.ringout.support.UnitUnderTest;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Costs are −ln of how often slips.csv says that a slip happens, worked out by hand. */
class SlipCostsTest {
  private static final double A_HAIR = 1e-9;

  private final SlippedUnit unit;
  private final SlipCosts costs;

  SlipCostsTest(@TempDir Path folder) {
    unit =
        new SlippedUnit(
            Circuit.of(
                new UnitUnderTest(folder)
                    .wire("W1,J1-1,TB1-1")
                    .wire("W2,J1-2,S1-1")
                    .wire("W3,J1-5,TB1-3")
                    .link("TB1,1,2")
                    .contact("S1,SHUT,1,2")
                    .contact("S1,AJAR,1,3")
                    .part("R1,1,2,resistor,100")
                    .harness()));
    costs = new SlipCosts(unit.circuit(), new Neighbours(unit.circuit()), Tables.published());
  }

  private static double perThousand(double rate) {
    return -Math.log(rate / 1000);
  }

  private void assertPerThousand(double rate, Slip slip) {
    assertEquals(perThousand(rate), costs.of(slip), A_HAIR, slip.toString());
  }

  @Test
  void an_open_costs_by_what_is_open() {
    assertPerThousand(10, new Slip.Missing(unit.conductor("W1")));
    assertPerThousand(6, new Slip.Missing(unit.conductor("the link TB1-1/2")));
    assertPerThousand(3, new Slip.Missing(unit.conductor("the contact S1-1/2 of S1")));
  }

  @Test
  void a_poor_joint_costs_by_what_is_poor() {
    assertPoorJoint(10, "W1");
    assertPoorJoint(5, "the link TB1-1/2");
    assertPoorJoint(6, "the contact S1-1/2 of S1");
    assertEquals(perThousand(10), costs.leastPoor(), A_HAIR);
    assertEquals(
        perThousand(5),
        costs.ofPoor(unit.circuit().conductors().get(unit.conductor("the link TB1-1/2"))),
        A_HAIR);
  }

  /** Of poor joints about 1 Ω, within a tenth of what a part of 100 Ω has: 0.2 of 100 / 101². */
  private void assertPoorJoint(double perThousand, String conductor) {
    double justAsAPart = -Math.log(0.2 * 100 / (101.0 * 101));
    assertEquals(
        perThousand(perThousand) + justAsAPart,
        costs.of(new Slip.Poor(unit.conductor(conductor))),
        A_HAIR);
  }

  @Test
  void neighbours_are_taken_for_each_other_more_often_than_what_lies_far_apart() {
    int w1 = unit.conductor("W1");
    int w2 = unit.conductor("W2");
    int w3 = unit.conductor("W3");
    assertPerThousand(3, new Slip.Moved(w1, Wire.End.FROM, unit.point("J1-2")));
    assertPerThousand(0.3, new Slip.Moved(w1, Wire.End.FROM, unit.point("J1-5")));
    assertPerThousand(3, new Slip.Crossed(w1, Wire.End.FROM, w2, Wire.End.FROM));
    assertPerThousand(1, new Slip.Crossed(w1, Wire.End.FROM, w3, Wire.End.FROM));
    assertPerThousand(2, new Slip.Bridged(unit.point("J1-1"), unit.point("J1-2")));
    assertPerThousand(0.5, new Slip.Bridged(unit.point("J1-1"), unit.point("J1-5")));
  }

  @Test
  void parts_and_switches_have_their_own() {
    int from = unit.point("R1-1");
    int to = unit.point("R1-2");
    assertPerThousand(2, new Slip.FaultyPart(0, PartFault.MISSING, from, to));
    assertPerThousand(1, new Slip.FaultyPart(0, PartFault.OTHER_VALUE, from, to));
    assertPerThousand(0.5, new Slip.FaultyPart(0, PartFault.OTHER_POINTS, from, to));
    assertPerThousand(4, new Slip.FaultySwitch(0, SwitchFault.STUCK, "SHUT", -1));
    assertPerThousand(1, new Slip.FaultySwitch(0, SwitchFault.WELDED, "", 0));
  }

  /** One in eleven has less than a tenth of what counts as joined, one in eleven ten times more. */
  @Test
  void poor_joints_spread_over_decades_about_what_counts_as_joined() {
    assertEquals(1 / 11.0, share(0, 0.1), 0.001);
    assertEquals(0.5, share(0, 1), 0.001);
    assertEquals(1 / 11.0, share(10, 10_000), 0.001);
    assertEquals(costs.densityOfPoor(0), costs.densityOfPoor(-0.2), A_HAIR, "no joint takes away");
  }

  /** Of all poor joints those that add so much, summed up in steps of a hundredth. */
  private double share(double from, double to) {
    double sum = 0;
    for (double ohms = from + 0.005; ohms < to; ohms += 0.01) {
      sum += costs.densityOfPoor(ohms) * 0.01;
    }
    return sum;
  }

  @Test
  void a_ring_shares_its_chance_among_all_orders_that_it_may_be_in() {
    assertEquals(perThousand(0.5) + Math.log(2), costs.ofRing(3), A_HAIR, "two ways round");
    assertEquals(perThousand(0.5) + Math.log(6), costs.ofRing(4), A_HAIR);
    assertEquals(perThousand(0.5) + Math.log(24), costs.ofRing(5), A_HAIR);
    List<Slip.Put> puts =
        List.of(
            new Slip.Put(0, Wire.End.FROM, 1),
            new Slip.Put(1, Wire.End.FROM, 2),
            new Slip.Put(2, Wire.End.FROM, 0));
    assertEquals(costs.ofRing(3), costs.of(new Slip.Rearranged(Arrangement.RING, puts)), A_HAIR);
    assertPerThousand(0.3, new Slip.Rearranged(Arrangement.ROTATED, puts));
    assertEquals(perThousand(1), costs.leastArrangement(), A_HAIR);
  }

  @Test
  void the_test_has_its_own() {
    assertEquals(perThousand(1), costs.ofSlippedRows(), A_HAIR);
    assertEquals(0.01, costs.rateOf("gauge other"), A_HAIR);
    assertEquals(0, costs.rateOf("no such slip"), A_HAIR);
  }

  @Test
  void mending_a_net_takes_at_least_half_of_what_mends_two() {
    double half = perThousand(3) / 2;
    assertEquals(half, costs.leastPerNet(Set.of(net("TB1-1"))), A_HAIR, "half of two crossed");
    assertEquals(
        perThousand(4) / 4,
        costs.leastPerNet(Set.of(net("TB1-1"), net("S1-3"))),
        A_HAIR,
        "a switch with two contacts mends four");
  }

  private int net(String point) {
    return unit.circuit().normal().of(unit.point(point));
  }
}
