package dev.ringout.compare;

import dev.ringout.circuit.Circuit;
import dev.ringout.circuit.Expected.ThroughParts;
import dev.ringout.circuit.Probing;
import dev.ringout.harness.SwitchState;
import dev.ringout.readings.Reading;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Which readings are of one subject: the same points, state and kind. Which probe was where matters
 * only through a one-way part.
 *
 * <p>Readings come by the million, most of them alone with their subject: they are numbered here,
 * and found by a table of numbers (linear probing) with no object of its own for any of them.
 */
final class Subjects {
  private static final int NONE = -1;
  private static final int SPREAD = 0x9E3779B9;

  private final Circuit circuit;
  private final List<Judged> readings;
  private final int[] firstLike;
  private final int[] nextLike;
  private final int[] table;

  private Subjects(Circuit circuit, List<Judged> readings) {
    this.circuit = circuit;
    this.readings = readings;
    firstLike = new int[readings.size()];
    nextLike = new int[readings.size()];
    table = new int[Integer.highestOneBit(Math.max(4, readings.size())) * 4];
    Arrays.fill(nextLike, NONE);
    Arrays.fill(table, NONE);
  }

  static Subjects of(Circuit circuit, List<Judged> readings) {
    Subjects subjects = new Subjects(circuit, readings);
    int[] last = new int[readings.size()];
    for (int reading = 0; reading < last.length; reading++) {
      int first = subjects.find(reading);
      subjects.firstLike[reading] = first;
      if (first != reading) {
        subjects.nextLike[last[first]] = reading;
      }
      last[first] = reading;
    }
    return subjects;
  }

  /** The number of the first reading of the same subject: its own where there is none before it. */
  int first(int reading) {
    return firstLike[reading];
  }

  /** All readings of one subject in their order, by the first. */
  List<Judged> like(int first) {
    if (nextLike[first] == NONE) {
      return List.of(readings.get(first));
    }
    List<Judged> like = new ArrayList<>();
    for (int reading = first; reading != NONE; reading = nextLike[reading]) {
      like.add(readings.get(reading));
    }
    return like;
  }

  /** The first reading of a subject; the reading itself, which is then known, where none is. */
  private int find(int reading) {
    Judged judged = readings.get(reading);
    int place = (hash(judged) * SPREAD) >>> (Integer.numberOfLeadingZeros(table.length) + 1);
    while (table[place] != NONE) {
      if (isSame(judged, readings.get(table[place]))) {
        return table[place];
      }
      place = (place + 1) & (table.length - 1);
    }
    table[place] = reading;
    return reading;
  }

  private int hash(Judged judged) {
    int hash = 31 * Arrays.hashCode(one(judged)) + Arrays.hashCode(other(judged));
    SwitchState state = judged.reading().state();
    boolean insulation = judged.reading().kind() == Reading.Kind.INSULATION;
    return 31 * hash + (insulation ? 1 : 0) + (state.isNormal() ? 0 : state.hashCode());
  }

  private boolean isSame(Judged left, Judged right) {
    return left.reading().kind() == right.reading().kind()
        && left.probing().toRest() == right.probing().toRest()
        && Arrays.equals(one(left), one(right))
        && Arrays.equals(other(left), other(right))
        && left.reading().state().equals(right.reading().state());
  }

  private int[] one(Judged judged) {
    return sorted(isTurned(judged) ? judged.probing().to() : judged.probing().from());
  }

  private int[] other(Judged judged) {
    return sorted(isTurned(judged) ? judged.probing().from() : judged.probing().to());
  }

  /** Whether the sides are taken the other way round, so that either way is one subject. */
  private boolean isTurned(Judged judged) {
    Probing probing = judged.probing();
    return !probing.toRest() && least(probing.from()) > least(probing.to()) && !isOneWay(judged);
  }

  private static int least(int[] points) {
    int least = points[0];
    for (int point : points) {
      least = Math.min(least, point);
    }
    return least;
  }

  private boolean isOneWay(Judged judged) {
    return judged.expected().throughParts().filter(this::isOneWay).isPresent();
  }

  private boolean isOneWay(ThroughParts through) {
    return through.parts().stream()
        .anyMatch(part -> !circuit.part(part).kind().readsTheSameReversed());
  }

  private static int[] sorted(int[] points) {
    if (points.length < 2) {
      return points;
    }
    int[] sorted = points.clone();
    Arrays.sort(sorted);
    return sorted;
  }
}
