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

  /** A part that does not read as listed. */
  record FaultyPart(int part) implements Slip {}
}
