package dev.ringout.store;

import dev.ringout.source.FileBytes;
import dev.ringout.store.StoreTrouble.Reason;
import dev.ringout.units.Text;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** A store behind JDBC: one SQL for both engines. */
final class JdbcStore implements Store {
  /** All tables, each after those that it refers to. */
  static final List<String> TABLES =
      List.of("harness", "harness_part", "unit", "session", "entry", "station", "people");

  /** The one whose rows are changed, and in no copy: see {@link Lease}. */
  static final String LEASES = "lease";

  /** Twenty benches that bring in sheets of one unit at one moment take turns in fewer. */
  private static final int MOST_TRIES = 40;

  private static final String TAKEN_AWAY =
      "was taken away or exchanged while it was open, or the log beside it was: nothing is kept"
          + " before the program is started again";

  private static final String MEANWHILE =
      "was added to meanwhile; nothing was added, look at it again";

  private static final String NOT_KEPT =
      "did not keep what was added: somebody changed its file so that it throws away what comes in;"
          + " nothing was added; put the file away, and take the last backup";

  private static final String SET_BACK =
      "was set back while it was open, a copy put over it perhaps: what was kept last is not in it"
          + " any more; nothing is kept before the program is started again";

  private static final String TAKEN_ALONG =
      "was taken along to another version while it was open: nothing is kept before the program is"
          + " started again, a newer one perhaps";

  private static final int ROWS_AT_ONCE = 500;

  /** From a server: each may be a picture. */
  private static final int ENTRIES_AT_ONCE = 32;

  /** By which they are added to alone, as a unit is by its key. */
  private static final String PEOPLE = "people";

  private static final HexFormat HEX = HexFormat.of();

  private final Engine engine;
  private final boolean toWrite;
  private Connection connection;
  private int steps;
  private Optional<Object> place;

  /** Known once something was written. */
  private Optional<Object> log = Optional.empty();

  private String saved = "";
  private boolean held;

  /** What was kept last, and has to be there when more is. */
  private Optional<Kept> last = Optional.empty();

  /** The same, before it is known to be kept. */
  private Optional<Kept> next = Optional.empty();

  /** After a failure nobody knows what the connection is in the middle of: another is opened. */
  private boolean lost;

  private JdbcStore(Engine engine, boolean toWrite, Connection connection, int steps) {
    this.engine = engine;
    this.toWrite = toWrite;
    this.connection = connection;
    this.steps = steps;
    this.place = engine.place();
  }

  /** Opens a store of the version that this program knows. */
  static JdbcStore open(Engine engine, boolean toWrite) throws StoreTrouble {
    Connection connection = connect(engine, toWrite);
    try {
      return new JdbcStore(engine, toWrite, connection, Migrations.steps(connection));
    } catch (SQLException e) {
      throw engine.trouble(e);
    }
  }

  private static Connection connect(Engine engine, boolean toWrite) throws StoreTrouble {
    try {
      Connection connection = engine.open(toWrite);
      try {
        engine.waitNoLonger(connection, toWrite);
        requireCurrent(Migrations.version(connection));
        if (toWrite) {
          engine.ready(connection);
        }
        return connection;
      } catch (SQLException | StoreTrouble e) {
        connection.close();
        throw e;
      }
    } catch (SQLException e) {
      throw engine.trouble(e);
    }
  }

  static void requireCurrent(int version) throws StoreTrouble {
    if (version == 0) {
      throw new StoreTrouble(
          Reason.MISSING, "there is no store there yet; ringout store migrate makes one");
    }
    if (version > Migrations.CURRENT) {
      throw new StoreTrouble(
          Reason.NOT_UNDERSTOOD,
          Text.of(
              "is of a later version, and this program knows versions up to %d: use a newer ringout;"
                  + " nothing was changed",
              Migrations.CURRENT));
    }
    if (version < Migrations.CURRENT) {
      throw new StoreTrouble(
          Reason.NOT_UNDERSTOOD,
          Text.of(
              "is of version %d, this program works with version %d: copy it away (the file, or by the"
                  + " server's own means), then say ringout store migrate",
              version, Migrations.CURRENT));
    }
  }

