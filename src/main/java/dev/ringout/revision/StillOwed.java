package dev.ringout.revision;

import dev.ringout.harness.Item;
import dev.ringout.harness.Point;
import dev.ringout.harness.Wire;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;

/** What a unit lacks of a later revision, by that revision's own wires and items. */
final class StillOwed {
  private final Set<Wire> missing = new HashSet<>();
  private final Set<Wire> otherNumber = new HashSet<>();
  private final Map<Wire, Set<Point>> ends = new HashMap<>();
  private final Map<Wire, Set<Field>> facts = new HashMap<>();
  private final Set<String> missingItems = new HashSet<>();
  private final Map<String, Set<ItemField>> itemFacts = new HashMap<>();
  private final Set<String> takenOutElsewhere = new HashSet<>();

  private StillOwed() {}

  /**
   * What work owes.
   *
   * @param ofRevision the changes of the revision itself: a wire that the work takes out where the
   *     revision does not know it was moved in the field
   */
  static StillOwed of(Difference work, Set<ChangeIdentity> ofRevision) {
    StillOwed owed = new StillOwed();
    for (Change change : work.changes()) {
      change.match(owed.new Taking(ofRevision.contains(ChangeIdentity.of(change)))).run();
    }
    return owed;
  }

  /** Whether a wire that goes is in the unit, at points where the earlier revision has it not. */
  boolean takesOutElsewhere(Wire wire) {
    return takenOutElsewhere.contains(wire.name());
  }

  /** Whether the unit has a wire with its number, its ends and what it is made of. */
  boolean isAsMade(Wire wire) {
    return hasNumber(wire)
        && !ends.containsKey(wire)
        && Collections.disjoint(facts.getOrDefault(wire, Set.of()), Field.MAKING);
  }

  /** Whether an end of a wire is at a point. */
  boolean has(Wire wire, Point end) {
    return !missing.contains(wire) && !ends.getOrDefault(wire, Set.of()).contains(end);
  }

  /** Whether a wire is there with its number. */
  boolean hasNumber(Wire wire) {
    return !missing.contains(wire) && !otherNumber.contains(wire);
  }

  /** Whether a wire is there, and is what the list says of it. */
  boolean has(Wire wire, Field field) {
    return !missing.contains(wire) && !facts.getOrDefault(wire, Set.of()).contains(field);
  }

  /** Whether an item is there, and is what the list says of it. */
  boolean has(Item item, ItemField field) {
    return !missingItems.contains(item.ref())
        && !itemFacts.getOrDefault(item.ref(), Set.of()).contains(field);
  }

  /** Takes one change of the work, by its kind. */
  private final class Taking implements Change.Cases<Runnable> {
    private final boolean isOfRevision;

    Taking(boolean isOfRevision) {
      this.isOfRevision = isOfRevision;
    }

    @Override
    public Runnable removed(Change.Removed change) {
      return isOfRevision ? () -> {} : () -> takenOutElsewhere.add(change.wire().name());
    }

    @Override
    public Runnable added(Change.Added change) {
      return () -> missing.add(change.wire());
    }

    @Override
    public Runnable moved(Change.Moved change) {
      return () -> change.ends().forEach(end -> of(ends, change.after()).add(end.to()));
    }

    @Override
    public Runnable renumbered(Change.Renumbered change) {
      return () -> otherNumber.add(change.after());
    }

    @Override
    public Runnable altered(Change.Altered change) {
      return () -> of(facts, change.after()).add(change.field());
    }

    @Override
    public Runnable itemAdded(Change.ItemAdded change) {
      return () -> missingItems.add(change.ref());
    }

    @Override
    public Runnable itemAltered(Change.ItemAltered change) {
      return () -> of(itemFacts, change.after().ref()).add(change.field());
    }

    @Override
    public Runnable itemDropped(Change.ItemDropped change) {
      return () -> {};
    }

    @Override
    public Runnable jumper(Change.Jumper change) {
      return () -> {};
    }

    @Override
    public Runnable switchContact(Change.SwitchContact change) {
      return () -> {};
    }

    @Override
    public Runnable normalPosition(Change.NormalPosition change) {
      return () -> {};
    }

    @Override
    public Runnable ofPart(Change.OfPart change) {
      return () -> {};
    }

    private static <K, V> Set<V> of(Map<K, Set<V>> map, K key) {
      return map.computeIfAbsent(key, one -> new HashSet<>());
    }
  }
}
