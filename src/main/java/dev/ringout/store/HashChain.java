package dev.ringout.store;

import dev.ringout.seal.Digest;
import dev.ringout.store.StoreFinding.Kind;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

/**
 * The hashes of a session: each entry's is over its own fields and the hash before, the first over
 * what the session as a whole is. An entry that is changed, or taken out, breaks it.
 */
final class HashChain {
  private HashChain() {}

  /**
   * The hash of a session as a whole, with which its chain begins, and of whose it is.
   *
   * @param before the last hash of the unit's session before; empty of the first
   */
  static String of(StoredUnit unit, Session session, String before) {
    return digest(
        before,
        unit.serial(),
        unit.title(),
        unit.drawing(),
        unit.revision(),
        session.id(),
        session.unitKey(),
        session.harness(),
        Integer.toString(session.number()),
        session.station(),
        session.who(),
        session.started(),
        session.file(),
        session.digest(),
        session.program(),
        session.added());
  }

  /** The hash of an entry, after the one that is kept as that before it. */
  static String of(String session, Entry entry) {
    return of(session, entry, entry.previous());
  }

  /** Whether the fields of an entry are those of which its hash is. */
  static boolean isAsWritten(Session session, Entry entry) {
    return isAsWritten(session.id(), entry);
  }

  /** The same of an entry of another chain, which is known by a name. */
  static boolean isAsWritten(String session, Entry entry) {
    return of(session, entry).equals(entry.hash());
  }

  /** The hash of an entry after another. */
  static String of(String session, Entry entry, String previous) {
    return of(session, entry.seq(), entry.kind(), entry.at(), entry.who(), entry.body(), previous);
  }

  private static String of(
      String session, int seq, String kind, String at, String who, String body, String previous) {
    return digest(session, Integer.toString(seq), at, who, kind, body, previous);
  }

  /** Where a session that has no entry yet ends. */
  static Head start(StoredUnit unit, Session session, String before) {
    return new Head(0, of(unit, session, before));
  }

  /** Drafts as entries of a session, behind where it ends. */
  static List<Entry> chained(Session session, Head end, List<Entry.Draft> drafts) {
    List<Entry> entries = new ArrayList<>(drafts.size());
    Head last = end;
    for (Entry.Draft draft : drafts) {
      Entry next =
          next(session.id(), last, draft.kind().word(), draft.at(), draft.who(), draft.body());
      entries.add(next);
      last = Head.at(next);
    }
    return entries;
  }

  /** What happened as an entry, behind where its chain ends. */
  static Entry next(String session, Head end, String kind, String at, String who, String body) {
    int seq = end.seq() + 1;
    String hash = of(session, seq, kind, at, who, body, end.hash());
    return new Entry(seq, at, who, kind, body, end.hash(), hash);
  }

  /** Where a chain is not as it was written, and how. */
  record Break(int seq, Kind kind) {}

  /**
   * The first break of a chain, for all after it follow; absent where there is none.
   *
   * @param start the hash with which it begins
   */
  static Optional<Break> firstBreak(String start, List<Entry> chain, Predicate<Entry> isAsWritten) {
    String previous = start;
    int seq = 0;
    for (Entry entry : chain) {
      seq++;
      if (entry.seq() != seq) {
        return Optional.of(new Break(seq, Kind.ENTRY_MISSING));
      }
      if (!isAsWritten.test(entry)) {
        return Optional.of(new Break(seq, Kind.ENTRY_CHANGED));
      }
      if (!entry.previous().equals(previous)) {
        return Optional.of(new Break(seq, Kind.CHAIN_BROKEN));
      }
      previous = entry.hash();
    }
    return Optional.empty();
  }

  /** Fields with their lengths before them: no two lists of fields have one text. */
  private static String digest(String... fields) {
    StringBuilder text = new StringBuilder();
    for (String field : fields) {
      text.append(field.getBytes(StandardCharsets.UTF_8).length).append(':').append(field);
    }
    return Digest.of(text.toString());
  }
}
