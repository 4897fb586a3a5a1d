package dev.ringout.diagnose;

import dev.ringout.circuit.Conductor;
import dev.ringout.compare.Judged;
import dev.ringout.harness.Part;
import dev.ringout.harness.Point;
import dev.ringout.harness.Switch;
import dev.ringout.harness.Wire;
import dev.ringout.units.Gauge;
import dev.ringout.units.OhmsRange;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What is wrong on the bench, with the readings that show it. A record of facts; words come late.
 */
public sealed interface Fault {

  /** How sure it is, what shows it, and what else it could be. */
  Finding finding();

  /** The points that matter. */
  List<Point> points();

  /** The items of its points. */
  default Set<String> items() {
    return points().stream().map(Point::ref).collect(Collectors.toCollection(LinkedHashSet::new));
  }

  /** What is made of it, by its kind: a writer that lacks a kind does not compile. */
  <T> T match(Cases<T> cases);

  /** The wires that it is about. */
  default List<Wire> wires() {
    return match(new WiresOfFault());
  }

  /**
   * Whether another unit's fault is the same as the list would see it. Leaks and poor joints are of
   * one unit alone: no paper makes them.
   */
  default boolean isLike(Fault other) {
    Optional<PaperMistake> mistake = match(new PaperMistake.Made());
    return mistake.isPresent() && mistake.equals(other.match(new PaperMistake.Made()));
  }

  /** This fault, where it is a high resistance. */
  default Optional<HighResistance> asHighResistance() {
    return Optional.empty();
  }

  /** This fault, where it is a wire that reads too high by itself. */
  default Optional<HighWire> asHighWire() {
    return Optional.empty();
  }

  /** This, where it is a part that does not read as listed. */
  default Optional<WrongPart> asWrongPart() {
    return Optional.empty();
  }

  /** The same, shown by other readings that lead over it too; of values that are too high. */
  default Fault alsoShownBy(List<Judged> others) {
    return this;
  }

  /** The same where it may be something else; of what one value that is too high shows. */
  default Fault beside(List<Alternative> others) {
    return this;
  }

  /**
   * What every fault has.
   *
   * @param alternatives other explanations that the readings made can't rule out, likeliest first
   * @param story faults with the same number explain their readings together, and each of their
   *     alternatives stands in the place of all of them; 0 for a fault by itself
   * @param runnerUp what it is not, where readings speak against that
   */
  record Finding(
      Certainty certainty,
      List<Judged> readings,
      List<Alternative> alternatives,
      int story,
      Optional<RunnerUp> runnerUp) {
    /** Of a fault by itself. */
    public static Finding alone(
        Certainty certainty, List<Judged> readings, List<Alternative> alternatives) {
      return new Finding(certainty, readings, alternatives, 0, Optional.empty());
    }

    /** The same with other alternatives. */
    public Finding with(List<Alternative> others) {
      return new Finding(certainty, readings, others, story, runnerUp);
    }

    /**
     * The same where it may be something else besides the alternatives that it has; then it is not
     * certain.
     */
    public Finding beside(List<Alternative> others) {
      List<Alternative> more = others.stream().filter(other -> !isGiven(other)).toList();
      double left = 1 - more.stream().mapToDouble(Alternative::odds).sum();
      List<Alternative> all = new ArrayList<>(more);
      alternatives.forEach(one -> all.add(new Alternative(one.odds() * left, one.slips())));
      all.sort(Comparator.comparingDouble(Alternative::odds).reversed());
      return with(List.copyOf(all)).inDoubt();
    }

    private boolean isGiven(Alternative other) {
      return alternatives.stream().anyMatch(one -> one.slips().equals(other.slips()));
    }

    /** The same, not certain. */
    public Finding inDoubt() {
      return new Finding(certainty.inDoubt(), readings, alternatives, story, runnerUp);
    }

    /** The same, shown by more readings. */
    public Finding alsoShownBy(List<Judged> others) {
      List<Judged> all = new ArrayList<>(readings);
      all.addAll(others);
      return new Finding(certainty, List.copyOf(all), alternatives, story, runnerUp);
    }
  }

  /**
   * The story that comes nearest among those that the readings rule out.
   *
   * @param slips what would have happened
   * @param against the readings that speak against it
   */
  record RunnerUp(List<SlipFact> slips, List<Judged> against) {}