  @Override
  public String shown() {
    return engine.shown();
  }

  @Override
  public synchronized void hold() throws StoreTrouble {
    try {
      engine.hold(connection);
      held = true;
    } catch (SQLException e) {
      throw engine.trouble(e);
    }
  }

  @Override
  public synchronized void settle() throws StoreTrouble {
    reopenIfLost();
    requireItsPlace();
    try {
      engine.settle(connection);
    } catch (SQLException e) {
      throw engine.trouble(e);
    }
  }

  private interface Work<T> {
    T run() throws SQLException;
  }

  /** Runs a piece of work as one transaction; one that lost a race runs again. */
  private <T> T transaction(Work<T> work) throws StoreTrouble {
    return run(work, false);
  }

  /**
   * Runs a single statement that only reads: that is a transaction by itself. A bench looks several
   * times in a second, and needs no word before and after.
   */
  private <T> T glance(Work<T> statement) throws StoreTrouble {
    return run(statement, true);
  }

  private synchronized <T> T run(Work<T> work, boolean byItself) throws StoreTrouble {
    if (held) {
      return heldWork(work);
    }
    for (int tries = 1; ; tries++) {
      reopenIfLost();
      requireItsPlace();
      next = Optional.empty();
      try {
        connection.setAutoCommit(byItself);
        T result = work.run();
        if (!byItself) {
          connection.commit();
          // Between two pieces of work nothing is held: SQLite's driver begins the next at once.
          connection.setAutoCommit(true);
        }
        last = next.or(() -> last);
        requireItsPlace();
        log = log.isPresent() ? log : engine.log();
        return result;
      } catch (SQLException e) {
        rollBack(e);
        if (e instanceof Declined declined) {
          throw StoreTrouble.of(declined.reason, declined.text);
        }
        lost = true;
        if (tries >= MOST_TRIES || !engine.isWorthAnotherTry(e)) {
          throw engine.trouble(e);
        }
      }
    }
  }

  /**
   * The same for work that adds something. A program that is open for days may find the store of
   * another version under its hands, and would add what that does not expect.
   */
  private <T> T adding(Work<T> work) throws StoreTrouble {
    return transaction(
        () -> {
          if (Migrations.steps(connection) != steps) {
            throw new Declined(Reason.NOT_UNDERSTOOD, TAKEN_ALONG);
          }
          return work.run();
        });
  }

  private void reopenIfLost() throws StoreTrouble {
    if (!lost) {
      return;
    }
    close();
    log = Optional.empty();
    if (!engine.isThere()) {
      throw new StoreTrouble(Reason.NOT_WRITTEN, TAKEN_AWAY);
    }
    connection = connect(engine, toWrite);
    lost = false;
  }

  /** What is written into a file that nobody finds under its name any more is not kept. */
  private void requireItsPlace() throws StoreTrouble {
    boolean isItsLog = log.isEmpty() || engine.log().equals(log);
    if (toWrite && !(isItsLog && engine.place().equals(place))) {
      saved = saved.isEmpty() ? save() : saved;
      throw new StoreTrouble(Reason.NOT_WRITTEN, TAKEN_AWAY + saved);
    }
  }

  /** What this program still holds open is all there is of what was kept last. */
  private String save() {
    try {
      return engine
          .save(connection)
          .map(copy -> "; what was kept until then is in " + copy)
          .orElse("");
    } catch (SQLException e) {
      return "";
    }
  }

  private <T> T heldWork(Work<T> work) throws StoreTrouble {
    try {
      return work.run();
    } catch (SQLException e) {
      throw engine.trouble(e);
    }
  }

  /** Where not even that can be done, what went wrong first is told. */
  private void rollBack(SQLException first) {
    try {
      if (!connection.getAutoCommit()) {
        connection.rollback();
        connection.setAutoCommit(true);
      }
    } catch (SQLException e) {
      first.addSuppressed(e);
    }
  }

  private interface Fill {
    void of(PreparedStatement statement) throws SQLException;
  }

  private interface Made<T> {
    T of(ResultSet row) throws SQLException;
  }

