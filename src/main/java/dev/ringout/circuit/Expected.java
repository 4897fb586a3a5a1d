package dev.ringout.circuit;

import java.util.List;

/** What a reading between two sides should find. */
public sealed interface Expected {

  /** A path of wires, links and closed contacts joins the sides. */
  record Joined() implements Expected {}

  /** Nothing joins the sides. */
  record Apart() implements Expected {}

  /**
   * Only parts join the sides.
   *
   * @param lowOhms the least that a meter may read
   * @param highOhms the most; infinite where a part of unknown or one-way resistance is needed
   * @param parts the parts of the network between the sides, by number
   */
  record ThroughParts(double lowOhms, double highOhms, List<Integer> parts) implements Expected {
    /** Whether a meter reading lies within what the parts allow. */
    public boolean allows(double ohms) {
      return ohms >= lowOhms && ohms <= highOhms;
    }
  }
}
