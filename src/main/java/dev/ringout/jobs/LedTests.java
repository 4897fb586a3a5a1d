package dev.ringout.jobs;

import dev.ringout.check.CheckResult;
import dev.ringout.harness.Harness;
import dev.ringout.intake.OneUnit;
import dev.ringout.people.Signers;
import dev.ringout.readings.JobTemplate;
import dev.ringout.readings.ReadingSet;
import dev.ringout.source.Problems;
import dev.ringout.store.Entry;
import dev.ringout.store.EntryKind;
import dev.ringout.store.HarnessFile;
import dev.ringout.store.Head;
import dev.ringout.store.Lease;
import dev.ringout.store.NewSession;
import dev.ringout.store.Session;
import dev.ringout.store.Signature;
import dev.ringout.store.Store;
import dev.ringout.store.StoreTrouble;
import dev.ringout.store.StoreTrouble.Reason;
import dev.ringout.store.StoredUnit;
import dev.ringout.store.Stores;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;

/**
 * Tests that are led at a bench: they go on entry by entry, and each is in the store before anybody
 * is told so. Several benches may go on with one test; each begins a part of its own.
 */
public final class LedTests {
  /** So often another bench may be quicker before somebody is told. */
  private static final int MOST_TRIES = 20;

  private final StoreAtHand store;

  /** The led tests of a store. */
  public LedTests(StoreAtHand store) {
    this.store = store;
  }

  /**
   * A list that units can be made to.
   *
   * @param named a file, or a unit of the store that is made to it
   */
  public record ListAtHand(Path named, Harness harness, HarnessFile file) {}

  /**
   * A unit of the store with all that was read of it so far.
   *
   * @param tests what happened in each of its tests
   * @param leads who leads the last of them, at whichever station
   * @param signers whose signatures count
   */
  public record UnitAtBench(
      StoredUnit unit,
      ListAtHand list,
      ReadingSet readings,
      Map<Session, List<Entry>> tests,
      List<Lease> leads,
      Signers signers) {
    /** What is given can't be changed afterwards. */
    public UnitAtBench {
      leads = List.copyOf(leads);
    }

    /** The test that is under way; absent where the last is finished, or was brought in. */
    public Optional<Led> underWay() {
      Optional<Map.Entry<Session, List<Entry>>> last =
          tests.entrySet().stream().reduce((one, other) -> other);
      return last.filter(one -> one.getKey().isLed() && !isFinished(one.getValue()))
          .map(one -> new Led(unit, one.getKey(), end(one.getValue()), Optional.empty()));
    }

    private static Head end(List<Entry> entries) {
      Entry last = entries.get(entries.size() - 1);
      return new Head(last.seq(), last.hash());
    }
  }

  /**
   * A test that goes on.
   *
   * @param end where it ends for now
   * @param lease by which it is led here; absent where it is led elsewhere, or nowhere
   */
  public record Led(StoredUnit unit, Session session, Head end, Optional<Lease> lease) {
    /** The same where it ends by now. */
    public Led at(Head other) {
      return new Led(unit, session, other, lease);
    }

    private Led by(Lease other) {
      return new Led(unit, session, end, Optional.of(other));
    }
  }

  /** Makes entries, given how many parts the test has already. */
  public interface Drafts {
    /** The entries. */
    List<Entry.Draft> of(int parts);
  }

  /**
   * Makes the store where there is none.
   *
   * @throws StoreTrouble where it can't be used
   */
  public void make() throws StoreTrouble {
    store.openToWrite();
  }

  /** Reads a list, from a file or of a unit of the store. */
  public Answer<ListAtHand> list(Path named) {
    FileInputs inputs = FileInputs.with(List.of(named), store).keepingBytes();
    Optional<Harness> harness = inputs.soundHarness(named);
    return harness.isEmpty()
        ? Answer.refused(inputs)
        : Answer.of(
            new ListAtHand(named, harness.get(), inputs.listAsKept(named, harness.get())), inputs);
  }

