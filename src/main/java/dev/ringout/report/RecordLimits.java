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

  /** A limit in words, and where it comes from. */
  record Limit(String words, String from) {}

  Limit of(Judged judged) {
    if (judged.reading().kind() == Reading.Kind.INSULATION) {
      InsulationLimit limit = insulation.of(judged.probing());
      return new Limit(
          "≥ " + Ohms.text(limit.minOhms()),
          limit.own() ? "the net's own limit" : "insulation min of the harness file");
    }
    if (judged.expected() instanceof Expected.Joined) {
      return new Limit(
          "≤ " + Ohms.text(judged.limit().ohms()),
          switch (judged.limit().basis()) {
            case GIVEN -> "closed max of the harness file";
            case COMPUTED -> "gauges and lengths: expected " + judged.limit().expected().text();
            case NO_LENGTH -> "fixed: a wire without gauge or length";
            case LINKS_ALONE -> "fixed: jumpers alone";
            case GROUPS -> "fixed: points tied together";
            case APART -> "fixed";
          });
    }
    if (judged.expected() instanceof Expected.ThroughParts parts) {
      String high =
          Double.isInfinite(parts.highOhms()) ? " or more" : " to " + Ohms.text(parts.highOhms());
      String low = Double.isInfinite(parts.lowOhms()) ? "open" : Ohms.text(parts.lowOhms());
      return new Limit(low.equals("open") ? low : low + high, "the parts between, as listed");
    }
    return new Limit(
        "≥ " + Ohms.text(result.harness().limits().openMinOhms()), "open min of the harness file");
  }

  /** An outcome in words. */
  static String words(Outcome outcome) {
    return switch (outcome) {
      case UNEXPECTED_JOIN -> "joined, should not be";
      case RESISTIVE -> "neither joined nor apart";
      case PART_VALUE -> "part not as listed";
      default -> outcome.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    };
  }
}
