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
   * what the other says by now. What was decided there is taken into a store of no people, and
   * where somebody says so; else it is told: whoever has a bench to himself can make himself
   * anybody in its file.
   *
   * @param decisions whether what was decided is taken; where both decided something it can't be
   */
  static List<Parted> copy(Store from, Store to, boolean decisions) throws StoreTrouble {
    List<Entry> here = from.people();
    Optional<StoreFinding> broken = broken(here);
    if (broken.isPresent()) {
      return List.of(new Parted(broken.get(), Optional.empty(), Optional.empty()));
    }
    List<Entry> there = to.people();
    int both = Parted.common(here, there);
    List<Entry> behind = here.subList(both, here.size());
    List<Entry> more = behind.stream().filter(entry -> !isThere(entry, there)).toList();
    List<Entry> decided = more.stream().filter(entry -> told(entry).isEmpty()).toList();
    boolean goesOn = both == there.size();
    if (goesOn && (decisions || there.isEmpty() || decided.isEmpty())) {
      to.takePeople(behind);
      return List.of();
    }
    if (decisions && !decided.isEmpty()) {
      return List.of(Parted.at(finding(both, Kind.TWO_HISTORIES), here, there));
    }
    for (Entry entry : more) {
      Optional<SaidOfPeople> told = told(entry);
      if (told.isPresent()) {
        to.tell(told.get());
      }
    }
    return decided.stream().map(PeopleChain::decidedElsewhere).toList();
  }

  private static Parted decidedElsewhere(Entry entry) {
    return new Parted(
        finding(entry.seq(), Kind.DECIDED_ELSEWHERE), Optional.of(entry), Optional.empty());
  }

  /** What only tells, to be told again; absent of everything else. */
  private static Optional<SaidOfPeople> told(Entry entry) {
    return SaidOfPeople.Kind.of(entry.kind())
        .filter(SaidOfPeople.Kind::onlyTells)
        .map(kind -> new SaidOfPeople(kind, entry.at(), entry.who(), entry.body()));
  }

  private static boolean isThere(Entry entry, List<Entry> there) {
    return there.stream()
        .anyMatch(
            one ->
                one.at().equals(entry.at())
                    && one.who().equals(entry.who())
                    && one.kind().equals(entry.kind())
                    && one.body().equals(entry.body()));
  }
}
