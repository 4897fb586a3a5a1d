package dev.ringout.revision;

import dev.ringout.circuit.Precedence;
import dev.ringout.harness.NaturalOrder;
import dev.ringout.harness.Point;
import dev.ringout.harness.Wire;
import dev.ringout.revision.Change.Added;
import dev.ringout.revision.Change.Altered;
import dev.ringout.revision.Change.Jumper;
import dev.ringout.revision.Change.Moved;
import dev.ringout.revision.Change.MovedEnd;
import dev.ringout.revision.Change.Removed;
import dev.ringout.revision.Change.Renumbered;
import dev.ringout.revision.Step.Do;
import dev.ringout.units.Numbers;
import dev.ringout.units.Text;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Function;

/**
 * The work that makes the later revision of the earlier, in an order that can be done: each item is
 * opened once; within a visit every end that leaves is taken off before any is put on, so that a
 * cavity is free before it is filled and a ring of moves has its ends parked, capped and tagged,
 * between; items that give each other ends are opened together.
 *
 * @param visits item after item
 * @param relabels sleeves and labels to renew, in words
 * @param cut wires to make new: those added, and those that are another wire now
 * @param taken wires that come out or are capped
 * @param reaches for each moved end whether it gets there
 * @param exchanges items, parts and switch contacts that are others now; an item's wires come off
 *     and on again with it
 */
