package dev.ringout.support;

import dev.ringout.meter.MeterProfile.Display;
import dev.ringout.meter.Sample;
import dev.ringout.meter.Settling;
import dev.ringout.meter.Shown;
import dev.ringout.readings.Measured;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.function.DoubleUnaryOperator;

/**
 * Hands that touch pairs of points, one after the other, and meters that look on: what is taken of
 * each touch is held against what was there. It shares nothing with the rule that takes.
 */
public final class SimulatedTouches {
  private static final double OPEN = Double.POSITIVE_INFINITY;
  private static final int MILLIS_OF_A_STEP = 2;

  /** So long somebody waits for the tone. */
  private static final int PATIENCE_MILLIS = 6000;

  private SimulatedTouches() {}

  /**
   * A kind of meter.
   *
   * @param apertureMillis over which it takes the mean of what it finds
   * @param counts of its display
   * @param noiseOhms and {@code noiseShare}: how far a value may be off, which is also what is
   *     stated of it
   * @param gaps whether it says nothing while it changes its range, else it shows the old one
   */
  public record Kind(
      String name,
      int periodMillis,
      int apertureMillis,
      int counts,
      double leastRangeOhms,
      double noiseOhms,
      double noiseShare,
      boolean gaps) {
    Display display() {
      return new Display(0, noiseOhms, noiseShare);
    }
  }

  /** The kinds that are looked at. */
  public static List<Kind> kinds() {
    return List.of(
        new Kind("commands, 25 a second", 40, 20, 1_000_000, 100, 0.002, 0.0005, true),
        new Kind("commands, 66 a second", 15, 10, 100_000, 100, 0.01, 0.002, false),
        new Kind("lines, 10 a second", 100, 60, 60_000, 600, 0.02, 0.001, true),
        new Kind("lines, 4 a second", 250, 150, 6_000, 600, 0.1, 0.001, false),
        new Kind("lines, 2.5 a second", 400, 200, 60_000, 600, 0.01, 0.001, true));
  }

  /** What a hand does. */
  public enum Hand {
    CLEAN,
    SLIPPING,
    DRIFTING,
    HUMMING,
    THUMBS,
    CAPACITOR,
    JUMPING_OFF
  }

  /**
   * One touch. Whoever holds the probes lifts them a little after the tone, or gives up.
   *
   * @param truth what is between the points while they are touched, by the milliseconds since
   * @param mayBeTaken whether there is a value at all
   */
  private record Touch(Hand hand, long fromMillis, DoubleUnaryOperator truth, boolean mayBeTaken) {}

  /**
   * What came of all touches of one kind of meter.
   *
   * @param wrong values that were not there, or taken of the pair before
   * @param twice values taken again without the probes having been lifted
   * @param missed touches of which nothing was taken though they stood still for long
   * @param delays from the first right display to the taking, in milliseconds, in order
   */
  public record Outcome(int touches, List<String> wrong, int twice, int missed, List<Long> delays) {
    /** The middle of the delays. */
    public long median() {
      return delays.get(delays.size() / 2);
    }

    /** The delay that so many of a hundred do not exceed. */
    public long percentile(int share) {
      return delays.get(Math.min(delays.size() - 1, delays.size() * share / 100));
    }
  }

  /** Touches so many pairs of one kind of hand. */
  public static Outcome run(Kind kind, Hand hand, int touches, long seed) {
    return new Run(kind, hand, touches, new Random(seed)).outcome();
  }

  /** One hand at one meter. */
  private static final class Run {
    private final Kind kind;
    private final Random random;
    private final Hand hand;
    private final int count;
    private final List<String> wrong = new ArrayList<>();
    private final List<Long> delays = new ArrayList<>();
    private final List<Double> history = new ArrayList<>();
    private int twice;
    private int missed;
    private double rangeOhms = 60e6;
    private int rangingSamples;

    Run(Kind kind, Hand hand, int count, Random random) {
      this.kind = kind;
      this.hand = hand;
      this.count = count;
      this.random = random;
    }

