package dev.ringout.diagnose.wiring;

import dev.ringout.circuit.Circuit;
import dev.ringout.circuit.Conductor;
import dev.ringout.harness.Wire;
import java.util.List;
import java.util.Map;

/**
 * The unit with the likeliest slips in it: values are held against the ways that are really there,
 * not against those on paper.
 */
public final class AsFound {
  private final Circuit listed;
  private final Circuit circuit;

  /** Of wires that are not where they are listed. */
  private final Map<Wire, Wire> listedOf;

  private AsFound(Circuit listed, Circuit circuit, Map<Wire, Wire> listedOf) {
    this.listed = listed;
    this.circuit = circuit;
    this.listedOf = listedOf;
  }

  static AsFound of(Circuit listed, List<Slip> slips) {
    if (slips.isEmpty()) {
      return new AsFound(listed, listed, Map.of());
    }
    SlippedHarness slipped = SlippedHarness.of(listed, slips);
    return new AsFound(listed, listed.joinedOtherwise(slipped.harness()), slipped.listedOf());
  }

  /** What is joined to what as it was found. */
  public Circuit circuit() {
    return circuit;
  }

  /** Whether no slip was found. */
  public boolean isAsListed() {
    return circuit.equals(listed);
  }

  /** A wire as it stands on paper. */
  public Wire listed(Wire found) {
    return listedOf.getOrDefault(found, found);
  }

  /** A conductor as it stands on paper. */
  public Conductor listed(Conductor found) {
    return found.asWire().<Conductor>map(wire -> new Conductor.OfWire(listed(wire))).orElse(found);
  }
}
