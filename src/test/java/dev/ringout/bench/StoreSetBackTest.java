package dev.ringout.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.Statement;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A backup is put over the store of a bench that is open: what came after it is gone. */
class StoreSetBackTest {
  @TempDir private Path folder;

  /** What a copy of the file alone has. */
  private byte[] backup(BenchOfTest at) throws Exception {
    try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + at.store);
        Statement statement = connection.createStatement()) {
      statement.execute("pragma wal_checkpoint(truncate)");
    }
    return Files.readAllBytes(at.store);
  }

  /** Found by an attacker: the next value went on behind those that were left, without a word. */
  @Test
  void no_value_goes_on_behind_values_that_are_gone() throws Exception {
    try (BenchOfTest at = BenchOfTest.in(folder)) {
      at.bench.start(at.list(BenchOfTest.cable(folder)), "7", BenchOfTest.by("R. Adeyemi"));
      at.type("0.07 ohm");
      byte[] earlier = backup(at);
      at.type("0.07 ohm");
      at.type("0.07 ohm");
      backup(at);
      Files.write(at.store, earlier);
      for (int i = 0; i < 2; i++) {
        Refused refused = assertThrows(Refused.class, () -> at.type("0.07 ohm"));
        assertTrue(
            refused.problems().toString().contains("set back"), refused.problems().toString());
      }
      assertEquals(List.of(), at.defects);
    }
  }

  /** Nothing of its test is there any more. */
  @Test
  void no_value_is_kept_in_a_test_that_is_gone() throws Exception {
    try (BenchOfTest at = BenchOfTest.in(folder)) {
      at.bench.start(at.list(BenchOfTest.cable(folder)), "7", BenchOfTest.by("R. Adeyemi"));
      at.type("0.07 ohm");
      at.bench.leave();
      byte[] earlier = backup(at);
      at.bench.start(at.list(folder.resolve("cable")), "8", BenchOfTest.by("R. Adeyemi"));
      at.type("0.07 ohm");
      backup(at);
      Files.write(at.store, earlier);
      Refused refused = assertThrows(Refused.class, () -> at.type("0.07 ohm"));
      assertTrue(refused.problems().toString().contains("set back"), refused.problems().toString());
      assertEquals(List.of(), at.defects);
    }
  }
}
