package dev.ringout.benchmarks;

import dev.ringout.meter.MeterAddress;
import dev.ringout.meter.MeterTrouble;
import dev.ringout.meter.Profiles;
import dev.ringout.meter.Sample;
import dev.ringout.meter.drive.Meter;
import dev.ringout.meter.link.Channels;
import dev.ringout.meter.link.SystemTicks;
import dev.ringout.meter.link.Transcript;
import dev.ringout.units.Text;
import java.lang.management.ManagementFactory;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;

/** What an open meter takes of a core, while somebody listens to it. */
public final class IdleMeter {
  private static final long WARM_MILLIS = 5000;

  private IdleMeter() {}

  /** {@code IdleMeter ADDRESS PROFILE SECONDS}. */
  public static void main(String[] args) throws Exception {
    Meter meter =
        Meter.open(
            MeterAddress.of(args[0]),
            new Profiles(Optional.empty()).find(args[1]),
            false,
            Channels.real(),
            new Transcript(new SystemTicks(), line -> {}));
    AtomicInteger samples = new AtomicInteger();
    Thread listener = new Thread(() -> listen(meter, samples));
    listener.start();
    Thread.sleep(WARM_MILLIS);
    samples.set(0);
    long cpu = processNanos();
    long wall = System.nanoTime();
    Thread.sleep(1000L * Integer.parseInt(args[2]));
    double share = 100.0 * (processNanos() - cpu) / (System.nanoTime() - wall);
    System.out.println(
        Text.of("%s, %s: %.2f %% of a core, %d values", args[0], args[1], share, samples.get()));
    meter.close();
    listener.join();
  }

  private static long processNanos() {
    return ((com.sun.management.OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean())
        .getProcessCpuTime();
  }

  private static void listen(Meter meter, AtomicInteger samples) {
    try {
      meter.stream(
          new Meter.Listener() {
            @Override
            public void sample(Sample sample) {
              samples.incrementAndGet();
            }

            @Override
            public void gone(MeterTrouble trouble) {
              System.out.println("gone: " + trouble.failure());
            }

            @Override
            public void back() {
              System.out.println("back");
            }
          });
    } catch (MeterTrouble e) {
      System.out.println(e.failure());
    }
  }
}
