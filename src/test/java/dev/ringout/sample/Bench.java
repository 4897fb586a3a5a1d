package dev.ringout.sample;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/**
 * A unit on a bench, simulated from its joints alone. It shares no code with the program: it walks
 * from probe to probe and adds up what it passes.
 */
final class Bench {
  private final List<Joint> joints = new ArrayList<>();
  private final Set<String> points = new TreeSet<>();

  /** A joint between two points; {@code state} is the switch position it needs, or empty. */
  record Joint(String name, String from, String to, double ohms, String state) {}

  Bench point(String point) {
    points.add(point);
    return this;
  }

  Bench join(String name, String from, String to, double ohms, String state) {
    points.add(from);
    points.add(to);
    joints.add(new Joint(name, from, to, ohms, state));
    return this;
  }

  /** The same unit with one joint changed. */
  Bench with(String name, String newFrom, String newTo, double newOhms) {
    Bench changed = new Bench();
    points.forEach(changed::point);
    for (Joint joint : joints) {
      if (joint.name().equals(name)) {
        changed.join(name, newFrom, newTo, newOhms, joint.state());
      } else {
        changed.join(joint.name(), joint.from(), joint.to(), joint.ohms(), joint.state());
      }
    }
    return changed;
  }

  /** The same unit with one joint broken. */
  Bench without(String name) {
    Bench changed = new Bench();
    points.forEach(changed::point);
    for (Joint joint : joints) {
      if (!joint.name().equals(name)) {
        changed.join(joint.name(), joint.from(), joint.to(), joint.ohms(), joint.state());
      }
    }
    return changed;
  }

  Joint joint(String name) {
    return joints.stream().filter(one -> one.name().equals(name)).findFirst().orElseThrow();
  }

  List<Joint> joints() {
    return joints;
  }

  Set<String> points() {
    return points;
  }

  /** The ohms on the shortest way between two points, infinite where there is none. */
  double read(String from, String to, Set<String> states) {
    return reachable(from, states).getOrDefault(to, Double.POSITIVE_INFINITY);
  }

  /** Every point that is joined to a point, with the ohms on the way. */
  Map<String, Double> reachable(String from, Set<String> states) {
    Map<String, Double> ohmsTo = new HashMap<>();
    ohmsTo.put(from, 0.0);
    Deque<String> open = new ArrayDeque<>();
    open.add(from);
    while (!open.isEmpty()) {
      String point = open.remove();
      for (Joint joint : joints) {
        if (!joint.state().isEmpty() && !states.contains(joint.state())) {
          continue;
        }
        String other = other(joint, point);
        if (!other.isEmpty() && !ohmsTo.containsKey(other)) {
          ohmsTo.put(other, ohmsTo.getOrDefault(point, 0.0) + joint.ohms());
          open.add(other);
        }
      }
    }
    return ohmsTo;
  }

  private static String other(Joint joint, String point) {
    if (joint.from().equals(point)) {
      return joint.to();
    }
    return joint.to().equals(point) ? joint.from() : "";
  }

  /** The nets of the unit in given switch positions, each by its points in order. */
  List<Set<String>> nets(Set<String> states) {
    List<Set<String>> nets = new ArrayList<>();
    Set<String> seen = new HashSet<>();
    for (String point : points) {
      if (!seen.contains(point)) {
        Set<String> net = new TreeSet<>(reachable(point, states).keySet());
        seen.addAll(net);
        nets.add(net);
      }
    }
    return nets;
  }
}