  private <T> List<T> select(String sql, Fill fill, Made<T> made) throws SQLException {
    try (PreparedStatement statement = connection.prepareStatement(sql)) {
      fill.of(statement);
      List<T> all = new ArrayList<>();
      try (ResultSet rows = statement.executeQuery()) {
        while (rows.next()) {
          all.add(made.of(rows));
        }
      } catch (IllegalArgumentException | NullPointerException e) {
        throw notWrittenSo(e);
      }
      return all;
    }
  }

  /** A damaged file can hold what no program wrote. */
  static SQLException notWrittenSo(Exception e) {
    return new SQLException("is damaged: it holds what no ringout wrote; take the last backup", e);
  }

  private int insert(String sql, Fill fill) throws SQLException {
    try (PreparedStatement statement = connection.prepareStatement(sql)) {
      fill.of(statement);
      return statement.executeUpdate();
    }
  }

  private static Fill strings(String... values) {
    return statement -> {
      for (int i = 0; i < values.length; i++) {
        statement.setString(i + 1, values[i]);
      }
    };
  }

  @Override
  public Added add(NewSession added) throws StoreTrouble {
    return adding(
        () -> {
          requireLast();
          if (isThere(added.session().id())) {
            return Added.WAS_THERE;
          }
          keep(added.harness());
          Session draft = added.session();
          engine.alone(connection, draft.unitKey());
          keepUnit(draft.unitKey(), draft.harness(), added.serial());
          List<Session> before = sessionsOf(draft.unitKey(), draft.harness());
          Session session =
              draft.as(
                  before.size() + 1, Session.nameAmong(before, draft.file(), added.fileAsTyped()));
          keep(session);
          StoredUnit unit = unitOf(draft.unitKey(), draft.harness());
          keepBehind(session, HashChain.start(unit, session, endOfLast(before)), added.entries());
          return Added.ADDED;
        });
  }

  @Override
  public Added take(HarnessFile harness, StoredUnit unit, Session session, List<Entry> entries)
      throws StoreTrouble {
    return adding(
        () -> {
          engine.alone(connection, unit.key());
          if (isThere(session.id())) {
            return Added.WAS_THERE;
          }
          if (sessionsOf(unit.key(), unit.harness()).size() != session.number() - 1) {
            throw new Declined(MEANWHILE);
          }
          keep(harness);
          keepUnit(unit.key(), unit.harness(), unit.serial());
          keep(session);
          keep(session, entries);
          return Added.ADDED;
        });
  }

  @Override
  public void takeMore(Session session, Head end, List<Entry> entries) throws StoreTrouble {
    adding(
        () -> {
          engine.alone(connection, session.unitKey());
          requireEnd(session, end);
          keep(session, entries);
          return Added.ADDED;
        });
  }

  @Override
  public void append(
      Session last, Head end, List<Entry.Draft> drafts, Optional<Lease> by, List<Lease> over)
      throws StoreTrouble {
    adding(
        () -> {
          requireLast();
          engine.alone(connection, last.unitKey());
          if (by.isPresent()) {
            requireLeads(by.get(), "");
          }
          for (Lease one : over) {
            takeOver(one, by.map(lease -> lease.who() + " at " + lease.station()).orElse(""));
          }
          List<Session> all = sessionsOf(last.unitKey(), last.harness());
          if (all.isEmpty() || !all.get(all.size() - 1).id().equals(last.id())) {
            throw new Declined(MEANWHILE);
          }
          requireEnd(last, end);
          keepBehind(last, end, drafts);
          return Added.ADDED;
        });
  }

  @Override
  public Lease lead(String sessionId, String station, String who) throws StoreTrouble {
    return adding(
        () -> {
          insert(
              Text.of(
                  "insert into lease (session, station, fence, who, until_second)"
                      + " values (?, ?, 1, ?, %1$s + %2$d) on conflict (session, station) do update"
                      + " set fence = lease.fence + 1, who = excluded.who,"
                      + " until_second = excluded.until_second, asked = ''",
                  engine.second(), Lease.SECONDS),
              strings(sessionId, station, who));
          return leasesWhere(OF_STATION, sessionId, station).get(0);
        });
  }

