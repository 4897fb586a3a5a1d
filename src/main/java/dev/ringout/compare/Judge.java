package dev.ringout.compare;

import dev.ringout.circuit.Circuit;
import dev.ringout.circuit.Expected;
import dev.ringout.circuit.Expected.Joined;
import dev.ringout.circuit.Expected.ThroughParts;
import dev.ringout.circuit.InsulationLimits;
import dev.ringout.circuit.InsulationLimits.InsulationLimit;
import dev.ringout.circuit.JoinLimits;
import dev.ringout.circuit.JoinLimits.JoinLimit;
import dev.ringout.circuit.Predictor;
import dev.ringout.circuit.Probing;
import dev.ringout.circuit.Probings;
import dev.ringout.circuit.ShownByOhms;
import dev.ringout.harness.Demands;
import dev.ringout.harness.Demands.WordUse;
import dev.ringout.harness.Limits;
import dev.ringout.readings.Measured;
import dev.ringout.readings.Measured.LessThan;
import dev.ringout.readings.Measured.Meaning;
import dev.ringout.readings.Measured.MoreThan;
import dev.ringout.readings.Measured.OverRange;
import dev.ringout.readings.Measured.Value;
import dev.ringout.readings.Measured.Word;
import dev.ringout.readings.Reading;
import dev.ringout.units.Numbers;
import dev.ringout.units.Ohms;
import dev.ringout.units.OhmsRange;
import dev.ringout.units.Text;
import java.util.OptionalDouble;
import java.util.stream.Collectors;

/** Judges one reading at a time against the circuit and its limits. */
final class Judge {
  private final Circuit circuit;
  private final JobOfReading jobs;
  private final Probings probings;
  private final Predictor predictor;
  private final JoinLimits joinLimits;
  private final Limits limits;
  private final Demands demands;
  private final InsulationLimits insulationLimits;

  Judge(Circuit circuit, JoinLimits joinLimits, JobOfReading jobs) {
    this.circuit = circuit;
    this.jobs = jobs;
    this.probings = new Probings(circuit);
    this.predictor = new Predictor(circuit, joinLimits.resistances());
    this.joinLimits = joinLimits;
    this.limits = circuit.harness().limits();
    this.demands = limits.demands();
    this.insulationLimits = new InsulationLimits(circuit);
  }

  Judged judge(Reading asWritten) {
    Reading reading = jobs.withVolts(asWritten);
    Probing probing = probings.of(reading);
    Expected expected = predictor.asListed(probing);
    JoinLimit limit = joinLimits.of(probing, reading.meter());
    OhmsRange seen = seen(reading, limit);
    Verdict verdict = withinRange(reading, verdict(reading, probing, expected, limit, seen));
    boolean isJoin =
        reading.kind() == Reading.Kind.CONTINUITY
            && expected instanceof Joined
            && verdict.observed() != Observed.APART;
    ValueVerdict value = isJoin ? value(limit, seen) : ValueVerdict.NOT_COMPARED;
    return new Judged(
        reading,
        probing,
        expected,
        verdict.observed(),
        verdict.outcome(),
        value,
        seen,
        limit,
        verdict.why(),
        TouchedNets.NONE);
  }

  /** A good value that the meter can't have shown proves nothing. */
  private Verdict withinRange(Reading reading, Verdict verdict) {
    if (verdict.outcome() != Outcome.CONFORMS || !(reading.measured() instanceof Value value)) {
      return verdict;
    }
    OptionalDouble range = jobs.rangeOhms(reading);
    return range.isPresent() && value.ohms() > range.getAsDouble()
        ? Verdict.notJudged(
            Text.of(
                "%s is beyond the range of %s that the sheet Job gives",
                reading.measured().text(), Ohms.text(range.getAsDouble())))
        : verdict;
  }

  private static OhmsRange seen(Reading reading, JoinLimit limit) {
    if (!(reading.measured() instanceof Value value)) {
      return OhmsRange.ANY;
    }
    double either = reading.meter().uncertaintyOhms(value);
    return new OhmsRange(
        value.ohms() - either - limit.leads().highOhms(),
        value.ohms() + either - limit.leads().lowOhms());
  }

