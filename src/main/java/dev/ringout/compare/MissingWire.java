package dev.ringout.compare;

import dev.ringout.circuit.Probing;
import java.util.Optional;
import java.util.OptionalInt;

/** Why no reading would show that a wire is missing, or not where it should be. */
public sealed interface MissingWire {

  /** What is made of it, by its kind: a writer that lacks a kind does not compile. */
  <T> T match(Cases<T> cases);

  /** Whether nothing goes around the wire: any good reading through it would prove it. */
  default boolean nothingGoesAround() {
    return false;
  }

  /** The reading that shows where it ends, of a wire that is there; else it could be missing. */
  default Optional<Probing> shownBy() {
    return Optional.empty();
  }

  /** Nothing goes around it, and no good reading goes through it. */
  record NotRead() implements MissingWire {
    @Override
    public <T> T match(Cases<T> cases) {
      return cases.notRead(this);
    }

    @Override
    public boolean nothingGoesAround() {
      return true;
    }
  }

  /** Another conductor joins the same two points; its number. */
  record InParallel(int other) implements MissingWire {
    @Override
    public <T> T match(Cases<T> cases) {
      return cases.inParallel(this);
    }
  }

  /** Others go around it. */
  record InLoop() implements MissingWire {
    @Override
    public <T> T match(Cases<T> cases) {
      return cases.inLoop(this);
    }
  }

  /**
   * An end of it may be on another side of a contact that is closed in the normal state.
   *
   * @param other the point there
   * @param exchangedWith the conductor that ends there as listed, and may end here
   * @param shows a reading that tells, with the contact open
   */
  record EitherSide(int other, OptionalInt exchangedWith, Probing shows) implements MissingWire {
    @Override
    public <T> T match(Cases<T> cases) {
      return cases.eitherSide(this);
    }

    @Override
    public Optional<Probing> shownBy() {
      return Optional.of(shows);
    }
  }

  /** One answer for each kind. */
  interface Cases<T> {
    /** See {@link NotRead}. */
    T notRead(NotRead reason);

    /** See {@link InParallel}. */
    T inParallel(InParallel reason);

    /** See {@link InLoop}. */
    T inLoop(InLoop reason);

    /** See {@link EitherSide}. */
    T eitherSide(EitherSide reason);
  }
}
