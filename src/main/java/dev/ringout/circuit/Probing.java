package dev.ringout.circuit;

import dev.ringout.harness.SwitchState;
import java.util.Arrays;
import java.util.stream.IntStream;

/**
 * Where the probes of a reading were, by the numbers of the points. {@code REST} is always the
 * second side.
 */
public final class Probing {
  static final int[] NO_POINTS = {};

  private final int[] from;
  private final int[] to;
  private final boolean toRest;
  private final SwitchState state;

  Probing(int[] from, int[] to, boolean toRest, SwitchState state) {
    this.from = from;
    this.to = to;
    this.toRest = toRest;
    this.state = state;
  }

  /** Two single points. */
  public static Probing pair(int from, int to, SwitchState state) {
    return new Probing(new int[] {from}, new int[] {to}, false, state);
  }

  /** A single point against the rest. */
  public static Probing toRest(int from, SwitchState state) {
    return new Probing(new int[] {from}, NO_POINTS, true, state);
  }

  /** Points tied together against the rest. */
  public static Probing groupToRest(int[] from, SwitchState state) {
    return new Probing(from.clone(), NO_POINTS, true, state);
  }

  /** Points tied together against other points tied together. */
  public static Probing groups(int[] from, int[] to, SwitchState state) {
    return new Probing(from.clone(), to.clone(), false, state);
  }

  /** The points of the first side, tied together. */
  public int[] from() {
    return from;
  }

  /** The points of the second side, tied together; none where it is the rest. */
  public int[] to() {
    return to;
  }

  /** The points that were touched on either side; of the rest, none. */
  public IntStream points() {
    return IntStream.concat(Arrays.stream(from), Arrays.stream(to));
  }

  /** Whether the second side is every point that is not in a net of the first. */
  public boolean toRest() {
    return toRest;
  }

  /** The positions of the switches. */
  public SwitchState state() {
    return state;
  }

  /** Whether it is between two single points. */
  public boolean isPair() {
    return !toRest && from.length == 1 && to.length == 1;
  }
}
