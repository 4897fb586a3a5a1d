package dev.ringout.diagnose;

import dev.ringout.circuit.Circuit;
import dev.ringout.circuit.Conductor;
import dev.ringout.standards.PublishedTable;
import java.util.HashMap;
import java.util.Map;

/** What a slip costs: −ln of how often it happens. The cheapest explanation is the likeliest. */
final class SlipCosts {
  private final Circuit circuit;
  private final Neighbours neighbours;
  private final Map<String, Double> costOf = new HashMap<>();

  SlipCosts(Circuit circuit, Neighbours neighbours) {
    this.circuit = circuit;
    this.neighbours = neighbours;
    for (Map<String, String> row : PublishedTable.load(SlipCosts.class, "slips.csv").rows()) {
      double perThousand = Double.parseDouble(row.getOrDefault("per_thousand", ""));
      costOf.put(row.get("slip") + " " + row.get("where"), -Math.log(perThousand / 1000));
    }
  }

  double of(Slip slip) {
    return costOf.getOrDefault(name(slip), Double.POSITIVE_INFINITY);
  }

  /** What a poor joint of a conductor costs. */
  double ofPoor(Conductor conductor) {
    String where =
        conductor instanceof Conductor.OfWire
            ? "wire"
            : conductor instanceof Conductor.OfLink ? "link" : "contact";
    return costOf.getOrDefault("poor " + where, Double.POSITIVE_INFINITY);
  }

  /** How often a slip happens, by its name: the share of all chances. */
  double rateOf(String name) {
    return Math.exp(-costOf.getOrDefault(name, Double.POSITIVE_INFINITY));
  }

  /** The most that any slip of what is joined to what costs. */
  double most() {
    return costOf.entrySet().stream()
        .filter(cost -> !isOfValue(cost.getKey()))
        .mapToDouble(Map.Entry::getValue)
        .max()
        .orElse(0);
  }

  private static boolean isOfValue(String name) {
    return name.startsWith("poor") || name.startsWith("gauge") || name.startsWith("length");
  }

  /**
   * The least that it can cost to put one net right: no slip mends more than two, so half of the
   * cheapest that mends two, or the cheapest that mends one; a switch mends two for each contact.
   */
  double leastPerNet() {
    double one = Double.POSITIVE_INFINITY;
    double two = Double.POSITIVE_INFINITY;
    double many = Double.POSITIVE_INFINITY;
    for (Map.Entry<String, Double> cost : costOf.entrySet()) {
      if (isOfValue(cost.getKey())) {
        continue;
      }
      if (cost.getKey().startsWith("switch")) {
        many = Math.min(many, cost.getValue());
        continue;
      }
      boolean mendsOne = cost.getKey().startsWith("open") || cost.getKey().startsWith("part");
      one = mendsOne ? Math.min(one, cost.getValue()) : one;
      two = mendsOne ? two : Math.min(two, cost.getValue());
    }
    int mostContacts =
        circuit.harness().switches().stream()
            .mapToInt(which -> which.contacts().size())
            .max()
            .orElse(0);
    double ofTwo = Math.min(one, two / 2);
    return mostContacts == 0 ? ofTwo : Math.min(ofTwo, many / (2 * mostContacts));
  }

  private String name(Slip slip) {
    if (slip instanceof Slip.Missing missing) {
      Conductor conductor = circuit.conductors().get(missing.conductor());
      if (conductor instanceof Conductor.OfWire) {
        return "open wire";
      }
      return conductor instanceof Conductor.OfLink ? "open link" : "open contact";
    }
    if (slip instanceof Slip.Moved moved) {
      return "moved " + where(circuit.at(moved.wire(), moved.end()), moved.to());
    }
    if (slip instanceof Slip.Crossed crossed) {
      return "crossed "
          + where(
              circuit.at(crossed.wire(), crossed.end()),
              circuit.at(crossed.otherWire(), crossed.otherEnd()));
    }
    if (slip instanceof Slip.Bridged bridged) {
      return "bridged " + where(bridged.one(), bridged.other());
    }
    return slip instanceof Slip.FaultySwitch faulty
        ? "switch " + faulty.how().word()
        : "part " + ((Slip.FaultyPart) slip).how().word();
  }

  private String where(int one, int other) {
    return neighbours.areNext(one, other) ? "near" : "far";
  }
}
