package dev.ringout.diagnose.wiring;

import dev.ringout.circuit.AlteredPart;
import dev.ringout.circuit.AlteredPart.How;
import dev.ringout.circuit.Circuit;
import dev.ringout.circuit.DisjointPoints;
import dev.ringout.circuit.Nets;
import dev.ringout.circuit.Partition;
import dev.ringout.harness.Switch;
import dev.ringout.harness.SwitchState;
import dev.ringout.harness.Wire;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.IntPredicate;
import java.util.stream.Collectors;

/**
 * The nets of a unit with slips in it, in one state. Only the listed nets that a slip touches are
 * computed anew; all others are as listed.
 */
final class SlippedNets implements Partition {
  private final Circuit circuit;
  private final Nets listed;
  private final SwitchState state;
  private final Map<Integer, int[]> endsOf = new HashMap<>();
  private final Set<Integer> missing = new HashSet<>();
  private final Set<Integer> poor = new HashSet<>();
  private final Set<Integer> closed = new TreeSet<>();
  private final List<int[]> bridges = new ArrayList<>();
  private final Map<Integer, AlteredPart> altered = new HashMap<>();
  private final Set<Integer> affectedNets = new TreeSet<>();
  private final Map<Integer, Integer> groupOf = new HashMap<>();
  private final List<int[]> pointsOf = new ArrayList<>();
  private final Map<Integer, List<int[]>> edgesAt = new HashMap<>();

  /** The mark of an edge that is no conductor but an unlisted bridge. */
  private static final int BRIDGE = -1;

  SlippedNets(Circuit circuit, SwitchState state, List<Slip> slips) {
    this.circuit = circuit;
    this.listed = circuit.in(state);
    this.state = state;
    Altering altering = new Altering();
    slips.forEach(slip -> slip.match(altering));
    regroup();
  }

  /** What each kind of slip does to the nets; gives them once it is done. */
  private final class Altering implements Slip.Cases<SlippedNets> {
    @Override
    public SlippedNets missing(Slip.Missing slip) {
      missing.add(slip.conductor());
      affect(circuit.from(slip.conductor()));
      affect(circuit.to(slip.conductor()));
      return SlippedNets.this;
    }

    @Override
    public SlippedNets moved(Slip.Moved slip) {
      move(slip.wire(), slip.end(), slip.to());
      return SlippedNets.this;
    }

    @Override
    public SlippedNets crossed(Slip.Crossed slip) {
      int first = end(slip.wire(), slip.end());
      int second = end(slip.otherWire(), slip.otherEnd());
      move(slip.wire(), slip.end(), second);
      move(slip.otherWire(), slip.otherEnd(), first);
      return SlippedNets.this;
    }

    @Override
    public SlippedNets rearranged(Slip.Rearranged slip) {
      slip.puts().forEach(put -> move(put.wire(), put.end(), put.to()));
      return SlippedNets.this;
    }

    /** The unit is as it was: the probe was not where it should be. */
    @Override
    public SlippedNets misread(Slip.Misread slip) {
      return SlippedNets.this;
    }

    @Override
    public SlippedNets exchanged(Slip.Exchanged slip) {
      return SlippedNets.this;
    }

    @Override
    public SlippedNets poor(Slip.Poor slip) {
      poor.add(slip.conductor());
      affect(circuit.from(slip.conductor()));
      return SlippedNets.this;
    }

    @Override
    public SlippedNets bridged(Slip.Bridged slip) {
      bridges.add(new int[] {slip.one(), slip.other()});
      affect(slip.one());
      affect(slip.other());
      return SlippedNets.this;
    }

    @Override
    public SlippedNets faultyPart(Slip.FaultyPart slip) {
      altered.put(slip.part(), altered(slip));
      return SlippedNets.this;
    }

    @Override
    public SlippedNets faultySwitch(Slip.FaultySwitch slip) {
      apply(slip);
      return SlippedNets.this;
    }
  }

  private static AlteredPart altered(Slip.FaultyPart slip) {
    How how =
        switch (slip.how()) {
          case MISSING -> How.MISSING;
          case OTHER_VALUE -> How.ANY_VALUE;
          case REVERSED, OTHER_POINTS -> How.AT_THESE_POINTS;
        };
    return new AlteredPart(how, slip.from(), slip.to());
  }

  private void apply(Slip.FaultySwitch slip) {
    Switch which = circuit.harness().switches().get(slip.which());
    for (int contact : circuit.contactsOf(which)) {
      boolean closes = closes(which, contact, slip);
      if (closes == listed.isClosed(contact)) {
        continue;
      }
      (closes ? closed : missing).add(contact);
      affect(circuit.from(contact));
      affect(circuit.to(contact));
    }
  }