  /** A join's value against what its wires account for. */
  private static ValueVerdict value(JoinLimit limit, OhmsRange seen) {
    OhmsRange expected = limit.expected();
    if (!expected.isKnown() || !seen.isKnown()) {
      return ValueVerdict.NOT_COMPARED;
    }
    if (seen.lowOhms() > expected.highOhms()) {
      return ValueVerdict.HIGH;
    }
    if (seen.highOhms() < expected.lowOhms()) {
      return ValueVerdict.LOW;
    }
    return seen.halfWidthOhms() >= expected.highOhms()
        ? ValueVerdict.CANT_TELL
        : ValueVerdict.AS_EXPECTED;
  }

  private record Verdict(Observed observed, Outcome outcome, String why) {
    static Verdict of(Observed observed, Outcome outcome) {
      return new Verdict(observed, outcome, "");
    }

    static Verdict notJudged(String why) {
      return new Verdict(Observed.UNKNOWN, Outcome.NOT_JUDGED, why);
    }
  }

  private Verdict verdict(
      Reading reading, Probing probing, Expected expected, JoinLimit limit, OhmsRange seen) {
    if (!reading.measured().made()) {
      return new Verdict(Observed.UNKNOWN, Outcome.NOT_TESTED, "");
    }
    if (reading.kind() == Reading.Kind.INSULATION) {
      return insulation(reading, probing, expected);
    }
    if (expected instanceof Joined) {
      return joinExpected(reading, limit);
    }
    if (expected instanceof ThroughParts parts) {
      return partsExpected(reading, seen, parts, limit);
    }
    return gapExpected(reading, limit);
  }

  private Verdict joinExpected(Reading reading, JoinLimit limit) {
    Measured measured = reading.measured();
    if (measured instanceof OverRange) {
      // Whatever the range, it is above any limit for a joint.
      return Verdict.of(Observed.APART, Outcome.OPEN);
    }
    if (measured instanceof Word word) {
      if (word.meaning() == Meaning.FAIL) {
        return Verdict.of(Observed.APART, Outcome.OPEN);
      }
      boolean enough =
          demands
              .words()
              .map(uses -> uses.contains(WordUse.JOINS))
              .orElse(!limit.expected().isKnown());
      return enough
          ? Verdict.of(Observed.JOINED, Outcome.CONFORMS)
          : Verdict.notJudged(
              Text.of(
                  "\"%s\" is no value; the limit is %s (\"words\" on the sheet Limits says where a"
                      + " word is enough)",
                  measured.text(), Ohms.text(limit.ohms())));
    }
    if (measured instanceof LessThan less) {
      return less.ohms() <= limit.ohms()
          ? Verdict.of(Observed.JOINED, Outcome.CONFORMS)
          : Verdict.notJudged(
              Text.of(
                  "\"%s\" may still be above the limit of %s",
                  measured.text(), Ohms.text(limit.ohms())));
    }
    if (measured instanceof MoreThan more) {
      if (more.ohms() >= limits.openMinOhms()) {
        return Verdict.of(Observed.APART, Outcome.OPEN);
      }
      return more.ohms() >= limit.ohms()
          ? Verdict.of(Observed.RESISTIVE, Outcome.RESISTIVE)
          : Verdict.notJudged(
              Text.of(
                  "\"%s\" says nothing about the limit of %s",
                  measured.text(), Ohms.text(limit.ohms())));
    }
    Value value = (Value) measured;
    Observed observed = observe(reading, value, limit);
    if (observed == Observed.JOINED && isTooCoarse(reading, value, limit.ohms())) {
      return tooCoarse(reading, value);
    }
    return Verdict.of(
        observed,
        switch (observed) {
          case JOINED -> Outcome.CONFORMS;
          case APART -> Outcome.OPEN;
          case RESISTIVE, UNKNOWN -> Outcome.RESISTIVE;
        });
  }

  private static boolean isTooCoarse(Reading reading, Value value, double limitOhms) {
    return ShownByOhms.isTooCoarse(value, reading.meter(), limitOhms);
  }

