package dev.ringout.benchmarks.weaken;

import dev.ringout.benchmarks.weaken.Unit.Component;
import dev.ringout.benchmarks.weaken.Unit.Demand;
import dev.ringout.benchmarks.weaken.Unit.Joint;
import dev.ringout.benchmarks.weaken.Unit.JointKind;
import dev.ringout.benchmarks.weaken.Unit.PartKind;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;

/** Makes a small unit: two to four connectors and strips, and of all else a little. */
final class UnitMaker {
  private static final List<String> REFS = List.of("J1", "J2", "P3", "TB1");
  private static final int[] GAUGES = {16, 18, 20, 22, 24};
  private static final int MOST_POINTS = 24;

  /** Two wires side by side are told from one only where copper is most of what is read. */
  private static final double LONG_METRES = 4;

  private final Random random;
  private final int itemCount;
  private final boolean someLengthsAreMissing;
  private final List<String> points = new ArrayList<>();
  private final List<Joint> joints = new ArrayList<>();
  private final List<Component> parts = new ArrayList<>();
  private final int[] pins = new int[REFS.size()];
  private int wires;

  private UnitMaker(long seed) {
    random = new Random(seed);
    itemCount = 2 + random.nextInt(3);
    someLengthsAreMissing = random.nextInt(3) == 0;
  }

  static Unit make(String name, long seed) {
    return new UnitMaker(seed).make(name);
  }

  private Unit make(String name) {
    List<String> positions = new ArrayList<>();
    int nets = 2 + random.nextInt(3);
    for (int net = 0; net < nets; net++) {
      net();
    }
    if (random.nextBoolean()) {
      positions.addAll(switched());
    }
    int wanted = random.nextInt(4);
    for (int part = 0; part < wanted && points.size() <= MOST_POINTS - 4; part++) {
      part(part);
    }
    for (int spare = random.nextInt(3); spare > 0 && points.size() < MOST_POINTS; spare--) {
      pin(random.nextInt(itemCount));
    }
    return new Unit(
        name, List.copyOf(points), List.copyOf(joints), List.copyOf(parts), positions, demand());
  }

  private Demand demand() {
    boolean effective = random.nextInt(4) == 0;
    return new Demand(
        random.nextInt(5) > 0,
        random.nextBoolean() ? 100e6 : 20e6,
        random.nextBoolean() ? 500 : 250,
        random.nextInt(6) == 0,
        random.nextInt(6) == 0,
        random.nextInt(6) == 0,
        random.nextInt(6) == 0,
        random.nextInt(5) > 0 ? "B" : "",
        effective ? "0400 to 0499" : "");
  }

  private int pin(int item) {
    pins[item]++;
    points.add(REFS.get(item) + "-" + pins[item]);
    return points.size() - 1;
  }

  private int pinOfAny() {
    return pin(random.nextInt(itemCount));
  }

  private double around(double low, double high) {
    return low + random.nextDouble() * (high - low);
  }

  private void wire(int from, int to, int gauge, double metres, boolean isListed) {
    wires++;
    double copper = Physics.copperOhms(gauge, metres) * around(1, 1.02);
    joints.add(
        new Joint(
            JointKind.WIRE,
            "W" + wires,
            from,
            to,
            "",
            gauge,
            isListed ? OptionalDouble.of(metres) : OptionalDouble.empty(),
            copper + around(0.002, 0.008)));
  }

  private void wire(int from, int to) {
    boolean isListed = !someLengthsAreMissing || random.nextInt(3) > 0;
    wire(from, to, gauge(), Math.rint(around(0.4, 3) * 10) / 10.0, isListed);
  }

  private int gauge() {
    return GAUGES[random.nextInt(GAUGES.length)];
  }

