package dev.ringout.benchmarks.faults;

import dev.ringout.benchmarks.faults.Rig.Component;
import dev.ringout.benchmarks.faults.Rig.Joint;
import dev.ringout.benchmarks.faults.Rig.JointKind;
import dev.ringout.benchmarks.faults.Rig.Leak;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Plants slips in a unit. No two touch the same wire. */
final class Planter {
  private final Rig rig;
  private final Random random;
  private final Set<String> touched = new HashSet<>();

  Planter(Rig rig, Random random) {
    this.rig = rig;
    this.random = random;
  }

  /** Whether there was room for it, and a meter could see it. */
  boolean plant(Kind kind) {
    List<Object> before = rig.fingerprint();
    boolean planted =
        switch (kind) {
          case NONE, ROW_SLIP, WRONG_PIN, LEADS -> true;
          case OPEN_WIRE -> open(JointKind.WIRE);
          case OPEN_LINK -> open(JointKind.LINK);
          case MOVED_FREE -> moved(true);
          case MOVED_TAKEN -> moved(false);
          case CROSSED, PAPER -> ring(2);
          case RING -> ring(3 + random.nextInt(4));
          case SHIFT -> shift();
          case MIRRORED -> mirrored();
          case MIRRORED_ROW -> mirroredRow();
          case ROTATED -> rotated();
          case PLUGS_CROSSED -> plugsCrossed();
          case BRIDGE -> bridge();
          case EXTRA_JUMPER -> extraJumper();
          case SHIELD_TO_PIN -> shieldToPin();
          case POOR_JOINT -> poorJoint();
          case LEAK_TO_NET -> leak(false);
          case LEAK_TO_SHELL -> leak(true);
          case MOISTURE -> moisture();
          case PART_OTHER, PART_REVERSED, PART_MISSING -> part(kind);
          case SWITCH_OTHER_WAY, SWITCH_STUCK, CONTACT_WELDED -> switched(kind);
        };
    rig.changed();
    return planted
        && (kind == Kind.NONE || kind.isOfTheTest() || !before.equals(rig.fingerprint()));
  }

  private <T> T any(List<T> list) {
    return list.get(random.nextInt(list.size()));
  }

  private boolean take(String name) {
    return touched.add(name);
  }

  private List<Joint> untouched(JointKind kind) {
    return rig.joints.stream()
        .filter(one -> one.kind == kind && !touched.contains(one.name))
        .toList();
  }

  private boolean open(JointKind kind) {
    List<Joint> all = untouched(kind);
    if (all.isEmpty()) {
      return false;
    }
    Joint joint = any(all);
    take(joint.name);
    return rig.joints.remove(joint);
  }

  private record End(Joint wire, int side) {
    int point() {
      return wire.ends[side];
    }

    void put(int point) {
      wire.ends[side] = point;
    }
  }

  private List<End> endsAt(String item) {
    return endsByItem().getOrDefault(item, List.of());
  }

  private Map<String, List<End>> endsByItem() {
    Map<String, List<End>> ends = new HashMap<>();
    for (Joint wire : untouched(JointKind.WIRE)) {
      for (int side = 0; side < 2; side++) {
        int point = wire.ends[side];
        if (!rig.points.get(point).endsWith("-SHELL")) {
          ends.computeIfAbsent(rig.itemOf(point), key -> new ArrayList<>())
              .add(new End(wire, side));
        }
      }
    }
    return ends;
  }

  /** Plugs of which no wire has been touched: a whole insert is taken as it is. */
  private List<String> wholePlugs() {
    Set<String> begun =
        rig.wires().stream()
            .filter(wire -> touched.contains(wire.name))
            .flatMap(wire -> Stream.of(rig.itemOf(wire.ends[0]), rig.itemOf(wire.ends[1])))
            .collect(Collectors.toSet());
    return plugs(4).stream().filter(item -> !begun.contains(item)).toList();
  }

  private List<String> itemsWith(int ends) {
    Map<String, List<End>> all = endsByItem();
    return rig.items().stream()
        .filter(item -> all.getOrDefault(item, List.of()).size() >= ends)
        .toList();
  }

