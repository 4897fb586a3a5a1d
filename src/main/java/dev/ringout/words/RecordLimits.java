package dev.ringout.words;

import dev.ringout.check.CheckResult;
import dev.ringout.circuit.Expected;
import dev.ringout.circuit.InsulationLimits;
import dev.ringout.circuit.InsulationLimits.InsulationLimit;
import dev.ringout.compare.Judged;
import dev.ringout.compare.Outcome;
import dev.ringout.readings.Reading;
import dev.ringout.units.Ohms;
import java.util.OptionalDouble;

/** What a reading was held against, in words, and where that comes from. */
public final class RecordLimits {
  private final CheckResult result;
  private final InsulationLimits insulation;

  public RecordLimits(CheckResult result) {
    this.result = result;
    this.insulation = new InsulationLimits(result.circuit());
  }

  /** What the words for where a limit comes from mean. */
  public static final String LEGEND =
      "Limit from: computed, gauges and lengths of the wires between, of which Expected is the"
          + " span; given, closed max of the harness file; fixed, for want of gauge or length, for"
          + " jumpers alone or for points tied together; parts, what is listed between; open min and"
          + " insulation min of the harness file; own, the net's own.";

  /**
   * A limit in numbers.
   *
   * @param minOhms the least that passes, where there is one
   * @param maxOhms the most that passes, where there is one
   * @param from where the limit comes from, by the words of {@link #LEGEND}
   */
  public record Bounds(OptionalDouble minOhms, OptionalDouble maxOhms, String from) {
    /** Where it comes from as one word of machine-readable output. */
    public String basis() {
      return from.replace(",", "").replace(' ', '-');
    }
  }

  /**
   * A limit in words.
   *
   * @param expected what the way between has, where that is computed
   * @param from where the limit comes from, by the words of {@link #LEGEND}
   */
  public record Limit(String words, String expected, String from) {}

  public Limit of(Judged judged) {
    Bounds bounds = bounds(judged);
    boolean computed = requirement(judged).equals(JOIN) && judged.limit().expected().isKnown();
    return new Limit(
        requirement(judged).equals(PART) ? ofParts(bounds) : oneSided(bounds),
        computed ? judged.limit().expected().text() : "",
        bounds.from());
  }

  private static String ofParts(Bounds bounds) {
    if (bounds.minOhms().isEmpty()) {
      return "open";
    }
    String high =
        bounds.maxOhms().isEmpty()
            ? " or more"
            : " to " + Ohms.text(bounds.maxOhms().getAsDouble());
    return Ohms.text(bounds.minOhms().getAsDouble()) + high;
  }

  private static String oneSided(Bounds bounds) {
    return bounds.maxOhms().isPresent()
        ? "≤ " + Ohms.text(bounds.maxOhms().getAsDouble())
        : "≥ " + Ohms.text(bounds.minOhms().orElse(Double.POSITIVE_INFINITY));
  }

  public Bounds bounds(Judged judged) {
    if (judged.reading().kind() == Reading.Kind.INSULATION) {
      InsulationLimit limit = insulation.of(judged.probing());
      return least(limit.minOhms(), limit.own() ? "own" : "insulation min");
    }
    return judged.expected().match(new Continuity(judged));
  }

  /** The limit of a continuity reading, by what it is to find. */
  private final class Continuity implements Expected.Cases<Bounds> {
    private final Judged judged;

    Continuity(Judged judged) {
      this.judged = judged;
    }

    @Override
    public Bounds joined(Expected.Joined expected) {
      return new Bounds(
          OptionalDouble.empty(),
          OptionalDouble.of(judged.limit().ohms()),
          switch (judged.limit().basis()) {
            case GIVEN -> "given";
            case COMPUTED -> "computed";
            case NO_LENGTH -> "fixed, no length";
            case OTHER_METAL -> "fixed, other metal";
            case LINKS_ALONE -> "fixed, jumpers";
            case GROUPS -> "fixed, tied";
            case APART -> "fixed";
          });
    }

    @Override
    public Bounds apart(Expected.Apart expected) {
      return least(result.harness().limits().openMinOhms(), "open min");
    }

    @Override
    public Bounds throughParts(Expected.ThroughParts parts) {
      boolean open = Double.isInfinite(parts.lowOhms());
      return new Bounds(
          open ? OptionalDouble.empty() : OptionalDouble.of(parts.lowOhms()),
          open || Double.isInfinite(parts.highOhms())
              ? OptionalDouble.empty()
              : OptionalDouble.of(parts.highOhms()),
          "parts");
    }
  }

  private static Bounds least(double minOhms, String from) {
    return new Bounds(OptionalDouble.of(minOhms), OptionalDouble.empty(), from);
  }

  private static final String JOIN = "join";
  private static final String PART = "part";

  /** What a reading has to show: {@code join}, {@code apart}, {@code part}, {@code insulation}. */
  public static String requirement(Judged judged) {
    if (judged.reading().kind() == Reading.Kind.INSULATION) {
      return "insulation";
    }
    return judged.expected().match(REQUIREMENT);
  }

  private static final Expected.Cases<String> REQUIREMENT =
      new Expected.Cases<>() {
        @Override
        public String joined(Expected.Joined expected) {
          return JOIN;
        }

        @Override
        public String apart(Expected.Apart expected) {
          return "apart";
        }

        @Override
        public String throughParts(Expected.ThroughParts expected) {
          return PART;
        }
      };

  /** An outcome in words. */
  public static String words(Outcome outcome) {
    return switch (outcome) {
      case ACCEPTED -> "accepted";
      case UNEXPECTED_JOIN -> "unexpected join";
      case RESISTIVE -> "poor or leaking";
      case PART_VALUE -> "wrong value";
      case CONFORMS -> "conforms";
      case OPEN -> "open";
      case LOW_INSULATION -> "low insulation";
      case NOT_TESTED -> "not tested";
      case NOT_JUDGED -> "not judged";
    };
  }
}
