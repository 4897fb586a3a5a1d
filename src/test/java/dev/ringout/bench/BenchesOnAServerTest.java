package dev.ringout.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import dev.ringout.store.StoreAddress;
import dev.ringout.store.Stores;
import dev.ringout.support.PostgresServer;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Benches of a shop, on one store on a server. */
class BenchesOnAServerTest {
  private static final PostgresServer SERVER = PostgresServer.running();
  private static final String GOOD = "0.07 ohm";

  @TempDir private Path folder;

  private BenchOfTest bench(String station, String address) throws Exception {
    return BenchOfTest.onServer(
        folder.resolve(station), station, address, Map.of("PGPASSWORD", SERVER.password()));
  }

  @Test
  void two_benches_prove_one_unit_and_go_on_after_the_server_was_killed() throws Exception {
    String address = SERVER.address(SERVER.database());
    Stores.migrate(
        StoreAddress.of(address), Map.of("PGPASSWORD", SERVER.password()), Optional.empty());
    try (BenchOfTest one = bench("bench 1", address);
        BenchOfTest other = bench("bench 2", address)) {
      var list = one.list(BenchOfTest.cable(folder));
      one.bench.start(list, "7", BenchOfTest.by("R. Adeyemi"));
      other.bench.start(
          other.bench.tests().find("7", list.file().digest()).orElseThrow(),
          BenchOfTest.by("K. Novak"));
      one.type(GOOD);
      other.bench.jump("W2");
      other.type(GOOD);
      SERVER.kill();
      Refused gone = assertThrows(Refused.class, () -> one.type(GOOD));
      assertEquals(Refused.Reason.NOT_WRITTEN, gone.reason());
      SERVER.startAgain();
      for (int i = 0; i < 20 && one.bench.state().session().orElseThrow().step().isPresent(); i++) {
        one.type(one.step().asks() == BenchState.Asks.JOINED ? GOOD : "OL");
      }
      assertEquals(List.of(), one.explained().found().faults());
      one.bench.finish();
      var unit = one.bench.tests().find("7", list.file().digest()).orElseThrow();
      List<String> read =
          one.bench
              .tests()
              .unit(unit)
              .match(
                  given ->
                      given.value().readings().readings().stream()
                          .map(reading -> reading.by() + ": " + reading.subject())
                          .toList(),
                  refused -> {
                    throw new AssertionError(refused.problems());
                  });
      assertEquals(1, read.stream().filter(by -> by.startsWith("K. Novak")).count());
      assertEquals(read.stream().distinct().toList(), read, "each kept once");
      assertEquals(List.of(), one.defects);
    }
  }
}