  /**
   * The unit of a list that has a serial number; absent where nothing was read of it yet.
   *
   * @throws StoreTrouble where the store can't be used
   */
  public Optional<StoredUnit> find(String serial, String listDigest) throws StoreTrouble {
    return store.openToWrite().unit(FromStore.key(serial), listDigest);
  }

  /**
   * The units of all lists that have a serial number, however it is written.
   *
   * @throws StoreTrouble where the store can't be used
   */
  public List<StoredUnit> called(String serial) throws StoreTrouble {
    return store.openToWrite().find(FromStore.key(serial));
  }

  /**
   * Everything of a unit.
   *
   * @throws StoreTrouble where the store can't be used
   */
  public Answer<UnitAtBench> unit(StoredUnit unit) throws StoreTrouble {
    Store open = store.openToWrite();
    Path named = InputName.ofUnit(unit.serial(), unit.harness());
    FileInputs inputs = FileInputs.with(List.of(named), store).keepingBytes();
    Optional<Harness> harness = inputs.soundHarness(named);
    if (harness.isEmpty()) {
      return Answer.refused(inputs);
    }
    ReadingSet readings = inputs.readings(List.of(named), harness.get());
    OneUnit.report(harness.get(), readings, inputs.problems());
    OneUnit.reportOtherRevision(harness.get(), readings, inputs.problems());
    if (inputs.problems().hasErrors()) {
      return Answer.refused(inputs);
    }
    ListAtHand list = new ListAtHand(named, harness.get(), inputs.listAsKept(named, harness.get()));
    Map<Session, List<Entry>> tests = open.chains(unit);
    List<Lease> leads = new ArrayList<>();
    for (Session last : lastOf(tests.keySet())) {
      leads.addAll(open.leases(last.id()));
    }
    return Answer.of(
        new UnitAtBench(unit, list, readings, tests, leads, Signers.of(open.people())), inputs);
  }

  private static List<Session> lastOf(Collection<Session> tests) {
    List<Session> all = List.copyOf(tests);
    return all.subList(Math.max(0, all.size() - 1), all.size());
  }

  /**
   * The readings of a unit as they are now; nothing where they can't be understood.
   *
   * @throws StoreTrouble where the store can't be used
   */
  public ReadingSet readings(StoredUnit unit, Harness harness, Problems problems)
      throws StoreTrouble {
    store.openToWrite();
    Path named = InputName.ofUnit(unit.serial(), unit.harness());
    FileInputs inputs = FileInputs.with(List.of(named), store);
    inputs.soundHarness(named);
    ReadingSet readings = inputs.readings(List.of(named), harness);
    inputs.problems().list().forEach(problems::add);
    return readings;
  }

  /**
   * A unit of that serial number that is kept with another file of the same list: two files would
   * make two units of one. Absent where there is none.
   *
   * @throws StoreTrouble where the store can't be used
   */
  public Optional<StoredUnit> withOtherFile(ListAtHand list, String serial) throws StoreTrouble {
    HarnessFile file = list.file();
    if ((file.title() + file.drawing() + file.revision()).isEmpty()) {
      return Optional.empty();
    }
    String key = FromStore.key(serial);
    return store.openToWrite().unitsOfLikeLists(file).stream()
        .filter(unit -> unit.key().equals(key))
        .findFirst();
  }

  /** What a station carries into every test; nothing where the store does not know it. */
  public JobTemplate station(String name) throws StoreTrouble {
    store.openToWrite();
    FromStore kept = new FromStore(store);
    try {
      return kept.station(name);
    } catch (StoreTrouble e) {
      if (e.reason() == Reason.MISSING) {
        return JobTemplate.NONE;
      }
      throw e;
    }
  }

  /**
   * What a new test is.
   *
   * @param day of the test, as a sheet has it
   * @param file by which its cells are named
   */
  public record Start(String station, String tester, String day, String file, Instant now) {}

