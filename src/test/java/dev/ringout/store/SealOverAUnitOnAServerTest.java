package dev.ringout.store;

import dev.ringout.support.PostgresServer;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.Map;

/** A record of a unit that is kept on a server. */
class SealOverAUnitOnAServerTest extends SealOverAUnit {
  private static final PostgresServer SERVER = PostgresServer.running();

  @Override
  String nothing() {
    String password =
        URLEncoder.encode(SERVER.password(), StandardCharsets.UTF_8).replace("+", "%20");
    return SERVER.address(SERVER.database(), "owner:" + password);
  }

  /** An owner of the tables may do what he likes. */
  @Override
  Connection behindItsBack(String address) throws SQLException, StoreTrouble {
    Connection connection = Stores.engine(StoreAddress.of(address), Map.of()).open(true);
    try (Statement statement = connection.createStatement()) {
      statement.execute("set session_replication_role = replica");
    }
    return connection;
  }

  @Override
  String bytes(String hex) {
    return "'\\x" + hex + "'";
  }
}
