package dev.ringout.bench;

import dev.ringout.jobs.Answer;
import dev.ringout.jobs.LedTests.ListAtHand;
import dev.ringout.jobs.StoreAtHand;
import dev.ringout.meter.MeterTrouble;
import dev.ringout.meter.Settling;
import dev.ringout.meter.Ticks;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** A bench on a store in a folder, whose values are typed, and whose clock goes on by itself. */
final class BenchOfTest implements AutoCloseable {
  final Bench bench;
  final Path store;
  final List<BenchState.Tone> tones = Collections.synchronizedList(new ArrayList<>());
  private final MinuteByMinute clock;
  final List<Throwable> defects = Collections.synchronizedList(new ArrayList<>());

  private BenchOfTest(Path folder, String station, String address, Map<String, String> environment)
      throws MeterTrouble {
    this(folder, station, address, environment, "none", Optional.empty(), new MinuteByMinute());
  }

  private BenchOfTest(
      Path folder,
      String station,
      String address,
      Map<String, String> environment,
      String meter,
      Optional<String> profile,
      MinuteByMinute clock)
      throws MeterTrouble {
    this.store = folder.resolve("units.db");
    this.clock = clock;
    this.bench =
        Bench.open(
            new BenchSetup(
                new StoreAtHand(address, environment),
                station,
                meter,
                profile,
                "none",
                Optional.empty(),
                folder,
                false,
                0,
                1,
                clock,
                ZoneOffset.UTC),
            new Bench.Listener() {
              @Override
              public void state(BenchState state) {}

              @Override
              public void live(String text, Settling.Stage stage) {}

              @Override
              public void tone(BenchState.Tone tone) {
                tones.add(tone);
              }

              @Override
              public void defect(Throwable cause) {
                defects.add(cause);
              }
            });
  }

  static BenchOfTest in(Path folder) throws MeterTrouble {
    return in(folder, "bench 1");
  }

  static BenchOfTest in(Path folder, String station) throws MeterTrouble {
    return new BenchOfTest(folder, station, folder.resolve("units.db").toString(), Map.of());
  }

  /** With a meter, and so with a clock that runs while it is waited for. */
  static BenchOfTest withMeter(Path folder, String meter, String profile) throws MeterTrouble {
    return new BenchOfTest(
        folder,
        "bench 1",
        folder.resolve("units.db").toString(),
        Map.of(),
        meter,
        Optional.of(profile),
        new MinuteByMinute() {
          @Override
          public long millis() {
            return System.nanoTime() / 1_000_000;
          }
        });
  }

  /** A bench of a shop: its store is on a server. */
  static BenchOfTest onServer(
      Path folder, String station, String address, Map<String, String> environment)
      throws MeterTrouble {
    return new BenchOfTest(folder, station, address, environment);
  }

  /** Two cables, of three wires and of one, as a folder of tables. */
  static Path cable(Path folder) throws IOException {
    Path list = Files.createDirectories(folder.resolve("cable"));
    Files.writeString(
        list.resolve("wires.csv"),
        """
        Wire,From,To,Gauge,Length (m)
        W1,J1-1,P1-1,20,2
        W2,J1-2,P1-2,20,2
        W3,J1-3,P1-3,20,2
        W4,J2-1,P2-1,20,2
        """);
    Files.writeString(list.resolve("header.csv"), "Name,Value\ntitle,Cable\nrevision,A\n");
    Files.writeString(list.resolve("limits.csv"), "Name,Value,Unit\ninsulation test,none,\n");
    return list;
  }

  ListAtHand list(Path path) {
    return bench
        .tests()
        .list(path)
        .match(
            Answer.Given::value,
            refused -> {
              throw new AssertionError(refused.problems());
            });
  }

  static Bench.Start by(String tester) {
    return new Bench.Start(tester, Map.of(), Set.of(), Set.of(), "");
  }

  static Bench.Start after(String tester, Set<String> opened, Set<String> touched) {
    return new Bench.Start(tester, Map.of(), opened, touched, "a contact was changed");
  }

  /** Somebody sets the clock of the bench. */
  void setClock(Duration by) {
    clock.set(by);
  }

  /** What is asked now. */
  BenchState.StepState step() {
    return bench.state().session().orElseThrow().step().orElseThrow();
  }

  /** Where the probes are asked for. */
  String asked() {
    return step().from().text() + " to " + step().to().text();
  }

  /** Types a value for the step that is asked. */
  BenchState type(String value) throws Refused {
    return bench.typed(step().id(), value, "");
  }

  /** Waits until what was read is explained. */
  BenchState.SessionState explained() throws InterruptedException {
    for (int i = 0; i < 3000; i++) {
      BenchState.SessionState session = bench.state().session().orElseThrow();
      if (!session.found().working()) {
        return session;
      }
      Thread.sleep(10);
    }
    throw new AssertionError("nothing was explained");
  }

  @Override
  public void close() {
    bench.close();
  }

  /** A clock that goes on half a minute with each look at it. */
  private static class MinuteByMinute implements Ticks {
    private Instant now = Instant.parse("2026-11-30T08:00:00Z");

    @Override
    public synchronized Instant now() {
      now = now.plusSeconds(30);
      return now;
    }

    synchronized void set(Duration by) {
      now = now.plus(by);
    }

    @Override
    public long millis() {
      return 0;
    }
  }
}
