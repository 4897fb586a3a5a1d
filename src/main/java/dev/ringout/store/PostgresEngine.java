package dev.ringout.store;

import dev.ringout.store.StoreAddress.OnServer;
import dev.ringout.store.StoreTrouble.Reason;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Properties;
import java.util.Set;
import java.util.logging.Level;
import java.util.logging.Logger;
import java.util.stream.Collectors;

/** A server for a shop. */
final class PostgresEngine implements Engine {
  private static final String CONNECT_SECONDS = "10";
  private static final int ANSWER_MILLISECONDS = 15_000;

  /** A whole store may be counted in one answer. */
  private static final int LONG_ANSWER_MILLISECONDS = 60_000;

  private static final String UNIQUE = "23505";
  private static final List<String> AGAIN = List.of("40001", "40P01");
  private static final String NO_DATABASE = "3D000";
  private static final String NO_RIGHT = "42501";
  private static final String DISK_FULL = "53100";
  private static final String READ_ONLY = "25006";

  /** What it would say beside, the exceptions say as well. Kept, else it forgets how loud it is. */
  private static final Logger TALKATIVE = Logger.getLogger("org.postgresql");

  private final OnServer address;
  private final Map<String, String> environment;

  PostgresEngine(OnServer address, Map<String, String> environment) {
    this.address = address;
    this.environment = Map.copyOf(environment);
  }

  @Override
  public String shown() {
    return address.shown();
  }

  @Override
  public boolean isThere() {
    return true;
  }

  @Override
  public Connection open(boolean toWrite) throws SQLException, StoreTrouble {
    TALKATIVE.setLevel(Level.OFF);
    Properties properties = new Properties();
    user().ifPresent(user -> properties.setProperty("user", user));
    // Without one the driver looks into ~/.pgpass by itself.
    password().ifPresent(password -> properties.setProperty("password", password));
    properties.setProperty("connectTimeout", CONNECT_SECONDS);
    // Somebody in between may take the connection and then say nothing.
    properties.setProperty("loginTimeout", CONNECT_SECONDS);
    properties.setProperty("ApplicationName", "ringout");
    properties.setProperty("reWriteBatchedInserts", "true");
    String url =
        "jdbc:postgresql://"
            + address.server()
            + "/"
            + address.database()
            + (address.parameters().isEmpty() ? "" : "?" + address.parameters());
    refuseUnknown(url);
    return DriverManager.getConnection(url, properties);
  }

  /** The driver passes over an option that it does not know: a slip would be no TLS. */
  private void refuseUnknown(String url) throws SQLException, StoreTrouble {
    Set<String> known =
        Arrays.stream(DriverManager.getDriver(url).getPropertyInfo(url, new Properties()))
            .map(property -> property.name)
            .collect(Collectors.toSet());
    for (String parameter : address.parameters().split("&", -1)) {
      String name = parameter.split("=", -1)[0];
      if (!name.isEmpty() && !known.contains(name)) {
        throw new StoreTrouble(
            Reason.NOT_UNDERSTOOD,
            "has an option that the driver does not know: " + name + " (such as sslmode)");
      }
    }
  }

  /**
   * What is added is small, and somebody waits for it: a network that swallows everything is not
   * waited for as long as the system would. Whoever knows better says so in the address.
   */
  @Override
  public void waitNoLonger(Connection connection, boolean toWrite) throws SQLException {
    if (!address.parameters().contains("socketTimeout=")) {
      connection.setNetworkTimeout(
          Runnable::run, toWrite ? ANSWER_MILLISECONDS : LONG_ANSWER_MILLISECONDS);
    }
  }

  /** A commit is on the disk once it is acknowledged: the server's default, and said here. */
  @Override
  public void ready(Connection connection) throws SQLException {
    try (Statement statement = connection.createStatement()) {
      statement.execute("set synchronous_commit = on");
    }
  }

  private Optional<String> user() {
    return address.user().or(() -> Optional.ofNullable(environment.get("PGUSER")));
  }

  private Optional<String> password() {
    return address.password().or(() -> Optional.ofNullable(environment.get("PGPASSWORD")));
  }

  @Override
  public Map<String, String> words() {
    return Map.of("bytes", "bytea", "clustered", "", "unlessThere", "if not exists");
  }

  /** Rights do that: see {@link #letAdd}. */
  @Override
  public void guard(Connection connection) {}

  /** Nobody but the owner can change or take away what the role has added. */
  @Override
  public void letAdd(Connection connection, String role) throws SQLException, StoreTrouble {
    if (role.equalsIgnoreCase("public")) {
      throw mayMore(role, "is everybody");
    }
    connection.setAutoCommit(false);
    try {
      refuseOwner(connection, role);
      grant(connection, role);
      refuseMore(connection, role);
      connection.commit();
    } catch (SQLException | StoreTrouble e) {
      connection.rollback();
      throw e;
    } finally {
      connection.setAutoCommit(true);
    }
  }

