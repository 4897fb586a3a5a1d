package dev.ringout.circuit;

import dev.ringout.harness.Switch;
import dev.ringout.harness.SwitchState;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * A net that switch contacts closed in the normal state hold together, and the pieces that are left
 * without them. In the normal state an end that is on another piece than listed reads good.
 *
 * @param net its number in the normal state
 * @param pieces those with the most conductors first
 */
public record ContactPieces(int net, List<Piece> pieces) {
  /**
   * One piece.
   *
   * @param points all that are in it
   * @param terminals of contacts, in it; one at least
   * @param conductors the wires and links in it
   * @param apart the switches so that none of its contacts to another piece is closed, where they
   *     have such a position
   */
  public record Piece(
      List<Integer> points, List<Integer> terminals, List<Integer> conductors, SwitchState apart) {
    /** The first of its terminals. */
    public int terminal() {
      return terminals.get(0);
    }

    private boolean has(int terminal) {
      return terminals.contains(terminal);
    }
  }

  /** Two pieces, by a terminal of each, and the switches so that they are apart. */
  public record Pair(int one, int other, SwitchState apart) {}

  /** Each position of each switch that has a contact here, and the normal ones. */
  public List<SwitchState> positions(Circuit circuit) {
    return Stream.concat(
            Stream.of(SwitchState.normal()),
            contacts(circuit, net)
                .mapToObj(circuit.conductors()::get)
                .flatMap(one -> one.asContact().stream())
                .map(circuit::switchOf)
                .distinct()
                .flatMap(
                    which ->
                        which.states().stream()
                            .map(position -> SwitchState.normal().with(which, position))))
        .distinct()
        .toList();
  }

  /** The switches so that as many of its contacts as can be are open. */
  public SwitchState allOpen(Circuit circuit) {
    SwitchState state = SwitchState.normal();
    for (int contact : contacts(circuit, net).toArray()) {
      state = opened(circuit, contact, state);
    }
    return state;
  }

  /** The contacts that are closed in a net. */
  private static IntStream contacts(Circuit circuit, int net) {
    return Arrays.stream(circuit.normal().conductorsOf(net))
        .filter(conductor -> isContact(circuit, conductor));
  }

  private static boolean isContact(Circuit circuit, int conductor) {
    return circuit.conductors().get(conductor).asContact().isPresent();
  }

  /** The switches so that a piece is apart from another; absent where no position parts them. */
  public static Optional<SwitchState> apart(Circuit circuit, Piece one, Piece other) {
    return Stream.of(one.apart(), other.apart())
        .filter(
            state -> circuit.in(state).of(one.terminal()) != circuit.in(state).of(other.terminal()))
        .findFirst();
  }

  /**
   * The pieces that some positions part, but those that one contact between them parts by itself:
   * what shows it open holds them apart.
   */
  public List<Pair> partedByMoreThanOneContact(Circuit circuit) {
    List<Pair> pairs = new ArrayList<>();
    for (int i = 0; i < pieces.size(); i++) {
      for (int j = i + 1; j < pieces.size(); j++) {
        Piece one = pieces.get(i);
        Piece other = pieces.get(j);
        if (!isPartedByOneContact(circuit, one, other)) {
          apart(circuit, one, other)
              .ifPresent(state -> pairs.add(new Pair(one.terminal(), other.terminal(), state)));
        }
      }
    }
    return pairs;
  }

  private boolean isPartedByOneContact(Circuit circuit, Piece one, Piece other) {
    return contacts(circuit, net)
        .filter(contact -> lies(circuit, contact, one, other) || lies(circuit, contact, other, one))
        .mapToObj(contact -> opened(circuit, contact, SwitchState.normal()))
        .map(circuit::in)
        .anyMatch(nets -> nets.of(one.terminal()) != nets.of(other.terminal()));
  }

  private static boolean lies(Circuit circuit, int contact, Piece from, Piece to) {
    return from.has(circuit.from(contact)) && to.has(circuit.to(contact));
  }

  /** The nets of a circuit that have closed contacts in the normal state. */
  public static List<ContactPieces> of(Circuit circuit) {
    Nets normal = circuit.normal();
    return IntStream.range(0, circuit.conductors().size())
        .filter(conductor -> normal.isClosed(conductor) && isContact(circuit, conductor))
        .map(contact -> normal.of(circuit.from(contact)))
        .distinct()
        .sorted()
        .mapToObj(net -> of(circuit, net))
        .toList();
  }

  private static ContactPieces of(Circuit circuit, int net) {
    int[] contacts = contacts(circuit, net).toArray();
    int[] others =
        Arrays.stream(circuit.normal().conductorsOf(net))
            .filter(conductor -> !isContact(circuit, conductor))
            .toArray();
    DisjointPoints joined = new DisjointPoints(circuit.size());
    for (int conductor : others) {
      joined.union(circuit.from(conductor), circuit.to(conductor));
    }
    Map<Integer, List<Integer>> pointsIn = new TreeMap<>();
    for (int point : circuit.normal().pointsOf(net)) {
      pointsIn.computeIfAbsent(joined.firstOf(point), piece -> new ArrayList<>()).add(point);
    }
    Map<Integer, List<Integer>> endingIn = new HashMap<>();
    for (int conductor : others) {
      endingIn
          .computeIfAbsent(joined.firstOf(circuit.from(conductor)), piece -> new ArrayList<>())
          .add(conductor);
    }
    List<Piece> pieces = new ArrayList<>();
    pointsIn.forEach(
        (piece, points) -> {
          SwitchState state = SwitchState.normal();
          List<Integer> terminals = new ArrayList<>();
          for (int contact : contacts) {
            boolean here = joined.firstOf(circuit.from(contact)) == piece;
            boolean there = joined.firstOf(circuit.to(contact)) == piece;
            if (here != there) {
              state = opened(circuit, contact, state);
            }
            if (here) {
              terminals.add(circuit.from(contact));
            }
            if (there) {
              terminals.add(circuit.to(contact));
            }
          }
          pieces.add(
              new Piece(
                  List.copyOf(points),
                  List.copyOf(terminals),
                  List.copyOf(endingIn.getOrDefault(piece, List.of())),
                  state));
        });
    pieces.sort(Comparator.comparingInt((Piece piece) -> -piece.conductors().size()));
    return new ContactPieces(net, List.copyOf(pieces));
  }

  private static SwitchState opened(Circuit circuit, int contact, SwitchState state) {
    return circuit
        .conductors()
        .get(contact)
        .asContact()
        .map(one -> opened(circuit.switchOf(one), one, state))
        .orElse(state);
  }

  private static SwitchState opened(Switch which, Switch.Contact contact, SwitchState state) {
    return which.states().stream()
        .filter(position -> which.contacts().stream().noneMatch(closedIn(position, contact)))
        .findFirst()
        .map(position -> state.with(which, position))
        .orElse(state);
  }

  private static Predicate<Switch.Contact> closedIn(String position, Switch.Contact contact) {
    return other -> other.state().equals(position) && other.hasSamePointsAs(contact);
  }
}
