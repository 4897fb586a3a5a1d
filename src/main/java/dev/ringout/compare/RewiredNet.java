package dev.ringout.compare;

import dev.ringout.circuit.Circuit;
import dev.ringout.circuit.ContactPieces;
import dev.ringout.circuit.ContactPieces.Piece;
import dev.ringout.circuit.DisjointPoints;
import dev.ringout.circuit.Nets;
import dev.ringout.circuit.Probing;
import dev.ringout.harness.SwitchState;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * A net that closed contacts hold together, with ends of one or two of its conductors elsewhere
 * than listed: what is joined then, and whether any reading contradicts it.
 */
final class RewiredNet {
  private final Circuit circuit;
  private final ContactPieces net;
  private final int[] points;
  private final Map<SwitchState, InState> states = new LinkedHashMap<>();

  /** A conductor with an end elsewhere. */
  record Moved(int conductor, int from, int to) {
    static Moved of(Circuit circuit, int conductor, boolean far, int point) {
      return new Moved(
          conductor, far ? circuit.from(conductor) : point, far ? point : circuit.to(conductor));
    }
  }

  /** What is elsewhere: two conductors, or one given twice. */
  record Change(Moved one, Moved other) {}

  /** What is listed as joined to the net in a state, and what readings found there. */
  private static final class InState {
    final Nets nets;
    final int[] conductors;

    /** Each point's place among those that are joined to the net here; others have none. */
    final int[] place;

    final int[] points;
    final List<Probing> joined = new ArrayList<>();
    final List<Probing> apart = new ArrayList<>();

    InState(Circuit circuit, int[] ofNet, SwitchState state) {
      nets = circuit.in(state);
      int[] here = Arrays.stream(ofNet).map(nets::of).distinct().toArray();
      points = Arrays.stream(here).flatMap(one -> Arrays.stream(nets.pointsOf(one))).toArray();
      conductors =
          Arrays.stream(here).flatMap(one -> Arrays.stream(nets.conductorsOf(one))).toArray();
      place = new int[circuit.size()];
      Arrays.fill(place, Nets.NONE);
      for (int i = 0; i < points.length; i++) {
        place[points[i]] = i;
      }
    }

    boolean has(int point) {
      return place[point] != Nets.NONE;
    }
  }

  private RewiredNet(Circuit circuit, ContactPieces net) {
    this.circuit = circuit;
    this.net = net;
    this.points =
        net.pieces().stream()
            .flatMapToInt(piece -> piece.points().stream().mapToInt(Integer::intValue))
            .toArray();
  }

  /** A net with what was found of it. */
  static RewiredNet of(Circuit circuit, ContactPieces net, List<Judged> inForce) {
    RewiredNet rewired = new RewiredNet(circuit, net);
    inForce.stream()
        .filter(judged -> judged.probing().points().anyMatch(rewired::has))
        .forEach(rewired::add);
    return rewired;
  }

  private boolean has(int point) {
    return circuit.normal().of(point) == net.net();
  }

  private void add(Judged judged) {
    Probing probing = judged.probing();
    if (judged.provesJoin() && probing.isPair()) {
      in(judged.reading().state()).joined.add(probing);
    }
    if (judged.provesApart() && !judged.touchedSince().has(net.net())) {
      in(judged.reading().state()).apart.add(probing);
    }
  }

  private InState in(SwitchState state) {
    return states.computeIfAbsent(state, one -> new InState(circuit, points, one));
  }

  /** All points of the net. */
  int[] points() {
    return points.clone();
  }

  /**
   * Whether no change among a piece's own conductors could part it: in some positions all of it was
   * found joined, with nothing outside that would join it again.
   */
  boolean isWhole(Piece piece) {
    return withNothingLifted()
        .anyMatch(state -> isReadTogether(piece, state) && !isJoinedOutside(piece, state));
  }

  /**
   * Whether no change at all could part a piece or join it to another: in some positions all of it
   * was found joined, and apart from the rest.
   */
  boolean isByItself(Piece piece) {
    return withNothingLifted()
        .anyMatch(
            state ->
                isReadTogether(piece, state)
                    && state.nets.pointsOf(state.nets.of(piece.terminal())).length
                        == piece.points().size()
                    && state.apart.stream()
                        .anyMatch(
                            one ->
                                one.toRest()
                                    && Arrays.stream(one.from())
                                        .allMatch(point -> piece.points().contains(point))));
  }

