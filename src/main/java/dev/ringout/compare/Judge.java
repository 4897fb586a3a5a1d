package dev.ringout.compare;

import dev.ringout.circuit.Circuit;
import dev.ringout.circuit.Expected;
import dev.ringout.circuit.Expected.ThroughParts;
import dev.ringout.circuit.InsulationLimits;
import dev.ringout.circuit.JoinLimits;
import dev.ringout.circuit.JoinLimits.JoinLimit;
import dev.ringout.circuit.Nets;
import dev.ringout.circuit.Predictor;
import dev.ringout.circuit.Probing;
import dev.ringout.circuit.Probings;
import dev.ringout.harness.Limits;
import dev.ringout.harness.Part;
import dev.ringout.readings.Job;
import dev.ringout.readings.Measured;
import dev.ringout.readings.Measured.Value;
import dev.ringout.readings.Reading;
import dev.ringout.units.OhmsRange;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Judges one reading at a time against the circuit and its limits.
 *
 * <p>Not for use by several threads at once.
 */
public final class Judge {
  private final Circuit circuit;
  private final JobOfReading jobs;
  private final Probings probings;
  private final Predictor predictor;
  private final JoinLimits joinLimits;
  private final Limits limits;
  private final InsulationLimits insulationLimits;

  /** Worked out where a first reading asks for it. */
  private Optional<StrayJoin> strayJoin = Optional.empty();

  Judge(Circuit circuit, JoinLimits joinLimits, JobOfReading jobs) {
    this.circuit = circuit;
    this.jobs = jobs;
    this.probings = new Probings(circuit);
    this.predictor = new Predictor(circuit, joinLimits.resistances());
    this.joinLimits = joinLimits;
    this.limits = circuit.harness().limits();
    this.insulationLimits = new InsulationLimits(circuit);
  }

  /** Judges readings of one test, by its own job sheets. */
  public static Judge of(Circuit circuit, JoinLimits joinLimits, List<Job> jobs) {
    return new Judge(circuit, joinLimits, new JobOfReading(jobs));
  }

