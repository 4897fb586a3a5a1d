package dev.ringout.bench;

import dev.ringout.store.Lease;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * The bench as it is shown: facts and finished sentences. What each field means stands in
 * docs/reference/bench-api.md.
 *
 * @param version grows with each change
 * @param tester who holds the probes; empty until somebody said so
 */
public record BenchState(
    long version,
    String program,
    String store,
    String station,
    boolean practice,
    String tester,
    MeterState meter,
    MeterState insulationMeter,
    Optional<SessionState> session) {

  /** How a meter stands. */
  public enum Link {
    /** What it shows is typed. */
    TYPED,
    OPENING,
    READY,
    LOST
  }

  /** A value and when it was read. */
  public record Dated(String text, String at) {}

  /**
   * A meter.
   *
   * @param trouble why it is lost, or why its last value was not taken; else empty
   * @param leads what its leads read together
   * @param needsLeads whether they have to be measured before the first reading
   */
  public record MeterState(
      String address,
      String profile,
      Link link,
      String text,
      String trouble,
      Optional<Dated> leads,
      boolean needsLeads) {}

  /** The unit that is tested. */
  public record UnitState(
      String id, String serial, String title, String drawing, String revision, boolean practice) {}

  /**
   * How far it is.
   *
   * @param minutes left by this person's own pace; absent until it is known
   */
  public record Progress(int made, int of, int skipped, OptionalInt minutes) {}

  /** Along what the bench is led. */
  public enum Leading {
    PLAN,
    TELLING,
    JUMP
  }

  /** A choice at the end of an item in which something failed. */
  public record Offer(String text, int telling) {}

  /**
   * A test that is led here.
   *
   * @param trouble why nothing can be kept now; empty where it can
   * @param conditions names and values of the sheet Job
   */
  public record SessionState(
      String id,
      int number,
      String trouble,
      UnitState unit,
      Progress progress,
      Leading leading,
      Optional<Offer> offer,
      Map<String, String> conditions,
      Optional<StepState> step,
      Optional<TakenState> last,
      Found found,
      Open open,
      List<Other> others) {
    /** What is given can't be changed afterwards. */
    public SessionState {
      conditions = Collections.unmodifiableMap(new LinkedHashMap<>(conditions));
      others = List.copyOf(others);
    }
  }

  /** What a step asks for. */
  public enum Asks {
    JOINED,
    APART,
    PART
  }

  /** A point, in two parts. */
  public record PointState(String item, String pin) {}

  /**
   * One side of a step.
   *
   * @param rest whether it is every other net tied together
   * @param how how it is tied together; else empty
   */
  public record SideState(
      String text, String spoken, List<PointState> points, boolean rest, String how) {
    /** What is given can't be changed afterwards. */
    public SideState {
      points = List.copyOf(points);
    }
  }

  /** Where a switch stands, and whether somebody has to put it there now. */
  public record Position(String text, boolean changed) {}

  /** What should be read, and what that means. */
  public record Should(String text, String means) {}

  /**
   * What is asked.
   *
   * @param number of the plan; 0 for a reading that tells explanations apart
   * @param stays which probe stays where it was: {@code from}, {@code to} or empty
   * @param reverse whether the leads are exchanged since the step before
   * @param volts test volts of an insulation step; else empty
   * @param unit of a typed number without one
   */
  public record StepState(
      String id,
      int number,
      String kind,
      Asks asks,
      SideState from,
      SideState to,
      String stays,
      List<Position> state,
      String wire,
      Should expected,
      List<String> why,
      boolean again,
      boolean reverse,
      List<String> cautions,
      boolean confirm,
      String volts,
      String unit,
      List<String> units) {
    /** What is given can't be changed afterwards. */
    public StepState {
      state = List.copyOf(state);
      why = List.copyOf(why);
      cautions = List.copyOf(cautions);
      units = List.copyOf(units);
    }
  }

  /** How a value was judged, as a hand hears it. */
  public enum Tone {
    GOOD,
    BAD,
    /** Judged neither good nor bad. */
    UNSURE,
    LIFTED
  }

  /**
   * A value that was taken.
   *
   * @param raw the meter's own text, or what was typed
   * @param counts false once it was taken back
   */
  public record TakenState(
      String id,
      String text,
      String value,
      String raw,
      String how,
      Tone outcome,
      String says,
      String at,
      String who,
      boolean counts) {}

  /**
   * A fault as far as it is known.
   *
   * @param others what else it may be
   */
  public record FaultState(
      String title,
      String certainty,
      String text,
      String advice,
      List<String> readings,
      List<String> others) {
    /** What is given can't be changed afterwards. */
    public FaultState {
      readings = List.copyOf(readings);
      others = List.copyOf(others);
    }
  }

  /** What is likely wrong so far, and whether it is still worked out. */
  public record Found(boolean working, List<FaultState> faults) {
    /** What is given can't be changed afterwards. */
    public Found {
      faults = List.copyOf(faults);
    }
  }

  /** What keeps the unit from conforming beside faults; {@code more} that are not named. */
  public record Open(List<String> sentences, int more) {
    /** What is given can't be changed afterwards. */
    public Open {
      sentences = List.copyOf(sentences);
    }
  }

  /** Whether somebody is still at it. */
  public enum Leads {
    HERE,
    /** Nothing was heard of the bench for longer than it may be silent. */
    SILENT,
    LEFT;

    /** Of who leads there; absent where nobody does. */
    static Leads of(Optional<Lease> lease) {
      return lease.map(held -> held.isSilent() ? SILENT : HERE).orElse(LEFT);
    }
  }

  /** Somebody else on the same unit. */
  public record Other(String station, String who, String at, String text, Leads leads) {}
}
