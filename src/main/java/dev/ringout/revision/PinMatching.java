package dev.ringout.revision;

import dev.ringout.circuit.LeastCost;
import dev.ringout.harness.Point;
import dev.ringout.revision.ItemEnds.End;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/** Where no pin of an item has its old name: which pin is which, by where their wires go. */
final class PinMatching {
  private static final int LEAST_PINS = 3;

  /** Of all wired pins; the rest may be other changes of the same revision. */
  private static final double LEAST_SHARE = 0.6;

  /** Of the smaller number of wired pins: pins of the old scheme that the new one has too. */
  private static final double MOST_COMMON_PINS = 0.1;

  private static final int SAME_FAR_POINT = 4;
  private static final int SAME_WIRE = 3;
  private static final int SAME_SIGNAL = 1;
  private static final int MOST_ASSIGNED = 250;

  private final ItemEnds before;
  private final ItemEnds after;
  private final Map<String, String> newRefOf;
  private final Map<String, Map<String, String>> newPinOf = new HashMap<>();

  /**
   * Pins of items whose names are settled.
   *
   * @param newRefOf every old item with its name in the later revision
   */
  PinMatching(ItemEnds before, ItemEnds after, Map<String, String> newRefOf) {
    this.before = before;
    this.after = after;
    this.newRefOf = newRefOf;
  }

  /** The pins found so far: old item, old pin, new pin. */
  Map<String, Map<String, String>> newPins() {
    return newPinOf;
  }

  /** The pins found of an item, old to new. */
  Map<String, String> newPins(String oldRef) {
    return newPinOf.getOrDefault(oldRef, Map.of());
  }

  /** Looks for the pins of an item; gives what was found. */
  Optional<Rename> find(String oldRef, String newRef) {
    List<String> olds = before.wiredPins(oldRef);
    List<String> news = after.wiredPins(newRef);
    Set<String> common = new TreeSet<>(olds);
    common.retainAll(news);
    int fewer = Math.min(olds.size(), news.size());
    if (fewer < LEAST_PINS || common.size() > MOST_COMMON_PINS * fewer) {
      return Optional.empty();
    }
    Map<String, String> pins = matched(oldRef, newRef, olds, news);
    int ends = Math.max(olds.size(), news.size());
    if (pins.size() < LEAST_SHARE * ends || pins.size() < LEAST_PINS) {
      return Optional.empty();
    }
    int agreeing = PinScheme.complete(pins, before.pins(oldRef));
    newPinOf.put(oldRef, pins);
    return Optional.of(new Rename(oldRef, newRef, pins, agreeing, ends, false));
  }

  private Map<String, String> matched(
      String oldRef, String newRef, List<String> olds, List<String> news) {
    int[][] weights = weights(oldRef, newRef, olds, news);
    int[] columnOf = assigned(weights);
    Map<String, String> pins = new LinkedHashMap<>();
    for (int i = 0; i < olds.size(); i++) {
      if (columnOf[i] >= 0 && columnOf[i] < news.size() && weights[i][columnOf[i]] >= SAME_WIRE) {
        pins.put(olds.get(i), news.get(columnOf[i]));
      }
    }
    return pins;
  }

  private int[][] weights(String oldRef, String newRef, List<String> olds, List<String> news) {
    int[][] weights = new int[olds.size()][news.size()];
    for (End end : before.of(oldRef)) {
      int row = olds.indexOf(end.pin());
      for (End other : after.of(newRef)) {
        int column = news.indexOf(other.pin());
        if (row >= 0 && column >= 0) {
          weights[row][column] += weight(end, other);
        }
      }
    }
    return weights;
  }

  private int weight(End end, End other) {
    Point far = end.far();
    String farItem = newRefOf.getOrDefault(far.ref(), far.ref());
    String farPin = newPins(far.ref()).getOrDefault(far.pin(), far.pin());
    boolean sameItem = farItem.equals(other.far().ref());
    boolean samePoint = sameItem && farPin.equals(other.far().pin());
    boolean sameWire = sameItem && !end.wire().isEmpty() && end.wire().equals(other.wire());
    boolean sameSignal = !end.signal().isEmpty() && end.signal().equals(other.signal());
    return (samePoint ? SAME_FAR_POINT : 0)
        + (sameWire ? SAME_WIRE : 0)
        + (sameSignal ? SAME_SIGNAL : 0);
  }

  private static int[] assigned(int[][] weights) {
    int rows = weights.length;
    int size = Math.max(rows, weights[0].length);
    int[] columnOf = new int[rows];
    Arrays.fill(columnOf, -1);
    if (size > MOST_ASSIGNED) {
      return columnOf;
    }
    int most = Arrays.stream(weights).flatMapToInt(Arrays::stream).max().orElse(0);
    int[][] costs = new int[size][size];
    for (int i = 0; i < size; i++) {
      for (int j = 0; j < size; j++) {
        costs[i][j] = most - (i < rows && j < weights[0].length ? weights[i][j] : 0);
      }
    }
    System.arraycopy(LeastCost.assignment(costs), 0, columnOf, 0, rows);
    return columnOf;
  }
}