  private boolean closes(Switch which, int contact, Slip.FaultySwitch slip) {
    String closedAt = circuit.conductors().get(contact).asContact().orElseThrow().state();
    String position = state.positionOf(which);
    return switch (slip.how()) {
      case WELDED -> contact == slip.contact() || listed.isClosed(contact);
      case STUCK -> closedAt.equals(slip.position());
      case OTHER_WAY -> !closedAt.equals(position);
    };
  }

  private void affect(int point) {
    affectedNets.add(listed.of(point));
  }

  private void move(int wire, Wire.End end, int to) {
    affect(circuit.from(wire));
    affect(circuit.to(wire));
    affect(to);
    int[] ends = endsOf.computeIfAbsent(wire, w -> new int[] {circuit.from(w), circuit.to(w)});
    ends[end == Wire.End.FROM ? 0 : 1] = to;
  }

  /** The point at which a wire's end sits now. */
  int end(int wire, Wire.End end) {
    int[] ends = endsOf.get(wire);
    if (ends != null) {
      return ends[end == Wire.End.FROM ? 0 : 1];
    }
    return circuit.at(wire, end);
  }

  private void regroup() {
    List<Integer> points = new ArrayList<>();
    Map<Integer, Integer> local = new HashMap<>();
    for (int net : affectedNets) {
      for (int point : listed.pointsOf(net)) {
        local.put(point, points.size());
        points.add(point);
      }
    }
    DisjointPoints joined = new DisjointPoints(points.size());
    eachJoin(
        (conductor, from, to) -> {
          Integer a = local.get(from);
          Integer b = local.get(to);
          if (a != null && b != null) {
            joined.union(a, b);
          }
        });
    int[] groups = joined.numbered();
    List<List<Integer>> members = new ArrayList<>();
    for (int i = 0; i < groups.length; i++) {
      if (groups[i] == members.size()) {
        members.add(new ArrayList<>());
      }
      members.get(groups[i]).add(points.get(i));
      groupOf.put(points.get(i), listed.count() + groups[i]);
    }
    for (List<Integer> group : members) {
      pointsOf.add(group.stream().mapToInt(Integer::intValue).sorted().toArray());
    }
  }

  /** What joins two points of the nets that the slips touch. */
  private interface Join {
    void of(int conductor, int from, int to);
  }

  private void eachJoin(Join join) {
    for (int net : affectedNets) {
      for (int conductor : listed.conductorsOf(net)) {
        if (!missing.contains(conductor) && !poor.contains(conductor)) {
          join.of(conductor, end(conductor, Wire.End.FROM), end(conductor, Wire.End.TO));
        }
      }
    }
    for (int contact : closed) {
      join.of(contact, circuit.from(contact), circuit.to(contact));
    }
    for (int[] bridge : bridges) {
      join.of(BRIDGE, bridge[0], bridge[1]);
    }
  }

  /** Worked out where a first way is looked for: most sets of slips are dropped before. */
  private Map<Integer, List<int[]>> edgesAt() {
    if (edgesAt.isEmpty()) {
      eachJoin(
          (conductor, from, to) -> {
            if (from != to && groupOf.containsKey(from) && groupOf.containsKey(to)) {
              edgesAt
                  .computeIfAbsent(from, key -> new ArrayList<>(2))
                  .add(new int[] {conductor, to});
              edgesAt
                  .computeIfAbsent(to, key -> new ArrayList<>(2))
                  .add(new int[] {conductor, from});
            }
          });
    }
    return edgesAt;
  }

  /** Whether two points that are not joined well are joined by way of poor joints. */
  boolean joinsPoorly(int one, int other) {
    if (poor.isEmpty() || groupOf(one) == groupOf(other)) {
      return false;
    }
    Set<Integer> reached = new HashSet<>(Set.of(groupOf(one)));
    for (int round = 0; round < poor.size(); round++) {
      for (int conductor : poor) {
        int from = groupOf(end(conductor, Wire.End.FROM));
        int to = groupOf(end(conductor, Wire.End.TO));
        if (reached.contains(from) || reached.contains(to)) {
          reached.add(from);
          reached.add(to);
        }
      }
    }
    return reached.contains(groupOf(other));
  }

  /** The groups that are not nets as listed. */
  List<int[]> newGroups() {
    return pointsOf;
  }

  /** The listed nets whose points or conductors the slips touch. */
  Set<Integer> affectedNets() {
    return affectedNets;
  }

  /** The parts that are not as listed, by number. */
  Map<Integer, AlteredPart> altered() {
    return altered;
  }

  /** The listed nets that the slips touch, those at parts that are not as listed among them. */
  Set<Integer> touchedNets() {
    Set<Integer> touched = new LinkedHashSet<>(affectedNets);
    altered.forEach(
        (part, now) -> {
          touched.add(listed.of(circuit.fromOfPart(part)));
          touched.add(listed.of(circuit.toOfPart(part)));
          touched.add(listed.of(now.from()));
          touched.add(listed.of(now.to()));
        });
    return touched;
  }