  /**
   * Another explanation of the same readings.
   *
   * @param odds its share of all explanations found, from 0 to 1
   * @param slips what would have happened
   */
  record Alternative(double odds, List<SlipFact> slips) {}

  /**
   * A joint that should be there is not: an open, a break, no continuity.
   *
   * @param suspects the wires, links or contacts that may be open; one where it is certain
   * @param points the two ends of the reading
   */
  record Open(Finding finding, List<Conductor> suspects, List<Point> points) implements Fault {
    @Override
    public <T> T match(Cases<T> cases) {
      return cases.open(this);
    }
  }

  /**
   * Two nets are joined and no moved wire explains it: a short, a bridge of solder, a wrong jumper.
   *
   * @param points a point of each
   * @param equivalents contacts that, were they never to open, no reading could tell from it
   */
  record Shorted(Finding finding, List<Point> points, List<SlipFact.BadSwitch> equivalents)
      implements Fault {
    @Override
    public <T> T match(Cases<T> cases) {
      return cases.shorted(this);
    }
  }

  /**
   * Wire ends sit in the wrong place: crossed, transposed, shifted, mirrored, at another cavity.
   *
   * @param arrangement the one mistake that put many ends there
   * @param moves what sits where
   * @param equivalents other moves that no reading of any kind could tell from these
   */
  record Miswire(
      Finding finding,
      Pattern pattern,
      Optional<Arrangement> arrangement,
      List<Move> moves,
      List<List<Move>> equivalents)
      implements Fault {
    /** What is given can't be changed afterwards. */
    public Miswire {
      moves = List.copyOf(moves);
      equivalents = equivalents.stream().map(List::copyOf).toList();
    }

    @Override
    public <T> T match(Cases<T> cases) {
      return cases.miswire(this);
    }

    @Override
    public List<Point> points() {
      return moves.stream()
          .flatMap(move -> Stream.of(move.from(), move.to()))
          .distinct()
          .sorted()
          .toList();
    }
  }

  /**
   * A conductor whose joints may be poor.
   *
   * @param odds its share of them, from 0 to 1
   * @param inLoop whether other ways go around it, so that it may as well be open
   */
  record Suspicion(Conductor conductor, double odds, boolean inLoop) {}

  /**
   * Joined, but above what its wires account for: a poor joint, a bad crimp, a dirty contact.
   *
   * @param suspects where the poor joint is, likeliest first
   * @param limitOhms the most that is expected
   */
  record HighResistance(
      Finding finding,
      List<Suspicion> suspects,
      List<Point> points,
      double limitOhms,
      double measuredOhms)
      implements Fault {
    @Override
    public <T> T match(Cases<T> cases) {
      return cases.highResistance(this);
    }

    @Override
    public Optional<HighResistance> asHighResistance() {
      return Optional.of(this);
    }

    @Override
    public HighResistance beside(List<Alternative> others) {
      return with(finding.beside(others));
    }

    @Override
    public HighResistance alsoShownBy(List<Judged> others) {
      return with(finding.alsoShownBy(others));
    }

    private HighResistance with(Finding other) {
      return new HighResistance(other, suspects, points, limitOhms, measuredOhms);
    }
  }

  /**
   * A wire that reads too high by itself, and no reading between its ends tells why: another gauge,
   * a poor joint at an end, another length.
   *
   * @param causes why, likeliest first; their odds are of all there is where it is the wire
   * @param expected what it would read as listed
   */
  record HighWire(
      Finding finding, Wire wire, List<Alternative> causes, OhmsRange expected, double measuredOhms)
      implements Fault {
    @Override
    public <T> T match(Cases<T> cases) {
      return cases.highWire(this);
    }

    @Override
    public List<Point> points() {
      return List.of(wire.from(), wire.to());
    }

    @Override
    public Optional<HighWire> asHighWire() {
      return Optional.of(this);
    }

    /** Whether another gauge is the likeliest: that is what a wrong list would make. */
    public boolean isLikeliestOfAnotherGauge() {
      return causes.get(0).slips().get(0).asOtherGauge().isPresent();
    }

    @Override
    public HighWire beside(List<Alternative> others) {
      return new HighWire(finding.beside(others), wire, causes, expected, measuredOhms);
    }

    @Override
    public HighWire alsoShownBy(List<Judged> others) {
      return new HighWire(finding.alsoShownBy(others), wire, causes, expected, measuredOhms);
    }
  }

