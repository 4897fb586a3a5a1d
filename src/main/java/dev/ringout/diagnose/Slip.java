package dev.ringout.diagnose;

import dev.ringout.harness.Wire;

/** One physical slip: what a hand or a tool did wrong. Points and conductors by their numbers. */
sealed interface Slip {

  /** A wire, link or contact that does not conduct. */
  record Missing(int conductor) implements Slip {}

  /** A wire's end that sits at another point of its item than listed. */
  record Moved(int wire, Wire.End end, int to) implements Slip {}

  /** The ends of two wires at one item, exchanged. */
  record Crossed(int wire, Wire.End end, int otherWire, Wire.End otherEnd) implements Slip {}

  /** Two points joined by something that is not listed. */
  record Bridged(int one, int other) implements Slip {}

  /**
   * A part that is not as listed.
   *
   * @param from where its first end is
   * @param to where its second end is
   */
  record FaultyPart(int part, PartFault how, int from, int to) implements Slip {}

  /**
   * A switch that does not close what it should in every position.
   *
   * @param which its number in the harness
   * @param position where it is stuck; else empty
   * @param contact the conductor that is welded; else -1
   */
  record FaultySwitch(int which, SwitchFault how, String position, int contact) implements Slip {}
}
