package dev.ringout.circuit;

import dev.ringout.harness.Harness;
import dev.ringout.harness.Link;
import dev.ringout.harness.Part;
import dev.ringout.harness.Point;
import dev.ringout.harness.Switch;
import dev.ringout.harness.SwitchState;
import dev.ringout.harness.Wire;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * The unit as a multigraph: points are vertices; wires, links and switch contacts are edges.
 * Points, conductors and parts are numbered from 0; points in natural order.
 *
 * <p>Not for use by several threads at once: nets are computed once a state and kept.
 */
public final class Circuit {
  private static final int[] NO_PARTS = {};
  private static final int[] NO_CONTACTS = {};

  private final Harness harness;
  private final List<Point> points;
  private final Map<Point, Integer> indexOf;
  private final List<Conductor> conductors = new ArrayList<>();
  private final int[] from;
  private final int[] to;
  private final int firstContact;
  private final Map<String, int[]> contactsOf = new HashMap<>();
  private final int[] fromOfPart;
  private final int[] toOfPart;
  private final Map<Integer, List<Integer>> partsAtPoint = new HashMap<>();
  private final Map<SwitchState, Nets> netsOf = new HashMap<>();
  private final Nets normal;

  private Circuit(Harness harness, List<Point> points, Map<Point, Integer> indexOf) {
    this.harness = harness;
    this.points = points;
    this.indexOf = indexOf;
    for (Wire wire : harness.wires()) {
      conductors.add(new Conductor.OfWire(wire));
    }
    for (Link link : harness.links()) {
      conductors.add(new Conductor.OfLink(link));
    }
    firstContact = conductors.size();
    for (Switch one : harness.switches()) {
      int first = conductors.size();
      contactsOf.put(one.ref(), IntStream.range(first, first + one.contacts().size()).toArray());
      for (Switch.Contact contact : one.contacts()) {
        conductors.add(new Conductor.OfContact(contact));
      }
    }
    from = new int[conductors.size()];
    to = new int[conductors.size()];
    for (int i = 0; i < from.length; i++) {
      from[i] = index(conductors.get(i).from());
      to[i] = index(conductors.get(i).to());
    }
    fromOfPart = new int[harness.parts().size()];
    toOfPart = new int[harness.parts().size()];
    for (int i = 0; i < fromOfPart.length; i++) {
      fromOfPart[i] = index(part(i).from());
      toOfPart[i] = index(part(i).to());
      partsAtPoint.computeIfAbsent(fromOfPart[i], key -> new ArrayList<>()).add(i);
      partsAtPoint.computeIfAbsent(toOfPart[i], key -> new ArrayList<>()).add(i);
    }
    normal = computeNets(SwitchState.normal());
  }

  /** The circuit of a harness. */
  public static Circuit of(Harness harness) {
    List<Point> points = harness.points();
    Map<Point, Integer> indexOf = new HashMap<>(2 * points.size());
    for (int i = 0; i < points.size(); i++) {
      indexOf.put(points.get(i), i);
    }
    return new Circuit(harness, points, indexOf);
  }

  /**
   * The circuit of a harness that joins the same points otherwise: they keep their numbers, which
   * takes most of the time to find.
   */
  public Circuit joinedOtherwise(Harness other) {
    return new Circuit(other, points, indexOf);
  }

  /** The harness it was made from. */
  public Harness harness() {
    return harness;
  }

  /** How many points there are. */
  public int size() {
    return points.size();
  }

  /** The point of a number. */
  public Point point(int index) {
    return points.get(index);
  }

  /**
   * The number of a point.
   *
   * @throws IllegalArgumentException where the harness does not name it
   */
  public int index(Point point) {
    Integer index = indexOf.get(point);
    if (index == null) {
      throw new IllegalArgumentException("no point " + point);
    }
    return index;
  }

  /** Every conductor: wires first, in the order of the list, then links, then switch contacts. */
  public List<Conductor> conductors() {
    return conductors;
  }

