package dev.ringout.plan;

import dev.ringout.circuit.Circuit;
import dev.ringout.circuit.Nets;
import dev.ringout.compare.Unproven;
import dev.ringout.readings.Rework;
import java.util.Arrays;
import java.util.BitSet;
import java.util.HashSet;
import java.util.Set;

/** The nets that a plan is about. */
final class Scope implements Unproven.Cases<Boolean> {
  private final Circuit circuit;
  private final Nets normal;
  private final BitSet nets;

  private Scope(Circuit circuit, BitSet nets) {
    this.circuit = circuit;
    this.normal = circuit.normal();
    this.nets = nets;
  }

  /**
   * The nets that a plan is about. Where earlier readings stand, what they do not prove is planned,
   * in the items that were opened and elsewhere.
   */
  static Scope of(Circuit circuit, PlanOptions options) {
    Set<String> items = options.after().isPresent() ? options.only() : items(circuit, options);
    return new Scope(circuit, nets(circuit, items));
  }

  /** The items that were opened, and those that the plan is limited to. */
  static Set<String> items(Circuit circuit, PlanOptions options) {
    Set<String> items = new HashSet<>(options.only());
    // What was beside a wire when its connectors were opened may have been disturbed too.
    items.addAll(Rework.opened(circuit.harness(), options.touched(), options.opened()));
    return items;
  }

  private static BitSet nets(Circuit circuit, Set<String> items) {
    Nets normal = circuit.normal();
    BitSet nets = new BitSet();
    if (items.isEmpty()) {
      nets.set(0, normal.count());
      return nets;
    }
    for (int point = 0; point < circuit.size(); point++) {
      if (items.contains(circuit.point(point).ref())) {
        nets.set(normal.of(point));
      }
    }
    return nets;
  }

  /** Whether it is all nets. */
  boolean isEverything() {
    return nets.cardinality() == normal.count();
  }

  boolean hasNet(int net) {
    return nets.get(net);
  }

  /** Whether the net of a point is among them. */
  boolean has(int point) {
    return nets.get(normal.of(point));
  }

  private boolean hasEither(int one, int other) {
    return has(one) || has(other);
  }

  /** Whether the net of any of some points is among them. */
  boolean hasAny(int[] points) {
    return Arrays.stream(points).anyMatch(this::has);
  }

  /** Whether something unproven is about them. */
  boolean has(Unproven unproven) {
    return unproven.match(this);
  }

  @Override
  public Boolean join(Unproven.Join gap) {
    return has(gap.from());
  }

  @Override
  public Boolean isolation(Unproven.Isolation gap) {
    return hasEither(gap.point(), gap.other());
  }

  @Override
  public Boolean insulation(Unproven.Insulation gap) {
    return hasEither(gap.point(), gap.other());
  }

  @Override
  public Boolean ofWire(Unproven.OfWire gap) {
    return hasEither(circuit.from(gap.conductor()), circuit.to(gap.conductor()));
  }

  @Override
  public Boolean contact(Unproven.Contact gap) {
    return hasEither(circuit.from(gap.conductor()), circuit.to(gap.conductor()));
  }

  @Override
  public Boolean pastContacts(Unproven.PastContacts gap) {
    return hasEither(gap.one(), gap.other());
  }

  @Override
  public Boolean ofPart(Unproven.OfPart gap) {
    return hasEither(circuit.fromOfPart(gap.part()), circuit.toOfPart(gap.part()));
  }
}
