package dev.ringout.bench;

import dev.ringout.bench.BenchState.Link;
import dev.ringout.bench.MeterDesk.Wanted;
import dev.ringout.bench.Refused.Reason;
import dev.ringout.harness.Harness;
import dev.ringout.jobs.LeadNulls;
import dev.ringout.meter.LeadNull;
import dev.ringout.meter.MeterAddress;
import dev.ringout.meter.MeterIdentity;
import dev.ringout.meter.MeterReading;
import dev.ringout.meter.MeterTrouble;
import dev.ringout.meter.link.Channels;
import dev.ringout.readings.Measured;
import dev.ringout.words.MeterWords;
import java.io.IOException;
import java.time.Duration;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The meters of a bench: one that reads continuity, and an insulation tester; and of the first what
 * its leads read together.
 *
 * <p>Not for use by several threads at once.
 */
final class BenchMeters implements AutoCloseable {
  /** The name under which the leads are waited for; no step is called so. */
  static final String LEADS = "leads";

  private static final double MUCH_OHMS = 0.5;
  private static final double MORE_OHMS = 0.05;
  private static final double LIKE_SHARE = 0.1;
  private static final double LIKE_OHMS = 0.02;
  private static final long LONG_AGO_DAYS = 3650;

  private final BenchSetup setup;
  private final MeterDesk.Hearer hearer;
  private final LeadNulls nulls;
  private final Optional<Practice> practice;
  private MeterDesk continuity;
  private MeterDesk insulation;
  private boolean measuresLeads;
  private Optional<LeadNull> doubted = Optional.empty();
  private String trouble = "";

  /**
   * Opens both.
   *
   * @throws MeterTrouble where an address or a profile is none
   */
  BenchMeters(BenchSetup setup, MeterDesk.Hearer hearer) throws MeterTrouble {
    this.setup = setup;
    this.hearer = hearer;
    this.nulls = new LeadNulls(setup.data(), setup.profiles());
    this.practice =
        setup.practice()
            ? Optional.of(new Practice(setup.ticks(), setup.slips(), setup.seed()))
            : Optional.empty();
    this.continuity = desk(setup.meter(), setup.profile());
    this.insulation = desk(setup.insulationMeter(), setup.insulationProfile());
  }

  private MeterDesk desk(String address, Optional<String> profile) throws MeterTrouble {
    MeterAddress at = MeterAddress.of(address);
    return new MeterDesk(
        at,
        MeterDesk.profile(setup.profiles(), at, profile),
        setup.practice(),
        practice.map(Practice::channels).orElseGet(Channels::real),
        setup.ticks(),
        hearer);
  }

  MeterDesk continuity() {
    return continuity;
  }

  MeterDesk insulation() {
    return insulation;
  }

  /** Why the last value was not taken; empty where nothing was wrong with it. */
  String trouble() {
    return trouble;
  }

  void tell(String otherTrouble) {
    trouble = otherTrouble;
  }

  /** Another meter in the place of one. */
  void change(boolean isInsulation, String address, Optional<String> profile) throws Refused {
    try {
      MeterDesk other = desk(address, profile);
      if (isInsulation) {
        insulation.close();
        insulation = other;
      } else {
        continuity.close();
        continuity = other;
      }
    } catch (MeterTrouble e) {
      throw new Refused(Reason.NOT_UNDERSTOOD, MeterWords.failure(e.failure()));
    }
  }

  private MeterDesk of(AskedStep step) {
    return step.isInsulation() ? insulation : continuity;
  }

  /**
   * Takes by a key what the meter of a step shows from now on.
   *
   * @param asked by which the step is answered
   * @throws Refused where there is no such meter now
   */
  void key(AskedStep step, String asked) throws Refused {
    MeterDesk desk = of(step);
    if (desk.link() != Link.READY) {
      throw new Refused(
          Reason.MISSING,
          desk.link() == Link.TYPED
              ? "There is no link to a meter for this: type what it shows."
              : "The meter does not answer: " + desk.trouble());
    }
    if (desk == continuity && needsLeads()) {
      throw new Refused(Reason.MEANWHILE, "Not kept: measure the leads first.");
    }
    // An insulation tester may show its last value until the next test.
    if (desk == continuity && !desk.isLifted()) {
      throw new Refused(
          Reason.MEANWHILE, "Not kept: lift the probes first, they may be on the pair before.");
    }
    trouble = "";
    desk.key(asked);
  }

  /**
   * Waits for a step, and for no other.
   *
   * @param step absent where nothing may be taken
   * @param asked by which the step is answered
   */
  void want(Optional<AskedStep> step, String asked) {
    if (measuresLeads) {
      return;
    }
    for (MeterDesk desk : List.of(continuity, insulation)) {
      boolean ready = desk != continuity || !needsLeads();
      desk.want(
          step.filter(one -> ready && of(one) == desk)
              .map(one -> Wanted.step(asked, one))
              .orElse(Wanted.NOTHING));
    }
    practice.ifPresent(hands -> hands.probe(step.filter(one -> !needsLeads()), asked));
  }

  /** Another practice unit lies on the bench. */
  void lay(Harness harness, String serial) {
    practice.ifPresent(hands -> hands.unit(harness, serial));
  }