  @Override
  public void goOn(Lease lease, String asked) throws StoreTrouble {
    adding(
        () -> {
          requireLeads(lease, ASKS, asked, asked);
          return lease;
        });
  }

  @Override
  public void giveBack(Lease lease) throws StoreTrouble {
    transaction(() -> changed(lease, "until_second = 0", ""));
  }

  @Override
  public List<Lease> leases() throws StoreTrouble {
    return transaction(() -> leasesWhere("true" + HELD + IN_ORDER));
  }

  @Override
  public List<Lease> leases(String sessionId) throws StoreTrouble {
    return glance(() -> leasesWhere("session = ?" + HELD + IN_ORDER, sessionId));
  }

  private static final String OF_STATION = "session = ? and station = ?";
  private static final String HELD = " and until_second > 0";
  private static final String IN_ORDER = " order by session, station";

  /** A step that is asked still was asked since before. */
  private static final String ASKS =
      ", asked_second = case when asked = ? then asked_second else %1$s end, asked = ?";

  /** Two transactions wait here for each other, and the second finds what the first has left. */
  private void requireLeads(Lease lease, String more, String... values) throws SQLException {
    String until = Text.of("until_second = %1$s + %2$d" + more, engine.second(), Lease.SECONDS);
    if (changed(lease, until, "", values) == 0) {
      throw new Declined(Reason.TAKEN_OVER, takenOver(lease));
    }
  }

  private String takenOver(Lease lease) throws SQLException {
    List<Lease> now = leasesWhere(OF_STATION, lease.session(), lease.station());
    boolean here = !leasesWhere(OF_STATION + HELD, lease.session(), lease.station()).isEmpty();
    if (now.isEmpty()) {
      return "does not know that this bench leads the test";
    }
    String who = now.get(0).who();
    return here
        ? Text.of("says that another start of %s leads this test by now: %s", lease.station(), who)
        : Text.of("says that %s took this test over", who);
  }

  private void takeOver(Lease lease, String who) throws SQLException {
    int changed =
        changed(
            lease,
            "fence = fence + 1, until_second = 0, who = ?",
            Text.of(" and until_second between 1 and %s - 1", engine.second()),
            who);
    if (changed == 0) {
      throw new Declined(
          Text.of("has heard of %s again; nothing was added, look at it again", lease.station()));
    }
  }

  private int changed(Lease lease, String how, String where, String... values) throws SQLException {
    return insert(
        "update lease set " + how + " where session = ? and station = ? and fence = ?" + where,
        statement -> {
          strings(values).of(statement);
          statement.setString(values.length + 1, lease.session());
          statement.setString(values.length + 2, lease.station());
          statement.setInt(values.length + 3, lease.fence());
        });
  }

  private List<Lease> leasesWhere(String condition, String... values) throws SQLException {
    return select(
        Text.of(
            "select session, station, who, fence, %1$s - until_second + %2$d, asked,"
                + " %1$s - asked_second from lease where %3$s",
            engine.second(), Lease.SECONDS, condition),
        strings(values),
        row ->
            new Lease(
                text(row, 1),
                text(row, 2),
                text(row, 3),
                row.getInt(4),
                row.getLong(5),
                text(row, 6),
                row.getLong(7)));
  }

  private String endOfLast(List<Session> sessions) throws SQLException {
    return sessions.isEmpty()
        ? ""
        : headOf(sessions.get(sessions.size() - 1).id()).map(Head::hash).orElse("");
  }

  private void requireEnd(Session session, Head end) throws SQLException {
    if (!headOf(session.id()).equals(Optional.of(end))) {
      throw new Declined(MEANWHILE);
    }
  }

  /** What is asked for can't be, as the store is by now. */
  private static final class Declined extends SQLException {
    private static final long serialVersionUID = 1L;

    private final Reason reason;
    private final String text;

    Declined(String text) {
      this(Reason.NOT_WRITTEN, text);
    }

    Declined(Reason reason, String text) {
      super(text);
      this.reason = reason;
      this.text = text;
    }
  }

  private Optional<Head> headOf(String session) throws SQLException {
    return select(
            "select seq, hash from entry where session = ? order by seq desc limit 1",
            strings(session),
            row -> new Head(row.getInt(1), hex(row.getBytes(2))))
        .stream()
        .findFirst();
  }

