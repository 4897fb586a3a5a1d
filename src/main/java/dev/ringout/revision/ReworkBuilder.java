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
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;

/** Makes the work of a difference: what has to be done at which item, then the items in order. */
final class ReworkBuilder {
  private final Difference difference;
  private final Precedence order = new Precedence(NaturalOrder.INSTANCE);
  private final Map<String, List<Off>> off = new HashMap<>();
  private final Map<String, List<On>> on = new HashMap<>();
  private final Map<String, List<Jumper>> jumpers = new HashMap<>();

  /** For each wire that leaves altogether: how many of its ends are still on. */
  private final Map<Integer, Integer> endsOn = new HashMap<>();

  /** Every wire of the earlier revision by its place in the list. */
  private final Map<Wire, Integer> placeOf = new HashMap<>();

  private final NewContacts newContacts;
  private final Reaches wayToGo;
  private final Set<ListedEnd> movedEnds = new HashSet<>();
  private final List<Change> exchanges = new ArrayList<>();
  private final List<Relabel> relabels = new ArrayList<>();
  private final List<Wire> cut = new ArrayList<>();
  private final List<Wire> taken = new ArrayList<>();
  private final List<Reach> reaches = new ArrayList<>();
  private int number;

  /** An end that leaves; where it goes next is absent for a wire that goes altogether. */
  private record Off(int which, Wire wire, Point at, Optional<Point> next) {}

  /** An end that arrives; from where is absent for a new wire. */
  private record On(int which, Wire wire, String marked, Point at, Optional<Point> from) {}

  ReworkBuilder(Difference difference) {
    this.difference = difference;
    newContacts = new NewContacts(difference);
    wayToGo = new Reaches(difference);
    for (Wire wire : difference.before().wires()) {
      placeOf.putIfAbsent(wire, placeOf.size());
    }
    for (Moved moved : difference.changes(Moved.class)) {
      moved.ends().forEach(end -> movedEnds.add(new ListedEnd(moved.before(), end.from())));
    }
  }

  ReworkOrder build() {
    Collecting collecting = new Collecting(replaced());
    difference.changes().forEach(change -> change.match(collecting).run());
    difference.renames().forEach(this::relabel);
    List<ReworkOrder.Visit> visits = new ArrayList<>();
    for (Collection<String> items : order.turns()) {
      List<ReworkStep> steps = new ArrayList<>();
      items.forEach(item -> takeOff(item, steps));
      items.forEach(item -> putOn(item, steps));
      visits.add(new ReworkOrder.Visit(List.copyOf(items), List.copyOf(steps)));
    }
    return new ReworkOrder(
        List.copyOf(visits),
        List.copyOf(relabels),
        List.copyOf(cut),
        List.copyOf(taken),
        List.copyOf(reaches),
        List.copyOf(exchanges));
  }

  /** What each kind of change gives to do. */
  private final class Collecting implements Change.Cases<Runnable> {
    /** Of the later list: they come anew, and need nothing done to what was there. */
    private final Set<Wire> replaced;

    Collecting(Set<Wire> replaced) {
      this.replaced = replaced;
    }

    private Runnable unlessReplaced(Wire after, Runnable work) {
      return replaced.contains(after) ? Collecting::nothing : work;
    }

    private static void nothing() {}

    @Override
    public Runnable removed(Removed change) {
      return () -> out(change.wire());
    }

    @Override
    public Runnable added(Added change) {
      return () -> in(change.wire());
    }

    @Override
    public Runnable moved(Moved change) {
      return unlessReplaced(change.after(), () -> change.ends().forEach(end -> move(change, end)));
    }

    @Override
    public Runnable renumbered(Renumbered change) {
      return unlessReplaced(change.after(), () -> relabel(change));
    }

    @Override
    public Runnable altered(Altered change) {
      return unlessReplaced(change.after(), () -> reterminate(change));
    }

    /** A new item has its wires among the changes. */
    @Override
    public Runnable itemAdded(Change.ItemAdded change) {
      return Collecting::nothing;
    }

    /** So has one that is gone. */
    @Override
    public Runnable itemDropped(Change.ItemDropped change) {
      return Collecting::nothing;
    }

    @Override
    public Runnable itemAltered(Change.ItemAltered change) {
      return change.field().isOfTheItemItself() && change.isSaidByBoth()
          ? () -> exchange(change)
          : Collecting::nothing;
    }

    @Override
    public Runnable jumper(Jumper change) {
      return () -> ReworkBuilder.this.jumper(change);
    }

    @Override
    public Runnable switchContact(Change.SwitchContact change) {
      return difference.isOfWiresAlone() ? Collecting::nothing : () -> exchanges.add(change);
    }

    @Override
    public Runnable normalPosition(Change.NormalPosition change) {
      return Collecting::nothing;
    }