  private static Verdict tooCoarse(Reading reading, Value value) {
    double either = reading.meter().uncertaintyOhms(value);
    return Verdict.notJudged(
        Text.of(
            "%s may be up to %s: too coarse to tell",
            Ohms.text(value.ohms()), Ohms.text(value.ohms() + either)));
  }

  private Observed observe(Reading reading, Value value, JoinLimit limit) {
    return switch (ShownByOhms.of(value, reading.meter(), limit.ohms(), limits.openMinOhms())) {
      case JOINED -> Observed.JOINED;
      case BETWEEN -> Observed.RESISTIVE;
      case APART -> Observed.APART;
    };
  }

  private Verdict gapExpected(Reading reading, JoinLimit limit) {
    Measured measured = reading.measured();
    if (measured instanceof Word word) {
      if (word.meaning() != Meaning.PASS) {
        return Verdict.of(Observed.JOINED, Outcome.UNEXPECTED_JOIN);
      }
      return allows(WordUse.GAPS)
          ? Verdict.of(Observed.APART, Outcome.CONFORMS)
          : Verdict.notJudged(noValue(measured));
    }
    if (measured instanceof LessThan less) {
      return less.ohms() <= limit.ohms()
          ? Verdict.of(Observed.JOINED, Outcome.UNEXPECTED_JOIN)
          : Verdict.of(Observed.RESISTIVE, Outcome.RESISTIVE);
    }
    if (measured instanceof Value value) {
      Observed observed = observe(reading, value, limit);
      return Verdict.of(
          observed,
          switch (observed) {
            case JOINED -> Outcome.UNEXPECTED_JOIN;
            case APART -> Outcome.CONFORMS;
            case RESISTIVE, UNKNOWN -> Outcome.RESISTIVE;
          });
    }
    return aboveRange(measured, limits.openMinOhms(), "not joined", true);
  }

  /** {@code OL} and {@code >200 M} where a high value is wanted. */
  private static Verdict aboveRange(
      Measured measured, double leastOhms, String what, boolean unknownRangeWillDo) {
    double atLeast = 0;
    if (measured instanceof MoreThan more) {
      atLeast = more.ohms();
    } else if (measured instanceof OverRange over) {
      if (over.rangeOhms().isEmpty()) {
        return unknownRangeWillDo
            ? Verdict.of(Observed.APART, Outcome.CONFORMS)
            : Verdict.notJudged(
                "OL says only \"above the range\", and the job sheet gives no \"insulation range\"");
      }
      atLeast = over.rangeOhms().getAsDouble();
    }
    if (atLeast >= leastOhms) {
      return Verdict.of(Observed.APART, Outcome.CONFORMS);
    }
    String reading =
        measured instanceof OverRange
            ? "OL on a " + Ohms.text(atLeast) + " range"
            : measured.text();
    return Verdict.notJudged(
        Text.of(
            "%s proves nothing about a %s limit%s",
            reading, Ohms.text(leastOhms), what.isEmpty() ? "" : " for \"" + what + "\""));
  }

  private Verdict partsExpected(
      Reading reading, OhmsRange seen, ThroughParts parts, JoinLimit limit) {
    Measured measured = reading.measured();
    if (measured instanceof Word word) {
      return switch (word.meaning()) {
        case PASS, BEEP ->
            Verdict.notJudged(
                Text.of("\"%s\" is no value of the %s", measured.text(), names(parts)));
        case FAIL -> Verdict.of(Observed.UNKNOWN, Outcome.PART_VALUE);
      };
    }
    if (measured instanceof Value value) {
      Observed observed = observe(reading, value, limit);
      boolean mayBeJoin = observed == Observed.JOINED || !parts.isAboveJoin(seen);
      if (parts.allows(seen) && !(parts.mayBeAnything() && mayBeJoin)) {
        return isTooCoarse(reading, value, parts.halfWidthOhms())
                || (observed == Observed.JOINED && parts.lowOhms() > limit.ohms())
            ? coarsePart(reading, value, limit)
            : Verdict.of(Observed.RESISTIVE, Outcome.CONFORMS);
      }
      if (observed == Observed.APART && parts.mayBeOpen()) {
        return Verdict.of(observed, Outcome.CONFORMS);
      }
      return observed == Observed.JOINED
          ? Verdict.of(observed, Outcome.UNEXPECTED_JOIN)
          : Verdict.of(observed, Outcome.PART_VALUE);
    }
    if (measured instanceof LessThan less) {
      return less.ohms() < parts.lowOhms()
          ? Verdict.of(Observed.RESISTIVE, Outcome.PART_VALUE)
          : Verdict.notJudged(Text.of("\"%s\" is no value of the %s", less.text(), names(parts)));
    }
    if (parts.mayBeOpen()) {
      return aboveRange(measured, limits.openMinOhms(), "not joined", true);
    }
    double atLeast =
        measured instanceof MoreThan more
            ? more.ohms()
            : ((OverRange) measured).rangeOhms().orElse(limits.openMinOhms());
    return atLeast >= parts.highOhms()
        ? Verdict.of(Observed.APART, Outcome.PART_VALUE)
        : Verdict.notJudged(Text.of("%s says nothing about the %s", measured.text(), names(parts)));
  }

