package dev.ringout.diagnose.wiring;

import dev.ringout.harness.SwitchState;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Where two nets that are one are likeliest bridged: at pins of theirs next to each other. */
final class Bridges {
  /** Of a larger net only some points are looked at. */
  private static final int MOST_POINTS = 40;

  /** Farther apart than this, pins of one item are as good as those of two. */
  private static final int FARTHEST = 160;

  private final Neighbours neighbours;
  private final Evidence evidence;

  Bridges(Neighbours neighbours, Evidence evidence) {
    this.neighbours = neighbours;
    this.evidence = evidence;
  }

  /** The same slips with each bridge where, beside the others, its pins are nearest. */
  List<Slip> settled(List<Slip> slips, SwitchState state) {
    List<Slip> settled = new ArrayList<>(slips);
    for (int i = 0; i < settled.size(); i++) {
      Optional<Slip.Bridged> bridged = settled.get(i).asBridged();
      if (bridged.isPresent()) {
        List<Slip> others = new ArrayList<>(settled);
        others.remove(i);
        settled.set(
            i, between(bridged.get().one(), bridged.get().other(), evidence.nets(others, state)));
      }
    }
    return List.copyOf(settled);
  }

  /** A bridge between two groups, put where pins of theirs are next to each other if any are. */
  Slip between(int from, int to, SlippedNets nets) {
    List<Integer> fromPoints = points(nets, from);
    List<Integer> toPoints = points(nets, to);
    int one = from;
    int other = to;
    int nearest = neighbours.sameItem(from, to) ? neighbours.distance(from, to) : FARTHEST;
    for (int a : fromPoints) {
      for (int b : toPoints) {
        if (neighbours.sameItem(a, b) && neighbours.distance(a, b) < nearest) {
          nearest = neighbours.distance(a, b);
          one = a;
          other = b;
        }
      }
    }
    return new Slip.Bridged(Math.min(one, other), Math.max(one, other));
  }

  private static List<Integer> points(SlippedNets nets, int point) {
    List<Integer> points = new ArrayList<>();
    for (int one : nets.pointsOf(nets.groupOf(point))) {
      if (points.size() < MOST_POINTS) {
        points.add(one);
      }
    }
    return points;
  }
}
