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
    OptionalDouble middle = still.stream().flatMapToDouble(one -> ohms(one).stream()).average();
    OptionalDouble noise =
        middle.isEmpty()
            ? OptionalDouble.empty()
            : still.stream()
                .flatMapToDouble(one -> ohms(one).stream())
                .map(ohms -> Math.abs(ohms - middle.getAsDouble()))
                .max();
    OptionalDouble step =
        still.stream()
            .flatMap(one -> one.measured().flatMap(Measured::value).stream())
            .mapToDouble(value -> 2 * value.halfDigitOhms())
            .max();
    return new Trial(List.copyOf(samples), reading, settleMillis(samples, still), noise, step);
  }

  private static OptionalDouble ohms(Sample sample) {
    return sample
        .measured()
        .flatMap(Measured::value)
        .map(value -> OptionalDouble.of(value.ohms()))
        .orElse(OptionalDouble.empty());
  }

  /** The last values that are within a hundredth, or a tenth of an ohm, of the very last one. */
  private static List<Sample> standingStill(List<Sample> samples) {
    List<Sample> still = new ArrayList<>();
    OptionalDouble last = OptionalDouble.empty();
    for (int i = samples.size() - 1; i >= 0; i--) {
      OptionalDouble ohms = ohms(samples.get(i));
      if (last.isEmpty()) {
        last = ohms;
      }
      if (ohms.isEmpty()
          || Math.abs(ohms.getAsDouble() - last.getAsDouble())
              > Math.max(0.1, last.getAsDouble() / 100)) {
        break;
      }
      still.add(0, samples.get(i));
    }
    return still.size() < 3 ? List.of() : still;
  }

  private static OptionalInt settleMillis(List<Sample> samples, List<Sample> still) {
    if (still.isEmpty()) {
      return OptionalInt.empty();
    }
    int first = samples.indexOf(still.get(0));
    for (int i = first - 1; i >= 0; i--) {
      if (samples.get(i).measured().map(Measured::isOverRange).orElse(false)) {
        return OptionalInt.of((int) (still.get(0).millis() - samples.get(i).millis()));
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
