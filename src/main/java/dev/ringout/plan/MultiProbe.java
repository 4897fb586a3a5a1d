package dev.ringout.plan;

import dev.ringout.circuit.Circuit;
import dev.ringout.circuit.Nets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * The fewest readings of all, for a fixture that puts probes on every point at once: W. H. Kautz,
 * "Testing for Faults in Wiring Networks", IEEE Trans. Computers C-23(4), 1974, pp. 358–363: p − 1
 * + ⌈log2 q⌉, where p is the points of the largest net and q the number of nets, single points
 * included.
 *
 * @param chains each a reading through pairs of points put in series, one pair of each net that has
 *     as many points
 * @param halves each a reading between two groups of points, one point of each net
 */
public record MultiProbe(List<List<int[]>> chains, List<Halves> halves) {

  /** A reading between points tied together and others tied together. */
  public record Halves(List<Integer> from, List<Integer> to) {}

  /** The readings for a circuit, parts left off. */
  public static MultiProbe of(Circuit circuit) {
    Nets nets = circuit.normal();
    List<List<int[]>> chains = new ArrayList<>();
    for (int net = 0; net < nets.count(); net++) {
      int[] points = nets.pointsOf(net);
      for (int other = 1; other < points.length; other++) {
        if (chains.size() < other) {
          chains.add(new ArrayList<>());
        }
        chains.get(other - 1).add(new int[] {points[0], points[other]});
      }
    }
    List<int[]> firsts = new ArrayList<>();
    for (int net = 0; net < nets.count(); net++) {
      firsts.add(new int[] {nets.pointsOf(net)[0]});
    }
    return new MultiProbe(chains, halves(firsts));
  }

  /** Half of some groups against the other, by each bit of their numbers: any two differ in one. */
  static List<Halves> halves(List<int[]> groups) {
    List<Halves> halves = new ArrayList<>();
    for (int bit = 1; bit < groups.size(); bit *= 2) {
      Halves half = new Halves(new ArrayList<>(), new ArrayList<>());
      for (int number = 0; number < groups.size(); number++) {
        List<Integer> side = (number & bit) == 0 ? half.from() : half.to();
        Arrays.stream(groups.get(number)).forEach(side::add);
      }
      halves.add(half);
    }
    return halves;
  }

  /** How many readings. */
  public int count() {
    return chains.size() + halves.size();
  }
}
