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
        SlippedNets nets = evidence.nets(others, state);
        settled.set(
            i,
            between(
                bridged.get().one(),
                pieceWith(bridged.get().one(), nets),
                bridged.get().other(),
                pieceWith(bridged.get().other(), nets)));
      }
    }
    return List.copyOf(settled);
  }

  /**
   * Bridges between two groups. Where contacts of switches hold a group together there is one from
   * each of its pieces: in another position only that piece is joined to the other group.
   */
  List<Slip> between(int from, int to, SlippedNets nets) {
    List<Slip> bridges = new ArrayList<>();
    for (List<Integer> one : nets.piecesOf(nets.groupOf(from))) {
      for (List<Integer> other : nets.piecesOf(nets.groupOf(to))) {
        bridges.add(between(pointIn(one, from), one, pointIn(other, to), other));
      }
    }
    return bridges;
  }

  private static List<Integer> pieceWith(int point, SlippedNets nets) {
    return nets.piecesOf(nets.groupOf(point)).stream()
        .filter(piece -> piece.contains(point))
        .findFirst()
        .orElseThrow();
  }

  /** The point itself where it is of the piece; else any of it. */
  private static int pointIn(List<Integer> piece, int point) {
    return piece.contains(point) ? point : piece.get(0);
  }

  /** A bridge between two pieces, put where pins of theirs are next to each other if any are. */
  private Slip between(int from, List<Integer> fromPoints, int to, List<Integer> toPoints) {
    int one = from;
    int other = to;
    int nearest = neighbours.sameItem(from, to) ? neighbours.distance(from, to) : FARTHEST;
    for (int a : few(fromPoints)) {
      for (int b : few(toPoints)) {
        if (neighbours.sameItem(a, b) && neighbours.distance(a, b) < nearest) {
          nearest = neighbours.distance(a, b);
          one = a;
          other = b;
        }
      }
    }
    return new Slip.Bridged(Math.min(one, other), Math.max(one, other));
  }

  private static List<Integer> few(List<Integer> points) {
    return points.subList(0, Math.min(points.size(), MOST_POINTS));
  }
}
