package dev.ringout.revision;

import dev.ringout.harness.Point;

/** A sleeve or label that says something else now. */
public sealed interface Relabel {

  /** What is made of it, by its kind. */
  <T> T match(Cases<T> cases);

  /** A wire's number at one of its ends. */
  record WireNumber(Point at, String old, String now) implements Relabel {
    @Override
    public <T> T match(Cases<T> cases) {
      return cases.wireNumber(this);
    }
  }

  /** An item's name: on the item, and on every sleeve that names it. */
  record ItemName(String old, String now) implements Relabel {
    @Override
    public <T> T match(Cases<T> cases) {
      return cases.itemName(this);
    }
  }

  /** The pins of an item: on every sleeve that names one. */
  record PinNames(String item, Run old, Run now) implements Relabel {
    @Override
    public <T> T match(Cases<T> cases) {
      return cases.pinNames(this);
    }
  }

  /** Names in a row, by the first and the last. */
  record Run(String first, String last) {}

  /** One answer for each kind. */
  interface Cases<T> {
    /** See {@link WireNumber}. */
    T wireNumber(WireNumber label);

    /** See {@link ItemName}. */
    T itemName(ItemName label);

    /** See {@link PinNames}. */
    T pinNames(PinNames label);
  }
}
