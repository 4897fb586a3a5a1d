package dev.ringout.circuit;

import dev.ringout.units.OhmsRange;
import java.util.List;
import java.util.Optional;

/** What a reading between two sides should find. */
public sealed interface Expected {

  /** What is made of it, by its kind: a use that lacks a kind does not compile. */
  <T> T match(Cases<T> cases);

  /** Whether a path of wires, links and closed contacts joins the sides. */
  default boolean isJoined() {
    return false;
  }

  /** Whether nothing joins the sides. */
  default boolean isApart() {
    return false;
  }

  /** The parts that alone join the sides; absent where none do, or where more does. */
  default Optional<ThroughParts> throughParts() {
    return Optional.empty();
  }

  /** Whether another reading would find the same: a join, none, or the same parts. */
  default boolean isLike(Expected other) {
    return isJoined() == other.isJoined()
        && isApart() == other.isApart()
        && throughParts()
            .map(ThroughParts::parts)
            .equals(other.throughParts().map(ThroughParts::parts));
  }

  /** A path of wires, links and closed contacts joins the sides. */
  record Joined() implements Expected {
    @Override
    public <T> T match(Cases<T> cases) {
      return cases.joined(this);
    }

    @Override
    public boolean isJoined() {
      return true;
    }
  }

  /** Nothing joins the sides. */
  record Apart() implements Expected {
    @Override
    public <T> T match(Cases<T> cases) {
      return cases.apart(this);
    }

    @Override
    public boolean isApart() {
      return true;
    }
  }

  /**
   * Only parts join the sides.
   *
   * @param lowOhms the least that a meter may read; infinite where every way is blocked
   * @param highOhms the most; infinite where a part of unknown or one-way resistance is needed
   * @param shortOhms the most that wires alone would read, were the sides joined where the parts
   *     are
   * @param mayBeAnything whether a part on the way may have any resistance
   * @param parts the parts of the network between the sides, by number
   */
  record ThroughParts(
      double lowOhms, double highOhms, double shortOhms, boolean mayBeAnything, List<Integer> parts)
      implements Expected {
    /**
     * Less or more no ohmmeter tells from nothing and from an open (common practice, no source).
     */
    private static final double LEAST_OHMS = 1e-3;

    private static final double MOST_OHMS = 1e9;

    @Override
    public <T> T match(Cases<T> cases) {
      return cases.throughParts(this);
    }

    @Override
    public Optional<ThroughParts> throughParts() {
      return Optional.of(this);
    }

    /** Whether what was read is more than a join of the two sides could read. */
    public boolean isAboveJoin(OhmsRange seen) {
      return seen.isKnown() && seen.lowOhms() > shortOhms;
    }

    /** Whether such a reading holds the two sides apart: no part could be mistaken for a join. */
    public boolean holdsApart(OhmsRange seen) {
      return !mayBeAnything && isAboveJoin(seen);
    }

    /** Whether any of the resistances that a reading leaves possible is what the parts allow. */
    public boolean allows(OhmsRange seen) {
      return seen.highOhms() >= lowOhms && seen.lowOhms() <= highOhms;
    }

    /**
     * Whether a reading mostly tells these from others: what both may read is less than half of
     * what either may, counted in decades.
     */
    public boolean isToldFrom(ThroughParts other) {
      double common =
          decade(Math.min(highOhms, other.highOhms)) - decade(Math.max(lowOhms, other.lowOhms));
      double either =
          decade(Math.max(highOhms, other.highOhms)) - decade(Math.min(lowOhms, other.lowOhms));
      return common < either / 2;
    }

    private static double decade(double ohms) {
      return Math.log10(Math.max(LEAST_OHMS, Math.min(MOST_OHMS, ohms)));
    }

    /** How far the value may be off to either side; without bound where the parts may be open. */
    public double halfWidthOhms() {
      return Double.isInfinite(highOhms) ? Double.POSITIVE_INFINITY : (highOhms - lowOhms) / 2;
    }

    /** Whether the parts may read as open. */
    public boolean mayBeOpen() {
      return Double.isInfinite(highOhms);
    }
  }

  /** One answer for each kind. */
  interface Cases<T> {
    /** See {@link Joined}. */
    T joined(Joined expected);

    /** See {@link Apart}. */
    T apart(Apart expected);

    /** See {@link ThroughParts}. */
    T throughParts(ThroughParts expected);
  }
}