  /**
   * Within its limit, but above its fellows of the same gauge, type and length.
   *
   * @param fellows how many read alike
   * @param fellowsOhms what those read
   */
  record UnequalWire(
      Finding finding,
      Wire wire,
      double limitOhms,
      double measuredOhms,
      int fellows,
      OhmsRange fellowsOhms)
      implements Fault {
    @Override
    public <T> T match(Cases<T> cases) {
      return cases.unequalWire(this);
    }

    @Override
    public List<Point> points() {
      return List.of(wire.from(), wire.to());
    }
  }

  /**
   * The resistance of single wires that another gauge fits better.
   *
   * @param odds of the likely gauge, from 0 to 1
   * @param expected what the first wire would read with the listed gauge
   * @param expectedOfLikely what it would read with the likely one
   */
  record WrongGauge(
      Finding finding,
      List<Wire> wires,
      Gauge listed,
      Gauge likely,
      double odds,
      OhmsRange expected,
      OhmsRange expectedOfLikely,
      double measuredOhms)
      implements Fault {
    @Override
    public <T> T match(Cases<T> cases) {
      return cases.wrongGauge(this);
    }

    @Override
    public WrongGauge alsoShownBy(List<Judged> others) {
      return new WrongGauge(
          finding.alsoShownBy(others),
          wires,
          listed,
          likely,
          odds,
          expected,
          expectedOfLikely,
          measuredOhms);
    }

    @Override
    public List<Point> points() {
      return wires.stream().flatMap(wire -> Stream.of(wire.from(), wire.to())).toList();
    }
  }

  /**
   * Isolated for the meter, but below the insulation limit: leakage, moisture, a damaged jacket.
   *
   * @param places the connectors that all the low points share; empty where it is one net alone
   * @param netsLow how many of the nets read there are low
   * @param measuredOhms the lowest; absent where the reading is a word
   * @param volts of the test; absent for a leak seen on the continuity range
   */
  record LowInsulation(
      Finding finding,
      List<Point> points,
      List<String> places,
      int netsLow,
      int netsRead,
      OptionalDouble measuredOhms,
      OptionalDouble highestOhms,
      OptionalDouble volts)
      implements Fault {
    @Override
    public <T> T match(Cases<T> cases) {
      return cases.lowInsulation(this);
    }

    /** Whether the points were tied together in a reading: it is one of them, and the rest. */
    public boolean isOfOneSide() {
      return finding.readings().stream()
          .anyMatch(judged -> judged.reading().from().points().containsAll(points));
    }

    @Override
    public LowInsulation alsoShownBy(List<Judged> others) {
      return new LowInsulation(
          finding.alsoShownBy(others),
          points,
          places,
          netsLow,
          netsRead,
          measuredOhms,
          highestOhms,
          volts);
    }
  }

  /**
   * A part does not read as listed.
   *
   * @param points where its two ends are
   * @param lowOhms the least it should read
   * @param highOhms the most; may be infinite
   */
  record WrongPart(
      Finding finding,
      Part part,
      PartFault how,
      List<Point> points,
      double lowOhms,
      double highOhms,
      String measured)
      implements Fault {
    @Override
    public <T> T match(Cases<T> cases) {
      return cases.wrongPart(this);
    }

    @Override
    public Optional<WrongPart> asWrongPart() {
      return Optional.of(this);
    }

    @Override
    public WrongPart beside(List<Alternative> others) {
      return new WrongPart(finding.beside(others), part, how, points, lowOhms, highOhms, measured);
    }
  }

  /**
   * A switch or relay does not close what it should.
   *
   * @param position where it is stuck; else empty
   * @param points the ends of its contacts that are shown wrong
   */
  record WrongSwitch(
      Finding finding, Switch which, SwitchFault how, String position, List<Point> points)
      implements Fault {
    @Override
    public <T> T match(Cases<T> cases) {
      return cases.wrongSwitch(this);
    }
  }

  /** The test went wrong, not the unit. */
  sealed interface OfTheTest extends Fault {}