  private Stream<InState> withNothingLifted() {
    return states.entrySet().stream()
        .filter(one -> !one.getKey().liftsAny())
        .map(Map.Entry::getValue);
  }

  private static boolean isReadTogether(Piece piece, InState state) {
    DisjointPoints joined = new DisjointPoints(state.points.length);
    for (Probing one : state.joined) {
      joined.union(state.place[one.from()[0]], state.place[one.to()[0]]);
    }
    return piece.points().stream()
        .allMatch(point -> areJoined(joined, state, piece.terminal(), point));
  }

  private boolean isJoinedOutside(Piece piece, InState state) {
    DisjointPoints joined = new DisjointPoints(state.points.length);
    Set<Integer> own = Set.copyOf(piece.conductors());
    for (int conductor : state.conductors) {
      if (!own.contains(conductor)) {
        joined.union(state.place[circuit.from(conductor)], state.place[circuit.to(conductor)]);
      }
    }
    Set<Integer> terminals = new TreeSet<>(piece.terminals());
    return terminals.stream().map(point -> joined.firstOf(state.place[point])).distinct().count()
        < terminals.size();
  }

  /** Whether the net would be in other pieces than listed, were all its contacts open. */
  boolean partsOtherwise(Change change) {
    InState normal = in(SwitchState.normal());
    DisjointPoints joined = new DisjointPoints(normal.points.length);
    for (Piece piece : net.pieces()) {
      piece.conductors().forEach(conductor -> join(joined, normal, change, conductor));
    }
    return joined.count() != net.pieces().size()
        || net.pieces().stream()
            .anyMatch(
                piece ->
                    piece.points().stream()
                        .anyMatch(point -> !areJoined(joined, normal, piece.terminal(), point)));
  }

  /** Whether any reading contradicts it. */
  boolean isContradicted(Change change) {
    return states.values().stream().anyMatch(state -> isContradicted(change, state));
  }

  private boolean isContradicted(Change change, InState state) {
    DisjointPoints joined = joined(change, state);
    return state.joined.stream()
            .anyMatch(one -> !areJoined(joined, state, one.from()[0], one.to()[0]))
        || state.apart.stream().anyMatch(one -> isJoined(joined, state, one));
  }

  private boolean isJoined(DisjointPoints joined, InState state, Probing apart) {
    return Arrays.stream(apart.from())
        .filter(state::has)
        .anyMatch(
            from ->
                (apart.toRest() ? rest(state, apart) : Arrays.stream(apart.to()).filter(state::has))
                    .anyMatch(to -> areJoined(joined, state, from, to)));
  }

  /** Whatever is listed as joined to the probes is no part of the rest. */
  private static IntStream rest(InState state, Probing apart) {
    return Arrays.stream(state.points)
        .filter(
            point ->
                Arrays.stream(apart.from())
                    .noneMatch(from -> state.nets.of(from) == state.nets.of(point)));
  }

  private DisjointPoints joined(Change change, InState state) {
    DisjointPoints joined = new DisjointPoints(state.points.length);
    for (int conductor : state.conductors) {
      join(joined, state, change, conductor);
    }
    return joined;
  }

  private void join(DisjointPoints joined, InState state, Change change, int conductor) {
    int from = circuit.from(conductor);
    int to = circuit.to(conductor);
    for (Moved moved : List.of(change.one(), change.other())) {
      if (moved.conductor() == conductor) {
        from = moved.from();
        to = moved.to();
      }
    }
    joined.union(state.place[from], state.place[to]);
  }

  private static boolean areJoined(DisjointPoints joined, InState state, int from, int to) {
    return joined.firstOf(state.place[from]) == joined.firstOf(state.place[to]);
  }

  /** Whether a reading between two points of the net would be another than that of the list. */
  boolean tells(Change change, Probing pair) {
    InState state = in(pair.state());
    int from = pair.from()[0];
    int to = pair.to()[0];
    boolean listed = state.nets.of(from) == state.nets.of(to);
    return areJoined(joined(change, state), state, from, to) != listed;
  }
}