  /** Whether a conductor is a wire, and no link and no contact. */
  public boolean isWire(int conductor) {
    return conductors.get(conductor).isWire();
  }

  /** The point at a conductor's first end. */
  public int from(int conductor) {
    return from[conductor];
  }

  /** The point at a conductor's second end. */
  public int to(int conductor) {
    return to[conductor];
  }

  /** The point at which a wire's end is listed. */
  public int at(int wire, Wire.End end) {
    return end == Wire.End.FROM ? from[wire] : to[wire];
  }

  /** The conductors that are contacts of a switch. */
  public int[] contactsOf(Switch one) {
    return contactsOf.getOrDefault(one.ref(), NO_CONTACTS);
  }

  /** The switch that a contact belongs to. */
  public Switch switchOf(Switch.Contact contact) {
    return harness.switches().stream()
        .filter(one -> one.ref().equals(contact.ref()))
        .findFirst()
        .orElseThrow();
  }

  /** The part of a number. */
  public Part part(int index) {
    return harness.parts().get(index);
  }

  /** The point at a part's first end. */
  public int fromOfPart(int part) {
    return fromOfPart[part];
  }

  /** The point at a part's second end. */
  public int toOfPart(int part) {
    return toOfPart[part];
  }

  /** How far a part's ohms may be from what is listed, as a share of it. */
  public double toleranceOf(int part) {
    return part(part).tolerancePercent().orElse(harness.limits().tolerancePercent()) / 100;
  }

  /** The parts that end at any of some points, each once and in order. */
  int[] partsAt(int[] points) {
    Set<Integer> parts = Set.of();
    for (int point : points) {
      List<Integer> here = partsAtPoint.get(point);
      if (here != null) {
        parts = parts.isEmpty() ? new TreeSet<>() : parts;
        parts.addAll(here);
      }
    }
    return parts.isEmpty() ? NO_PARTS : parts.stream().mapToInt(Integer::intValue).toArray();
  }

  /** Whether a conductor joins its ends in a state. */
  public boolean isClosed(int conductor, SwitchState state) {
    return conductors.get(conductor).match(new ClosedIn(state));
  }

  /** Whether conductors join their ends in one state. */
  private final class ClosedIn implements Conductor.Cases<Boolean> {
    private final SwitchState state;

    ClosedIn(SwitchState state) {
      this.state = state;
    }

    @Override
    public Boolean wire(Conductor.OfWire conductor) {
      return !state.isLifted(conductor.wire());
    }

    @Override
    public Boolean link(Conductor.OfLink conductor) {
      return !state.isLifted(conductor.link());
    }

    @Override
    public Boolean contact(Conductor.OfContact conductor) {
      Switch.Contact contact = conductor.contact();
      return state.positionOf(switchOf(contact)).equals(contact.state());
    }
  }

  /** The nets with every switch in its normal position. */
  public Nets normal() {
    return normal;
  }

  /** The nets in a state. */
  public Nets in(SwitchState state) {
    return state.isNormal() ? normal : netsOf.computeIfAbsent(state, this::computeNets);
  }

  private Nets computeNets(SwitchState state) {
    boolean[] closed = new boolean[conductors.size()];
    Arrays.fill(closed, true);
    // Only contacts differ from state to state, and wires and links where one is lifted.
    for (int c = state.liftsAny() ? 0 : firstContact; c < closed.length; c++) {
      closed[c] = isClosed(c, state);
    }
    return new Nets(this, closed, liftedParts(state));
  }

  /** Whether a part's label says which it is, as the state of a reading has to. */
  public boolean isTheOnlyOneOfItsName(Part part) {
    return harness.parts().stream().filter(one -> one.label().equals(part.label())).count() == 1;
  }

  private Set<Integer> liftedParts(SwitchState state) {
    return state.liftsAny()
        ? IntStream.range(0, harness.parts().size())
            .filter(part -> state.isLifted(part(part)))
            .boxed()
            .collect(Collectors.toSet())
        : Set.of();
  }
}
