package dev.ringout.compare;

import dev.ringout.circuit.Circuit;
import dev.ringout.circuit.Conductor;
import dev.ringout.circuit.Nets;
import dev.ringout.circuit.Probing;
import dev.ringout.compare.Coverage.Tally;
import dev.ringout.compare.Coverage.Unproven;
import dev.ringout.harness.Switch;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;

/**
 * Which switch contacts the readings show closed in their position and open in the others, given
 * the joins proven.
 */
final class ContactProof {
  private final Circuit circuit;
  private final boolean[] crossed;
  private final List<Judged> apart = new ArrayList<>();

  ContactProof(Circuit circuit, List<Judged> inForce, boolean[] crossed) {
    this.circuit = circuit;
    this.crossed = crossed;
    if (!circuit.harness().switches().isEmpty()) {
      for (Judged judged : inForce) {
        if (judged.provesApart()) {
          apart.add(judged);
        }
      }
    }
  }

  Tally prove(Consumer<Unproven> unproven) {
    long needed = 0;
    long proven = 0;
    for (int c = 0; c < crossed.length; c++) {
      if (!(circuit.conductors().get(c) instanceof Conductor.OfContact contact)) {
        continue;
      }
      String position = contact.contact().state();
      needed++;
      if (crossed[c]) {
        proven++;
      } else {
        unproven.accept(
            new Unproven.Contact(c, position, true, "no reading shows it closed at " + position));
      }
      for (String other : positionsWhereOpen(contact.contact())) {
        needed++;
        if (isShownOpen(contact.contact(), c, other)) {
          proven++;
        } else {
          unproven.accept(
              new Unproven.Contact(c, other, false, "no reading shows it open at " + other));
        }
      }
    }
    return new Tally(needed, proven);
  }

  private List<String> positionsWhereOpen(Switch.Contact contact) {
    Switch one = circuit.switchOf(contact);
    return one.states().stream()
        .filter(
            state ->
                one.contacts().stream()
                    .noneMatch(other -> other.state().equals(state) && samePoints(other, contact)))
        .toList();
  }

  private static boolean samePoints(Switch.Contact one, Switch.Contact other) {
    return (one.from().equals(other.from()) && one.to().equals(other.to()))
        || (one.from().equals(other.to()) && one.to().equals(other.from()));
  }

  private boolean isShownOpen(Switch.Contact contact, int conductor, String position) {
    Switch one = circuit.switchOf(contact);
    return apart.stream()
        .filter(judged -> judged.reading().state().positionOf(one).equals(position))
        .anyMatch(judged -> separates(judged.probing(), conductor));
  }

  private boolean separates(Probing probing, int conductor) {
    Nets nets = circuit.in(probing.state());
    int from = nets.of(circuit.from(conductor));
    int to = nets.of(circuit.to(conductor));
    return from != to
        && ((holds(probing.from(), from, nets) && isAcross(probing, to, nets))
            || (holds(probing.from(), to, nets) && isAcross(probing, from, nets)));
  }

  private static boolean isAcross(Probing probing, int net, Nets nets) {
    return probing.toRest() ? !holds(probing.from(), net, nets) : holds(probing.to(), net, nets);
  }

  private static boolean holds(int[] points, int net, Nets nets) {
    for (int point : points) {
      if (nets.of(point) == net) {
        return true;
      }
    }
    return false;
  }
}