  private boolean isThere(String session) throws SQLException {
    return !select("select id from session where id = ?", strings(session), row -> true).isEmpty();
  }

  private void keep(HarnessFile harness) throws SQLException {
    int made =
        insert(
            "insert into harness (digest, title, drawing, revision, file, folder)"
                + " values (?, ?, ?, ?, ?, ?) on conflict do nothing",
            statement -> {
              strings(
                      harness.digest(),
                      harness.title(),
                      harness.drawing(),
                      harness.revision(),
                      harness.file())
                  .of(statement);
              statement.setInt(6, harness.folder() ? 1 : 0);
            });
    if (made == 0) {
      return;
    }
    for (int i = 0; i < harness.parts().size(); i++) {
      int number = i + 1;
      FileBytes part = harness.parts().get(i);
      insert(
          "insert into harness_part (harness, number, name, content) values (?, ?, ?, ?)",
          statement -> {
            statement.setString(1, harness.digest());
            statement.setInt(2, number);
            statement.setString(3, part.name());
            statement.setBytes(4, part.first(part.size()));
          });
    }
  }

  private void keepUnit(String key, String harness, String serial) throws SQLException {
    insert(
        "insert into unit (unit_key, harness, serial) values (?, ?, ?) on conflict do nothing",
        strings(key, harness, serial));
  }

  private StoredUnit unitOf(String key, String harness) throws SQLException {
    return unitsWhere("where u.unit_key = ? and u.harness = ?", key, harness).get(0);
  }

  private void keep(Session session) throws SQLException {
    insert(
        "insert into session (id, unit_key, harness, station, who, started, file, digest, program,"
            + " added, number) values (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)",
        statement -> {
          strings(
                  session.id(),
                  session.unitKey(),
                  session.harness(),
                  session.station(),
                  session.who(),
                  session.started(),
                  session.file(),
                  session.digest(),
                  session.program(),
                  session.added())
              .of(statement);
          statement.setInt(11, session.number());
        });
  }

  private void keepBehind(Session session, Head end, List<Entry.Draft> drafts) throws SQLException {
    List<Entry> entries = HashChain.chained(session, end, drafts);
    keep(session, entries);
    next = Optional.of(new Kept(session.id(), Head.at(entries.get(entries.size() - 1))));
  }

  /**
   * A test, and where it ended when this program had added to it; never one that was copied, which
   * may have gaps.
   */
  private record Kept(String session, Head end) {}

  /** Whoever puts a copy over the file in place changes what nobody but its readers can see. */
  private void requireLast() throws SQLException {
    if (last.isEmpty()) {
      return;
    }
    engine.forget(connection);
    Head end = last.get().end();
    long there =
        select(
                "select count(*) from entry where session = ? and (seq < ? or hash = ?)",
                statement -> {
                  statement.setString(1, last.get().session());
                  statement.setInt(2, end.seq());
                  statement.setBytes(3, HEX.parseHex(end.hash()));
                },
                row -> row.getLong(1))
            .get(0);
    if (there != end.seq()) {
      throw new Declined(SET_BACK);
    }
  }

  private void keep(Session session, List<Entry> entries) throws SQLException {
    try (PreparedStatement statement =
        connection.prepareStatement(
            "insert into entry (session, seq, at, who, kind, body, previous, hash)"
                + " values (?, ?, ?, ?, ?, ?, ?, ?)")) {
      for (Entry entry : entries) {
        statement.setString(1, session.id());
        statement.setInt(2, entry.seq());
        statement.setString(3, entry.at());
        statement.setString(4, entry.who());
        statement.setString(5, entry.kind());
        statement.setString(6, entry.body());
        statement.setBytes(7, HEX.parseHex(entry.previous()));
        statement.setBytes(8, HEX.parseHex(entry.hash()));
        statement.addBatch();
        if (entry.seq() % ROWS_AT_ONCE == 0) {
          statement.executeBatch();
        }
      }
      statement.executeBatch();
    }
    requireKept("entry where session = ? and", strings(session.id()), 1, entries);
  }

