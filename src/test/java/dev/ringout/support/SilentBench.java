package dev.ringout.support;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;

/** A bench of which nothing was heard for an hour, as the store has it, though it goes on. */
public final class SilentBench {
  private SilentBench() {}

  /** Each sign of life of a station is an hour old from now on. */
  public static void in(Path store, String station) throws SQLException {
    try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + store);
        Statement statement = connection.createStatement()) {
      String its = "station = '" + station + "' and until_second > 0";
      statement.execute(
          "create trigger asleep after update on lease when new.station = '"
              + station
              + "' and new.until_second > 0 begin update lease set until_second = until_second"
              + " - 3600 where "
              + its
              + "; end");
      statement.execute("update lease set until_second = until_second where " + its);
    }
  }
}
