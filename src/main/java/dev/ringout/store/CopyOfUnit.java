package dev.ringout.store;

import dev.ringout.store.StoreFinding.Kind;
import java.time.Instant;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * One unit, test by test, from a store into another. What the other does not have yet is copied as
 * it is. A test that was begun while the other went on without knowing of it is handed over: it
 * becomes the next of the unit there, as a sheet does that is brought in.
 */
final class CopyOfUnit {
  private final Store from;
  private final Store to;
  private final HarnessFile harness;
  private final StoredUnit unit;
  private long copied;
  private long grown;
  private long handedOver;
  private final List<Parted> parted = new ArrayList<>();

  /** Whether both know a test of the unit: else two units may have been given one number. */
  private boolean isKnownToBoth;

  /** Whether the tests of the unit have other numbers or other hashes there from here on. */
  private boolean apart;

  CopyOfUnit(Store from, Store to, HarnessFile harness, StoredUnit unit) {
    this.from = from;
    this.to = to;
    this.harness = harness;
    this.unit = unit;
  }

  void run() throws StoreTrouble {
    Map<Session, List<Entry>> chains = from.chains(unit);
    List<StoreFinding> broken = Stores.broken(unit, chains);
    if (!broken.isEmpty()) {
      // What was changed here is not made to look as if it had been so from the beginning.
      broken.forEach(one -> parted.add(new Parted(one, Optional.empty(), Optional.empty())));
      return;
    }
    for (Map.Entry<Session, List<Entry>> test : chains.entrySet()) {
      copy(test.getKey(), test.getValue());
      if (!parted.isEmpty()) {
        // What comes after it hangs on it.
        return;
      }
    }
  }

  long copied() {
    return copied;
  }

  long grown() {
    return grown;
  }

  /** How many of those that were copied have another number there. */
  long handedOver() {
    return handedOver;
  }

  /** From where on nothing was copied, and why; nothing where all of it is there. */
  List<Parted> parted() {
    return parted;
  }

  private void copy(Session session, List<Entry> here) throws StoreTrouble {
    if (to.head(session.id()).isPresent()) {
      isKnownToBoth = true;
      more(session, here);
      return;
    }
    int before = to.sessions(unit).size();
    if (!apart && before == session.number() - 1) {
      to.take(harness, unit, session, here);
      copied++;
    } else {
      apart = true;
      handOver(session, here);
    }
  }

  private void more(Session session, List<Entry> here) throws StoreTrouble {
    List<Entry> there = to.entries(session);
    int both = Parted.common(here, there);
    if (both == there.size()) {
      if (both < here.size()) {
        to.takeMore(session, Head.at(there.get(both - 1)), here.subList(both, here.size()));
        grown++;
      }
      return;
    }
    // Its end is another there: the next was built on the one that is here.
    apart = true;
    if (both < here.size()) {
      moreHandedOver(session, here, there);
    }
  }

  /** A test that was handed over before, and went on here since. */
  private void moreHandedOver(Session session, List<Entry> here, List<Entry> there)
      throws StoreTrouble {
    int both = 0;
    while (both < Math.min(here.size(), there.size()) && saysSame(here, there, both)) {
      both++;
    }
    if (both == here.size()) {
      return;
    }
    List<Session> all = to.sessions(unit);
    boolean isLast = all.get(all.size() - 1).id().equals(session.id());
    Optional<List<Entry.Draft>> drafts = drafts(here.subList(both, here.size()));
    if (both == 0 || both < there.size() || !isLast || drafts.isEmpty()) {
      StoreFinding finding = StoreFinding.of(unit, session, 0, Kind.TWO_HISTORIES);
      parted.add(Parted.at(finding, here, there));
      return;
    }
    to.append(session, Head.at(there.get(both - 1)), drafts.get());
    grown++;
  }

  private static boolean saysSame(List<Entry> here, List<Entry> there, int index) {
    Entry one = here.get(index);
    Entry other = there.get(index);
    return one.at().equals(other.at())
        && one.who().equals(other.who())
        && one.kind().equals(other.kind())
        && one.body().equals(other.body());
  }

  private void handOver(Session session, List<Entry> here) throws StoreTrouble {
    Optional<List<Entry.Draft>> drafts = drafts(here);
    if (drafts.isEmpty() || !isKnownToBoth || wasElsewhere(session, here)) {
      StoreFinding finding = StoreFinding.of(unit, session, 0, Kind.TWO_HISTORIES);
      parted.add(new Parted(finding, Optional.empty(), Optional.empty()));
      return;
    }
    to.add(new NewSession(harness, unit.serial(), session, session.file(), drafts.get()));
    copied++;
    handedOver++;
  }

  /** A unit is at one place: who reads it at another in the same hour reads another unit. */
  private boolean wasElsewhere(Session session, List<Entry> here) throws StoreTrouble {
    Set<String> known = from.sessions(unit).stream().map(Session::id).collect(Collectors.toSet());
    for (Session other : to.sessions(unit)) {
      if (session.isLed()
          && other.isLed()
          && !known.contains(other.id())
          && meet(times(here), times(to.entries(other)))) {
        return true;
      }
    }
    return false;
  }

  private static List<Instant> times(List<Entry> entries) {
    List<Instant> times = new ArrayList<>();
    for (Entry entry : entries) {
      if (EntryKind.of(entry.kind()).filter(EntryKind::isRow).isPresent()) {
        try {
          times.add(Instant.parse(entry.at()));
        } catch (DateTimeParseException e) {
          // A heading is of no time.
        }
      }
    }
    return times.stream().sorted().toList();
  }

  private static boolean meet(List<Instant> one, List<Instant> other) {
    return !one.isEmpty()
        && !other.isEmpty()
        && !one.get(0).isAfter(other.get(other.size() - 1))
        && !other.get(0).isAfter(one.get(one.size() - 1));
  }

  /**
   * Entries to be built on others than before; absent where one can't be: a signature is over the
   * very hashes, and a kind of a later program may be too.
   */
  private static Optional<List<Entry.Draft>> drafts(List<Entry> entries) {
    List<Entry.Draft> drafts = new ArrayList<>();
    for (Entry entry : entries) {
      Optional<EntryKind> kind =
          EntryKind.of(entry.kind()).filter(one -> one != EntryKind.SIGNATURE);
      if (kind.isEmpty()) {
        return Optional.empty();
      }
      drafts.add(new Entry.Draft(kind.get(), entry.at(), entry.who(), entry.body()));
    }
    return Optional.of(drafts);
  }
}