  /** Two to four points, at times with two wires side by side, a loop, or a link. */
  private void net() {
    List<Integer> own = new ArrayList<>();
    int size = 2 + random.nextInt(3);
    int item = random.nextInt(itemCount);
    for (int point = 0; point < size && points.size() < MOST_POINTS - 6; point++) {
      own.add(pin((item + point) % itemCount));
    }
    int how = random.nextInt(8);
    if (how == 0 && own.size() >= 2) {
      int gauge = gauge();
      wire(own.get(0), own.get(1), gauge, LONG_METRES, true);
      wire(own.get(0), own.get(1), gauge, LONG_METRES + 0.3, true);
      chain(own.subList(1, own.size()));
    } else if (how == 1 && own.size() >= 3) {
      for (int point = 0; point < 3; point++) {
        wire(own.get(point), own.get((point + 1) % 3), 24, LONG_METRES + point, true);
      }
      chain(own.subList(2, own.size()));
    } else if (how <= 3 && own.size() >= 2) {
      int beside = pin(REFS.indexOf(points.get(own.get(0)).split("-", -1)[0]));
      joints.add(
          new Joint(
              JointKind.LINK,
              "",
              own.get(0),
              beside,
              "",
              0,
              OptionalDouble.empty(),
              around(0.001, 0.004)));
      chain(own);
    } else {
      chain(own);
    }
  }

  /** Each to the one before, or all to the first. */
  private void chain(List<Integer> own) {
    boolean star = random.nextBoolean();
    for (int point = 1; point < own.size(); point++) {
      wire(own.get(star ? 0 : point - 1), own.get(point));
    }
  }

  private List<String> switched() {
    int common = point(Unit.SWITCH + "-COM");
    int open = point(Unit.SWITCH + "-NO");
    wire(common, pinOfAny());
    wire(open, pinOfAny());
    contact(common, open, "ON");
    if (random.nextBoolean()) {
      int closed = point(Unit.SWITCH + "-NC");
      wire(closed, pinOfAny());
      contact(common, closed, "OFF");
    }
    return List.of("OFF", "ON");
  }

  private int point(String name) {
    points.add(name);
    return points.size() - 1;
  }

  private void contact(int from, int to, String position) {
    joints.add(
        new Joint(
            JointKind.CONTACT,
            "",
            from,
            to,
            position,
            0,
            OptionalDouble.empty(),
            around(0.005, 0.06)));
  }

  private void part(int number) {
    List<PartKind> kinds = List.of(PartKind.values());
    PartKind kind = kinds.get(random.nextInt(kinds.size()));
    String ref = "X" + (number + 1);
    boolean diode = kind == PartKind.DIODE;
    int from = point(ref + (diode ? "-A" : "-1"));
    int to = point(ref + (diode ? "-K" : "-2"));
    wire(endFor(to), from);
    wire(to, pinOfAny());
    if (kind.isOpenOnDirectCurrent()) {
      boolean alone = random.nextBoolean();
      component(ref, from, to, kind, 0);
      if (!alone) {
        component(ref, from, to, PartKind.WINDING, around(40, 400));
      }
    } else {
      component(ref, from, to, kind, Math.rint(around(20, 4000)));
    }
  }

  /** A pin of its own, or one of a net that has no diode yet. */
  private int endFor(int ownEnd) {
    int other = random.nextInt(ownEnd);
    boolean free =
        parts.isEmpty()
            && joints.stream().noneMatch(one -> one.kind() == JointKind.CONTACT)
            && !points.get(other).startsWith("X");
    return free ? other : pinOfAny();
  }

  private void component(String ref, int from, int to, PartKind kind, double ohms) {
    boolean isListed = kind != PartKind.DIODE && ohms > 0 && random.nextInt(4) > 0;
    double open = random.nextBoolean() ? Double.POSITIVE_INFINITY : around(1e6, 9e6);
    double listed = Math.rint(ohms);
    parts.add(
        new Component(
            ref,
            from,
            to,
            kind,
            isListed ? OptionalDouble.of(listed) : OptionalDouble.empty(),
            isListed && random.nextBoolean() ? OptionalDouble.of(5) : OptionalDouble.empty(),
            kind.isOpenOnDirectCurrent()
                ? open
                : kind == PartKind.DIODE ? around(400, 900) : listed * around(0.97, 1.02)));
  }
}
