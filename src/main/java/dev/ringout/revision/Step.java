package dev.ringout.revision;

import dev.ringout.harness.Link;
import dev.ringout.harness.Point;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * One thing to do at the bench.
 *
 * @param number counted from 1 through all visits
 * @param which the wire, by its place in the earlier list, counted on through the wires that are
 *     made new; of a jumper: none
 * @param wire the number on it while the step is done; empty for a jumper
 * @param at where
 * @param from for an end that is put on: where it came from; absent for a new wire
 * @param jumper the jumper that is taken off or fitted
 * @param text the step in words
 */
public record Step(
    int number,
    Do what,
    OptionalInt which,
    String wire,
    Point at,
    Optional<Point> from,
    Optional<Link> jumper,
    String text) {

  /** What is done. */
  public enum Do {
    /** Take a wire's end off its point. */
    DISCONNECT,
    /** Put a wire's end on its point. */
    CONNECT,
    /** Draw out a wire whose two ends are off. */
    PULL,
    /** Cap and tie back the ends of a core that stays in its cable. */
    STOW,
    /** Take a jumper off. */
    UNLINK,
    /** Put a jumper on. */
    LINK;

    /** The word for it in JSON. */
    public String word() {
      return name().toLowerCase(Locale.ROOT);
    }
  }

  static Step ofWire(
      int number, Do what, int which, String wire, Point at, Optional<Point> from, String text) {
    return new Step(number, what, OptionalInt.of(which), wire, at, from, Optional.empty(), text);
  }

  static Step ofJumper(int number, Do what, Link jumper, String text) {
    return new Step(
        number,
        what,
        OptionalInt.empty(),
        "",
        jumper.from(),
        Optional.empty(),
        Optional.of(jumper),
        text);
  }
}
