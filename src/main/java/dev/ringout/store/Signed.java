package dev.ringout.store;

import dev.ringout.store.StoreFinding.Kind;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** Whether the signatures of a unit are of what stands before them, session by session. */
final class Signed {
  private final StoredUnit unit;
  private final Map<String, Set<String>> before = new LinkedHashMap<>();

  Signed(StoredUnit unit) {
    this.unit = unit;
  }

  /** What is wrong with the signatures of the next session, whose chain holds. */
  List<StoreFinding> next(Session session, List<Entry> chain) {
    List<StoreFinding> findings = new ArrayList<>();
    for (Entry entry : chain) {
      if (entry.is(EntryKind.SIGNATURE) && !isGood(entry)) {
        findings.add(StoreFinding.of(unit, session, entry.seq(), Kind.SIGNATURE_WRONG));
      }
    }
    before.put(session.id(), chain.stream().map(Entry::hash).collect(Collectors.toSet()));
    return findings;
  }

  private boolean isGood(Entry entry) {
    Optional<Signature> signature = Signature.of(entry.body());
    return signature.isPresent()
        && signature.get().who().equals(entry.who())
        && signature.get().at().equals(entry.at())
        && signature.get().isOf(entry.previous())
        && signature.get().tests().keySet().equals(before.keySet())
        && signature.get().tests().entrySet().stream()
            .allMatch(
                test -> before.getOrDefault(test.getKey(), Set.of()).contains(test.getValue()));
  }
}