  /** What was done to the practice unit, for who asks afterwards. */
  List<String> slips() {
    return practice.map(Practice::slips).orElse(List.of());
  }

  /** What the leads read together; absent where they have to be measured. */
  Optional<LeadNull> leads() {
    Optional<MeterIdentity> identity = continuity.identity();
    if (identity.isEmpty()) {
      return Optional.empty();
    }
    try {
      return nulls.of(identity.get(), setup.ticks().now(), LeadNulls.USUAL);
    } catch (IOException e) {
      return Optional.empty();
    }
  }

  /** Whether nothing but the leads is waited for. */
  boolean needsLeads() {
    return measuresLeads || (continuity.link() == Link.READY && leads().isEmpty());
  }

  /** Waits for what the leads read together. */
  void measureLeads() throws Refused {
    if (continuity.link() != Link.READY) {
      throw new Refused(Reason.MISSING, "No meter is linked: type what it shows on the sheet Job.");
    }
    measuresLeads = true;
    practice.ifPresent(Practice::together);
    trouble = "";
    // Lifted first: what the probes touch now may be the pair of the step.
    continuity.want(new Wanted(LEADS, true, LeadNull.MOST_OHMS));
  }

  /** Whether the leads are still waited for; then they are not any more. */
  boolean gaveUpLeads() {
    boolean waited = measuresLeads;
    measuresLeads = false;
    return waited;
  }

  /** Keeps what the leads read together. */
  void leadsMeasured(MeterReading reading) throws Refused {
    measuresLeads = false;
    LeadNull leads = new LeadNull(reading);
    if (!leads.isSound()) {
      throw new Refused(
          Reason.NOT_UNDERSTOOD,
          "The leads read "
              + BenchWords.value(reading.measured())
              + ": hold the two probes together, and try again.");
    }
    if (isDoubtful(leads) && doubted.filter(one -> isLike(one, leads)).isEmpty()) {
      doubted = Optional.of(leads);
      throw new Refused(
          Reason.NOT_UNDERSTOOD,
          "Not kept: "
              + BenchWords.value(reading.measured())
              + " is much for leads. Were the two probes on each other, and on nothing else? Measure"
              + " them once more.");
    }
    doubted = Optional.empty();
    try {
      nulls.keep(leads);
    } catch (IOException e) {
      throw new Refused(Reason.NOT_WRITTEN, "The leads' value can't be kept: " + e.getMessage());
    }
    trouble = "";
  }

  /** More than good leads have, or much more than these had before (common practice, no source). */
  private boolean isDoubtful(LeadNull leads) {
    double ohms = ohms(leads);
    Optional<Double> before = leadsBefore().map(BenchMeters::ohms);
    return ohms > MUCH_OHMS || before.filter(one -> ohms > 2 * one + MORE_OHMS).isPresent();
  }

  private static boolean isLike(LeadNull one, LeadNull other) {
    return Math.abs(ohms(one) - ohms(other)) <= LIKE_SHARE * ohms(one) + LIKE_OHMS;
  }

  private static double ohms(LeadNull leads) {
    return leads.reading().measured().value().map(Measured.Value::ohms).orElse(0.0);
  }

  /** However long ago. */
  private Optional<LeadNull> leadsBefore() {
    try {
      return nulls.of(
          continuity.identity().orElseThrow(), setup.ticks().now(), Duration.ofDays(LONG_AGO_DAYS));
    } catch (IOException e) {
      return Optional.empty();
    }
  }

  /** Which meter reads continuity now; empty where nothing is linked. */
  String name() {
    return continuity.identity().map(MeterIdentity::text).orElse("");
  }

  /** Whether a row of the sheet Job is about one of the two meters. */
  static boolean isOfMeter(String row, boolean insulation) {
    String name = row.toLowerCase(Locale.ROOT).strip();
    boolean ofInsulation = name.startsWith("insulation");
    boolean ofContinuity =
        name.startsWith("instrument")
            || name.startsWith("cal")
            || name.startsWith("meter")
            || name.equals("continuity range")
            || name.equals("lead null");
    return insulation ? ofInsulation : ofContinuity;
  }

  /** What the meter itself says stands on a sheet Job before what was typed of it. */
  void describe(Map<String, String> job) {
    Optional<MeterIdentity> identity = continuity.identity();
    if (identity.isPresent()) {
      List<String> fields = identity.get().fields();
      String name = (fields.get(0) + " " + fields.get(1)).strip();
      if (!name.isEmpty()) {
        job.put("instrument", name);
      }
      job.putIfAbsent("instrument number", fields.get(2));
      double step = continuity.profile().display().stepOhms();
      if (step > 0) {
        job.putIfAbsent("meter resolution", BenchWords.ohms(step));
      }
    }
    OptionalDouble range = continuity.profile().language().rangeOhms();
    if (identity.isPresent() && range.isPresent()) {
      job.put("continuity range", BenchWords.ohms(range.getAsDouble()));
    }
    leads().ifPresent(leads -> job.put("lead null", leads.text()));
  }

  @Override
  public void close() {
    continuity.close();
    insulation.close();
  }
}