  /**
   * A trigger of somebody else's can swallow a row, and no word of it comes back. Between those of
   * a copied test others may lie.
   */
  private void requireKept(String where, Fill fill, int filled, List<Entry> entries)
      throws SQLException {
    if (entries.isEmpty()) {
      return;
    }
    int there =
        select(
                "select count(*) from " + where + " seq between ? and ?",
                statement -> {
                  fill.of(statement);
                  statement.setInt(filled + 1, entries.get(0).seq());
                  statement.setInt(filled + 2, entries.get(entries.size() - 1).seq());
                },
                row -> row.getInt(1))
            .get(0);
    requireKept(there >= entries.size());
  }

  private static void requireKept(boolean kept) throws SQLException {
    if (!kept) {
      throw new Declined(NOT_KEPT);
    }
  }

  /** The columns of a verdict among those of the units. */
  private static final int FIRST_OF_VERDICT = 11;

  private static final String UNIT =
      "u.serial, u.unit_key, u.harness, h.title, h.drawing, h.revision";

  private static final String OF_UNITS = " from unit u join harness h on h.digest = u.harness ";

  private List<StoredUnit> unitsWhere(String condition, String... values) throws SQLException {
    return select("select " + UNIT + OF_UNITS + condition, strings(values), JdbcStore::unit);
  }

  private static StoredUnit unit(ResultSet row) throws SQLException {
    return new StoredUnit(
        text(row, 1), text(row, 2), text(row, 3), text(row, 4), text(row, 5), text(row, 6));
  }

  @Override
  public List<UnitSummary> units() throws StoreTrouble {
    return transaction(
        () ->
            select(
                "select "
                    + UNIT
                    + ", s.number, s.started, s.who, s.id,"
                    + " e.seq, e.at, e.who, e.kind, e.body, e.previous, e.hash"
                    + OF_UNITS
                    + "join session s on s.unit_key = u.unit_key and s.harness = u.harness"
                    + " and s.number = (select max(l.number) from session l"
                    + " where l.unit_key = u.unit_key and l.harness = u.harness)"
                    + " left join entry e on e.session = s.id and e.kind = 'verdict'"
                    + " and e.seq = (select max(v.seq) from entry v"
                    + " where v.session = s.id and v.kind = 'verdict')",
                strings(),
                row ->
                    new UnitSummary(
                        unit(row),
                        text(row, 10),
                        row.getInt(7),
                        text(row, 8),
                        text(row, 9),
                        verdict(row))));
  }

  @Override
  public List<StoredUnit> find(String unitKey) throws StoreTrouble {
    return glance(() -> unitsWhere("where u.unit_key = ? order by u.harness", unitKey));
  }

  @Override
  public List<StoredUnit> siblings(String harnessDigest) throws StoreTrouble {
    return transaction(() -> unitsWhere("where u.harness = ? order by u.unit_key", harnessDigest));
  }

  @Override
  public Optional<HarnessFile> harness(String digest) throws StoreTrouble {
    return transaction(
        () -> {
          List<FileBytes> parts =
              select(
                      "select name, content, number from harness_part where harness = ?"
                          + " order by number",
                      strings(digest),
                      JdbcStore::part)
                  .stream()
                  .flatMap(List::stream)
                  .toList();
          return select(
                  "select digest, title, drawing, revision, file, folder from harness"
                      + " where digest = ?",
                  strings(digest),
                  row ->
                      new HarnessFile(
                          text(row, 1),
                          text(row, 2),
                          text(row, 3),
                          text(row, 4),
                          text(row, 5),
                          row.getInt(6) == 1,
                          parts))
              .stream()
              .findFirst();
        });
  }

  /** Before a file with another number than its place one is missing: the digest is another. */
  private static List<FileBytes> part(ResultSet row) throws SQLException {
    FileBytes part = FileBytes.of(text(row, 1), row.getBytes(2));
    return row.getInt(3) == row.getRow()
        ? List.of(part)
        : List.of(FileBytes.of("", new byte[0]), part);
  }

  @Override
  public List<String> harnesses() throws StoreTrouble {
    return transaction(
        () -> select("select digest from harness order by digest", strings(), row -> text(row, 1)));
  }

