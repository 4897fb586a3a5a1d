package dev.ringout.compare;

import dev.ringout.circuit.Circuit;
import dev.ringout.circuit.PartGroups;
import dev.ringout.compare.Coverage.Unproven;
import dev.ringout.units.Text;
import java.util.function.IntPredicate;

/** Every pair of nets, but those between which a part may have any resistance. */
record PairsApart(Circuit circuit, PartGroups mayBeAnything) implements IsolationProof.Pairs {
  @Override
  public long needed() {
    long nets = circuit.normal().count();
    return nets * (nets - 1) / 2 - mayBeAnything.pairsWithin();
  }

  @Override
  public boolean isAll(int net) {
    return mayBeAnything.size(mayBeAnything.of(net)) == 1;
  }

  @Override
  public IntPredicate of(int net) {
    int group = mayBeAnything.of(net);
    return other -> mayBeAnything.of(other) != group;
  }

  @Override
  public Unproven unproven(int point, int other, long others, boolean waitsForJoins) {
    return new Unproven.Isolation(
        point, other, others, waitsForJoins, why("holds it apart", circuit, other, others));
  }

  static String why(String what, Circuit circuit, int other, long others) {
    return others == 1
        ? Text.of("no reading %s from the net of %s", what, circuit.point(other))
        : Text.of(
            "no reading %s from %d other nets, that of %s among them",
            what, others, circuit.point(other));
  }
}
