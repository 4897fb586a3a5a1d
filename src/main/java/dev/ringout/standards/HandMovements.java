package dev.ringout.standards;

import java.util.HashMap;
import java.util.Map;

/** What a reading takes of the hand that makes it, in movements of one probe at an open item. */
public final class HandMovements {
  private final Map<String, Double> costOf = new HashMap<>();

  /** The movements of a table. */
  public HandMovements(Tables tables) {
    tables
        .rows("hand-movements")
        .forEach(row -> costOf.put(row.get("movement"), row.number("cost")));
  }

  /** A probe put at an item, open already or not. */
  public double probe(boolean isOpen) {
    return cost(isOpen ? "probe-near" : "probe-far");
  }

  /** All other nets tied together. */
  public double allOthers() {
    return cost("all-others");
  }

  /** Switches put to other positions. */
  public double switches(int moved) {
    return moved * cost("switch-moved");
  }

  private double cost(String movement) {
    return costOf.getOrDefault(movement, 1.0);
  }
}
