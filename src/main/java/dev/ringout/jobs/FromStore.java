package dev.ringout.jobs;

import dev.ringout.intake.OneUnit;
import dev.ringout.readings.JobTemplate;
import dev.ringout.readings.UnitHistory;
import dev.ringout.seal.Digest;
import dev.ringout.seal.KeptInput;
import dev.ringout.sheet.TabularFile;
import dev.ringout.source.FileBytes;
import dev.ringout.source.Place;
import dev.ringout.source.Problem;
import dev.ringout.source.Problems;
import dev.ringout.source.Severity;
import dev.ringout.source.UnusableInput;
import dev.ringout.store.Entry;
import dev.ringout.store.EntryKind;
import dev.ringout.store.Fields;
import dev.ringout.store.HarnessFile;
import dev.ringout.store.Head;
import dev.ringout.store.KeptSheets;
import dev.ringout.store.Session;
import dev.ringout.store.Station;
import dev.ringout.store.Store;
import dev.ringout.store.StoreFinding;
import dev.ringout.store.StoreFinding.Kind;
import dev.ringout.store.StoreTrouble;
import dev.ringout.store.StoreTrouble.Reason;
import dev.ringout.store.StoredUnit;
import dev.ringout.store.TakenBack;
import dev.ringout.store.UnitTests;
import dev.ringout.words.StoreWords;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Lists and test sheets from a store, as tables like those of files. */
final class FromStore {
  private final StoreAtHand store;
  private final List<TakenBack> also;
  private final Map<InputName.Unit, List<KeptInput>> read = new LinkedHashMap<>();
  private final Map<InputName.Unit, UnitHistory> noted = new LinkedHashMap<>();

  FromStore(StoreAtHand store) {
    this(store, List.of());
  }

  /**
   * A store as it will be.
   *
   * @param also what is being taken back
   */
  FromStore(StoreAtHand store, List<TakenBack> also) {
    this.store = store;
    this.also = List.copyOf(also);
  }

  /** Where the store is. */
  String shown() {
    return store.shown();
  }

  /** What was handed over of a unit: nothing of it is asked for again to be sealed. */
  List<KeptInput> read(InputName.Unit named) {
    return List.copyOf(read.getOrDefault(named, List.of()));
  }

  /** What was said of a unit beside the test sheets that were handed over of it. */
  UnitHistory history(InputName.Unit named) {
    return noted.getOrDefault(named, UnitHistory.NONE);
  }

  private void note(InputName.Unit named, KeptInput input) {
    read.computeIfAbsent(named, unit -> new ArrayList<>()).add(input);
  }

  /** What is made of a table of the store. */
  interface Use {
    void of(TabularFile table, String shownName) throws UnusableInput;
  }

  /** The key by which a serial number is looked for. */
  static String key(String serial) {
    return Digest.of(OneUnit.keyOf(serial));
  }

  /**
   * The one unit that is named.
   *
   * @param heldAgainst the digest of the list that it is held against: of several units it chooses
   *     one
   * @throws StoreTrouble where there is none, or more than one
   */
  StoredUnit unit(InputName.Unit named, Optional<String> heldAgainst) throws StoreTrouble {
    Optional<String> list = named.list().or(() -> heldAgainst);
    List<StoredUnit> units = store.open().find(key(named.serial()));
    if (units.isEmpty()) {
      throw StoreTrouble.of(Reason.MISSING, "there is no such unit in " + store.shown());
    }
    List<StoredUnit> chosen =
        units.size() == 1
            ? units
            : units.stream()
                .filter(unit -> list.filter(unit.harness()::equals).isPresent())
                .toList();
    if (chosen.isEmpty()) {
      List<String> lists = units.stream().map(StoreWords::list).sorted().toList();
      throw StoreTrouble.of(
          Reason.NOT_UNDERSTOOD,
          "is the serial number of "
              + units.size()
              + " units: of "
              + String.join(", of ", lists)
              + "; give the list as a file beside it");
    }
    return chosen.get(0);
  }

  /** The list that a unit is made to, as it was kept. */
  HarnessFile list(InputName.Unit named) throws StoreTrouble {
    StoredUnit unit = unit(named, Optional.empty());
    HarnessFile list = store.open().harness(unit.harness()).orElseThrow(StoreTrouble::torn);
    if (!list.isAsKept()) {
      throw notAsWritten(new StoreFinding("", "", list.file(), 0, Kind.LIST_CHANGED));
    }
    for (FileBytes part : list.parts()) {
      String digest = Digest.of(part.first(part.size()));
      note(named, new KeptInput.ListFile(list.file(), list.digest(), part.name(), digest));
    }
    return list;
  }

