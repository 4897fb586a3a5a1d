package dev.ringout.benchmarks.faults;

import dev.ringout.benchmarks.faults.Rig.Component;
import dev.ringout.benchmarks.faults.Rig.Joint;
import dev.ringout.benchmarks.faults.Rig.JointKind;
import dev.ringout.harness.Harness;
import dev.ringout.harness.Limits;
import dev.ringout.harness.Link;
import dev.ringout.harness.Part;
import dev.ringout.harness.PinDetail;
import dev.ringout.harness.Point;
import dev.ringout.harness.Switch;
import dev.ringout.harness.Wire;
import dev.ringout.source.Place;
import dev.ringout.support.PlainWires;
import dev.ringout.units.Gauge;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/** A unit as its wire list says it. */
final class Paper {
  private static final Place ROW = Place.of("harness.xlsx", "Wires");

  private Paper() {}

  static Harness of(Rig rig) {
    List<Wire> wires = new ArrayList<>();
    List<Link> links = new ArrayList<>();
    List<Switch> switches = new ArrayList<>();
    for (Joint joint : rig.joints) {
      Point from = point(rig, joint.ends[0]);
      Point to = point(rig, joint.ends[1]);
      if (joint.kind == JointKind.WIRE) {
        wires.add(wire(joint, from, to));
      } else if (joint.kind == JointKind.LINK) {
        links.add(new Link(from, to, "", ROW));
      }
    }
    rig.positionsOf.forEach(
        (name, positions) ->
            switches.add(
                new Switch(
                    name,
                    positions,
                    rig.joints.stream()
                        .filter(joint -> joint.ofSwitch.equals(name))
                        .map(
                            joint ->
                                new Switch.Contact(
                                    name,
                                    joint.position,
                                    point(rig, joint.ends[0]),
                                    point(rig, joint.ends[1]),
                                    ROW))
                        .toList())));
    return Harness.builder(limits())
        .wires(wires)
        .pins(pins(rig))
        .links(links)
        .switches(switches)
        .parts(rig.parts.stream().map(part -> part(rig, part)).toList())
        .build();
  }

  private static Limits limits() {
    return Limits.usual(0.05);
  }

  private static Point point(Rig rig, int point) {
    return Sheet.point(rig.points.get(point));
  }

  private static Wire wire(Joint joint, Point from, Point to) {
    return PlainWires.of(joint.name, from, to, new Gauge.Awg(20), RandomRig.metres(joint), ROW);
  }

  private static List<PinDetail> pins(Rig rig) {
    List<PinDetail> pins = new ArrayList<>();
    for (int i = 0; i < rig.points.size(); i++) {
      double[] face = rig.faceOf.get(i);
      pins.add(
          new PinDetail(
              point(rig, i),
              "",
              "",
              face == null ? OptionalDouble.empty() : OptionalDouble.of(face[0]),
              face == null ? OptionalDouble.empty() : OptionalDouble.of(face[1]),
              "",
              ROW));
    }
    return pins;
  }

  private static Part part(Rig rig, Component part) {
    return new Part(
        part.name,
        point(rig, part.ends[0]),
        point(rig, part.ends[1]),
        part.diode ? Part.Kind.DIODE : part.ohms == 40 ? Part.Kind.LAMP : Part.Kind.RESISTOR,
        part.diode ? OptionalDouble.empty() : OptionalDouble.of(part.ohms),
        OptionalDouble.empty(),
        OptionalDouble.empty(),
        "",
        ROW);
  }
}
