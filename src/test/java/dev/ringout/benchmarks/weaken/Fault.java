package dev.ringout.benchmarks.weaken;

/** One thing wrong with a unit: what a good set of readings must rule out. */
sealed interface Fault {
  /** A wire or link that does not join. */
  record JointOpen(int joint) implements Fault {}

  /** Two points joined that should be apart; 0 Ω is a hard short. */
  record StrayJoin(int from, int to, double ohms) implements Fault {}

  /** Insulation below the limit between two points. */
  record Leak(int from, int to, double ohms) implements Fault {}

  /** A switch contact that does not close. */
  record ContactOpen(int joint) implements Fault {}

  /** A switch contact that is closed in another position too. */
  record ContactStuck(int joint, String position) implements Fault {}

  /** A part that is not there. */
  record PartMissing(int part) implements Fault {}

  /** A part that is a piece of wire. */
  record PartShorted(int part) implements Fault {}

  /** A diode the wrong way round. */
  record DiodeReversed(int part) implements Fault {}
}