  @Override
  public List<Session> sessions(StoredUnit unit) throws StoreTrouble {
    // No index is believed: a damaged one could hide a test.
    return transaction(() -> sessionsOf(unit.key(), unit.harness(), engine.scanned()));
  }

  private List<Session> sessionsOf(String unitKey, String harness) throws SQLException {
    return sessionsOf(unitKey, harness, "");
  }

  private List<Session> sessionsOf(String unitKey, String harness, String how) throws SQLException {
    return select(
        "select id, unit_key, harness, number, station, who, started, file, digest, program, added"
            + " from session"
            + how
            + " where unit_key = ? and harness = ? order by number",
        strings(unitKey, harness),
        row ->
            new Session(
                text(row, 1),
                text(row, 2),
                text(row, 3),
                row.getInt(4),
                text(row, 5),
                text(row, 6),
                text(row, 7),
                text(row, 8),
                text(row, 9),
                text(row, 10),
                text(row, 11)));
  }

  @Override
  public <T> List<T> entries(Session session, Function<Entry, T> made) throws StoreTrouble {
    return transaction(
        () ->
            select(
                "select seq, at, who, kind, body, previous, hash from entry where session = ?"
                    + " order by seq",
                statement -> {
                  strings(session.id()).of(statement);
                  statement.setFetchSize(ENTRIES_AT_ONCE);
                },
                row -> made.apply(entry(row, 1))));
  }

  @Override
  public Optional<Entry> entry(String sessionId, int seq) throws StoreTrouble {
    return transaction(
        () ->
            select(
                    "select seq, at, who, kind, body, previous, hash from entry"
                        + " where session = ? and seq = ?",
                    statement -> {
                      strings(sessionId).of(statement);
                      statement.setInt(2, seq);
                    },
                    row -> entry(row, 1))
                .stream()
                .findFirst());
  }

  private static Entry entry(ResultSet row, int first) throws SQLException {
    return new Entry(
        row.getInt(first),
        text(row, first + 1),
        text(row, first + 2),
        text(row, first + 3),
        text(row, first + 4),
        hex(row.getBytes(first + 5)),
        hex(row.getBytes(first + 6)));
  }

  /** A damaged file may hold nothing where a text must be: whoever needs it is told at once. */
  private static String text(ResultSet row, int column) throws SQLException {
    return Objects.requireNonNull(row.getString(column));
  }

  /** A damaged file may hold nothing where a hash must be: a hash of nothing is none. */
  private static String hex(byte @Nullable [] bytes) {
    return bytes == null ? "" : HEX.formatHex(bytes);
  }

  private static UnitSummary.Shown verdict(ResultSet row) throws SQLException {
    if (row.getString(FIRST_OF_VERDICT + 4) == null) {
      return new UnitSummary.Shown("", true);
    }
    Entry entry = entry(row, FIRST_OF_VERDICT);
    String session = text(row, FIRST_OF_VERDICT - 1);
    return new UnitSummary.Shown(entry.body(), HashChain.isAsWritten(session, entry));
  }

  @Override
  public List<StoredUnit> unitsOfLikeLists(HarnessFile list) throws StoreTrouble {
    return transaction(
        () ->
            unitsWhere(
                "where h.title = ? and h.drawing = ? and h.revision = ? and h.digest <> ?"
                    + " order by u.harness, u.unit_key",
                list.title(),
                list.drawing(),
                list.revision(),
                list.digest()));
  }

  @Override
  public Optional<String> damage() throws StoreTrouble {
    return transaction(() -> engine.damage(connection));
  }

  @Override
  public Map<String, Long> rows() throws StoreTrouble {
    return transaction(
        () -> {
          Map<String, Long> rows = new LinkedHashMap<>();
          for (String table : TABLES) {
            rows.put(
                table,
                select("select count(*) from " + table, strings(), row -> row.getLong(1)).get(0));
          }
          return rows;
        });
  }

  @Override
  public Optional<Head> head(String sessionId) throws StoreTrouble {
    return glance(() -> headOf(sessionId));
  }

