package dev.ringout.compare;

/** Why no reading would show that a wire is missing. */
public sealed interface MissingWire {

  /** What is made of it, by its kind: a writer that lacks a kind does not compile. */
  <T> T match(Cases<T> cases);

  /** Whether nothing goes around the wire: any good reading through it would prove it. */
  default boolean nothingGoesAround() {
    return false;
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

  /** One answer for each kind. */
  interface Cases<T> {
    /** See {@link NotRead}. */
    T notRead(NotRead reason);

    /** See {@link InParallel}. */
    T inParallel(InParallel reason);

    /** See {@link InLoop}. */
    T inLoop(InLoop reason);
  }
}
