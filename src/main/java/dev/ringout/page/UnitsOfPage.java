package dev.ringout.page;

import dev.ringout.Ringout;
import dev.ringout.bench.Bench;
import dev.ringout.bench.Refused;
import dev.ringout.bench.Refused.Reason;
import dev.ringout.bench.UnitPage;
import dev.ringout.jobs.InputName;
import dev.ringout.jobs.LedTests.ListAtHand;
import dev.ringout.jobs.LedTests.UnitAtBench;
import dev.ringout.jobs.UnitsJob;
import dev.ringout.store.StoreTrouble;
import dev.ringout.store.StoredUnit;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The units and lists that a page can name. */
final class UnitsOfPage {
  private final Ringout door;
  private final Bench bench;
  private final Map<String, ListAtHand> taken = new LinkedHashMap<>();
  private boolean knowsTakenBefore;

  UnitsOfPage(Ringout door, Bench bench) {
    this.door = door;
    this.bench = bench;
  }

  /** A unit of the store, as every command names it. */
  static Path named(StoredUnit unit) {
    return InputName.ofUnit(unit.serial(), unit.harness());
  }

  /** A list that units may be made to from now on; its id. */
  synchronized String take(ListAtHand list) {
    taken.put(list.file().digest(), list);
    return list.file().digest();
  }

  /** All units, as they stood when they were last read. */
  List<UnitsJob.Listed> all() throws Refused {
    try {
      // The store is made with the first unit: until then there is none.
      bench.tests().make();
      return door.units(new UnitsJob.Request(Optional.empty())).units();
    } catch (StoreTrouble e) {
      throw Refused.by(e);
    }
  }

  /** The lists that units can be made to: those that were taken here, and those of all units. */
  synchronized Map<String, ListAtHand> lists() throws Refused {
    findTakenBefore();
    Map<String, ListAtHand> lists = new LinkedHashMap<>(taken);
    for (UnitsJob.Listed one : all()) {
      if (!lists.containsKey(one.unit().harness())) {
        Path named = InputName.ofUnit(one.unit().serial(), one.unit().harness());
        ListAtHand list = Refused.given(bench.tests().list(named));
        taken.put(list.file().digest(), list);
        lists.put(list.file().digest(), list);
      }
    }
    return lists;
  }

  /** Lists that another bench with these data, or this one before, has taken. */
  private void findTakenBefore() {
    if (!knowsTakenBefore) {
      knowsTakenBefore = true;
      for (Path file : new ListFolder(bench.setup().data()).taken()) {
        bench.tests().list(file).result().ifPresent(this::take);
      }
    }
  }

  ListAtHand list(String id) throws Refused {
    ListAtHand list = lists().get(id);
    if (list == null) {
      throw new Refused(Reason.MISSING, "There is no such list.");
    }
    return list;
  }

  StoredUnit unit(String id) throws Refused {
    return all().stream()
        .map(UnitsJob.Listed::unit)
        .filter(unit -> UnitPage.id(unit).equals(id))
        .findFirst()
        .orElseThrow(() -> new Refused(Reason.MISSING, "There is no such unit."));
  }

  /** Whether a unit has a serial number, in whichever case; no other unit is looked at. */
  boolean isSerial(String text) throws Refused {
    try {
      return bench.tests().called(text).stream()
          .anyMatch(unit -> unit.serial().equalsIgnoreCase(text.strip()));
    } catch (StoreTrouble e) {
      throw Refused.by(e);
    }
  }

  UnitAtBench whole(StoredUnit unit) throws Refused {
    try {
      return Refused.given(bench.tests().unit(unit));
    } catch (StoreTrouble e) {
      throw Refused.by(e);
    }
  }
}
