package dev.ringout.store;

import dev.ringout.store.StoreAddress.OnFile;
import dev.ringout.store.StoreAddress.OnServer;
import dev.ringout.store.StoreFinding.Kind;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiPredicate;
import java.util.stream.Collectors;

/** Opens stores, makes them, looks whether they are whole, and copies them. */
public final class Stores {
  private Stores() {}

  /**
   * Opens a store.
   *
   * @param environment where a server's user and password may stand
   * @param toWrite whether anything is to be added
   */
  public static Store open(StoreAddress address, Map<String, String> environment, boolean toWrite)
      throws StoreTrouble {
    return JdbcStore.open(engine(address, environment), toWrite);
  }

  /** Whether anything is at an address yet. */
  public static boolean isThere(StoreAddress address) {
    return engine(address, Map.of()).isThere();
  }

  /**
   * Makes a store, or takes one of an earlier version along.
   *
   * @param role that may read and add from then on, and nothing else
   */
  public static void migrate(
      StoreAddress address, Map<String, String> environment, Optional<String> role)
      throws StoreTrouble {
    Engine engine = engine(address, environment);
    refuseNewer(engine);
    Migrations.migrate(engine, Migrations.CURRENT);
    try (Connection connection = engine.open(true)) {
      engine.ready(connection);
      engine.guard(connection);
      if (role.isPresent()) {
        engine.letAdd(connection, role.get());
      }
    } catch (SQLException e) {
      throw engine.trouble(e);
    }
  }

  private static void refuseNewer(Engine engine) throws StoreTrouble {
    if (!engine.isThere()) {
      return;
    }
    try (Connection connection = engine.open(true)) {
      int version = Migrations.version(connection);
      if (version > Migrations.CURRENT) {
        JdbcStore.requireCurrent(version);
      }
    } catch (SQLException e) {
      throw engine.trouble(e);
    }
  }

  static Engine engine(StoreAddress address, Map<String, String> environment) {
    return address.match(
        new StoreAddress.Cases<>() {
          @Override
          public Engine onFile(OnFile on) {
            return new SqliteEngine(on.file());
          }

          @Override
          public Engine onServer(OnServer on) {
            return new PostgresEngine(on, environment);
          }
        });
  }

  /** Reads all of a store and looks whether its chains hold. */
  public static StoreState check(Store store) throws StoreTrouble {
    return new WholeStore(store).state();
  }

  /** The first test of a unit before which one is not there. */
  private static Optional<StoreFinding> gap(StoredUnit unit, List<Session> sessions) {
    int number = 0;
    for (Session session : sessions) {
      number++;
      if (session.number() != number) {
        return Optional.of(StoreFinding.of(unit, session, 0, Kind.SESSION_MISSING));
      }
    }
    return Optional.empty();
  }

  /** Where a session would end with these entries behind it. */
  public static Head endAfter(Session session, Head end, List<Entry.Draft> drafts) {
    List<Entry> entries = HashChain.chained(session, end, drafts);
    return Head.at(entries.get(entries.size() - 1));
  }

  /**
   * What is wrong with what was kept of a unit, test by test; of a chain the first break, for all
   * after it follow.
   *
   * @param chains what happened in each of its tests, in order
   */
  public static List<StoreFinding> broken(StoredUnit unit, Map<Session, List<Entry>> chains) {
    return broken(unit, chains, HashChain::isAsWritten);
  }

  /** The same, where it is known already of which entries the fields are as they were written. */
  static List<StoreFinding> broken(
      StoredUnit unit, Map<Session, List<Entry>> chains, BiPredicate<Session, Entry> isAsWritten) {
    List<StoreFinding> findings = new ArrayList<>();
    gap(unit, List.copyOf(chains.keySet())).ifPresent(findings::add);
    boolean follows = !findings.isEmpty();
    Signed signed = new Signed(unit);
    String before = "";
    for (Map.Entry<Session, List<Entry>> test : chains.entrySet()) {
      Session session = test.getKey();
      List<Entry> chain = test.getValue();
      List<StoreFinding> broken = broken(unit, session, before, chain, isAsWritten);
      List<StoreFinding> wrong = broken.isEmpty() ? signed.next(session, chain) : broken;
      boolean followed = follows;
      // After what is missing or changed the next test's beginning is wrong by that alone.
      wrong.stream()
          .filter(one -> !(followed && one.kind() == Kind.CHAIN_BROKEN && one.seq() == 1))
          .forEach(findings::add);
      follows |= !wrong.isEmpty();
      before = Head.hashOf(chain);
    }
    findings.addAll(notUnderstood(unit, chains));
    return findings;
  }

  private static List<StoreFinding> notUnderstood(
      StoredUnit unit, Map<Session, List<Entry>> chains) {
    List<StoreFinding> findings = new ArrayList<>();
    chains.forEach(
        (session, chain) -> {
          for (Entry entry : chain) {
            if (entry.is(EntryKind.TAKEN_BACK) && !isOfRow(TakenBack.of(entry.body()), chains)) {
              findings.add(StoreFinding.of(unit, session, entry.seq(), Kind.NOT_UNDERSTOOD));
            }
          }
        });
    return findings;
  }

  private static boolean isOfRow(Optional<TakenBack> back, Map<Session, List<Entry>> chains) {
    return back.isPresent()
        && chains.entrySet().stream()
            .filter(test -> test.getKey().id().equals(back.get().session()))
            .flatMap(test -> test.getValue().stream())
            .filter(entry -> entry.seq() == back.get().seq())
            .anyMatch(entry -> EntryKind.of(entry.kind()).filter(EntryKind::isRow).isPresent());
  }

