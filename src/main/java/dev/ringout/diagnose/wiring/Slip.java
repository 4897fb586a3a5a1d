package dev.ringout.diagnose.wiring;

import dev.ringout.circuit.Circuit;
import dev.ringout.circuit.Probing;
import dev.ringout.compare.Judged;
import dev.ringout.diagnose.Arrangement;
import dev.ringout.diagnose.PartFault;
import dev.ringout.diagnose.SwitchFault;
import dev.ringout.harness.Wire;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * One physical slip: what a hand or a tool did wrong. Points and conductors by their numbers.
 *
 * <p>The trade's miswire, a wire's end in the wrong cavity, is three of its kinds ({@link Moved},
 * {@link Crossed}, {@link Rearranged}); a slip is the wider word, since opens, unlisted joins, poor
 * joints, parts, switches and probes held at the wrong pin go the same way: each costs what its
 * rarity says, and the search takes the cheapest set of them.
 */
sealed interface Slip {

  /** A wire, link or contact that does not conduct. */
  record Missing(int conductor) implements Slip {
    @Override
    public <T> T match(Cases<T> cases) {
      return cases.missing(this);
    }

    @Override
    public Optional<Missing> asMissing() {
      return Optional.of(this);
    }
  }

  /** A wire's end that sits at another point of its item than listed. */
  record Moved(int wire, Wire.End end, int to) implements Slip {
    @Override
    public <T> T match(Cases<T> cases) {
      return cases.moved(this);
    }

    @Override
    public Optional<Moved> asMoved() {
      return Optional.of(this);
    }

    @Override
    public Set<Integer> misplaced() {
      return Set.of(wire);
    }

    @Override
    public Set<Integer> placedAt(Circuit circuit) {
      return Set.of(to);
    }
  }

  /** The ends of two wires at one item, exchanged. */
  record Crossed(int wire, Wire.End end, int otherWire, Wire.End otherEnd) implements Slip {
    @Override
    public <T> T match(Cases<T> cases) {
      return cases.crossed(this);
    }

    @Override
    public Optional<Crossed> asCrossed() {
      return Optional.of(this);
    }

    @Override
    public Set<Integer> misplaced() {
      return Set.of(wire, otherWire);
    }

    /** Both ends are at one item: the one names it. */
    @Override
    public Set<Integer> placedAt(Circuit circuit) {
      return Set.of(circuit.at(wire, end));
    }
  }

  /** One end of a wire put at a point. */
  record Put(int wire, Wire.End end, int to) {}

  /** Many ends at once by one mistake: a hand that was one cavity out, a plug on the wrong side. */
  record Rearranged(Arrangement how, List<Put> puts) implements Slip {
    @Override
    public <T> T match(Cases<T> cases) {
      return cases.rearranged(this);
    }

    @Override
    public Set<Integer> misplaced() {
      return puts.stream().map(Put::wire).collect(Collectors.toSet());
    }

    @Override
    public Set<Integer> placedAt(Circuit circuit) {
      return puts.stream().map(Put::to).collect(Collectors.toSet());
    }
  }

  /**
   * A reading that was taken at another pin than the sheet says.
   *
   * @param first whether its first probe was elsewhere, else the second
   * @param at where that probe was
   */
  record Misread(Judged judged, boolean first, int at) implements Slip {
    /** Where the probes of a reading really were, if it is this one. */
    Optional<Probing> probingOf(Judged reading) {
      if (!reading.equals(judged)) {
        return Optional.empty();
      }
      Probing listed = judged.probing();
      return Optional.of(
          first
              ? Probing.pair(at, listed.to()[0], listed.state())
              : Probing.pair(listed.from()[0], at, listed.state()));
    }

    @Override
    public <T> T match(Cases<T> cases) {
      return cases.misread(this);
    }

    @Override
    public Optional<Misread> asMisread() {
      return Optional.of(this);
    }
  }

  /**
   * Two rows of the sheet with each the other's value.
   *
   * @param apart how many rows lie between them, and one
   */
  record Exchanged(Judged one, Judged other, int apart) implements Slip {
    /** The row of which a reading shows the value, if it is one of these. */
    Optional<Judged> shownBy(Judged reading) {
      if (reading.equals(one)) {
        return Optional.of(other);
      }
      return reading.equals(other) ? Optional.of(one) : Optional.empty();
    }

    @Override
    public <T> T match(Cases<T> cases) {
      return cases.exchanged(this);
    }

