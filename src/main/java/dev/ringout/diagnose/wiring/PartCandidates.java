package dev.ringout.diagnose.wiring;

import dev.ringout.circuit.Circuit;
import dev.ringout.circuit.Expected.ThroughParts;
import dev.ringout.compare.Judged;
import dev.ringout.compare.Observed;
import dev.ringout.diagnose.PartFault;
import dev.ringout.harness.Part;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** The slips of parts that could mend one contradicted reading. */
final class PartCandidates {
  private final Circuit circuit;
  private final Neighbours neighbours;
  private final Evidence evidence;

  PartCandidates(Circuit circuit, Neighbours neighbours, Evidence evidence) {
    this.circuit = circuit;
    this.neighbours = neighbours;
    this.evidence = evidence;
  }

  /** A part that is missing, reversed or another. */
  void notAsListed(int number, Judged judged, List<Slip> slips, Set<Slip> found) {
    if (isAltered(number, slips)) {
      return;
    }
    Part part = circuit.part(number);
    int from = circuit.fromOfPart(number);
    int to = circuit.toOfPart(number);
    found.add(new Slip.FaultyPart(number, PartFault.OTHER_VALUE, from, to));
    if (judged.observed() != Observed.JOINED) {
      found.add(new Slip.FaultyPart(number, PartFault.MISSING, from, to));
      if (part.kind() == Part.Kind.DIODE) {
        found.add(new Slip.FaultyPart(number, PartFault.REVERSED, to, from));
      }
    }
  }

  private static boolean isAltered(int part, List<Slip> slips) {
    return slips.stream()
        .flatMap(slip -> slip.asFaultyPart().stream())
        .anyMatch(faulty -> faulty.part() == part);
  }

  /** A part whose value was read where nothing is listed, one of its leads being there. */
  void elsewhere(
      Judged judged, SlippedNets nets, List<Slip> slips, Set<? super Slip.FaultyPart> found) {
    eachAt(
        judged,
        nets,
        slips,
        (number, isFrom, probe) -> {
          int from = circuit.fromOfPart(number);
          int to = circuit.toOfPart(number);
          found.add(
              isFrom
                  ? otherPoints(number, from, near(to, probe, nets))
                  : otherPoints(number, near(from, probe, nets), to));
        });
  }

  /**
   * Where a part's value was read and nothing is listed, a join of one probe with the lead that is
   * not at the other explains it too.
   */
  Set<Join> farLeads(Judged judged, SlippedNets nets, List<Slip> slips) {
    Set<Join> joins = new LinkedHashSet<>();
    eachAt(
        judged,
        nets,
        slips,
        (number, isFrom, probe) ->
            joins.add(
                new Join(probe, isFrom ? circuit.toOfPart(number) : circuit.fromOfPart(number))));
    return joins;
  }

  /** Two points that would have to be joined. */
  record Join(int one, int other) {}

  /** A part with one lead at one probe, and the other probe. */
  private interface AtAProbe {
    void take(int part, boolean isFrom, int otherProbe);
  }

  private void eachAt(Judged judged, SlippedNets nets, List<Slip> slips, AtAProbe taker) {
    if (!judged.probing().isPair()) {
      return;
    }
    int one = judged.probing().from()[0];
    int other = judged.probing().to()[0];
    for (int number = 0; number < circuit.harness().parts().size(); number++) {
      if (isAltered(number, slips) || !PartValues.mayBe(circuit.part(number), judged, circuit)) {
        continue;
      }
      for (int[] probes : new int[][] {{one, other}, {other, one}}) {
        if (nets.groupOf(circuit.fromOfPart(number)) == nets.groupOf(probes[0])) {
          taker.take(number, true, probes[1]);
        }
        if (nets.groupOf(circuit.toOfPart(number)) == nets.groupOf(probes[0])) {
          taker.take(number, false, probes[1]);
        }
      }
    }
  }

  /** A part that is not read where it is listed, but where its value was read instead. */
  void leadsAtValuesElsewhere(
      ThroughParts parts, SlippedNets nets, List<Slip> slips, Set<Slip> found) {
    for (Judged value : evidence.valuesOfParts()) {
      Set<Slip.FaultyPart> there = new LinkedHashSet<>();
      elsewhere(value, nets, slips, there);
      there.stream().filter(slip -> parts.parts().contains(slip.part())).forEach(found::add);
    }
  }

  private static Slip.FaultyPart otherPoints(int part, int from, int to) {
    return new Slip.FaultyPart(part, PartFault.OTHER_POINTS, from, to);
  }

  /** The point of a probed net at which a lead that belongs elsewhere is likeliest. */
  private int near(int listed, int probed, SlippedNets nets) {
    int nearest = probed;
    int least = Integer.MAX_VALUE;
    for (int point : nets.pointsOf(nets.groupOf(probed))) {
      if (neighbours.sameItem(point, listed) && neighbours.distance(point, listed) < least) {
        least = neighbours.distance(point, listed);
        nearest = point;
      }
    }
    return nearest;
  }
}
