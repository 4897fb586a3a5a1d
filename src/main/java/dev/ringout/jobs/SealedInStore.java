package dev.ringout.jobs;

import dev.ringout.seal.Digest;
import dev.ringout.seal.KeptInput;
import dev.ringout.seal.SealFinding;
import dev.ringout.seal.SealFinding.Kind;
import dev.ringout.source.FileBytes;
import dev.ringout.store.Entry;
import dev.ringout.store.HarnessFile;
import dev.ringout.store.Head;
import dev.ringout.store.Session;
import dev.ringout.store.Store;
import dev.ringout.store.StoreFinding;
import dev.ringout.store.StoreTrouble;
import dev.ringout.store.StoredUnit;
import dev.ringout.store.Stores;
import dev.ringout.words.KeptInputWords;
import dev.ringout.words.StoreWords;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Whether a store still holds what a record was made from. Each digest is made anew from the rows;
 * those that the store keeps beside them show what was changed, and never that nothing was.
 */
final class SealedInStore {
  private final Store store;
  private final String shown;
  private final List<SealFinding> findings = new ArrayList<>();

  private SealedInStore(Store store, String shown) {
    this.store = store;
    this.shown = shown;
  }

  /** Looks for each of them; a store is opened only where there is one to look for. */
  static List<SealFinding> look(List<KeptInput> kept, StoreAtHand at) {
    if (kept.isEmpty()) {
      return List.of();
    }
    SealedInStore look;
    try {
      look = new SealedInStore(at.open(), at.shown());
    } catch (StoreTrouble e) {
      return kept.stream().map(input -> notFound(input, at.shown(), e)).toList();
    }
    Sorted sorted = Sorted.of(kept);
    sorted.lists().forEach((list, files) -> look.orTrouble(files, () -> look.list(list, files)));
    sorted.units().values().forEach(tests -> look.orTrouble(tests, () -> look.unit(tests)));
    return List.copyOf(look.findings);
  }

  private static SealFinding notFound(KeptInput input, String shown, StoreTrouble why) {
    return new SealFinding(
        Kind.KEPT_NOT_FOUND, KeptInputWords.of(input), shown + ": " + why.text());
  }

  /** By the lists and the units that they are of, in their order. */
  private record Sorted(
      Map<String, List<KeptInput.ListFile>> lists, Map<UnitKey, List<KeptInput.Test>> units)
      implements KeptInput.Cases<Boolean> {
    static Sorted of(List<KeptInput> kept) {
      Sorted sorted = new Sorted(new LinkedHashMap<>(), new LinkedHashMap<>());
      kept.forEach(input -> input.match(sorted));
      return sorted;
    }

    @Override
    public Boolean listFile(KeptInput.ListFile file) {
      return lists.computeIfAbsent(file.listSha256(), list -> new ArrayList<>()).add(file);
    }

    @Override
    public Boolean test(KeptInput.Test test) {
      UnitKey unit = new UnitKey(FromStore.key(test.serialNumber()), test.listSha256());
      return units.computeIfAbsent(unit, key -> new ArrayList<>()).add(test);
    }
  }

  private record UnitKey(String serial, String list) {}

  private interface Look {
    void run() throws StoreTrouble;
  }

  /** What a store that fails half way has shown of a thing is not all of it. */
  private void orTrouble(List<? extends KeptInput> inputs, Look look) {
    int before = findings.size();
    try {
      look.run();
    } catch (StoreTrouble e) {
      findings.subList(before, findings.size()).removeIf(one -> !differs(one));
      inputs.forEach(input -> findings.add(notFound(input, shown, e)));
    }
  }

  private static boolean differs(SealFinding one) {
    return one.state() == SealFinding.State.DIFFERS;
  }

  private void add(Kind kind, KeptInput input, String detail) {
    findings.add(new SealFinding(kind, KeptInputWords.of(input), detail));
  }

  private void list(String digest, List<KeptInput.ListFile> sealed) throws StoreTrouble {
    Optional<HarnessFile> list = store.harness(digest);
    if (list.isEmpty()) {
      sealed.forEach(file -> add(Kind.KEPT_NO_SUCH_LIST, file, shown));
      return;
    }
    int before = findings.size();
    for (KeptInput.ListFile file : sealed) {
      add(file(file, list.get()), file, "");
    }
    boolean told = findings.subList(before, findings.size()).stream().anyMatch(one -> differs(one));
    if (!list.get().isAsKept() && !told) {
      findings.add(SealFinding.of(Kind.KEPT_OTHER_FILES, "list " + sealed.get(0).list()));
    }
  }

  private static Kind file(KeptInput.ListFile sealed, HarnessFile list) {
    List<String> digests =
        list.parts().stream()
            .filter(part -> part.name().equals(sealed.file()))
            .map(SealedInStore::digest)
            .toList();
    if (digests.isEmpty()) {
      return Kind.KEPT_GONE;
    }
    return digests.equals(List.of(sealed.sha256())) ? Kind.KEPT_SAME : Kind.KEPT_OTHER_BYTES;
  }

  private static String digest(FileBytes part) {
    return Digest.of(part.first(part.size()));
  }

  private void unit(List<KeptInput.Test> sealed) throws StoreTrouble {
    KeptInput.Test first = sealed.get(0);
    Optional<StoredUnit> unit = store.unit(FromStore.key(first.serialNumber()), first.listSha256());
    if (unit.isEmpty()) {
      sealed.forEach(test -> add(Kind.KEPT_NO_SUCH_UNIT, test, shown));
      return;
    }
    List<Session> sessions = store.sessions(unit.get());
    for (KeptInput.Test test : sealed) {
      Optional<Session> session =
          sessions.stream().filter(one -> one.number() == test.number()).findFirst();
      if (session.isPresent()) {
        test(test, unit.get(), session.get(), endBefore(session.get(), sessions));
      } else {
        add(Kind.KEPT_GONE, test, "");
      }
    }
    int last = sealed.stream().mapToInt(KeptInput.Test::number).max().orElse(0);
    long since = sessions.stream().filter(one -> one.number() > last).count();
    if (since > 0) {
      findings.add(new SealFinding(Kind.KEPT_TESTS_SINCE, KeptInputWords.unit(first), "" + since));
    }
  }

  private String endBefore(Session session, List<Session> sessions) throws StoreTrouble {
    String end = "";
    for (Session one : sessions) {
      if (one.number() == session.number() - 1) {
        end = store.head(one.id()).map(Head::hash).orElse("");
      }
    }
    return end;
  }

  private void test(KeptInput.Test sealed, StoredUnit unit, Session session, String before)
      throws StoreTrouble {
    List<Entry> entries = store.entries(session);
    List<StoreFinding> broken = Stores.broken(unit, session, before, entries);
    Optional<StoreFinding> within =
        broken.stream().filter(one -> one.seq() <= sealed.entries()).findFirst();
    if (within.isPresent()) {
      add(Kind.KEPT_NOT_AS_WRITTEN, sealed, StoreWords.what(within.get()));
      return;
    }
    if (!new Head(sealed.entries(), sealed.lastHash()).isIn(unit, session, before, entries)) {
      add(Kind.KEPT_OTHER_ENTRIES, sealed, "");
      return;
    }
    add(Kind.KEPT_SAME, sealed, "");
    int since = entries.size() - sealed.entries();
    if (since > 0) {
      add(Kind.KEPT_ENTRIES_SINCE, sealed, "" + since);
    }
    broken.forEach(one -> add(Kind.KEPT_WRONG_SINCE, sealed, StoreWords.what(one)));
  }
}