    private Touch touch(long from) {
      double ohms = Math.pow(10, -2 + 4 * random.nextDouble());
      double hum = kind.noiseOhms() * 0.4;
      double phase = 6 * random.nextDouble();
      return switch (hand) {
        case CLEAN, THUMBS, JUMPING_OFF, SLIPPING -> new Touch(hand, from, since -> ohms, true);
        case DRIFTING ->
            new Touch(
                hand,
                from,
                since -> ohms * (1 + 0.2 * Math.exp(-since / 400)) + Math.exp(-since / 300),
                true);
        case HUMMING ->
            new Touch(hand, from, since -> ohms + hum * Math.sin(0.3147 * since + phase), true);
        case CAPACITOR -> {
          double farads = Math.pow(10, -5 + 2.7 * random.nextDouble());
          yield new Touch(hand, from, since -> since / 1000 / farads, false);
        }
      };
    }

    Outcome outcome() {
      Settling settling = Settling.start(Settling.Rule.joined(kind.display()), 0);
      Touch touch = touch(1500);
      Slip slip = new Slip();
      int number = 0;
      boolean taken = false;
      long askedMillis = 0;
      long rightSince = -1;
      long liftMillis = touch.fromMillis() + PATIENCE_MILLIS;
      for (long millis = 0; number < count; millis += MILLIS_OF_A_STEP) {
        if (millis >= liftMillis) {
          missed += touch.mayBeTaken() && !taken ? 1 : 0;
          number++;
          touch = touch(millis + 900 + random.nextInt(900));
          liftMillis = touch.fromMillis() + PATIENCE_MILLIS;
          taken = false;
          rightSince = -1;
        }
        record(found(touch, millis, liftMillis, slip));
        if (millis % kind.periodMillis() >= MILLIS_OF_A_STEP) {
          continue;
        }
        Sample sample = sample(askedMillis, millis);
        askedMillis = millis;
        boolean right =
            millis > touch.fromMillis() && isRight(sample, touch) && rangingSamples == 0;
        rightSince = right ? rightSince < 0 ? millis : rightSince : -1;
        settling = settling.after(sample);
        if (settling.taken().isEmpty()) {
          continue;
        }
        if (millis <= touch.fromMillis() || !isRight(settling.taken().get(), touch)) {
          wrong.add(told(touch, settling.taken().get()));
        } else if (taken) {
          twice++;
        } else {
          delays.add(millis - (rightSince < 0 ? millis : rightSince));
          liftMillis = millis + 400 + random.nextInt(400);
        }
        taken = true;
        settling = Settling.start(Settling.Rule.joined(kind.display()), millis);
      }
      delays.sort(null);
      return new Outcome(count, wrong, twice, missed, delays);
    }

    private String told(Touch touch, Sample taken) {
      return dev.ringout.units.Text.of(
          "%s, %s, %d ms after the touch: %s where %s is",
          kind.name(),
          touch.hand(),
          taken.millis() - touch.fromMillis(),
          taken.raw(),
          truth(touch, taken.millis()));
    }

    private void record(double ohms) {
      history.add(ohms);
      if (history.size() > 300) {
        history.subList(0, 100).clear();
      }
    }

    /** What is between the probes at one moment. */
    private double found(Touch touch, long millis, long liftMillis, Slip slip) {
      long since = millis - touch.fromMillis();
      if (since < 0) {
        boolean thumbs = touch.hand() == Hand.THUMBS && since < -300;
        return thumbs ? 4e5 + 4e6 * Math.abs(Math.sin(millis / 90.0)) : OPEN;
      }
      double truth = touch.truth().applyAsDouble((double) since);
      if (since < 5 + touch.fromMillis() % 70) {
        return random.nextBoolean() ? OPEN : truth + 60 * random.nextDouble();
      }
      if (touch.hand() == Hand.SLIPPING && since < 300 + touch.fromMillis() % 900) {
        return truth + slip.ohms(millis);
      }
      long left = liftMillis - millis;
      boolean off = touch.hand() == Hand.JUMPING_OFF && left > 150 && left < 300;
      return off ? OPEN : truth;
    }

