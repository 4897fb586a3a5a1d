package dev.ringout.revision;

import dev.ringout.circuit.DisjointPoints;
import dev.ringout.harness.Harness;
import dev.ringout.harness.Item;
import dev.ringout.harness.Link;
import dev.ringout.harness.Part;
import dev.ringout.harness.Point;
import dev.ringout.harness.Switch;
import dev.ringout.harness.Wire;
import dev.ringout.revision.NetChange.Kind;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Predicate;

/**
 * Which nets changed. Points are compared, whatever joins them: both revisions divide the points
 * into nets, and they are electrically the same where they divide the points that both have into
 * the same nets, and switch contacts and parts lie between the same nets.
 *
 * <p>A splice or strip that only one revision has, and that lies between points which both have,
 * changes nothing: nobody plugs anything into a splice. Any other point of a new item is one more
 * place that the net reaches.
 */
final class NetChanges {
  private static final Comparator<List<Point>> FIRST_POINT =
      Comparator.comparing(net -> net.get(0));

  private final Harness before;
  private final Harness after;
  private final Predicate<String> inner;
  private final Map<Point, Integer> indexOf = new HashMap<>();
  private final List<Point> points = new ArrayList<>();
  private final Set<String> oldRefs = new HashSet<>();
  private final Set<String> newRefs = new HashSet<>();
  private final DisjointPoints oldNets;
  private final DisjointPoints newNets;
  private final Map<Point, Integer> oldEnds;
  private final Map<Point, Integer> newEnds;
  private final Map<Integer, Integer> oldNames;
  private final Map<Integer, Integer> newNames;

  /**
   * Two revisions by the names of the later.
   *
   * @param inner the items that only join wires: splices and strips
   */
  NetChanges(Harness before, Harness after, Predicate<String> inner) {
    this.before = before;
    this.after = after;
    this.inner = inner;
    number(before, oldRefs);
    number(after, newRefs);
    before.items().stream().map(Item::ref).forEach(oldRefs::add);
    after.items().stream().map(Item::ref).forEach(newRefs::add);
    oldEnds = wireEnds(before);
    newEnds = wireEnds(after);
    oldNets = nets(before);
    newNets = nets(after);
    oldNames = names(oldNets);
    newNames = names(newNets);
  }

  private void number(Harness harness, Set<String> refs) {
    for (Point point : harness.pointsAsListed()) {
      refs.add(point.ref());
      if (indexOf.putIfAbsent(point, points.size()) == null) {
        points.add(point);
      }
    }
  }

  private int index(Point point) {
    return indexOf.getOrDefault(point, 0);
  }

  private static Map<Point, Integer> wireEnds(Harness harness) {
    Map<Point, Integer> ends = new HashMap<>();
    for (Wire wire : harness.wires()) {
      ends.merge(wire.from(), 1, Integer::sum);
      ends.merge(wire.to(), 1, Integer::sum);
    }
    return ends;
  }

  private DisjointPoints nets(Harness harness) {
    DisjointPoints nets = new DisjointPoints(points.size());
    for (Wire wire : harness.wires()) {
      nets.union(index(wire.from()), index(wire.to()));
    }
    for (Link link : harness.links()) {
      nets.union(index(link.from()), index(link.to()));
    }
    return nets;
  }

  /** A cavity that a list does not name is there all the same, with nothing in it. */
  private boolean isInBoth(int point) {
    String ref = points.get(point).ref();
    return oldRefs.contains(ref) && newRefs.contains(ref);
  }

  private boolean isOld(int point) {
    return oldRefs.contains(points.get(point).ref());
  }

  private boolean isNew(int point) {
    return newRefs.contains(points.get(point).ref());
  }

  /** The nets that changed, in the order of their points. */
  List<NetChange> changes() {
    int size = points.size();
    // Old nets are numbered by their first point, new nets by theirs after all points.
    DisjointPoints overlap = new DisjointPoints(2 * size);
    for (int point = 0; point < size; point++) {
      if (isInBoth(point)) {
        overlap.union(oldNets.firstOf(point), size + newNets.firstOf(point));
      }
    }
    Map<Integer, Map<Integer, List<Point>>> olds = new TreeMap<>();
    Map<Integer, Map<Integer, List<Point>>> news = new TreeMap<>();
    for (int point = 0; point < size; point++) {
      if (isOld(point)) {
        int net = oldNets.firstOf(point);
        put(olds, overlap.firstOf(net), net, points.get(point));
      }
      if (isNew(point)) {
        int net = newNets.firstOf(point);
        put(news, overlap.firstOf(size + net), net, points.get(point));
      }
    }
    List<NetChange> changes = new ArrayList<>();
    Set<Integer> groups = new TreeSet<>(olds.keySet());
    groups.addAll(news.keySet());
    for (int group : groups) {
      change(
          List.copyOf(olds.getOrDefault(group, Map.of()).values()),
          List.copyOf(news.getOrDefault(group, Map.of()).values()),
          changes);
    }
    changes.sort(
        Comparator.comparing(
            change -> change.before().isEmpty() ? change.after().get(0) : change.before().get(0),
            FIRST_POINT));
    return changes;
  }

