package dev.ringout.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.ringout.seal.Digest;
import dev.ringout.source.FileBytes;
import dev.ringout.support.Run;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** A record of a unit that is kept in a file. */
class SealOverAUnitInAFileTest extends SealOverAUnit {
  private static final int SEED = 26;
  private static final int DAMAGES = 40;

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

  /** A bad disk does not ask which rows are guarded. */
  @Test
  void whatever_a_damaged_file_is_said_to_hold_as_sealed_it_holds() throws Exception {
    sealed("r.html");
    List<String> whole = rows(store);
    byte[] good = Files.readAllBytes(Path.of(store));
    Random random = new Random(SEED);
    int told = 0;
    for (int i = 0; i < DAMAGES; i++) {
      byte[] bad = good.clone();
      for (int spot = random.nextInt(8); spot >= 0; spot--) {
        bad[random.nextInt(bad.length)] = (byte) random.nextInt(256);
      }
      String damaged = nothing();
      Files.write(Path.of(damaged), bad);
      Run run = verify("r.html", damaged);
      assertTrue(run.code() >= 0 && run.code() <= 2, run.out() + run.err());
      if (run.code() == 0) {
        assertEquals(whole, rows(damaged), "seed " + SEED + ", damage " + i);
      } else {
        told++;
      }
    }
    assertTrue(told > 0, "some of it is in the rows");
  }

  /** As the program reads them: SQLite keeps some columns twice, and takes either. */
  private static List<String> rows(String address) throws StoreTrouble {
    List<String> rows = new ArrayList<>();
    try (Store open = Stores.open(StoreAddress.of(address), Map.of(), false)) {
      StoredUnit unit = open.find(Digest.of("418")).get(0);
      for (Session session : open.sessions(unit)) {
        rows.add(session.toString());
        open.entries(session).forEach(entry -> rows.add(entry.toString()));
      }
      for (FileBytes part : open.harness(unit.harness()).orElseThrow().parts()) {
        rows.add(part.name() + " " + Digest.of(part.first(part.size())));
      }
    }
    return rows;
  }
}
