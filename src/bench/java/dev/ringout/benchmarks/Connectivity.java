package dev.ringout.benchmarks;

import dev.ringout.circuit.Circuit;
import dev.ringout.harness.Harness;
import dev.ringout.harness.PinDetail;
import dev.ringout.harness.Point;
import dev.ringout.harness.SwitchState;
import dev.ringout.harness.Wire;
import dev.ringout.source.Place;
import dev.ringout.support.PlainLimits;
import dev.ringout.support.PlainWires;
import dev.ringout.units.Gauge;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;

/** Nets of a large unit, beside a bare union-find over the same numbers. */
public final class Connectivity {
  private static final int TIMES = 5;

  private Connectivity() {}

  /** Arguments: points, wires. */
  public static void main(String[] args) {
    int points = Integer.parseInt(args[0]);
    int wires = Integer.parseInt(args[1]);
    Random random = new Random(1);
    int[] from = new int[wires];
    int[] to = new int[wires];
    for (int i = 0; i < wires; i++) {
      from[i] = random.nextInt(points);
      to[i] = from[i] == points - 1 ? 0 : from[i] + 1;
    }
    double bare = Double.MAX_VALUE;
    for (int i = 0; i < TIMES; i++) {
      long start = System.nanoTime();
      bare(points, from, to);
      bare = Math.min(bare, (System.nanoTime() - start) / 1e9);
    }
    Circuit circuit = Circuit.of(harness(points, from, to));
    double nets = Double.MAX_VALUE;
    for (int i = 0; i < TIMES; i++) {
      // A state of its own each time: nets are kept once a state is computed.
      SwitchState state = SwitchState.normal().withLifted(circuit.harness().wires().get(i));
      long start = System.nanoTime();
      circuit.in(state).count();
      nets = Math.min(nets, (System.nanoTime() - start) / 1e9);
    }
    System.out.printf("bare union-find %.3f s, nets of the circuit %.3f s%n", bare, nets);
    System.out.printf("RATIO %.1f%n", nets / bare);
  }

  private static int bare(int points, int[] from, int[] to) {
    int[] parent = new int[points];
    for (int i = 0; i < points; i++) {
      parent[i] = i;
    }
    int nets = points;
    for (int i = 0; i < from.length; i++) {
      int one = find(parent, from[i]);
      int other = find(parent, to[i]);
      if (one != other) {
        parent[one] = other;
        nets--;
      }
    }
    return nets;
  }

  private static int find(int[] parent, int point) {
    int root = point;
    while (parent[root] != root) {
      parent[root] = parent[parent[root]];
      root = parent[root];
    }
    return root;
  }

  private static Harness harness(int points, int[] from, int[] to) {
    Point[] all = new Point[points];
    List<PinDetail> pins = new ArrayList<>();
    Place place = Place.of("bench");
    for (int i = 0; i < points; i++) {
      all[i] = new Point("J" + i / 100, "" + i % 100);
      pins.add(
          new PinDetail(all[i], "", "", OptionalDouble.empty(), OptionalDouble.empty(), "", place));
    }
    List<Wire> wires = new ArrayList<>();
    Gauge gauge = new Gauge.Awg(20);
    for (int i = 0; i < from.length; i++) {
      wires.add(PlainWires.of("W" + i, all[from[i]], all[to[i]], gauge, 1, place));
    }
    return Harness.builder(PlainLimits.of()).wires(wires).pins(pins).build();
  }
}