  private boolean isFree(int point) {
    return rig.joints.stream().noneMatch(one -> one.ends[0] == point || one.ends[1] == point)
        && rig.parts.stream().noneMatch(one -> one.ends[0] == point || one.ends[1] == point);
  }

  private boolean moved(boolean free) {
    List<String> items = itemsWith(1);
    String item = any(items);
    End end = any(endsAt(item));
    List<Integer> pins = rig.pinsOf(item);
    int at = pins.indexOf(end.point());
    List<Integer> goals =
        pins.stream()
            .filter(pin -> pin != end.point() && isFree(pin) == free)
            .filter(pin -> Math.abs(pins.indexOf(pin) - at) <= (random.nextInt(3) == 0 ? 99 : 1))
            .toList();
    if (goals.isEmpty()) {
      return false;
    }
    take(end.wire().name);
    end.put(any(goals));
    return true;
  }

  private boolean ring(int size) {
    List<String> items = itemsWith(size);
    if (items.isEmpty()) {
      return false;
    }
    List<End> ends = new ArrayList<>(endsAt(any(items)));
    Collections.shuffle(ends, random);
    List<End> chosen = ends.subList(0, size);
    if (chosen.stream().map(End::wire).distinct().count() < size
        || chosen.stream().map(End::point).distinct().count() < size) {
      return false;
    }
    int first = chosen.get(0).point();
    for (int i = 0; i < size; i++) {
      take(chosen.get(i).wire().name);
      chosen.get(i).put(i + 1 < size ? chosen.get(i + 1).point() : first);
    }
    return true;
  }

  private List<String> plugs(int ends) {
    return itemsWith(ends).stream().filter(item -> item.matches("[JP]\\d+")).toList();
  }

  private boolean shift() {
    List<String> plugs = plugs(3);
    if (plugs.isEmpty()) {
      return false;
    }
    String item = any(plugs);
    List<Integer> pins = rig.pinsOf(item);
    int step = random.nextBoolean() ? 1 : -1;
    int length = 3 + random.nextInt(6);
    int first = random.nextInt(pins.size());
    List<End> run = new ArrayList<>();
    for (int i = 0; i < length; i++) {
      int pin = first + i * -step;
      if (pin < 0 || pin >= pins.size()) {
        return false;
      }
      int point = pins.get(pin);
      List<End> here = endsAt(item).stream().filter(end -> end.point() == point).toList();
      if (here.size() != 1) {
        return false;
      }
      run.add(here.get(0));
    }
    int spare = first + step;
    if (spare < 0 || spare >= pins.size() || !isFree(pins.get(spare))) {
      return false;
    }
    for (End end : run) {
      int now = pins.indexOf(end.point()) + step;
      take(end.wire().name);
      end.put(pins.get(now));
    }
    return true;
  }

  private void permute(List<End> ends, java.util.function.IntUnaryOperator to) {
    int[] goals = ends.stream().mapToInt(End::point).map(to).toArray();
    for (int i = 0; i < goals.length; i++) {
      take(ends.get(i).wire().name);
      ends.get(i).put(goals[i]);
    }
  }

  private boolean mirrored() {
    List<String> plugs = wholePlugs();
    if (plugs.isEmpty()) {
      return false;
    }
    String item = any(plugs);
    List<Integer> pins = rig.pinsOf(item);
    if (rig.faceOf.containsKey(pins.get(0))) {
      return mirroredFace(item, pins);
    }
    permute(endsAt(item), point -> pins.get(pins.size() - 1 - pins.indexOf(point)));
    return true;
  }

  private double[] face(int point) {
    return rig.faceOf.getOrDefault(point, new double[2]);
  }

  /** Numbered from the other side: left and right are exchanged in every row. */
  private boolean mirroredFace(String item, List<Integer> pins) {
    permute(endsAt(item), point -> inRowMirrored(point, pins));
    return true;
  }

  private int inRowMirrored(int point, List<Integer> pins) {
    List<Integer> row = pins.stream().filter(pin -> face(pin)[1] == face(point)[1]).toList();
    return row.get(row.size() - 1 - row.indexOf(point));
  }

