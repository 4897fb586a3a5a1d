package dev.ringout.compare;

import dev.ringout.circuit.Circuit;
import dev.ringout.circuit.Nets;
import dev.ringout.circuit.Probing;
import dev.ringout.compare.Coverage.Tally;
import dev.ringout.harness.SwitchState;
import java.util.List;
import java.util.function.Consumer;
import java.util.stream.IntStream;

/**
 * Which switch contacts the readings show closed in their position and open in the others, given
 * the joins proven.
 */
final class ContactProof {
  private final Circuit circuit;
  private final boolean[] crossed;
  private final List<Judged> apart;

  private ContactProof(Circuit circuit, boolean[] crossed, List<Judged> apart) {
    this.circuit = circuit;
    this.crossed = crossed;
    this.apart = apart;
  }

  /** Ready to prove; of a unit without switches no reading matters. */
  static ContactProof of(Circuit circuit, List<Judged> inForce, boolean[] crossed) {
    return new ContactProof(
        circuit,
        crossed,
        circuit.harness().switches().isEmpty()
            ? List.of()
            : inForce.stream().filter(Judged::provesApart).toList());
  }

  Tally prove(List<Requirements.OfContact> needed, Consumer<Unproven> unproven) {
    long proven = 0;
    for (Requirements.OfContact contact : needed) {
      if (contact.closed() ? crossed[contact.conductor()] : isShownOpen(contact)) {
        proven++;
      } else {
        unproven.accept(
            new Unproven.Contact(contact.conductor(), contact.position(), contact.closed()));
      }
    }
    return new Tally(needed.size(), proven);
  }

  /** Which pieces of nets are shown apart with the contacts open that lie between them. */
  Tally provePast(List<Unproven.PastContacts> needed, Consumer<Unproven> unproven) {
    long proven = 0;
    for (Unproven.PastContacts gap : needed) {
      if (areShownApart(gap.one(), gap.other())) {
        proven++;
      } else {
        unproven.accept(gap);
      }
    }
    return new Tally(needed.size(), proven);
  }

  /** With an end lifted, what leads past is lifted with it. */
  private boolean areShownApart(int one, int other) {
    return apart.stream()
        .filter(judged -> !judged.reading().state().liftsAny())
        .anyMatch(judged -> shows(judged, one, other));
  }

  private boolean isShownOpen(Requirements.OfContact wanted) {
    int from = circuit.from(wanted.conductor());
    int to = circuit.to(wanted.conductor());
    return apart.stream()
        .filter(
            judged -> judged.reading().state().positionOf(wanted.which()).equals(wanted.position()))
        .filter(judged -> shows(judged, from, to))
        .anyMatch(judged -> !liftsWithoutNeed(judged.reading().state(), from, to));
  }

  /**
   * Whether a wire or link was lifted though the two points are apart with it in place: what hangs
   * at its far end and leads past the contact was lifted with it.
   */
  private boolean liftsWithoutNeed(SwitchState state, int from, int to) {
    if (!state.liftsAny()) {
      return false;
    }
    Nets whole = circuit.in(state.withoutLifts());
    Nets nets = circuit.in(state);
    return whole.of(from) != whole.of(to)
        && IntStream.range(0, circuit.conductors().size())
            .anyMatch(conductor -> whole.isClosed(conductor) && !nets.isClosed(conductor));
  }

  /** Whether a reading holds two points apart that were not touched since. */
  private boolean shows(Judged judged, int one, int other) {
    return separates(judged.probing(), one, other)
        && !isTouched(judged, one)
        && !isTouched(judged, other);
  }

  private boolean isTouched(Judged judged, int point) {
    return judged.touchedSince().has(circuit.normal().of(point));
  }

  private boolean separates(Probing probing, int one, int other) {
    Nets nets = circuit.in(probing.state());
    int from = nets.of(one);
    int to = nets.of(other);
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
