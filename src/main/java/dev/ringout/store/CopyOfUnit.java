package dev.ringout.store;

import dev.ringout.store.StoreFinding.Kind;
import java.util.List;
import java.util.Optional;

/** One unit, test by test, from a store into another: up to where both went on in two ways. */
final class CopyOfUnit {
  private final Store from;
  private final Store to;
  private final HarnessFile harness;
  private final StoredUnit unit;
  private long copied;
  private long grown;
  private Optional<StoreFinding> parted = Optional.empty();

  CopyOfUnit(Store from, Store to, HarnessFile harness, StoredUnit unit) {
    this.from = from;
    this.to = to;
    this.harness = harness;
    this.unit = unit;
  }

  void run() throws StoreTrouble {
    for (Session session : from.sessions(unit)) {
      if (!isCopied(session)) {
        // What comes after it hangs on it.
        parted = Optional.of(StoreFinding.of(unit, session, 0, Kind.TWO_HISTORIES));
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

  /** The test from which on nothing was copied; absent where all of it is there. */
  Optional<StoreFinding> parted() {
    return parted;
  }

  private boolean isCopied(Session session) throws StoreTrouble {
    Optional<Head> there = to.head(session.id());
    Optional<Head> here = from.head(session.id());
    if (there.isEmpty()) {
      if (to.sessions(unit).stream().anyMatch(one -> one.number() == session.number())) {
        return false;
      }
      to.take(harness, unit, session, from.entries(session));
      copied++;
      return true;
    }
    if (there.equals(here)) {
      return true;
    }
    Optional<List<Entry>> more = behind(there.get(), from.entries(session));
    if (more.isPresent()) {
      to.takeMore(session, there.get(), more.get());
      grown++;
      return true;
    }
    return here.isPresent() && behind(here.get(), to.entries(session)).isPresent();
  }

  /** What stands behind an entry; absent where it is none of these. */
  private static Optional<List<Entry>> behind(Head end, List<Entry> entries) {
    for (int i = 0; i < entries.size(); i++) {
      if (entries.get(i).seq() == end.seq() && entries.get(i).hash().equals(end.hash())) {
        return Optional.of(entries.subList(i + 1, entries.size()));
      }
    }
    return Optional.empty();
  }
}
