package dev.ringout.bench;

import dev.ringout.circuit.Circuit;
import dev.ringout.compare.Unproven;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** The points of which something is not proven: of a net that is not, all of its points. */
final class UnprovenPoints implements Unproven.Cases<Set<Integer>> {
  private final Circuit circuit;

  UnprovenPoints(Circuit circuit) {
    this.circuit = circuit;
  }

  private Set<Integer> netOf(int point) {
    int net = circuit.normal().of(point);
    return IntStream.range(0, circuit.size())
        .filter(other -> circuit.normal().of(other) == net)
        .boxed()
        .collect(Collectors.toSet());
  }

  @Override
  public Set<Integer> join(Unproven.Join gap) {
    return netOf(gap.from());
  }

  @Override
  public Set<Integer> isolation(Unproven.Isolation gap) {
    return netOf(gap.point());
  }

  @Override
  public Set<Integer> insulation(Unproven.Insulation gap) {
    return netOf(gap.point());
  }

  @Override
  public Set<Integer> ofWire(Unproven.OfWire gap) {
    return Set.of(circuit.from(gap.conductor()), circuit.to(gap.conductor()));
  }

  @Override
  public Set<Integer> contact(Unproven.Contact gap) {
    return Set.of(circuit.from(gap.conductor()), circuit.to(gap.conductor()));
  }

  @Override
  public Set<Integer> pastContacts(Unproven.PastContacts gap) {
    return Set.of(gap.one(), gap.other());
  }

  @Override
  public Set<Integer> ofPart(Unproven.OfPart gap) {
    return Set.of(circuit.fromOfPart(gap.part()), circuit.toOfPart(gap.part()));
  }
}
