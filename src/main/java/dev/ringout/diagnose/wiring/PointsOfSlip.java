package dev.ringout.diagnose.wiring;

import dev.ringout.circuit.Circuit;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** The points that a slip is about: where things are listed and where they would be. */
final class PointsOfSlip implements Slip.Cases<Set<Integer>> {
  private final Circuit circuit;

  PointsOfSlip(Circuit circuit) {
    this.circuit = circuit;
  }

  private Set<Integer> ends(int conductor) {
    return new LinkedHashSet<>(List.of(circuit.from(conductor), circuit.to(conductor)));
  }

  @Override
  public Set<Integer> missing(Slip.Missing slip) {
    return ends(slip.conductor());
  }

  @Override
  public Set<Integer> moved(Slip.Moved slip) {
    Set<Integer> points = ends(slip.wire());
    points.add(slip.to());
    return points;
  }

  @Override
  public Set<Integer> crossed(Slip.Crossed slip) {
    Set<Integer> points = ends(slip.wire());
    points.addAll(ends(slip.otherWire()));
    return points;
  }

  @Override
  public Set<Integer> rearranged(Slip.Rearranged slip) {
    Set<Integer> points = new LinkedHashSet<>();
    for (Slip.Put put : slip.puts()) {
      points.addAll(ends(put.wire()));
      points.add(put.to());
    }
    return points;
  }

  @Override
  public Set<Integer> misread(Slip.Misread slip) {
    Set<Integer> points = new LinkedHashSet<>();
    slip.judged().probing().points().forEach(points::add);
    return points;
  }

  @Override
  public Set<Integer> exchanged(Slip.Exchanged slip) {
    Set<Integer> points = new LinkedHashSet<>();
    slip.one().probing().points().forEach(points::add);
    slip.other().probing().points().forEach(points::add);
    return points;
  }

  @Override
  public Set<Integer> poor(Slip.Poor slip) {
    return ends(slip.conductor());
  }

  @Override
  public Set<Integer> bridged(Slip.Bridged slip) {
    return new LinkedHashSet<>(List.of(slip.one(), slip.other()));
  }

  @Override
  public Set<Integer> faultyPart(Slip.FaultyPart slip) {
    return new LinkedHashSet<>(List.of(slip.from(), slip.to()));
  }

  @Override
  public Set<Integer> faultySwitch(Slip.FaultySwitch slip) {
    Set<Integer> points = new LinkedHashSet<>();
    for (int contact : circuit.contactsOf(circuit.harness().switches().get(slip.which()))) {
      points.addAll(ends(contact));
    }
    return points;
  }
}