  /**
   * Begins a test.
   *
   * @throws StoreTrouble where the store can't be written; then nothing was kept
   */
  public Led start(ListAtHand list, String serial, Start start, Drafts first) throws StoreTrouble {
    Store open = store.openToWrite();
    String id = UUID.randomUUID().toString();
    Session session =
        new Session(
            id,
            FromStore.key(serial),
            list.file().digest(),
            1,
            start.station(),
            start.tester(),
            start.day(),
            start.file(),
            "",
            Program.text(),
            start.now().toString());
    List<Entry.Draft> entries = new ArrayList<>(first.of(0));
    entries.add(list.file().names());
    open.add(new NewSession(list.file(), serial, session, start.file(), entries));
    StoredUnit unit =
        open.unit(session.unitKey(), session.harness()).orElseThrow(StoreTrouble::torn);
    Session kept =
        open.sessions(unit).stream()
            .filter(one -> one.id().equals(id))
            .findFirst()
            .orElseThrow(StoreTrouble::torn);
    Head end = open.head(id).orElseThrow(StoreTrouble::torn);
    Lease lease = open.lead(id, start.station(), start.tester());
    return new Led(unit, kept, end, Optional.of(lease));
  }

  /**
   * Begins a part of a test that is under way.
   *
   * @param over leases of others, whose time is over: they are taken over with it
   * @throws StoreTrouble where it can't be written; then nothing was kept
   */
  public Led join(Led led, List<Lease> over, Drafts part) throws StoreTrouble {
    Store open = store.openToWrite();
    return append(led, over, end -> part.of(parts(open.entries(led.session()))));
  }

  /**
   * Leads a test at a station from now on, whoever led it there before.
   *
   * @throws StoreTrouble where the store can't be written
   */
  public Led lead(Led led, String station, String who) throws StoreTrouble {
    return led.by(store.openToWrite().lead(led.session().id(), station, who));
  }

  /** Who leads a test, at whichever station. */
  public List<Lease> leases(Led led) throws StoreTrouble {
    return store.openToWrite().leases(led.session().id());
  }

  /** Whether a test holds an entry that was to be kept. */
  public boolean holds(Led led, Head head) throws StoreTrouble {
    return store
        .openToWrite()
        .entry(led.session().id(), head.seq())
        .filter(entry -> entry.hash().equals(head.hash()))
        .isPresent();
  }

  /**
   * Tells that a test is still led here.
   *
   * @param asked which step is asked now; empty where none is
   * @throws StoreTrouble where somebody else leads it here by now, or the store can't be written
   */
  public void goOn(Led led, String asked) throws StoreTrouble {
    if (led.lease().isPresent()) {
      store.openToWrite().goOn(led.lease().get(), asked);
    }
  }

  /**
   * Leads a test no more; it can be gone on with anywhere.
   *
   * @throws StoreTrouble where the store can't be written
   */
  public void giveBack(Led led) throws StoreTrouble {
    if (led.lease().isPresent()) {
      store.openToWrite().giveBack(led.lease().get());
    }
  }

  /**
   * Keeps what happened.
   *
   * @throws StoreTrouble where it can't be written, or the test is not the unit's last any more;
   *     then nothing was kept
   */
  public Led append(Led led, List<Entry.Draft> drafts) throws StoreTrouble {
    return append(led, end -> drafts);
  }

  /** Makes entries, knowing where the test ends: another bench may have been quicker. */
  public interface Made {
    /**
     * The entries.
     *
     * @throws StoreTrouble where the store can't be read
     */
    List<Entry.Draft> after(Head end) throws StoreTrouble;
  }

  /**
   * Keeps what happened, made anew each time that another bench was quicker.
   *
   * @throws StoreTrouble where it can't be written, or the test is not the unit's last any more;
   *     then nothing was kept
   */
  public Led append(Led led, Made made) throws StoreTrouble {
    return append(led, List.of(), made);
  }

