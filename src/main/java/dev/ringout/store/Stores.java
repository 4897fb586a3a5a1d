package dev.ringout.store;

import dev.ringout.store.StoreAddress.OnFile;
import dev.ringout.store.StoreAddress.OnServer;
import dev.ringout.store.StoreFinding.Kind;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

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
  public static Optional<StoreFinding> gap(StoredUnit unit, List<Session> sessions) {
    int number = 0;
    for (Session session : sessions) {
      number++;
      if (session.number() != number) {
        return Optional.of(
            new StoreFinding(unit.serial(), session.id(), session.file(), 0, Kind.SESSION_MISSING));
      }
    }
    return Optional.empty();
  }

  /** Where a session would end with these entries behind it. */
  public static Head endAfter(Session session, Head end, List<Entry.Draft> drafts) {
    List<Entry> entries = HashChain.chained(session, end, drafts);
    Entry last = entries.get(entries.size() - 1);
    return new Head(last.seq(), last.hash());
  }

  /** What is wrong with a session's chain; the first break is told, for all after it follow. */
  public static List<StoreFinding> broken(StoredUnit unit, Session session, List<Entry> chain) {
    String previous = HashChain.of(unit, session);
    int seq = 0;
    for (Entry entry : chain) {
      seq++;
      Optional<Kind> wrong = Optional.empty();
      if (entry.seq() != seq) {
        wrong = Optional.of(Kind.ENTRY_MISSING);
      } else if (!HashChain.of(session.id(), entry).equals(entry.hash())) {
        wrong = Optional.of(Kind.ENTRY_CHANGED);
      } else if (!entry.previous().equals(previous)) {
        wrong = Optional.of(Kind.CHAIN_BROKEN);
      }
      if (wrong.isPresent()) {
        return List.of(
            new StoreFinding(unit.serial(), session.id(), session.file(), seq, wrong.get()));
      }
      previous = entry.hash();
    }
    boolean ends =
        !chain.isEmpty()
            && EntryKind.of(chain.get(chain.size() - 1).kind())
                .filter(EntryKind::mayEnd)
                .isPresent();
    return ends
        ? List.of()
        : List.of(
            new StoreFinding(unit.serial(), session.id(), session.file(), seq, Kind.END_MISSING));
  }

  /**
   * What a copy came to.
   *
   * @param sessions how many were copied
   * @param grown how many that were there already were added to
   * @param parted tests that go on in one way here and in another there: nothing was copied of them
   */
  public record Copy(long sessions, long grown, List<StoreFinding> parted) {
    /** What is given can't be changed afterwards. */
    public Copy {
      parted = List.copyOf(parted);
    }
  }

  /** Copies everything that another store does not have yet. */
  public static Copy copy(Store from, Store to) throws StoreTrouble {
    long copied = 0;
    long grown = 0;
    List<StoreFinding> parted = new ArrayList<>();
    if (to.stations().isEmpty()) {
      for (Station station : from.stations()) {
        to.keep(station);
      }
    }
    for (String digest : from.harnesses()) {
      HarnessFile harness = from.harness(digest).orElseThrow();
      for (StoredUnit unit : from.siblings(digest)) {
        for (Session session : from.sessions(unit)) {
          Optional<Head> there = to.head(session.id());
          if (there.isEmpty() && isTaken(session, to.sessions(unit))) {
            parted.add(
                new StoreFinding(
                    unit.serial(), session.id(), session.file(), 0, Kind.TWO_HISTORIES));
          } else if (there.isEmpty()) {
            to.take(harness, unit, session, from.entries(session));
            copied++;
          } else if (!there.equals(from.head(session.id()))) {
            Optional<List<Entry>> more = behind(there.get(), from.entries(session));
            if (more.isPresent()) {
              to.takeMore(session, there.get(), more.get());
              grown++;
            } else if (behind(from.head(session.id()).orElseThrow(), to.entries(session))
                .isEmpty()) {
              parted.add(
                  new StoreFinding(
                      unit.serial(), session.id(), session.file(), 0, Kind.TWO_HISTORIES));
            }
          }
        }
      }
    }
    return new Copy(copied, grown, parted);
  }

  /** Whether the unit has another test of its number there. */
  private static boolean isTaken(Session session, List<Session> others) {
    return others.stream().anyMatch(one -> one.number() == session.number());
  }

  /** What stands behind an entry; absent where it is none of these. */
  private static Optional<List<Entry>> behind(Head end, List<Entry> entries) {
    for (int i = 0; i < entries.size(); i++) {
      if (entries.get(i).seq() == end.seq() && entries.get(i).hash().equals(end.hash())) {
        return Optional.of(entries.subList(i + 1, entries.size()));
      }
    }
    return Optional.empty();
  }
}
