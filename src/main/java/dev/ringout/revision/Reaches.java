package dev.ringout.revision;

import dev.ringout.harness.Wire;
import dev.ringout.revision.Change.Moved;
import dev.ringout.revision.Change.MovedEnd;
import dev.ringout.units.Length;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Tells of moved ends whether they get there, by the lengths that both revisions list. */
final class Reaches {
  /** The shortest wire that either revision lists between two items, moved ones apart. */
  private final Map<Way, Length> shortest = new HashMap<>();

  /** Two items between which wires run, in either direction. */
  private record Way(String one, String other) {
    static Way of(Wire wire) {
      String from = wire.from().ref();
      String to = wire.to().ref();
      return from.compareTo(to) <= 0 ? new Way(from, to) : new Way(to, from);
    }
  }

  Reaches(Difference difference) {
    List<Wire> wires = new ArrayList<>(difference.before().wires());
    wires.addAll(difference.after().wires());
    Set<Wire> moved = new HashSet<>();
    difference.changes(Moved.class).forEach(one -> moved.add(one.after()));
    for (Wire wire : wires) {
      if (!moved.contains(wire)) {
        wire.length().ifPresent(length -> shortest.merge(Way.of(wire), length, Reaches::lesser));
      }
    }
  }

  private static Length lesser(Length one, Length other) {
    return one.metres() <= other.metres() ? one : other;
  }

  /** Whether more is listed of a wire than of another; not where one has no length. */
  static boolean isLonger(Wire wire, Wire than) {
    return wire.length().isPresent()
        && than.length().isPresent()
        && wire.length().get().metres() > than.length().get().metres();
  }

  Reach of(Moved moved, MovedEnd end) {
    return new Reach(moved.after(), end.from(), end.to(), why(moved, end));
  }

  private Reach.Why why(Moved moved, MovedEnd end) {
    if (end.from().ref().equals(end.to().ref())) {
      return new Reach.StaysAtItem(end.to().ref());
    }
    Optional<Length> own = moved.before().length();
    if (own.isEmpty()) {
      return new Reach.NoLength();
    }
    if (isLonger(moved.before(), moved.after())) {
      double wanted = moved.after().length().map(Length::metres).orElse(0.0);
      return new Reach.ListWantsLess(own.get().metres(), wanted);
    }
    return Optional.ofNullable(shortest.get(Way.of(moved.after())))
        .<Reach.Why>map(other -> new Reach.OthersThatWay(own.get().metres(), other.metres()))
        .orElseGet(() -> new Reach.NoOtherThatWay(own.get().metres()));
  }
}
