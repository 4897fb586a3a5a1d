package dev.ringout.diagnose;

import dev.ringout.circuit.Conductor;
import dev.ringout.compare.Judged;
import dev.ringout.harness.Part;
import dev.ringout.harness.Point;
import dev.ringout.harness.Switch;
import dev.ringout.harness.Wire;
import dev.ringout.units.Gauge;
import java.util.List;
import java.util.Optional;

/**
 * A slip in the trade's own things, for outputs: what a hand or a tool did, or what became of a
 * part. It covers more than a miswire (a wire's end in the wrong cavity): opens, shorts, poor
 * joints, parts, switches and probes held at the wrong pin too.
 */
public sealed interface SlipFact {
  /** What is made of it, by its kind: a writer that lacks a kind does not compile. */
  <T> T match(Cases<T> cases);

  /** This fact, where it is that something does not conduct. */
  default Optional<Opened> asOpened() {
    return Optional.empty();
  }

  /** This fact, where it is of a switch. */
  default Optional<BadSwitch> asBadSwitch() {
    return Optional.empty();
  }

  /** This fact, where it is a poor joint. */
  default Optional<PoorJoint> asPoorJoint() {
    return Optional.empty();
  }

  /** This fact, where it is another gauge. */
  default Optional<OtherGauge> asOtherGauge() {
    return Optional.empty();
  }

  /** The value that does not stand as it was read, where this fact is a slip of the pen. */
  default Optional<Judged> ofThePen() {
    return Optional.empty();
  }

  /** A wire, link or contact does not conduct. */
  record Opened(Conductor conductor) implements SlipFact {
    @Override
    public <T> T match(Cases<T> cases) {
      return cases.opened(this);
    }

    @Override
    public Optional<Opened> asOpened() {
      return Optional.of(this);
    }
  }

  /** Wire ends sit elsewhere: one end, or two exchanged. */
  record Misplaced(List<Move> moves) implements SlipFact {
    @Override
    public <T> T match(Cases<T> cases) {
      return cases.misplaced(this);
    }
  }

  /** Two points are joined by something unlisted. */
  record Bridge(Point one, Point other) implements SlipFact {
    @Override
    public <T> T match(Cases<T> cases) {
      return cases.bridge(this);
    }
  }

  /** A reading was taken at another pin than the sheet says. */
  record Misread(Judged judged, Point listed, Point at) implements SlipFact {
    @Override
    public <T> T match(Cases<T> cases) {
      return cases.misread(this);
    }
  }

  /** Two rows of the sheet have each other's values. */
  record ExchangedRows(Judged one, Judged other) implements SlipFact {
    @Override
    public <T> T match(Cases<T> cases) {
      return cases.exchangedRows(this);
    }

    @Override
    public Optional<Judged> ofThePen() {
      return Optional.of(other);
    }
  }

  /**
   * The point is misplaced in a value, or it is in another unit.
   *
   * @param times how many times too high it is written
   */
  record Misscaled(Judged judged, double times) implements SlipFact {
    @Override
    public <T> T match(Cases<T> cases) {
      return cases.misscaled(this);
    }

    @Override
    public Optional<Judged> ofThePen() {
      return Optional.of(judged);
    }
  }

  /** A wire's joints are poor. */
  record PoorJoint(Conductor conductor) implements SlipFact {
    @Override
    public <T> T match(Cases<T> cases) {
      return cases.poorJoint(this);
    }

    @Override
    public Optional<PoorJoint> asPoorJoint() {
      return Optional.of(this);
    }
  }

  /** A wire has another length than listed. */
  record OtherLength(Wire wire, double metres) implements SlipFact {
    @Override
    public <T> T match(Cases<T> cases) {
      return cases.otherLength(this);
    }
  }

  /** A wire has another gauge than listed. */
  record OtherGauge(Wire wire, Gauge gauge) implements SlipFact {
    @Override
    public <T> T match(Cases<T> cases) {
      return cases.otherGauge(this);
    }

    @Override
    public Optional<OtherGauge> asOtherGauge() {
      return Optional.of(this);
    }
  }

  /** A part is not as listed; where its ends really are. */
  record BadPart(Part part, PartFault how, Point from, Point to) implements SlipFact {
    @Override
    public <T> T match(Cases<T> cases) {
      return cases.badPart(this);
    }
  }

  /** A switch does not work as listed; the position where it is stuck, or the contact welded. */
  record BadSwitch(Switch which, SwitchFault how, String position, List<Point> contact)
      implements SlipFact {
    @Override
    public <T> T match(Cases<T> cases) {
      return cases.badSwitch(this);
    }

    @Override
    public Optional<BadSwitch> asBadSwitch() {
      return Optional.of(this);
    }
  }

  /** One answer for each kind. */
  interface Cases<T> {
    /** See {@link Opened}. */
    T opened(Opened fact);

    /** See {@link Misplaced}. */
    T misplaced(Misplaced fact);

    /** See {@link Bridge}. */
    T bridge(Bridge fact);

    /** See {@link Misread}. */
    T misread(Misread fact);

    /** See {@link ExchangedRows}. */
    T exchangedRows(ExchangedRows fact);

    /** See {@link Misscaled}. */
    T misscaled(Misscaled fact);

    /** See {@link PoorJoint}. */
    T poorJoint(PoorJoint fact);

    /** See {@link OtherLength}. */
    T otherLength(OtherLength fact);

    /** See {@link OtherGauge}. */
    T otherGauge(OtherGauge fact);

    /** See {@link BadPart}. */
    T badPart(BadPart fact);

    /** See {@link BadSwitch}. */
    T badSwitch(BadSwitch fact);
  }
}
