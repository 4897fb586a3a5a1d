package dev.ringout.meter.drive;

import dev.ringout.meter.Failure;
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
 * @param trouble why it ended before its time, or without any value; absent where it did not
 */
public record Trial(
    List<Sample> samples,
    Optional<MeterReading> reading,
    OptionalInt settleMillis,
    OptionalDouble noiseOhms,
    OptionalDouble stepOhms,
    Optional<MeterTrouble> trouble) {
  /** What is kept of the noise: what was seen in seconds is less than comes in hours. */
  private static final double MARGIN = 2;

  /** Looks at a meter for so long; what fails in the middle of it takes nothing away. */
  public static Trial of(Meter meter, Ticks ticks, long millis) {
    return new Watch(meter, ticks, millis).seen();
  }

  /** Somebody who looks at a meter. */
  private static final class Watch {
    private final Meter meter;
    private final Ticks ticks;
    private final long millis;
    private final long end;
    private final Settling.Rule rule;
    private final List<Sample> samples = new ArrayList<>();
    private Settling settling;
    private Optional<Sample> settled = Optional.empty();
    private Optional<MeterTrouble> unmended = Optional.empty();

    Watch(Meter meter, Ticks ticks, long millis) {
      this.meter = meter;
      this.ticks = ticks;
      this.millis = millis;
      this.end = ticks.millis() + millis;
      this.rule = meter.byKey();
      this.settling = Settling.start(rule, ticks.millis());
    }

    Trial seen() {
      Optional<MeterTrouble> trouble = watched();
      return Trial.of(samples, settled.map(one -> meter.reading(one, true)), trouble);
    }

    /** Looks on until its time is over; gives what is left unmended then. */
    private Optional<MeterTrouble> watched() {
      Meter.Recovery recovery = meter.endAt(end);
      while (ticks.millis() < end) {
        try {
          take(meter.sample(waitMillis()));
          unmended = Optional.empty();
          recovery = meter.endAt(end);
        } catch (MeterTrouble e) {
          Optional<MeterTrouble> lasting = mended(recovery, e);
          if (lasting.isPresent()) {
            return lasting.filter(one -> !isQuiet(one));
          }
        }
      }
      return unmended.or(this::noValue);
    }

    /** What comes a little late is no silence; nobody has to press a key. */
    private long waitMillis() {
      long left = Math.max(end - ticks.millis(), 1);
      return meter.isByItsKey() ? left : Math.max(left, meter.profile().timing().answerMillis());
    }

    private boolean isQuiet(MeterTrouble trouble) {
      return meter.isByItsKey() && trouble.failure().isSilence() && !samples.isEmpty();
    }

    private void take(Sample sample) throws MeterTrouble {
      samples.add(sample);
      if (samples.size() == 1) {
        // A number may come with an error in the queue each time, and never settle.
        meter.confirm();
      }
      settling = settling.after(sample);
      if (settling.taken().isPresent()) {
        meter.confirm();
        settled = settling.taken();
        settling = Settling.start(rule, sample.askedMillis());
      }
    }

    /** Brings the link back; gives what can't be mended. */
    private Optional<MeterTrouble> mended(Meter.Recovery recovery, MeterTrouble trouble) {
      if (trouble.failure().isEndOfTime()) {
        return unmended.or(this::noValue);
      }
      try {
        meter.recover(recovery, trouble);
        unmended = Optional.of(trouble);
        settling = settling.afterGap();
        return Optional.empty();
      } catch (MeterTrouble e) {
        return Optional.of(e);
      }
    }

    /** Nothing that was said was a value: what speaks against the last of it. */
    private Optional<MeterTrouble> noValue() {
      if (samples.isEmpty() || samples.stream().anyMatch(Sample::isValue)) {
        return Optional.empty();
      }
      Sample last = samples.get(samples.size() - 1);
      return Optional.of(
          new MeterTrouble(
              Objection.to("", last.raw(), last.shown())
                  .orElse(new Failure.NoValue(millis, last.raw())),
              List.of()));
    }
  }

  private static Trial of(
      List<Sample> samples, Optional<MeterReading> reading, Optional<MeterTrouble> trouble) {
    List<Sample> still = standingStill(samples);
    List<Measured.Value> values = still.stream().flatMap(one -> value(one).stream()).toList();
    double middle = values.stream().mapToDouble(Measured.Value::ohms).average().orElse(0);
    OptionalDouble noise =
        values.stream().mapToDouble(value -> Math.abs(value.ohms() - middle)).max();
    OptionalDouble step = values.stream().mapToDouble(value -> 2 * value.halfDigitOhms()).max();
    int first = samples.size() - still.size();
    OptionalInt settleMillis = still.isEmpty() ? OptionalInt.empty() : settleMillis(samples, first);
    return new Trial(List.copyOf(samples), reading, settleMillis, noise, step, trouble);
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
