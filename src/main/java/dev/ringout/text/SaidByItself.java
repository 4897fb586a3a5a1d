package dev.ringout.text;

import dev.ringout.circuit.Nets;
import dev.ringout.compare.Unproven;
import java.util.Set;

/**
 * Which gaps in the proof have a line of their own on the page of a check; the others are said by
 * another line.
 *
 * @param netsOfUnreadWires their wires are named together
 * @param noInsulation whether no insulation reading was made at all, which is said once
 * @param netsOfFailingInsulation of them the failing reading says more
 */
record SaidByItself(
    Nets normal,
    Set<Integer> netsOfUnreadWires,
    boolean noInsulation,
    Set<Integer> netsOfFailingInsulation)
    implements Unproven.Cases<Boolean> {
  /** A join that lacks a wire's reading is said by that wire. */
  @Override
  public Boolean join(Unproven.Join gap) {
    return !netsOfUnreadWires.contains(normal.of(gap.from()));
  }

  @Override
  public Boolean isolation(Unproven.Isolation gap) {
    return !gap.waitsForJoins();
  }

  @Override
  public Boolean insulation(Unproven.Insulation gap) {
    return !gap.waitsForJoins()
        && !noInsulation
        && !netsOfFailingInsulation.contains(normal.of(gap.point()));
  }

  @Override
  public Boolean ofWire(Unproven.OfWire gap) {
    return gap.unreadWire().isEmpty();
  }

  @Override
  public Boolean contact(Unproven.Contact gap) {
    return true;
  }

  @Override
  public Boolean pastContacts(Unproven.PastContacts gap) {
    return true;
  }

  @Override
  public Boolean ofPart(Unproven.OfPart gap) {
    return true;
  }
}
