package dev.ringout.store;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/**
 * Units and what was read on them. What is kept once is never changed. Each method is one
 * transaction: it is done as a whole or not at all.
 */
public interface Store extends AutoCloseable {

  /** What became of a test that was brought in. */
  enum Added {
    ADDED,
    /** The same sheet of the same unit is there already. */
    WAS_THERE
  }

  /** As shown to the user. */
  String shown();

  /** Keeps a test, and its unit and list where they are new. */
  Added add(NewSession session) throws StoreTrouble;

  /** Keeps a session as another store has it: numbers, names and hashes. */
  Added take(HarnessFile harness, StoredUnit unit, Session session, List<Entry> entries)
      throws StoreTrouble;

  /** Keeps entries of a session as another store has them, behind where it ends here. */
  void takeMore(Session session, Head end, List<Entry> entries) throws StoreTrouble;

  /**
   * Adds to the last session of a unit what happened afterwards.
   *
   * @param end where it ends
   * @throws StoreTrouble where somebody else added to the unit meanwhile
   */
  default void append(Session last, Head end, List<Entry.Draft> drafts) throws StoreTrouble {
    append(last, end, drafts, Optional.empty(), List.of());
  }

  /**
   * The same by who leads it at a station, for whom that is a sign of life.
   *
   * @param by his lease; absent where what is added is no row of a sheet
   * @param over leases whose time is over: nobody adds by them any more
   * @throws StoreTrouble where somebody else added to the unit meanwhile, leads there by now, or
   *     gave a sign of life
   */
  void append(
      Session last, Head end, List<Entry.Draft> drafts, Optional<Lease> by, List<Lease> over)
      throws StoreTrouble;

  /** From now on somebody leads a test at a station; whoever did so there adds nothing more. */
  Lease lead(String sessionId, String station, String who) throws StoreTrouble;

  /**
   * Gives a sign of life.
   *
   * @param asked which step is asked now; empty where none is
   * @throws StoreTrouble where somebody else leads there by now
   */
  void goOn(Lease lease, String asked) throws StoreTrouble;

  /** Nobody leads at that station any more; nothing where somebody else does by now. */
  void giveBack(Lease lease) throws StoreTrouble;

  /** All leases that were not given back. */
  List<Lease> leases() throws StoreTrouble;

  /** Those on a test. */
  List<Lease> leases(String sessionId) throws StoreTrouble;

  /** All units, by list and serial number, with how they stood. */
  List<UnitSummary> units() throws StoreTrouble;

  /** The units of a key: one for each list that has such a serial number. */
  List<StoredUnit> find(String unitKey) throws StoreTrouble;

  /** The units of a list. */
  List<StoredUnit> siblings(String harnessDigest) throws StoreTrouble;

  /** The units of other lists with the same title, drawing and revision. */
  List<StoredUnit> unitsOfLikeLists(HarnessFile list) throws StoreTrouble;

  /** What is wrong with the store's own pages; absent where nothing is, or nothing can be told. */
  Optional<String> damage() throws StoreTrouble;

  /** How many rows each table has. */
  Map<String, Long> rows() throws StoreTrouble;

  /** A list, whole; absent where it was never kept. */
  Optional<HarnessFile> harness(String digest) throws StoreTrouble;

  /** The digests of all lists. */
  List<String> harnesses() throws StoreTrouble;

  /** The tests of a unit, in order. */
  List<Session> sessions(StoredUnit unit) throws StoreTrouble;

  /**
   * What is made of each thing that happened in a test, in order, as it is read: pictures are
   * large, and all of them at once may be more than the memory holds.
   */
  <T> List<T> entries(Session session, Function<Entry, T> made) throws StoreTrouble;

  /** What happened in a test, in order. */
  default List<Entry> entries(Session session) throws StoreTrouble {
    return entries(session, entry -> entry);
  }

  /** What happened in a test as its how-manieth; absent where there is no such entry. */
  Optional<Entry> entry(String sessionId, int seq) throws StoreTrouble;

  /** The unit of a key that is made to a list; absent where there is none. */
  default Optional<StoredUnit> unit(String unitKey, String harness) throws StoreTrouble {
    return find(unitKey).stream().filter(unit -> unit.harness().equals(harness)).findFirst();
  }

  /** What happened in each test of a unit, in order. */
  default Map<Session, List<Entry>> chains(StoredUnit unit) throws StoreTrouble {
    Map<Session, List<Entry>> chains = new LinkedHashMap<>();
    for (Session session : sessions(unit)) {
      chains.put(session, entries(session));
    }
    return chains;
  }

  /** Where a test ends; absent where it is not there. */
  Optional<Head> head(String sessionId) throws StoreTrouble;

  /** Keeps what a station carries along, where it is another than before. */
  Added keep(Station station) throws StoreTrouble;

  /** What a station carries along now; absent where the store does not know it. */
  Optional<Station> station(String name) throws StoreTrouble;

  /** All that stations ever carried along, in order. */
  List<Station> stations() throws StoreTrouble;

  /** All that was ever said of people, and who came in, in order. */
  List<Entry> people() throws StoreTrouble;

  /** What of it decides who may come in. */
  List<Entry> peopleWhoMay() throws StoreTrouble;

  /**
   * Adds to it, where nobody else decided anything meanwhile.
   *
   * @param known number of the last that decides who may come in; 0 where there is none
   * @throws StoreTrouble where somebody was quicker
   */
  void decide(int known, List<SaidOfPeople> said) throws StoreTrouble;

  /** Adds to it what decides nothing: who came in. */
  void tell(SaidOfPeople said) throws StoreTrouble;

  /** Keeps it as another store has it, behind where it ends here. */
  void takePeople(List<Entry> entries) throws StoreTrouble;

  /** Sees to it that a copy of the file, without what stands beside it, has all that was kept. */
  void settle() throws StoreTrouble;

  /** From now on reads all as it is now, whatever others add; for reading alone. */
  void hold() throws StoreTrouble;

  @Override
  void close();
}
