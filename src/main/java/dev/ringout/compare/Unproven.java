package dev.ringout.compare;

import dev.ringout.compare.InsulationDemand.Level;
import dev.ringout.harness.SwitchState;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * What is not proven, with the points that a reading would need. Each kind holds its facts; {@code
 * words} says why it is not.
 */
public sealed interface Unproven {

  /** What is made of it, by its kind: a writer that lacks a kind does not compile. */
  <T> T match(Cases<T> cases);

  /**
   * Whether only joins are missing: once each net is proven to be in one piece, the readings made
   * show it.
   */
  default boolean waitsForJoins() {
    return false;
  }

  /** Itself, where it is about nets apart. */
  default Optional<Isolation> asIsolation() {
    return Optional.empty();
  }

  /** Itself, where it is about insulation. */
  default Optional<Insulation> asInsulation() {
    return Optional.empty();
  }

  /** The wire that could be missing, whatever the reason; absent where it is anything else. */
  default OptionalInt wire() {
    return OptionalInt.empty();
  }

  /** The wire that only lacks a good reading through it; absent where it is anything else. */
  default OptionalInt unreadWire() {
    return OptionalInt.empty();
  }

  /** Two pieces of one net that no reading joins; a point of each. */
  record Join(int from, int to) implements Unproven {
    @Override
    public <T> T match(Cases<T> cases) {
      return cases.join(this);
    }
  }

  /** A net that no reading holds apart from some others; a point of it and one of them. */
  record Isolation(int point, int other, long others, boolean waitsForJoins) implements Unproven {
    @Override
    public <T> T match(Cases<T> cases) {
      return cases.isolation(this);
    }

    @Override
    public Optional<Isolation> asIsolation() {
      return Optional.of(this);
    }
  }

  /**
   * A net whose insulation from some others no reading shows; a point of it and one of them.
   *
   * @param level the volts and ohms that a reading needs
   */
  record Insulation(int point, int other, long others, boolean waitsForJoins, Level level)
      implements Unproven {
    @Override
    public <T> T match(Cases<T> cases) {
      return cases.insulation(this);
    }

    @Override
    public Optional<Insulation> asInsulation() {
      return Optional.of(this);
    }
  }

  /**
   * A wire that no reading shows to be there, or to end where it should; its number among the
   * circuit's conductors.
   */
  record OfWire(int conductor, MissingWire missing) implements Unproven {
    @Override
    public <T> T match(Cases<T> cases) {
      return cases.ofWire(this);
    }

    @Override
    public OptionalInt wire() {
      return missing.shownBy().isEmpty() ? OptionalInt.of(conductor) : OptionalInt.empty();
    }

    @Override
    public OptionalInt unreadWire() {
      return missing.nothingGoesAround() ? OptionalInt.of(conductor) : OptionalInt.empty();
    }
  }

  /** A switch contact not seen closed in its position, or not seen open in another. */
  record Contact(int conductor, String position, boolean closed) implements Unproven {
    @Override
    public <T> T match(Cases<T> cases) {
      return cases.contact(this);
    }
  }

  /**
   * Two pieces of a net that closed contacts hold together, one after the other, and that no
   * reading holds apart with those open: something may lead past the contacts.
   *
   * @param one a terminal of a contact in one piece
   * @param other the same in the other
   * @param state the positions of the switches in which they are apart
   */
  record PastContacts(int one, int other, SwitchState state) implements Unproven {
    @Override
    public <T> T match(Cases<T> cases) {
      return cases.pastContacts(this);
    }
  }

  /**
   * A part that no good reading was made across; its number.
   *
   * @param read whether one was made that is not good
   * @param state the positions of the switches in which it is to be read
   */
  record OfPart(int part, boolean read, SwitchState state) implements Unproven {
    @Override
    public <T> T match(Cases<T> cases) {
      return cases.ofPart(this);
    }
  }

  /** One answer for each kind. */
  interface Cases<T> {
    /** See {@link Join}. */
    T join(Join gap);

    /** See {@link Isolation}. */
    T isolation(Isolation gap);

    /** See {@link Insulation}. */
    T insulation(Insulation gap);

    /** See {@link OfWire}. */
    T ofWire(OfWire gap);

    /** See {@link Contact}. */
    T contact(Contact gap);

    /** See {@link PastContacts}. */
    T pastContacts(PastContacts gap);

    /** See {@link OfPart}. */
    T ofPart(OfPart gap);
  }
}
