package dev.ringout.store;

import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.Map;

/** A record of a unit that is kept in a file. */
class SealOverAUnitInAFileTest extends SealOverAUnit {
  private int stores;

  @Override
  String nothing() {
    return folder.resolve("store" + stores++ + ".db").toString();
  }

  /** The triggers can be dropped by who has the file. */
  @Override
  Connection behindItsBack(String address) throws SQLException, StoreTrouble {
    Connection connection = Stores.engine(StoreAddress.of(address), Map.of()).open(true);
    try (Statement statement = connection.createStatement()) {
      statement.execute("pragma foreign_keys = off");
      for (String table : JdbcStore.TABLES) {
        statement.execute("drop trigger if exists " + table + "_update");
        statement.execute("drop trigger if exists " + table + "_delete");
      }
    }
    return connection;
  }

  @Override
  String bytes(String hex) {
    return "x'" + hex + "'";
  }
}