    /** Ohms of a contact that is dragged over dirt: another every few hundredths of a second. */
    private final class Slip {
      private long untilMillis;
      private double ohms;

      double ohms(long millis) {
        if (millis >= untilMillis) {
          untilMillis = millis + 10 + random.nextInt(90);
          ohms = random.nextInt(8) == 0 ? OPEN : Math.pow(10, -1 + 2.5 * random.nextDouble());
        }
        return ohms;
      }
    }

    private Sample sample(long askedMillis, long millis) {
      double mean = mean();
      if (rangingSamples > 0) {
        rangingSamples--;
        if (kind.gaps()) {
          return sample(askedMillis, millis, "----", new Shown.NoValue());
        }
      }
      double shownIn = rangeOhms;
      chooseRange(mean);
      if (mean > shownIn) {
        return sample(
            askedMillis,
            millis,
            "OL",
            new Shown.Resistance(new Measured.OverRange(OptionalDouble.empty())));
      }
      double off = (2 * random.nextDouble() - 1);
      double noisy = mean + off * (kind.noiseOhms() * 0.6 + kind.noiseShare() * mean);
      double step = shownIn / kind.counts();
      double shown = Math.round(noisy / step) * step;
      return sample(
          askedMillis,
          millis,
          Double.toString(shown),
          new Shown.Resistance(
              shown < 0
                  ? new Measured.BelowZero(shown, "" + shown)
                  : new Measured.Value(shown, step / 2)));
    }

    private static Sample sample(long asked, long millis, String raw, Shown shown) {
      return new Sample(asked, millis, Instant.EPOCH, raw, shown);
    }

    /** Up at once where it does not fit, down one range at a time. */
    private void chooseRange(double mean) {
      if (mean > rangeOhms) {
        if (rangeOhms < 60e6) {
          rangeOhms = mean > 6e6 ? 60e6 : rangeOhms * 10;
          rangingSamples = 1;
        }
      } else if (mean < rangeOhms * 0.09 && rangeOhms > kind.leastRangeOhms()) {
        rangeOhms = Math.max(kind.leastRangeOhms(), rangeOhms / (kind.gaps() ? 1000 : 10));
        rangingSamples = 1;
      }
    }

    private double mean() {
      int samples = Math.max(1, kind.apertureMillis() / MILLIS_OF_A_STEP);
      int from = Math.max(0, history.size() - samples);
      double sum = 0;
      for (int i = from; i < history.size(); i++) {
        // A current source that runs into its limit: open counts as the most it can drive.
        sum += Math.min(history.get(i), 200e6);
      }
      return sum / (history.size() - from);
    }

    private boolean isRight(Sample sample, Touch touch) {
      return touch.mayBeTaken()
          && sample
              .measured()
              .flatMap(SimulatedTouches::ohms)
              .map(ohms -> Math.abs(ohms - truth(touch, sample.millis())) <= allowed(sample, touch))
              .orElse(false);
    }

    private double truth(Touch touch, long millis) {
      return touch
          .truth()
          .applyAsDouble(Math.max(0, millis - touch.fromMillis() - kind.apertureMillis() / 2.0));
    }

    /** A step of the display and the noise that is stated. */
    private double allowed(Sample sample, Touch touch) {
      double step =
          sample
              .measured()
              .flatMap(Measured::value)
              .map(value -> 2 * value.halfDigitOhms())
              .orElse(kind.leastRangeOhms() / kind.counts());
      double truth = truth(touch, sample.millis());
      return Math.min(step, Math.max(0.1, truth / 100))
          + kind.noiseOhms()
          + kind.noiseShare() * truth;
    }
  }

  private static java.util.Optional<Double> ohms(Measured measured) {
    if (measured instanceof Measured.BelowZero below) {
      return java.util.Optional.of(below.ohms());
    }
    return measured.value().map(Measured.Value::ohms);
  }
}
