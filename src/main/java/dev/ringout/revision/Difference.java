package dev.ringout.revision;

import dev.ringout.harness.Harness;
import dev.ringout.harness.Item;
import dev.ringout.harness.Link;
import dev.ringout.harness.NaturalOrder;
import dev.ringout.harness.Part;
import dev.ringout.harness.Point;
import dev.ringout.harness.Switch;
import dev.ringout.harness.Wire;
import dev.ringout.revision.Change.Added;
import dev.ringout.revision.Change.Altered;
import dev.ringout.revision.Change.Moved;
import dev.ringout.revision.Change.MovedEnd;
import dev.ringout.revision.Change.Removed;
import dev.ringout.revision.Change.Renumbered;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.BiConsumer;
import java.util.function.Function;
import java.util.function.Predicate;

/**
 * What changed from one revision to another. Everything is by the names of the later.
 *
 * @param before the earlier revision, by the names of the later; each wire once
 * @param after the later revision; each wire once
 * @param renames the items that have other names
 * @param possible items that may have been renamed: too few wires to tell; taken as two
 * @param changes every difference
 * @param nets the nets that changed
 * @param sameContactsAndParts whether switch contacts and parts lie between the same nets
 * @param ties where another matching of the wires would be as little work
 * @param doubledBefore rows of the earlier revision that are written twice and count once
 * @param doubledAfter rows of the later revision that are written twice and count once
 */
