package dev.ringout.compare;

import dev.ringout.circuit.Circuit;
import dev.ringout.circuit.Nets;
import dev.ringout.circuit.Probing;
import dev.ringout.circuit.TreePaths;
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
  private final Map<SwitchState, Shown> shownIn = new LinkedHashMap<>();

  /** What was shown in one state of the switches. */
  private static final class Shown {
    final Nets nets;
    final TreePaths paths;

    /** The conductors between two points that were found joined, nothing going around them. */
    final boolean[] crossed;

    final List<Judged> apart = new ArrayList<>();

    Shown(Nets nets, int conductors) {
      this.nets = nets;
      this.paths = new TreePaths(nets);
      this.crossed = new boolean[conductors];
    }
  }

  private OwnSideProof(Circuit circuit) {
    this.circuit = circuit;
  }

  /** Ready to prove by the readings in force. */
  static OwnSideProof of(Circuit circuit, List<Judged> inForce) {
    OwnSideProof proof = new OwnSideProof(circuit);
    if (!circuit.harness().switches().isEmpty()) {
      // A lifted end cuts pieces in two: what is shown of one half is not shown of the other.
      inForce.stream().filter(one -> !one.reading().state().liftsAny()).forEach(proof::add);
    }
    return proof;
  }

  private void add(Judged judged) {
    Probing probing = judged.probing();
    if (judged.provesJoin() && probing.isPair()) {
      Shown shown = in(judged.reading().state());
      shown.paths.mark(
          probing.from()[0],
          probing.to()[0],
          edge -> shown.crossed[edge] |= shown.nets.isCutEdge(edge));
    } else if (judged.provesApart()) {
      in(judged.reading().state()).apart.add(judged);
    }
  }

  private Shown in(SwitchState state) {
    return shownIn.computeIfAbsent(
        state, one -> new Shown(circuit.in(one), circuit.conductors().size()));
  }

  /** The first other side on which an end could be and every reading still be good. */
  Optional<OwnSide.Placing> open(OwnSide wanted) {
    return wanted.placings().stream()
        .filter(placing -> !isContradicted(wanted.conductor(), placing))
        .findFirst();
  }

  private boolean isContradicted(int conductor, OwnSide.Placing placing) {
    return shownIn.values().stream()
        .anyMatch(
            shown ->
                new Moved(shown, conductor, placing.stays(), placing.terminal()).isContradicted());
  }

  /** A conductor with one end on another piece, in one state of the switches. */
  private final class Moved {
    private final Shown shown;
    private final Nets nets;
    private final int conductor;
    private final int stays;
    private final int other;

    Moved(Shown shown, int conductor, int stays, int other) {
      this.shown = shown;
      this.nets = shown.nets;
      this.conductor = conductor;
      this.stays = stays;
      this.other = other;
    }

    boolean isContradicted() {
      return nets.isClosed(conductor)
          && (isOpened() || (!isWithOther(stays) && shown.apart.stream().anyMatch(this::isJoined)));
    }

    /** What it led to is left alone, and was found joined. */
    private boolean isOpened() {
      return shown.crossed[conductor] && (!isWithOther(stays) || isWithStaying(other));
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