  /** Hands over the test sheets of a unit, in the order in which they were brought in. */
  void sheets(InputName.Unit named, Optional<String> list, Problems problems, Use use)
      throws StoreTrouble, UnusableInput {
    Store open = store.open();
    StoredUnit unit = unit(named, list);
    UnitTests whole = UnitTests.of(open, unit);
    Map<Session, List<Entry>> tests = whole.chains();
    Map<String, Map<Integer, TakenBack>> taken = new LinkedHashMap<>();
    // What was changed behind the program's back is no reading of anybody's.
    for (StoreFinding finding : whole.broken()) {
      throw notAsWritten(finding);
    }
    noted.put(named, NotedInStore.of(open, tests));
    tellOthers(unit, open, problems);
    for (Map.Entry<Session, List<Entry>> test : tests.entrySet()) {
      note(named, test(unit.serial(), test.getKey(), test.getValue()));
      for (Entry entry : test.getValue()) {
        if (entry.is(EntryKind.TAKEN_BACK)) {
          add(TakenBack.of(entry.body()).orElseThrow(StoreTrouble::torn), taken);
        }
      }
    }
    also.forEach(back -> add(back, taken));
    for (Map.Entry<Session, List<Entry>> test : tests.entrySet()) {
      Session session = test.getKey();
      try (KeptSheets sheets =
          KeptSheets.of(
              test.getValue(),
              session.file(),
              taken.getOrDefault(session.id(), Map.of()),
              problems)) {
        if (session.isLed()) {
          for (Map.Entry<String, KeptSheets> part : sheets.parts().entrySet()) {
            use.of(part.getValue(), part.getKey());
          }
          tellUnfinished(session, test.getValue(), problems);
        } else {
          use.of(sheets, session.file());
        }
      }
    }
  }

  /** What was read of it by another list says nothing here, and may say much of the unit. */
  private void tellOthers(StoredUnit unit, Store open, Problems problems) throws StoreTrouble {
    for (StoredUnit other : open.find(unit.key())) {
      if (!other.harness().equals(unit.harness())) {
        problems.warning(
            Place.of("unit:" + unit.serial()),
            "is in the store with another list too, "
                + StoreWords.list(other)
                + ": what was read by that is not among these readings");
      }
    }
  }

  private static void tellUnfinished(Session session, List<Entry> entries, Problems problems) {
    if (!LedTests.isFinished(entries)) {
      problems.add(
          new Problem(
              Place.of(session.file()),
              "",
              Severity.NOTE,
              "test " + session.number() + " is still under way at the bench",
              ""));
    }
  }

  private static void add(TakenBack back, Map<String, Map<Integer, TakenBack>> taken) {
    taken.computeIfAbsent(back.session(), test -> new LinkedHashMap<>()).put(back.seq(), back);
  }

  /** Its chain holds: the last hash is over all of it. */
  private static KeptInput test(String serial, Session session, List<Entry> entries) {
    return new KeptInput.Test(
        serial,
        session.harness(),
        session.number(),
        session.file(),
        entries.size(),
        Head.hashOf(entries));
  }

  private static StoreTrouble notAsWritten(StoreFinding finding) {
    return StoreTrouble.of(
        Reason.NOT_UNDERSTOOD,
        "is not as it was written: " + StoreWords.finding(finding) + "; see ringout store check");
  }

  /** The serial numbers of all units of a list. */
  List<String> siblings(String list) throws StoreTrouble {
    return store.open().siblings(list).stream().map(StoredUnit::serial).toList();
  }

  /** What a station carries into every test. */
  JobTemplate station(String name) throws StoreTrouble {
    Station station =
        store
            .open()
            .station(name)
            .orElseThrow(
                () ->
                    StoreTrouble.of(
                        Reason.MISSING, "there is no such station in " + store.shown()));
    Map<String, String> rows = new LinkedHashMap<>();
    for (List<String> line : Fields.of(station.body())) {
      rows.put(line.get(0), line.get(1));
    }
    return new JobTemplate(rows);
  }

  /** Tells of a store that can't be used; whether it is because something is not there. */
  static boolean report(StoreTrouble trouble, String place, Problems problems) {
    boolean told =
        problems.list().stream()
            .anyMatch(one -> one.place().file().equals(place) && one.text().equals(trouble.text()));
    if (!told) {
      problems.error(Place.of(place), trouble.text());
    }
    return trouble.reason() == Reason.MISSING || trouble.reason() == Reason.DENIED;
  }
}
