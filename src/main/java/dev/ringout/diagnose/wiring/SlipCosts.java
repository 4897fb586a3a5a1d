package dev.ringout.diagnose.wiring;

import dev.ringout.circuit.Circuit;
import dev.ringout.circuit.Conductor;
import dev.ringout.diagnose.Arrangement;
import dev.ringout.diagnose.PartFault;
import dev.ringout.harness.Switch;
import dev.ringout.standards.Tables;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** What a slip costs: −ln of how often it happens. The cheapest explanation is the likeliest. */
public final class SlipCosts {
  private final Circuit circuit;
  private final Neighbours neighbours;
  private final Map<String, Double> costOf = new HashMap<>();
  private final Set<Integer> atASwitch = new HashSet<>();
  private final double least;
  private final double leastAtASwitch;
  private final OfKind ofKind = new OfKind();

  SlipCosts(Circuit circuit, Neighbours neighbours, Tables tables) {
    this.circuit = circuit;
    this.neighbours = neighbours;
    for (Tables.Entry row : tables.rows("slips")) {
      costOf.put(
          row.get("slip") + " " + row.get("where"), -Math.log(row.number("per_thousand") / 1000));
    }
    // A misread may make both of its nets look wrong, and a poor joint one.
    least =
        Math.min(
            cheapest("open", "part", "poor"), cheapest("moved", "crossed", "bridged", "test") / 2);
    int mostContacts = 0;
    for (Switch one : circuit.harness().switches()) {
      mostContacts = Math.max(mostContacts, one.contacts().size());
      for (int contact : circuit.contactsOf(one)) {
        atASwitch.add(circuit.normal().of(circuit.from(contact)));
        atASwitch.add(circuit.normal().of(circuit.to(contact)));
      }
    }
    leastAtASwitch =
        mostContacts == 0 ? least : Math.min(least, cheapest("switch") / (2 * mostContacts));
  }

  double of(Slip slip) {
    return slip.match(ofKind);
  }

  /** A ring of so many ends in one order: all the orders there may be share its chance. */
  double ofRing(int ends) {
    double orders = 0;
    for (int i = 2; i < ends; i++) {
      orders += Math.log(i);
    }
    return ofAny(Arrangement.RING) + orders;
  }

  /** That a poor joint has within a tenth what a part has, it has of all that it may have. */
  private double justAsAPart() {
    return -Math.log(densityOfPoor(OF_A_PART_OHMS) * OF_A_PART_OHMS * 2 * TENTH);
  }

  /**
   * A diode beside a coil shows once the meter has half a volt across the coil: on their low ranges
   * few have (common practice, no source). One of four.
   */
  private static final double HARDLY_OPENED = Math.log(4);

  /** Parts that are measured have about so much, or more. */
  private static final double OF_A_PART_OHMS = 100;

  private static final double TENTH = 0.1;

  /** Of the unit and the sheet, where either may be wrong as likely, the unit comes first. */
  private static final double UNIT_FIRST = 0.2;

  /** The least that any arrangement costs. */
  double leastArrangement() {
    return Arrays.stream(Arrangement.values())
        .mapToDouble(this::ofAny)
        .min()
        .orElse(Double.POSITIVE_INFINITY);
  }

  private double ofAny(Arrangement how) {
    return costOf.getOrDefault("arrangement " + how.word(), Double.POSITIVE_INFINITY);
  }

  /** What a poor joint of a conductor costs. */
  public double ofPoor(Conductor conductor) {
    return costOf.getOrDefault("poor " + kind(conductor), Double.POSITIVE_INFINITY);
  }

  /** What it costs that two points are joined that are not next to each other. */
  double ofFarBridge() {
    return costOf.getOrDefault("bridged far", Double.POSITIVE_INFINITY);
  }

  /** What a poor joint costs at the least. */
  double leastPoor() {
    return cheapest("poor");
  }

  /** What it costs that a line was skipped on the sheet. */
  public double ofSlippedRows() {
    return costOf.getOrDefault("test slipped-rows", Double.POSITIVE_INFINITY);
  }

  /**
   * How likely a poor joint adds so much, per ohm: over decades about what counts as joined at all,
   * half of them less than that and half more, a tenth of it or ten times as much still one in
   * eleven (log-logistic).
   */
  public double densityOfPoor(double excessOhms) {
    double middle = circuit.harness().limits().fixedClosedMaxOhms();
    return middle / Math.pow(middle + Math.max(0, excessOhms), 2);
  }