  private boolean mirroredRow() {
    List<String> plugs =
        wholePlugs().stream()
            .filter(item -> rig.faceOf.containsKey(rig.pinsOf(item).get(0)))
            .toList();
    if (plugs.isEmpty()) {
      return false;
    }
    String item = any(plugs);
    List<Integer> pins = rig.pinsOf(item);
    double row = random.nextBoolean() ? 0 : 3;
    List<End> ends = endsAt(item).stream().filter(end -> face(end.point())[1] == row).toList();
    if (ends.size() < 3) {
      return false;
    }
    permute(ends, point -> inRowMirrored(point, pins));
    return true;
  }

  private boolean rotated() {
    List<String> plugs =
        wholePlugs().stream()
            .filter(item -> !rig.faceOf.containsKey(rig.pinsOf(item).get(0)))
            .toList();
    if (plugs.isEmpty()) {
      return false;
    }
    String item = any(plugs);
    List<Integer> pins = rig.pinsOf(item);
    int step = 1 + random.nextInt(pins.size() - 1);
    permute(endsAt(item), point -> pins.get((pins.indexOf(point) + step) % pins.size()));
    return true;
  }

  private boolean plugsCrossed() {
    List<String> plugs = wholePlugs();
    if (plugs.size() < 2) {
      return false;
    }
    String one = any(plugs);
    // A cable's two ends are a plug and a receptacle: those can't be exchanged.
    String other = any(plugs.stream().filter(plug -> plug.charAt(0) == one.charAt(0)).toList());
    List<Integer> pinsOfOne = rig.pinsOf(one);
    List<Integer> pinsOfOther = rig.pinsOf(other);
    List<End> ends = new ArrayList<>(endsAt(one));
    ends.addAll(endsAt(other));
    boolean fits =
        ends.stream().allMatch(end -> rig.indexOf.containsKey(otherPin(end.point(), one, other)));
    if (one.equals(other) || !fits || pinsOfOne.isEmpty() || pinsOfOther.isEmpty()) {
      return false;
    }
    permute(ends, point -> rig.point(otherPin(point, one, other)));
    return true;
  }

  private String otherPin(int point, String one, String other) {
    String name = rig.points.get(point);
    String goal = Rig.itemOf(name).equals(one) ? other : one;
    return goal + name.substring(name.indexOf('-'));
  }

  private void join(int one, int other) {
    rig.joints.add(
        new Joint("bridge " + rig.joints.size(), JointKind.BRIDGE, one, other, 0.02, "", ""));
  }

  private boolean bridge() {
    List<Integer> pins = rig.pinsOf(any(plugs(1)));
    int one = random.nextInt(pins.size() - 1);
    join(pins.get(one), pins.get(one + 1));
    return true;
  }

  private boolean extraJumper() {
    List<String> strips =
        rig.items().stream()
            .filter(item -> item.startsWith("TB") && rig.pinsOf(item).size() > 1)
            .toList();
    if (strips.isEmpty()) {
      return false;
    }
    List<Integer> pins = rig.pinsOf(any(strips));
    int one = random.nextInt(pins.size() - 1);
    join(pins.get(one), pins.get(one + 1));
    return true;
  }

  private List<Integer> shells() {
    List<Integer> shells = new ArrayList<>();
    for (int i = 0; i < rig.points.size(); i++) {
      if (rig.points.get(i).endsWith("-SHELL")) {
        shells.add(i);
      }
    }
    return shells;
  }

  private boolean shieldToPin() {
    List<Integer> shells = shells();
    if (shells.isEmpty()) {
      return false;
    }
    int shell = any(shells);
    join(shell, any(rig.pinsOf(rig.itemOf(shell))));
    return true;
  }

  private boolean poorJoint() {
    List<Joint> wires = untouched(JointKind.WIRE);
    Joint wire = any(wires);
    take(wire.name);
    rig.joints.remove(wire);
    rig.changed();
    boolean inLoop = areJoined(wire.ends[0], wire.ends[1]);
    rig.joints.add(wire);
    if (inLoop) {
      return false;
    }
    wire.ohms += 2 + random.nextInt(20);
    rig.poor.add(wire.name);
    return true;
  }

