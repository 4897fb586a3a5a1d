package dev.ringout.support;

import dev.ringout.meter.MeterReading;
import dev.ringout.meter.MeterTrouble;
import dev.ringout.meter.drive.Meter;
import dev.ringout.meter.link.SystemTicks;
import dev.ringout.meter.practice.PracticeInstrument;
import dev.ringout.meter.practice.PracticeProbes;
import dev.ringout.meter.practice.PracticeServer;
import dev.ringout.readings.Measured;
import java.io.IOException;
import java.util.Optional;

/** Reads pair after pair of a practice meter through an unruly line. */
public final class MetersThroughProxy {
  private static final String PROFILE =
      "speaks: scpi\nconnect-ms: 500\nanswer-ms: 250\nnoise-ohms: 0.004\nnoise-share: 0.0005\n";

  private MetersThroughProxy() {}

  /**
   * What came of it.
   *
   * @param read right values
   * @param said pairs of which it was said that nothing could be read
   * @param wrong values that are not this pair's
   */
  public record Outcome(int read, int said, int wrong, long slowestMillis) {}

  /** Plain commands. */
  public static Outcome raw(UnrulyProxy.Habit habit, int pairs, long seed) throws IOException {
    return run(habit, pairs, seed, false);
  }

  /** HiSLIP. */
  public static Outcome hislip(UnrulyProxy.Habit habit, int pairs, long seed) throws IOException {
    return run(habit, pairs, seed, true);
  }

  private static Outcome run(UnrulyProxy.Habit habit, int pairs, long seed, boolean hislip)
      throws IOException {
    PracticeProbes probes = new PracticeProbes(new SystemTicks(), seed);
    PracticeInstrument instrument = new PracticeInstrument(probes, (from, to) -> Optional.empty());
    try (PracticeServer server = new PracticeServer(instrument, 0, 0);
        UnrulyProxy proxy =
            new UnrulyProxy(hislip ? server.hislipPort() : server.rawPort(), habit, seed, 400)) {
      String address =
          hislip
              ? "TCPIP::127.0.0.1::hislip0," + proxy.port() + "::INSTR"
              : "127.0.0.1:" + proxy.port();
      return read(address, probes, pairs);
    }
  }

  private static Outcome read(String address, PracticeProbes probes, int pairs) {
    int read = 0;
    int said = 0;
    int wrong = 0;
    long slowest = 0;
    Optional<Meter> meter = Optional.empty();
    for (int pair = 0; pair < pairs; pair++) {
      double ohms = 1 + 1.7 * (pair % 50);
      probes.touch(ohms);
      long before = System.nanoTime();
      try {
        if (meter.isEmpty()) {
          meter = Optional.of(RealMeter.open(address, PROFILE));
        }
        MeterReading reading = meter.get().read(meter.get().byKey(), 5000);
        double value = reading.measured().value().map(Measured.Value::ohms).orElse(-1.0);
        // Its leads are in the value, and its noise.
        if (Math.abs(value - ohms - 0.08) < 0.02) {
          read++;
        } else {
          wrong++;
        }
      } catch (MeterTrouble e) {
        said++;
      }
      slowest = Math.max(slowest, (System.nanoTime() - before) / 1_000_000);
    }
    meter.ifPresent(Meter::close);
    return new Outcome(read, said, wrong, slowest);
  }
}
