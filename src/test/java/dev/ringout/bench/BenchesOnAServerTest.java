package dev.ringout.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.ringout.readings.Reading;
import dev.ringout.store.StoreAddress;
import dev.ringout.store.StoreTrouble;
import dev.ringout.store.Stores;
import dev.ringout.support.CutLine;
import dev.ringout.support.PostgresServer;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
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

  private static String made() throws Exception {
    String address = SERVER.address(SERVER.database());
    Stores.migrate(
        StoreAddress.of(address), Map.of("PGPASSWORD", SERVER.password()), Optional.empty());
    return address;
  }

  private static void until(BooleanSupplier what) throws InterruptedException {
    for (int i = 0; i < 500 && !what.getAsBoolean(); i++) {
      Thread.sleep(20);
    }
    assertTrue(what.getAsBoolean());
  }

  private static BenchState.SessionState session(BenchOfTest bench) {
    return bench.bench.state().session().orElseThrow();
  }

  @Test
  void a_bench_says_by_itself_that_the_network_is_gone_and_that_it_is_back() throws Exception {
    String direct = made();
    try (CutLine line = CutLine.to(direct);
        BenchOfTest bench = bench("bench 1", line.address(direct))) {
      bench.bench.start(bench.list(BenchOfTest.cable(folder)), "7", BenchOfTest.by("R. Adeyemi"));
      bench.type(GOOD);
      String asked = bench.step().id();
      line.cut();
      until(() -> session(bench).trouble().startsWith("Nothing can be kept now"));
      Refused gone = assertThrows(Refused.class, () -> bench.bench.typed(asked, GOOD, ""));
      assertEquals(Refused.Reason.NOT_WRITTEN, gone.reason());
      assertEquals(asked, bench.step().id(), "what was typed for it stays on the page");
      line.mend();
      until(() -> session(bench).trouble().isEmpty());
      bench.bench.typed(asked, GOOD, "");
      assertEquals(2, session(bench).progress().made());
      assertEquals(List.of(), bench.defects);
    }
  }

  /** A firewall that forgets a connection, a switch without power: no reset, only silence. */
  @Test
  @Timeout(60)
  void a_network_that_swallows_everything_is_not_waited_for_for_ever() throws Exception {
    String direct = made();
    String bounded = direct + (direct.contains("?") ? "&" : "?") + "socketTimeout=2&loginTimeout=2";
    try (CutLine line = CutLine.to(direct);
        BenchOfTest bench = bench("bench 1", line.address(bounded))) {
      bench.bench.start(bench.list(BenchOfTest.cable(folder)), "7", BenchOfTest.by("R. Adeyemi"));
      bench.type(GOOD);
      String asked = bench.step().id();
      line.swallow();
      Refused gone = assertThrows(Refused.class, () -> bench.bench.typed(asked, GOOD, ""));
      assertEquals(Refused.Reason.NOT_WRITTEN, gone.reason());
      until(() -> session(bench).trouble().startsWith("Nothing can be kept now"));
      assertEquals(asked, bench.step().id(), "what was typed for it stays on the page");
      StoreTrouble closed =
          assertThrows(
              StoreTrouble.class,
              () ->
                  Stores.open(
                      StoreAddress.of(line.address(bounded)),
                      Map.of("PGPASSWORD", SERVER.password()),
                      false));
      assertTrue(closed.text().contains("can't be reached"), closed.text());
      line.mend();
      until(() -> session(bench).trouble().isEmpty());
      bench.bench.typed(asked, GOOD, "");
      assertEquals(2, session(bench).progress().made());
      assertEquals(List.of(), bench.defects);
    }
  }

  /** The value is in the store, and nobody at the bench can know it: typed again it must be one. */
  @Test
  void a_value_whose_answer_was_lost_is_kept_once_however_soon_it_is_typed_again()
      throws Exception {
    String direct = made();
    try (CutLine line = CutLine.to(direct);
        BenchOfTest bench = bench("bench 1", line.address(direct))) {
      bench.bench.start(bench.list(BenchOfTest.cable(folder)), "7", BenchOfTest.by("R. Adeyemi"));
      for (int i = 0; i < 3; i++) {
        String asked = bench.step().id();
        String value = bench.step().asks() == BenchState.Asks.JOINED ? GOOD : "OL";
        line.cutAtCommitOf("typed");
        Refused unknown = assertThrows(Refused.class, () -> bench.bench.typed(asked, value, ""));
        assertEquals(Refused.Reason.NOT_WRITTEN, unknown.reason());
        assertTrue(line.isCut());
        line.mend();
        Refused again = assertThrows(Refused.class, () -> bench.bench.typed(asked, value, ""));
        assertEquals(Refused.Reason.MEANWHILE, again.reason(), "it is there");
        until(() -> !bench.step().id().equals(asked));
        assertEquals(i + 1, session(bench).progress().made());
      }
      var unit =
          bench
              .bench
              .tests()
              .find("7", bench.list(BenchOfTest.cable(folder)).file().digest())
              .orElseThrow();
      List<Reading> read =
          bench
              .bench
              .tests()
              .unit(unit)
              .match(
                  given -> given.value().readings().readings(),
                  refused -> {
                    throw new AssertionError(refused.problems());
                  });
      assertEquals(3, read.size());
      assertEquals(3, read.stream().map(Reading::place).distinct().count(), "each has its row");
      assertEquals(List.of(), bench.defects);
    }
  }
}