  private static StoreTrouble mayMore(String role, String why) {
    return new StoreTrouble(
        Reason.NOT_UNDERSTOOD,
        "nothing was granted: the role "
            + role
            + " "
            + why
            + ", and a bench may read and add and nothing else; give it a role of its own");
  }

  private static void refuseOwner(Connection connection, String role)
      throws SQLException, StoreTrouble {
    String sql =
        "select r.rolsuper or pg_has_role(r.oid, c.relowner, 'MEMBER')"
            + " from pg_roles r, pg_class c where r.rolname = ? and c.oid = 'entry'::regclass";
    try (PreparedStatement statement = connection.prepareStatement(sql)) {
      statement.setString(1, role);
      try (ResultSet rows = statement.executeQuery()) {
        if (rows.next() && rows.getBoolean(1)) {
          throw mayMore(role, "owns the tables, or may act as their owner");
        }
      }
    }
  }

  /** Rights may come by way of everybody's, or of a group. */
  private static void refuseMore(Connection connection, String role)
      throws SQLException, StoreTrouble {
    String sql =
        "select 1 from pg_class c where c.oid = ?::regclass"
            + " and (has_table_privilege(?, c.oid, 'UPDATE, DELETE, TRUNCATE')"
            + " or has_any_column_privilege(?, c.oid, 'UPDATE'))";
    try (PreparedStatement statement = connection.prepareStatement(sql)) {
      for (String table : JdbcStore.TABLES) {
        statement.setString(1, table);
        statement.setString(2, role);
        statement.setString(3, role);
        try (ResultSet rows = statement.executeQuery()) {
          if (rows.next()) {
            throw mayMore(role, "may change rows of " + table + " by another right");
          }
        }
      }
    }
  }

  private static void grant(Connection connection, String role) throws SQLException {
    String quoted = "\"" + role.replace("\"", "\"\"") + "\"";
    try (Statement statement = connection.createStatement()) {
      for (String table : JdbcStore.TABLES) {
        statement.execute("revoke all on " + table + " from " + quoted);
        statement.execute("grant select, insert on " + table + " to " + quoted);
      }
      statement.execute("revoke all on " + JdbcStore.LEASES + " from " + quoted);
      statement.execute("grant select, insert, update on " + JdbcStore.LEASES + " to " + quoted);
      statement.execute("grant select on " + Migrations.HISTORY + " to " + quoted);
    }
  }

  /** A role that may only read and add may not lock rows; this it may. */
  @Override
  public void alone(Connection connection, String unitKey) throws SQLException {
    try (PreparedStatement statement =
        connection.prepareStatement("select pg_advisory_xact_lock(hashtext(?))")) {
      statement.setString(1, unitKey);
      statement.execute();
    }
  }

  @Override
  public void hold(Connection connection) throws SQLException {
    connection.setTransactionIsolation(Connection.TRANSACTION_REPEATABLE_READ);
    connection.setReadOnly(true);
    connection.setAutoCommit(false);
    try (Statement statement = connection.createStatement()) {
      statement.execute("select 1");
    }
  }

  /** The server looks after its own pages. */
  @Override
  public Optional<String> damage(Connection connection) {
    return Optional.empty();
  }

  /** Within a transaction that waited, {@code now()} would be when it began. */
  @Override
  public String second() {
    return "cast(extract(epoch from clock_timestamp()) as bigint)";
  }

  @Override
  public String scanned() {
    return "";
  }

  @Override
  public boolean isWorthAnotherTry(SQLException e) {
    // What this program itself finds wrong with a row has no state.
    String state = String.valueOf(e.getSQLState());
    return UNIQUE.equals(state) || AGAIN.contains(state);
  }

  @Override
  public StoreTrouble trouble(SQLException e) {
    String state = String.valueOf(e.getSQLState());
    String message = String.valueOf(e.getMessage()).lines().findFirst().orElse("");
    if (state.startsWith("28")) {
      return new StoreTrouble(
          Reason.DENIED,
          "does not let you in: "
              + message
              + " (PGUSER, PGPASSWORD, ~/.pgpass; TLS by ?sslmode=verify-full)",
          e);
    }
    if (state.startsWith("08") || state.startsWith("57P")) {
      return new StoreTrouble(
          Reason.MISSING,
          "can't be reached, or the connection broke: "
              + message
              + "; what was not acknowledged may be added again, nothing is added twice",
          e);
    }
    return switch (state) {
      case NO_DATABASE -> new StoreTrouble(Reason.MISSING, "there is no such database", e);
      case NO_RIGHT ->
          new StoreTrouble(Reason.DENIED, "the user may not do this there: " + message, e);
      case DISK_FULL ->
          new StoreTrouble(Reason.NOT_WRITTEN, "the server's disk is full; nothing was added", e);
      case READ_ONLY ->
          new StoreTrouble(
              Reason.NOT_WRITTEN, "may only be read (a replica?): nothing can be added", e);
      default -> new StoreTrouble(Reason.NOT_UNDERSTOOD, message + " (" + state + ")", e);
    };
  }
}