  @Override
  public Added keep(Station station) throws StoreTrouble {
    return adding(
        () -> {
          List<Station> before = stationsOf(station.name());
          String last = before.isEmpty() ? "" : before.get(before.size() - 1).body();
          if (last.equals(station.body())) {
            return Added.WAS_THERE;
          }
          insert(
              "insert into station (name, added, body, number) values (?, ?, ?, ?)",
              statement -> {
                strings(station.name(), station.added(), station.body()).of(statement);
                statement.setInt(4, before.size() + 1);
              });
          requireKept(stationsOf(station.name()).size() > before.size());
          return Added.ADDED;
        });
  }

  @Override
  public Optional<Station> station(String name) throws StoreTrouble {
    return transaction(() -> stationsOf(name).stream().reduce((earlier, later) -> later));
  }

  private List<Station> stationsOf(String name) throws SQLException {
    return select(
        "select name, added, body from station where name = ? order by number",
        strings(name),
        JdbcStore::station);
  }

  private static Station station(ResultSet row) throws SQLException {
    return new Station(text(row, 1), text(row, 2), text(row, 3));
  }

  @Override
  public List<Station> stations() throws StoreTrouble {
    return transaction(
        () ->
            select(
                "select name, added, body from station order by name, number",
                strings(),
                JdbcStore::station));
  }

  @Override
  public List<Entry> people() throws StoreTrouble {
    return transaction(() -> peopleWhere(""));
  }

  @Override
  public List<Entry> peopleWhoMay() throws StoreTrouble {
    return glance(() -> peopleWhere(WHO_MAY));
  }

  /** The words of the kinds are the program's own: as they stand in the index. */
  private static final String WHO_MAY =
      " where kind in ("
          + Arrays.stream(SaidOfPeople.Kind.values())
              .filter(SaidOfPeople.Kind::decides)
              .map(kind -> "'" + kind.word() + "'")
              .collect(Collectors.joining(", "))
          + ")";

  private List<Entry> peopleWhere(String condition) throws SQLException {
    return select(
        "select seq, at, who, kind, body, previous, hash from people" + condition + " order by seq",
        strings(),
        row -> entry(row, 1));
  }

  @Override
  public void decide(int known, List<SaidOfPeople> said) throws StoreTrouble {
    adding(
        () -> {
          engine.alone(connection, PEOPLE);
          if (lastOfPeople(WHO_MAY).map(Head::seq).orElse(0) != known) {
            throw new Declined(MEANWHILE);
          }
          keepPeople(PeopleChain.chained(PeopleChain.end(lastOfPeople("")), said));
          return Added.ADDED;
        });
  }

  @Override
  public void tell(SaidOfPeople said) throws StoreTrouble {
    adding(
        () -> {
          engine.alone(connection, PEOPLE);
          keepPeople(PeopleChain.chained(PeopleChain.end(lastOfPeople("")), List.of(said)));
          return Added.ADDED;
        });
  }

  @Override
  public void takePeople(List<Entry> entries) throws StoreTrouble {
    adding(
        () -> {
          keepPeople(entries);
          return Added.ADDED;
        });
  }

  private Optional<Head> lastOfPeople(String condition) throws SQLException {
    return select(
            "select seq, hash from people" + condition + " order by seq desc limit 1",
            strings(),
            row -> new Head(row.getInt(1), hex(row.getBytes(2))))
        .stream()
        .findFirst();
  }

  private void keepPeople(List<Entry> entries) throws SQLException {
    for (Entry entry : entries) {
      insert(
          "insert into people (seq, at, who, kind, body, previous, hash)"
              + " values (?, ?, ?, ?, ?, ?, ?)",
          statement -> {
            statement.setInt(1, entry.seq());
            statement.setString(2, entry.at());
            statement.setString(3, entry.who());
            statement.setString(4, entry.kind());
            statement.setString(5, entry.body());
            statement.setBytes(6, HEX.parseHex(entry.previous()));
            statement.setBytes(7, HEX.parseHex(entry.hash()));
          });
    }
    requireKept("people where", strings(), 0, entries);
  }

  @Override
  public synchronized void close() {
    try {
      connection.close();
    } catch (SQLException e) {
      // What was committed is kept, and there is nothing else to lose.
    }
  }
}