  /** Where insulation can be read at all: no part is joined to it. */
  private boolean hasPart(int point) {
    Rig.Nodes nodes = rig.nodes(java.util.Map.of());
    for (Component part : rig.parts) {
      if (nodes.of[part.ends[0]] == nodes.of[point] || nodes.of[part.ends[1]] == nodes.of[point]) {
        return true;
      }
    }
    return false;
  }

  /** Whether what a point is joined to has a pin at an item. */
  private boolean isAt(String item, int point) {
    return rig.nodes(java.util.Map.of()).membersOf(point).stream()
        .anyMatch(one -> rig.itemOf(one).equals(item));
  }

  private boolean areJoined(int one, int other) {
    int[] of = rig.nodes(java.util.Map.of()).of;
    return of[one] == of[other];
  }

  private boolean leak(boolean toShell) {
    List<Integer> shells = shells();
    if (toShell && shells.isEmpty()) {
      return false;
    }
    int from = toShell ? any(shells) : any(rig.pinsOf(any(plugs(1))));
    int to = any(rig.pinsOf(rig.itemOf(from)));
    rig.changed();
    boolean isWet = touched.stream().anyMatch(item -> isAt(item, from) || isAt(item, to));
    if (isWet || areJoined(from, to) || hasPart(from) || hasPart(to)) {
      return false;
    }
    rig.leaks.add(new Leak(from, to, 1e6 * (1 + random.nextInt(30)), ""));
    return true;
  }

  private boolean moisture() {
    List<String> plugs = plugs(6);
    if (plugs.isEmpty()) {
      return false;
    }
    String item = any(plugs);
    boolean leaks =
        rig.leaks.stream().anyMatch(leak -> isAt(item, leak.from()) || isAt(item, leak.to()));
    if (leaks || !take(item)) {
      return false;
    }
    List<Integer> pins = rig.pinsOf(item);
    Set<Integer> leaking = new TreeSet<>();
    for (int i = 0; i + 1 < pins.size(); i++) {
      if (random.nextInt(10) < 9) {
        int one = pins.get(i);
        int other = pins.get(i + 1);
        if (!hasPart(one) && !hasPart(other) && !areJoined(one, other)) {
          rig.leaks.add(new Leak(one, other, 1e6 * (3 + random.nextInt(20)), item));
          leaking.addAll(List.of(one, other));
        }
      }
    }
    rig.wet.add(leaking);
    return true;
  }

  private boolean part(Kind kind) {
    List<Component> parts =
        rig.parts.stream()
            .filter(one -> kind != Kind.PART_REVERSED || one.diode)
            .filter(one -> kind != Kind.PART_OTHER || !one.diode)
            .filter(one -> !touched.contains(one.name))
            .toList();
    if (parts.isEmpty()) {
      return false;
    }
    Component part = any(parts);
    take(part.name);
    if (kind == Kind.PART_MISSING) {
      part.ohms = Double.POSITIVE_INFINITY;
    } else if (kind == Kind.PART_REVERSED) {
      int from = part.ends[0];
      part.ends[0] = part.ends[1];
      part.ends[1] = from;
    } else {
      part.ohms *= random.nextBoolean() ? 2.5 : 0.3;
      rig.otherValue.add(part.name);
    }
    return true;
  }

  private boolean switched(Kind kind) {
    if (rig.positionsOf.isEmpty()) {
      return false;
    }
    String one = any(List.copyOf(rig.positionsOf.keySet()));
    if (!take(one)) {
      return false;
    }
    List<Joint> contacts = rig.joints.stream().filter(joint -> joint.ofSwitch.equals(one)).toList();
    String stuckAt = any(rig.positionsOf.getOrDefault(one, List.of("")));
    Joint welded = any(contacts);
    for (Joint contact : contacts) {
      if (kind == Kind.SWITCH_OTHER_WAY) {
        contact.position = contact.position.equals("AHEAD") ? "ASTERN" : "AHEAD";
      } else if (kind == Kind.SWITCH_STUCK) {
        contact.position = contact.position.equals(stuckAt) ? "ALWAYS" : "NEVER";
      } else if (contact == welded) {
        contact.position = "ALWAYS";
      }
    }
    return true;
  }
}