  @Override
  public int groupOf(int point) {
    Integer group = groupOf.get(point);
    return group == null ? listed.groupOf(point) : group;
  }

  @Override
  public boolean isAsListed(int group) {
    return group < listed.count();
  }

  @Override
  public int[] pointsOf(int group) {
    return group >= listed.count() ? pointsOf.get(group - listed.count()) : listed.pointsOf(group);
  }

  /** A group in the pieces that are left of it without contacts of switches. */
  List<List<Integer>> piecesOf(int group) {
    List<Integer> points = Arrays.stream(pointsOf(group)).boxed().toList();
    List<int[]> edges = edgesOf(group);
    if (edges.stream().noneMatch(this::isContact)) {
      return List.of(points);
    }
    Map<Integer, Integer> local = new HashMap<>();
    points.forEach(point -> local.put(point, local.size()));
    DisjointPoints joined = new DisjointPoints(points.size());
    edges.stream()
        .filter(edge -> !isContact(edge))
        .forEach(edge -> joined.union(at(local, edge[1]), at(local, edge[2])));
    return List.copyOf(
        points.stream()
            .collect(
                Collectors.groupingBy(
                    point -> joined.firstOf(at(local, point)), TreeMap::new, Collectors.toList()))
            .values());
  }

  /** What joins the points of a group: each the conductor and its two points. */
  private List<int[]> edgesOf(int group) {
    List<int[]> edges = new ArrayList<>();
    if (isAsListed(group) && !affectedNets.contains(group)) {
      for (int conductor : listed.conductorsOf(group)) {
        edges.add(new int[] {conductor, circuit.from(conductor), circuit.to(conductor)});
      }
    } else {
      for (int point : pointsOf(group)) {
        for (int[] edge : edgesAt().getOrDefault(point, List.of())) {
          edges.add(new int[] {edge[0], point, edge[1]});
        }
      }
    }
    return edges;
  }

  private boolean isContact(int[] edge) {
    return edge[0] != BRIDGE && circuit.conductors().get(edge[0]).asContact().isPresent();
  }

  private static int at(Map<Integer, Integer> local, int point) {
    return local.getOrDefault(point, 0);
  }

  @Override
  public boolean isLifted(int part) {
    return listed.isLifted(part);
  }

  @Override
  public int[] partsAt(int group) {
    if (group < listed.count()) {
      return listed.partsAt(group);
    }
    return listed.partsAt(pointsOf(group));
  }

  /** The conductors on a shortest way from some points to a goal; empty where there is none. */
  List<Integer> way(int[] from, IntPredicate goal) {
    Map<Integer, int[]> cameBy = new HashMap<>();
    Deque<Integer> open = new ArrayDeque<>();
    Set<Integer> starts = new HashSet<>();
    for (int point : from) {
      starts.add(point);
      open.add(point);
    }
    while (!open.isEmpty()) {
      int point = open.remove();
      if (!starts.contains(point) && goal.test(point)) {
        return trace(point, starts, cameBy);
      }
      for (int[] edge : edges(point)) {
        if (!starts.contains(edge[1]) && !cameBy.containsKey(edge[1])) {
          cameBy.put(edge[1], new int[] {edge[0], point});
          open.add(edge[1]);
        }
      }
    }
    return List.of();
  }

  private List<int[]> edges(int point) {
    if (affectedNets.contains(listed.of(point))) {
      return edgesAt().getOrDefault(point, List.of());
    }
    List<int[]> edges = new ArrayList<>();
    for (int conductor : listed.conductorsOf(listed.of(point))) {
      if (circuit.from(conductor) == point) {
        edges.add(new int[] {conductor, circuit.to(conductor)});
      } else if (circuit.to(conductor) == point) {
        edges.add(new int[] {conductor, circuit.from(conductor)});
      }
    }
    return edges;
  }

  private static List<Integer> trace(int end, Set<Integer> starts, Map<Integer, int[]> cameBy) {
    List<Integer> way = new ArrayList<>();
    int point = end;
    while (!starts.contains(point)) {
      int[] step = cameBy.getOrDefault(point, new int[] {BRIDGE, end});
      if (step[0] != BRIDGE) {
        way.add(step[0]);
      }
      point = step[1];
    }
    return way;
  }

  /** The wires of a group, where the slips leave them. */
  List<Integer> wiresIn(int group) {
    Set<Integer> wires = new TreeSet<>();
    for (int point : pointsOf(group)) {
      for (int[] edge : edges(point)) {
        if (edge[0] != BRIDGE) {
          wires.add(edge[0]);
        }
      }
    }
    return List.copyOf(wires);
  }
}
