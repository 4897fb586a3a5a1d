package dev.ringout.compare;

import dev.ringout.circuit.Circuit;
import dev.ringout.circuit.Nets;
import dev.ringout.circuit.Probing;
import dev.ringout.harness.SwitchState;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.IntPredicate;

/**
 * Which readings contradict that an end is on another side of a contact than listed: one that found
 * joined what would be open then, or apart what would be joined.
 */
final class OwnSideProof {
  private final Circuit circuit;
  private final CrossedInStates crossed;

  /** In each state in which anything was shown: what was found apart. */
  private final Map<SwitchState, List<Judged>> apartIn = new LinkedHashMap<>();

  private OwnSideProof(Circuit circuit, CrossedInStates crossed) {
    this.circuit = circuit;
    this.crossed = crossed;
  }

  /** Ready to prove by the readings in force. */
  static OwnSideProof of(Circuit circuit, CrossedInStates crossed, List<Judged> inForce) {
    OwnSideProof proof = new OwnSideProof(circuit, crossed);
    if (!circuit.harness().switches().isEmpty()) {
      // A lifted end cuts pieces in two: what is shown of one half is not shown of the other.
      inForce.stream().filter(one -> !one.reading().state().liftsAny()).forEach(proof::add);
    }
    return proof;
  }

  private void add(Judged judged) {
    List<Judged> apart =
        apartIn.computeIfAbsent(judged.reading().state(), state -> new ArrayList<>());
    if (judged.provesApart()) {
      apart.add(judged);
    }
  }

  /** The first other side on which an end could be and every reading still be good. */
  Optional<OwnSide.Placing> open(OwnSide wanted) {
    return wanted.placings().stream()
        .filter(placing -> !isContradicted(wanted.conductor(), placing))
        .findFirst();
  }

  private boolean isContradicted(int conductor, OwnSide.Placing placing) {
    return apartIn.keySet().stream()
        .anyMatch(state -> new Moved(conductor, placing, state).isContradicted());
  }

  /** A conductor with one end on another piece, in one state of the switches. */
  private final class Moved {
    private final int conductor;
    private final int stays;
    private final int other;
    private final SwitchState state;
    private final Nets nets;

    Moved(int conductor, OwnSide.Placing placing, SwitchState state) {
      this.conductor = conductor;
      this.stays = placing.stays();
      this.other = placing.terminal();
      this.state = state;
      this.nets = circuit.in(state);
    }

    boolean isContradicted() {
      return nets.isClosed(conductor)
          && (isOpened()
              || (!isWithOther(stays)
                  && apartIn.getOrDefault(state, List.of()).stream().anyMatch(this::isJoined)));
    }

    /** What it led to is left alone, and was found joined. */
    private boolean isOpened() {
      return crossed.has(conductor, state) && (!isWithOther(stays) || isWithStaying(other));
    }

    /** What stays with it is joined to the other piece, and was found apart. */
    private boolean isJoined(Judged judged) {
      return !judged.touchedSince().has(circuit.normal().of(stays))
          && (isBetween(judged.probing(), this::isWithStaying, this::isWithOther, other)
              || isBetween(judged.probing(), this::isWithOther, this::isWithStaying, stays));
    }

    /**
     * Whether a probe is on one side and the other probe, or the rest, on another. Whatever is
     * listed as joined to the probe is no part of the rest.
     */
    private boolean isBetween(
        Probing probing, IntPredicate one, IntPredicate another, int ofTheOther) {
      if (Arrays.stream(probing.from()).noneMatch(one)) {
        return false;
      }
      return probing.toRest()
          ? Arrays.stream(probing.from()).noneMatch(point -> nets.of(point) == nets.of(ofTheOther))
          : Arrays.stream(probing.to()).anyMatch(another);
    }

    private boolean isWithOther(int point) {
      return nets.of(point) == nets.of(other);
    }

    private boolean isWithStaying(int point) {
      return OwnSide.isWithStaying(nets, conductor, stays, point);
    }
  }
}
