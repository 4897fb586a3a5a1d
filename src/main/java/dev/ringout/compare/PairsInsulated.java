package dev.ringout.compare;

import dev.ringout.circuit.Circuit;
import dev.ringout.circuit.Nets;
import dev.ringout.circuit.PartGroups;
import dev.ringout.compare.InsulationDemand.Level;

/** The pairs of nets of which one level of insulation is asked. */
final class PairsInsulated implements IsolationProof.Pairs {
  private final Circuit circuit;
  private final InsulationDemand demand;
  private final Level level;

  /** For each kind of net, the kinds from which this level is asked. */
  private final boolean[][] asked;

  PairsInsulated(Circuit circuit, InsulationDemand demand, Level level) {
    this.circuit = circuit;
    this.demand = demand;
    this.level = level;
    int kinds = demand.kinds();
    asked = new boolean[kinds][kinds];
    for (int one = 0; one < kinds; one++) {
      for (int other = 0; other < kinds; other++) {
        asked[one][other] = demand.between(one, other).equals(level);
      }
    }
  }

  /** Whether a reading is good enough for this level. */
  boolean isShownBy(Judged judged) {
    return judged.provesInsulation()
        && judged.reading().volts().orElse(0) >= level.volts()
        && (judged.outcome() == Outcome.ACCEPTED || judged.atLeastOhms() >= level.ohms());
  }

  @Override
  public long needed() {
    Nets normal = circuit.normal();
    long[] ofKind = new long[demand.kinds()];
    for (int net = 0; net < normal.count(); net++) {
      ofKind[demand.kind(net)]++;
    }
    long ends = 0;
    for (int one = 0; one < asked.length; one++) {
      for (int other = 0; other < asked.length; other++) {
        if (asked[one][other]) {
          ends += ofKind[one] * (one == other ? ofKind[one] - 1 : ofKind[other]);
        }
      }
    }
    return (ends - demand.endsBehindParts(level)) / 2;
  }

  @Override
  public int kinds() {
    return demand.kinds();
  }

  @Override
  public int kind(int net) {
    return demand.kind(net);
  }

  @Override
  public boolean isAsked(int kind, int otherKind) {
    return asked[kind][otherKind];
  }

  @Override
  public PartGroups groups() {
    return demand.groups();
  }

  @Override
  public Unproven unproven(int point, int other, long others, boolean waitsForJoins) {
    return new Unproven.Insulation(point, other, others, waitsForJoins, level);
  }
}
