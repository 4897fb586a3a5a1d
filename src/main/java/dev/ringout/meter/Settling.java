package dev.ringout.meter;

import dev.ringout.readings.Measured;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Says when a value counts as settled: a pure function of the samples so far, each with its time.
 *
 * <p>Where points should be joined it takes a value by itself, once the probes were seen open since
 * the value before. By a key it takes whatever stands still, open too, since the key.
 */
public final class Settling {
  /** Shorter than a hand moves a probe, longer than a probe jumps (common practice, no source). */
  private static final long LIFTED_MILLIS = 300;

  private static final int LIFTED_SAMPLES = 2;

  /**
   * What is said may be late by any time, so the time between two values as they were said proves
   * nothing: the second was asked for only after the first had been said. So far apart they are in
   * truth: longer than a meter that looks for its range shows nothing (common practice, no source).
   */
  private static final long LIFTED_IN_TRUTH_MILLIS = 200;

  /** Longer than bounce and the search for a range together (common practice, no source). */
  private static final long AGREE_IN_TRUTH_MILLIS = 240;

  /** The shortest time in which values have to agree, and the fewest of them. */
  private static final long AGREE_MILLIS = 300;

  private static final int AGREE_SAMPLES = 3;

  /** The coarsest display that tells joints, in ohms; else so many steps of it. */
  private static final double COARSEST_OHMS = 0.1;

  private static final double STEPS_OF_A_VALUE = 100;

  /** By a key, a leak may wander so much of itself: it is written down, not judged to the digit. */
  private static final double WANDERING_SHARE = 0.01;

  private static final double WANDERING_FROM_OHMS = 10_000;

  private final Rule rule;
  private final long fromMillis;
  private final Stage stage;
  private final List<Sample> window;
  private final Optional<Sample> taken;

  private Settling(
      Rule rule, long fromMillis, Stage stage, List<Sample> window, Optional<Sample> taken) {
    this.rule = rule;
    this.fromMillis = fromMillis;
    this.stage = stage;
    this.window = window;
    this.taken = taken;
  }

  /**
   * What is waited for.
   *
   * @param byKey whether a person said that the probes are where they belong
   * @param mostOhms what is above it is never taken by itself, and counts as probes in the air: a
   *     thumb across both probes has some megohms
   * @param display of the meter
   */
  public record Rule(boolean byKey, double mostOhms, MeterProfile.Display display) {
    /** Above the parts of most units, below thumbs (common practice, no source). */
    public static final double USUAL_MOST_OHMS = 100_000;

    /** A value where points should be joined. */
    public static Rule joined(MeterProfile.Display display) {
      return new Rule(false, USUAL_MOST_OHMS, display);
    }

    /** A value by a key. */
    public static Rule byKey(MeterProfile.Display display) {
      return new Rule(true, Double.POSITIVE_INFINITY, display);
    }
  }

  /** How far it is. */
  public enum Stage {
    /** The probes have to be seen open first. */
    LIFT,
    /** They were; now they may touch. */
    OPEN,
    /** Values come, and do not agree yet. */
    TOUCHED,
    /** A value is taken. */
    TAKEN
  }

  /**
   * Nothing seen yet.
   *
   * @param fromMillis samples that were asked for before it are of the points before
   */
  public static Settling start(Rule rule, long fromMillis) {
    Stage stage = rule.byKey() ? Stage.OPEN : Stage.LIFT;
    return new Settling(rule, fromMillis, stage, List.of(), Optional.empty());
  }

  /** How far it is. */
  public Stage stage() {
    return stage;
  }

  /** The sample that is taken; absent until one is. */
  public Optional<Sample> taken() {
    return taken;
  }

  /** After one more sample. */
  public Settling after(Sample sample) {
    if (stage == Stage.TAKEN || sample.askedMillis() < fromMillis) {
      return this;
    }
    Optional<Measured> measured = sample.measured();
    if (measured.isEmpty()) {
      // While it changes its range a meter says nothing of the air either.
      return stage == Stage.LIFT && sample.shown().isNoValue() ? this : broken();
    }
    if (stage == Stage.LIFT) {
      return isInTheAir(measured.get()) ? lifting(sample) : broken();
    }
    if (!rule.byKey() && isInTheAir(measured.get())) {
      return at(Stage.OPEN, List.of());
    }
    return settling(sample);
  }

  /** After samples were lost: what was seen before agrees with nothing that comes. */
  public Settling afterGap() {
    return at(stage == Stage.TOUCHED ? Stage.OPEN : stage, List.of());
  }

  /** No agreement goes over a sample that says nothing. */
  private Settling broken() {
    return at(stage, List.of());
  }

  private Settling at(Stage otherStage, List<Sample> otherWindow) {
    return new Settling(rule, fromMillis, otherStage, otherWindow, taken);
  }

  private Settling lifting(Sample sample) {
    List<Sample> open = plus(sample);
    boolean lifted =
        open.size() >= LIFTED_SAMPLES
            && span(open) >= LIFTED_MILLIS
            && spanInTruth(open) >= LIFTED_IN_TRUTH_MILLIS;
    return lifted ? at(Stage.OPEN, List.of()) : at(stage, open);
  }

