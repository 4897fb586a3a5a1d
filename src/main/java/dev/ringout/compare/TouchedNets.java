package dev.ringout.compare;

import java.util.BitSet;

/**
 * The nets, as they are in the normal state, that a rework touched: of them an earlier reading
 * proves nothing.
 */
public final class TouchedNets {
  /** None. */
  public static final TouchedNets NONE = new TouchedNets(new BitSet());

  private final BitSet nets;

  TouchedNets(BitSet nets) {
    this.nets = nets;
  }

  /** Whether none was touched. */
  public boolean isEmpty() {
    return nets.isEmpty();
  }

  /** Whether a net was touched. */
  public boolean has(int net) {
    return nets.get(net);
  }
}
