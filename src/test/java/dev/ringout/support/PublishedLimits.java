package dev.ringout.support;

import dev.ringout.circuit.Circuit;
import dev.ringout.circuit.JoinLimits;
import dev.ringout.standards.Tables;

/** The limits of joins by the published tables, for tests. */
public final class PublishedLimits {
  private PublishedLimits() {}

  /** Of one circuit. */
  public static JoinLimits of(Circuit circuit) {
    return JoinLimits.of(circuit, Tables.published());
  }
}
