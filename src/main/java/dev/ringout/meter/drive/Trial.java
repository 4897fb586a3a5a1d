package dev.ringout.meter.drive;

import dev.ringout.meter.MeterProfile;
import dev.ringout.meter.MeterProfile.Display;
import dev.ringout.meter.MeterReading;
import dev.ringout.meter.MeterTrouble;
import dev.ringout.meter.Sample;
import dev.ringout.meter.Settling;
import dev.ringout.meter.Ticks;
import dev.ringout.readings.Measured;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/**
 * A meter as it was seen at work for some seconds.
 *
 * @param samples all that it said
 * @param reading the value that settled last; absent where none did
 * @param settleMillis from the first value after the probes were open to the first of those that
 *     stood still; absent where it was not seen
 * @param noiseOhms how far values were from their middle while they stood still; absent where they
 *     did not
 * @param stepOhms the last digit then
 */
public record Trial(
    List<Sample> samples,
    Optional<MeterReading> reading,
    OptionalInt settleMillis,
    OptionalDouble noiseOhms,
    OptionalDouble stepOhms) {
  /** What is kept of the noise: what was seen in seconds is less than comes in hours. */
  private static final double MARGIN = 2;

  /** Looks at a meter for so long. */
  public static Trial of(Meter meter, Ticks ticks, long millis) throws MeterTrouble {
    long end = ticks.millis() + millis;
    List<Sample> samples = new ArrayList<>();
    Settling.Rule rule = meter.byKey();
    Settling settling = Settling.start(rule, ticks.millis());
    Optional<Sample> settled = Optional.empty();
    while (ticks.millis() < end) {
      // What comes a little late is no silence.
      Sample sample =
          meter.sample(Math.max(end - ticks.millis(), meter.profile().timing().answerMillis()));
      samples.add(sample);
      settling = settling.after(sample);
      if (settling.taken().isPresent()) {
        meter.confirm();
        settled = settling.taken();
        settling = Settling.start(rule, sample.askedMillis());
      }
    }
    return of(samples, settled.map(one -> meter.reading(one, true)));
  }

  private static Trial of(List<Sample> samples, Optional<MeterReading> reading) {
    List<Sample> still = standingStill(samples);
    List<Measured.Value> values = still.stream().flatMap(one -> value(one).stream()).toList();
    double middle = values.stream().mapToDouble(Measured.Value::ohms).average().orElse(0);
    OptionalDouble noise =
        values.stream().mapToDouble(value -> Math.abs(value.ohms() - middle)).max();
    OptionalDouble step = values.stream().mapToDouble(value -> 2 * value.halfDigitOhms()).max();
    int first = samples.size() - still.size();
    OptionalInt settleMillis = still.isEmpty() ? OptionalInt.empty() : settleMillis(samples, first);
    return new Trial(List.copyOf(samples), reading, settleMillis, noise, step);
  }

  private static Optional<Measured.Value> value(Sample sample) {
    return sample.measured().flatMap(Measured::value);
  }

  /** The last values that are within a hundredth, or a tenth of an ohm, of the very last one. */
  private static List<Sample> standingStill(List<Sample> samples) {
    int first = samples.size();
    while (first > 0 && isNear(samples.get(first - 1), samples.get(samples.size() - 1))) {
      first--;
    }
    List<Sample> still = samples.subList(first, samples.size());
    return still.size() < 3 ? List.of() : still;
  }

  private static boolean isNear(Sample one, Sample last) {
    Optional<Double> ohms = value(one).map(Measured.Value::ohms);
    Optional<Double> lastOhms = value(last).map(Measured.Value::ohms);
    return ohms.isPresent()
        && lastOhms.isPresent()
        && Math.abs(ohms.get() - lastOhms.get()) <= Math.max(0.1, lastOhms.get() / 100);
  }

  /** From the last open before the first that stood still. */
  private static OptionalInt settleMillis(List<Sample> samples, int first) {
    for (int i = first - 1; i >= 0; i--) {
      if (samples.get(i).measured().map(Measured::isOverRange).orElse(false)) {
        return OptionalInt.of((int) (samples.get(first).millis() - samples.get(i).millis()));
      }
    }
    return OptionalInt.empty();
  }

  /** The profile with what was seen, to be kept under a name of one's own. */
  public MeterProfile kept(String name, MeterProfile profile) {
    Display display = profile.display();
    Display measured =
        noiseOhms.isEmpty()
            ? display
            : new Display(
                display.stepOhms(),
                Math.max(MARGIN * noiseOhms.getAsDouble(), display.noiseOhms()),
                display.noiseShare());
    return profile.measured(name, measured, settleMillis.orElse(profile.timing().settleMillis()));
  }
}
