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
import java.util.stream.Stream;

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

  /**
   * The first other place at which an end could be and every reading still be good. An end moved
   * alone joins all that is there. Where ends of both pieces have changed places, two or more, the
   * far ends read as listed; so each conductor of one of the two is read through.
   */
  Optional<OwnSide.Placing> open(OwnSide wanted) {
    int conductor = wanted.conductor();
    return wanted.elsewhere().stream()
        .flatMap(
            elsewhere ->
                isContradicted(conductor, elsewhere.alone())
                    ? exchanged(conductor, elsewhere).stream()
                    : Stream.of(elsewhere.alone()))
        .findFirst();
  }

  private boolean isContradicted(int conductor, OwnSide.Placing placing) {
    return apartIn.keySet().stream()
        .anyMatch(
            state ->
                new Moved(circuit.in(state), conductor, placing.stays())
                    .isContradictedAt(placing.point(), state));
  }

  /** What it may have changed places with. */
  private Optional<OwnSide.Placing> exchanged(int conductor, OwnSide.Elsewhere elsewhere) {
    if (!elsewhere.parted() || isInPlace(conductor, elsewhere)) {
      return Optional.empty();
    }
    return elsewhere.piece().conductors().stream()
        .filter(other -> !isInPlace(other, elsewhere))
        .findFirst()
        .map(other -> elsewhere.exchangedWith(circuit, other));
  }

  /** Whether it was read through with the pieces apart, or others go around it in its own. */
  private boolean isInPlace(int conductor, OwnSide.Elsewhere elsewhere) {
    return !circuit.in(elsewhere.apart()).isCutEdge(conductor)
        || apartIn.keySet().stream()
            .filter(state -> crossed.has(conductor, state))
            .map(circuit::in)
            .anyMatch(nets -> nets.of(elsewhere.stays()) != nets.of(elsewhere.piece().terminal()));
  }

  private Stream<Judged> apart(SwitchState state) {
    return apartIn.getOrDefault(state, List.of()).stream();
  }

  /** A conductor with one end where it is not listed, in one state of the switches. */
  private final class Moved {
    private final Nets nets;
    private final int conductor;
    private final int stays;

    Moved(Nets nets, int conductor, int stays) {
      this.nets = nets;
      this.conductor = conductor;
      this.stays = stays;
    }

    boolean isContradictedAt(int point, SwitchState state) {
      boolean parted = nets.of(stays) != nets.of(point);
      return nets.isClosed(conductor)
          && ((crossed.has(conductor, state) && (parted || isWithStaying(point)))
              || (parted && apart(state).anyMatch(judged -> isJoined(judged, point))));
    }

    /** What stays with it is joined to the other piece, and was found apart. */
    private boolean isJoined(Judged judged, int point) {
      IntPredicate isThere = one -> nets.of(one) == nets.of(point);
      return !judged.touchedSince().has(circuit.normal().of(stays))
          && (isBetween(judged.probing(), this::isWithStaying, isThere, point)
              || isBetween(judged.probing(), isThere, this::isWithStaying, stays));
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

    private boolean isWithStaying(int point) {
      return OwnSide.isWithStaying(nets, conductor, stays, point);
    }
  }
}
