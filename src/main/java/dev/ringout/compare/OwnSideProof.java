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
   * alone joins all that is there; of two that are exchanged each is joined to what the other led
   * to, and the far ends of both read as listed.
   */
  Optional<OwnSide.Placing> open(OwnSide wanted) {
    return wanted.elsewhere().stream()
        .flatMap(elsewhere -> elsewhere.placings(circuit))
        .filter(placing -> !isContradicted(wanted.conductor(), placing))
        .findFirst();
  }

  private boolean isContradicted(int conductor, OwnSide.Placing placing) {
    return apartIn.keySet().stream()
        .anyMatch(
            state ->
                placing.exchangedWith().isPresent()
                    ? isExchangeContradicted(
                        conductor, placing, placing.exchangedWith().getAsInt(), state)
                    : new Moved(circuit.in(state), conductor, placing.stays())
                        .isContradictedAt(placing.point(), state));
  }

  private boolean isExchangeContradicted(
      int conductor, OwnSide.Placing placing, int other, SwitchState state) {
    Nets nets = circuit.in(state);
    Moved one = new Moved(nets, conductor, placing.stays());
    Moved another = new Moved(nets, other, otherEnd(other, placing.point()));
    return nets.of(one.stays) != nets.of(another.stays)
        && (crossed.has(conductor, state)
            || crossed.has(other, state)
            || apart(state)
                .anyMatch(
                    judged ->
                        one.isJoinedTo(another::isLeft, placing.point(), judged)
                            || another.isJoinedTo(
                                one::isLeft, otherEnd(conductor, one.stays), judged)));
  }

  private int otherEnd(int conductor, int end) {
    return circuit.from(conductor) == end ? circuit.to(conductor) : circuit.from(conductor);
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
      boolean leavesAlone = parted || isWithStaying(point);
      return nets.isClosed(conductor)
          && ((leavesAlone && crossed.has(conductor, state))
              || (parted
                  && apart(state)
                      .anyMatch(
                          judged ->
                              isJoinedTo(one -> nets.of(one) == nets.of(point), point, judged))));
    }

    /**
     * Whether what stays with it was found apart from other points.
     *
     * @param others whether a point is one of them
     * @param other one of them
     */
    boolean isJoinedTo(IntPredicate others, int other, Judged judged) {
      return !judged.touchedSince().has(circuit.normal().of(stays))
          && (isBetween(judged.probing(), this::isWithStaying, others, other)
              || isBetween(judged.probing(), others, this::isWithStaying, stays));
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

    /** Whether a point is what it led to, and no longer does. */
    boolean isLeft(int point) {
      return OwnSide.isWithStaying(nets, conductor, otherEnd(conductor, stays), point);
    }
  }
}
