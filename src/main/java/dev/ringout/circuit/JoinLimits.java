package dev.ringout.circuit;

import dev.ringout.harness.Limits;
import dev.ringout.harness.Wire;
import dev.ringout.standards.CopperWire;
import java.util.List;
import java.util.OptionalDouble;

/**
 * The highest reading that still counts as joined.
 *
 * <p>Given by the harness file, or computed where every wire on the way has a gauge and a length:
 * the copper's resistance at the wire's temperature and two contacts for each joint, plus the
 * tolerance, plus what the leads add. Around loops the way through the net's tree is taken, which
 * is never shorter than the truth allows: the limit errs to the lenient side there. A way through a
 * switch contact, whose resistance nobody lists, takes the fixed limit; so does a way through links
 * alone, where nothing is known but that it is short.
 */
public final class JoinLimits {
  private final Circuit circuit;
  private final CopperWire copper;

  /** Where a limit comes from. */
  public enum Basis {
    GIVEN,
    COMPUTED,
    FIXED
  }

  /** A limit and where it comes from. */
  public record JoinLimit(double ohms, Basis basis) {}

  /** The limits of one circuit. */
  public JoinLimits(Circuit circuit, CopperWire copper) {
    this.circuit = circuit;
    this.copper = copper;
  }

  /** The limit for a reading between points that should be joined. */
  public JoinLimit of(Probing probing) {
    Limits limits = circuit.harness().limits();
    if (limits.closedMaxOhms().isPresent()) {
      return new JoinLimit(limits.closedMaxOhms().getAsDouble(), Basis.GIVEN);
    }
    if (probing.isPair()) {
      int from = probing.from()[0];
      int to = probing.to()[0];
      Nets nets = circuit.in(probing.state());
      if (nets.of(from) == nets.of(to)) {
        OptionalDouble expected = ohms(nets.path(from, to));
        if (expected.isPresent()) {
          double ohms =
              expected.getAsDouble() * (1 + limits.tolerancePercent() / 100) + limits.meterOhms();
          return new JoinLimit(ohms, Basis.COMPUTED);
        }
      }
    }
    return new JoinLimit(limits.fixedClosedMaxOhms(), Basis.FIXED);
  }

  private OptionalDouble ohms(List<Integer> path) {
    Limits limits = circuit.harness().limits();
    double total = 0;
    boolean hasWire = false;
    for (int conductor : path) {
      Conductor one = circuit.conductors().get(conductor);
      if (one instanceof Conductor.OfContact) {
        return OptionalDouble.empty();
      }
      total += 2 * limits.contactOhms();
      if (one instanceof Conductor.OfWire wire) {
        hasWire = true;
        OptionalDouble ohms = ohms(wire.wire());
        if (ohms.isEmpty()) {
          return OptionalDouble.empty();
        }
        total += ohms.getAsDouble();
      }
    }
    return hasWire ? OptionalDouble.of(total) : OptionalDouble.empty();
  }

  private OptionalDouble ohms(Wire wire) {
    if (wire.gauge().isEmpty() || wire.length().isEmpty()) {
      return OptionalDouble.empty();
    }
    OptionalDouble perMetre =
        copper.ohmsPerMetre(wire.gauge().get(), circuit.harness().limits().celsius());
    return perMetre.isEmpty()
        ? perMetre
        : OptionalDouble.of(perMetre.getAsDouble() * wire.length().get().metres());
  }
}
