package dev.ringout.store;

import dev.ringout.seal.Digest;
import dev.ringout.store.StoreFinding.Kind;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The hashes of what was said of people: one chain, whoever says it and at whichever bench. */
final class PeopleChain {
  /** In the place of a test's id. */
  private static final String ID = "people";

  private static final String BEGIN = Digest.of(ID);

  private PeopleChain() {}

  /** Where it ends. */
  static Head end(Optional<Head> last) {
    return last.orElse(new Head(0, BEGIN));
  }

  /** What is said as entries, behind where the chain ends. */
  static List<Entry> chained(Head end, List<SaidOfPeople> said) {
    List<Entry> entries = new ArrayList<>(said.size());
    Head last = end;
    for (SaidOfPeople one : said) {
      Entry next = HashChain.next(ID, last, one.kind().word(), one.at(), one.who(), one.body());
      entries.add(next);
      last = Head.at(next);
    }
    return entries;
  }

  /** The first that is not as it was written; absent where all of them are. */
  static Optional<StoreFinding> broken(List<Entry> chain) {
    return HashChain.firstBreak(BEGIN, chain, entry -> HashChain.isAsWritten(ID, entry))
        .map(wrong -> finding(wrong.seq(), wrong.kind()));
  }

  private static StoreFinding finding(int seq, Kind kind) {
    return new StoreFinding("", "", ID, seq, kind);
  }

  /**
   * Copies what another store does not have; where both went on in two ways that is told, and
   * nothing is copied.
   */
  static Optional<StoreFinding> copy(Store from, Store to) throws StoreTrouble {
    List<Entry> here = from.people();
    List<Entry> there = to.people();
    int both = Math.min(here.size(), there.size());
    if (!here.subList(0, both).equals(there.subList(0, both))) {
      return Optional.of(finding(both, Kind.TWO_HISTORIES));
    }
    to.takePeople(here.subList(both, here.size()));
    return Optional.empty();
  }
}
