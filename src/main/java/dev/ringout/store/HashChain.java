package dev.ringout.store;

import dev.ringout.seal.Digest;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

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
    return of(session.id(), entry).equals(entry.hash());
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
    String previous = end.hash();
    for (Entry.Draft draft : drafts) {
      int seq = end.seq() + entries.size() + 1;
      String kind = draft.kind().word();
      String hash = of(session.id(), seq, kind, draft.at(), draft.who(), draft.body(), previous);
      entries.add(new Entry(seq, draft.at(), draft.who(), kind, draft.body(), previous, hash));
      previous = hash;
    }
    return entries;
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
