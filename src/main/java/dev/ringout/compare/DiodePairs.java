package dev.ringout.compare;

import dev.ringout.circuit.Circuit;
import dev.ringout.circuit.Expected.ThroughParts;
import dev.ringout.harness.Part;
import dev.ringout.harness.SwitchState;
import dev.ringout.readings.Measured;
import dev.ringout.readings.Meter;
import dev.ringout.readings.Reading;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Diodes by two readings, the leads exchanged for the second. How much a diode reads depends on the
 * meter; that it reads clearly less in one direction than in the other does not (common practice,
 * no source).
 */
public final class DiodePairs {
  /** What counts as clearly less. */
  private static final double CLEARLY = 3;

  /** The least that a sound diode reads where it blocks (common practice, no source). */
  private static final double LEAST_BLOCKING_OHMS = 10e3;

  private final Map<Key, Integer> placeOf = new HashMap<>();
  private final List<Judged> judged;
  private final Set<Meter> opensDiodes = new HashSet<>();

  private record Key(int from, int to, SwitchState state) {
    Key exchanged() {
      return new Key(to, from, state);
    }
  }

  private DiodePairs(Circuit circuit, List<Judged> inForce) {
    judged = new ArrayList<>(inForce);
    for (int i = 0; i < judged.size(); i++) {
      if (isThroughDiode(circuit, judged.get(i))) {
        placeOf.put(key(judged.get(i)), i);
      }
    }
  }

  private static Key key(Judged one) {
    return new Key(one.probing().from()[0], one.probing().to()[0], one.reading().state());
  }

  private static boolean isThroughDiode(Circuit circuit, Judged one) {
    return one.reading().kind() == Reading.Kind.CONTINUITY
        && one.probing().isPair()
        && one.reading().measured().made()
        && one.expected() instanceof ThroughParts through
        && through.mayBeOpen()
        && through.parts().stream().anyMatch(part -> circuit.part(part).kind() == Part.Kind.DIODE);
  }

  /** The same readings, those through a diode in both directions judged by each other. */
  static List<Judged> judge(Circuit circuit, List<Judged> inForce) {
    if (circuit.harness().parts().stream().noneMatch(part -> part.kind() == Part.Kind.DIODE)) {
      return inForce;
    }
    DiodePairs pairs = new DiodePairs(circuit, inForce);
    pairs.each(pairs::noteIfOpened);
    pairs.each(pairs::judge);
    return pairs.judged;
  }

  /** The parts that a pair of readings shows in both directions, with nothing beside them. */
  public static Set<Integer> shown(Circuit circuit, List<Judged> inForce) {
    Set<Integer> shown = new HashSet<>();
    DiodePairs pairs = new DiodePairs(circuit, inForce);
    pairs.each(
        (forward, reverse) ->
            shown.addAll(((ThroughParts) pairs.judged.get(forward).expected()).parts()));
    return shown;
  }

  private interface Pair {
    void of(int forward, int reverse);
  }

  private void each(Pair each) {
    placeOf.forEach(
        (key, place) -> {
          Integer other = placeOf.get(key.exchanged());
          if (other != null && !isBlocked(place) && isBlocked(other) && hasValue(place, other)) {
            each.of(place, other);
          }
        });
  }

  private boolean isBlocked(int place) {
    return Double.isInfinite(((ThroughParts) judged.get(place).expected()).lowOhms());
  }

  private boolean hasValue(int one, int other) {
    return !(measured(one) instanceof Measured.Word) && !(measured(other) instanceof Measured.Word);
  }

  private Measured measured(int place) {
    return judged.get(place).reading().measured();
  }

  /** The most that was read; infinite where the reading only says more than so much. */
  private double atMost(int place) {
    Measured measured = measured(place);
    if (measured instanceof Measured.Value value) {
      return value.ohms();
    }
    return measured instanceof Measured.LessThan less ? less.ohms() : Double.POSITIVE_INFINITY;
  }

  /** The least that it was; {@code OL} without a range is more than any diode reads. */
  private double atLeast(int place) {
    Measured measured = measured(place);
    if (measured instanceof Measured.MoreThan more) {
      return more.ohms();
    }
    if (measured instanceof Measured.OverRange over) {
      return over.rangeOhms().orElse(Double.POSITIVE_INFINITY);
    }
    return measured instanceof Measured.Value value ? value.ohms() : 0;
  }

  private void noteIfOpened(int forward, int reverse) {
    if (atMost(forward) * CLEARLY < atLeast(reverse)
        || atMost(reverse) * CLEARLY < atLeast(forward)) {
      opensDiodes.add(judged.get(forward).reading().meter());
    }
  }

  private void judge(int forward, int reverse) {
    double there = atMost(forward);
    double back = atLeast(reverse);
    if (Double.isInfinite(there) && Double.isInfinite(atMost(reverse))) {
      neitherConducts(forward);
    } else if (there * CLEARLY < back && back >= LEAST_BLOCKING_OHMS) {
      judged.set(reverse, judged.get(reverse).as(Observed.APART, Outcome.CONFORMS, ""));
    } else if (judged.get(reverse).observed() != Observed.JOINED) {
      judged.set(reverse, judged.get(reverse).as(Observed.RESISTIVE, Outcome.PART_VALUE, ""));
    }
  }

  private void neitherConducts(int forward) {
    if (opensDiodes.contains(judged.get(forward).reading().meter())) {
      judged.set(forward, judged.get(forward).as(Observed.APART, Outcome.PART_VALUE, ""));
      return;
    }
    judged.set(
        forward,
        judged
            .get(forward)
            .as(
                Observed.UNKNOWN,
                Outcome.NOT_JUDGED,
                "neither way conducts: the diode is missing, or this meter does not open a diode;"
                    + " use its diode range"));
  }
}
