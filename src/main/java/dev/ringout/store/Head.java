package dev.ringout.store;

import java.util.List;

/**
 * Where a session ends for now: by its last hash, in which all before it is. Later entries do not
 * change it.
 *
 * @param seq of its last entry
 * @param hash of its last entry
 */
public record Head(int seq, String hash) {

  /** Where a chain ends with an entry. */
  static Head at(Entry last) {
    return new Head(last.seq(), last.hash());
  }

  /** The last hash of a chain; empty where nothing happened in it. */
  public static String hashOf(List<Entry> chain) {
    return chain.isEmpty() ? "" : chain.get(chain.size() - 1).hash();
  }

  /**
   * Whether a session still begins so: by the fields of its entries, each hash made anew. Those
   * that are kept beside them are not asked, for whoever changes an entry can change its hash.
   *
   * @param before the last hash of the unit's session before; empty of the first
   */
  public boolean isIn(StoredUnit unit, Session session, String before, List<Entry> chain) {
    if (seq < 1 || seq > chain.size()) {
      return false;
    }
    String last = HashChain.of(unit, session, before);
    for (Entry entry : chain.subList(0, seq)) {
      last = HashChain.of(session.id(), entry, last);
    }
    return last.equals(hash);
  }
}
