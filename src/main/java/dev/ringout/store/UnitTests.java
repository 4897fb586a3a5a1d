package dev.ringout.store;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * All that was kept of a unit, but for the bytes of its pictures: every entry is held against its
 * hash as it is read, and a picture's bytes are let go then. A few hundred of them would fill the
 * memory.
 *
 * @param chains what happened in each of its tests, in order
 * @param broken what is wrong with them
 */
public record UnitTests(Map<Session, List<Entry>> chains, List<StoreFinding> broken) {
  /** What is given can't be changed afterwards. */
  public UnitTests {
    chains = Collections.unmodifiableMap(new LinkedHashMap<>(chains));
    broken = List.copyOf(broken);
  }

  private record Read(Entry entry, boolean asWritten) {
    static Read of(Session session, Entry entry) {
      boolean asWritten = HashChain.isAsWritten(session, entry);
      return new Read(entry.is(EntryKind.PHOTO) ? spared(entry) : entry, asWritten);
    }

    private static Entry spared(Entry entry) {
      return Photo.About.of(entry.body())
          .map(
              about ->
                  new Entry(
                      entry.seq(),
                      entry.at(),
                      entry.who(),
                      entry.kind(),
                      about.body(),
                      entry.previous(),
                      entry.hash()))
          .orElse(entry);
    }
  }

  /** Reads them. */
  public static UnitTests of(Store store, StoredUnit unit) throws StoreTrouble {
    Map<Session, List<Entry>> chains = new LinkedHashMap<>();
    Map<Session, Set<Integer>> changed = new LinkedHashMap<>();
    for (Session session : store.sessions(unit)) {
      List<Entry> chain = new ArrayList<>();
      Set<Integer> wrong = new HashSet<>();
      for (Read read : store.entries(session, entry -> Read.of(session, entry))) {
        chain.add(read.entry());
        if (!read.asWritten()) {
          wrong.add(read.entry().seq());
        }
      }
      chains.put(session, chain);
      changed.put(session, wrong);
    }
    List<StoreFinding> broken =
        Stores.broken(
            unit,
            chains,
            (session, entry) -> !changed.getOrDefault(session, Set.of()).contains(entry.seq()));
    return new UnitTests(chains, broken);
  }
}
