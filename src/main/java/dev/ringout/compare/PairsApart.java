package dev.ringout.compare;

import dev.ringout.circuit.Circuit;
import dev.ringout.circuit.PartGroups;

/** Every pair of nets, but those between which a part may have any resistance. */
record PairsApart(Circuit circuit, PartGroups mayBeAnything) implements IsolationProof.Pairs {
  @Override
  public long needed() {
    long nets = circuit.normal().count();
    return nets * (nets - 1) / 2 - mayBeAnything.pairsWithin();
  }

  @Override
  public int kinds() {
    return 1;
  }

  @Override
  public int kind(int net) {
    return 0;
  }

  @Override
  public boolean isAsked(int kind, int otherKind) {
    return true;
  }

  @Override
  public PartGroups groups() {
    return mayBeAnything;
  }

  @Override
  public Unproven unproven(int point, int other, long others, boolean waitsForJoins) {
    return new Unproven.Isolation(point, other, others, waitsForJoins);
  }
}