  private Settling settling(Sample sample) {
    List<Sample> agreeing = agreeing(plus(sample));
    if (agreeing.size() >= AGREE_SAMPLES
        && span(agreeing) >= AGREE_MILLIS
        && spanInTruth(agreeing) >= AGREE_IN_TRUTH_MILLIS
        && (rule.byKey() || agreeing.stream().allMatch(this::isFineEnough))
        && standsStill(agreeing)) {
      return new Settling(
          rule, fromMillis, Stage.TAKEN, List.of(), Optional.of(lastNotBelowZero(agreeing)));
    }
    return at(Stage.TOUCHED, agreeing);
  }

  /** Noise about nothing is below zero half of the time; any of the others says the same. */
  private static Sample lastNotBelowZero(List<Sample> agreeing) {
    Sample last = agreeing.get(agreeing.size() - 1);
    for (int i = agreeing.size() - 1; i >= 0; i--) {
      if (agreeing.get(i).measured().map(one -> !one.isBelowZero()).orElse(false)) {
        return agreeing.get(i);
      }
    }
    return last;
  }

  private List<Sample> plus(Sample sample) {
    List<Sample> all = new ArrayList<>(window);
    all.add(sample);
    // A fast meter fills the time many times over; what is older than twice of it decides nothing.
    while (all.size() > AGREE_SAMPLES && sample.millis() - all.get(1).millis() > 2 * AGREE_MILLIS) {
      all.remove(0);
    }
    return List.copyOf(all);
  }

  private static long span(List<Sample> samples) {
    return samples.get(samples.size() - 1).millis() - samples.get(0).millis();
  }

  /** At least so long lies between what was measured first and last. */
  private static long spanInTruth(List<Sample> samples) {
    return samples.get(samples.size() - 1).askedMillis() - samples.get(0).millis();
  }

  /** The last samples that all agree with each other. */
  private List<Sample> agreeing(List<Sample> all) {
    int first = all.size() - 1;
    while (first > 0 && agree(all.subList(first - 1, all.size()))) {
      first--;
    }
    return all.subList(first, all.size());
  }

  private boolean agree(List<Sample> samples) {
    double least = Double.POSITIVE_INFINITY;
    double most = Double.NEGATIVE_INFINITY;
    double step = 0;
    boolean open = true;
    boolean number = true;
    for (Sample sample : samples) {
      Measured measured = sample.measured().orElseThrow();
      boolean isOpen = measured.isOverRange() || measured.moreThan().isPresent();
      open &= isOpen;
      number &= !isOpen && measured.lessThan().isEmpty();
      double ohms = ohms(measured);
      least = Math.min(least, ohms);
      most = Math.max(most, ohms);
      if (step > 0 && step(measured) > 0 && Math.abs(step / step(measured) - 1) > 0.5) {
        return false;
      }
      step = Math.max(step, step(measured));
    }
    return open || (number && most - least <= step + 2 * noise(most));
  }

  /** Within its noise a value can still creep: both halves have to tell the same. */
  private boolean standsStill(List<Sample> agreeing) {
    int half = agreeing.size() / 2;
    if (half < AGREE_SAMPLES) {
      return true;
    }
    double before = middle(agreeing.subList(0, half));
    double after = middle(agreeing.subList(half, agreeing.size()));
    double crept = before == after ? 0 : Math.abs(after - before);
    Sample last = agreeing.get(agreeing.size() - 1);
    return crept <= (step(last.measured().orElseThrow()) + noise(after)) / 2;
  }

  private static double middle(List<Sample> samples) {
    return samples.stream()
        .mapToDouble(sample -> ohms(sample.measured().orElseThrow()))
        .average()
        .orElse(0);
  }

  private double noise(double ohms) {
    double size = Math.abs(ohms);
    double share =
        rule.byKey() && size >= WANDERING_FROM_OHMS
            ? Math.max(WANDERING_SHARE, rule.display().noiseShare())
            : rule.display().noiseShare();
    return rule.display().noiseOhms() + share * size;
  }

  private static double ohms(Measured measured) {
    return measured.match(OHMS);
  }

  private double step(Measured measured) {
    return measured
        .value()
        .map(value -> Math.max(2 * value.halfDigitOhms(), rule.display().stepOhms()))
        .orElse(0.0);
  }

  /** While a meter looks for its range it shows 0.00 of a large one, and that stands still. */
  private boolean isFineEnough(Sample sample) {
    Measured measured = sample.measured().orElseThrow();
    double step = step(measured);
    return step <= COARSEST_OHMS || Math.abs(ohms(measured)) >= STEPS_OF_A_VALUE * step;
  }

  private boolean isInTheAir(Measured measured) {
    return measured.isOverRange() || measured.atLeastOhms() > rule.mostOhms();
  }

  private static final Measured.Cases<Double> OHMS =
      new Measured.Cases<>() {
        @Override
        public Double value(Measured.Value measured) {
          return measured.ohms();
        }

        @Override
        public Double belowZero(Measured.BelowZero measured) {
          return measured.ohms();
        }

        @Override
        public Double moreThan(Measured.MoreThan measured) {
          return measured.ohms();
        }

        @Override
        public Double lessThan(Measured.LessThan measured) {
          return measured.ohms();
        }

        @Override
        public Double overRange(Measured.OverRange measured) {
          return Double.POSITIVE_INFINITY;
        }

        @Override
        public Double word(Measured.Word measured) {
          return Double.NaN;
        }

        @Override
        public Double takenBack(Measured.TakenBack measured) {
          return Double.NaN;
        }

        @Override
        public Double notTested(Measured.NotTested measured) {
          return Double.NaN;
        }
      };
}