  private Led append(Led led, List<Lease> over, Made made) throws StoreTrouble {
    Store open = store.openToWrite();
    Led now = led;
    for (int tries = 1; ; tries++) {
      List<Entry.Draft> drafts = made.after(now.end());
      try {
        open.append(now.session(), now.end(), drafts, now.lease(), over);
        return now.at(Stores.endAfter(now.session(), now.end(), drafts));
      } catch (StoreTrouble e) {
        if (e.reason() == Reason.TAKEN_OVER) {
          throw e;
        }
        Head end = open.head(now.session().id()).orElse(now.end());
        if (end.equals(Stores.endAfter(now.session(), now.end(), drafts))) {
          // It was kept before the answer was lost.
          return now.at(end);
        }
        // One that ends earlier was set back: what was kept since is not told as if nothing were.
        if (end.seq() <= now.end().seq() || tries >= MOST_TRIES) {
          throw e;
        }
        now = now.at(end);
      }
    }
  }

  private static int parts(List<Entry> entries) {
    return (int)
        entries.stream()
            .filter(entry -> entry.is(EntryKind.SHEET))
            .filter(entry -> entry.body().startsWith("Job\t"))
            .count();
  }

  /** Where a test ends now: another bench may have gone on with it. */
  public Optional<Head> end(Led led) throws StoreTrouble {
    return store.openToWrite().head(led.session().id());
  }

  /** Whoever copies the store's file after a test has all of it. */
  public void settle() throws StoreTrouble {
    store.openToWrite().settle();
  }

  /** Whether no other test of the unit was begun since. */
  public boolean isLast(Led led) throws StoreTrouble {
    List<Session> all = store.openToWrite().sessions(led.unit());
    return all.isEmpty() || all.get(all.size() - 1).id().equals(led.session().id());
  }

  /** What happened in a test so far. */
  public List<Entry> entries(Led led) throws StoreTrouble {
    return store.openToWrite().entries(led.session());
  }

  /** The verdict as it is kept at the end of a test. */
  public static Entry.Draft verdict(CheckResult result, String at, String who) {
    return new Entry.Draft(EntryKind.VERDICT, at, who, KeptVerdict.of(result).body());
  }

  /**
   * Whether an inspector has signed a unit since it was last read.
   *
   * @throws StoreTrouble where the store can't be used
   */
  public boolean isInspected(StoredUnit unit) throws StoreTrouble {
    Store open = store.openToWrite();
    List<Session> sessions = open.sessions(unit);
    if (sessions.isEmpty()) {
      return false;
    }
    Signers signers = Signers.of(open.people());
    // Pictures are large: of each entry only that is kept which decides.
    List<Optional<Boolean>> said =
        open.entries(sessions.get(sessions.size() - 1), entry -> inspects(entry, signers));
    return said.stream().flatMap(Optional::stream).reduce((one, other) -> other).orElse(false);
  }

  private static Optional<Boolean> inspects(Entry entry, Signers signers) {
    if (entry.is(EntryKind.SIGNATURE)) {
      return Signature.of(entry.body())
          .filter(one -> one.role().equals(LaterJob.Role.INSPECTOR.word()))
          .filter(one -> signers.doubt(one).isEmpty())
          .map(one -> true);
    }
    boolean reads =
        entry.is(EntryKind.TAKEN_BACK)
            || EntryKind.of(entry.kind()).filter(EntryKind::isRow).isPresent();
    return reads ? Optional.of(false) : Optional.empty();
  }

  /** Whether nothing came after the verdict on it but what is said of a unit afterwards. */
  static boolean isFinished(List<Entry> entries) {
    boolean finished = false;
    for (Entry entry : entries) {
      Optional<EntryKind> kind = EntryKind.of(entry.kind());
      finished =
          entry.is(EntryKind.VERDICT)
              || (finished && kind.filter(one -> one.isRow() || one == EntryKind.SHEET).isEmpty());
    }
    return finished;
  }
}
