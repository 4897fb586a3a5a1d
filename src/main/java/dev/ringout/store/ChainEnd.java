package dev.ringout.store;

import java.util.List;

/**
 * How far a test had come: by its last hash, in which all before it is. Later entries do not change
 * it.
 *
 * @param entries how many there were
 * @param hash of the last of them
 */
public record ChainEnd(int entries, String hash) {

  /**
   * Whether a test still begins so: by the fields of its entries, each hash made anew. Those that
   * are kept beside them are not asked, for whoever changes an entry can change its hash.
   */
  public boolean isIn(Session session, List<Entry> chain) {
    if (entries < 1 || entries > chain.size()) {
      return false;
    }
    String last = HashChain.of(session);
    for (Entry entry : chain.subList(0, entries)) {
      last = HashChain.of(session, entry, last);
    }
    return last.equals(hash);
  }
}