    @Override
    public Optional<Exchanged> asExchanged() {
      return Optional.of(this);
    }
  }

  /** A wire, link or contact whose joints conduct poorly. */
  record Poor(int conductor) implements Slip {
    @Override
    public <T> T match(Cases<T> cases) {
      return cases.poor(this);
    }

    @Override
    public Optional<Poor> asPoor() {
      return Optional.of(this);
    }
  }

  /** Two points joined by something that is not listed. */
  record Bridged(int one, int other) implements Slip {
    @Override
    public <T> T match(Cases<T> cases) {
      return cases.bridged(this);
    }

    @Override
    public Optional<Bridged> asBridged() {
      return Optional.of(this);
    }
  }

  /**
   * A part that is not as listed.
   *
   * @param from where its first end is
   * @param to where its second end is
   */
  record FaultyPart(int part, PartFault how, int from, int to) implements Slip {
    @Override
    public <T> T match(Cases<T> cases) {
      return cases.faultyPart(this);
    }

    @Override
    public Optional<FaultyPart> asFaultyPart() {
      return Optional.of(this);
    }

    /** Beside the same part missing, reversed or moved, one that may read anything says nothing. */
    @Override
    public boolean isVaguerThan(Slip other) {
      return how == PartFault.OTHER_VALUE
          && other.asFaultyPart().filter(particular -> particular.part() == part).isPresent();
    }
  }

  /**
   * A switch that does not close what it should in every position.
   *
   * @param which its number in the harness
   * @param position where it is stuck; else empty
   * @param contact the conductor that is welded; else -1
   */
  record FaultySwitch(int which, SwitchFault how, String position, int contact) implements Slip {
    @Override
    public <T> T match(Cases<T> cases) {
      return cases.faultySwitch(this);
    }

    @Override
    public Optional<FaultySwitch> asFaultySwitch() {
      return Optional.of(this);
    }
  }

  /** What is made of it, by its kind. */
  <T> T match(Cases<T> cases);

  /** The wires that it puts elsewhere. */
  default Set<Integer> misplaced() {
    return Set.of();
  }

  /** Points at which it leaves wire ends that are listed elsewhere: one for each item at least. */
  default Set<Integer> placedAt(Circuit circuit) {
    return Set.of();
  }

  /** Whether it says nothing beside another slip that says the same and more. */
  default boolean isVaguerThan(Slip other) {
    return false;
  }

  /** The points that it is about: where things are listed and where they would be. */
  default Set<Integer> points(Circuit circuit) {
    return match(new PointsOfSlip(circuit));
  }

  /** This slip, where it is that something does not conduct. */
  default Optional<Missing> asMissing() {
    return Optional.empty();
  }

  /** This slip, where it is one moved end. */
  default Optional<Moved> asMoved() {
    return Optional.empty();
  }

  /** This slip, where it is two ends exchanged. */
  default Optional<Crossed> asCrossed() {
    return Optional.empty();
  }

  /** This slip, where it is a reading at another pin. */
  default Optional<Misread> asMisread() {
    return Optional.empty();
  }

  /** This slip, where it is two rows exchanged. */
  default Optional<Exchanged> asExchanged() {
    return Optional.empty();
  }

  /** This slip, where it is a poor joint. */
  default Optional<Poor> asPoor() {
    return Optional.empty();
  }

  /** This slip, where it is an unlisted join. */
  default Optional<Bridged> asBridged() {
    return Optional.empty();
  }

  /** This slip, where it is of a part. */
  default Optional<FaultyPart> asFaultyPart() {
    return Optional.empty();
  }

  /** This slip, where it is of a switch. */
  default Optional<FaultySwitch> asFaultySwitch() {
    return Optional.empty();
  }

  /** One answer for each kind. */
  interface Cases<T> {
    /** See {@link Missing}. */
    T missing(Missing slip);

    /** See {@link Moved}. */
    T moved(Moved slip);

    /** See {@link Crossed}. */
    T crossed(Crossed slip);

    /** See {@link Rearranged}. */
    T rearranged(Rearranged slip);

    /** See {@link Misread}. */
    T misread(Misread slip);

    /** See {@link Exchanged}. */
    T exchanged(Exchanged slip);

    /** See {@link Poor}. */
    T poor(Poor slip);

    /** See {@link Bridged}. */
    T bridged(Bridged slip);

    /** See {@link FaultyPart}. */
    T faultyPart(FaultyPart slip);

    /** See {@link FaultySwitch}. */
    T faultySwitch(FaultySwitch slip);
  }
}