  /** A value that by itself is a join's is one, however coarse; another one tells nothing. */
  private static Verdict coarsePart(Reading reading, Value value, JoinLimit limit) {
    return value.ohms() <= limit.ohms()
        ? Verdict.of(Observed.JOINED, Outcome.UNEXPECTED_JOIN)
        : tooCoarse(reading, value);
  }

  private String names(ThroughParts parts) {
    return parts.parts().stream()
        .map(part -> circuit.part(part).label())
        .distinct()
        .collect(Collectors.joining(", "));
  }

  private Verdict insulation(Reading reading, Probing probing, Expected expected) {
    if (expected instanceof Joined) {
      return Verdict.notJudged("both sides are one net: no insulation lies between them");
    }
    Measured measured = reading.measured();
    InsulationLimit limit = insulationLimits.of(probing);
    Verdict verdict = insulationValue(measured, limit.minOhms());
    boolean passes = verdict.outcome() == Outcome.CONFORMS;
    if (!passes && expected instanceof ThroughParts parts) {
      return Verdict.notJudged(
          Text.of(
              "the %s lies between the two sides: disconnect it, or tie both its ends to one side",
              names(parts)));
    }
    if (passes && reading.volts().isEmpty()) {
      return Verdict.notJudged(
          "at how many volts is not said, neither in its row nor as \"insulation volts\" on the sheet"
              + " Job");
    }
    double volts = reading.volts().orElse(0);
    if (passes && volts < limit.leastVolts()) {
      return Verdict.notJudged(
          Text.of(
              "taken at %s V; the limit asks for %s V",
              Numbers.plain(volts), Numbers.plain(limit.leastVolts())));
    }
    return verdict;
  }

  private boolean allows(WordUse use) {
    return demands.words().map(uses -> uses.contains(use)).orElse(false);
  }

  private static String noValue(Measured measured) {
    return Text.of(
        "\"%s\" is no value (\"words\" on the sheet Limits says where a word is enough)",
        measured.text());
  }

  private Verdict insulationValue(Measured measured, double least) {
    if (measured instanceof Value value) {
      return value.ohms() >= least
          ? Verdict.of(Observed.APART, Outcome.CONFORMS)
          : lowInsulation(value.ohms());
    }
    if (measured instanceof LessThan less) {
      return less.ohms() <= least
          ? Verdict.of(Observed.UNKNOWN, Outcome.LOW_INSULATION)
          : Verdict.notJudged(Text.of("\"%s\" may be above the limit", less.text()));
    }
    if (measured instanceof Word word) {
      return switch (word.meaning()) {
        case PASS ->
            allows(WordUse.INSULATION)
                ? Verdict.of(Observed.APART, Outcome.CONFORMS)
                : Verdict.notJudged(noValue(measured));
        case FAIL -> Verdict.of(Observed.UNKNOWN, Outcome.LOW_INSULATION);
        case BEEP -> Verdict.notJudged("a beep is no insulation reading");
      };
    }
    return aboveRange(measured, least, "", false);
  }

  private Verdict lowInsulation(double ohms) {
    return Verdict.of(
        ohms >= limits.openMinOhms() ? Observed.APART : Observed.UNKNOWN, Outcome.LOW_INSULATION);
  }
}
