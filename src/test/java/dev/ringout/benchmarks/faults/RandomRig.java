package dev.ringout.benchmarks.faults;

import dev.ringout.benchmarks.faults.Rig.Component;
import dev.ringout.benchmarks.faults.Rig.Joint;
import dev.ringout.benchmarks.faults.Rig.JointKind;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.jspecify.annotations.Nullable;

/**
 * Makes units as they are met: connectors with lettered or numbered pins, some with the face given,
 * strips with jumpers, splices, wires in parallel, loops, a switch, parts and shields.
 */
final class RandomRig {
  private static final double OHMS_PER_METRE = 0.0333;
  private static final double OHMS_OF_ENDS = 0.006;
  private static final String LETTERS = "ABCDEFGHJKLMNPRSTUVWXYZabcdefghjkmnpqrstuvwxyz";

  private final Random random;
  private final Rig rig = new Rig();
  private @Nullable Shape shape;
  private int wires;
  private int terminal = 1;
  private int studs = 1;

  /** Of a cable; the next may be its like. */
  private record Shape(boolean lettered, boolean face, int pins, boolean plug) {}

  private RandomRig(Random random) {
    this.random = random;
  }

  static Rig of(Random random, int wires) {
    RandomRig made = new RandomRig(random);
    for (int cable = 1; made.wires < wires; cable++) {
      made.cable(cable, wires - made.wires);
    }
    made.jumpers();
    made.switches(wires < 200 ? 2 : 4);
    made.parts(wires < 200 ? 2 : 4);
    return made.rig;
  }

  /** The length of a wire, by its name: all of one cable are as long. */
  static double metres(Joint wire) {
    return (wire.ohms - OHMS_OF_ENDS) / OHMS_PER_METRE;
  }

  private void wire(int from, int to, double metres) {
    wires++;
    rig.joints.add(
        new Joint(
            "W" + wires, JointKind.WIRE, from, to, metres * OHMS_PER_METRE + OHMS_OF_ENDS, "", ""));
  }

  private void cable(int number, int most) {
    double metres = 1 + random.nextInt(6);
    int size = Math.min(most, 4 + random.nextInt(16));
    if (shape == null || size < shape.pins() / 2 || random.nextInt(3) > 0) {
      shape =
          new Shape(
              random.nextBoolean(),
              random.nextInt(3) == 0,
              size + 1 + random.nextInt(4),
              random.nextInt(10) < 6);
    }
    boolean lettered = shape.lettered();
    boolean face = shape.face();
    int pins = shape.pins();
    boolean plug = shape.plug();
    size = Math.min(size, pins - 1);
    List<Integer> near = pins("J" + number, pins, lettered, face);
    List<Integer> far = plug ? pins("P" + number, pins, lettered, face) : List.of();
    List<Integer> used = new ArrayList<>();
    for (int i = 0; i < pins; i++) {
      used.add(i);
    }
    while (used.size() > size) {
      used.remove(random.nextInt(used.size()));
    }
    for (int pin : used) {
      int to = plug ? far.get(pin) : rig.point("TB" + (terminal / 20 + 1) + "-" + terminal++);
      wire(near.get(pin), to, metres);
    }
    if (plug && random.nextBoolean()) {
      wire(rig.point("J" + number + "-SHELL"), rig.point("P" + number + "-SHELL"), metres);
    }
    if (plug && random.nextInt(3) == 0 && size > 6) {
      splice(near, far, used, metres);
    }
    if (random.nextInt(4) == 0) {
      // Two conductors for one current.
      Joint twin = rig.wires().get(rig.wires().size() - 2);
      wire(twin.ends[0], twin.ends[1], metres);
    }
  }

  private void splice(List<Integer> near, List<Integer> far, List<Integer> used, double metres) {
    int splice = rig.point("SP" + studs++ + "-1");
    for (int branch = 0; branch < 3; branch++) {
      List<Integer> side = branch < 2 ? near : far;
      for (int pin = 0; pin < side.size(); pin++) {
        int at = side.get(pin);
        if (!used.contains(pin)
            && rig.joints.stream().noneMatch(j -> j.ends[0] == at || j.ends[1] == at)) {
          wire(at, splice, metres);
          break;
        }
      }
    }
  }

  private List<Integer> pins(String item, int count, boolean lettered, boolean face) {
    List<Integer> pins = new ArrayList<>();
    int row = (count + 1) / 2;
    for (int pin = 0; pin < count; pin++) {
      int point = rig.point(item + "-" + (lettered ? LETTERS.charAt(pin) : "" + (pin + 1)));
      pins.add(point);
      if (face) {
        rig.faceOf.put(point, new double[] {pin % row * 2.5, pin / row * 3});
      }
    }
    return pins;
  }

  private void jumpers() {
    for (int one = 1; one < terminal - 1; one++) {
      String strip = "TB" + (one / 20 + 1);
      String next = "TB" + ((one + 1) / 20 + 1);
      if (strip.equals(next) && random.nextInt(4) == 0) {
        link(rig.point(strip + "-" + one), rig.point(next + "-" + (one + 1)));
      }
    }
  }

  private void link(int from, int to) {
    rig.joints.add(new Joint("link " + rig.joints.size(), JointKind.LINK, from, to, 0.004, "", ""));
  }

  private void switches(int count) {
    for (int number = 1; number <= count; number++) {
      String name = "S" + number;
      rig.positionsOf.put(name, List.of("AHEAD", "ASTERN"));
      int common = rig.point(name + "-1");
      int ahead = rig.point(name + "-2");
      int astern = rig.point(name + "-3");
      rig.joints.add(
          new Joint(name + " AHEAD", JointKind.CONTACT, common, ahead, 0.01, name, "AHEAD"));
      rig.joints.add(
          new Joint(name + " ASTERN", JointKind.CONTACT, common, astern, 0.01, name, "ASTERN"));
      List<Integer> pins = pins("JS" + number, 4, false, false);
      wire(pins.get(0), common, 2);
      wire(pins.get(1), ahead, 2);
      wire(pins.get(2), astern, 2);
    }
  }

  private void parts(int count) {
    for (int number = 1; number <= count; number++) {
      // A second diode shows that the meter opens diodes when the first is missing.
      List<Integer> pins = pins("JR" + number, 9, false, false);
      String[] names = {"R" + number, "DS" + number, "D" + number, "DD" + number};
      double[] ohms = {100 + 10 * random.nextInt(20), 40, 0, 0};
      for (int i = 0; i < names.length; i++) {
        int from = rig.point(names[i] + "-A");
        int to = rig.point(names[i] + "-K");
        rig.parts.add(new Component(names[i], i >= 2, from, to, ohms[i]));
        wire(pins.get(2 * i), from, 2);
        wire(pins.get(2 * i + 1), to, 2);
      }
    }
  }
}