public record Rework(
    List<Visit> visits,
    List<Relabel> relabels,
    List<Wire> cut,
    List<Wire> taken,
    List<Reach> reaches,
    List<Change> exchanges) {

  /** Items that are open at one time, and what is done there. */
  public record Visit(List<String> items, List<Step> steps) {}

  /**
   * A sleeve or label that says something else now.
   *
   * @param at the point or item it is on
   */
  public record Relabel(String at, String old, String now) {}

  /** The work of a difference. */
  public static Rework of(Difference difference) {
    return new Builder(difference).build();
  }

  private static final class Builder {
    private final Difference difference;
    private final Precedence order = new Precedence(NaturalOrder.INSTANCE);
    private final Map<String, List<Off>> off = new HashMap<>();
    private final Map<String, List<On>> on = new HashMap<>();
    private final Map<String, List<Jumper>> jumpers = new HashMap<>();

    /** For each wire that leaves altogether: how many of its ends are still on. */
    private final Map<Integer, Integer> endsOn = new HashMap<>();

    /** Every wire of the earlier revision by its place in the list. */
    private final Map<Wire, Integer> placeOf = new HashMap<>();

    /** The ends that get another contact, and which: by a wire as it was and its point. */
    private final Map<List<Object>, String> newContacts = new HashMap<>();

    /** The ends that go elsewhere: a wire as it was, and its point. */
    private final Set<List<Object>> movedEnds = new HashSet<>();

    private final List<Change> exchanges = new ArrayList<>();
    private final List<Relabel> relabels = new ArrayList<>();
    private final List<Wire> cut = new ArrayList<>();
    private final List<Wire> taken = new ArrayList<>();
    private final List<Reach> reaches = new ArrayList<>();
    private final Map<String, OptionalDouble> shortestBetween = new HashMap<>();
    private int number;

    /** An end that leaves; where it goes next is absent for a wire that goes altogether. */
    private record Off(int which, Wire wire, Point at, Optional<Point> next) {}

    /** An end that arrives; from where is absent for a new wire. */
    private record On(int which, Wire wire, String marked, Point at, Optional<Point> from) {}

    Builder(Difference difference) {
      this.difference = difference;
    }

    Rework build() {
      for (Wire wire : difference.before().wires()) {
        placeOf.putIfAbsent(wire, placeOf.size());
      }
      lengths();
      collect();
      List<Visit> visits = new ArrayList<>();
      for (Collection<String> items : order.turns()) {
        List<Step> steps = new ArrayList<>();
        items.forEach(item -> takeOff(item, steps));
        items.forEach(item -> putOn(item, steps));
        visits.add(new Visit(List.copyOf(items), List.copyOf(steps)));
      }
      return new Rework(
          List.copyOf(visits),
          List.copyOf(relabels),
          List.copyOf(cut),
          List.copyOf(taken),
          List.copyOf(reaches),
          List.copyOf(exchanges));
    }

    private void collect() {
      contacts();
      for (Moved moved : difference.changes(Moved.class)) {
        moved.ends().forEach(end -> movedEnds.add(List.of(moved.before(), end.from())));
      }
      Set<Wire> replaced = replaced();
      for (Change change : difference.changes()) {
        if (change instanceof Removed removed) {
          out(removed.wire());
        } else if (change instanceof Added added) {
          in(added.wire());
        } else if (change instanceof Moved moved && !replaced.contains(moved.after())) {
          moved.ends().forEach(end -> move(moved, end));
        } else if (change instanceof Renumbered one && !replaced.contains(one.after())) {
          for (Wire.End end : Wire.End.values()) {
            relabels.add(
                new Relabel(
                    one.after().at(end).toString(), one.before().name(), one.after().name()));
          }
        } else if (change instanceof Altered one && !replaced.contains(one.after())) {
          reterminate(one);
        } else if (change instanceof Change.ItemAltered one) {
          if (List.of("part", "arrangement", "kind").contains(one.field())) {
            order.add(one.after().ref());
            exchanges.add(one);
          }
        } else if (change instanceof Change.OfPart || change instanceof Change.SwitchContact) {
          exchanges.add(change);
        } else if (change instanceof Jumper jumper) {
          String item = jumper.link().from().ref();
          order.add(item);
          jumpers.computeIfAbsent(item, ref -> new ArrayList<>()).add(jumper);
        }
      }
      difference.renames().forEach(this::relabel);
    }

    private void contacts() {
      for (Altered one : difference.changes(Altered.class)) {
        if (isAnotherContact(one)) {
          newContacts.put(List.of(one.before(), contactEnd(one)), one.now());
        }
      }
    }

    private static boolean isAnotherContact(Altered one) {
      return (one.field() == Field.FROM_CONTACT || one.field() == Field.TO_CONTACT)
          && !one.old().isEmpty();
    }

    private static Point contactEnd(Altered one) {
      return one.before().at(one.field() == Field.FROM_CONTACT ? Wire.End.FROM : Wire.End.TO);
    }

    /** An end that stays where it is and gets another contact comes off and on again. */
    private void reterminate(Altered one) {
      Point at = contactEnd(one);
      if (isAnotherContact(one) && !movedEnds.contains(List.of(one.before(), at))) {
        int which = placeOf.getOrDefault(one.before(), 0);
        leave(new Off(which, one.before(), at, Optional.of(at)));
        arrive(new On(which, one.after(), one.before().name(), at, Optional.of(at)));
      }
    }

    private String contact(On one) {
      if (one.from().isEmpty() || one.which() >= difference.before().wires().size()) {
        return "";
      }
      Wire before = difference.before().wires().get(one.which());
      String contact = newContacts.getOrDefault(List.of(before, one.from().get()), "");
      return contact.isEmpty() ? "" : ", with a new contact " + contact;
    }

    /** A new name stands on the item, and on every sleeve that names it. */
    private void relabel(Rename rename) {
      if (rename.ofItem()) {
        relabels.add(
            new Relabel(
                rename.newRef() + " and every sleeve that names it",
                rename.oldRef(),
                rename.newRef()));
      }
      if (!rename.pins().isEmpty()) {
        List<String> olds = List.copyOf(rename.pins().keySet());
        List<String> news = List.copyOf(rename.pins().values());
        int last = olds.size() - 1;
        relabels.add(
            new Relabel(
                "every sleeve that names a pin of " + rename.newRef(),
                olds.get(0) + " … " + olds.get(last),
                news.get(0) + " … " + news.get(last)));
      }
    }

    /** What is another wire now comes out, and a new one goes in. */
    private Set<Wire> replaced() {
      Map<Wire, Wire> pairs = new LinkedHashMap<>();
      for (Altered altered : difference.changes(Altered.class)) {
        boolean longer =
            altered.field() == Field.LENGTH
                && metres(altered.after()).orElse(0) > metres(altered.before()).orElse(1e9);
        if (longer || (altered.field().isOfTheWireItself() && !altered.old().isEmpty())) {
          pairs.put(altered.after(), altered.before());
        }
      }
      pairs.forEach(
          (after, before) -> {
            out(before);
            in(after);
          });
      return pairs.keySet();
    }

    private static OptionalDouble metres(Wire wire) {
      return wire.length().isPresent()
          ? OptionalDouble.of(wire.length().get().metres())
          : OptionalDouble.empty();
    }

    private void out(Wire wire) {
      int which = placeOf.getOrDefault(wire, 0);
      taken.add(wire);
      endsOn.put(which, 2);
      for (Wire.End end : Wire.End.values()) {
        leave(new Off(which, wire, wire.at(end), Optional.empty()));
      }
    }

    private void in(Wire wire) {
      int which = placeOf.size() + cut.size();
      cut.add(wire);
      for (Wire.End end : Wire.End.values()) {
        arrive(new On(which, wire, wire.name(), wire.at(end), Optional.empty()));
      }
    }

    private void move(Moved moved, MovedEnd end) {
      int which = placeOf.getOrDefault(moved.before(), 0);
      leave(new Off(which, moved.before(), end.from(), Optional.of(end.to())));
      arrive(
          new On(which, moved.after(), moved.before().name(), end.to(), Optional.of(end.from())));
      order.before(end.from().ref(), end.to().ref());
      reaches.add(reach(moved, end));
    }

    private void leave(Off one) {
      order.add(one.at().ref());
      off.computeIfAbsent(one.at().ref(), ref -> new ArrayList<>()).add(one);
    }

    private void arrive(On one) {
      order.add(one.at().ref());
      on.computeIfAbsent(one.at().ref(), ref -> new ArrayList<>()).add(one);
    }

    private void takeOff(String item, List<Step> steps) {
      jumpers(item, false, steps);
      for (Off one : sorted(off.getOrDefault(item, List.of()), Off::at)) {
        String name = one.wire().name();
        String text =
            one.next().isPresent()
                ? Text.of(
                    "take %s off %s; cap it and tag it \"for %s\"",
                    name, one.at(), one.next().get())
                : Text.of("take %s off %s", name, one.at());
        steps.add(
            Step.ofWire(
                ++number, Do.DISCONNECT, one.which(), name, one.at(), Optional.empty(), text));
        if (one.next().isEmpty() && endsOn.merge(one.which(), -1, Integer::sum) == 0) {
          steps.add(bothEndsOff(one));
        }
      }
    }

    private Step bothEndsOff(Off last) {
      Wire wire = last.wire();
      boolean loose = wire.cable().isEmpty();
      String text =
          loose
              ? Text.of(
                  "draw out %s, or cut both its ends off so that nobody uses it again", wire.name())
              : Text.of(
                  "%s stays in cable %s: cap and tie back both ends, tag them \"spare\"",
                  wire.name(), wire.cable());
      return Step.ofWire(
          ++number,
          loose ? Do.PULL : Do.STOW,
          last.which(),
          wire.name(),
          last.at(),
          Optional.empty(),
          text);
    }

    private void putOn(String item, List<Step> steps) {
      for (On one : sorted(on.getOrDefault(item, List.of()), On::at)) {
        String text =
            one.from().isPresent()
                ? Text.of(
                    "put %s, from %s, on %s%s",
                    one.marked(), one.from().get(), one.at(), contact(one))
                : Text.of("put the new %s on %s", one.wire().name(), one.at());
        steps.add(
            Step.ofWire(
                ++number, Do.CONNECT, one.which(), one.marked(), one.at(), one.from(), text));
      }
      jumpers(item, true, steps);
    }

    private void jumpers(String item, boolean added, List<Step> steps) {
      for (Jumper jumper : jumpers.getOrDefault(item, List.of())) {
        if (jumper.added() == added) {
          steps.add(
              Step.ofJumper(
                  ++number,
                  added ? Do.LINK : Do.UNLINK,
                  jumper.link(),
                  Text.of(
                      "%s the jumper from %s to %s",
                      added ? "fit" : "take off", jumper.link().from(), jumper.link().to())));
        }
      }
    }

    private static <T> List<T> sorted(List<T> ends, Function<T, Point> at) {
      return ends.stream().sorted(Comparator.comparing(at)).toList();
    }

    /** The shortest wire that either revision lists between two items. */
    private void lengths() {
      List<Wire> wires = new ArrayList<>(difference.before().wires());
      wires.addAll(difference.after().wires());
      Set<Wire> moved = new HashSet<>();
      difference.changes(Moved.class).forEach(one -> moved.add(one.after()));
      for (Wire wire : wires) {
        OptionalDouble metres = metres(wire);
        if (metres.isPresent() && !moved.contains(wire)) {
          shortestBetween.merge(
              way(wire),
              metres,
              (one, other) -> OptionalDouble.of(Math.min(one.orElse(1e9), other.orElse(1e9))));
        }
      }
    }

    private static String way(Wire wire) {
      String one = wire.from().ref();
      String other = wire.to().ref();
      return one.compareTo(other) <= 0 ? one + "\t" + other : other + "\t" + one;
    }

    private Reach reach(Moved moved, MovedEnd end) {
      if (end.from().ref().equals(end.to().ref())) {
        return new Reach(
            moved.after(), end.from(), end.to(), Reach.Verdict.REACHES, "it stays at one item");
      }
      OptionalDouble own = metres(moved.before());
      OptionalDouble wanted = metres(moved.after());
      if (own.isPresent() && wanted.isPresent() && wanted.getAsDouble() < own.getAsDouble()) {
        return new Reach(
            moved.after(),
            end.from(),
            end.to(),
            Reach.Verdict.REACHES,
            Text.of(
                "of its %s m the list wants %s m",
                Numbers.plain(own.getAsDouble()), Numbers.plain(wanted.getAsDouble())));
      }
      OptionalDouble shortest =
          shortestBetween.getOrDefault(way(moved.after()), OptionalDouble.empty());
      if (own.isEmpty() || shortest.isEmpty()) {
        return new Reach(
            moved.after(),
            end.from(),
            end.to(),
            Reach.Verdict.UNKNOWN,
            own.isEmpty()
                ? "no length is listed: try it before anything is cut"
                : "no other wire goes that way: try it before anything is cut");
      }
      boolean reaches = own.getAsDouble() >= shortest.getAsDouble();
      return new Reach(
          moved.after(),
          end.from(),
          end.to(),
          reaches ? Reach.Verdict.REACHES : Reach.Verdict.TOO_SHORT,
          Text.of(
              "it is %s m, the shortest other wire that way %s m",
              Numbers.plain(own.getAsDouble()), Numbers.plain(shortest.getAsDouble())));
    }
  }

  /** Every step, visit after visit. */
  public List<Step> steps() {
    return visits.stream().flatMap(visit -> visit.steps().stream()).toList();
  }

  /** The items that are opened. */
  public Set<String> opened() {
    Set<String> opened = new LinkedHashSet<>();
    visits.forEach(visit -> opened.addAll(visit.items()));
    return opened;
  }
}