  /**
   * A reading was taken at another pin than the sheet says.
   *
   * @param listed where the probe should have been
   * @param at where it likely was
   */
  record Misread(Finding finding, Judged judged, Point listed, Point at) implements OfTheTest {
    @Override
    public <T> T match(Cases<T> cases) {
      return cases.misread(this);
    }

    @Override
    public List<Point> points() {
      return List.of(listed, at);
    }
  }

  /**
   * Values that stand a row from where they belong.
   *
   * @param rows how many rows the values of which fit another row
   * @param step how many rows further each value belongs
   * @param first the row from which on, at the latest
   */
  record SlippedRows(Finding finding, int rows, int step, Judged first) implements OfTheTest {
    @Override
    public <T> T match(Cases<T> cases) {
      return cases.slippedRows(this);
    }

    @Override
    public List<Point> points() {
      return List.of();
    }
  }

  /**
   * Values are written a power of ten from what was read.
   *
   * @param times how many times too high
   * @param wholeSheet whether it is nearly all of a sheet: the unit; else the point in one value
   */
  record Misscaled(Finding finding, double times, boolean wholeSheet) implements OfTheTest {
    @Override
    public <T> T match(Cases<T> cases) {
      return cases.misscaled(this);
    }

    @Override
    public List<Point> points() {
      return List.of();
    }
  }

  /** Two rows of the sheet have each other's values. */
  record ExchangedRows(Finding finding, Judged one, Judged other) implements OfTheTest {
    @Override
    public <T> T match(Cases<T> cases) {
      return cases.exchangedRows(this);
    }

    @Override
    public List<Point> points() {
      return List.of();
    }
  }

  /**
   * Values are high by what the meter's leads have.
   *
   * @param ohms what the leads seem to have together, besides what is said of them
   * @param noted whether they were nulled or noted, and have changed since
   */
  record LeadsNotNulled(Finding finding, double ohms, boolean noted) implements OfTheTest {
    @Override
    public <T> T match(Cases<T> cases) {
      return cases.leadsNotNulled(this);
    }

    @Override
    public List<Point> points() {
      return List.of();
    }
  }

  /**
   * The same fault in more than one unit: the paper is likelier wrong than all of them.
   *
   * @param same the fault as it would be, were it this unit's own
   * @param others the files in which it was found too
   */
  record OnPaper(Finding finding, Fault same, List<String> others) implements Fault {
    @Override
    public <T> T match(Cases<T> cases) {
      return cases.onPaper(this);
    }

    @Override
    public List<Point> points() {
      return same.points();
    }
  }

  /** The shape of a miswire. */
  enum Pattern {
    SWAP,
    MOVED,
    SHIFT,
    REVERSED,
    ROTATED,
    OTHER;

    /** The word used in every output. */
    public String word() {
      return name().toLowerCase(Locale.ROOT);
    }
  }

  /** One answer for each kind. */
  interface Cases<T> {
    /** See {@link Open}. */
    T open(Open fault);

    /** See {@link Shorted}. */
    T shorted(Shorted fault);

    /** See {@link Miswire}. */
    T miswire(Miswire fault);

    /** See {@link HighResistance}. */
    T highResistance(HighResistance fault);

    /** See {@link HighWire}. */
    T highWire(HighWire fault);

    /** See {@link UnequalWire}. */
    T unequalWire(UnequalWire fault);

    /** See {@link WrongGauge}. */
    T wrongGauge(WrongGauge fault);

    /** See {@link LowInsulation}. */
    T lowInsulation(LowInsulation fault);

    /** See {@link WrongPart}. */
    T wrongPart(WrongPart fault);

    /** See {@link WrongSwitch}. */
    T wrongSwitch(WrongSwitch fault);

    /** See {@link Misread}. */
    T misread(Misread fault);

    /** See {@link SlippedRows}. */
    T slippedRows(SlippedRows fault);

    /** See {@link Misscaled}. */
    T misscaled(Misscaled fault);

    /** See {@link ExchangedRows}. */
    T exchangedRows(ExchangedRows fault);

    /** See {@link LeadsNotNulled}. */
    T leadsNotNulled(LeadsNotNulled fault);

    /** See {@link OnPaper}. */
    T onPaper(OnPaper fault);
  }
}