  /** A reading with its verdict, by itself. */
  public Judged judge(Reading asWritten) {
    Reading reading = jobs.withVolts(asWritten);
    Probing probing = probings.of(reading);
    Expected expected = predictor.asListed(probing);
    JoinLimit limit = joinLimits.of(probing, reading.meter());
    OhmsRange seen = seen(reading, limit);
    Verdict judged = withinRange(reading, verdict(reading, probing, expected, limit, seen));
    boolean shouldJoin = reading.kind() == Reading.Kind.CONTINUITY && expected.isJoined();
    Verdict verdict =
        shouldJoin
            ? unlessAPartIs(
                probing, reading.measured(), Math.min(seen.highOhms(), limit.ohms()), judged)
            : judged;
    boolean isJoin = shouldJoin && verdict.observed() != Observed.APART;
    ValueVerdict value = isJoin ? value(limit, seen, doubt(reading)) : ValueVerdict.NOT_COMPARED;
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

  /**
   * A join that reads no less than a part at its net shows no wire: with the wire at the part's
   * other end, or off, as much would be read through the part.
   */
  private Verdict unlessAPartIs(
      Probing probing, Measured measured, double mostOhms, Verdict verdict) {
    if (verdict.outcome() != Outcome.CONFORMS) {
      return verdict;
    }
    Nets nets = circuit.in(probing.state());
    List<Part> asLow =
        Arrays.stream(nets.partsAt(nets.of(probing.from()[0])))
            .filter(part -> leastOhms(part) <= mostOhms)
            .mapToObj(circuit::part)
            .toList();
    return asLow.isEmpty()
        ? verdict
        : Verdict.notJudged(new NotJudged.MayBeThePart(measured, asLow));
  }

  /** Of a part without ohms nothing is known, and the page says so. */
  private double leastOhms(int part) {
    return circuit.part(part).kind() == Part.Kind.DIODE
        ? Double.POSITIVE_INFINITY
        : circuit.part(part).ohms().orElse(Double.POSITIVE_INFINITY)
            * (1 - circuit.toleranceOf(part));
  }

  /**
   * A good value that the meter can't have shown proves nothing, nor what is more than its range.
   */
  private Verdict withinRange(Reading reading, Verdict verdict) {
    Measured measured = reading.measured();
    if (verdict.outcome() != Outcome.CONFORMS
        || (measured.value().isEmpty() && measured.moreThan().isEmpty())) {
      return verdict;
    }
    OptionalDouble range = jobs.rangeOhms(reading);
    return range.isPresent() && measured.atLeastOhms() > range.getAsDouble()
        ? Verdict.notJudged(new NotJudged.BeyondRange(measured, range.getAsDouble()))
        : verdict;
  }

  private static OhmsRange seen(Reading reading, JoinLimit limit) {
    Optional<Value> value = reading.measured().value();
    if (value.isEmpty()) {
      return OhmsRange.ANY;
    }
    double ohms = value.get().ohms();
    double either = reading.meter().uncertaintyOhms(value.get());
    return new OhmsRange(
        ohms - either - limit.leads().highOhms(), ohms + either - limit.leads().lowOhms());
  }

  private StrayJoin strayJoin() {
    if (strayJoin.isEmpty()) {
      strayJoin = Optional.of(StrayJoin.of(circuit, joinLimits));
    }
    return strayJoin.get();
  }

  private static double doubt(Reading reading) {
    return reading.measured().value().map(reading.meter()::benefitOfTheDoubtOhms).orElse(0.0);
  }

  /** A join's value against what its wires account for. */
  private static ValueVerdict value(JoinLimit limit, OhmsRange seen, double doubtOhms) {
    OhmsRange expected = limit.expected();
    if (!expected.isKnown() || !seen.isKnown()) {
      return ValueVerdict.NOT_COMPARED;
    }
    if (seen.lowOhms() - doubtOhms > expected.highOhms()) {
      return ValueVerdict.HIGH;
    }
    if (seen.highOhms() + doubtOhms < limit.leastOhms()) {
      return ValueVerdict.LOW;
    }
    return seen.halfWidthOhms() >= expected.highOhms()
        ? ValueVerdict.CANT_TELL
        : ValueVerdict.AS_EXPECTED;
  }

  private Verdict verdict(
      Reading reading, Probing probing, Expected expected, JoinLimit limit, OhmsRange seen) {
    if (!reading.measured().made()) {
      return Verdict.notTested();
    }
    if (reading.kind() == Reading.Kind.INSULATION) {
      return insulation(reading, probing, expected);
    }
    MeterReading shown = new MeterReading(reading.meter(), limit, seen, limits, this::strayJoin);
    return reading.measured().match(expected.match(new ByWhatIsListed(shown)));
  }

  /** How a continuity reading is judged, by what the list says of its two sides. */
  private final class ByWhatIsListed implements Expected.Cases<Measured.Cases<Verdict>> {
    private final MeterReading shown;

    ByWhatIsListed(MeterReading shown) {
      this.shown = shown;
    }

    @Override
    public Measured.Cases<Verdict> joined(Expected.Joined expected) {
      return new JoinVerdict(shown);
    }

    @Override
    public Measured.Cases<Verdict> apart(Expected.Apart expected) {
      return new GapVerdict(shown);
    }

    @Override
    public Measured.Cases<Verdict> throughParts(ThroughParts expected) {
      return new PartVerdict(shown, expected, parts(expected));
    }
  }

  private List<Part> parts(ThroughParts through) {
    return through.parts().stream().map(circuit::part).toList();
  }

  private Verdict insulation(Reading reading, Probing probing, Expected expected) {
    if (expected.isJoined()) {
      return Verdict.notJudged(new NotJudged.OneNet());
    }
    List<Part> between = expected.throughParts().map(this::parts).orElse(List.of());
    return new InsulationVerdict(insulationLimits.of(probing), limits)
        .of(reading, expected.throughParts().isPresent(), between);
  }
}
