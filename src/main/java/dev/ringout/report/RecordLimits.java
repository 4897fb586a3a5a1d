package dev.ringout.report;

import dev.ringout.check.CheckResult;
import dev.ringout.circuit.Expected;
import dev.ringout.circuit.InsulationLimits;
import dev.ringout.circuit.InsulationLimits.InsulationLimit;
import dev.ringout.compare.Judged;
import dev.ringout.compare.Outcome;
import dev.ringout.readings.Reading;
import dev.ringout.units.Ohms;
import java.util.Locale;

/** What a reading was held against, in words, and where that comes from. */
final class RecordLimits {
  private final CheckResult result;
  private final InsulationLimits insulation;

  RecordLimits(CheckResult result) {
    this.result = result;
    this.insulation = new InsulationLimits(result.circuit());
  }

  /** What the words for where a limit comes from mean. */
  static final String LEGEND =
      "Limit from: computed, gauges and lengths of the wires between, of which Expected is the"
          + " span; given, closed max of the harness file; fixed, for want of gauge or length, for"
          + " jumpers alone or for points tied together; parts, what is listed between; open min and"
          + " insulation min of the harness file; own, the net's own.";

  /**
   * A limit in words.
   *
   * @param expected what the way between has, where that is computed
   * @param from where the limit comes from, by the words of {@link #LEGEND}
   */
  record Limit(String words, String expected, String from) {}

  Limit of(Judged judged) {
    if (judged.reading().kind() == Reading.Kind.INSULATION) {
      InsulationLimit limit = insulation.of(judged.probing());
      return new Limit(
          "≥ " + Ohms.text(limit.minOhms()), "", limit.own() ? "own" : "insulation min");
    }
    if (judged.expected() instanceof Expected.Joined) {
      boolean computed = judged.limit().expected().isKnown();
      return new Limit(
          "≤ " + Ohms.text(judged.limit().ohms()),
          computed ? judged.limit().expected().text() : "",
          switch (judged.limit().basis()) {
            case GIVEN -> "given";
            case COMPUTED -> "computed";
            case NO_LENGTH -> "fixed, no length";
            case LINKS_ALONE -> "fixed, jumpers";
            case GROUPS -> "fixed, tied";
            case APART -> "fixed";
          });
    }
    if (judged.expected() instanceof Expected.ThroughParts parts) {
      String high =
          Double.isInfinite(parts.highOhms()) ? " or more" : " to " + Ohms.text(parts.highOhms());
      String low = Double.isInfinite(parts.lowOhms()) ? "open" : Ohms.text(parts.lowOhms());
      return new Limit(low.equals("open") ? low : low + high, "", "parts");
    }
    return new Limit("≥ " + Ohms.text(result.harness().limits().openMinOhms()), "", "open min");
  }

  /** An outcome in words. */
  static String words(Outcome outcome) {
    return switch (outcome) {
      case ACCEPTED -> "accepted";
      case UNEXPECTED_JOIN -> "unexpected join";
      case RESISTIVE -> "poor or leaking";
      case PART_VALUE -> "wrong value";
      default -> outcome.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    };
  }
}
