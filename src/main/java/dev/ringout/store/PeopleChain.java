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
   * Copies what another store does not have. Who came in at a bench without network is told behind
   * what the other says by now; where both decided something, that is told, and nothing is copied.
   */
  static Optional<Parted> copy(Store from, Store to) throws StoreTrouble {
    List<Entry> here = from.people();
    Optional<StoreFinding> broken = broken(here);
    if (broken.isPresent()) {
      return Optional.of(new Parted(broken.get(), Optional.empty(), Optional.empty()));
    }
    List<Entry> there = to.people();
    int both = Parted.common(here, there);
    List<Entry> more = here.subList(both, here.size());
    if (both == there.size()) {
      to.takePeople(more);
      return Optional.empty();
    }
    List<Optional<SaidOfPeople>> said =
        more.stream().filter(entry -> !isTold(entry, there)).map(PeopleChain::said).toList();
    if (said.stream().anyMatch(Optional::isEmpty)) {
      return Optional.of(Parted.at(finding(both, Kind.TWO_HISTORIES), here, there));
    }
    for (Optional<SaidOfPeople> one : said) {
      to.tell(one.orElseThrow());
    }
    return Optional.empty();
  }

  /** What decides nothing, to be told again; absent of everything else. */
  private static Optional<SaidOfPeople> said(Entry entry) {
    return SaidOfPeople.Kind.of(entry.kind())
        .filter(kind -> !kind.decides())
        .map(kind -> new SaidOfPeople(kind, entry.at(), entry.who(), entry.body()));
  }

  private static boolean isTold(Entry entry, List<Entry> there) {
    return said(entry).isPresent()
        && there.stream()
            .anyMatch(
                one ->
                    one.at().equals(entry.at())
                        && one.who().equals(entry.who())
                        && one.kind().equals(entry.kind())
                        && one.body().equals(entry.body()));
  }
}
