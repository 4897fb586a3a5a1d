package dev.ringout.benchmarks.weaken;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;

/**
 * A small unit as its list says it, and what it really has. Points are numbered.
 *
 * @param points such as {@code J1-3}
 * @param positions of its one switch, the normal one first; empty where it has none
 */
record Unit(
    String name,
    List<String> points,
    List<Joint> joints,
    List<Component> parts,
    List<String> positions,
    Demand demand) {

  /** The one switch that a unit may have. */
  static final String SWITCH = "S1";

  enum JointKind {
    WIRE,
    LINK,
    CONTACT
  }

  /**
   * What joins two points.
   *
   * @param name of a wire; else empty
   * @param position in which a contact is closed; else empty
   * @param metres of a wire whose length is listed
   * @param trueOhms what it really has
   */
  record Joint(
      JointKind kind,
      String name,
      int from,
      int to,
      String position,
      int gauge,
      OptionalDouble metres,
      double trueOhms) {
    boolean isWire() {
      return kind == JointKind.WIRE;
    }
  }

  enum PartKind {
    RESISTOR,
    WINDING,
    LAMP,
    DIODE,
    CAPACITOR,
    SUPPRESSOR;

    String word() {
      return name().toLowerCase(Locale.ROOT);
    }

    boolean isOpenOnDirectCurrent() {
      return this == CAPACITOR || this == SUPPRESSOR;
    }
  }

  /**
   * A part between two points. A diode conducts from the first to the second.
   *
   * @param trueOhms what a meter reads through it (of a diode: forwards)
   */
  record Component(
      String ref,
      int from,
      int to,
      PartKind kind,
      OptionalDouble ohms,
      OptionalDouble tolerancePercent,
      double trueOhms) {}

  /** What the list demands; the rest stands at its default. */
  record Demand(
      boolean insulationTest,
      double insulationMinOhms,
      double insulationVolts,
      boolean wordsProveJoins,
      boolean calibration,
      boolean serialNumber,
      boolean inspector,
      String revision,
      String effectivity) {
    /** Default of the limit {@code open min}. */
    static final double OPEN_MIN_OHMS = 100e3;
  }

  /**
   * How the unit stands for a reading.
   *
   * @param position of the switch; empty: the normal one
   * @param lifted the joints with one end off
   */
  record State(String position, Set<Integer> lifted) {
    static final State NORMAL = new State("", Set.of());

    State {
      lifted = Set.copyOf(lifted);
    }
  }

  /** A point's item. */
  String itemOf(int point) {
    String text = points.get(point);
    return text.substring(0, text.indexOf('-'));
  }

  String pinOf(int point) {
    String text = points.get(point);
    return text.substring(text.indexOf('-') + 1);
  }

  String positionIn(State state) {
    return state.position().isEmpty() && !positions.isEmpty() ? positions.get(0) : state.position();
  }

  /** Whether a joint joins in a state, by the list. */
  boolean isClosed(int joint, State state) {
    Joint one = joints.get(joint);
    return !state.lifted().contains(joint)
        && (one.kind() != JointKind.CONTACT || one.position().equals(positionIn(state)));
  }

  /** The net of each point in a state, by the list: the number of its first point. */
  int[] nets(State state) {
    Groups groups = new Groups(points.size());
    for (int joint = 0; joint < joints.size(); joint++) {
      if (isClosed(joint, state)) {
        groups.join(joints.get(joint).from(), joints.get(joint).to());
      }
    }
    return groups.all();
  }

  /** The piece of each point: what no switch takes apart. */
  int[] pieces() {
    Groups groups = new Groups(points.size());
    for (Joint joint : joints) {
      if (joint.kind() != JointKind.CONTACT) {
        groups.join(joint.from(), joint.to());
      }
    }
    return groups.all();
  }

  /** The nets of each point that parts join to its own: no insulation can be read within. */
  int[] partGroups() {
    Groups groups = new Groups(points.size());
    for (int joint = 0; joint < joints.size(); joint++) {
      if (isClosed(joint, State.NORMAL)) {
        groups.join(joints.get(joint).from(), joints.get(joint).to());
      }
    }
    parts.forEach(part -> groups.join(part.from(), part.to()));
    return groups.all();
  }

  /** The items at the ends of a joint. */
  Set<String> itemsOf(Joint joint) {
    return new TreeSet<>(List.of(itemOf(joint.from()), itemOf(joint.to())));
  }

  /** All items, in their order. */
  List<String> items() {
    return points.stream().map(point -> point.substring(0, point.indexOf('-'))).distinct().toList();
  }

  /** Points that are one. */
  static final class Groups {
    private final int[] group;

    Groups(int size) {
      group = new int[size];
      Arrays.setAll(group, i -> i);
    }

    int of(int point) {
      return group[point];
    }

    void join(int one, int other) {
      int low = Math.min(group[one], group[other]);
      int high = Math.max(group[one], group[other]);
      for (int i = 0; i < group.length; i++) {
        if (group[i] == high) {
          group[i] = low;
        }
      }
    }

    int[] all() {
      return group.clone();
    }
  }
}