    @Override
    public Runnable ofPart(Change.OfPart change) {
      return difference.isOfWiresAlone() ? Collecting::nothing : () -> exchanges.add(change);
    }
  }

  /** What is another wire now comes out, and a new one goes in. */
  private Set<Wire> replaced() {
    Map<Wire, Wire> pairs = new LinkedHashMap<>();
    for (Altered altered : difference.changes(Altered.class)) {
      boolean longer =
          altered.field() == Field.LENGTH && Reaches.isLonger(altered.after(), altered.before());
      if (longer || (altered.field().isOfTheWireItself() && altered.isSaidByBoth())) {
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

  private void exchange(Change.ItemAltered change) {
    order.add(change.after().ref());
    exchanges.add(change);
  }

  private void jumper(Jumper change) {
    String item = change.link().from().ref();
    order.add(item);
    jumpers.computeIfAbsent(item, ref -> new ArrayList<>()).add(change);
  }

  /** An end that stays where it is and gets another contact comes off and on again. */
  private void reterminate(Altered change) {
    ListedEnd end = NewContacts.end(change);
    if (NewContacts.isOfContact(change) && !movedEnds.contains(end)) {
      int which = placeOf.getOrDefault(change.before(), 0);
      leave(new Off(which, change.before(), end.at(), Optional.of(end.at())));
      arrive(
          new On(which, change.after(), change.before().name(), end.at(), Optional.of(end.at())));
    }
  }

  private void relabel(Renumbered change) {
    for (Wire.End end : Wire.End.values()) {
      relabels.add(
          new Relabel.WireNumber(
              change.after().at(end), change.before().name(), change.after().name()));
    }
  }

  private void relabel(Rename rename) {
    if (rename.ofItem()) {
      relabels.add(new Relabel.ItemName(rename.oldRef(), rename.newRef()));
    }
    if (!rename.pins().isEmpty()) {
      relabels.add(
          new Relabel.PinNames(
              rename.newRef(), run(rename.pins().keySet()), run(rename.pins().values())));
    }
  }

  private static Relabel.Run run(Collection<String> names) {
    List<String> inOrder = List.copyOf(names);
    return new Relabel.Run(inOrder.get(0), inOrder.get(inOrder.size() - 1));
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
    arrive(new On(which, moved.after(), moved.before().name(), end.to(), Optional.of(end.from())));
    order.before(end.from().ref(), end.to().ref());
    reaches.add(wayToGo.of(moved, end));
  }

  private void leave(Off one) {
    order.add(one.at().ref());
    off.computeIfAbsent(one.at().ref(), ref -> new ArrayList<>()).add(one);
  }

  private void arrive(On one) {
    order.add(one.at().ref());
    on.computeIfAbsent(one.at().ref(), ref -> new ArrayList<>()).add(one);
  }

  private void takeOff(String item, List<ReworkStep> steps) {
    for (Jumper jumper : jumpers.getOrDefault(item, List.of())) {
      if (!jumper.added()) {
        steps.add(new ReworkStep.TakeJumperOff(++number, jumper.link()));
      }
    }
    for (Off one : sorted(off.getOrDefault(item, List.of()), Off::at)) {
      steps.add(
          new ReworkStep.Disconnect(
              ++number, one.which(), one.wire().name(), one.at(), one.next()));
      if (one.next().isEmpty() && endsOn.merge(one.which(), -1, Integer::sum) == 0) {
        steps.add(bothEndsOff(one));
      }
    }
  }

  private ReworkStep bothEndsOff(Off last) {
    Wire wire = last.wire();
    return wire.cable().isEmpty()
        ? new ReworkStep.Pull(++number, last.which(), wire.name(), last.at())
        : new ReworkStep.Stow(++number, last.which(), wire.name(), last.at(), wire.cable());
  }

  private void putOn(String item, List<ReworkStep> steps) {
    for (On one : sorted(on.getOrDefault(item, List.of()), On::at)) {
      steps.add(
          new ReworkStep.Connect(
              ++number, one.which(), one.marked(), one.at(), one.from(), newContact(one)));
    }
    for (Jumper jumper : jumpers.getOrDefault(item, List.of())) {
      if (jumper.added()) {
        steps.add(new ReworkStep.FitJumper(++number, jumper.link()));
      }
    }
  }

  private String newContact(On one) {
    List<Wire> earlier = difference.before().wires();
    return one.from().isEmpty() || one.which() >= earlier.size()
        ? ""
        : newContacts.of(new ListedEnd(earlier.get(one.which()), one.from().get()));
  }

  private static <T> List<T> sorted(List<T> ends, Function<T, Point> at) {
    return ends.stream().sorted(Comparator.comparing(at)).toList();
  }
}