  /**
   * What is wrong with a session's chain; the first break is told, for all after it follow.
   *
   * @param before the last hash of the unit's session before; empty of the first
   */
  public static List<StoreFinding> broken(
      StoredUnit unit, Session session, String before, List<Entry> chain) {
    return broken(unit, session, before, chain, HashChain::isAsWritten);
  }

  private static List<StoreFinding> broken(
      StoredUnit unit,
      Session session,
      String before,
      List<Entry> chain,
      BiPredicate<Session, Entry> isAsWritten) {
    Optional<HashChain.Break> wrong =
        HashChain.firstBreak(
            HashChain.of(unit, session, before), chain, entry -> isAsWritten.test(session, entry));
    if (wrong.isPresent()) {
      return List.of(StoreFinding.of(unit, session, wrong.get().seq(), wrong.get().kind()));
    }
    boolean ends =
        !chain.isEmpty()
            && EntryKind.of(chain.get(chain.size() - 1).kind())
                .filter(EntryKind::mayEnd)
                .isPresent();
    // What is led goes on with each reading: whether its end is there only its ending shows.
    return ends || (session.isLed() && !chain.isEmpty())
        ? List.of()
        : List.of(StoreFinding.of(unit, session, chain.size(), Kind.END_MISSING));
  }

  /**
   * What a copy came to.
   *
   * @param sessions how many were copied
   * @param grown how many that were there already were added to
   * @param handedOver how many of those that were copied have another number there
   * @param parted what is another thing there, or is not as it was written: nothing was copied of
   *     it
   */
  public record Copy(long sessions, long grown, long handedOver, List<Parted> parted) {
    /** What is given can't be changed afterwards. */
    public Copy {
      parted = List.copyOf(parted);
    }

    /** Whether there was nothing left to copy. */
    public boolean isNothing() {
      return sessions == 0 && grown == 0 && parted.isEmpty();
    }
  }

  /**
   * What of a store is taken over.
   *
   * @param decisions whether what was decided of people is taken by a store that has people
   * @param refused units of which nothing is taken, and why
   * @param only the one unit that is taken; absent where all are, with people and stations
   */
  public record Taking(
      boolean decisions, Map<StoredUnit, StoreFinding> refused, Optional<StoredUnit> only) {
    /** Everything. */
    public static final Taking ALL = new Taking(true, Map.of());

    /** Of all units. */
    public Taking(boolean decisions, Map<StoredUnit, StoreFinding> refused) {
      this(decisions, refused, Optional.empty());
    }

    /** One unit with its list, and nothing else. */
    public static Taking only(StoredUnit unit) {
      return new Taking(false, Map.of(), Optional.of(unit));
    }

    /** What is given can't be changed afterwards. */
    public Taking {
      refused = Map.copyOf(refused);
    }
  }

  /** Copies everything that another store does not have yet. */
  public static Copy copy(Store from, Store to) throws StoreTrouble {
    return copy(from, to, Taking.ALL);
  }

  /** Copies what another store does not have yet, and takes. */
  public static Copy copy(Store from, Store to, Taking taking) throws StoreTrouble {
    long copied = 0;
    long grown = 0;
    long handedOver = 0;
    List<Parted> parted = new ArrayList<>();
    if (taking.only().isEmpty()) {
      copyStations(from, to);
      parted.addAll(PeopleChain.copy(from, to, taking.decisions()));
    }
    for (String digest : from.harnesses()) {
      HarnessFile harness = from.harness(digest).orElseThrow(StoreTrouble::torn);
      for (StoredUnit unit : from.siblings(digest)) {
        if (taking.only().filter(one -> !one.equals(unit)).isPresent()) {
          continue;
        }
        StoreFinding refused = taking.refused().get(unit);
        if (refused != null) {
          parted.add(new Parted(refused, Optional.empty(), Optional.empty()));
          continue;
        }
        CopyOfUnit unitCopy = new CopyOfUnit(from, to, harness, unit);
        unitCopy.run();
        copied += unitCopy.copied();
        grown += unitCopy.grown();
        handedOver += unitCopy.handedOver();
        parted.addAll(unitCopy.parted());
      }
    }
    return new Copy(copied, grown, handedOver, parted);
  }

  /** Who leads what: whoever goes on with it elsewhere is told, and asked for a word. */
  public static void copyLeases(Store from, Store to) throws StoreTrouble {
    for (Lease lease : from.leases()) {
      if (to.leases(lease.session()).stream()
          .noneMatch(one -> one.station().equals(lease.station()))) {
        to.lead(lease.session(), lease.station(), lease.who());
      }
    }
  }

  /** What a station carries along is no evidence: where both have another, each keeps its own. */
  private static void copyStations(Store from, Store to) throws StoreTrouble {
    Map<String, List<Station>> there = byName(to);
    for (Map.Entry<String, List<Station>> of : byName(from).entrySet()) {
      List<Station> known = there.getOrDefault(of.getKey(), List.of());
      List<Station> here = of.getValue();
      boolean goesOn = known.size() <= here.size() && known.equals(here.subList(0, known.size()));
      for (Station more : goesOn ? here.subList(known.size(), here.size()) : List.<Station>of()) {
        to.keep(more);
      }
    }
  }

  private static Map<String, List<Station>> byName(Store store) throws StoreTrouble {
    return store.stations().stream()
        .collect(Collectors.groupingBy(Station::name, LinkedHashMap::new, Collectors.toList()));
  }
}
