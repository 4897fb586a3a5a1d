package dev.ringout.store;

import dev.ringout.store.StoreTrouble.Reason;
import java.io.PrintWriter;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.SQLFeatureNotSupportedException;
import java.sql.Statement;
import java.util.Optional;
import java.util.logging.Level;
import java.util.logging.Logger;
import javax.sql.DataSource;
import org.flywaydb.core.Flyway;
import org.flywaydb.core.api.FlywayException;
import org.flywaydb.core.api.MigrationVersion;
import org.flywaydb.core.api.configuration.FluentConfiguration;

/** The numbered steps that make the tables, and take those of an earlier version along. */
final class Migrations {
  /** The table in which a store keeps its version. */
  static final String HISTORY = "store_version";

  /** The version that this program reads and writes. */
  static final int CURRENT = 5;

  /** Kept, for a logger that nobody keeps forgets how loud it is. */
  private static final Logger TALKATIVE = Logger.getLogger("org.flywaydb");

  private Migrations() {}

  /**
   * Takes a store to the current version, or to an earlier one for a test of the steps. A server
   * may have done a step that was killed before it was noted as done, so each may be done again.
   */
  static void migrate(Engine engine, int version) throws StoreTrouble {
    TALKATIVE.setLevel(Level.OFF);
    FluentConfiguration steps =
        Flyway.configure(Migrations.class.getClassLoader())
            .dataSource(new OfEngine(engine))
            .locations("classpath:dev/ringout/store/migration")
            .table(HISTORY)
            .placeholders(engine.words())
            // The first steps have been worded anew; what they make is the same.
            .validateOnMigrate(false)
            .target(MigrationVersion.fromVersion(Integer.toString(version)));
    try {
      steps.load().migrate();
    } catch (FlywayException e) {
      if (String.valueOf(e.getMessage()).contains("non-empty schema")) {
        throw new StoreTrouble(
            Reason.NOT_UNDERSTOOD,
            "holds tables of another program: give the store its own database",
            e);
      }
      throw cause(e, engine)
          .orElseGet(
              () ->
                  new StoreTrouble(
                      Reason.NOT_UNDERSTOOD,
                      "can't be taken to version " + version + ": " + firstLine(e),
                      e));
    }
  }

  private static Optional<StoreTrouble> cause(FlywayException e, Engine engine) {
    for (Throwable at = e; at != null; at = at.getCause()) {
      if (at instanceof SQLException sql) {
        return Optional.of(engine.trouble(sql));
      }
    }
    return Optional.empty();
  }

  private static String firstLine(Exception e) {
    return String.valueOf(e.getMessage()).lines().findFirst().orElse("");
  }

  /** The version of a store; 0 where there is none at the address yet. */
  static int version(Connection connection) throws SQLException {
    try (ResultSet tables =
        connection.getMetaData().getTables(null, null, HISTORY, new String[] {"TABLE"})) {
      if (!tables.next()) {
        return 0;
      }
    }
    try (Statement statement = connection.createStatement();
        ResultSet rows =
            statement.executeQuery(
                "select \"version\" from " + HISTORY + " where \"version\" is not null")) {
      int version = 0;
      while (rows.next()) {
        String one = rows.getString(1);
        // What this program would never have written is a later program's.
        version =
            Math.max(version, one.matches("\\d{1,6}") ? Integer.parseInt(one) : Integer.MAX_VALUE);
      }
      return version;
    } catch (NumberFormatException e) {
      throw JdbcStore.notWrittenSo(e);
    }
  }

  /** How many steps were taken to make a store what it is. */
  static int steps(Connection connection) throws SQLException {
    try (Statement statement = connection.createStatement();
        ResultSet rows = statement.executeQuery("select count(*) from " + HISTORY)) {
      return rows.next() ? rows.getInt(1) : 0;
    }
  }

  /**
   * Connections as the engine opens them: the steps are as safe from a power cut as what follows.
   */
  private record OfEngine(Engine engine) implements DataSource {
    @Override
    public Connection getConnection() throws SQLException {
      try {
        return engine.open(true);
      } catch (StoreTrouble e) {
        throw new SQLException(e.text(), e);
      }
    }

    @Override
    public Connection getConnection(String user, String password) throws SQLException {
      return getConnection();
    }

    @Override
    public PrintWriter getLogWriter() throws SQLException {
      throw new SQLFeatureNotSupportedException();
    }

    @Override
    public void setLogWriter(PrintWriter out) throws SQLException {
      throw new SQLFeatureNotSupportedException();
    }

    @Override
    public void setLoginTimeout(int seconds) throws SQLException {
      throw new SQLFeatureNotSupportedException();
    }

    @Override
    public int getLoginTimeout() throws SQLException {
      throw new SQLFeatureNotSupportedException();
    }

    @Override
    public Logger getParentLogger() {
      return TALKATIVE;
    }

    @Override
    public <T> T unwrap(Class<T> type) throws SQLException {
      throw new SQLFeatureNotSupportedException();
    }

    @Override
    public boolean isWrapperFor(Class<?> type) {
      return false;
    }
  }
}