  private static void put(
      Map<Integer, Map<Integer, List<Point>>> groups, int group, int net, Point point) {
    groups
        .computeIfAbsent(group, key -> new TreeMap<>())
        .computeIfAbsent(net, key -> new ArrayList<>())
        .add(point);
  }

  private void change(List<List<Point>> olds, List<List<Point>> news, List<NetChange> changes) {
    boolean gained = outer(news, oldRefs, newEnds);
    boolean lost = outer(olds, newRefs, oldEnds);
    boolean oneToOne = olds.size() == 1 && news.size() == 1;
    if (oneToOne && !gained && !lost) {
      return;
    }
    boolean alone =
        olds.stream().allMatch(net -> net.size() < 2)
            && news.stream().allMatch(net -> net.size() < 2);
    if (alone) {
      return;
    }
    Kind kind;
    if (olds.isEmpty()) {
      kind = Kind.ADDED;
    } else if (news.isEmpty()) {
      kind = Kind.REMOVED;
    } else if (oneToOne) {
      kind = gained ? Kind.GAINED : Kind.LOST;
    } else if (olds.size() == 1) {
      kind = Kind.SPLIT;
    } else {
      kind = news.size() == 1 ? Kind.JOINED : Kind.REARRANGED;
    }
    changes.add(new NetChange(kind, sorted(olds), sorted(news)));
  }

  private static List<List<Point>> sorted(List<List<Point>> nets) {
    return nets.stream().map(net -> net.stream().sorted().toList()).sorted(FIRST_POINT).toList();
  }

  /** Whether a net reaches an item of one revision alone that is no splice or strip within it. */
  private boolean outer(
      List<List<Point>> nets, Set<String> otherRefs, Map<Point, Integer> wireEnds) {
    for (List<Point> net : nets) {
      long common = 0;
      Map<String, Integer> endsAt = new HashMap<>();
      for (Point point : net) {
        if (otherRefs.contains(point.ref())) {
          common++;
        } else {
          endsAt.merge(point.ref(), wireEnds.getOrDefault(point, 0), Integer::sum);
        }
      }
      for (Map.Entry<String, Integer> item : endsAt.entrySet()) {
        // Where a single wire ends, it leads away and joins nothing.
        boolean within = common > 1 && item.getValue() > 1 && inner.test(item.getKey());
        if (net.size() > 1 && !within) {
          return true;
        }
      }
    }
    return false;
  }

  /** Whether switch contacts and parts lie between the same nets as before. */
  boolean sameContactsAndParts() {
    return contacts(before, oldNets).equals(contacts(after, newNets))
        && parts(before, oldNets).equals(parts(after, newNets));
  }

  /** Two nets, each by one of its points. */
  private record Between(Point one, Point other) {
    /** Of nets of which it makes no difference which is first. */
    static Between unordered(Point first, Point second) {
      return first.compareTo(second) <= 0 ? new Between(first, second) : new Between(second, first);
    }
  }

  /** A switch contact by the nets that it joins. */
  private record ContactBetween(String item, String state, boolean normal, Between nets) {}

  /** A part by the nets that it lies between. */
  private record PartBetween(Part.Kind kind, OptionalDouble ohms, Between nets) {}

  private Map<ContactBetween, Integer> contacts(Harness harness, DisjointPoints nets) {
    Map<ContactBetween, Integer> contacts = new HashMap<>();
    for (Switch one : harness.switches()) {
      for (Switch.Contact contact : one.contacts()) {
        contacts.merge(
            new ContactBetween(
                contact.ref(),
                contact.state(),
                contact.state().equals(one.normalState()),
                Between.unordered(net(contact.from(), nets), net(contact.to(), nets))),
            1,
            Integer::sum);
      }
    }
    return contacts;
  }

  private Map<PartBetween, Integer> parts(Harness harness, DisjointPoints nets) {
    Map<PartBetween, Integer> parts = new HashMap<>();
    for (Part part : harness.parts()) {
      Between between =
          part.kind().readsTheSameReversed()
              ? Between.unordered(net(part.from(), nets), net(part.to(), nets))
              : new Between(net(part.anode(), nets), net(part.cathode(), nets));
      parts.merge(new PartBetween(part.kind(), part.ohms(), between), 1, Integer::sum);
    }
    return parts;
  }

  /** A net by the first of its points that both revisions have; by its first where none is. */
  private Point net(Point point, DisjointPoints nets) {
    int first = nets.firstOf(index(point));
    Map<Integer, Integer> named = nets == oldNets ? oldNames : newNames;
    return points.get(named.getOrDefault(first, first));
  }

  private Map<Integer, Integer> names(DisjointPoints nets) {
    Map<Integer, Integer> names = new HashMap<>();
    for (int point = 0; point < points.size(); point++) {
      if (isInBoth(point)) {
        names.putIfAbsent(nets.firstOf(point), point);
      }
    }
    return names;
  }
}
