package dev.ringout.bench;

import dev.ringout.circuit.Circuit;
import dev.ringout.circuit.Expected;
import dev.ringout.compare.Judge;
import dev.ringout.compare.Judged;
import dev.ringout.harness.Point;
import dev.ringout.harness.SwitchState;
import dev.ringout.plan.Step;
import dev.ringout.readings.Measured;
import dev.ringout.readings.Reading;
import dev.ringout.readings.Side;
import dev.ringout.source.Place;
import dev.ringout.units.Numbers;
import dev.ringout.units.OhmsRange;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;

/**
 * A reading that is asked for: a step of the plan, or one that tells explanations apart.
 *
 * @param id the same probes in the same places, the switches in the same positions
 * @param number of the plan; 0 where it is of none
 * @param blank its row, judged before anything was read
 * @param leastOhms that passes; absent where any low value does
 * @param mostOhms that passes; absent where any high value does
 * @param volts test volts of an insulation step
 * @param why what it proves or tells
 * @param wire what it is about, or empty
 */
record AskedStep(
    String id,
    int number,
    Judged blank,
    OptionalDouble leastOhms,
    OptionalDouble mostOhms,
    OptionalDouble volts,
    List<String> why,
    String wire) {

  AskedStep {
    why = List.copyOf(why);
  }

  /** A step of a plan. */
  static AskedStep of(Circuit circuit, Step step, Judge judge, List<String> why) {
    Reading row = step.read(circuit, new Measured.NotTested(), Place.NOWHERE);
    return new AskedStep(
        id(row),
        step.number(),
        judge.judge(row),
        step.minOhms(),
        step.maxOhms(),
        step.volts(),
        why,
        step.ofWhat());
  }

  /** A reading that tells explanations apart. */
  static AskedStep telling(Judged blank, double openMinOhms, List<String> why) {
    Expected expected = blank.expected();
    OptionalDouble least =
        expected.isJoined()
            ? OptionalDouble.empty()
            : OptionalDouble.of(
                expected.throughParts().map(Expected.ThroughParts::lowOhms).orElse(openMinOhms));
    OptionalDouble most =
        expected.isJoined()
            ? OptionalDouble.of(blank.limit().ohms())
            : expected
                .throughParts()
                .filter(parts -> !Double.isInfinite(parts.highOhms()))
                .map(parts -> OptionalDouble.of(parts.highOhms()))
                .orElse(OptionalDouble.empty());
    return new AskedStep(
        id(blank.reading()), 0, blank, least, most, OptionalDouble.empty(), why, "");
  }

  /** By which a step is known, of a row that was kept. */
  static String id(Reading row) {
    return String.join(
        "|",
        row.kind().name().toLowerCase(Locale.ROOT),
        row.from().toString(),
        row.to().toString(),
        row.state().toString());
  }

  Reading.Kind kind() {
    return blank.reading().kind();
  }

  Side from() {
    return blank.reading().from();
  }

  Side to() {
    return blank.reading().to();
  }

  SwitchState state() {
    return blank.reading().state();
  }

  Expected expected() {
    return blank.expected();
  }

  /** What the way should have; anything where it can't be computed. */
  OhmsRange computed() {
    return blank.limit().expected();
  }

  /** As whoever looks over the shop reads it. */
  String subject() {
    String volts = volts().isPresent() ? ", " + Numbers.plain(volts().getAsDouble()) + " V" : "";
    return (number == 0 ? "" : number + ": ") + blank.reading().subject() + volts;
  }

  boolean isInsulation() {
    return kind() == Reading.Kind.INSULATION;
  }

  /** The item at which the first probe is. */
  String item() {
    List<Point> points = from().points();
    return points.isEmpty() ? "" : points.get(0).ref();
  }

  /** Whether a value that has settled may be taken by itself. */
  boolean isTakenByItself() {
    return !isInsulation() && expected().isJoined();
  }

  /** Whether it touches an item, a wire or a point of that name. */
  boolean isAbout(String name) {
    return wire.equalsIgnoreCase(name)
        || from().points().stream().anyMatch(point -> isCalled(point, name))
        || to().points().stream().anyMatch(point -> isCalled(point, name));
  }

  /** J1-A and J1-a are two points. */
  private static boolean isCalled(Point point, String name) {
    return point.ref().equalsIgnoreCase(name) || point.toString().equals(name);
  }

  /** Whether only the leads are exchanged. */
  boolean isReverseOf(AskedStep other) {
    return from().equals(other.to()) && to().equals(other.from()) && state().equals(other.state());
  }

  /** Which probe stays where another step had it; empty where both move. */
  String stays(AskedStep before) {
    if (before.from().equals(from())) {
      return "from";
    }
    return !to().isRest() && before.to().equals(to()) ? "to" : "";
  }
}