  private static String kind(Conductor conductor) {
    return conductor.match(new NamedInTable());
  }

  /** A conductor's kind as the table of slips names it. */
  private static final class NamedInTable implements Conductor.Cases<String> {
    @Override
    public String wire(Conductor.OfWire conductor) {
      return "wire";
    }

    @Override
    public String link(Conductor.OfLink conductor) {
      return "link";
    }

    @Override
    public String contact(Conductor.OfContact conductor) {
      return "contact";
    }
  }

  /** How often a slip happens, by its name: the share of all chances. */
  public double rateOf(String name) {
    return Math.exp(-costOf.getOrDefault(name, Double.POSITIVE_INFINITY));
  }

  /**
   * The least that it can cost to put some nets right which one reading touches: no slip mends more
   * than two readings that share no net, so half of the cheapest that mends two, or the cheapest
   * that mends one; a switch mends two for each contact. Whole arrangements are counted apart.
   */
  double leastPerNet(Set<Integer> nets) {
    return nets.stream().anyMatch(atASwitch::contains) ? leastAtASwitch : least;
  }

  private double cheapest(String... kinds) {
    List<String> wanted = List.of(kinds);
    return costOf.entrySet().stream()
        .filter(cost -> wanted.contains(cost.getKey().substring(0, cost.getKey().indexOf(' '))))
        .mapToDouble(Map.Entry::getValue)
        .min()
        .orElse(Double.POSITIVE_INFINITY);
  }

  /** What each kind costs, by the row of the table that names it. */
  private final class OfKind implements Slip.Cases<Double> {
    private double row(String name) {
      return costOf.getOrDefault(name, Double.POSITIVE_INFINITY);
    }

    @Override
    public Double missing(Slip.Missing slip) {
      return row("open " + kind(circuit.conductors().get(slip.conductor())));
    }

    @Override
    public Double moved(Slip.Moved slip) {
      return row("moved " + where(circuit.at(slip.wire(), slip.end()), slip.to()));
    }

    @Override
    public Double crossed(Slip.Crossed slip) {
      int one = circuit.at(slip.wire(), slip.end());
      return row("crossed " + where(one, circuit.at(slip.otherWire(), slip.otherEnd())));
    }

    @Override
    public Double rearranged(Slip.Rearranged slip) {
      return slip.how() == Arrangement.RING ? ofRing(slip.puts().size()) : ofAny(slip.how());
    }

    @Override
    public Double misread(Slip.Misread slip) {
      return row("test wrong-pin");
    }

    /** The farther apart two rows are, the less often one is taken for the other. */
    @Override
    public Double exchanged(Slip.Exchanged slip) {
      return Math.log(slip.apart()) + row("test exchanged-rows") + UNIT_FIRST;
    }

    @Override
    public Double poor(Slip.Poor slip) {
      // The search thinks of poor joints where a value is that of a part.
      return ofPoor(circuit.conductors().get(slip.conductor())) + justAsAPart();
    }

    @Override
    public Double bridged(Slip.Bridged slip) {
      return row("bridged " + where(slip.one(), slip.other()));
    }

    @Override
    public Double faultyPart(Slip.FaultyPart slip) {
      double beside =
          slip.how() == PartFault.REVERSED && isBesideOhms(slip.part()) ? HARDLY_OPENED : 0;
      return row("part " + slip.how().word()) + beside;
    }

    @Override
    public Double faultySwitch(Slip.FaultySwitch slip) {
      return row("switch " + slip.how().word());
    }
  }

  /** Whether another part with ohms of its own lies between the same two nets. */
  private boolean isBesideOhms(int part) {
    int one = circuit.normal().of(circuit.fromOfPart(part));
    int other = circuit.normal().of(circuit.toOfPart(part));
    for (int beside = 0; beside < circuit.harness().parts().size(); beside++) {
      int from = circuit.normal().of(circuit.fromOfPart(beside));
      int to = circuit.normal().of(circuit.toOfPart(beside));
      if (beside != part
          && circuit.part(beside).ohms().isPresent()
          && ((from == one && to == other) || (from == other && to == one))) {
        return true;
      }
    }
    return false;
  }

  private String where(int one, int other) {
    return neighbours.areNext(one, other) ? "near" : "far";
  }
}
