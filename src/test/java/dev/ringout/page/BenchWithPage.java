package dev.ringout.page;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.ringout.Ringout;
import dev.ringout.bench.BenchSetup;
import dev.ringout.jobs.Answer;
import dev.ringout.jobs.LedTests.ListAtHand;
import dev.ringout.jobs.StoreAtHand;
import dev.ringout.meter.link.SystemTicks;
import dev.ringout.support.Run;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A bench that serves its page to a test. */
final class BenchWithPage implements AutoCloseable {
  private final BenchPage page;
  private final Path store;
  private final List<Throwable> defects = Collections.synchronizedList(new ArrayList<>());

  private BenchWithPage(Path folder, String station, String meter, Path... lists) throws Exception {
    this.store = folder.resolve("units.db");
    StoreAtHand at = new StoreAtHand(store.toString(), Map.of());
    Ringout door = Ringout.onFilesAnd(at);
    List<ListAtHand> known = new ArrayList<>();
    for (Path list : lists) {
      known.add(list(door, list));
    }
    this.page =
        BenchPage.open(
            door,
            new BenchSetup(
                at,
                station,
                meter,
                meter.equals("none") ? Optional.empty() : Optional.of("scpi-fast"),
                "none",
                Optional.empty(),
                folder,
                !meter.equals("none"),
                0,
                1,
                new SystemTicks(),
                ZoneId.systemDefault()),
            known,
            0,
            defects::add);
  }

  static ListAtHand list(Ringout door, Path path) {
    return door.ledTests()
        .list(path)
        .match(
            Answer.Given::value,
            refused -> {
              throw new AssertionError(refused.problems());
            });
  }

  /** Where what the meter shows is typed. */
  static BenchWithPage typed(Path folder, Path... lists) throws Exception {
    return new BenchWithPage(folder, "Bench 1", "none", lists);
  }

  /** Of another name, on the same store. */
  static BenchWithPage another(Path folder, String station, Path... lists) throws Exception {
    return new BenchWithPage(folder, station, "none", lists);
  }

  /** With a practice meter at an address of this machine, and hands of the test's own. */
  static BenchWithPage practice(Path folder, String address, Path... lists) throws Exception {
    return new BenchWithPage(folder, "Bench 1", address, lists);
  }

  URI ticket() {
    return page.ticket();
  }

  Path store() {
    return store;
  }

  /** The program beside it, on the same store. */
  Run said(Object... words) {
    List<Object> all = new ArrayList<>(List.of(words));
    all.addAll(List.of("--store", store));
    return Run.of(all.toArray());
  }

  /** A cable of the bridge's lamps: small and large letters, and nothing of insulation. */
  static Path lamps(Path folder) throws Exception {
    return list(
        folder.resolve("lamps"),
        "HSB-2301",
        "W1,J1-A,P1-1,20,2\nW2,J1-a,P1-2,20,2\nW3,J1-B,P1-3,20,2\nW4,J2-1,P2-1,20,2\n",
        "insulation test,none,\n");
  }

  /** A cable of one of its motors, whose insulation is proven too. */
  static Path motor(Path folder) throws Exception {
    return list(
        folder.resolve("motor"),
        "HSB-2302",
        "W1,J1-1,P1-1,20,2\nW2,J1-2,P1-2,20,2\n",
        "insulation test,required,\n");
  }

  private static Path list(Path folder, String drawing, String wires, String limits)
      throws Exception {
    Files.createDirectories(folder);
    Files.writeString(folder.resolve("wires.csv"), "Wire,From,To,Gauge,Length (m)\n" + wires);
    Files.writeString(
        folder.resolve("header.csv"),
        "Name,Value\ntitle,Cable of the bridge\ndrawing," + drawing + "\nrevision,A\n");
    Files.writeString(folder.resolve("limits.csv"), "Name,Value,Unit\n" + limits);
    return folder;
  }

  @Override
  public void close() {
    page.close();
    assertEquals(List.of(), defects, "mistakes of the program");
  }
}