public record Difference(
    Harness before,
    Harness after,
    List<Rename> renames,
    List<Rename> possible,
    List<Change> changes,
    List<NetChange> nets,
    boolean sameContactsAndParts,
    List<Unsure> ties,
    List<Wire> doubledBefore,
    List<Wire> doubledAfter) {
  /** What is given can't be changed afterwards. */
  public Difference {
    nets = List.copyOf(nets);
  }

  /**
   * How two revisions are compared.
   *
   * @param told renames that the user knows of, old name to new
   * @param search whether others are looked for
   * @param inner whether an item only joins wires: a splice or strip
   * @param netsOnly whether only nets are compared: a list that was built from readings knows no
   *     wires, and takes closed switches for joins
   */
  public record Options(
      Map<String, String> told, boolean search, Predicate<String> inner, boolean netsOnly) {}

  /** Compares two revisions. */
  public static Difference of(Harness earlier, Harness later, Options options) {
    if (options.netsOnly()) {
      return netsOnly(earlier, later, options);
    }
    RenameFinder.Result names = RenameFinder.find(earlier, later, options.told(), options.search());
    List<Wire> doubledBefore = new ArrayList<>();
    Harness before = once(names.renaming().harness(earlier), doubledBefore);
    List<Wire> doubledAfter = new ArrayList<>();
    Harness after = once(later, doubledAfter);
    WireMatches matches = WireMatches.of(before.wires(), after.wires());
    List<Change> changes = new ArrayList<>();
    matches.removed().forEach(wire -> changes.add(new Removed(wire)));
    matches.added().forEach(wire -> changes.add(new Added(wire)));
    matches.pairs().forEach(pair -> changes(pair, changes));
    items(before, after, changes);
    links(before, after, changes);
    contacts(before, after, changes);
    normalPositions(before, after, changes);
    parts(before, after, changes);
    NetChanges nets = new NetChanges(before, after, options.inner());
    return new Difference(
        before,
        after,
        names.renames(),
        names.possible(),
        List.copyOf(changes),
        nets.changes(),
        nets.sameContactsAndParts(),
        matches.ties(),
        List.copyOf(doubledBefore),
        List.copyOf(doubledAfter));
  }

  private static Difference netsOnly(Harness earlier, Harness later, Options options) {
    RenameFinder.Result names = RenameFinder.find(earlier, later, options.told(), false);
    Harness before = names.renaming().harness(earlier);
    return new Difference(
        before,
        later,
        names.renames(),
        List.of(),
        List.of(),
        new NetChanges(closed(before), closed(later), options.inner()).changes(),
        true,
        List.of(),
        List.of(),
        List.of());
  }

  /** The unit with the contacts that are closed in the normal state for jumpers. */
  private static Harness closed(Harness harness) {
    List<Link> joins = new ArrayList<>(harness.links());
    for (Switch one : harness.switches()) {
      for (Switch.Contact contact : one.contacts()) {
        if (contact.state().equals(one.normalState())) {
          joins.add(new Link(contact.from(), contact.to(), "", contact.place()));
        }
      }
    }
    return harness.withLinks(joins);
  }

  /** By what a row is known that is written twice: whichever end comes first. */
  private record Row(String wire, Set<Point> ends) {}

  /** Each wire once: a row that is written twice is one wire. */
  private static Harness once(Harness harness, List<Wire> doubled) {
    Set<Row> seen = new HashSet<>();
    List<Wire> once = new ArrayList<>();
    for (Wire wire : harness.wires()) {
      Set<Point> ends = Set.of(wire.from(), wire.to());
      if (Renaming.isUnnamed(wire) || seen.add(new Row(wire.name(), ends))) {
        once.add(wire);
      } else {
        doubled.add(wire);
      }
    }
    return harness.withWires(once);
  }

  private static void changes(WireMatches.Pair pair, List<Change> changes) {
    Wire before = pair.before();
    Wire after = pair.after();
    List<MovedEnd> ends = new ArrayList<>();
    for (Wire.End end : Wire.End.values()) {
      Point now = after.at(pair.flipped() ? end.opposite() : end);
      if (!before.at(end).equals(now)) {
        ends.add(new MovedEnd(before.at(end), now));
      }
    }
    if (!ends.isEmpty()) {
      changes.add(new Moved(before, after, List.copyOf(ends)));
    }
    boolean unnamed = Renaming.isUnnamed(before) && Renaming.isUnnamed(after);
    if (!unnamed && !before.name().equals(after.name())) {
      changes.add(new Renumbered(before, after));
    }
    for (Field field : Field.values()) {
      String old = field.of(before);
      String now = counterpart(field, pair.flipped()).of(after);
      if (!Field.same(old, now)) {
        changes.add(new Altered(before, after, field, old, now));
      }
    }
  }

  private static Field counterpart(Field field, boolean flipped) {
    if (!flipped) {
      return field;
    }
    return field == Field.FROM_CONTACT
        ? Field.TO_CONTACT
        : field == Field.TO_CONTACT ? Field.FROM_CONTACT : field;
  }

  private static void items(Harness before, Harness after, List<Change> changes) {
    Map<String, Item> olds = new LinkedHashMap<>();
    before.items().forEach(item -> olds.put(item.ref(), item));
    Map<String, Item> news = new LinkedHashMap<>();
    after.items().forEach(item -> news.put(item.ref(), item));
    Set<String> oldRefs = refs(before);
    Set<String> newRefs = refs(after);
    oldRefs.stream()
        .filter(ref -> !newRefs.contains(ref))
        .forEach(ref -> changes.add(new Change.ItemDropped(ref)));
    newRefs.stream()
        .filter(ref -> !oldRefs.contains(ref))
        .forEach(ref -> changes.add(new Change.ItemAdded(ref)));
    news.forEach((ref, now) -> altered(Optional.ofNullable(olds.get(ref)), now, changes));
  }

  private static void altered(Optional<Item> before, Item after, List<Change> changes) {
    if (before.isEmpty()) {
      return;
    }
    for (ItemField field : ItemField.values()) {
      String old = field.of(before.get());
      String now = field.of(after);
      if (!Field.same(old, now)) {
        changes.add(new Change.ItemAltered(after, field, old, now));
      }
    }
  }

  private static Set<String> refs(Harness harness) {
    Set<String> refs = new TreeSet<>(NaturalOrder.INSTANCE);
    harness.pointsAsListed().forEach(point -> refs.add(point.ref()));
    harness.items().forEach(item -> refs.add(item.ref()));
    return refs;
  }

  private static void links(Harness before, Harness after, List<Change> changes) {
    compare(
        before.links(),
        after.links(),
        link -> new TreeSet<>(List.of(link.from(), link.to())).toString(),
        (Link link, Boolean added) -> changes.add(new Change.Jumper(link, added)));
  }

  private static void contacts(Harness before, Harness after, List<Change> changes) {
    compare(
        before.switches().stream().flatMap(one -> one.contacts().stream()).toList(),
        after.switches().stream().flatMap(one -> one.contacts().stream()).toList(),
        contact ->
            contact.ref()
                + "\t"
                + contact.state()
                + "\t"
                + new TreeSet<>(List.of(contact.from(), contact.to())),
        (Switch.Contact one, Boolean added) -> changes.add(new Change.SwitchContact(one, added)));
  }

  /** What is blank in the column State means another thing then. */
  private static void normalPositions(Harness before, Harness after, List<Change> changes) {
    for (Switch old : before.switches()) {
      after.switches().stream()
          .filter(now -> now.ref().equals(old.ref()))
          .filter(now -> !now.normalState().equals(old.normalState()))
          .forEach(
              now ->
                  changes.add(
                      new Change.NormalPosition(old.ref(), old.normalState(), now.normalState())));
    }
  }

  private static void parts(Harness before, Harness after, List<Change> changes) {
    compare(
        before.parts(),
        after.parts(),
        part ->
            part.ref()
                + "\t"
                + part.kind()
                + "\t"
                + part.ohms()
                + "\t"
                + (part.kind().readsTheSameReversed()
                    ? new TreeSet<>(List.of(part.from(), part.to()))
                    : List.of(part.anode(), part.cathode())),
        (Part part, Boolean added) -> changes.add(new Change.OfPart(part, added)));
  }

  private static <T> void compare(
      List<T> before, List<T> after, Function<T, String> key, BiConsumer<T, Boolean> changed) {
    Map<String, List<T>> olds = new TreeMap<>();
    before.forEach(one -> olds.computeIfAbsent(key.apply(one), k -> new ArrayList<>()).add(one));
    List<T> added = new ArrayList<>();
    for (T one : after) {
      List<T> same = olds.getOrDefault(key.apply(one), List.of());
      if (same.isEmpty()) {
        added.add(one);
      } else {
        same.remove(same.size() - 1);
      }
    }
    olds.values().forEach(rest -> rest.forEach(one -> changed.accept(one, false)));
    added.forEach(one -> changed.accept(one, true));
  }

  /** Whether the two revisions join the same points, by the proof of {@link NetChanges}. */
  public boolean isElectricallySame() {
    return nets.isEmpty() && sameContactsAndParts;
  }

  /**
   * Whether the later list tells wires alone where the earlier one told items, parts and contacts:
   * what it leaves out is then not taken out of the unit.
   */
  public boolean isOfWiresAlone() {
    return tellsKinds(before)
        && !tellsKinds(after)
        && after.parts().isEmpty()
        && after.switches().isEmpty();
  }

  private static boolean tellsKinds(Harness harness) {
    return harness.items().stream().anyMatch(item -> !item.kind().isEmpty());
  }

  /** Whether nothing at all differs. */
  public boolean isEmpty() {
    return changes.isEmpty() && renames.isEmpty() && nets.isEmpty();
  }

  /** How many changes are of a kind. */
  public <T extends Change> List<T> changes(Class<T> kind) {
    return changes.stream().filter(kind::isInstance).map(kind::cast).toList();
  }
}
