package dev.ringout.store;

import dev.ringout.seal.Digest;
import dev.ringout.store.StoreFinding.Kind;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** All of a store, read from end to end. */
final class WholeStore {
  private final Store store;
  private final List<StoreFinding> findings = new ArrayList<>();
  private final StringBuilder all = new StringBuilder();
  private long parts;
  private long units;
  private long sessions;
  private long entries;

  WholeStore(Store store) {
    this.store = store;
  }

  /** What all of it says. */
  StoreState state() throws StoreTrouble {
    Optional<String> damage = store.damage();
    if (damage.isPresent()) {
      findings.add(new StoreFinding("", "", damage.get(), 0, Kind.DAMAGED));
    }
    // A server sorts as its language does, a file by its bytes.
    List<String> lists = store.harnesses().stream().sorted().toList();
    for (String digest : lists) {
      Optional<HarnessFile> list = store.harness(digest);
      list.ifPresentOrElse(
          this::list, () -> findings.add(new StoreFinding("", "", digest, 0, Kind.LIST_CHANGED)));
      List<List<Entry>> said = new ArrayList<>();
      for (StoredUnit unit : sorted(store.siblings(digest))) {
        for (List<Entry> test : unit(unit)) {
          said.add(test.stream().filter(entry -> entry.is(EntryKind.LIST)).toList());
        }
      }
      list.filter(one -> isRenamed(one, said))
          .ifPresent(
              one -> findings.add(new StoreFinding("", "", one.file(), 0, Kind.LIST_RENAMED)));
    }
    List<Station> stations =
        store.stations().stream().sorted(Comparator.comparing(Station::name)).toList();
    for (Station station : stations) {
      all.append(Fields.line(station.name(), station.added(), station.body())).append('\n');
    }
    List<Entry> people = store.people();
    PeopleChain.broken(people).ifPresent(findings::add);
    if (!people.isEmpty()) {
      all.append("people ").append(Head.hashOf(people)).append('\n');
    }
    reached(lists.size());
    return new StoreState(
        lists.size(), units, sessions, entries, Digest.of(all.toString()), findings);
  }

  private static List<StoredUnit> sorted(List<StoredUnit> units) {
    return units.stream().sorted(Comparator.comparing(StoredUnit::key)).toList();
  }

  private void list(HarnessFile list) {
    if (!list.isAsKept()) {
      findings.add(new StoreFinding("", "", list.file(), 0, Kind.LIST_CHANGED));
    }
    parts += list.parts().size();
    all.append(
            Fields.line(list.digest(), list.title(), list.drawing(), list.revision(), list.file()))
        .append('\n');
  }

  /** A test of a program that did not say them may have been the first to bring the list. */
  private static boolean isRenamed(HarnessFile list, List<List<Entry>> said) {
    return !said.isEmpty()
        && said.stream().noneMatch(List::isEmpty)
        && said.stream().flatMap(List::stream).noneMatch(list::isNamedIn);
  }

  private Collection<List<Entry>> unit(StoredUnit unit) throws StoreTrouble {
    units++;
    all.append(Fields.line(unit.key(), unit.serial())).append('\n');
    Map<Session, List<Entry>> chains = store.chains(unit);
    if (chains.isEmpty()) {
      findings.add(new StoreFinding(unit.serial(), "", "", 0, Kind.SESSION_MISSING));
    }
    findings.addAll(Stores.broken(unit, chains));
    for (Map.Entry<Session, List<Entry>> test : chains.entrySet()) {
      sessions++;
      entries += test.getValue().size();
      all.append(test.getKey().id()).append(' ').append(Head.hashOf(test.getValue())).append('\n');
    }
    return chains.values();
  }

  /** What is in the tables and was not reached from list, unit and test belongs to nothing. */
  private void reached(long lists) throws StoreTrouble {
    Map<String, Long> reached = new LinkedHashMap<>();
    reached.put("harness", lists);
    reached.put("harness_part", parts);
    reached.put("unit", units);
    reached.put("session", sessions);
    reached.put("entry", entries);
    for (Map.Entry<String, Long> table : store.rows().entrySet()) {
      long more = table.getValue() - reached.getOrDefault(table.getKey(), table.getValue());
      if (more > 0) {
        findings.add(new StoreFinding("", "", table.getKey(), (int) more, Kind.WITHOUT_OWNER));
      }
    }
  }
}
