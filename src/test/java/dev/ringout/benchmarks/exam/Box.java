package dev.ringout.benchmarks.exam;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** A harness or box, as listed or as it really is: points, what conducts, parts, switches. */
final class Box {
  /** A sort of thing that conducts. */
  enum Sort {
    WIRE,
    LINK,
    CONTACT
  }

  /**
   * A wire, a link, or the contact of a switch in one position.
   *
   * @param ohms what it really has, its ends included
   * @param extra ohms of a joint that is poor
   * @param position of a contact, {@code S1=MADE}; else empty
   */
  record Cond(
      String name,
      Sort sort,
      int a,
      int b,
      String position,
      int awg,
      String type,
      double metres,
      double ohms,
      double extra,
      boolean open) {
    Cond opened() {
      return new Cond(name, sort, a, b, position, awg, type, metres, ohms, extra, true);
    }

    Cond always() {
      return new Cond(name, sort, a, b, "", awg, type, metres, ohms, extra, open);
    }

    Cond poorer(double by) {
      return new Cond(name, sort, a, b, position, awg, type, metres, ohms, extra + by, open);
    }

    Cond of(double other) {
      return new Cond(name, sort, a, b, position, awg, type, metres, other, extra, open);
    }

    Cond between(int from, int to) {
      return new Cond(name, sort, from, to, position, awg, type, metres, ohms, extra, open);
    }
  }

  /** A sort of part. */
  enum PartSort {
    RESISTOR,
    WINDING,
    LAMP,
    DIODE,
    SUPPRESSOR,
    CAPACITOR
  }

  /**
   * A part, named such as winding K4; a diode conducts from a to k. {@code ohms} is what it really
   * has.
   */
  record Part(
      String ref, PartSort sort, int a, int k, double listed, double tolerance, double ohms) {
    Part with(double other) {
      return new Part(ref, sort, a, k, listed, tolerance, other);
    }

    /** The state in which a lead of it is off, as the column State writes it. */
    String lifted() {
      return sort.name().toLowerCase(Locale.ROOT) + " " + ref + "=LIFTED";
    }

    Part turned() {
      return new Part(ref, sort, k, a, listed, tolerance, ohms);
    }
  }

  /** Something unlisted between two points: a bridge or a leak. */
  record Stray(int a, int b, double ohms) {}

  /** A switch and its positions, the normal one first. */
  record Selector(String ref, List<String> positions) {}

  final List<String> points;
  final Map<String, Integer> numbers;
  final List<Selector> switches;
  final List<Cond> conds;
  final List<Part> parts;
  final List<Stray> strays;
  boolean gauges = true;

  Box() {
    this(
        new ArrayList<>(),
        new LinkedHashMap<>(),
        new ArrayList<>(),
        new ArrayList<>(),
        new ArrayList<>(),
        new ArrayList<>());
  }

  private Box(
      List<String> points,
      Map<String, Integer> numbers,
      List<Selector> switches,
      List<Cond> conds,
      List<Part> parts,
      List<Stray> strays) {
    this.points = points;
    this.numbers = numbers;
    this.switches = switches;
    this.conds = conds;
    this.parts = parts;
    this.strays = strays;
  }

  Box copy() {
    Box copy =
        new Box(
            points,
            numbers,
            switches,
            new ArrayList<>(conds),
            new ArrayList<>(parts),
            new ArrayList<>(strays));
    copy.gauges = gauges;
    return copy;
  }

  int point(String item, String pin) {
    return numbers.computeIfAbsent(
        item + "-" + pin,
        name -> {
          points.add(name);
          return points.size() - 1;
        });
  }

  String item(int point) {
    String name = points.get(point);
    return name.substring(0, name.indexOf('-'));
  }

  String pin(int point) {
    String name = points.get(point);
    return name.substring(name.indexOf('-') + 1);
  }

  /** The states to test in: all switches normal, then each in each other position by itself. */
  List<String> states() {
    List<String> states = new ArrayList<>();
    states.add("");
    for (Selector one : switches) {
      one.positions().stream().skip(1).forEach(at -> states.add(one.ref() + "=" + at));
    }
    return states;
  }

  /** Whether a contact of that position is closed in a state. */
  boolean closed(String position, String state) {
    if (position.isEmpty()) {
      return true;
    }
    String ref = position.substring(0, position.indexOf('='));
    if (state.startsWith(ref + "=")) {
      return state.equals(position);
    }
    return switches.stream()
        .filter(one -> one.ref().equals(ref))
        .anyMatch(one -> position.equals(ref + "=" + one.positions().get(0)));
  }

  /** What is joined to what in a state, by wires, links, contacts and bridges. */
  Joined joined(String state) {
    Joined joined = new Joined(points.size());
    for (Cond cond : conds) {
      if (!cond.open() && closed(cond.position(), state)) {
        joined.join(cond.a(), cond.b());
      }
    }
    for (Stray stray : strays) {
      if (stray.ohms() < Edit.MOST_OF_A_BRIDGE) {
        joined.join(stray.a(), stray.b());
      }
    }
    return joined;
  }
}
