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

  /**
   * What one diode reads so many times higher than another on the same meter is no diode: kinds and
   * ranges make some sixty times (a light-emitting one beside one of low drop; common practice, no
   * source).
   */
  private static final double FAR_ABOVE_ANOTHER = 99;

  private final Map<Key, Integer> placeOf = new HashMap<>();
  private final List<Judged> judged;

  /** The least that a diode read which the meter opened. */
  private final Map<Meter, Double> leastOpened = new HashMap<>();

  private record Key(int from, int to, SwitchState state) {
    Key exchanged() {
      return new Key(to, from, state);
    }
  }

  private DiodePairs(List<Judged> inForce) {
    judged = new ArrayList<>(inForce);
  }

  private static DiodePairs of(Circuit circuit, List<Judged> inForce) {
    DiodePairs pairs = new DiodePairs(inForce);
    for (int i = 0; i < inForce.size(); i++) {
      if (isThroughDiode(circuit, inForce.get(i))) {
        pairs.placeOf.put(key(inForce.get(i)), i);
      }
    }
    return pairs;
  }

  private static Key key(Judged one) {
    return new Key(one.probing().from()[0], one.probing().to()[0], one.reading().state());
  }

  private static boolean isThroughDiode(Circuit circuit, Judged one) {
    return one.reading().kind() == Reading.Kind.CONTINUITY
        && one.probing().isPair()
        && one.reading().measured().made()
        && one.expected()
            .throughParts()
            .filter(ThroughParts::mayBeOpen)
            .filter(
                through ->
                    through.parts().stream()
                        .anyMatch(part -> circuit.part(part).kind() == Part.Kind.DIODE))
            .isPresent();
  }

  /** The same readings, those through a diode in both directions judged by each other. */
  public static List<Judged> judge(Circuit circuit, List<Judged> inForce) {
    if (circuit.harness().parts().stream().noneMatch(part -> part.kind() == Part.Kind.DIODE)) {
      return inForce;
    }
    DiodePairs pairs = DiodePairs.of(circuit, inForce);
    pairs.each(pairs::noteIfOpened);
    pairs.each(pairs::judge);
    return pairs.judged;
  }

  /** The parts that a pair of readings shows in both directions, with nothing beside them. */
  public static Set<Integer> shown(Circuit circuit, List<Judged> inForce) {
    Set<Integer> shown = new HashSet<>();
    DiodePairs pairs = DiodePairs.of(circuit, inForce);
    pairs.each(
        (forward, reverse) ->
            pairs
                .judged
                .get(forward)
                .expected()
                .throughParts()
                .ifPresent(through -> shown.addAll(through.parts())));
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
    return judged
        .get(place)
        .expected()
        .throughParts()
        .filter(through -> Double.isInfinite(through.lowOhms()))
        .isPresent();
  }

  private boolean hasValue(int one, int other) {
    return isValue(measured(one)) && isValue(measured(other));
  }

  private static boolean isValue(Measured measured) {
    return !measured.isWord() && !measured.isTakenBack();
  }

  private Measured measured(int place) {
    return judged.get(place).reading().measured();
  }

  private void noteIfOpened(int forward, int reverse) {
    double there = measured(forward).atMostOhms();
    double back = measured(reverse).atMostOhms();
    if (there * CLEARLY < measured(reverse).atLeastOhms()
        || back * CLEARLY < measured(forward).atLeastOhms()) {
      leastOpened.merge(judged.get(forward).reading().meter(), Math.min(there, back), Math::min);
    }
  }

  private void judge(int forward, int reverse) {
    double there = measured(forward).atMostOhms();
    double back = measured(reverse).atLeastOhms();
    if (Double.isInfinite(there) && Double.isInfinite(measured(reverse).atMostOhms())) {
      neitherConducts(forward);
    } else if (there * CLEARLY < back && back >= LEAST_BLOCKING_OHMS) {
      judged.set(reverse, judged.get(reverse).as(Observed.APART, Outcome.CONFORMS));
      if (isFarAboveAnother(forward)) {
        judged.set(forward, judged.get(forward).as(Observed.RESISTIVE, Outcome.PART_VALUE));
      }
    } else if (judged.get(reverse).observed() != Observed.JOINED) {
      judged.set(reverse, judged.get(reverse).as(Observed.RESISTIVE, Outcome.PART_VALUE));
    }
  }

  private boolean isFarAboveAnother(int forward) {
    Double least = leastOpened.get(judged.get(forward).reading().meter());
    return least != null && measured(forward).atLeastOhms() > least * FAR_ABOVE_ANOTHER;
  }

  private void neitherConducts(int forward) {
    if (leastOpened.containsKey(judged.get(forward).reading().meter())) {
      judged.set(forward, judged.get(forward).as(Observed.APART, Outcome.PART_VALUE));
      return;
    }
    judged.set(forward, judged.get(forward).notJudged(new NotJudged.DiodeNotOpened()));
  }
}
